//! ISO 7380-1, button head screws with a hexagon socket.

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
    /// Socket across flats, nominal.
    pub s: f64,
    /// Socket depth, least.
    pub t: f64,
}

/// Where the sizes were read.
pub const SOURCE: Source =
    document::ISO_7380.read("dk, k, s, t, as tabulated in a public CAD fastener library");

/// The rows.
pub const ROWS: &[Row] = &[
    row(3.0, 5.7, 1.65, 2.0, 1.04),
    row(4.0, 7.6, 2.2, 2.5, 1.3),
    row(5.0, 9.5, 2.75, 3.0, 1.56),
    row(6.0, 10.5, 3.3, 4.0, 2.08),
    row(8.0, 14.0, 4.4, 5.0, 2.6),
    row(10.0, 17.5, 5.5, 6.0, 3.12),
    row(12.0, 21.0, 6.6, 8.0, 4.16),
    row(16.0, 28.0, 8.8, 10.0, 5.2),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(d: f64, dk: f64, k: f64, s: f64, t: f64) -> Row {
    Row { d, dk, k, s, t }
}
