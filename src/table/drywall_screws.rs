//! Drywall screws: masses by size, from a list; sizes of their heads are trade practice.

use crate::source::{Basis, Source, document};

/// One listed size, in millimetres and grams.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal diameter.
    pub d: f64,
    /// Length.
    pub l: f64,
    /// Mass of one.
    pub mass: f64,
}

/// Where the masses were read; they run on a straight line in the length.
pub const MASS: Source = document::MASS_LIST.read("drywall screws");
/// Head diameters by nominal diameter, in millimetres. Known by [`HEAD`].
pub const HEADS: &[(f64, f64)] = &[(3.5, 8.0), (3.9, 8.0), (4.2, 8.0), (4.8, 9.0)];
/// Where the heads are known from.
pub const HEAD: Source = document::TRADE.memory("bugle heads of drywall screws, about");
/// The thread is taken as that of a tapping screw of the size.
pub const THREAD: Source =
    document::PROJECT.known("thread as of a tapping screw of the size", Basis::Assumed);

/// The rows. Known by [`MASS`].
pub const ROWS: &[Row] = &[
    row(3.5, 16.0, 0.957),
    row(3.5, 19.0, 1.091),
    row(3.5, 25.0, 1.359),
    row(3.5, 32.0, 1.672),
    row(3.5, 35.0, 1.806),
    row(3.5, 41.0, 2.073),
    row(3.5, 45.0, 2.252),
    row(3.5, 51.0, 2.52),
    row(3.5, 55.0, 2.699),
    row(3.5, 64.0, 3.145),
    row(3.5, 65.0, 3.145),
    row(3.9, 64.0, 3.709),
    row(3.9, 70.0, 4.04),
    row(4.2, 70.0, 4.516),
    row(4.2, 76.0, 4.892),
    row(4.2, 90.0, 5.77),
    row(4.8, 90.0, 7.985),
    row(4.8, 95.0, 8.427),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(d: f64, l: f64, mass: f64) -> Row {
    Row { d, l, mass }
}
