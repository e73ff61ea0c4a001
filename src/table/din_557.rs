//! DIN 557, square nuts.

use crate::source::{Source, document};

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter.
    pub d: f64,
    /// Width across flats, greatest.
    pub s: f64,
    /// Height, greatest.
    pub m: f64,
    /// Circle of the chamfer, least.
    pub dw: f64,
}

/// Where the sizes were read.
pub const SOURCE: Source = document::DIN_557.read("s, m, dw, as tabulated in a public CAD fastener library");

/// The rows.
pub const ROWS: &[Row] = &[
    row(5.0, 8.0, 4.0, 6.7),
    row(6.0, 10.0, 5.0, 8.7),
    row(8.0, 13.0, 6.5, 11.5),
    row(10.0, 17.0, 8.0, 15.5),
    row(12.0, 19.0, 10.0, 17.2),
    row(16.0, 24.0, 13.0, 22.0),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(d: f64, s: f64, m: f64, dw: f64) -> Row {
    Row { d, s, m, dw }
}
