//! Readings many times their limit, or a small part of it: a slipped decimal point, or another unit.

use super::{AcceptanceLimits, Statistics};
use crate::coat::ThicknessLimit;
use crate::quantity::Length;
use crate::source::{Source, common_practice};

/// So many times the least that is asked for, a coat is asked about before it counts: a slipped point makes
/// ten times of it, a mil taken for a micrometre twenty-five.
pub const TIMES: f64 = 6.0;
/// How that is known.
pub const SCALE: Source =
    common_practice("a coat six times what is asked, or a sixth of it, is looked at twice");

/// Readings that are out of all proportion to their limit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OffScale {
    /// The greatest reading where it is far above, the mean where all lie far below.
    pub value: Length,
    /// Whether it is above.
    pub above: bool,
    /// The least that is asked for.
    pub limit: ThicknessLimit,
}

/// Whether readings are out of all proportion to what is asked for; never where nothing is asked for.
pub fn off_scale(statistics: &Statistics, limits: &AcceptanceLimits) -> Option<OffScale> {
    let limit = limits.article.or(limits.reading).or(limits.lot_mean)?;
    let least = limit.thickness.um();
    let of = |value, above| OffScale { value, above, limit };
    if statistics.max_reading.um() >= least * TIMES {
        Some(of(statistics.max_reading, true))
    } else {
        // One thin reading is a bare place; all of them are a matter of the unit.
        (statistics.mean.um() * TIMES <= least).then(|| of(statistics.mean, false))
    }
}

impl OffScale {
    /// How many times the limit it is, or what part of it.
    pub fn times(&self) -> f64 {
        let share = self.value.um() / self.limit.thickness.um();
        if self.above { share } else { 1.0 / share }
    }
}
