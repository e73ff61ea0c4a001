//! ASME B18.6.4, tapping screws, inch: pan heads. Machine screws of ASME B18.6.3 have the same.

use crate::source::{Source, document};

/// The head of one number size, in inches.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Number size.
    pub number: u8,
    /// Head diameter, greatest and least.
    pub a: (f64, f64),
    /// Height of the recessed head, greatest and least.
    pub h: (f64, f64),
}

/// Where the heads were read.
pub const SOURCE: Source = document::ASME_B18_6_4.read("1998, pan heads");

/// Machine screws have the same heads, and a thread to the head up to 2 in (up to #4: 1 1/8 in).
pub const MACHINE: Source =
    document::ASME_B18_6_3.memory("pan heads as those of tapping screws; thread length");

/// The rows. Known by [`SOURCE`] and [`MACHINE`].
pub const ROWS: &[Row] = &[
    row(2, (0.167, 0.155), (0.062, 0.053)),
    row(3, (0.193, 0.18), (0.071, 0.062)),
    row(4, (0.219, 0.205), (0.08, 0.07)),
    row(5, (0.245, 0.231), (0.089, 0.079)),
    row(6, (0.27, 0.256), (0.097, 0.087)),
    row(7, (0.296, 0.281), (0.106, 0.096)),
    row(8, (0.322, 0.306), (0.115, 0.105)),
    row(10, (0.373, 0.357), (0.133, 0.122)),
    row(12, (0.425, 0.407), (0.151, 0.139)),
    row(14, (0.476, 0.457), (0.169, 0.156)),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(number: u8, a: (f64, f64), h: (f64, f64)) -> Row {
    Row { number, a, h }
}
