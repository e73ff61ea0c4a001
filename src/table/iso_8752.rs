//! ISO 8752, slotted spring pins, heavy duty.

use crate::source::{Basis, Source, document};

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal diameter: the hole.
    pub d: f64,
    /// Wall.
    pub s: f64,
    /// How the wall is known.
    pub basis: Basis,
}

/// Where a wall is known from.
pub const fn source(basis: Basis) -> Source {
    document::ISO_8752.known("wall s", basis)
}

/// The rows.
pub const ROWS: &[Row] = &[
    row(1.0, 0.2, Basis::Read),
    row(1.5, 0.3, Basis::Read),
    row(2.0, 0.4, Basis::Read),
    row(2.5, 0.5, Basis::Read),
    row(3.0, 0.6, Basis::Read),
    row(3.5, 0.75, Basis::Read),
    row(4.0, 0.8, Basis::Read),
    row(4.5, 1.0, Basis::Read),
    row(5.0, 1.0, Basis::Read),
    row(6.0, 1.2, Basis::Read),
    row(8.0, 1.5, Basis::Read),
    row(10.0, 2.0, Basis::Read),
    row(12.0, 2.5, Basis::Memory),
    row(13.0, 2.5, Basis::Memory),
    row(14.0, 3.0, Basis::Memory),
    row(16.0, 3.0, Basis::Memory),
    row(18.0, 3.5, Basis::Memory),
    row(20.0, 4.0, Basis::Memory),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(d: f64, s: f64, basis: Basis) -> Row {
    Row { d, s, basis }
}
