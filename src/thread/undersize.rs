//! Bolts cut under size before a hot-dip coat, so that standard nuts still go on.

use crate::quantity::{Area, Length};
use crate::source::{Source, Sourced, document};
use crate::table::Refusal;

use super::class::BoltPosition;
use super::limits::{self, BoltLimits};
use super::{Thread, ToleranceClass};

/// The class of a bolt cut under: 6az.
pub const CLASS: ToleranceClass = ToleranceClass::bolt(6, BoltPosition::Az);

/// The letter marked behind the property class of a bolt cut under.
pub const MARK: Sourced<&str> = document::ISO_10684.read("6.2").gives("U");

/// A bolt cut under.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bolt {
    /// Its limits of size, before the coat.
    pub limits: BoltLimits,
    /// Pitch diameter for stress, basic less the undercut.
    pub pitch_diameter: Length,
    /// Root diameter d3 for stress, basic less the undercut.
    pub root_diameter: Length,
    /// Stress area of the undercut thread.
    pub stress_area: Area,
}

/// Where the stress area of the undercut thread comes from.
pub const STRESS_AREA: Source = document::ISO_965_4.computed("Table 1, d3 for stress");

/// A metric bolt cut under to 6az.
///
/// # Errors
/// Refuses an inch thread: ISO 965-4 has metric bolts only.
pub fn bolt(thread: Thread) -> Result<Bolt, Refusal> {
    if !thread.is_metric() {
        return Err(Refusal::not_covered(
            &format!("{thread}"),
            "metric bolts; with an inch thread tap the nut over instead",
            document::ISO_965_4.read("scope"),
        ));
    }
    let limits = limits::bolt(thread, CLASS)?;
    let less = |basic: Length| basic + limits.deviation.value;
    let (pitch_diameter, root_diameter) = (less(thread.pitch_diameter()), less(thread.root_diameter()));
    let mean = (pitch_diameter.mm() + root_diameter.mm()) / 2.0;
    Ok(Bolt {
        limits,
        pitch_diameter,
        root_diameter,
        stress_area: Area::from_mm2(std::f64::consts::FRAC_PI_4 * mean * mean),
    })
}
