//! How the figures came about: years and thicknesses at both ends of the loss.

use super::{Input, Outcome};
use crate::coat::factor::{A653, DEPOSIT};
use crate::quantity::{Length, Quantity, Shown, unit};
use crate::site::Rates;
use crate::site::life::{End, Exponent};
use crate::source::document;
use crate::working::Working;

/// The steps.
pub(super) fn working(input: &Input, outcome: &Outcome) -> Working {
    let mut working = outcome.estimate.map(|estimate| estimate.working()).unwrap_or_default();
    let Rates { lower, upper, .. } = outcome.rates;
    let lower = lower.filter(|&lower| lower != upper);
    for exponent in Exponent::ALL {
        working.topic(exponent.topic());
        for (at, _, thickness) in input.named() {
            let (at_most, at_least) = match at {
                0 => (
                    "years of the least thickness at the greatest loss",
                    "years of the least thickness at the least loss",
                ),
                1 => (
                    "years of the average thickness at the greatest loss",
                    "years of the average thickness at the least loss",
                ),
                _ => (
                    "years of the greatest thickness at the greatest loss",
                    "years of the greatest thickness at the least loss",
                ),
            };
            exponent.years_step(&mut working, at_most, thickness, End::Greatest, upper);
            if let Some(lower) = lower {
                exponent.years_step(&mut working, at_least, thickness, End::Least, lower);
            }
        }
        if let Some(wanted) = input.wanted {
            let meaning = "thickness for the years wanted at the greatest loss";
            exponent.attack_step(&mut working, meaning, upper, wanted);
        }
    }
    working.topic("Mechanical zinc as solid zinc");
    let [min, _, max] = input.thicknesses();
    let [light, heavy] = solid(min, max);
    for (meaning, symbol, thickness, density, source, result) in [
        ("the least as solid zinc, if mechanical", "D_min", min, DEPOSIT.min, DEPOSIT.source, light),
        ("the greatest as solid zinc, if mechanical", "D_max", max, DEPOSIT.max, DEPOSIT.source_max, heavy),
    ] {
        working
            .step(
                meaning,
                symbol,
                "D · k / ρ",
                um(result),
                document::ARITHMETIC.computed("the same mass of zinc"),
            )
            .given("D", um(thickness))
            .published("k", density.show(&unit::G_M2_UM, 3), source)
            .published("ρ", A653.min.show(&unit::G_M2_UM, 2), A653.source);
    }
    working
}

/// A thickness in micrometres, as it is shown.
pub(super) fn um(thickness: Length) -> Shown {
    thickness.show(&unit::UM, 1)
}

/// The least of a deposit at its lightest and the greatest at its heaviest, as solid zinc.
pub(super) fn solid(min: Length, max: Length) -> [Length; 2] {
    [min * (DEPOSIT.min / A653.min), max * (DEPOSIT.max / A653.min)]
}
