//! ASME B18.21.1, washers, inch: plain washers of type A, narrow series, and helical spring lock washers.

use crate::source::{Basis, Source, document};

/// A plain washer of the narrow series, in inches: greatest and least.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Narrow {
    /// Nominal thread diameter.
    pub d: f64,
    /// Hole.
    pub inside: (f64, f64),
    /// Outside diameter.
    pub outside: (f64, f64),
    /// Thickness.
    pub thickness: (f64, f64),
}

/// A helical spring lock washer, regular, in inches.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spring {
    /// Nominal thread diameter.
    pub d: f64,
    /// Hole, greatest.
    pub inside_max: f64,
    /// Hole, least.
    pub inside_min: f64,
    /// Width of the section, least.
    pub width: f64,
    /// Thickness of the section, least.
    pub thickness: f64,
    /// How the width is known.
    pub width_basis: Basis,
}

/// Where the narrow series was read.
pub const NARROW: Source = document::ASME_B18_21_1.read("2009, type A narrow");
/// Where spring lock washers were read.
pub const SPRING: Source = document::ASME_B18_21_1.read("2009, regular helical spring lock washers");

/// Where the width of a spring lock washer is known from.
pub const fn width_source(basis: Basis) -> Source {
    document::ASME_B18_21_1.known("regular helical spring lock washers, width of the section", basis)
}

/// Plain washers of the narrow series, #4 to 1 1/2 in.
pub const NARROWS: &[Narrow] = &[
    narrow(0.112, (0.133, 0.12), (0.32, 0.307), (0.04, 0.025)),
    narrow(0.138, (0.164, 0.151), (0.39, 0.37), (0.065, 0.036)),
    narrow(0.164, (0.196, 0.183), (0.453, 0.433), (0.065, 0.036)),
    narrow(0.19, (0.227, 0.214), (0.515, 0.495), (0.065, 0.036)),
    narrow(0.216, (0.265, 0.245), (0.577, 0.557), (0.08, 0.051)),
    narrow(0.25, (0.296, 0.276), (0.64, 0.62), (0.08, 0.051)),
    narrow(0.3125, (0.359, 0.339), (0.703, 0.681), (0.08, 0.051)),
    narrow(0.375, (0.419, 0.401), (0.827, 0.805), (0.08, 0.051)),
    narrow(0.4375, (0.484, 0.464), (0.937, 0.915), (0.08, 0.051)),
    narrow(0.5, (0.546, 0.526), (1.092, 1.055), (0.121, 0.074)),
    narrow(0.5625, (0.609, 0.589), (1.186, 1.149), (0.121, 0.074)),
    narrow(0.625, (0.686, 0.649), (1.342, 1.305), (0.121, 0.074)),
    narrow(0.75, (0.842, 0.805), (1.499, 1.462), (0.16, 0.108)),
    narrow(0.875, (0.968, 0.931), (1.78, 1.743), (0.16, 0.108)),
    narrow(1.0, (1.092, 1.055), (2.03, 1.993), (0.16, 0.108)),
    narrow(1.125, (1.28, 1.243), (2.28, 2.243), (0.16, 0.108)),
    narrow(1.25, (1.405, 1.368), (2.53, 2.493), (0.192, 0.136)),
    narrow(1.375, (1.53, 1.493), (2.78, 2.743), (0.213, 0.136)),
    narrow(1.5, (1.655, 1.618), (3.03, 2.993), (0.213, 0.153)),
];

/// Regular helical spring lock washers, #4 to 1 1/2 in.
pub const SPRINGS: &[Spring] = &[
    spring(0.112, 0.12, 0.114, 0.04, 0.025, Basis::Read),
    spring(0.125, 0.133, 0.127, 0.047, 0.031, Basis::Read),
    spring(0.138, 0.148, 0.141, 0.047, 0.031, Basis::Read),
    spring(0.164, 0.174, 0.167, 0.055, 0.04, Basis::Read),
    spring(0.19, 0.2, 0.193, 0.062, 0.047, Basis::Read),
    spring(0.216, 0.227, 0.22, 0.07, 0.056, Basis::Read),
    spring(0.25, 0.26, 0.252, 0.109, 0.062, Basis::Read),
    spring(0.3125, 0.322, 0.314, 0.125, 0.078, Basis::Read),
    spring(0.375, 0.385, 0.377, 0.141, 0.094, Basis::Read),
    spring(0.4375, 0.45, 0.44, 0.156, 0.109, Basis::Read),
    spring(0.5, 0.512, 0.502, 0.171, 0.125, Basis::Memory),
    spring(0.5625, 0.574, 0.564, 0.188, 0.141, Basis::Memory),
    spring(0.625, 0.641, 0.628, 0.203, 0.156, Basis::Memory),
    spring(0.6875, 0.704, 0.691, 0.219, 0.172, Basis::Memory),
    spring(0.75, 0.766, 0.753, 0.234, 0.188, Basis::Memory),
    spring(0.8125, 0.832, 0.816, 0.25, 0.203, Basis::Memory),
    spring(0.875, 0.894, 0.878, 0.266, 0.219, Basis::Memory),
    spring(0.9375, 0.958, 0.941, 0.281, 0.234, Basis::Memory),
    spring(1.0, 1.024, 1.003, 0.297, 0.25, Basis::Memory),
    spring(1.0625, 1.087, 1.066, 0.312, 0.266, Basis::Memory),
    spring(1.125, 1.153, 1.129, 0.328, 0.281, Basis::Memory),
    spring(1.1875, 1.217, 1.192, 0.344, 0.297, Basis::Memory),
    spring(1.25, 1.28, 1.254, 0.359, 0.312, Basis::Memory),
    spring(1.3125, 1.344, 1.317, 0.375, 0.328, Basis::Memory),
    spring(1.375, 1.408, 1.379, 0.391, 0.344, Basis::Memory),
    spring(1.4375, 1.472, 1.442, 0.406, 0.359, Basis::Memory),
    spring(1.5, 1.534, 1.504, 0.422, 0.375, Basis::Memory),
];

const fn narrow(d: f64, inside: (f64, f64), outside: (f64, f64), thickness: (f64, f64)) -> Narrow {
    Narrow { d, inside, outside, thickness }
}

const fn spring(
    d: f64,
    inside_max: f64,
    inside_min: f64,
    width: f64,
    thickness: f64,
    width_basis: Basis,
) -> Spring {
    Spring { d, inside_max, inside_min, width, thickness, width_basis }
}
