//! What a barrel is charged for: more than the class, for the class is the least that any place may
//! have, and a load scatters.

use statrs::distribution::{ContinuousCDF, Normal};

use crate::quantity::{Length, PlainNumber};
use crate::source::{Source, Sourced, assumed, document};

/// Scatter of single readings about the mean of the load where no readings of the shop are known.
pub const USUAL_SCATTER: Sourced<f64> =
    assumed("readings scatter by 10 % of the coat; enter those of an earlier load").gives(0.1);
/// The chance to pass that is charged for where nothing else is said.
pub const USUAL_CHANCE: Sourced<f64> = assumed("19 loads in 20 to pass").gives(0.95);
/// Where the sum comes from: readings that scatter like a bell, each for itself.
pub const SUM: Source = document::ARITHMETIC.computed("normal distribution, independent readings");

/// What a load has to reach, and how it scatters.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Demand {
    /// The least that every reading has to reach.
    pub least: Length,
    /// Standard deviation of single readings as a share of their mean.
    pub scatter: f64,
    /// How many readings are taken, all of which have to reach it.
    pub readings: u32,
}

/// The mean to charge for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Target {
    /// The mean coat of the load.
    pub mean: Length,
    /// Standard deviations between it and the least.
    pub deviations: f64,
    /// The chance that one reading reaches the least.
    pub one: PlainNumber,
}

impl Demand {
    /// The mean that passes with this chance: `T = L / (1 − z · v)`, where each of `n` readings passes
    /// with the n-th root of the chance, `z` standard deviations below the mean.
    ///
    /// None where the scatter is so wide that no mean does, and for a chance that is none.
    pub fn target(&self, chance: f64) -> Option<Target> {
        if !(0.0..1.0).contains(&chance) || chance == 0.0 || self.readings == 0 {
            return None;
        }
        let one = chance.powf(1.0 / f64::from(self.readings));
        let deviations = Normal::standard().inverse_cdf(one);
        let share = 1.0 - deviations * self.scatter;
        (share > 0.0).then(|| Target {
            mean: self.least / share,
            deviations,
            one: PlainNumber::from_one(one),
        })
    }

    /// The chance that a load of this mean passes: that all its readings reach the least.
    pub fn chance(&self, mean: Length) -> PlainNumber {
        let deviation = mean * self.scatter;
        if deviation.um() <= 0.0 {
            return PlainNumber::from_one(if mean >= self.least { 1.0 } else { 0.0 });
        }
        let one = Normal::standard().cdf((mean - self.least) / deviation);
        PlainNumber::from_one(one.powf(f64::from(self.readings)))
    }
}

/// Fewer readings say nothing of how a shop scatters: ours, and cautious.
const LEAST_READINGS: u32 = 3;

/// What an earlier load came out at, from single readings on it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Earlier {
    /// Readings.
    pub readings: u32,
    /// Their mean.
    pub mean: Length,
    /// Their standard deviation as a share of the mean; none for too few, or where all are alike.
    pub scatter: Option<f64>,
}

impl Earlier {
    /// Condenses the readings; none where there is none.
    pub fn of(readings: &[Length]) -> Option<Self> {
        let count = u32::try_from(readings.len()).ok().filter(|&count| count > 0)?;
        let n = f64::from(count);
        let mean = readings.iter().copied().sum::<Length>() / n;
        let squares: f64 = readings.iter().map(|&reading| ((reading - mean) / mean).powi(2)).sum();
        let differ = readings.iter().any(|reading| Some(reading) != readings.first());
        let scatter = (count >= LEAST_READINGS && differ).then(|| (squares / (n - 1.0)).sqrt());
        Some(Self { readings: count, mean, scatter })
    }

    /// What the powder of the next load is multiplied by, where the earlier one was charged for so
    /// much and came out at its mean.
    pub fn correction(&self, charged: Length) -> f64 {
        charged / self.mean
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn demand(scatter: f64, readings: u32) -> Demand {
        Demand { least: Length::from_um(53.0), scatter, readings }
    }

    /// One reading passes 19 times in 20 at 1.645 standard deviations (tables of the normal
    /// distribution): 53 / (1 − 1.645 · 0.1) = 63.4 µm.
    #[test]
    fn the_mean_lies_above_the_class_by_what_the_scatter_needs() {
        let target = demand(0.1, 1).target(0.95).unwrap();
        assert!((target.deviations - 1.645).abs() < 5e-4);
        assert!((target.mean.um() - 63.43).abs() < 0.01, "{:?}", target.mean);
        // All of eight pass 19 times in 20 if each does 99.36 times in 100: 2.490 deviations.
        let target = demand(0.1, 8).target(0.95).unwrap();
        assert!((target.deviations - 2.490).abs() < 1e-3, "{}", target.deviations);
        assert!((target.mean.um() - 70.57).abs() < 0.02, "{:?}", target.mean);
        assert_eq!(demand(0.5, 8).target(0.95), None);
        assert_eq!(demand(0.1, 8).target(1.0), None);
        // A chance that is none, and a lot of which nothing is read.
        for (readings, chance) in [(8, 0.0), (8, -0.1), (8, 1.1), (0, 0.95)] {
            assert_eq!(demand(0.1, readings).target(chance), None, "{readings}, {chance}");
        }
    }

    /// A load weighed in for the class itself has half its places below it.
    #[test]
    fn a_mean_at_the_class_fails_nearly_every_lot() {
        let demand = demand(0.1, 8);
        assert!((demand.chance(Length::from_um(53.0)).one() - 0.5f64.powi(8)).abs() < 1e-12);
        let mean = demand.target(0.95).unwrap().mean;
        assert!((demand.chance(mean).one() - 0.95).abs() < 1e-9);
        assert_eq!(Demand { scatter: 0.0, ..demand }.chance(Length::from_um(53.0)).one(), 1.0);
    }

    /// 48, 52, 56: mean 52, s = 4, v = 4 / 52. Charged for 58, the next takes 58 / 52 of the powder.
    #[test]
    fn an_earlier_load_says_how_the_shop_scatters_and_what_to_add() {
        let um = [48.0, 52.0, 56.0].map(Length::from_um);
        let earlier = Earlier::of(&um).unwrap();
        assert!((earlier.scatter.unwrap() - 4.0 / 52.0).abs() < 1e-12);
        assert!((earlier.correction(Length::from_um(58.0)) - 58.0 / 52.0).abs() < 1e-12);
        assert_eq!(Earlier::of(&[]), None);
        for few in [&um[..1], &um[..2], &[Length::from_um(50.1); 3]] {
            assert_eq!(Earlier::of(few).unwrap().scatter, None);
        }
    }
}
