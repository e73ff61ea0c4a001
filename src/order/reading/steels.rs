//! Which steel is the part's, and which its nut's or washer's.

mod hardness;
mod metal;
mod several;

use super::Became;
use super::items::Line;
use super::joined;
use super::left_out;
use super::lexicon::{self, Word};
use super::part::{Family, Scope, Scopes, spring_washer};
use super::per_part;
use super::token;
use super::what::{SteelWord, What};
use crate::order::line::{BY_HARDNESS, BY_TENSILE, END_OF_STEEL, LEAST, NOT_MADE, OTHER_METAL};
use crate::part::Kind;
use crate::quantity::letters::{lower, upper};
use crate::sorting::sort_by_key;
use crate::steel::Grade;
use crate::thread::Designation;

/// Why a metal beside the steel of the part is not used.
const ANOTHER_METAL: &str =
    "zinc on carbon and alloy steel is judged: write “in contact with” it if it touches the part";
/// Documents that need a grade.
const HALVES: &[&str] = &["f3125", "a563", "a354", "a193", "a194", "a320", "f1554", "j995"];
/// The classes of ASTM B695 that a nut may have too.
pub(super) const BOTH: &[u32] = &[5, 8, 12];
/// The classes of ASTM B695 alone.
pub(super) const B695: &[u32] = &[25, 40, 50, 55, 65, 70, 80, 110];

/// The greatest class of nuts.
const GREATEST_OF_NUTS: u32 = 12;

/// The nut or the washer that the standards ask for, where the line names no grade.
pub(super) const STANDARD: &str = "standard";

/// Steels, hardness, classes of nuts.
pub(super) fn settle(line: &mut Line, scopes: &Scopes, text: &str) {
    halves(line, scopes);
    let grades = line.free(|what| match what {
        What::Steel(SteelWord::Grade(grade)) => Some(*grade),
        _ => None,
    });
    // A bolt's grade next to the nut is the bolt's where it has no other: so those in their own place first.
    let scope = |at: usize| scopes.of.get(at).copied().unwrap_or_default();
    // And a grade of nuts or washers is theirs before a grade of bolts is.
    let mut grades = grades;
    sort_by_key(&mut grades, |(at, grade)| (scope(*at) != Scope::Part, !scopes.family.has(*grade)));
    for (at, grade) in grades {
        give(line, scopes, at, grade);
    }
    several::least(line);
    numbers(line, scopes);
    classes(line, scopes);
    bare_classes(line, scopes);
    hardness::hardness(line, scopes);
    hardness::of_washers(line, scopes);
    several::which_of_several(line, scopes.family);
    let is_asked = metal::or_another_metal(line, scopes, text);
    let unknown = line.free(|what| match what {
        What::Steel(word) => Some(word.clone()),
        _ => None,
    });
    let is_silent = line.draft.get("steel").is_none() && !is_asked;
    let is_the_part = |at: usize| scope(at) == Scope::Part;
    for (at, word) in unknown {
        let is_on = is_on(line, at);
        let Some(item) = line.item(at) else { continue };
        match word {
            // `8.8 bolts on aluminium`: what it touches, where its own steel is said.
            SteelWord::OtherMetal if is_on && !is_silent => item.what = What::Around(joined::around(&item.text)),
            // Nothing is judged of it, and the field says so.
            SteelWord::OtherMetal if is_the_part(at) && is_silent => {
                item.used("steel");
                line.draft.set("steel", OTHER_METAL);
            }
            SteelWord::OtherMetal => item.not(ANOTHER_METAL),
            SteelWord::Unknown(mark)
                if is_silent
                    && is_the_part(at)
                    && let Some((field, least)) = least_by_mark(&mark, scopes) =>
            {
                item.used("steel");
                line.draft.set("steel", field);
                line.draft.set(field, least);
                line.draft.set(END_OF_STEEL, LEAST);
                line.note(field, "the least that its mark says: the steel may be harder");
            }
            SteelWord::Unknown(_) => item.not(format!(
                "{} is not among the steels known here: write the greatest tensile strength of its document, or the hardness",
                item.text
            )),
            SteelWord::Half(text) if HALVES.contains(&text.as_str()) => {
                item.not(format!("which grade of {}?", upper(&text)));
            }
            _ => item.not("a grade of which document?"),
        }
    }
    mates(line, scopes);
}

/// What the mark of a steel that is not known here says at least: that of a set screw is a tenth of its hardness
/// (ISO 898-5, `33H`), and the first number of a property class a hundredth of its strength (ISO 898-1, `14.9`).
fn least_by_mark(mark: &str, scopes: &Scopes) -> Option<(&'static str, String)> {
    if mark == "14.9" {
        return Some((BY_TENSILE, "1400 MPa".to_owned()));
    }
    let tenth: u32 = mark.strip_suffix('H').filter(|number| number.len() == 2)?.parse().ok()?;
    (scopes.kind == Some(Kind::SetScrew)).then(|| (BY_HARDNESS, format!("{tenth}0 HV")))
}

/// Why a nut or a washer of another metal is not used.
const MATE_OF_METAL: &str =
    "of another metal or of plastic: no zinc goes on it, and it is none of the parts judged here";

/// `with stainless washers`: no zinc goes on them; what they touch stands in contact with another metal.
pub(super) fn mates_of_another_metal(line: &mut Line, scopes: &Scopes) {
    // Beside a bolt of such a metal they are of the same.
    if scopes.family != Family::Bolt || line.draft.get("steel") == Some(OTHER_METAL) {
        return;
    }
    for at in 0..line.items.len() {
        let is_one = line.what(at) == Some(&What::Steel(SteelWord::OtherMetal))
            && line.items.get(at).is_some_and(|item| !left_out::is_gone(&item.became));
        let (field, number, names) = match scopes.beside(at) {
            Scope::Nut if is_one => ("nut", "nuts", &scopes.nut),
            Scope::Washer if is_one => ("washer", "washers", &scopes.washer),
            _ => continue,
        };
        // A grade of its own beside the metal is another nut; and of several the first has said it.
        if line.draft.get(field) != Some(STANDARD) {
            continue;
        }
        line.take_back(&[field, number]);
        for place in 0..line.items.len() {
            let is_its = names.contains(&place)
                || line.items.get(place).is_some_and(
                    |item| matches!(&item.became, Some(Became::Used(fields, _)) if fields.contains(&number)),
                );
            if is_its {
                line.not(place, MATE_OF_METAL);
            }
        }
        let is_metal = line
            .items
            .get(at)
            .and_then(|item| item.text.split(' ').next())
            .is_some_and(|word| joined::is_metal(&lower(word)));
        match line.item(at) {
            Some(item) if is_metal => {
                item.became = None;
                item.what = What::Around(joined::around(&item.text));
            }
            Some(item) => item.not(MATE_OF_METAL),
            None => {}
        }
    }
}

/// `on aluminium`, `into brass`: behind a word that says where the part is put.
fn is_on(line: &Line, at: usize) -> bool {
    line.before(at).and_then(|before| line.items.get(before)).is_some_and(|item| {
        item.what == What::Filler && lexicon::LIES_ON.contains(&lower(&item.text).as_str())
    })
}

/// A grade goes to the part that it is a grade of.
fn give(line: &mut Line, scopes: &Scopes, at: usize, grade: Grade) {
    let beside = scopes.of.get(at).copied().unwrap_or_default();
    let (field, already) = match (scopes.family, grade.is_nut(), grade.is_washer()) {
        (Family::Bolt, true, _) => ("nut", "the nut"),
        (Family::Bolt, _, true) => ("washer", "the washer"),
        (Family::Nut, false, true) => {
            let why = "a grade of washers: write them as a line of their own";
            line.not(at, why);
            return;
        }
        (Family::Washer, true, _) => {
            let why = "a grade of nuts: write them as a line of their own";
            line.not(at, why);
            return;
        }
        _ => ("steel", "the steel"),
    };
    let is_other = || line.draft.get("steel").is_some_and(|steel| steel != grade.key());
    // `A4-80 bolts with 8.8 nuts`: the part is of another metal.
    let is_of_metal = |place: &usize| {
        line.what(*place) == Some(&What::Steel(SteelWord::OtherMetal))
            && line.items.get(*place).is_some_and(super::items::Item::is_free)
            && scopes.beside(*place) == Scope::Part
            && !is_on(line, *place)
    };
    let has_a_metal = || (0..line.items.len()).any(|place| is_of_metal(&place));
    // The whole line is looked at for a grade that may be of something else alone: a line may name many.
    if field == "steel" && beside != Scope::Part && (is_other() || has_a_metal()) {
        line.not(at, "a grade of bolts: which grade is the nut or washer?");
        return;
    }
    line.fill(at, field, grade.key(), already);
}

/// A document and its grade that stand apart: `A193 studs, gr B7`.
fn halves(line: &mut Line, scopes: &Scopes) {
    let halves = line.free(|what| match what {
        What::Steel(SteelWord::Half(text)) => Some(text.clone()),
        _ => None,
    });
    let (documents, codes): (Vec<_>, Vec<_>) =
        halves.into_iter().partition(|(_, text)| HALVES.contains(&text.as_str()));
    let mut documents: Vec<(usize, String)> = documents;
    for (at, code) in codes {
        // The document that stands in the line, or the one that such a grade can only be of.
        let nut = scopes.family == Family::Nut || scopes.of.get(at) == Some(&Scope::Nut);
        let usual = match code.as_str() {
            "36" | "55" | "105" if matches!(scopes.kind, Some(Kind::AnchorRod | Kind::BentAnchor)) => {
                Some("f1554")
            }
            _ if nut && code.bytes().all(|c| c.is_ascii_alphabetic()) => Some("a563"),
            _ => None,
        };
        let with = |document: &str| Grade::read(&format!("{document} {code}")).ok();
        let written = documents.iter().position(|(_, document)| with(document).is_some());
        let grade = written
            .and_then(|place| documents.get(place))
            .map_or_else(|| usual.and_then(with), |(_, document)| with(document));
        if let Some(place) = written {
            let (document, _) = documents.remove(place);
            line.used(document, "steel");
        }
        match (grade, usual) {
            (Some(grade), _) => give(line, scopes, at, grade),
            (None, Some(usual)) => {
                let why =
                    format!("grade {} of {} is not among the steels known here", upper(&code), upper(usual));
                line.not(at, why);
            }
            (None, None) => {}
        }
    }
    // A grade that names its document by itself: `F3125 … A325`.
    let known = line.free(|what| match what {
        What::Steel(SteelWord::Grade(grade)) => Some(grade.key()),
        _ => None,
    });
    for (at, document) in documents {
        let of_it = |key: &str| {
            key.starts_with(&document)
                || document == "f3125"
                    && ["a325", "a490", "f1852", "f2280"].iter().any(|own| key.starts_with(own))
        };
        if known.iter().any(|(_, key)| of_it(key)) {
            line.used(at, "steel");
        } else if document == "a563" && scopes.with.0 && scopes.family == Family::Bolt {
            line.used(at, "nut");
        }
    }
}

/// `grade 8`: of SAE J429 for a bolt, of SAE J995 for a nut.
fn numbers(line: &mut Line, scopes: &Scopes) {
    let numbers = line.free(|what| match what {
        What::Steel(SteelWord::Number(text)) => Some(text.clone()),
        _ => None,
    });
    let beside = |at: usize| scopes.of.get(at).copied().unwrap_or_default();
    let (own, other): (Vec<_>, Vec<_>) = numbers.into_iter().partition(|(at, _)| beside(*at) == Scope::Part);
    for (at, number) in own.into_iter().chain(other) {
        let of_bolt = Grade::read(&format!("grade {number}")).ok().filter(|grade| !grade.is_nut());
        let of_nut = Grade::of_key(&format!("j995-{number}"))
            .or_else(|| Grade::read(&format!("j995 grade {number}")).ok().filter(|grade| grade.is_nut()));
        if is_metric(line) {
            // `grade/class 8`: the class, where the threads are those of classes.
            if let (Some(item), Ok(class)) = (line.item(at), number.parse())
                && token::words(&item.text).any(is_word_of_class)
            {
                item.what = What::Class(class);
                continue;
            }
            let why =
                format!("grade {number} of SAE is for inch threads: write 8.8 or 10.9, or nut class 8 or 10");
            line.not(at, why);
            continue;
        }
        let bolt_has_one = line.draft.get("steel").is_some();
        let is_nut = scopes.family == Family::Nut || beside(at) == Scope::Nut && bolt_has_one;
        match (is_nut, of_bolt, of_nut) {
            (true, _, Some(grade)) | (false, Some(grade), _) => {
                give(line, scopes, at, grade);
                if grade.is_nut() {
                    used_document(line, "j995", if scopes.family == Family::Nut { "steel" } else { "nut" });
                }
            }
            (true, ..) => {
                let why = format!("grade {number} of nuts (SAE J995) is not among the steels known here");
                line.not(at, why);
            }
            _ => {
                let why = format!("grade {number} is not among the steels known here");
                line.not(at, why);
            }
        }
    }
}

fn is_word_of_class(word: &str) -> bool {
    lexicon::means(&lower(word), Word::Class)
}

/// Whether the threads of the line are metric.
fn is_metric(line: &Line) -> bool {
    let mut threads = line.items.iter().filter_map(|item| match &item.what {
        What::Thread(written) if !written.weak => Some(written.text.starts_with('M')),
        _ => None,
    });
    threads.next() == Some(true) && threads.all(|metric| metric)
}

/// A document whose grade stands elsewhere is used with it.
fn used_document(line: &mut Line, document: &str, field: &'static str) {
    let found = line.free(|what| match what {
        What::Steel(SteelWord::Half(text)) if text == document => Some(()),
        _ => None,
    });
    found.into_iter().for_each(|(at, ())| line.used(at, field));
}

/// `class 8` of a nut, `class 55` of a coat.
fn classes(line: &mut Line, scopes: &Scopes) {
    let classes = line.free(|what| match what {
        What::Class(number) => Some(*number),
        _ => None,
    });
    let mechanical = line.items.iter().any(|item| match item.what {
        What::Process(process, _) => process == crate::process::Process::Mechanical,
        What::Coat(key) => key == "b695" || key == "barrel",
        _ => false,
    });
    for (at, number) in classes {
        let beside = scopes.of.get(at).copied().unwrap_or_default();
        let has_nut = scopes.family == Family::Nut || beside == Scope::Nut || scopes.with.0;
        let nut_field = if scopes.family == Family::Nut { "steel" } else { "nut" };
        let open = line.draft.get(nut_field).is_none();
        let nut = Grade::read(&format!("nut class {number}")).ok().filter(|_| has_nut);
        let may_be_coat = BOTH.contains(&number) && mechanical;
        let next_to_nut =
            beside == Scope::Nut || scopes.family == Family::Nut && touches_name(line, scopes, at);
        let next_to_nut = next_to_nut || is_cell_of_nut(line, scopes, at);
        // `with lock nut class 8`: of a nut that is not judged here.
        if beside == Scope::Nut && !scopes.with.0 && scopes.family == Family::Bolt {
            line.not(at, "it is that of the nut, which is not judged here");
            continue;
        }
        match nut {
            _ if B695.contains(&number) => {}
            Some(grade) if !may_be_coat || next_to_nut => give(line, scopes, at, grade),
            Some(_) if open => {
                let why = format!(
                    "it could be class {number} of the nut or of ASTM B695: write “nut class {number}” or “B695 class {number}”"
                );
                line.not(at, why);
            }
            _ if may_be_coat => {}
            _ if mechanical && number > GREATEST_OF_NUTS => {
                let next = B695.iter().find(|class| **class >= number);
                let next = next.map_or(String::new(), |class| format!(", the next is {class}"));
                line.not(at, format!("ASTM B695 has no class {number}{next}: agree which is meant"));
            }
            _ if has_nut => {
                line.not(at, format!("class {number} is not among those of nuts known here"));
            }
            _ => {
                let why = format!("class {number} is of a nut or of a coat: a bolt has two numbers, as 8.8");
                line.not(at, why);
            }
        }
    }
}

/// The class of a nut of a preloaded assembly is that of its system: HV 10, HR 8, HR 10.
pub(super) fn of_system(line: &mut Line, scopes: &Scopes) {
    let Some(system) = scopes.system.filter(|_| scopes.family == Family::Nut) else { return };
    let class = line.draft.get("steel").and_then(|steel| match steel {
        // The class of the assembly, whose nut is 8 or 10.
        "8.8" => Some("8"),
        "10.9" => Some("10"),
        steel => steel.strip_prefix("nut-"),
    });
    let class = class.map(str::to_owned);
    if let Some(own) = class.and_then(|class| Grade::read(&format!("{system} {class}")).ok()) {
        line.draft.set("steel", own.key());
    }
}

/// `M36 heavy hex nut, class 8, mech galv`: between commas, behind the name of a metric nut, with the finish in a cell of
/// its own behind.
fn is_cell_of_nut(line: &Line, scopes: &Scopes, at: usize) -> bool {
    let is_alone = line.before(at).is_none() && line.behind(at).is_none();
    let is_named = at.checked_sub(1).is_some_and(|before| {
        scopes.names.contains(&before)
            || matches!(line.what(before), Some(What::Thread(_) | What::PartStandard(_)))
    });
    let is_coat = |what: &What| matches!(what, What::Process(..) | What::Coat(_));
    let is_before = line.items.iter().take(at).any(|item| is_coat(&item.what));
    scopes.family == Family::Nut && is_metric(line) && is_alone && is_named && !is_before
}

fn touches_name(line: &Line, scopes: &Scopes, at: usize) -> bool {
    [line.before(at), line.behind(at)].into_iter().flatten().any(|beside| scopes.names.contains(&beside))
}

/// `nut 8`, `ISO 4032 M16 8`: the number behind the name of a nut that has no other grade, or behind its
/// thread where the pieces are counted elsewhere or a standard makes it a designation.
fn bare_classes(line: &mut Line, scopes: &Scopes) {
    // `nut oversize tapped 8`: the words for its thread stand between.
    let over_tapping = |line: &Line, at: usize| {
        let before = line.before(at)?;
        match line
            .items
            .get(before)
            .is_some_and(|item| item.rule == "word" && item.what == What::Not(lexicon::TAPPED.into()))
        {
            true => line.before(before),
            false => Some(before),
        }
    };
    let numbers = line.free(|what| match what {
        What::Bare(Some(number)) => u32::try_from(*number).ok(),
        _ => None,
    });
    let designated = scopes.family == Family::Nut
        && (scopes.system.is_some()
            || line.items.iter().any(|item| matches!(item.what, What::PartStandard(_) | What::Count(_))));
    let is_of_nuts = |what: &What| matches!(what, What::PartStandard(key) if key.ends_with("nut"));
    for (at, number) in numbers {
        if counts_washers(line, scopes, at)
            || per_part::is_counted_as_washers(line, scopes, at, u64::from(number))
        {
            continue;
        }
        let behind_a_nut = over_tapping(line, at).is_some_and(|before| {
            scopes.nut.contains(&before)
                || scopes.family == Family::Nut && scopes.names.contains(&before)
                || designated && matches!(line.what(before), Some(What::Thread(_) | What::PartStandard(_)))
                // `M20x90 8.8 … ISO 4032 M20 8`, `… nuts M20 8`: that of the nut that comes with the bolt.
                || scopes.with.0
                    && matches!(line.what(before), Some(What::Thread(_)))
                    && line.before(before).is_some_and(|name| {
                        scopes.nut.contains(&name) || line.what(name).is_some_and(is_of_nuts)
                    })
        });
        let field = if scopes.family == Family::Nut { "steel" } else { "nut" };
        // As it was written: `05` is another class than `5`.
        let written = line.items.get(at).map_or("", |item| item.text.as_str());
        let class = Grade::read(&format!("nut class {written}"))
            .or_else(|_| Grade::read(&format!("nut class {number}")))
            .ok()
            .filter(|_| behind_a_nut && line.draft.get(field).is_none());
        match class {
            // `12 bolts, nuts M16 12`: of the name, its thread between.
            Some(_)
                if line
                    .before(at)
                    .filter(|before| matches!(line.what(*before), Some(What::Thread(_))))
                    .into_iter()
                    .chain([at])
                    .any(|at| per_part::may_count(line, scopes, at, u64::from(number))) =>
            {
                line.not(at, format!("{number} nuts, or nuts of class {number}: write which"));
            }
            Some(class) => give(line, scopes, at, class),
            None => {}
        }
    }
}

/// `8 nuts 8 washers`: a number that stands before washers, as another stands before the nuts, counts them.
fn counts_washers(line: &Line, scopes: &Scopes, at: usize) -> bool {
    let is_number = |place: usize| match line.what(place) {
        Some(What::Bare(Some(_)) | What::Small(_)) => true,
        Some(What::Count(counted)) => !counted.sets,
        _ => false,
    };
    let nut = scopes.nut.iter().min().and_then(|nut| nut.checked_sub(1));
    nut.is_some_and(|before| before != at && is_number(before))
        && line.behind(at).is_some_and(|next| scopes.washer.contains(&next))
}

/// A spring, conical, wide or narrow washer that comes with a bolt: a spring has the steel of its document.
pub(super) fn washers(line: &mut Line, scopes: &Scopes) {
    let Some(kind) = scopes.washer_kind.filter(|_| line.draft.get("washer") == Some(STANDARD)) else {
        return;
    };
    let thread = line.draft.get("thread").and_then(|text| Designation::read(text).ok());
    let is_metric = thread.is_none_or(|written| written.thread.is_metric());
    let of_document = "the steel of its document: the line says no other";
    let steel = match kind {
        Kind::SpringWasher => Some(spring_washer(line, is_metric)),
        Kind::ConicalWasher => Some((Grade::Din6796, of_document)),
        _ => None,
    };
    line.draft.set("washer", steel.map_or(kind.key(), |(grade, _)| grade.key()));
    if let Some((_, note)) = steel {
        line.note("washer", note);
    }
}

/// A grade that its document does not have in the size of the line says nothing of the steel: the order is
/// judged without it, another is asked for, and the document's range is told.
pub(super) fn out_of_size(line: &mut Line) {
    let grade = line.draft.get("steel").and_then(Grade::of_key);
    let thread = line.draft.get("thread").and_then(|text| Designation::read(text).ok());
    let Some((grade, written)) = grade.zip(thread) else { return };
    let Err(refusal) = grade.properties(written.thread.diameter()) else { return };
    line.draft.set("steel", NOT_MADE);
    for item in &mut line.items {
        let is_its =
            matches!(&item.became, Some(super::Became::Used(fields, _)) if fields.contains(&"steel"));
        if is_its {
            item.not(refusal.to_string());
        }
    }
}

/// A nut or washer without a grade is the one that the standards ask for.
fn mates(line: &mut Line, scopes: &Scopes) {
    if scopes.family != Family::Bolt {
        return;
    }
    for (field, with) in [("nut", scopes.with.0), ("washer", scopes.with.1)] {
        if with && line.draft.get(field).is_none() {
            line.draft.set(field, STANDARD);
        }
    }
}
