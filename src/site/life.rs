//! Years until the zinc is used up, and the thickness that years need.
//!
//! Two published ways stand side by side and are never merged: ISO 14713-1 counts in a straight
//! line, thickness over the first year's loss; ISO 9224 lets the loss slow down with time. All of
//! them are `D = r · t^b` up to twenty years and straight beyond, with `b = 1` for ISO 14713-1.

use super::Rates;
use crate::quantity::{Length, Quantity, Rate, Shown, Time, unit};
use crate::source::Source;
use crate::table::{iso_9224, iso_14713_1};
use crate::working::{Step, Working};

/// How the loss goes on after the first year.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Exponent {
    /// Every year like the first: ISO 14713-1, and the shortest life of the three.
    Straight,
    /// The upper bound of ISO 9224, `b` = 0.873.
    Upper,
    /// The mean of ISO 9224, `b` = 0.813: the longest life of the three.
    Mean,
}

/// An end of a range of losses.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum End {
    /// The greatest loss: the shortest life.
    Greatest,
    /// The least.
    Least,
}

/// Years from a range of losses.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Years {
    /// At the greatest loss.
    pub min: Time,
    /// At the least loss; none where the loss has no lower limit.
    pub most: Option<Time>,
}

/// Whether a coat lasts the years wanted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Promise {
    /// Even the least thickness at the greatest loss does.
    Lasts,
    /// It depends on where in their ranges thickness and loss lie.
    MayLast,
    /// Not even the greatest thickness at the least loss does.
    FallsShort,
}

/// Years until a thickness is used up.
///
/// The thickness and the rate must be above zero; at no loss at all the years are endless.
pub fn years(thickness: Length, rate: Rate, exponent: Exponent) -> Time {
    let ratio = thickness.um() / rate.um_year();
    let b = match exponent {
        // An order asks for many of these: a straight line takes no powers.
        Exponent::Straight => return Time::from_year(ratio),
        Exponent::Upper | Exponent::Mean => exponent.b(),
    };
    let straight_beyond = iso_9224::STRAIGHT_BEYOND.year();
    let at_turn = straight_beyond.powf(b);
    Time::from_year(if ratio <= at_turn {
        ratio.powf(1.0 / b)
    } else {
        straight_beyond + (ratio - at_turn) / (b * straight_beyond.powf(b - 1.0))
    })
}

/// Thickness lost after a time; also the thickness needed for that time.
pub fn attack(rate: Rate, time: Time, exponent: Exponent) -> Length {
    let t = time.year();
    let b = match exponent {
        Exponent::Straight => return Length::from_um(rate.um_year() * t),
        Exponent::Upper | Exponent::Mean => exponent.b(),
    };
    let straight_beyond = iso_9224::STRAIGHT_BEYOND.year();
    let multiple = if t <= straight_beyond {
        t.powf(b)
    } else {
        straight_beyond.powf(b) + b * straight_beyond.powf(b - 1.0) * (t - straight_beyond)
    };
    Length::from_um(rate.um_year() * multiple)
}

/// Years from the greatest to the least loss.
pub fn range(thickness: Length, rates: Rates, exponent: Exponent) -> Years {
    Years {
        min: years(thickness, rates.upper, exponent),
        most: rates.lower.map(|rate| years(thickness, rate, exponent)),
    }
}

/// Whether a coat from `least` to `greatest` lasts the years wanted, counted in a straight line as
/// ISO 14713-1 counts; the worst corner decides.
pub fn promise(min: Length, max: Length, rates: Rates, wanted: Time) -> Promise {
    let lasts = |thickness, rate| years(thickness, rate, Exponent::Straight).year() >= wanted.year();
    if lasts(min, rates.upper) {
        Promise::Lasts
    } else if rates.lower.is_none_or(|least| lasts(max, least)) {
        Promise::MayLast
    } else {
        Promise::FallsShort
    }
}

/// The least thickness that is sure to last the years wanted in a place, counted in a straight
/// line at its greatest loss (ISO 14713-1).
pub fn thickness_needed(rates: Rates, wanted: Time) -> Length {
    attack(rates.upper, wanted, Exponent::Straight)
}

impl Exponent {
    /// From the shortest life to the longest.
    pub const ALL: [Self; 3] = [Self::Straight, Self::Upper, Self::Mean];

    /// The exponent of time.
    pub fn b(self) -> f64 {
        match self {
            Self::Straight => 1.0,
            Self::Upper => iso_9224::B2,
            Self::Mean => iso_9224::B1,
        }
    }

    /// What it is called.
    pub fn name(self) -> &'static str {
        match self {
            Self::Straight => "ISO 14713-1: thickness over the first year's loss",
            Self::Upper => "ISO 9224, upper bound: b = 0.873",
            Self::Mean => "ISO 9224, mean: b = 0.813",
        }
    }

    /// The steps of a working that reckon with it.
    pub fn topic(self) -> &'static str {
        match self {
            Self::Straight => "Every year like the first",
            Self::Upper => "By the upper exponent of ISO 9224",
            Self::Mean => "By the mean exponent of ISO 9224",
        }
    }

    /// Where it is published.
    pub fn source(self) -> Source {
        match self {
            Self::Straight => iso_14713_1::STRAIGHT,
            Self::Upper | Self::Mean => iso_9224::EXPONENTS,
        }
    }

    /// The sum of [`years`], shown.
    pub fn years_step(
        self,
        working: &mut Working,
        meaning: &'static str,
        thickness: Length,
        end: End,
        rate: Rate,
    ) {
        let result = years(thickness, rate, self);
        let beyond = result.year() > iso_9224::STRAIGHT_BEYOND.year();
        let ([greatest, least], source) = match self {
            Self::Straight => (["D / r_high", "D / r_low"], self.source()),
            _ if beyond => (
                ["20 + (D / r_high − 20^b) / (b · 20^(b − 1))", "20 + (D / r_low − 20^b) / (b · 20^(b − 1))"],
                iso_9224::STRAIGHT_LINE,
            ),
            _ => (["(D / r_high)^(1 / b)", "(D / r_low)^(1 / b)"], iso_9224::POWER_LAW),
        };
        let (formula, symbol) = match end {
            End::Greatest => (greatest, "r_high"),
            End::Least => (least, "r_low"),
        };
        let step = working
            .step(meaning, "t", formula, shown_years(result), source)
            .given("D", thickness.show(&unit::UM, 1))
            .given(symbol, rate.show(&unit::UM_YEAR, 2));
        self.put_in(step);
    }

    /// The sum of [`attack`] at the greatest loss, shown.
    pub fn attack_step(self, working: &mut Working, meaning: &'static str, rate: Rate, time: Time) {
        let beyond = time.year() > iso_9224::STRAIGHT_BEYOND.year();
        let (formula, source) = match self {
            Self::Straight => ("r_high · t_w", self.source()),
            _ if beyond => ("r_high · (20^b + b · 20^(b − 1) · (t_w − 20))", iso_9224::STRAIGHT_LINE),
            _ => ("r_high · t_w^b", iso_9224::POWER_LAW),
        };
        let result = attack(rate, time, self).show(&unit::UM, 1);
        let step = working
            .step(meaning, "D_w", formula, result, source)
            .given("r_high", rate.show(&unit::UM_YEAR, 2))
            .given("t_w", shown_years(time));
        self.put_in(step);
    }

    fn put_in(self, step: &mut Step) {
        if self != Self::Straight {
            step.published("b", Shown::plain(self.b(), 3), iso_9224::EXPONENTS);
        }
    }
}

/// Years in a sum: one digit more than an answer shows.
fn shown_years(time: Time) -> Shown {
    time.show(&unit::YEAR, if time.year() < 20.0 { 2 } else { 1 })
}

#[cfg(test)]
mod tests {
    use super::super::Category;
    use super::*;

    const C4: fn() -> Rates = || Category::C4.rates();

    /// ISO 9224: r · t^b up to 20 years, and from there on a straight line; years of a sum have one digit more than
    /// an answer.
    #[test]
    fn the_straight_line_begins_beyond_twenty_years() {
        let step = |year: f64, exponent: Exponent| {
            let mut working = Working::default();
            let time = Time::from_year(year);
            exponent.attack_step(&mut working, "zinc lost", Category::C3.rates().upper, time);
            let step = &working.steps()[0];
            let shown = step.terms.iter().find(|term| term.symbol == "t_w").unwrap().value;
            (step.formula, shown.to_string().replace('\u{a0}', " "))
        };
        let (power, line) = ("r_high · t_w^b", "r_high · (20^b + b · 20^(b − 1) · (t_w − 20))");
        for (year, formula, shown) in
            [(19.5, power, "19.50 years"), (20.0, power, "20.0 years"), (20.5, line, "20.5 years")]
        {
            assert_eq!(step(year, Exponent::Upper), (formula, shown.to_owned()));
            assert_eq!(step(year, Exponent::Straight).0, "r_high · t_w");
        }
    }

    #[test]
    fn the_worst_corner_decides_the_promise() {
        let um = Length::from_um;
        let years = Time::from_year;
        // At C4 the loss is 2.1 to 4.2 µm a year: 42 µm last 10 to 20 years.
        assert_eq!(promise(um(42.0), um(42.0), C4(), years(10.0)), Promise::Lasts);
        assert_eq!(promise(um(42.0), um(42.0), C4(), years(15.0)), Promise::MayLast);
        assert_eq!(promise(um(42.0), um(42.0), C4(), years(20.1)), Promise::FallsShort);
        assert_eq!(promise(um(30.0), um(63.0), C4(), years(29.0)), Promise::MayLast);
        assert_eq!(promise(um(5.0), um(5.0), Category::C1.rates(), years(99.0)), Promise::MayLast);
        assert!((thickness_needed(Category::C4.rates(), years(10.0)).um() - 42.0).abs() < 1e-9);
    }
}
