//! Shape, weight and length of the pieces against the kettle and the barrel.

use super::{Case, Instruction, Key, Part, Phrase, Rule, Says, Test, Topic, Under, When};
use crate::part::{Form, Kind, Threaded};
use crate::process::Process::{Electroplated, HotDip, Mechanical};
use crate::quantity::{Length, Mass, Quantity, unit};
use crate::sentence::{put, worded};
use crate::table::{hotdip_process, mechanical_process, practice};
use crate::working::Mark;

const fn row(key: Key, process: crate::process::Process) -> Rule {
    Rule {
        key,
        topic: Topic::Load,
        process: Some(process),
        under: Under::Any,
        source: practice::BEADS_PART,
        when: When::If(|case| case.part.is_some()),
        test: Test::Always,
        says: |_| Says::term(),
        words: Phrase::NONE,
        why: Phrase::NONE,
        met: "",
        brief: Phrase::NONE,
    }
}

/// Flat parts come out of the kettle stuck together.
pub static WASHERS_STICK: Rule = Rule {
    source: hotdip_process::WASHERS_SOURCE,
    when: When::If(is_flat),
    why: Phrase::Text("flat washers can leave the zinc in fours and fives"),
    words: Phrase::Text("say how many may come stuck together"),
    brief: Phrase::Text("how many washers may stick together"),
    ..row(Key::WashersStick, HotDip)
};

/// The beads keep flat parts and rings apart.
pub static BEADS_PART: Rule = Rule {
    when: When::If(is_flat),
    says: |_| Says::MET,
    met: "glass beads keep flat washers and rings from nesting and hooking together",
    ..row(Key::BeadsPart, Mechanical)
};

/// Flat parts nest in a plating barrel.
pub static WASHERS_NEST: Rule = Rule {
    source: practice::FLAT_PARTS_NEST,
    when: When::If(is_flat),
    says: |_| Says::note(),
    words: Phrase::Text(
        "flat washers lie on each other in a plating barrel and leave bare spots: mix them with other parts",
    ),
    ..row(Key::WashersNest, Electroplated)
};

/// A nylon patch is sprayed on and heated by induction: what condenses on bare mechanical zinc starts its
/// oxide under the patch.
pub static NYLON_PATCH: Rule = Rule {
    source: practice::NYLON_PATCH,
    when: When::If(|case| case.has_patch),
    why: Phrase::Text("what condenses on bare zinc when the patch is heated starts its oxide under it"),
    words: Phrase::Text("put a trivalent chromate on the zinc before the nylon patch"),
    brief: Phrase::Text("trivalent chromate before the nylon patch"),
    ..row(Key::NylonPatch, Mechanical)
};

/// Nylon melts in the zinc: the patch goes on behind the bath.
pub static PATCH_AFTER_DIP: Rule = Rule {
    source: practice::PATCH_AFTER_DIP,
    when: When::If(|case| case.has_patch),
    why: Phrase::Text("nylon melts in the zinc"),
    words: Phrase::Text("put the nylon patch on after the bath, on a clean thread"),
    brief: Phrase::Text("the nylon patch goes on after the bath"),
    ..row(Key::PatchAfterDip, HotDip)
};

/// A prevailing torque nut is dipped before it gets what locks it: nylon melts in the zinc, and the tap that
/// follows the bath takes the torque of a nut of metal alone.
pub static NYLON_INSERT: Rule = Rule {
    source: practice::NYLON_INSERT,
    when: When::If(|case| case.part.is_some_and(|part| part.kind == Kind::LockNut)),
    says: |_| Says::condition(),
    why: Phrase::Text(
        "nylon melts in the zinc, and the tap behind the bath takes the torque of an all-metal nut",
    ),
    words: Phrase::Text(
        "agree with the maker of the nuts that they are galvanized before their insert goes in",
    ),
    brief: Phrase::Text("agree with the maker that the insert goes in after the bath"),
    ..row(Key::NylonInsert, HotDip)
};

/// What forms its own thread in wood, sheet or concrete: no nut belongs to it, and no fit is judged.
pub static OWN_THREAD: Rule = Rule {
    process: None,
    source: practice::OWN_THREAD,
    when: When::If(|case| {
        case.part.is_some_and(|part| part.kind.goes_into_wood() || part.kind.threaded() == Threaded::Forming)
    }),
    says: |_| Says::note(),
    words: Phrase::By(|case, _, text| {
        let Some(kind) = case.part.map(|part| part.kind) else { return };
        text.push_str(match (kind.goes_into_wood(), kind.has_mate()) {
            (_, true) => "one end goes into wood: what the coat takes of that thread is in no table here",
            (true, _) => {
                "its thread goes into wood: no nut belongs to it, and what the coat takes of it is in no table here"
            }
            _ => "it forms its own thread: no nut belongs to it, and what the coat takes of it is in no table here",
        });
    }),
    brief: Phrase::By(|case, _, text| {
        let Some(kind) = case.part.map(|part| part.kind) else { return };
        text.push_str(match (kind.goes_into_wood(), kind.has_mate()) {
            (_, true) => "Its other end goes into wood.",
            (true, _) => "It goes into wood: no nut.",
            _ => "It forms its own thread: no nut.",
        });
    }),
    ..row(Key::OwnThread, HotDip)
};

/// Heavier than about a pound.
pub static HEAVY: Rule = Rule {
    source: mechanical_process::HEAVIEST_PIECE.source,
    when: When::If(|case| case.part.is_some_and(|part| part.thread.is_some() || part.kind == Kind::Other)),
    test: Test::By(|case| {
        case.part.is_none_or(|part| is_heavier(part, mechanical_process::HEAVIEST_PIECE.value))
    }),
    says: |_| Says::condition().asking(Instruction::AskThePlant),
    words: Phrase::By(|case, _, text| {
        text.push_str(match case.part.and_then(Part::mass) {
            Some(_) => "ask the plater: the piece is heavy",
            None => "weigh a piece and ask the plater",
        });
    }),
    why: Phrase::By(|case, _, text| {
        let limit = mechanical_process::HEAVIEST_PIECE.value.show(&unit::G, 0);
        if let Some(mass) = case.part.and_then(Part::mass) {
            put(text, format_args!("a piece weighs {}, and ", mass.show(&unit::G, 0)));
        }
        put(text, format_args!("above about {limit} the tumble can damage a piece"));
    }),
    met: "light enough for the barrel",
    brief: Phrase::By(|case, _, text| match case.part.and_then(Part::mass) {
        Some(mass) => {
            put(text, format_args!("ask the plater: a piece weighs {}", mass.show(&unit::G, 0)));
        }
        None => text.push_str("weigh a piece and ask the plater"),
    }),
    ..row(Key::Heavy, Mechanical)
};

/// Longer than a barrel takes without asking; a bar or a rod longer than a metre does not go in.
pub static LONG_FOR_BARREL: Rule = Rule {
    source: mechanical_process::LONGEST_PIECE.source,
    test: Test::By(|case| longer(case, mechanical_process::LONGEST_PIECE.value)),
    says: |case| {
        let bar =
            case.part.is_some_and(|part| part.kind.is_rod()) && longer(case, practice::LONGEST_BAR.value);
        if bar {
            Says::from(Mark::Bar, practice::LONGEST_BAR.source)
        } else {
            Says::condition().asking(Instruction::AskThePlant)
        }
    },
    words: Phrase::By(|_, says, text| {
        text.push_str(&if says.mark == Mark::Bar {
            worded(format_args!(
                "a rod longer than {} does not go into a barrel",
                practice::LONGEST_BAR.value.show(&unit::M, 0)
            ))
        } else {
            let longest = mechanical_process::LONGEST_PIECE.value.show(&unit::INCH, 0);
            worded(format_args!("ask the plater: the piece is longer than {longest}"))
        });
    }),
    met: "short enough for the barrel",
    brief: Phrase::By(|_, says, text| {
        text.push_str(match says.mark {
            Mark::Bar => "a rod longer than 1 m does not go in",
            _ => "ask the plater: longer than 26 in",
        });
    }),
    ..row(Key::LongForBarrel, Mechanical)
};

/// Longer than two metres.
pub static LONG_FOR_KETTLE: Rule = Rule {
    source: hotdip_process::LONGEST_ROD.source,
    test: Test::By(|case| longer(case, hotdip_process::LONGEST_ROD.value)),
    says: |_| Says::condition().asking(Instruction::AskThePlant),
    words: Phrase::By(|_, _, text| {
        put(
            text,
            format_args!(
                "ask the galvanizer: the piece is longer than {}",
                hotdip_process::LONGEST_ROD.value.show(&unit::M, 0)
            ),
        );
    }),
    met: "short enough for the kettle",
    brief: Phrase::Text("ask the galvanizer: longer than 2 m"),
    ..row(Key::LongForKettle, HotDip)
};

fn is_flat(case: &Case<'_>) -> bool {
    case.part.is_some_and(|part| part.kind.is_flat())
}

fn longer(case: &Case<'_>, limit: Length) -> bool {
    case.part.and_then(|part| part.length).is_some_and(|length| length > limit)
}

/// Whether a piece weighs more than that, as far as is known. Its shape is asked only where the piece may be too
/// heavy by its size alone: most are light.
fn is_heavier(part: &Part, limit: Mass) -> bool {
    let bar = bar(part);
    let is_over = |mass: Option<Mass>| mass.is_none_or(|mass| mass > limit);
    let is_small = part.own_mass.is_none() && !is_over(bar) && !is_over(most(part));
    !is_small && is_over(part.mass().or(bar))
}

/// The mass of a solid bar that is longer than a piece whose shape is not known by what a head, a hook or the
/// flats of a nut hold, or three times as long for a bow or an eye: more than the piece can weigh. Where nobody
/// says the length, a bolt is taken as short, and a bar, which seldom is, as ten diameters long.
fn bar(part: &Part) -> Option<Mass> {
    let diameter = part.thread?.diameter();
    let is_bar = part.kind.is_rod() || part.kind == Kind::DoubleEndStud;
    let length = part.length.unwrap_or(if is_bar { 10.0 * diameter } else { 2.0 * diameter });
    let bar = match part.kind.form() {
        // A cylinder head of 1.5 d, or a hexagon of 1.6 d, on the shank.
        Form::Bolt if part.kind.goes_into_a_tapped_hole() => length + 2.3 * diameter,
        Form::Bolt if part.kind != Kind::EyeBolt => length + 1.9 * diameter,
        // The hook of an anchor: six diameters.
        Form::Bar if part.kind == Kind::BentAnchor => length + 6.0 * diameter,
        Form::Bar if is_bar => length,
        // A hexagon of 1.6 d around its hole is 1.4 d² across, and no thin nut is higher than 0.7 d.
        Form::Nut if part.kind == Kind::ThinNut => 1.3 * diameter,
        // A disc three diameters wide and a fifth of one thick.
        Form::Washer | Form::Ring => 1.8 * diameter,
        _ => 3.0 * length,
    };
    Some(of_bar(diameter, bar))
}

/// More than a piece weighs whose standard gives its shape: a bar as long as the piece, or three times as long
/// for a bow, and as much again as the largest head holds, which is that of a small flange bolt, or the largest
/// flange of a nut.
fn most(part: &Part) -> Option<Mass> {
    let diameter = part.thread?.diameter();
    let length = part.length.unwrap_or(Length::ZERO);
    Some(of_bar(
        diameter,
        match part.kind.form() {
            Form::Nut => length + 6.5 * diameter,
            Form::Bar => 3.0 * length,
            _ => length + 4.5 * diameter,
        },
    ))
}

/// The mass of a solid bar.
fn of_bar(diameter: Length, length: Length) -> Mass {
    let section = std::f64::consts::FRAC_PI_4 * diameter.mm() * diameter.mm();
    // Grams of steel in a cubic millimetre.
    Mass::from_g(section * length.mm() * 0.007_85)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::table::din_3570;
    use crate::thread::{Thread, overtap};

    /// A piece that is light by its size alone is light by the shape that its standard gives it.
    #[test]
    fn no_shape_weighs_more_than_its_size_alone_allows() {
        let mut known = 0;
        for thread in Thread::all() {
            let diameter = thread.diameter();
            let times = [0.01, 0.25, 0.5, 1.0, 1.5, 2.0, 3.0, 5.0, 10.0, 30.0].map(|times| times * diameter);
            let bows = din_3570::ROWS.iter().map(|row| Length::from_mm(row.height));
            for (kind, length) in
                times.into_iter().chain(bows).flat_map(|length| Kind::ALL.map(|kind| (kind, length)))
            {
                let class = overtap::usual_bolt_class(thread);
                let part = Part { kind, length: Some(length), ..Part::of_pair(thread, class, None) };
                if let (Some(mass), Some(most)) = (part.mass(), most(&part)) {
                    known += 1;
                    assert!(
                        mass <= most,
                        "{kind} {thread} {} mm: {} g of {} g",
                        length.mm(),
                        mass.g(),
                        most.g()
                    );
                }
            }
        }
        assert!(known > 10_000, "{known}");
    }

    /// Common practice: pieces above a pound, or longer than 26 in, are asked about; bars above a metre do not go
    /// in, and above two the galvanizer is asked.
    #[test]
    fn a_piece_at_a_limit_is_within_it() {
        let thread = crate::thread::Designation::read("M16").unwrap().thread;
        let class = crate::thread::ToleranceClass::read("6g").unwrap();
        let says = |kind, key: Key, mass: Option<f64>, length: Length| {
            let part = Part {
                kind,
                own_mass: mass.map(Mass::from_lb),
                length: Some(length),
                ..Part::of_pair(thread, class, None)
            };
            let rule = crate::rule::rule(key);
            let process = rule.process.unwrap();
            rule.judge(&Case { part: Some(&part), ..Case::of(process) }).unwrap().mark
        };
        for (pounds, mark) in [(0.99, Mark::Met), (1.0, Mark::Met), (1.01, Mark::Condition)] {
            assert_eq!(
                says(Kind::HexBolt, Key::Heavy, Some(pounds), Length::from_mm(80.0)),
                mark,
                "{pounds} lb"
            );
        }
        let (mm, inch) = (Length::from_mm, Length::from_inch);
        for (kind, key, length, mark) in [
            (Kind::HexBolt, Key::LongForBarrel, inch(26.0), Mark::Met),
            (Kind::HexBolt, Key::LongForBarrel, inch(26.1), Mark::Condition),
            (Kind::HexBolt, Key::LongForBarrel, mm(1100.0), Mark::Condition),
            (Kind::Rod, Key::LongForBarrel, mm(1000.0), Mark::Condition),
            (Kind::Rod, Key::LongForBarrel, mm(1001.0), Mark::Bar),
            (Kind::Rod, Key::LongForKettle, mm(2000.0), Mark::Met),
            (Kind::Rod, Key::LongForKettle, mm(2001.0), Mark::Condition),
        ] {
            assert_eq!(says(kind, key, None, length), mark, "{kind:?}, {length:?}");
        }
    }
}
