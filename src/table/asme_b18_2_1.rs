//! ASME B18.2.1, hex cap screws and hex bolts, inch: head sizes and thread lengths.

use crate::source::{Basis, Source, document};

/// The head of one size, in inches, basic.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter.
    pub d: f64,
    /// Width across flats `F`.
    pub f: f64,
    /// Head height `H`.
    pub h: f64,
    /// How the row is known.
    pub basis: Basis,
}

/// Where a row is known from.
pub const fn source(basis: Basis) -> Source {
    document::ASME_B18_2_1.known("F and H, basic", basis)
}

/// Thread length: 2D + 1/4 in up to 6 in, 2D + 1/2 in beyond.
pub const THREAD_LENGTH: Source = document::ASME_B18_2_1.read("thread length LT");
/// What is added to `2D`, by the greatest nominal length it holds for, in inches.
pub const THREAD_ADDITIONS: [(f64, f64); 2] = [(6.0, 0.25), (f64::INFINITY, 0.5)];
/// Distance of the last full thread from the head of a bolt threaded to the head, in pitches.
pub const RUN_OUT_PITCHES: f64 = 2.5;
/// Where the run-out is published.
pub const RUN_OUT: Source = document::ASME_B18_2_1.memory("bolts too short for the thread length");

/// The rows: hex cap screws from 1/4 to 3 in, hex bolts above. Listings print the greatest `F` and
/// the limits of `H`; basic `H` from 2 1/4 in up is memory.
pub const ROWS: &[Row] = &[
    row(0.25, 0.4375, 5.0 / 32.0),
    row(0.3125, 0.5, 13.0 / 64.0),
    row(0.375, 0.5625, 15.0 / 64.0),
    row(0.4375, 0.625, 9.0 / 32.0),
    row(0.5, 0.75, 5.0 / 16.0),
    row(0.5625, 0.8125, 23.0 / 64.0),
    row(0.625, 0.9375, 25.0 / 64.0),
    row(0.75, 1.125, 15.0 / 32.0),
    row(0.875, 1.3125, 35.0 / 64.0),
    row(1.0, 1.5, 39.0 / 64.0),
    row(1.125, 1.6875, 11.0 / 16.0),
    row(1.25, 1.875, 25.0 / 32.0),
    row(1.375, 2.0625, 27.0 / 32.0),
    row(1.5, 2.25, 15.0 / 16.0),
    row(1.625, 2.4375, 1.0),
    row(1.75, 2.625, 1.0 + 3.0 / 32.0),
    row(1.875, 2.8125, 1.0 + 5.0 / 32.0),
    row(2.0, 3.0, 1.0 + 7.0 / 32.0),
    remembered(2.25, 3.375, 1.375),
    remembered(2.5, 3.75, 1.0 + 17.0 / 32.0),
    remembered(2.75, 4.125, 1.0 + 11.0 / 16.0),
    remembered(3.0, 4.5, 1.875),
    remembered(3.25, 4.875, 2.1875),
    remembered(3.5, 5.25, 2.3125),
    remembered(3.75, 5.625, 2.5),
    remembered(4.0, 6.0, 2.6875),
];

const fn row(d: f64, f: f64, h: f64) -> Row {
    Row { d, f, h, basis: Basis::Read }
}

const fn remembered(d: f64, f: f64, h: f64) -> Row {
    Row { d, f, h, basis: Basis::Memory }
}

/// A hexagon flange screw, in inches.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Flange {
    /// Nominal thread diameter.
    pub d: f64,
    /// Width across flats `F`, nominal.
    pub f: f64,
    /// Flange diameter.
    pub b: f64,
    /// Thickness of the flange at its rim.
    pub rim: f64,
    /// Thread length `LT`.
    pub thread_length: f64,
    /// Head height over all `H`, greatest.
    pub h: f64,
}

/// Where flange screws were read.
pub const FLANGE: Source = document::ASME_B18_2_1
    .read("hex flange screws, F, flange, LT, as tabulated in a public CAD fastener library");
/// The rim: the library's own rule, a share of the diameter.
pub const FLANGE_RIM: Source =
    document::ASME_B18_2_1.read("rim of 0.15 D, the rule of a public CAD fastener library");
/// Where the heights of their heads are known from.
pub const FLANGE_HEIGHT: Source = document::ASME_B18_2_1.memory("hex flange screws, H");

/// Hexagon flange screws, 1/4 to 3/4 in.
pub const FLANGES: &[Flange] = &[
    flange(0.25, 0.375, 0.5625, 0.0375, 0.75, 0.28),
    flange(0.3125, 0.5, 0.6875, 0.0469, 0.875, 0.32),
    flange(0.375, 0.5625, 0.8125, 0.0563, 1.0, 0.39),
    flange(0.4375, 0.625, 0.9375, 0.0656, 1.125, 0.46),
    flange(0.5, 0.75, 1.0781, 0.075, 1.25, 0.51),
    flange(0.625, 0.9375, 1.3281, 0.0938, 1.5, 0.62),
    flange(0.75, 1.125, 1.5938, 0.1125, 1.75, 0.73),
];

const fn flange(d: f64, f: f64, b: f64, rim: f64, thread_length: f64, h: f64) -> Flange {
    Flange { d, f, b, rim, thread_length, h }
}
