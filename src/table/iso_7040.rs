//! ISO 7040, prevailing torque hexagon nuts with a non-metallic insert, style 1.

use crate::source::{Source, document};

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter.
    pub d: f64,
    /// Width across flats, greatest.
    pub s: f64,
    /// Height over all, greatest.
    pub h: f64,
    /// Height of the thread, least.
    pub m: f64,
}

/// Where the sizes were read.
pub const SOURCE: Source = document::ISO_7040.read("s, h, m, as tabulated in a public CAD fastener library");

/// The rows.
pub const ROWS: &[Row] = &[
    row(3.0, 5.5, 4.5, 2.15),
    row(4.0, 7.0, 6.0, 2.9),
    row(5.0, 8.0, 6.8, 4.4),
    row(6.0, 10.0, 8.0, 4.9),
    row(8.0, 13.0, 9.5, 6.44),
    row(10.0, 16.0, 11.9, 8.04),
    row(12.0, 18.0, 14.9, 10.37),
    row(14.0, 21.0, 17.0, 12.1),
    row(16.0, 24.0, 19.1, 14.1),
    row(20.0, 30.0, 22.8, 16.9),
    row(24.0, 36.0, 27.1, 20.2),
    row(30.0, 46.0, 32.6, 24.3),
    row(36.0, 55.0, 38.9, 29.4),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(d: f64, s: f64, h: f64, m: f64) -> Row {
    Row { d, s, h, m }
}
