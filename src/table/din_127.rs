//! DIN 127, spring lock washers.

use crate::source::{Source, document};

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter.
    pub d: f64,
    /// Hole, least.
    pub d1: f64,
    /// Width of the bar.
    pub b: f64,
    /// Thickness of the bar.
    pub s: f64,
}

/// Where the sizes were read.
pub const SOURCE: Source = document::DIN_127.read("1987: d1, b, s");

/// The rows.
pub const ROWS: &[Row] = &[
    row(3.0, 3.1, 1.3, 0.8),
    row(4.0, 4.1, 1.5, 0.9),
    row(5.0, 5.1, 1.8, 1.2),
    row(6.0, 6.1, 2.5, 1.6),
    row(7.0, 7.1, 2.5, 1.6),
    row(8.0, 8.1, 3.0, 2.0),
    row(10.0, 10.2, 3.5, 2.2),
    row(12.0, 12.2, 4.0, 2.5),
    row(14.0, 14.2, 4.5, 3.0),
    row(16.0, 16.2, 5.0, 3.5),
    row(18.0, 18.2, 5.0, 3.5),
    row(20.0, 20.2, 6.0, 4.0),
    row(22.0, 22.5, 6.0, 4.0),
    row(24.0, 24.5, 7.0, 5.0),
    row(27.0, 27.5, 7.0, 5.0),
    row(30.0, 30.5, 8.0, 6.0),
    row(36.0, 36.5, 10.0, 6.0),
    row(39.0, 39.5, 10.0, 6.0),
    row(42.0, 42.5, 12.0, 7.0),
    row(45.0, 45.5, 12.0, 7.0),
    row(48.0, 49.0, 12.0, 7.0),
    row(52.0, 53.0, 14.0, 8.0),
    row(56.0, 57.0, 14.0, 8.0),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(d: f64, d1: f64, b: f64, s: f64) -> Row {
    Row { d, d1, b, s }
}
