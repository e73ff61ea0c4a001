//! Gauge limits before and after a coat, and what a coated thread must be cut to.

use crate::source::{Source, document};
use crate::table::Refusal;

use super::class::BoltPosition;
use super::fit::{CREST_GROWTH, Coat, PITCH_GROWTH};
use super::limits::{self, BoltLimits, Limits};
use super::{Thread, ToleranceClass};

/// Where the gauge after plating is published: a coat within the allowance is gauged with 6h (3A).
pub fn after_plating(thread: Thread) -> Source {
    if thread.is_metric() { document::ASME_B1_13M.read("8.2") } else { document::ASME_B1_1.read("clause 7") }
}

/// Where the limits before the coat are published.
pub const BEFORE_COAT: Source =
    document::MACHINERYS_HANDBOOK.read("27th ed., p. 1793, after ASME B1.13M and B1.1");

/// The share by which a coat of which only the nominal or least thickness is known may be thicker.
pub const THICKER: f64 = 0.5;

/// The limits of a thread without allowance: what a coated thread must not pass, 6h or 3A's greatest.
///
/// # Errors
/// Refuses a thread that has no such class.
pub fn basic(thread: Thread) -> Result<BoltLimits, Refusal> {
    let class = if thread.is_metric() {
        ToleranceClass::bolt(6, BoltPosition::H)
    } else {
        ToleranceClass::UnifiedBolt(3)
    };
    limits::bolt(thread, class)
}

/// What to cut a bolt to so that it lies between limits once it is coated.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BeforeCoat {
    /// Major diameter: greatest less 2 t of the greatest coat, least less 2 t of the least.
    pub major: Limits,
    /// Pitch diameter: greatest less 4 t of the greatest coat, least less 4 t of the least.
    pub pitch: Limits,
}

/// The limits before the coat for limits after it; `None` where the coat varies by more than the
/// tolerance can take.
pub fn before_coat(after_major: Limits, after_pitch: Limits, coat: Coat) -> Option<BeforeCoat> {
    let less = |limits: Limits, growth: f64| Limits {
        min: limits.min - growth * coat.min,
        max: limits.max - growth * coat.max,
    };
    let before =
        BeforeCoat { major: less(after_major, CREST_GROWTH), pitch: less(after_pitch, PITCH_GROWTH) };
    let stands = |limits: Limits| limits.min < limits.max;
    (stands(before.major) && stands(before.pitch)).then_some(before)
}
