//! ISO 4033, hexagon high nuts (style 2): height. The width across flats is that of ISO 4032.

use crate::source::{Source, document};

/// Where the heights come from.
pub const SOURCE: Source = document::ISO_4033.memory("greatest and least m");

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter `D`.
    pub d: f64,
    /// Height `m`, greatest.
    pub m: f64,
    /// Height `m`, least.
    pub m_min: f64,
}

/// The rows of the first choice, M5 to M36.
pub const ROWS: &[Row] = &[
    row(5.0, 5.1, 4.8),
    row(6.0, 5.7, 5.4),
    row(8.0, 7.5, 7.14),
    row(10.0, 9.3, 8.94),
    row(12.0, 12.0, 11.57),
    row(14.0, 14.1, 13.4),
    row(16.0, 16.4, 15.7),
    row(20.0, 20.3, 19.0),
    row(24.0, 23.9, 22.6),
    row(30.0, 28.6, 27.3),
    row(36.0, 34.7, 33.1),
];

const fn row(d: f64, m: f64, m_min: f64) -> Row {
    Row { d, m, m_min }
}
