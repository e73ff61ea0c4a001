//! ISO 965-5: nuts tapped over size for bolts that are hot-dip galvanized.

use crate::quantity::Length;
use crate::source::{Sourced, document};

/// A nut's position in this document.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Position {
    /// For bolts that are spun after the bath.
    Az,
    /// For heavier coats, not spun.
    Ax,
}

/// The deviation EI of a position that Table 1 prints for the coarse thread of a pitch; it holds M10
/// to M64.
pub fn deviation(position: Position, pitch: Length) -> Option<Sourced<Length>> {
    let (_, az, ax) = *TABLE_1.iter().find(|row| (row.0 - pitch.mm()).abs() < 1e-6)?;
    let um = match position {
        Position::Az => az,
        Position::Ax => ax,
    };
    Some(document::ISO_965_5.read("Table 1").gives(Length::from_um(um)))
}

/// Pitch in mm; EI of AZ and of AX in µm.
static TABLE_1: &[(f64, f64, f64)] = &[
    (1.5, 330.0, 310.0),
    (1.75, 335.0, 365.0),
    (2.0, 340.0, 420.0),
    (2.5, 350.0, 530.0),
    (3.0, 360.0, 640.0),
    (3.5, 370.0, 750.0),
    (4.0, 380.0, 860.0),
    (4.5, 390.0, 970.0),
    (5.0, 400.0, 1080.0),
    (5.5, 410.0, 1190.0),
    (6.0, 420.0, 1300.0),
];
