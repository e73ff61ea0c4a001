//! ISO 4042:1999: how thick a plated coat may be on a metric bolt thread.
//!
//! Table 2 was read for pitches up to 1.75 mm.

use crate::quantity::Length;
use crate::source::{Source, Sourced, document};
use crate::table::iso_965_1::Position;

/// How the thickness is measured and how long the part is: a column of the table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Column {
    /// At one place, any length.
    Local,
    /// As the average of a batch, length up to five diameters.
    UpTo5,
    /// As the average of a batch, length over five up to ten diameters.
    UpTo10,
    /// As the average of a batch, length over ten up to fifteen diameters.
    UpTo15,
}

/// The nominal thicknesses of the document, in µm.
pub static NOMINAL: &[f64] = &[3.0, 5.0, 8.0, 10.0, 12.0, 15.0, 20.0, 25.0, 30.0];

/// Where the least deviation for a thickness is published.
pub const DEVIATION: Source = document::ISO_4042_1999.read("least fundamental deviation by thickness");

/// Where the greatest thickness by pitch and position is published.
pub const TABLE_2_SOURCE: Source = document::ISO_4042_1999.read("Table 2");

impl Column {
    /// All four, in the order of the table.
    pub const ALL: [Self; 4] = [Self::Local, Self::UpTo5, Self::UpTo10, Self::UpTo15];

    /// The deviation needed for each thickness: 4 t, 4 t, 5 t, 6 t.
    pub fn factor(self) -> f64 {
        match self {
            Self::Local | Self::UpTo5 => 4.0,
            Self::UpTo10 => 5.0,
            Self::UpTo15 => 6.0,
        }
    }

    fn place(self) -> usize {
        match self {
            Self::Local => 0,
            Self::UpTo5 => 1,
            Self::UpTo10 => 2,
            Self::UpTo15 => 3,
        }
    }
}

/// The greatest nominal thickness that Table 2 prints for a bolt thread of position g, f or e.
pub fn max(pitch: Length, position: Position, column: Column) -> Option<Sourced<Length>> {
    let um = pitch.um().round();
    let row = TABLE_2.iter().find(|row| f64::from(row.pitch_um) == um)?;
    let cells = match position {
        Position::BoltG => row.g,
        Position::BoltF => row.f,
        Position::BoltE => row.e,
        _ => return None,
    };
    let cell = *cells.get(column.place())?;
    Some(TABLE_2_SOURCE.gives(Length::from_um(f64::from(cell))))
}

/// A row of Table 2: greatest nominal thickness in µm by position and column.
#[derive(Debug)]
struct Row {
    pitch_um: u16,
    g: [u8; 4],
    f: [u8; 4],
    e: [u8; 4],
}

const fn row(pitch_um: u16, g: [u8; 4], f: [u8; 4], e: [u8; 4]) -> Row {
    Row { pitch_um, g, f, e }
}

static TABLE_2: &[Row] = &[
    row(500, [5, 5, 3, 3], [8, 8, 5, 5], [12, 12, 10, 8]),
    row(600, [5, 5, 3, 3], [8, 8, 5, 5], [12, 12, 10, 8]),
    row(700, [5, 5, 3, 3], [8, 8, 5, 5], [12, 12, 10, 8]),
    row(750, [5, 5, 3, 3], [8, 8, 5, 5], [12, 12, 10, 8]),
    row(800, [5, 5, 3, 3], [8, 8, 5, 5], [15, 15, 12, 10]),
    // By the rule the third cell of g would be 5: 26 / 5 = 5.2.
    row(1000, [5, 5, 3, 3], [10, 10, 8, 5], [15, 15, 12, 10]),
    row(1250, [5, 5, 5, 3], [10, 10, 8, 5], [15, 15, 12, 10]),
    row(1500, [8, 8, 5, 5], [10, 10, 8, 5], [15, 15, 12, 10]),
    row(1750, [8, 8, 5, 5], [12, 12, 8, 8], [15, 15, 12, 10]),
];
