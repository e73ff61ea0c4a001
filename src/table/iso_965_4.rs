//! ISO 965-4: bolts threaded under size to be hot-dip galvanized and mated with standard nuts.

use crate::quantity::Length;
use crate::source::{Sourced, document};

/// The deviation es of position az, below zero, that Table 1 prints for the coarse thread of a pitch;
/// it holds M10 to M64.
pub fn deviation_az(pitch: Length) -> Option<Sourced<Length>> {
    let row = TABLE_1.iter().find(|row| (row.0 - pitch.mm()).abs() < 1e-6)?;
    Some(document::ISO_965_4.read("Table 1").gives(Length::from_um(row.1)))
}

/// Pitch in mm; es in µm.
static TABLE_1: &[(f64, f64)] = &[
    (1.5, -330.0),
    (1.75, -335.0),
    (2.0, -340.0),
    (2.5, -350.0),
    (3.0, -360.0),
    (3.5, -370.0),
    (4.0, -380.0),
    (4.5, -390.0),
    (5.0, -400.0),
    (5.5, -410.0),
    (6.0, -420.0),
];
