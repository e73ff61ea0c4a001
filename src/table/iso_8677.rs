//! ISO 8677, cup head square neck bolts: carriage bolts.

use crate::source::{Source, document};

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter.
    pub d: f64,
    /// Head diameter, greatest and least.
    pub dk: (f64, f64),
    /// Head height, greatest and least.
    pub k: (f64, f64),
    /// Width of the square, greatest and least.
    pub v: (f64, f64),
    /// Depth of the square, greatest and least.
    pub f: (f64, f64),
    /// Thread length up to 125 mm, and up to 200 mm.
    pub b: (f64, f64),
}

/// Where the sizes were read.
pub const SOURCE: Source = document::ISO_8677.read("table: dk, k, v, f, b");
/// The shank is rolled from wire of about the pitch diameter.
pub const SHANK: Source = document::ISO_8677.memory("shank of about the pitch diameter");

/// The rows.
pub const ROWS: &[Row] = &[
    row(5.0, (13.55, 12.45), (3.3, 2.7), (5.48, 4.52), (4.1, 2.9), (16.0, 22.0)),
    row(6.0, (16.55, 15.45), (3.88, 3.12), (6.48, 5.52), (4.6, 3.4), (18.0, 24.0)),
    row(8.0, (20.65, 19.35), (4.88, 4.12), (8.58, 7.42), (5.6, 4.4), (22.0, 28.0)),
    row(10.0, (24.65, 23.35), (5.38, 4.62), (10.58, 9.42), (6.6, 5.4), (26.0, 32.0)),
    row(12.0, (30.65, 29.35), (6.95, 6.05), (12.7, 11.3), (8.75, 7.25), (30.0, 36.0)),
    row(16.0, (38.8, 37.2), (8.95, 8.05), (16.7, 15.3), (12.9, 11.1), (38.0, 44.0)),
    row(20.0, (46.8, 45.2), (11.05, 9.95), (20.84, 19.16), (15.9, 14.1), (46.0, 52.0)),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(d: f64, dk: (f64, f64), k: (f64, f64), v: (f64, f64), f: (f64, f64), b: (f64, f64)) -> Row {
    Row { d, dk, k, v, f, b }
}
