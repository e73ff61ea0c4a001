//! ASME B18.2.2, hex nuts and heavy hex nuts, inch: width across flats and thickness.

use crate::source::{Source, document};

/// One size, in inches, basic.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter.
    pub d: f64,
    /// Width across flats `F`.
    pub f: f64,
    /// Thickness `H`.
    pub h: f64,
}

/// Where the hex nuts were read.
pub const HEX_SOURCE: Source = document::ASME_B18_2_2.read("hex nuts, F and H basic");
/// Where the heavy hex nuts were read.
pub const HEAVY_SOURCE: Source = document::ASME_B18_2_2.read("heavy hex nuts, F and H basic");
/// Countersink of the thread: between `D` and about 1.08 `D`.
pub const COUNTERSINK: (f64, f64) = (1.0, 1.08);
/// Where the countersink is published.
pub const COUNTERSINK_SOURCE: Source = document::ASME_B18_2_2.memory("countersink");

/// Hex nuts, 1/4 to 1 1/2 in.
pub const HEX: &[Row] = &[
    row(0.25, 0.4375, 7.0 / 32.0),
    row(0.3125, 0.5, 17.0 / 64.0),
    row(0.375, 0.5625, 21.0 / 64.0),
    row(0.4375, 0.6875, 0.375),
    row(0.5, 0.75, 0.4375),
    row(0.5625, 0.875, 31.0 / 64.0),
    row(0.625, 0.9375, 35.0 / 64.0),
    row(0.75, 1.125, 41.0 / 64.0),
    row(0.875, 1.3125, 0.75),
    row(1.0, 1.5, 55.0 / 64.0),
    row(1.125, 1.6875, 31.0 / 32.0),
    row(1.25, 1.875, 1.0625),
    row(1.375, 2.0625, 1.0 + 11.0 / 64.0),
    row(1.5, 2.25, 1.0 + 9.0 / 32.0),
];

/// Heavy hex nuts, 1/4 to 4 in.
pub const HEAVY: &[Row] = &[
    row(0.25, 0.5, 15.0 / 64.0),
    row(0.3125, 0.5625, 19.0 / 64.0),
    row(0.375, 0.6875, 23.0 / 64.0),
    row(0.4375, 0.75, 27.0 / 64.0),
    row(0.5, 0.875, 31.0 / 64.0),
    row(0.5625, 0.9375, 35.0 / 64.0),
    row(0.625, 1.0625, 39.0 / 64.0),
    row(0.75, 1.25, 47.0 / 64.0),
    row(0.875, 1.4375, 55.0 / 64.0),
    row(1.0, 1.625, 63.0 / 64.0),
    row(1.125, 1.8125, 1.0 + 7.0 / 64.0),
    row(1.25, 2.0, 1.0 + 7.0 / 32.0),
    row(1.375, 2.1875, 1.0 + 11.0 / 32.0),
    row(1.5, 2.375, 1.0 + 15.0 / 32.0),
    row(1.625, 2.5625, 1.0 + 19.0 / 32.0),
    row(1.75, 2.75, 1.0 + 23.0 / 32.0),
    row(2.0, 3.125, 1.0 + 31.0 / 32.0),
    row(2.25, 3.5, 2.0 + 13.0 / 64.0),
    row(2.5, 3.875, 2.0 + 29.0 / 64.0),
    row(2.75, 4.25, 2.0 + 45.0 / 64.0),
    row(3.0, 4.625, 2.0 + 61.0 / 64.0),
    row(3.25, 5.0, 3.0 + 3.0 / 16.0),
    row(3.5, 5.375, 3.0 + 7.0 / 16.0),
    row(3.75, 5.75, 3.0 + 11.0 / 16.0),
    row(4.0, 6.125, 3.0 + 15.0 / 16.0),
];

/// Nominal thread diameter and least thickness of hex nuts, which strength is judged by.
pub const HEX_LEAST: &[(f64, f64)] = &[
    (0.25, 0.212),
    (0.3125, 0.258),
    (0.375, 0.32),
    (0.4375, 0.365),
    (0.5, 0.427),
    (0.5625, 0.473),
    (0.625, 0.535),
    (0.75, 0.617),
    (0.875, 0.724),
    (1.0, 0.831),
    (1.125, 0.939),
    (1.25, 1.03),
    (1.375, 1.138),
    (1.5, 1.245),
];
/// Nominal thread diameter and least thickness of heavy hex nuts.
pub const HEAVY_LEAST: &[(f64, f64)] = &[
    (0.25, 0.218),
    (0.3125, 0.28),
    (0.375, 0.341),
    (0.4375, 0.403),
    (0.5, 0.464),
    (0.5625, 0.526),
    (0.625, 0.587),
    (0.75, 0.71),
    (0.875, 0.833),
    (1.0, 0.956),
    (1.125, 1.079),
    (1.25, 1.187),
    (1.375, 1.31),
    (1.5, 1.433),
    (1.625, 1.556),
    (1.75, 1.679),
    (2.0, 1.925),
    (2.25, 2.155),
    (2.5, 2.401),
    (2.75, 2.647),
    (3.0, 2.893),
    (3.25, 3.124),
    (3.5, 3.37),
    (3.75, 3.616),
    (4.0, 3.862),
];
/// Where the least thicknesses come from.
pub const LEAST_SOURCE: Source = document::ASME_B18_2_2.memory("least H");

const fn row(d: f64, f: f64, h: f64) -> Row {
    Row { d, f, h }
}

/// A hexagon flange nut, in inches, the middle of its limits.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Flange {
    /// Nominal thread diameter.
    pub d: f64,
    /// Width across flats `F`.
    pub f: f64,
    /// Flange diameter `B`.
    pub b: f64,
    /// Height `H`.
    pub h: f64,
    /// Thickness of the flange at its rim `K`, least.
    pub rim: f64,
}

/// Where flange nuts were read.
pub const FLANGE_SOURCE: Source = document::ASME_B18_2_2
    .read("hex flange nuts, middle of the limits, as tabulated in a public CAD fastener library");
/// Where square nuts were read.
pub const SQUARE_SOURCE: Source =
    document::ASME_B18_2_2.read("square nuts, F and H, as tabulated in a public CAD fastener library");

/// Hexagon flange nuts, #6 to 3/4 in.
pub const FLANGES: &[Flange] = &[
    flange(0.138, 0.307, 0.414, 0.1635, 0.02),
    flange(0.164, 0.339, 0.4605, 0.195, 0.02),
    flange(0.19, 0.37, 0.49, 0.211, 0.03),
    flange(0.216, 0.433, 0.584, 0.229, 0.04),
    flange(0.25, 0.433, 0.584, 0.229, 0.04),
    flange(0.3125, 0.4945, 0.67, 0.2755, 0.04),
    flange(0.375, 0.5565, 0.739, 0.3385, 0.04),
    flange(0.4375, 0.6815, 0.9235, 0.385, 0.04),
    flange(0.5, 0.743, 1.0155, 0.4475, 0.05),
    flange(0.5625, 0.868, 1.1715, 0.4945, 0.05),
    flange(0.625, 0.93, 1.2645, 0.557, 0.05),
    flange(0.75, 1.1065, 1.48, 0.651, 0.06),
];

/// Square nuts, 1/4 to 1 1/2 in.
pub const SQUARES: &[Row] = &[
    row(0.25, 0.4375, 7.0 / 32.0),
    row(0.3125, 0.5625, 17.0 / 64.0),
    row(0.375, 0.625, 21.0 / 64.0),
    row(0.4375, 0.75, 0.375),
    row(0.5, 0.8125, 0.4375),
    row(0.625, 1.0, 35.0 / 64.0),
    row(0.75, 1.125, 21.0 / 32.0),
    row(0.875, 1.3125, 49.0 / 64.0),
    row(1.0, 1.5, 0.875),
    row(1.125, 1.6875, 1.0),
    row(1.25, 1.875, 1.0 + 3.0 / 32.0),
    row(1.375, 2.0625, 1.0 + 13.0 / 64.0),
    row(1.5, 2.25, 1.0 + 5.0 / 16.0),
];

const fn flange(d: f64, f: f64, b: f64, h: f64, rim: f64) -> Flange {
    Flange { d, f, b, h, rim }
}
