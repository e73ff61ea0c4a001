//! Structural bolts: which coats their documents list, what their assemblies ask for, which nut goes on.

use super::{Case, Instruction, Key, Phrase, Rule, Says, Test, Topic, Under, When};
use crate::part::Kind;
use crate::process::Process;
use crate::quantity::{Quantity, unit};
use crate::sentence::{put, worded};
use crate::source::{Source, document};
use crate::steel::pairing::Nuts;
use crate::steel::{Grade, load, structural};
use crate::table::astm_a563_proof::proof_stress;
use crate::table::nut_grade::NutGrade;
use crate::table::nut_style::Style;
use crate::table::structural::{Allowed, Bolt, Coating, Requirement, Topic as About};
use crate::table::{aisc_360, astm_f3125_assembly as assembly};
use crate::working::Mark;

const fn row(key: Key) -> Rule {
    Rule {
        key,
        topic: Topic::Class,
        process: None,
        under: Under::Any,
        source: document::ASTM_F3125.memory("Annex A1, coatings"),
        when: When::Steel,
        test: Test::Always,
        says: |_| Says::term(),
        words: Phrase::NONE,
        why: Phrase::NONE,
        met: "",
        brief: Phrase::NONE,
    }
}

/// The coats that the document of a structural bolt lists, with their class.
pub static COATING: Rule = Rule {
    // What A490 takes stands with hydrogen, where its reason is.
    when: When::Structural(|case| {
        !case.grade().is_some_and(|grade| Grade::AS_A490.contains(&grade)) && coating(case).is_some()
    }),
    says: |case| match coating(case) {
        // EN 14399 leaves other coats to an agreement with the maker of the assembly. Where nothing but the shape
        // and class 8.8 point to it, that is good to know.
        Some(row) if row.allowed != Allowed::Yes && is_en(case) => {
            Says::from(if is_of_system(case) { Mark::Condition } else { Mark::Note }, row.source)
        }
        Some(row) if row.allowed != Allowed::Yes => Says::from(Mark::Bar, row.source),
        Some(row) if !is_class(case, row) => Says::from(Mark::Condition, row.source),
        Some(row) => Says::from(Mark::Met, row.source),
        None => Says::MET,
    },
    words: Phrase::By(|case, says, text| {
        let Some(row) = coating(case) else { return };
        let document = row.source.document.name;
        match (says.mark, row.allowed) {
            (Mark::Note, _) => {
                put(text, format_args!("{document} lists hot-dip; what else goes on such a bolt is agreed"));
            }
            (Mark::Condition, Allowed::NotListed) => {
                text.push_str("agree this coat with the maker of the assembly, who controls it");
            }
            (Mark::Bar, Allowed::No) => put(text, format_args!("{document} forbids this coat on the bolt")),
            (Mark::Bar, _) => put(text, format_args!("{document} does not list this coat for the bolt")),
            (Mark::Condition, _) => put(
                text,
                format_args!(
                    "{document} lists {} for the bolt: agree another class with the purchaser",
                    row.order
                ),
            ),
            _ => put(text, format_args!("{document} lists {} for the bolt", row.order)),
        }
    }),
    why: Phrase::By(|case, says, text| {
        if let (Mark::Condition, Some(row)) = (says.mark, coating(case).filter(|_| is_en(case))) {
            put(
                text,
                format_args!(
                    "{} lists hot-dip, and leaves other coats to an agreement",
                    row.source.document.name
                ),
            );
        }
    }),
    brief: Phrase::By(|case, says, text| {
        let document = coating(case).map_or("its standard", |row| row.source.document.name);
        let document = document.strip_prefix("ASTM ").unwrap_or(document);
        match says.mark {
            Mark::Bar => put(text, format_args!("{document} does not list it")),
            _ if is_en(case) => text.push_str("agree the coat with the maker of the assembly"),
            _ => text.push_str("agree the class with the purchaser, for another is listed"),
        }
    }),
    ..row(Key::StructuralCoating)
};

/// Each topic of a coated structural assembly by itself, as its document asks for it; of a nut that is
/// ordered without its bolt it is good to know, but for the lubricant, which its own document asks for.
macro_rules! asked {
    ($($(#[$doc:meta])* $name:ident = $key:ident, $topic:ident, $says:expr, $why:expr, $brief:expr;)+) => {$(
        $(#[$doc])*
        pub static $name: Rule = Rule {
            when: When::Structural(|case| asked(case, About::$topic).is_some()),
            says: |case| {
                let for_bolt = About::$topic == About::Lubricant || bolt(case).is_some();
                let says: Says = if for_bolt { $says } else { Says::note() };
                Says { source: asked(case, About::$topic).map(|row| row.source), ..says }
            },
            why: $why,
            words: Phrase::By(|case, _, text| {
                text.push_str(asked(case, About::$topic).map_or("", |row| row.text).trim_end_matches('.'));
            }),
            brief: $brief,
            ..row(Key::$key)
        };
    )+};
}

asked! {
    /// The lubricant on zinc-coated nuts.
    LUBRICANT = StructuralLubricant, Lubricant, Says::term(), Phrase::NONE, Phrase::By(|case, _, text| {
        text.push_str(if is_en(case) { "its maker's lubricant only" } else { "nuts lubricated" });
    });
    /// Bolt, nut and washer as one matched lot.
    LOT = StructuralLot, MatchedLot, Says::term().asking(Instruction::OneLot), Phrase::NONE, Phrase::NONE;
    /// Bolt, nut and washer coated by one process.
    ONE_PROCESS = StructuralOneProcess, OneProcess, Says::term().asking(Instruction::OneLot), Phrase::NONE, Phrase::NONE;
    /// When the nut is tapped: the order says it with the room for the coat.
    TAPPING = StructuralTapping, Tapping, Says::note(), Phrase::NONE, Phrase::NONE;
    /// The rotational-capacity test, with its turn where the length is known.
    ROTATIONAL_CAPACITY = RotationalCapacity, RotationalCapacity, Says::term(),
        Phrase::By(|case, _, text| text.push_str(&turn(case).unwrap_or_default())),
        Phrase::Text("its rotational-capacity test");
    /// The washer, and where it goes.
    WASHER = StructuralWasher, Washer, Says::term(), Phrase::NONE, Phrase::NONE;
    /// No second use: nothing for the order, and good to know on the site.
    REUSE = StructuralReuse, Reuse, Says::note(), Phrase::NONE, Phrase::NONE;
}

/// How far the nut is turned in the rotational-capacity test, and what the bolt then holds.
fn turn(case: &Case<'_>) -> Option<String> {
    let (part, bolt) = (case.part?, bolt(case)?);
    let thread = part.thread?;
    let diameters = part.length? / thread.diameter();
    let least = aisc_360::pretension(bolt, thread.diameter()).map_or_else(String::new, |least| match thread
        .is_metric()
    {
        true => worded(format_args!(" of {}", least.value.show(&unit::KILONEWTON, 0))),
        false => worded(format_args!(" of {}", least.value.show(&unit::LBF, 0))),
    });
    Some(match assembly::turn_degrees(diameters) {
        Some(degrees) => worded(format_args!(
            "from snug the nut is turned by {degrees}° at this length and does not strip; at the end the bolt holds {} \
             times its least pretension{least} (both from memory)",
            assembly::TENSION_AFTER_TURN.value
        )),
        None => "the turn is not set for bolts longer than 12 diameters: agree it".to_owned(),
    })
}

/// The nut that goes on the bolt, by name.
pub static NUT_BY_NAME: Rule = Rule {
    topic: Topic::Strength,
    source: document::ASTM_A563.memory("nuts for bolts"),
    when: When::If(|case| {
        let bolt = case.part.is_some_and(|part| !part.kind.is_nut()) && !case.is_for_a_tapped_hole();
        bolt && named(case).is_none() && case.grade().is_some()
    }),
    says: |case| case.nuts.map_or(Says::MET, |nuts| Says::from(Mark::Term, nuts.source)),
    words: Phrase::By(|case, _, text| {
        if let Some(nuts) = case.nuts {
            put(text, format_args!("order {} nuts", nut_in_words(nuts)));
        }
    }),
    why: Phrase::By(|case, _, text| {
        if case.nuts.is_some_and(|nuts| nuts.of_system().is_some()) {
            text.push_str("nut and bolt are of one system of EN 14399");
        }
    }),
    ..row(Key::NutByName)
};

/// ASTM A354 advises in a note against zinc on grade BD, and forbids nothing.
pub static ADVISED_AGAINST: Rule = Rule {
    source: document::ASTM_A354.memory("note on coatings"),
    when: When::Grades(&[Grade::A354Bd]),
    says: |_| Says::note(),
    words: Phrase::Text(
        "a note of ASTM A354 advises against hot-dip, mechanical and plated zinc on grade BD; zinc flake goes by agreement",
    ),
    ..row(Key::AdvisedAgainst)
};

/// Zinc on steels for hot service.
pub static HOT_SERVICE: Rule = Rule {
    source: document::GALVANIZING_TEXT.memory("zinc is for service up to 200 °C"),
    when: When::Grades(Grade::FOR_HEAT),
    says: |_| Says::note(),
    words: Phrase::Text("the steel is made for heat, and zinc is not for service above 200 °C"),
    brief: Phrase::Text("Zinc is not for service above 200 °C."),
    ..row(Key::HotService)
};

/// `heavy hex ASTM A563 grade DH`, `class 8`.
pub fn nut_in_words(nuts: &Nuts) -> String {
    match (nuts.of_system(), nuts.nut.style) {
        (Some(name), _) => name.to_owned(),
        (None, Style::HeavyHex) => worded(format_args!("heavy hex {}", nuts.nut.grade)),
        // The class is made in no lower nut of this size.
        (None, Style::High) => worded(format_args!("{}, style 2 (ISO 4033)", nuts.nut.grade)),
        (None, _) => nuts.nut.grade.to_string(),
    }
}

/// The nut that is named beside the bolt, or ordered alone.
pub static NUT: Rule = Rule {
    topic: Topic::Strength,
    source: document::ASTM_A563.memory("nuts for bolts"),
    when: When::If(|case| named(case).is_some() && case.nuts.is_some() || alone_as_heavy_hex(case).is_some()),
    test: Test::By(|case| {
        if alone_as_heavy_hex(case).is_some() {
            return true;
        }
        let (Some(nuts), Some(nut)) = (case.nuts, named(case)) else { return false };
        nuts.takes(nut, None) == Some(false) || is_only_heavy(nuts, nut)
    }),
    says: |case| match (case.nuts, named(case)) {
        (Some(nuts), Some(nut)) if is_only_heavy(nuts, nut) => Says::from(Mark::Term, nuts.source),
        (Some(nuts), _) => Says::from(Mark::Condition, nuts.source),
        _ => alone_as_heavy_hex(case).map_or(Says::MET, |(_, source)| Says::from(Mark::Term, source)),
    },
    words: Phrase::By(|case, says, text| {
        if let Some((nut, _)) = alone_as_heavy_hex(case) {
            return put(
                text,
                format_args!("order them as heavy hex: {} is made so only in this size", nut.name()),
            );
        }
        if let (Some(nuts), Some(nut)) = (case.nuts, named(case)) {
            if says.mark == Mark::Term {
                return put(text, format_args!("order the {} nuts as heavy hex", nut.name()));
            }
            put(
                text,
                format_args!(
                    "order {} nuts instead of {}",
                    nuts.of_system().map_or_else(|| nuts.nut.grade.to_string(), str::to_owned),
                    nut.name()
                ),
            );
        }
    }),
    why: Phrase::By(|case, says, text| {
        if let Some(nuts) = case.nuts.filter(|_| says.mark == Mark::Condition) {
            put(text, format_args!("{} puts another nut on this bolt", nuts.source.document.name));
        }
    }),
    met: "the nut that is named goes with the bolt",
    brief: Phrase::By(|case, says, text| {
        if let Some((nut, _)) = alone_as_heavy_hex(case) {
            return put(text, format_args!("{} nuts as heavy hex", nut.short_name()));
        }
        if let (Some(nuts), Some(named)) = (case.nuts, named(case)) {
            if says.mark == Mark::Term {
                return put(text, format_args!("{} nuts as heavy hex", named.short_name()));
            }
            let grade = || load::grade_of_nut(nuts.nut.grade).map(Grade::short_name);
            let asked = nuts.of_system().or_else(grade).unwrap_or("other");
            put(text, format_args!("agree {asked} nuts instead of the {} ordered", named.short_name()));
        }
    }),
    ..row(Key::NutForBolt)
};

/// The washer named beside a structural bolt is too soft to be turned on.
pub static WASHER_FOR_BOLT: Rule = Rule {
    topic: Topic::Strength,
    when: When::Structural(|case| {
        bolt(case).is_some() && case.part.is_some_and(|part| part.is_washer_hard.is_some())
    }),
    test: Test::By(|case| case.part.is_some_and(|part| part.is_washer_hard == Some(false))),
    says: |case| {
        asked(case, About::Washer)
            .map_or(Says::condition(), |asked| Says::from(Mark::Condition, asked.source))
    },
    words: Phrase::By(|case, _, text| {
        put(text, format_args!("order {} instead of those named", hard_washers(case)))
    }),
    met: "the washer that is named is hard enough",
    brief: Phrase::By(|case, _, text| {
        put(text, format_args!("agree {} instead of those ordered", hard_washers(case)))
    }),
    ..row(Key::WasherForBolt)
};

fn hard_washers(case: &Case<'_>) -> &'static str {
    if is_en(case) { "EN 14399-5 or -6 washers" } else { "F436 washers" }
}

/// Whether the part is a structural bolt, or a nut made for one.
pub(super) fn is_structural(case: &Case<'_>) -> bool {
    bolt(case).or_else(|| bolt_of_nut(case)).is_some()
}

/// Whether it is one of EN 14399 and of nothing else: class 10.9, or by its name.
fn is_of_system(case: &Case<'_>) -> bool {
    bolt(case) == Some(Bolt::Hv) || case.part.is_some_and(|part| part.kind == Kind::HrBolt)
}

/// The structural bolt of the case: by its grade, or a metric one by its kind.
fn bolt(case: &Case<'_>) -> Option<Bolt> {
    let grade = case.grade()?;
    let metric = || {
        let part = case.part.filter(|part| part.kind.is_structural())?;
        part.thread.filter(|thread| thread.is_metric())?;
        let bolt = structural::metric(grade)?;
        Some(if part.kind == Kind::HrBolt { Bolt::Hr } else { bolt })
    };
    structural::bolt(grade).or_else(metric)
}

/// The structural bolt that a nut ordered alone is made for; beside its bolt the assembly speaks.
fn bolt_of_nut(case: &Case<'_>) -> Option<Bolt> {
    let part = case.part.filter(|part| part.kind.is_nut() && part.bolt.is_none())?;
    structural::bolt_of_nut(case.grade()?, part.thread?)
}

/// Whether the bolt is one of EN 14399, whose coats other than hot-dip are agreed.
fn is_en(case: &Case<'_>) -> bool {
    matches!(bolt(case), Some(Bolt::Hr | Bolt::Hv))
}

fn coating(case: &Case<'_>) -> Option<&'static Coating> {
    structural::coating(bolt(case)?, case.process)
}

/// Whether the class on offer is the one that is listed, where one is.
fn is_class(case: &Case<'_>, row: &Coating) -> bool {
    let Some(class) = row.class.filter(|_| case.process == Process::Mechanical) else { return true };
    let number = |name: &str| name.strip_prefix("class ").and_then(|number| number.parse().ok());
    case.offer.is_none_or(|offer| number(offer.class.name) == Some(class))
}

/// What is asked of the assembly of the case about a topic, where its coat is listed.
fn asked(case: &Case<'_>, about: About) -> Option<&'static Requirement> {
    let of_bolt_alone = matches!(about, About::Washer | About::Reuse);
    let bolt = bolt(case).or_else(|| if of_bolt_alone { None } else { bolt_of_nut(case) })?;
    // What an assembly of EN 14399 asks for does not hang on whether its document lists the coat.
    structural::coating(bolt, case.process).filter(|row| row.allowed == Allowed::Yes || is_en(case))?;
    structural::requirement(bolt, case.process, about)
}

/// Whether a nut that is made in both shapes goes on the bolt as a heavy hex only.
fn is_only_heavy(nuts: &Nuts, nut: Grade) -> bool {
    if !matches!(nut, Grade::A563A | Grade::A563B | Grade::A563C | Grade::A563D) {
        return false;
    }
    let known = load::known_nut(nut);
    let is_made = |is_heavy| {
        nuts.find(|of| Some(of.grade) == known && (of.style == Style::HeavyHex) == is_heavy).is_some()
    };
    is_made(true) && !is_made(false)
}

/// A hex nut ordered alone whose grade is made in its size as a heavy hex only, and what says so.
fn alone_as_heavy_hex(case: &Case<'_>) -> Option<(Grade, Source)> {
    let part = case.part.filter(|part| part.kind == Kind::HexNut && !case.is_mate && part.bolt.is_none())?;
    let (thread, grade) = (part.thread.filter(|thread| !thread.is_metric())?, case.grade()?);
    let Some(NutGrade::A563(known)) = load::known_nut(grade) else { return None };
    let sixteenths = (thread.diameter().inch() * 16.0).round() as u16;
    let made = |style| proof_stress(sixteenths, known, style, thread.is_coarse(), true);
    let heavy = made(Style::HeavyHex)?;
    made(Style::Hex).is_none().then_some((grade, heavy.source))
}

/// The nut named beside the bolt of this case.
fn named(case: &Case<'_>) -> Option<Grade> {
    case.part.filter(|part| !part.kind.is_nut()).and_then(|part| part.nut)
}
