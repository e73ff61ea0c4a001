//! The nut and the washer that the standards put with a bolt.

use super::OrderLine;
use crate::part::Kind;
use crate::quantity::Hardness;
use crate::steel::pairing::{self, Asked, Nuts};
use crate::steel::{Grade, State, Steel, load};
use crate::table::nut_style::Style;
use crate::table::pairing::Washer;
use crate::thread::Thread;

/// A nut that goes with a bolt.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Nut {
    /// Its grade.
    pub grade: Grade,
    /// Whether it is a heavy hex.
    pub is_heavy: bool,
    /// The name it is ordered by, where that is not the grade of its steel: `HR 10`.
    pub by: Option<&'static str>,
}

/// The nut of an order: as named, or the one that the standards ask for on the zinc-coated bolt.
pub fn nut(line: &OrderLine) -> Option<Nut> {
    nut_of(line, asked_for(line).as_ref())
}

/// The same, where what the standards put on the bolt is known.
pub(super) fn nut_of(line: &OrderLine, asked_for: Option<&Nuts>) -> Option<Nut> {
    if let Some(grade) = line.nut.and_then(|nut| nut.grade) {
        let heavy = asked_for.filter(|nuts| nuts.takes(grade, Some(Style::HeavyHex)) == Some(true));
        return Some(Nut { grade, is_heavy: heavy.is_some(), by: heavy.and_then(Nuts::of_system) });
    }
    let nuts = asked_for?;
    let grade = load::steel_of_nut(nuts.nut.grade)?;
    Some(Nut { grade, is_heavy: nuts.nut.style == Style::HeavyHex, by: nuts.of_system() })
}

/// What the standards put on the bolt of the order, zinc-coated.
pub fn asked_for(line: &OrderLine) -> Option<Nuts> {
    nuts_for(line.part, line.thread, line.steel)
}

/// What the standards put on a bolt of this steel, zinc-coated; `None` for what takes no nut.
pub fn nuts_for(kind: Kind, thread: Thread, steel: Option<State>) -> Option<Nuts> {
    if !kind.has_mate() || kind.is_nut() || kind.goes_into_a_tapped_hole() {
        return None;
    }
    let grade = steel.and_then(|steel| steel.grade())?.grade;
    let asked = Asked {
        grade,
        diameter: thread.diameter(),
        is_coarse: thread.is_coarse(),
        is_zinc_coated: true,
        is_structural: kind == Kind::StructuralBolt && thread.is_metric(),
    };
    pairing::nuts(asked).ok()
}

/// The steel of the washer: as named; F436 where the document of the bolt names it and beside hard inch
/// bolts, 200 HV or 300 HV beside metric ones.
pub fn washer(line: &OrderLine) -> Option<Steel> {
    washer_of(line, asked_for(line).as_ref())
}

/// The same, where what the standards put on the bolt is known.
pub(super) fn washer_of(line: &OrderLine, asked_for: Option<&Nuts>) -> Option<Steel> {
    let diameter = line.thread.diameter();
    if let Some(grade) = line.washer.and_then(|washer| washer.grade) {
        return Steel::grade(grade, diameter).ok();
    }
    let bolt = line.steel.and_then(|steel| steel.grade())?.grade;
    let named = asked_for.and_then(|nuts| nuts.washer) == Some(Washer::F436);
    if named || !line.thread.is_metric() {
        return Steel::grade(Grade::F436, diameter).ok();
    }
    let hard = matches!(bolt, Grade::Class10_9 | Grade::Class12_9 | Grade::Class12_9Underlined);
    Some(Steel::Hardness(Hardness::hv(if hard { 300.0 } else { 200.0 })))
}
