//! ASME B18.5, round head square neck bolts, inch: carriage bolts.

use crate::source::{Source, document};

/// One size, in inches.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter.
    pub d: f64,
    /// Head diameter, greatest and least.
    pub a: (f64, f64),
    /// Head height, greatest and least.
    pub h: (f64, f64),
    /// Width of the square, greatest and least.
    pub o: (f64, f64),
    /// Depth of the square, greatest and least.
    pub p: (f64, f64),
}

/// Where the sizes were read; where copies differ, what most of them print.
pub const SOURCE: Source = document::ASME_B18_5.read("round head square neck bolts");

/// The rows.
pub const ROWS: &[Row] = &[
    row(0.19, (0.469, 0.438), (0.114, 0.094), (0.199, 0.185), (0.125, 0.094)),
    row(0.25, (0.594, 0.563), (0.145, 0.125), (0.26, 0.245), (0.156, 0.125)),
    row(0.3125, (0.719, 0.688), (0.176, 0.156), (0.324, 0.307), (0.187, 0.156)),
    row(0.375, (0.844, 0.782), (0.208, 0.188), (0.388, 0.368), (0.219, 0.188)),
    row(0.4375, (0.969, 0.907), (0.239, 0.219), (0.452, 0.431), (0.25, 0.219)),
    row(0.5, (1.094, 1.032), (0.27, 0.25), (0.515, 0.492), (0.281, 0.25)),
    row(0.625, (1.344, 1.219), (0.344, 0.313), (0.642, 0.616), (0.344, 0.313)),
    row(0.75, (1.594, 1.469), (0.406, 0.375), (0.768, 0.741), (0.406, 0.375)),
    row(0.875, (1.844, 1.719), (0.469, 0.438), (0.895, 0.865), (0.469, 0.438)),
    row(1.0, (2.094, 1.969), (0.531, 0.5), (1.022, 0.99), (0.531, 0.5)),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(d: f64, a: (f64, f64), h: (f64, f64), o: (f64, f64), p: (f64, f64)) -> Row {
    Row { d, a, h, o, p }
}
