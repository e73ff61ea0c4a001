//! DIN 6796, conical spring washers.

use crate::source::{Source, document};

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter.
    pub d: f64,
    /// Hole.
    pub d1: f64,
    /// Outside diameter.
    pub d2: f64,
    /// Thickness.
    pub s: f64,
}

/// Where the sizes were read.
pub const SOURCE: Source = document::DIN_6796.read("d1, d2, s");

/// The rows.
pub const ROWS: &[Row] = &[
    row(3.0, 3.2, 7.0, 0.6),
    row(4.0, 4.3, 9.0, 1.0),
    row(5.0, 5.3, 11.0, 1.2),
    row(6.0, 6.4, 14.0, 1.5),
    row(7.0, 7.4, 17.0, 1.75),
    row(8.0, 8.4, 18.0, 2.0),
    row(10.0, 10.5, 23.0, 2.5),
    row(12.0, 13.0, 29.0, 3.0),
    row(14.0, 15.0, 35.0, 3.5),
    row(16.0, 17.0, 39.0, 4.0),
    row(18.0, 19.0, 42.0, 4.5),
    row(20.0, 21.0, 45.0, 5.0),
    row(22.0, 23.0, 49.0, 5.5),
    row(24.0, 25.0, 56.0, 6.0),
    row(27.0, 28.0, 60.0, 6.5),
    row(30.0, 31.0, 70.0, 7.0),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(d: f64, d1: f64, d2: f64, s: f64) -> Row {
    Row { d, d1, d2, s }
}
