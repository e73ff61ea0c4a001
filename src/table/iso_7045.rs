//! ISO 7045, pan head screws with a cross recess: machine screws.

use crate::source::{Source, document};

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter.
    pub d: f64,
    /// Head diameter, greatest.
    pub dk: f64,
    /// Head height, greatest.
    pub k: f64,
    /// Thread length, least; shorter screws are threaded to the head.
    pub b: f64,
}

/// Where the sizes are known from; the heads are those that ISO 7049 gives its tapping screws.
pub const SOURCE: Source = document::ISO_7045.memory("dk, k, b");

/// The rows.
pub const ROWS: &[Row] = &[
    row(3.0, 5.6, 2.4, 25.0),
    row(4.0, 8.0, 3.1, 38.0),
    row(5.0, 9.5, 3.7, 38.0),
    row(6.0, 12.0, 4.6, 38.0),
    row(8.0, 16.0, 6.0, 38.0),
    row(10.0, 20.0, 7.5, 38.0),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(d: f64, dk: f64, k: f64, b: f64) -> Row {
    Row { d, dk, k, b }
}
