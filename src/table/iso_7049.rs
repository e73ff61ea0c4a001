//! ISO 7049, pan head tapping screws with a cross recess.

use crate::source::{Source, document};

/// The head of one size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal size of the thread: ST 4.2 is 4.2.
    pub st: f64,
    /// Head diameter, greatest and least.
    pub dk: (f64, f64),
    /// Head height, greatest and least.
    pub k: (f64, f64),
}

/// Where the heads were read.
pub const SOURCE: Source = document::ISO_7049.read("dk, k, as tabulated in a public CAD fastener library");

/// The rows.
pub const ROWS: &[Row] = &[
    row(2.2, (4.0, 3.7), (1.6, 1.4)),
    row(2.9, (5.6, 5.3), (2.4, 2.15)),
    row(3.5, (7.0, 6.64), (2.6, 2.35)),
    row(4.2, (8.0, 7.64), (3.1, 2.8)),
    row(4.8, (9.5, 9.14), (3.7, 3.4)),
    row(5.5, (11.0, 10.57), (4.0, 3.7)),
    row(6.3, (12.0, 11.57), (4.6, 4.3)),
    row(8.0, (16.0, 15.57), (6.0, 5.6)),
    row(9.5, (20.0, 19.48), (7.5, 7.1)),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(st: f64, dk: (f64, f64), k: (f64, f64)) -> Row {
    Row { st, dk, k }
}
