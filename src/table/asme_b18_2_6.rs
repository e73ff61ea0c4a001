//! ASME B18.2.6, heavy hex structural bolts and circular structural washers, inch.
//!
//! ASTM F3125 takes the sizes of its bolts, and ASTM F436 those of its washers, from here.

use crate::source::{Basis, Source, document};

/// A heavy hex structural bolt, in inches, basic.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bolt {
    /// Nominal thread diameter.
    pub d: f64,
    /// Width across flats `F`.
    pub f: f64,
    /// Head height `H`.
    pub h: f64,
    /// Thread length `LT`, whatever the length of the bolt.
    pub thread_length: f64,
}

/// A circular washer, in inches.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Washer {
    /// Nominal thread diameter.
    pub d: f64,
    /// Hole, nominal.
    pub inside: f64,
    /// Outside diameter, nominal.
    pub outside: f64,
    /// Thickness, least.
    pub min: f64,
    /// Thickness, greatest.
    pub max: f64,
    /// How the row is known.
    pub basis: Basis,
}

/// Where the heads were read: a listing of heavy hex cap screws, which have the same heads.
pub const HEAD: Source = document::ASME_B18_2_1.read("heavy hex heads, F and H basic");
/// Where the thread lengths are known from.
pub const THREAD_LENGTH: Source = document::ASME_B18_2_6.memory("thread length of structural bolts");

/// Where a washer is known from.
pub const fn washer_source(basis: Basis) -> Source {
    document::ASTM_F436.known("circular washers, sizes", basis)
}

/// Structural bolts, 1/2 to 1 1/2 in. Known by [`HEAD`] and [`THREAD_LENGTH`].
pub const BOLTS: &[Bolt] = &[
    bolt(0.5, 0.875, 5.0 / 16.0, 1.0),
    bolt(0.625, 1.0625, 25.0 / 64.0, 1.25),
    bolt(0.75, 1.25, 15.0 / 32.0, 1.375),
    bolt(0.875, 1.4375, 35.0 / 64.0, 1.5),
    bolt(1.0, 1.625, 39.0 / 64.0, 1.75),
    bolt(1.125, 1.8125, 11.0 / 16.0, 2.0),
    bolt(1.25, 2.0, 25.0 / 32.0, 2.0),
    bolt(1.375, 2.1875, 27.0 / 32.0, 2.25),
    bolt(1.5, 2.375, 15.0 / 16.0, 2.25),
];

/// Washers, 1/4 to 3 in; 9/16 in and sizes between those listed were not found. Known by [`washer_source`].
pub const WASHERS: &[Washer] = &[
    read(0.25, 0.281, 0.625, 0.051, 0.080),
    memory(0.3125, 0.344, 0.688, 0.051, 0.080),
    memory(0.375, 0.406, 0.813, 0.051, 0.080),
    memory(0.4375, 0.469, 0.922, 0.051, 0.080),
    read(0.5, 0.531, 1.063, 0.097, 0.177),
    read(0.625, 0.688, 1.313, 0.122, 0.177),
    read(0.75, 0.813, 1.469, 0.122, 0.177),
    read(0.875, 0.938, 1.750, 0.136, 0.177),
    memory(1.0, 1.125, 2.000, 0.136, 0.177),
    memory(1.125, 1.250, 2.250, 0.136, 0.177),
    read(1.25, 1.375, 2.500, 0.136, 0.177),
    read(1.375, 1.500, 2.750, 0.136, 0.177),
    memory(1.5, 1.625, 3.000, 0.136, 0.177),
    memory(1.75, 1.875, 3.375, 0.178, 0.280),
    memory(2.0, 2.125, 3.750, 0.178, 0.280),
    memory(2.25, 2.375, 4.000, 0.240, 0.340),
    memory(2.5, 2.625, 4.500, 0.240, 0.340),
    memory(2.75, 2.875, 5.000, 0.240, 0.340),
    memory(3.0, 3.125, 5.500, 0.240, 0.340),
];

const fn bolt(d: f64, f: f64, h: f64, thread_length: f64) -> Bolt {
    Bolt { d, f, h, thread_length }
}

const fn read(d: f64, inside: f64, outside: f64, min: f64, max: f64) -> Washer {
    Washer { d, inside, outside, min, max, basis: Basis::Read }
}

const fn memory(d: f64, inside: f64, outside: f64, min: f64, max: f64) -> Washer {
    Washer { d, inside, outside, min, max, basis: Basis::Memory }
}
