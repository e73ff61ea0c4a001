//! DIN 3570, U-bolts for pipes, form A.

use crate::source::{Source, document};

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter.
    pub d: f64,
    /// Inside width.
    pub width: f64,
    /// Height of the legs, from the inside of the bow.
    pub height: f64,
    /// Thread length of each leg.
    pub b: f64,
}

/// Where the sizes are known from.
pub const SOURCE: Source = document::DIN_3570.memory("form A: inside width, height, thread length");

/// The rows.
pub const ROWS: &[Row] = &[
    row(10.0, 30.0, 70.0, 40.0),
    row(10.0, 38.0, 76.0, 40.0),
    row(10.0, 46.0, 86.0, 50.0),
    row(10.0, 52.0, 92.0, 50.0),
    row(12.0, 64.0, 109.0, 50.0),
    row(12.0, 82.0, 125.0, 50.0),
    row(12.0, 94.0, 138.0, 50.0),
    row(16.0, 120.0, 171.0, 60.0),
    row(16.0, 148.0, 191.0, 60.0),
    row(16.0, 176.0, 217.0, 60.0),
    row(16.0, 228.0, 283.0, 70.0),
    row(20.0, 282.0, 334.0, 70.0),
    row(20.0, 332.0, 385.0, 70.0),
    row(20.0, 378.0, 435.0, 70.0),
    row(20.0, 428.0, 487.0, 70.0),
    row(24.0, 530.0, 589.0, 70.0),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(d: f64, width: f64, height: f64, b: f64) -> Row {
    Row { d, width, height, b }
}
