//! Whether the coated thread goes together, and what of the thread is left.

use super::{Case, Instruction, Key, Phrase, Rule, Says, Test, Topic, Under, When};
use crate::part::Kind;
use crate::process::Process;
use crate::quantity::{Length, Quantity, Shown, unit};
use crate::sentence::{put, worded};
use crate::source::{Sourced, common_practice, document};
use crate::steel::Grade;
use crate::table::{iso_4042_threads, practice};
use crate::thread::ToleranceClass;
use crate::thread::class::BoltPosition;
use crate::thread::fit::{Assembly, GROWTH, LEAST_OVERLAP, keeps_enough};
use crate::thread::overtap::Allowance;
use crate::thread::pair::{DEEP_OVERLAP, Found, INSIDE_SHARE, Mated, Room};
use crate::working::Mark;

const fn row(key: Key) -> Rule {
    Rule {
        key,
        topic: Topic::Fit,
        process: None,
        under: Under::Any,
        source: GROWTH,
        when: When::If(|case| case.fit.is_some()),
        test: Test::Always,
        says: |_| Says::bar(),
        words: Phrase::NONE,
        why: Phrase::NONE,
        met: "",
        brief: Phrase::NONE,
    }
}

/// The coated bolt in the nut: as ordered, or with the room that goes on the order.
pub static ASSEMBLES: Rule = Rule {
    when: When::If(|case| matches!(case.fit, Some(Found::Takes(_) | Found::Binds(_)))),
    says: |case| match case.fit {
        Some(Found::Takes(mated)) if mated.assembly != Assembly::Assembles => {
            Says::from(Mark::Note, iso_4042_threads::TABLE_2_SOURCE)
        }
        Some(Found::Takes(mated)) if mated.pair.room == Room::Ordered => Says::MET,
        Some(Found::Takes(mated)) if is_deep(mated) => Says::from(Mark::Condition, DEEP_OVERLAP.source),
        // The share of the coat inside the nut decides, and it is assumed.
        Some(Found::Takes(_)) if case.process == Process::Mechanical => {
            Says::from(Mark::Term, INSIDE_SHARE.source)
        }
        Some(Found::Takes(_)) => Says::term(),
        Some(Found::Binds(mated)) if mated.assembly == Assembly::OnlyEven => {
            Says::condition().asking(Instruction::AgreeAllowance(None))
        }
        _ => Says::bar(),
    },
    why: Phrase::By(|case, _, text| match case.fit {
        Some(Found::Takes(mated)) => {
            takes(case, mated, text);
            if is_deep(mated) {
                put(
                    text,
                    format_args!(
                        "; at minimum material the flanks overlap by {} of their depth, and nuts tapped as a matter of course \
                     leave {} or more",
                        Shown::percent(mated.overlap, 0),
                        Shown::percent(DEEP_OVERLAP.value, 0)
                    ),
                );
            }
        }
        Some(Found::Binds(mated)) if mated.assembly == Assembly::OnlyEven => {
            text.push_str("an even coat goes together, one so uneven may bind");
        }
        _ => {}
    }),
    words: Phrase::By(|case, _, text| match case.fit {
        Some(Found::Takes(mated)) => {
            text.push_str(&room_in_words(case, mated.pair.room));
            if is_deep(mated) {
                text.push_str(", or prove the pair by a proof load test");
            }
        }
        Some(Found::Binds(mated)) if mated.assembly == Assembly::OnlyEven => {
            if mated.pair.room != Room::Ordered {
                text.push_str(&room_in_words(case, mated.pair.room));
                text.push_str("; ");
            }
            put(
                text,
                format_args!(
                    "hold the coat to at most {}, or prove the fit of a trial lot with its nuts",
                    mated.worst.thickest.show(&unit::UM, 1)
                ),
            );
        }
        Some(Found::Binds(mated)) => put(
            text,
            format_args!(
                "no nut takes this coat: there is room for {}, on the {}; order a thinner class",
                thickest(case, mated).show(&unit::UM, 0),
                mated.worst.governs.name(),
            ),
        ),
        _ => {}
    }),
    brief: Phrase::By(|case, says, text| match case.fit {
        _ if says.mark == Mark::Bar => text.push_str("no nut takes the coat"),
        Some(Found::Takes(mated)) if says.mark == Mark::Condition => {
            let whom = match case.is_for_a_tapped_hole() {
                true => "the tapped hole with whoever makes it",
                false => "the nut with its maker",
            };
            let left = Shown::percent(mated.overlap, 0);
            put(text, format_args!("agree {whom}, {left} of the thread left"));
        }
        Some(Found::Binds(_)) => text.push_str("prove the fit of a trial lot with its nuts"),
        Some(Found::Takes(mated)) if is_beyond_classes(case, mated.pair.room) => {
            text.push_str("agree the thread");
        }
        Some(Found::Takes(mated)) if matches!(mated.pair.room, Room::Tapped(Allowance::Own(_))) => {
            text.push_str(if case.is_for_a_tapped_hole() { "agree the hole" } else { "agree the nuts" });
        }
        _ => {}
    }),
    ..row(Key::Assembles)
};

/// No tapped nut is published: a question to the galvanizer, with the allowance that the coat needs.
pub static NOT_PUBLISHED: Rule = Rule {
    source: document::ASTM_A563.read("Table 5"),
    when: When::If(|case| matches!(case.fit, Some(Found::NotPublished(..)))),
    says: |case| match case.fit {
        Some(Found::NotPublished(needed, refusal)) => {
            Says::from(Mark::Condition, refusal.source()).asking(Instruction::AgreeAllowance(Some(*needed)))
        }
        _ => Says::MET,
    },
    why: Phrase::Text("no tapped nut is published for this thread"),
    words: Phrase::By(|case, _, text| {
        if let Some(Found::NotPublished(needed, _)) = case.fit {
            put(
                text,
                format_args!("agree an allowance of {} or more on the diameter", case.size(*needed, 3)),
            );
        }
    }),
    ..row(Key::NotPublished)
};

/// The limits of the thread are not known.
pub static UNKNOWN: Rule = Rule {
    when: When::If(|case| matches!(case.fit, Some(Found::Unknown(_)))),
    says: |case| match case.fit {
        Some(Found::Unknown(refusal)) => Says::from(Mark::NotJudged, refusal.source()),
        _ => Says::MET,
    },
    words: Phrase::Text("have the fit gauged: its limits are not known"),
    why: Phrase::By(|case, _, text| {
        if let Some(Found::Unknown(refusal)) = case.fit {
            text.push_str(&refusal.to_string());
        }
    }),
    brief: Phrase::Text("have the fit gauged"),
    ..row(Key::FitUnknown)
};

/// A part by its own name that has a thread: what that thread takes is not known. The twist-off bolts of F3125
/// have the nuts of their document.
pub static OTHER_PART: Rule = Rule {
    source: practice::OTHER_FIT,
    when: When::If(|case| {
        let is_twist_off = case
            .grade()
            .is_some_and(|grade| Grade::AS_A325.contains(&grade) || Grade::AS_A490.contains(&grade));
        case.part.is_some_and(|part| part.kind == Kind::Other && part.thread.is_some()) && !is_twist_off
    }),
    says: |_| Says::from(Mark::NotJudged, practice::OTHER_FIT),
    why: Phrase::Text("how such a part goes together is not known here"),
    words: Phrase::Text("agree the room for the coat in its thread, and have the fit gauged"),
    brief: Phrase::Text("agree the room for the coat in its thread"),
    ..row(Key::OtherFit)
};

/// A nut or a bolt of a class that was written, and that does not take the coat.
pub static WRITTEN_NUT: Rule = Rule {
    source: common_practice("a class that was written is changed by agreement only"),
    when: When::If(|case| instead(case).is_some()),
    says: |_| Says::condition(),
    why: Phrase::By(|case, _, text| {
        if let Some((room, written)) = instead(case) {
            let what = match room {
                Room::Bolt(_) | Room::Smaller(_) => "bolt",
                _ if case.is_for_a_tapped_hole() => "hole",
                _ => "nut",
            };
            put(text, format_args!("a {written} {what} does not take this coat"));
        }
    }),
    words: Phrase::By(instead_in_words),
    brief: Phrase::By(instead_in_words),
    ..row(Key::WrittenNut)
};

/// A nut tapped so far, or a bolt made so small, that hardly any thread is left; a pair from the shelf has all
/// of its own.
pub static OVERLAP: Rule = Rule {
    source: LEAST_OVERLAP.source,
    when: When::If(|case| {
        mated(case).is_some_and(|mated| mated.pair.room != Room::Ordered || mated.pair.class.is_undercut())
    }),
    test: Test::By(|case| mated(case).is_some_and(|mated| !keeps_enough(mated.overlap))),
    words: Phrase::By(|case, _, text| {
        let left = mated(case).map_or(0.0, |mated| mated.overlap);
        put(
            text,
            format_args!(
                "too little thread would be left: the flanks overlap by {} of their depth at minimum material, and {} is the \
             least",
                Shown::percent(left, 1),
                Shown::percent(LEAST_OVERLAP.value, 1)
            ),
        );
    }),
    met: "enough of the thread is left",
    brief: Phrase::Text("too little thread would be left"),
    ..row(Key::Overlap)
};

/// A bolt cut under and a nut tapped over: each makes the whole room for itself.
pub static MATING: Rule = Rule {
    source: document::ISO_965_5.read("clause 1"),
    when: When::If(|case| {
        case.part.is_some_and(|part| {
            part.bolt_class.is_some_and(ToleranceClass::is_undercut) && part.nut_class.is_some()
        })
    }),
    test: Test::By(|case| {
        case.part.and_then(|part| part.nut_class).is_some_and(ToleranceClass::is_over_size)
    }),
    words: Phrase::Text("6AZ and 6AX nuts must not be put on 6az bolts: the thread may strip; order 6H nuts"),
    met: "the nut may be put on a bolt cut under",
    brief: Phrase::Text("6AZ and 6AX nuts must not go on 6az bolts"),
    ..row(Key::Mating)
};

/// The room that takes the coat, in a nut or on a bolt, and the class that was written instead.
fn instead(case: &Case<'_>) -> Option<(Room, ToleranceClass)> {
    let (part, room) = (case.part?, case.mated()?.pair.room);
    let written = match room {
        Room::Bolt(_) | Room::Smaller(_) => {
            part.bolt_class.filter(|_| part.is_class_written && is_of_a_class_with_room(case))
        }
        Room::NutG | Room::Tapped(_) => part.nut_class.filter(|written| room != Room::of_nut(*written)),
        Room::Ordered => None,
    };
    Some((room, written?))
}

/// Whether the part is a metric bolt of a class with room for a coat, g, f or e: one without is given it by its maker.
fn is_of_a_class_with_room(case: &Case<'_>) -> bool {
    case.part.filter(|part| !part.kind.is_nut()).is_some_and(
        |part| matches!(part.bolt_class, Some(ToleranceClass::Bolt(class)) if class.position != BoltPosition::H),
    )
}

/// Whether nobody wrote the class of a bolt that is made smaller than any class of ISO 4042.
fn is_beyond_classes(case: &Case<'_>, room: Room) -> bool {
    matches!(room, Room::Smaller(_)) && is_of_a_class_with_room(case) && instead(case).is_none()
}

fn instead_in_words(case: &Case<'_>, _: Says, text: &mut String) {
    let Some((room, written)) = instead(case) else { return };
    if case.is_for_a_tapped_hole() && !matches!(room, Room::Bolt(_) | Room::Smaller(_)) {
        let how = match room {
            Room::Tapped(allowance) => over_in_words(case, allowance),
            _ => "to 6G".to_owned(),
        };
        return put(
            text,
            format_args!(
                "agree the hole of {written} tapped {how}, or the bolt made smaller before its coat"
            ),
        );
    }
    let other = match room {
        Room::Tapped(Allowance::A563) => "a nut tapped over by ASTM A563".to_owned(),
        Room::Tapped(Allowance::Own(by)) => worded(format_args!("a nut tapped over by {}", case.size(by, 3))),
        Room::Tapped(published) => published.to_string(),
        Room::Bolt(_) | Room::Smaller(_) => "a smaller thread".to_owned(),
        Room::NutG | Room::Ordered => "6G".to_owned(),
    };
    put(text, format_args!("agree {other} instead of the {written} ordered"));
}

fn mated<'c>(case: &Case<'c>) -> Option<&'c Mated> {
    match case.fit {
        Some(Found::Takes(mated) | Found::Binds(mated)) => Some(mated),
        _ => None,
    }
}

/// The thickest coat that still assembles.
fn takes(case: &Case<'_>, mated: &Mated, text: &mut String) {
    let thickest = thickest(case, mated).show(&unit::UM, 0);
    match mated.pair.room {
        _ if mated.assembly != Assembly::Assembles => put(
            text,
            format_args!(
                "ISO 4042, Table 2, is for an even coat; at the worst corner an uneven one of up to {thickest} is sure to \
                 go together"
            ),
        ),
        Room::Ordered => put(text, format_args!("the thickest coat that still assembles is {thickest}")),
        _ if case.process == Process::Mechanical => put(
            text,
            format_args!(
                "with half of the coat inside the nut the thickest that still assembles is {thickest}"
            ),
        ),
        _ => put(text, format_args!("the thickest coat that still assembles is {thickest}")),
    }
}

/// Whether a nut is tapped by what the coat needs or the order says, and so far that less of the thread is
/// left than any class tapped as a matter of course leaves.
fn is_deep(mated: &Mated) -> bool {
    matches!(mated.pair.room, Room::Tapped(Allowance::Own(_))) && mated.overlap < DEEP_OVERLAP.value
}

/// The thickest coat on the bolt that still assembles, with what of it lies in the nut.
fn thickest(case: &Case<'_>, mated: &Mated) -> Length {
    match case.process {
        Process::Mechanical => mated.worst.thickest * (1.0 / (1.0 + INSIDE_SHARE.value)),
        Process::HotDip | Process::Electroplated => mated.worst.thickest,
    }
}

/// The room for the coat, as an instruction of the order.
pub fn room_in_words(case: &Case<'_>, room: Room) -> String {
    let is_nut = case.part.is_some_and(|part| part.kind.is_nut());
    let is_screw = case.is_for_a_tapped_hole();
    let hot_dip = case.process == Process::HotDip;
    match room {
        Room::Ordered if is_screw => "bolt and hole go together as ordered".to_owned(),
        Room::Ordered => "bolt and nut go together as ordered".to_owned(),
        Room::NutG if is_screw => "tap the hole to 6G".to_owned(),
        Room::NutG => "order the nut of class 6G".to_owned(),
        Room::Bolt(position) if is_nut => worded(format_args!(
            "for bolts of class 6{} before their coat: say so to whoever orders them",
            position.letter()
        )),
        Room::Bolt(position) => {
            worded(format_args!("order the bolt of class 6{} before the coat", position.letter()))
        }
        Room::Smaller(by) if is_nut => worded(format_args!(
            "have the mating bolt made smaller by {by} on the diameter before its coat, or order the nut tapped over by \
             as much",
            by = case.size(by, 3)
        )),
        Room::Smaller(by) => worded(format_args!(
            "{} the thread made smaller by {} on the diameter before the coat",
            if is_beyond_classes(case, room) { "agree with its maker" } else { "have" },
            case.size(by, 3)
        )),
        Room::Tapped(allowance) => {
            let how = over_in_words(case, allowance);
            // What no table prints is agreed with whoever makes it; what one prints is ordered.
            if let Allowance::Own(_) = allowance {
                let when = match (is_nut || !is_screw, hot_dip) {
                    (true, true) => ", tapped after dipping",
                    (true, false) => ", before they are coated",
                    (false, _) => "",
                };
                let (what, whom) = match (is_screw, is_nut) {
                    (true, _) => ("the hole", "whoever makes it"),
                    (false, _) => ("nuts", "their maker"),
                };
                return worded(format_args!("agree with {whom} {what} tapped {how}{when}"));
            }
            match (is_nut, is_screw, hot_dip) {
                (true, _, true) => worded(format_args!("dip the nut as a blank, then tap it {how}")),
                (true, _, false) => worded(format_args!("order the nut tapped {how} before it is coated")),
                (false, true, _) => worded(format_args!("tap the hole {how}")),
                (false, false, true) => worded(format_args!("order nuts tapped {how}, tapped after dipping")),
                (false, false, false) => {
                    worded(format_args!("order nuts tapped {how} before they are coated"))
                }
            }
        }
    }
}

/// How far a nut is tapped over; the marks of ISO 10684 are for hot-dip.
fn over_in_words(case: &Case<'_>, allowance: Allowance) -> String {
    let hot_dip = case.process == Process::HotDip;
    let screw = case.is_for_a_tapped_hole();
    match allowance {
        Allowance::A563 => "over by ASTM A563".to_owned(),
        Allowance::Own(by) => worded(format_args!("over by {} on the diameter", case.size(by, 3))),
        other => match other.mark().filter(|_| hot_dip && !screw) {
            Some(Sourced { value: letter, .. }) => worded(format_args!("over to {other}, marked {letter}")),
            None => worded(format_args!("over to {other}")),
        },
    }
}

#[cfg(test)]
mod tests;
