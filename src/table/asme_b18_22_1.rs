//! ASME B18.22.1, plain washers, inch: type A, wide series. ASTM F844 takes its sizes from here.

use crate::source::{Source, document};

/// One size, in inches, basic.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter.
    pub d: f64,
    /// Hole.
    pub inside: f64,
    /// Outside diameter.
    pub outside: f64,
    /// Thickness.
    pub thickness: f64,
}

/// Where the sizes are known from.
pub const SOURCE: Source = document::ASME_B18_22_1.memory("table 1A, type A wide, basic sizes");

/// The rows.
pub const ROWS: &[Row] = &[
    row(0.25, 0.312, 0.734, 0.065),
    row(0.3125, 0.375, 0.875, 0.083),
    row(0.375, 0.438, 1.0, 0.083),
    row(0.4375, 0.5, 1.25, 0.083),
    row(0.5, 0.562, 1.375, 0.109),
    row(0.5625, 0.625, 1.469, 0.109),
    row(0.625, 0.688, 1.75, 0.134),
    row(0.75, 0.812, 2.0, 0.148),
    row(0.875, 0.938, 2.25, 0.165),
    row(1.0, 1.062, 2.5, 0.165),
    row(1.125, 1.25, 2.75, 0.165),
    row(1.25, 1.375, 3.0, 0.165),
    row(1.375, 1.5, 3.25, 0.18),
    row(1.5, 1.625, 3.5, 0.18),
    row(1.625, 1.75, 3.75, 0.18),
    row(1.75, 1.875, 4.0, 0.18),
    row(1.875, 2.0, 4.25, 0.18),
    row(2.0, 2.125, 4.5, 0.18),
    row(2.25, 2.375, 4.75, 0.22),
    row(2.5, 2.625, 5.0, 0.238),
    row(2.75, 2.875, 5.25, 0.259),
    row(3.0, 3.125, 5.5, 0.284),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(d: f64, inside: f64, outside: f64, thickness: f64) -> Row {
    Row { d, inside, outside, thickness }
}
