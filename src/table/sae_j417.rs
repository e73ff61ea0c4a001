//! SAE J417: Rockwell C and approximate tensile strength of steel.
//!
//! Kept beside the table of ISO 18265 to show how far two documents differ on the same steel; its
//! hardness columns are those of ASTM E140.

use crate::source::document::SAE_J417;
use crate::source::{Basis, Source};

/// A row.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Rockwell C.
    pub hrc: f64,
    /// Tensile strength in MPa.
    pub tensile: f64,
    /// How the row is known.
    pub basis: Basis,
}

/// The document, on the basis of its row.
pub const fn source(basis: Basis) -> Source {
    SAE_J417.known("tensile column", basis)
}

const fn r(hrc: f64, tensile: f64, basis: Basis) -> Row {
    Row { hrc, tensile, basis }
}

/// The table, softest row first.
#[rustfmt::skip]
pub static TABLE: &[Row] = &[
    r(20.0, 760.0, Basis::Memory),
    r(21.0, 770.0, Basis::Memory),
    r(22.0, 785.0, Basis::Memory),
    r(23.0, 805.0, Basis::Memory),
    r(24.0, 825.0, Basis::Memory),
    r(25.0, 840.0, Basis::Memory),
    r(26.0, 860.0, Basis::Memory),
    r(27.0, 880.0, Basis::Memory),
    r(28.0, 910.0, Basis::Memory),
    r(29.0, 930.0, Basis::Memory),
    r(30.0, 950.0, Basis::Memory),
    r(31.0, 980.0, Basis::Memory),
    r(32.0, 1000.0, Basis::Memory),
    r(33.0, 1025.0, Basis::Memory),
    r(34.0, 1055.0, Basis::Memory),
    r(35.0, 1080.0, Basis::Memory),
    r(36.0, 1115.0, Basis::Memory),
    r(37.0, 1160.0, Basis::Memory),
    r(38.0, 1180.0, Basis::Memory),
    r(39.0, 1215.0, Basis::Memory),
    r(40.0, 1250.0, Basis::Memory),
    r(41.0, 1295.0, Basis::Memory),
    r(42.0, 1340.0, Basis::Memory),
    r(43.0, 1385.0, Basis::Memory),
    r(44.0, 1435.0, Basis::Read),
    r(45.0, 1480.0, Basis::Read),
    r(46.0, 1530.0, Basis::Read),
    r(47.0, 1580.0, Basis::Read),
    r(48.0, 1635.0, Basis::Read),
    r(49.0, 1695.0, Basis::Read),
    r(50.0, 1760.0, Basis::Read),
    r(51.0, 1820.0, Basis::Read),
    r(52.0, 1880.0, Basis::Read),
    r(53.0, 1950.0, Basis::Read),
    r(54.0, 2015.0, Basis::Read),
    r(55.0, 2075.0, Basis::Read),
];
