//! EN 14399-4, bolts and nuts of system HV.

use crate::source::{Source, document};

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter.
    pub d: f64,
    /// Width across flats of bolt and nut.
    pub s: f64,
    /// Head height, nominal.
    pub k: f64,
    /// Thread length, whatever the length of the bolt.
    pub b: f64,
    /// Nut height, nominal.
    pub m: f64,
}

/// Where the widths across flats were read.
pub const FLATS: Source = document::EN_14399_4.read("s of bolt and nut");
/// Where the other sizes are known from.
pub const SOURCE: Source = document::EN_14399_4.memory("k, b, m");

/// The rows.
pub const ROWS: &[Row] = &[
    row(12.0, 22.0, 8.0, 23.0, 10.0),
    row(16.0, 27.0, 10.0, 28.0, 13.0),
    row(20.0, 32.0, 13.0, 33.0, 16.0),
    row(22.0, 36.0, 14.0, 34.0, 18.0),
    row(24.0, 41.0, 15.0, 39.0, 20.0),
    row(27.0, 46.0, 17.0, 41.0, 22.0),
    row(30.0, 50.0, 19.0, 44.0, 24.0),
    row(36.0, 60.0, 23.0, 52.0, 29.0),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(d: f64, s: f64, k: f64, b: f64, m: f64) -> Row {
    Row { d, s, k, b, m }
}
