//! ASME B1.1: tensile stress areas of UNC, UNF and 8UN threads, with the digits that are printed.
//!
//! UNC was read; UNF and 8UN follow from the document's formula, rounded alike.

use crate::quantity::Area;
use crate::source::{Basis, Sourced, document};

/// The stress area of a thread by sixteenths of an inch and threads in two inches.
pub fn stress_area(sixteenths: u16, per_two_inches: u16) -> Option<Sourced<Area>> {
    let row = ROWS.iter().find(|row| (row.0, row.1) == (sixteenths, per_two_inches))?;
    Some(document::ASME_B1_1.known("tensile stress areas", row.3).gives(Area::from_in2(row.2)))
}

/// Sixteenths of an inch, threads in two inches, stress area in in².
#[rustfmt::skip]
pub static ROWS: &[(u16, u16, f64, Basis)] = &[
    (4, 40, 0.0318, Basis::Read),
    (5, 36, 0.0524, Basis::Read),
    (6, 32, 0.0775, Basis::Read),
    (7, 28, 0.1063, Basis::Read),
    (8, 26, 0.1419, Basis::Read),
    (9, 24, 0.182, Basis::Read),
    (10, 22, 0.226, Basis::Read),
    (12, 20, 0.334, Basis::Read),
    (14, 18, 0.462, Basis::Read),
    (16, 16, 0.606, Basis::Read),
    (18, 14, 0.763, Basis::Read),
    (20, 14, 0.969, Basis::Read),
    (22, 12, 1.155, Basis::Read),
    (24, 12, 1.405, Basis::Read),
    (28, 10, 1.9, Basis::Read),
    (32, 9, 2.5, Basis::Read),
    (36, 9, 3.25, Basis::Read),
    (40, 8, 4.0, Basis::Read),
    (44, 8, 4.93, Basis::Read),
    (48, 8, 5.97, Basis::Read),
    (52, 8, 7.1, Basis::Read),
    (56, 8, 8.33, Basis::Read),
    (60, 8, 9.66, Basis::Read),
    (64, 8, 11.08, Basis::Read),
    (4, 56, 0.0364, Basis::Computed),
    (5, 48, 0.058, Basis::Computed),
    (6, 48, 0.0878, Basis::Computed),
    (7, 40, 0.1187, Basis::Computed),
    (8, 40, 0.1599, Basis::Computed),
    (9, 36, 0.203, Basis::Computed),
    (10, 36, 0.256, Basis::Computed),
    (12, 32, 0.373, Basis::Computed),
    (14, 28, 0.509, Basis::Computed),
    (16, 24, 0.663, Basis::Computed),
    (18, 24, 0.856, Basis::Computed),
    (20, 24, 1.073, Basis::Computed),
    (22, 24, 1.315, Basis::Computed),
    (24, 24, 1.581, Basis::Computed),
    (18, 16, 0.79, Basis::Computed),
    (20, 16, 1.0, Basis::Computed),
    (22, 16, 1.233, Basis::Computed),
    (24, 16, 1.492, Basis::Computed),
    (28, 16, 2.08, Basis::Computed),
    (32, 16, 2.77, Basis::Computed),
    (36, 16, 3.56, Basis::Computed),
    (40, 16, 4.44, Basis::Computed),
    (44, 16, 5.43, Basis::Computed),
    (48, 16, 6.51, Basis::Computed),
    (52, 16, 7.69, Basis::Computed),
    (56, 16, 8.96, Basis::Computed),
    (60, 16, 10.34, Basis::Computed),
    (64, 16, 11.81, Basis::Computed),
];
