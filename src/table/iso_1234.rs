//! ISO 1234, split pins: cotter pins.

use crate::source::{Source, document};

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal size: the hole.
    pub n: f64,
    /// Shank, greatest and least.
    pub d: (f64, f64),
    /// What the longer leg has more, greatest and least.
    pub a: (f64, f64),
    /// Length of the eye, about.
    pub b: f64,
    /// Width of the eye, greatest and least.
    pub c: (f64, f64),
}

/// Where the sizes are known from; the middles of the limits agree with a public CAD fastener library for
/// all but 1.2, 1.6 and 2 mm.
pub const SOURCE: Source = document::ISO_1234.memory("d, a, b, c");

/// The rows.
pub const ROWS: &[Row] = &[
    row(0.6, (0.5, 0.4), (1.6, 0.8), 2.0, (1.0, 0.9)),
    row(0.8, (0.7, 0.6), (1.6, 0.8), 2.4, (1.4, 1.2)),
    row(1.0, (0.9, 0.8), (1.6, 0.8), 3.0, (1.8, 1.6)),
    row(1.2, (1.0, 0.9), (2.5, 1.25), 3.0, (2.0, 1.7)),
    row(1.6, (1.4, 1.3), (2.5, 1.25), 3.2, (2.8, 2.4)),
    row(2.0, (1.8, 1.7), (2.5, 1.25), 4.0, (3.6, 3.2)),
    row(2.5, (2.3, 2.1), (2.5, 1.25), 5.0, (4.6, 4.0)),
    row(3.2, (2.9, 2.7), (3.2, 1.6), 6.4, (5.8, 5.1)),
    row(4.0, (3.7, 3.5), (4.0, 2.0), 8.0, (7.4, 6.5)),
    row(5.0, (4.6, 4.4), (4.0, 2.0), 10.0, (9.2, 8.0)),
    row(6.3, (5.9, 5.7), (4.0, 2.0), 12.6, (11.8, 10.3)),
    row(8.0, (7.5, 7.3), (4.0, 2.0), 16.0, (15.0, 13.1)),
    row(10.0, (9.5, 9.3), (6.3, 3.15), 20.0, (19.0, 16.6)),
    row(13.0, (12.4, 12.1), (6.3, 3.15), 26.0, (24.8, 21.7)),
    row(16.0, (15.4, 15.1), (6.3, 3.15), 32.0, (30.8, 27.0)),
    row(20.0, (19.3, 19.0), (6.3, 3.15), 40.0, (38.5, 33.8)),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(n: f64, d: (f64, f64), a: (f64, f64), b: f64, c: (f64, f64)) -> Row {
    Row { n, d, a, b, c }
}
