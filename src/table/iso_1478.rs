//! ISO 1478, threads of tapping screws.

use crate::source::{Source, document};

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal size: ST 4.2 is 4.2.
    pub st: f64,
    /// The number size that is the same thread.
    pub number: u8,
    /// Pitch.
    pub p: f64,
    /// Diameter over the thread, greatest and least.
    pub d1: (f64, f64),
    /// Core diameter, greatest and least.
    pub d2: (f64, f64),
    /// Length of the cone point, reference.
    pub y: f64,
}

/// Where the threads were read.
pub const SOURCE: Source =
    document::ISO_1478.read("d1, d2, P, y of form C, as tabulated in a public CAD fastener library");

/// The rows.
pub const ROWS: &[Row] = &[
    row(1.5, 0, 0.5, (1.52, 1.38), (0.91, 0.84), 1.4),
    row(1.9, 1, 0.6, (1.9, 1.76), (1.24, 1.17), 1.6),
    row(2.2, 2, 0.8, (2.24, 2.1), (1.63, 1.52), 2.0),
    row(2.6, 3, 0.9, (2.57, 2.43), (1.9, 1.8), 2.3),
    row(2.9, 4, 1.1, (2.9, 2.76), (2.18, 2.08), 2.6),
    row(3.3, 5, 1.3, (3.3, 3.12), (2.39, 2.29), 3.0),
    row(3.5, 6, 1.3, (3.53, 3.35), (2.64, 2.51), 3.2),
    row(3.9, 7, 1.3, (3.91, 3.73), (2.92, 2.77), 3.5),
    row(4.2, 8, 1.4, (4.22, 4.04), (3.1, 2.95), 3.7),
    row(4.8, 10, 1.6, (4.8, 4.62), (3.58, 3.43), 4.3),
    row(5.5, 12, 1.8, (5.46, 5.28), (4.17, 3.99), 5.0),
    row(6.3, 14, 1.8, (6.25, 6.03), (4.88, 4.7), 6.0),
    row(8.0, 16, 2.1, (8.0, 7.78), (6.2, 5.99), 7.5),
    row(9.5, 20, 2.1, (9.65, 9.43), (7.85, 7.59), 8.0),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(st: f64, number: u8, p: f64, d1: (f64, f64), d2: (f64, f64), y: f64) -> Row {
    Row { st, number, p, d1, d2, y }
}
