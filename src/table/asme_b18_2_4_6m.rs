//! ASME B18.2.4.6M, heavy hex nuts, metric.

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
}

/// Where the sizes are known from.
pub const SOURCE: Source = document::ASME_B18_2_4_6M.memory("s and m, greatest");

/// The rows.
pub const ROWS: &[Row] = &[
    row(12.0, 21.0, 12.3),
    row(14.0, 24.0, 14.3),
    row(16.0, 27.0, 17.1),
    row(20.0, 34.0, 20.7),
    row(22.0, 36.0, 23.6),
    row(24.0, 41.0, 24.2),
    row(27.0, 46.0, 27.6),
    row(30.0, 50.0, 30.7),
    row(36.0, 60.0, 36.6),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(d: f64, s: f64, m: f64) -> Row {
    Row { d, s, m }
}
