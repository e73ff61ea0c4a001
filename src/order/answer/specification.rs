//! The line to put on the order: process, standard, class, nut, mark.

use super::named;
use crate::coat::Process;
use crate::order::judge::Judged;
use crate::order::set::{Nut, nut_to_order};
use crate::order::threads::{bolt_class, is_metric};
use crate::order::{Mate, OrderLine};
use crate::quantity::{Length, Quantity, Shown, unit};
use crate::rule::Offer;
use crate::sentence::worded;
use crate::source::document;
use crate::thread::ToleranceClass;
use crate::thread::class::BoltPosition;
use crate::thread::overtap::{Allowance, standard_class};
use crate::thread::pair::{Found, Room};

/// `hot-dip to ISO 10684, nuts 6AZ marked Z, tapped after dipping`.
pub(super) fn specification(line: &OrderLine, judged: &Judged) -> String {
    let mut parts = Vec::new();
    parts.push(whole(judged));
    // ISO 898-2 has one nut for a class of bolt; the others, and the high ones, are ordered by name.
    let by_name =
        |nut: &Nut| line.nut.is_some() || nut.is_high || nut.grade.document() != &document::ISO_898_2;
    let nut =
        nut_to_order(line, judged.is_nut_tapped_over()).filter(|nut| by_name(nut) && !line.part.is_nut());
    let named = |nut: Nut| {
        worded(format_args!("{}{} nuts", nut.grade.short_name(), if nut.is_high { " style 2" } else { "" }))
    };
    let hand = if line.is_left_hand { "left-hand " } else { "" };
    let nuts = hand.to_owned() + &nut.map_or_else(|| "nuts".to_owned(), named);
    let hot_dip = judged.process == Process::HotDip;
    let is_nut = line.part.is_nut();
    if let Some(mated) = judged.fit.as_ref().and_then(Found::pair_to_order) {
        parts.extend(match mated.pair.room {
            Room::Ordered if hot_dip && is_undersize(line) => {
                let of_line = line.nut.and_then(|nut| nut.class);
                let nut = of_line.or(line.thread.map(standard_class));
                let nut = nut.map_or_else(String::new, |nut| worded(format_args!(" {nut}")));
                Some(worded(format_args!("bolts 6az marked U, {hand}nuts{nut} tapped after dipping")))
            }
            Room::Ordered => match (line.nut, nut) {
                (Some(_), Some(_)) => Some(nuts.clone()),
                (Some(Mate { class: Some(class), .. }), None) => {
                    Some(worded(format_args!("{hand}{class} nuts")))
                }
                (Some(_), None) => Some(worded(format_args!("{hand}standard nuts"))),
                (None, _) => None,
            },
            Room::NutG if is_nut => Some("tapped 6G".to_owned()),
            Room::NutG => Some(worded(format_args!("{nuts} 6G"))),
            Room::Bolt(position) if is_nut => {
                Some(worded(format_args!("for bolts 6{} before plating", position.letter())))
            }
            Room::Bolt(position) => Some(worded(format_args!("bolt 6{} before plating", position.letter()))),
            Room::Smaller(_) if is_nut => {
                Some("the mating bolt made smaller before its coat, or the nut tapped over".to_owned())
            }
            Room::Smaller(_) => Some("a smaller thread before the coat".to_owned()),
            Room::Tapped(allowance) if line.goes_into_a_tapped_hole() => {
                let by = mated.pair.nut.deviation.value;
                Some(match allowance {
                    Allowance::Az | Allowance::Ax => {
                        worded(format_args!("room in the tapped hole, {allowance}"))
                    }
                    _ => worded(format_args!("room in the tapped hole, {} on the diameter", size(line, by))),
                })
            }
            Room::Tapped(allowance) => {
                let by = mated.pair.nut.deviation.value;
                let when = if hot_dip { "after dipping" } else { "before plating" };
                let nuts = if is_nut { String::new() } else { worded(format_args!("{nuts} ")) };
                Some(match allowance {
                    Allowance::Az if hot_dip => worded(format_args!("{nuts}6AZ marked Z, tapped {when}")),
                    Allowance::Ax if hot_dip => worded(format_args!("{nuts}6AX marked X, tapped {when}")),
                    Allowance::Az | Allowance::Ax => {
                        worded(format_args!("{nuts}tapped over to {allowance} {when}"))
                    }
                    _ => worded(format_args!("{nuts}tapped over by {} {when}", size(line, by))),
                })
            }
        });
    } else if line.nut.is_some() && matches!(judged.fit, Some(Found::NotPublished(..))) {
        parts.push(worded(format_args!("{nuts} tapped over after dipping")));
    } else if line.nut.is_some() && nut.is_some() {
        parts.push(nuts);
    }
    if line.is_left_hand && !parts.iter().any(|part| part.contains(hand)) {
        parts.push("left-hand thread".to_owned());
    }
    parts.join(", ")
}

/// A small length in the unit of the thread, as an allowance is printed.
fn size(line: &OrderLine, length: Length) -> Shown {
    if is_metric(line) {
        return length.show(&unit::MM, 2);
    }
    let thousandths = length.inch() * 1000.0;
    let is_whole = (thousandths - thousandths.round()).abs() < 1e-6;
    length.show(&unit::INCH, if is_whole { 3 } else { 4 })
}

fn is_undersize(line: &OrderLine) -> bool {
    matches!(bolt_class(line), Some(ToleranceClass::Bolt(class)) if class.position == BoltPosition::Az)
}

/// `mechanical, B695 class 40`, `hot-dip to ISO 10684`.
pub(super) fn whole(judged: &Judged) -> String {
    match (&judged.offer, judged.process) {
        (Some(offer), Process::HotDip) => worded(format_args!("hot-dip to {}", standard(offer))),
        (Some(offer), process) => worded(format_args!("{}, {}", named(process), class(offer))),
        (None, process) => named(process).to_owned(),
    }
}

/// `B695 class 40`, `ISO 4042, 5 µm`, `F2329`.
fn class(offer: &Offer) -> String {
    match offer.class.process {
        Process::HotDip => standard(offer),
        Process::Mechanical => worded(format_args!("{} {}", standard(offer), offer.class.name)),
        Process::Electroplated => {
            worded(format_args!("{}, {}", standard(offer), offer.min.show(&unit::UM, 0)))
        }
    }
}

/// The standard as it is said aloud: without its edition, and without the name of its publisher where
/// the letter and the number are enough.
fn standard(offer: &Offer) -> String {
    let document = offer.class.document;
    if document == &document::ASTM_F1941 {
        return "F1941".to_owned();
    }
    let name = document.name.split([':', '/']).next().unwrap_or(document.name);
    match name.strip_prefix("ASTM ") {
        Some(name) => name.split('-').next().unwrap_or(name).to_owned(),
        None => name.to_owned(),
    }
}
