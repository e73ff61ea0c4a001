//! ISO 7089, plain washers of the normal series: hole, outside and thickness.

use crate::source::{Basis, Source, document};

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter `d`.
    pub d: f64,
    /// Hole `d1`, nominal.
    pub d1: f64,
    /// Outside diameter `d2`, nominal.
    pub d2: f64,
    /// Thickness `h`, nominal.
    pub h: f64,
    /// How the row is known.
    pub basis: Basis,
}

/// Where a row is known from.
pub const fn source(basis: Basis) -> Source {
    match basis {
        Basis::Read => document::ISO_7089.read(
            "d1, d2 as tabulated in the general-purpose CAD library bd_warehouse 0.4; h in a public listing",
        ),
        basis => document::ISO_7089.known("d1, d2, h", basis),
    }
}

/// The rows, M5 to M64.
pub const ROWS: &[Row] = &[
    remembered(3.0, 3.2, 7.0, 0.5),
    remembered(4.0, 4.3, 9.0, 0.8),
    row(5.0, 5.3, 10.0, 1.0),
    row(6.0, 6.4, 12.0, 1.6),
    row(8.0, 8.4, 16.0, 1.6),
    row(10.0, 10.5, 20.0, 2.0),
    row(12.0, 13.0, 24.0, 2.5),
    row(14.0, 15.0, 28.0, 2.5),
    row(16.0, 17.0, 30.0, 3.0),
    row(18.0, 19.0, 34.0, 3.0),
    row(20.0, 21.0, 37.0, 3.0),
    remembered(22.0, 23.0, 39.0, 3.0),
    row(24.0, 25.0, 44.0, 4.0),
    remembered(27.0, 28.0, 50.0, 4.0),
    row(30.0, 31.0, 56.0, 4.0),
    remembered(33.0, 34.0, 60.0, 5.0),
    row(36.0, 37.0, 66.0, 5.0),
    remembered(39.0, 42.0, 72.0, 6.0),
    remembered(42.0, 45.0, 78.0, 8.0),
    remembered(45.0, 48.0, 85.0, 8.0),
    remembered(48.0, 52.0, 92.0, 8.0),
    remembered(52.0, 56.0, 98.0, 8.0),
    remembered(56.0, 62.0, 105.0, 10.0),
    remembered(60.0, 66.0, 110.0, 10.0),
    remembered(64.0, 70.0, 115.0, 10.0),
];

const fn row(d: f64, d1: f64, d2: f64, h: f64) -> Row {
    Row { d, d1, d2, h, basis: Basis::Read }
}

const fn remembered(d: f64, d1: f64, d2: f64, h: f64) -> Row {
    Row { d, d1, d2, h, basis: Basis::Memory }
}
