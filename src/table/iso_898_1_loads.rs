//! ISO 898-1: stress areas, least ultimate loads and proof loads of coarse bolts, as printed.
//!
//! The loads are the strength times the stress area, but not always of the printed area: the printed
//! loads are the ones that are tested to.

use crate::quantity::Force;
use crate::source::{Basis, Source, document};

/// A size.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal diameter in mm.
    pub diameter_mm: u16,
    /// Nominal stress area in mm².
    pub stress_area: f64,
    /// Least ultimate load of classes 8.8 and 10.9, in N.
    pub ultimate: [f64; 2],
    /// Proof load of classes 8.8 and 10.9, in N.
    pub proof: [f64; 2],
    /// How the proof loads are known.
    pub proof_basis: Basis,
}

/// A class whose loads are held here.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PropertyClass {
    /// 8.8.
    Class8_8,
    /// 10.9.
    Class10_9,
}

/// The printed loads of a coarse bolt: least ultimate load, proof load, and where each stands.
pub fn loads(diameter_mm: u16, class: PropertyClass) -> Option<((Force, Source), (Force, Source))> {
    let row = ROWS.iter().find(|row| row.diameter_mm == diameter_mm)?;
    let of = |[first, second]: [f64; 2]| match class {
        PropertyClass::Class8_8 => first,
        PropertyClass::Class10_9 => second,
    };
    Some((
        (Force::from_newton(of(row.ultimate)), document::ISO_898_1.read("least ultimate tensile loads")),
        (Force::from_newton(of(row.proof)), document::ISO_898_1.known("proof loads", row.proof_basis)),
    ))
}

/// The sizes read.
pub static ROWS: &[Row] = &[
    row(6, 20.1, [16_100.0, 20_900.0], [11_600.0, 16_700.0], Basis::Read),
    row(7, 28.9, [23_100.0, 30_100.0], [16_800.0, 24_000.0], Basis::Read),
    row(8, 36.6, [29_200.0, 38_100.0], [21_200.0, 30_400.0], Basis::Read),
    row(12, 84.3, [67_400.0, 87_700.0], [48_900.0, 70_000.0], Basis::Read),
    row(16, 157.0, [125_000.0, 163_000.0], [91_000.0, 130_000.0], Basis::Read),
    row(18, 192.0, [159_000.0, 200_000.0], [115_000.0, 159_000.0], Basis::Read),
    row(22, 303.0, [252_000.0, 315_000.0], [182_000.0, 252_000.0], Basis::Read),
    row(24, 353.0, [293_000.0, 367_000.0], [212_000.0, 293_000.0], Basis::Read),
    row(30, 561.0, [466_000.0, 583_000.0], [337_000.0, 466_000.0], Basis::Memory),
    row(33, 694.0, [576_000.0, 722_000.0], [416_000.0, 576_000.0], Basis::Memory),
];

const fn row(
    diameter_mm: u16,
    stress_area: f64,
    ultimate: [f64; 2],
    proof: [f64; 2],
    proof_basis: Basis,
) -> Row {
    Row { diameter_mm, stress_area, ultimate, proof, proof_basis }
}
