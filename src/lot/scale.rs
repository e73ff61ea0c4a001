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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::source::Basis;

    /// The least of 50 µm, of the readings given.
    fn of(um: &[f64]) -> Option<(bool, f64)> {
        let readings: Vec<Length> = um.iter().copied().map(Length::from_um).collect();
        let statistics = Statistics::of(std::iter::once(readings.as_slice())).unwrap();
        let reading = Some(ThicknessLimit::um(50.0, Basis::Read));
        let limits = AcceptanceLimits { lot_mean: None, lot_mean_max: None, article: None, reading };
        off_scale(&statistics, &limits).map(|off| (off.above, off.times()))
    }

    #[test]
    fn six_times_the_least_is_looked_at_twice_and_a_sixth_of_it() {
        assert_eq!(of(&[55.0, 60.0, 299.9]), None);
        assert_eq!(of(&[55.0, 60.0, 300.0]), Some((true, 6.0)));
        assert_eq!(of(&[55.0, 600.0]), Some((true, 12.0)));
        assert_eq!(of(&[8.0, 9.0]), None);
        assert_eq!(of(&[5.0, 5.0]), Some((false, 10.0)));
        assert_eq!(of(&[50.0 / 6.0]).map(|(above, _)| above), Some(false));
        // One thin reading is a bare place.
        assert_eq!(of(&[2.0, 60.0]), None);
    }
}
