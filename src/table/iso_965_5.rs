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

/// The deviation EI of a position for a pitch; the tables hold coarse M10 to M64.
///
/// Where Table 1 has the thread its value is returned; elsewhere clause 1's formula: AZ is
/// 300 + 20 P and AX is 220 P − 20, P in mm and the result in µm. The two cross at 1.6 mm.
pub fn deviation(position: Position, pitch: Length, is_in_table: bool) -> Sourced<Length> {
    let printed = TABLE_1.iter().find(|row| is_in_table && (row.0 - pitch.mm()).abs() < 1e-6);
    let um = match (printed, position) {
        (Some(row), Position::Az) => row.1,
        (Some(row), Position::Ax) => row.2,
        (None, Position::Az) => 300.0 + 20.0 * pitch.mm(),
        (None, Position::Ax) => 220.0 * pitch.mm() - 20.0,
    };
    let source = match (printed, position) {
        (Some(_), _) => document::ISO_965_5.read("Table 1"),
        (None, Position::Az) => document::ISO_965_5.computed("clause 1, 300 + 20 P"),
        (None, Position::Ax) => document::ISO_965_5.computed("clause 1, 220 P − 20"),
    };
    source.gives(Length::from_um(um))
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
