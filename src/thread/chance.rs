//! The chance that a coated bolt and a nut bind, beside the worst corner that hardly ever meets.
//!
//! Room on the pitch diameter is the nut's size less the bolt's less the growth of the coat, each of which
//! is spread in its own way. The densities are put on one grid of fine steps and folded into each other;
//! what lies below zero is the share of pairs that bind. The pitch diameter decides, for the coat takes
//! twice as much room there as on major and minor diameter, under the same allowance.

use statrs::distribution::{ContinuousCDF, Normal};

use super::limits::Limits;
use crate::quantity::Length;
use crate::source::{Sourced, assumed};

/// How a size or a thickness is spread.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Spread {
    /// Like a bell about the middle of its limits, which lie [`SIGMAS`] standard deviations apart; nothing
    /// lies outside.
    Bell(Limits),
    /// Evenly over its limits.
    Even(Limits),
    /// Like a bell with a mean and a standard deviation of its own.
    Own(Length, Length),
}

/// How many standard deviations the limits of a bell lie apart, where nothing is known of a lot.
pub const SIGMAS: Sourced<f64> =
    assumed("sizes spread like a bell, limits six standard deviations apart").gives(6.0);

/// The share of pairs that bind on the pitch diameter, from 0 to 1.
///
/// `growth` is what the pitch diameter grows for each thickness of the coat: 4 on the bolt alone.
pub fn of_binding(bolt: Spread, nut: Spread, coat: Spread, growth: f64) -> f64 {
    let spans = [bolt.span(), nut.span(), growth * coat.span()];
    let step = spans.into_iter().fold(0.0, |sum, span| sum + span) / STEPS;
    if step <= 0.0 {
        // Every size is one size.
        let room = nut.middle() - bolt.middle() - growth * coat.middle();
        return if room < -EXACT { 1.0 } else { 0.0 };
    }
    let nut = Density::new(nut, 1.0, step);
    let room = nut.folded(&Density::new(bolt, -1.0, step)).folded(&Density::new(coat, -growth, step));
    room.below_zero(step)
}

/// Steps of the grid over all spans together; the share is then right to a few in a hundred thousand.
const STEPS: f64 = 800.0;
/// Standard deviations of an unbounded bell that are counted.
const TAIL: f64 = 6.0;
/// Sizes are sums of numbers printed to a micrometre; a hundredth of one decides nothing (mm).
const EXACT: f64 = 1e-5;

impl Spread {
    fn middle(self) -> f64 {
        match self {
            Self::Bell(limits) | Self::Even(limits) => f64::midpoint(limits.min.mm(), limits.max.mm()),
            Self::Own(mean, _) => mean.mm(),
        }
    }

    fn span(self) -> f64 {
        match self {
            Self::Bell(limits) | Self::Even(limits) => (limits.max - limits.min).mm(),
            Self::Own(_, deviation) => 2.0 * TAIL * deviation.mm(),
        }
    }

    /// The share below a value, from 0 at the lower end of the span to 1 at its upper end.
    fn below(self, value: f64) -> f64 {
        let (from, span) = (self.middle() - self.span() / 2.0, self.span());
        let along = ((value - from) / span).clamp(0.0, 1.0);
        let bell = |sigmas: f64| {
            // The standard normal distribution always exists.
            let Ok(normal) = Normal::new(0.0, 1.0) else { return along };
            let at = |along: f64| normal.cdf((along - 0.5) * sigmas);
            (at(along) - at(0.0)) / (at(1.0) - at(0.0))
        };
        match self {
            Self::Even(_) => along,
            Self::Bell(_) => bell(SIGMAS.value),
            Self::Own(..) => bell(2.0 * TAIL),
        }
    }
}

/// Shares on a grid: the first stands for values about `from`, each next for values one step higher.
struct Density {
    from: f64,
    shares: Vec<f64>,
}

impl Density {
    /// The density of a multiple of what is spread.
    fn new(spread: Spread, times: f64, step: f64) -> Self {
        let (middle, span) = (times * spread.middle(), times.abs() * spread.span());
        // A span of whole steps has as many cells in whatever unit its limits were written: the last bit of a
        // quotient adds none.
        let cells = (span / step - EXACT).ceil().max(1.0);
        let width = step / times.abs();
        let low = spread.middle() - cells * width / 2.0;
        let at = |cell: f64| if span > 0.0 { spread.below(low + cell * width) } else { cell };
        let mut shares: Vec<f64> =
            (0..cells as usize).map(|cell| at(cell as f64 + 1.0) - at(cell as f64)).collect();
        if times < 0.0 {
            shares.reverse();
        }
        Self { from: middle - (cells - 1.0) * step / 2.0, shares }
    }

    /// The density of the sum.
    fn folded(&self, other: &Self) -> Self {
        let mut shares = vec![0.0; self.shares.len() + other.shares.len() - 1];
        for (at, share) in self.shares.iter().enumerate() {
            for (sum, other) in shares.iter_mut().skip(at).zip(&other.shares) {
                *sum += share * other;
            }
        }
        Self { from: self.from + other.from, shares }
    }

    /// The share below zero; the cell in which zero lies counts by its part below.
    fn below_zero(&self, step: f64) -> f64 {
        let share = |(cell, share): (usize, &f64)| {
            let lower = self.from + (cell as f64 - 0.5) * step;
            share * (-lower / step).clamp(0.0, 1.0)
        };
        self.shares.iter().enumerate().map(share).sum()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn limits(min: f64, max: f64) -> Limits {
        Limits { min: Length::from_um(min), max: Length::from_um(max) }
    }

    /// Two even spreads of the same width that meet with their middles bind in half of the pairs; where
    /// they only touch, in none.
    #[test]
    fn even_spreads_bind_as_geometry_has_it() {
        let (bolt, nut) = (Spread::Even(limits(0.0, 100.0)), Spread::Even(limits(0.0, 100.0)));
        let none = Spread::Even(limits(0.0, 0.0));
        assert!((of_binding(bolt, nut, none, 4.0) - 0.5).abs() < 1e-4);
        let above = Spread::Even(limits(100.0, 200.0));
        assert!(of_binding(bolt, above, none, 4.0) < 1e-5);
        // A quarter of the square lies below the line: (1 − 0.5)² / 2 = 0.125.
        let half = Spread::Even(limits(50.0, 150.0));
        assert!((of_binding(bolt, half, none, 4.0) - 0.125).abs() < 1e-4);
    }

    /// Three bells sum to a bell: mean 10 µm, standard deviation √(9 + 16 + 144) = 13 µm.
    #[test]
    fn bells_sum_to_a_bell() {
        let um = Length::from_um;
        let (bolt, nut) = (Spread::Own(um(100.0), um(3.0)), Spread::Own(um(150.0), um(4.0)));
        let chance = of_binding(bolt, nut, Spread::Own(um(10.0), um(3.0)), 4.0);
        // Φ(−10 / 13), from a table of the normal distribution: 0.2209.
        assert!((chance - 0.2209).abs() < 1e-4, "{chance}");
    }

    #[test]
    fn single_sizes_bind_or_do_not() {
        let at = |um: f64| Spread::Even(limits(um, um));
        assert_eq!(of_binding(at(100.0), at(140.0), at(10.0), 4.0), 0.0);
        assert_eq!(of_binding(at(100.0), at(139.0), at(10.0), 4.0), 1.0);
    }
}
