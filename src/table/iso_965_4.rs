//! ISO 965-4: bolts threaded under size to be hot-dip galvanized and mated with standard nuts.

use crate::quantity::Length;
use crate::source::{Sourced, document};

/// The deviation es of position az, below zero, for a pitch; the tables hold coarse M10 to M64.
///
/// Where Table 1 has the thread its value is returned; elsewhere −(300 + 20 P), P in mm and the
/// result in µm, which all eleven printed values obey.
pub fn deviation_az(pitch: Length, is_in_table: bool) -> Sourced<Length> {
    let printed = TABLE_1.iter().find(|row| is_in_table && same(row.0, pitch.mm()));
    match printed {
        Some(row) => document::ISO_965_4.read("Table 1").gives(Length::from_um(row.1)),
        None => {
            document::ISO_965_4.computed("−(300 + 20 P)").gives(Length::from_um(-(300.0 + 20.0 * pitch.mm())))
        }
    }
}

fn same(printed: f64, pitch: f64) -> bool {
    (printed - pitch).abs() < 1e-6
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
