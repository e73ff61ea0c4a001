//! ISO 10642, countersunk screws with a hexagon socket, 90°.

use crate::source::{Source, document};

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter.
    pub d: f64,
    /// Head diameter, actual, least.
    pub dk: f64,
    /// Head height to the theoretical sharp edge, greatest.
    pub k: f64,
    /// Socket across flats, nominal.
    pub s: f64,
    /// Socket depth, least.
    pub t: f64,
    /// Thread length of screws threaded over a part.
    pub b: f64,
}

/// Where the sizes were read.
pub const SOURCE: Source = document::ISO_10642.read("dk actual, k, s, t, b reference");

/// The rows.
pub const ROWS: &[Row] = &[
    row(3.0, 5.54, 1.86, 2.0, 1.1, 18.0),
    row(4.0, 7.53, 2.48, 2.5, 1.5, 20.0),
    row(5.0, 9.43, 3.1, 3.0, 1.9, 22.0),
    row(6.0, 11.34, 3.72, 4.0, 2.2, 24.0),
    row(8.0, 15.24, 4.96, 5.0, 3.0, 28.0),
    row(10.0, 19.22, 6.2, 6.0, 3.5, 32.0),
    row(12.0, 23.12, 7.44, 8.0, 4.3, 36.0),
    row(14.0, 26.52, 8.4, 10.0, 4.5, 40.0),
    row(16.0, 29.01, 8.8, 10.0, 4.8, 44.0),
    row(20.0, 36.05, 10.16, 12.0, 5.6, 52.0),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(d: f64, dk: f64, k: f64, s: f64, t: f64, b: f64) -> Row {
    Row { d, dk, k, s, t, b }
}
