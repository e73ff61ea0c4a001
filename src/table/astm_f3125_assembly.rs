//! ASTM F3125, A325 and A563: what a zinc-coated structural assembly is asked beside its coat.

use super::structural::Bolt::{self, *};
use super::structural::Requirement;
use super::structural::Topic::{self, *};
use crate::process::Process::{self, *};
use crate::source::{Source, Sourced, document};

/// The requirements.
pub static ROWS: &[Requirement] = &[
    row(
        Lubricant,
        ZINC_BOLTS,
        BOTH,
        "Lubricate the zinc-coated nuts, dyed and dry to the touch.",
        document::ASTM_A563.memory("supplementary requirement, lubricant of zinc-coated nuts"),
    ),
    row(
        MatchedLot,
        ZINC_BOLTS,
        BOTH,
        "Order bolt, nut and washer as one matched assembly from one maker.",
        document::ASTM_F3125.read("Annex A1, after a steel institute"),
    ),
    row(
        OneProcess,
        ZINC_BOLTS,
        BOTH,
        "Coat bolt, nut and washer by the same process; do not mix two processes in a lot.",
        document::ASTM_A563M.read("A563M-01, 4.7"),
    ),
    row(
        Tapping,
        ZINC_BOLTS,
        &[HotDip],
        "Tap the nuts over after they are dipped.",
        document::ASTM_A563M.read("A563M-01, 4.7"),
    ),
    row(
        Tapping,
        ZINC_BOLTS,
        &[Mechanical],
        "Tap the nuts over before they are coated, and not again.",
        document::ASTM_A563.memory("mechanically coated nuts"),
    ),
    row(
        RotationalCapacity,
        ZINC_BOLTS,
        BOTH,
        "Have two assemblies of every combination of lots pass the rotational-capacity test.",
        document::ASTM_F3125.read("Annex A2, after a highway agency's procedure"),
    ),
    row(Washer, ZINC_BOLTS, &[], "Put an F436 washer under the turned part.", document::RCSC.read("washers")),
];

/// The turn from snug that a zinc-coated A325 assembly must bear, by its length in diameters.
pub static TURN_SOURCE: Source = document::ASTM_F3125.memory("Annex A2, rotation from snug");

/// The least turn in degrees for a length in diameters; `None` beyond 12 diameters, which is not set. Known by
/// [`TURN_SOURCE`].
pub fn turn_degrees(diameters: f64) -> Option<u16> {
    match diameters {
        length if length <= 4.0 => Some(240),
        length if length <= 8.0 => Some(360),
        length if length <= 12.0 => Some(420),
        _ => None,
    }
}

/// The tension at the end of that turn, as a multiple of the least installation tension.
pub const TENSION_AFTER_TURN: Sourced<f64> =
    Sourced { value: 1.15, source: document::ASTM_F3125.memory("Annex A2, tension after rotation") };

/// The greatest torque in the test: a quarter of tension × nominal diameter.
pub const TORQUE_SHARE: Sourced<f64> = Sourced {
    value: 0.25,
    source: document::ASTM_F3125.read("Annex A2, after a highway agency's procedure"),
};

const ZINC_BOLTS: &[Bolt] = &[A325, A325M, F1852];
const BOTH: &[Process] = &[HotDip, Mechanical];

const fn row(
    topic: Topic,
    bolts: &'static [Bolt],
    processes: &'static [Process],
    text: &'static str,
    source: Source,
) -> Requirement {
    Requirement { topic, bolts, processes, text, source }
}
