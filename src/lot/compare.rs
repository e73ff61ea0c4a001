//! One value against one limit, in the column that the document prints for its unit.

use super::Measure;
use crate::coat::ThicknessLimit;
use crate::coat::class::{PARTS, digits};
use crate::quantity::{Length, Shown};

/// How a value is compared with its limit (ASTM E29).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rounding {
    /// As it is.
    Absolute,
    /// Rounded to the digits of the limit first, a half to the even digit.
    ToTheLimit,
}

/// One value against one limit.
#[derive(Debug, Clone, Copy)]
pub struct Comparison {
    /// The value.
    pub value: Length,
    /// The value in the unit of the limit, as compared: rounded where rounding was chosen.
    pub compared: Shown,
    /// The limit in the column printed for the unit of the readings.
    pub printed: Shown,
    /// The limit with its other columns.
    pub limit: ThicknessLimit,
    /// How far the value is on the good side, without rounding; below zero on the bad one.
    pub margin: Length,
    /// Whether the limit is kept.
    pub kept: bool,
    /// Whether it would be kept without rounding.
    pub kept_unrounded: bool,
    /// Whether it is still kept with the gauge wrong by its whole uncertainty.
    pub kept_surely: bool,
}

/// Compares; `measure` is how the readings were taken.
pub fn compare(
    value: Length,
    limit: ThicknessLimit,
    at_least: bool,
    measure: Measure,
    gauge: Length,
    rounding: Rounding,
) -> Comparison {
    let printed = measure.column(&limit);
    // In parts of the last digit that the limit prints.
    let counted = |value: Length| digits(measure.in_column(value, printed), printed);
    let parts = 10f64.powi(PARTS);
    let rounded = |digits: f64| match rounding {
        Rounding::Absolute => digits,
        Rounding::ToTheLimit => (digits / parts).round_ties_even() * parts,
    };
    let bound = digits(printed, printed);
    let keeps = |digits: f64| if at_least { digits >= bound } else { digits <= bound };
    let wrong = if at_least { -gauge } else { gauge };
    let bound_at = measure.thickness(printed);
    let number = rounded(counted(value)) / 10f64.powi(i32::from(printed.decimals) + PARTS);
    Comparison {
        value,
        compared: Shown { number, ..printed },
        printed,
        limit,
        margin: if at_least { value - bound_at } else { bound_at - value },
        kept: keeps(rounded(counted(value))),
        kept_unrounded: keeps(counted(value)),
        kept_surely: keeps(rounded(counted(value + wrong))),
    }
}
