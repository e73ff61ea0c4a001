//! Gauge limits before and after a coat, and what a coated thread must be cut to.

use crate::quantity::Length;
use crate::source::{Source, Sourced, document};
use crate::table::Refusal;

use super::class::BoltPosition;
use super::fit::{CREST_GROWTH, Coat, PITCH_GROWTH};
use super::limits::{self, BoltLimits, Limits, NutLimits};
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
    /// Major diameter: the least of its greatest and of the basic one less 2 t of the greatest coat; its
    /// least less 2 t of the least.
    pub major: Limits,
    /// Pitch diameter: the same with 4 t.
    pub pitch: Limits,
}

/// The limits before the coat of a bolt that is to keep its class, and to pass a GO gauge of basic size
/// once it is coated; `None` where the coat varies by more than the tolerance can take.
pub fn before_coat(bolt: &BoltLimits, basic: &BoltLimits, coat: Coat) -> Option<BeforeCoat> {
    let less = |own: Limits, basic: Limits, growth: f64| {
        let thinned = basic.max - growth * coat.max;
        Limits { min: own.min - growth * coat.min, max: if thinned < own.max { thinned } else { own.max } }
    };
    let before = BeforeCoat {
        major: less(bolt.major, basic.major, CREST_GROWTH),
        pitch: less(bolt.pitch, basic.pitch, PITCH_GROWTH),
    };
    let stands = |limits: Limits| limits.min < limits.max;
    (stands(before.major) && stands(before.pitch)).then_some(before)
}

/// What to tap a nut to that is coated afterwards, so that it lies in its limits with the coat on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NutBeforeCoat {
    /// By how much its pitch diameter is tapped larger for the greatest coat: 4 t.
    pub larger: Length,
    /// By how much its minor diameter is larger: 2 t.
    pub minor_larger: Length,
    /// Pitch diameter: least plus 4 t of the greatest coat, greatest plus 4 t of the least.
    pub pitch: Limits,
    /// Minor diameter: the same with 2 t.
    pub minor: Limits,
}

/// The limits of a nut before a coat on its own thread; those of the nut itself where there is none.
pub fn nut_before_coat(after: &NutLimits, coat: Coat) -> NutBeforeCoat {
    let more = |limits: Limits, growth: f64| Limits {
        min: limits.min + growth * coat.max,
        max: limits.max + growth * coat.min,
    };
    NutBeforeCoat {
        larger: PITCH_GROWTH * coat.max,
        minor_larger: CREST_GROWTH * coat.max,
        pitch: more(after.pitch, PITCH_GROWTH),
        minor: more(after.minor, CREST_GROWTH),
    }
}

impl NutBeforeCoat {
    /// The limits to tap to.
    pub fn limits(&self, after: &NutLimits) -> NutLimits {
        NutLimits { pitch: self.pitch, minor: self.minor, ..*after }
    }

    /// Whether the coat varies by less than the tolerance can take.
    pub fn stands(&self) -> bool {
        self.pitch.min < self.pitch.max && self.minor.min < self.minor.max
    }
}

/// How many turns a NOT-GO gauge may enter: two by ISO, three by ASME B1.2.
pub fn turns(thread: Thread) -> Sourced<u8> {
    if thread.is_metric() {
        document::GAUGE_MAKERS_TEXT.read("use of ISO gauges").gives(2)
    } else {
        document::ASME_B1_2.memory("acceptance with NOT-GO gauges").gives(3)
    }
}

/// Which gauge settles a dispute, and where it is said.
pub fn dispute(thread: Thread) -> Sourced<&'static str> {
    if thread.is_metric() {
        document::ISO_1502.memory("5.3").gives(
            "Where two gauges disagree, the thread is accepted if any gauge within the limits of ISO 1502 accepts it, \
             a worn one within its wear limit included.",
        )
    } else {
        document::ASME_B1_3.memory("gaging systems 21, 22 and 23").gives(
            "Where two gauges disagree, the gaging system on the order decides (21 if none is named), and what a gauge \
             within its X tolerance accepts conforms.",
        )
    }
}

/// The making tolerances and wear of the gauges themselves, which were not read.
pub fn of_gauges(thread: Thread) -> Refusal {
    let (what, source) = if thread.is_metric() {
        ("the tolerance and wear limit of the gauges", document::ISO_1502.memory("Tables 4 to 9"))
    } else {
        ("the tolerance of the gauges", document::ASME_B1_2.memory("X tolerances"))
    };
    Refusal::blank(what, source)
}
