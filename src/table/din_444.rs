//! DIN 444, eye bolts, form B.

use crate::source::{Source, document};

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter.
    pub d: f64,
    /// Diameter of the eye, nominal.
    pub eye: f64,
    /// Hole of the eye, least.
    pub hole: f64,
    /// Thickness of the eye of form B, greatest.
    pub thickness: f64,
    /// Thread length up to 125 mm, up to 200 mm, and beyond.
    pub b: [Option<f64>; 3],
}

/// Where the sizes were read.
pub const SOURCE: Source = document::DIN_444.read("eye, hole, thickness of form B, thread length");

/// The rows.
pub const ROWS: &[Row] = &[
    row(5.0, 12.0, 5.0, 6.0, [Some(16.0), None, None]),
    row(6.0, 14.0, 6.0, 7.0, [Some(18.0), None, None]),
    row(8.0, 18.0, 8.0, 9.0, [Some(22.0), Some(28.0), None]),
    row(10.0, 20.0, 10.0, 12.0, [Some(26.0), Some(32.0), None]),
    row(12.0, 25.0, 12.0, 14.0, [Some(30.0), Some(36.0), Some(49.0)]),
    row(16.0, 32.0, 16.0, 17.0, [Some(38.0), Some(44.0), Some(57.0)]),
    row(20.0, 40.0, 18.0, 22.0, [Some(46.0), Some(52.0), Some(65.0)]),
    row(24.0, 45.0, 22.0, 25.0, [Some(54.0), Some(60.0), Some(73.0)]),
    row(27.0, 50.0, 24.0, 27.0, [Some(60.0), Some(66.0), Some(79.0)]),
    row(30.0, 55.0, 27.0, 30.0, [Some(66.0), Some(72.0), Some(85.0)]),
    row(33.0, 60.0, 30.0, 34.0, [None, Some(78.0), Some(91.0)]),
    row(36.0, 65.0, 32.0, 38.0, [None, Some(84.0), Some(97.0)]),
    row(39.0, 70.0, 35.0, 41.0, [None, Some(90.0), Some(103.0)]),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(d: f64, eye: f64, hole: f64, thickness: f64, b: [Option<f64>; 3]) -> Row {
    Row { d, eye, hole, thickness, b }
}
