//! ISO 7093-1, plain washers, large series.

use crate::source::{Source, document};

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter.
    pub d: f64,
    /// Hole, least.
    pub d1: f64,
    /// Outside diameter, greatest.
    pub d2: f64,
    /// Thickness, nominal.
    pub h: f64,
}

/// Where the sizes were read.
pub const SOURCE: Source =
    document::ISO_7093_1.read("d1, d2, h, as tabulated in a public CAD fastener library");

/// The rows.
pub const ROWS: &[Row] = &[
    row(3.0, 3.2, 9.0, 0.8),
    row(4.0, 4.3, 12.0, 1.0),
    row(5.0, 5.3, 15.0, 1.0),
    row(6.0, 6.4, 18.0, 1.6),
    row(8.0, 8.4, 24.0, 2.0),
    row(10.0, 10.5, 30.0, 2.5),
    row(12.0, 13.0, 37.0, 3.0),
    row(14.0, 15.0, 44.0, 3.0),
    row(16.0, 17.0, 50.0, 3.0),
    row(18.0, 19.0, 56.0, 4.0),
    row(20.0, 21.0, 60.0, 4.0),
    row(22.0, 23.0, 66.0, 5.0),
    row(24.0, 25.0, 72.0, 5.0),
    row(27.0, 30.0, 85.0, 6.0),
    row(30.0, 33.0, 92.0, 6.0),
    row(33.0, 36.0, 105.0, 6.0),
    row(36.0, 39.0, 110.0, 8.0),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(d: f64, d1: f64, d2: f64, h: f64) -> Row {
    Row { d, d1, d2, h }
}
