//! ISO 4042:1999: how thick a plated coat may be on a metric bolt thread.
//!
//! Table 2 was read for pitches up to 1.75 mm. The rule behind it, the largest nominal thickness not
//! above the deviation over 4, 4, 5 and 6, gives every cell read but one, and is used beyond.

use crate::quantity::{Length, Quantity, unit};
use crate::source::{Source, Sourced, document};
use crate::table::Refusal;
use crate::table::iso_965_1::{Position, deviation};

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

/// The greatest nominal thickness on a bolt thread of position g, f or e; `None` where even the
/// thinnest does not fit.
///
/// # Errors
/// Refuses the other positions and a pitch that ISO 965-1 does not have.
pub fn max(pitch: Length, position: Position, column: Column) -> Result<Option<Sourced<Length>>, Refusal> {
    let um = pitch.um().round();
    let row = TABLE_2.iter().find(|row| f64::from(row.pitch_um) == um);
    let cells = |row: &Row| match position {
        Position::BoltG => Some(row.g),
        Position::BoltF => Some(row.f),
        Position::BoltE => Some(row.e),
        _ => None,
    };
    if let Some(cell) = row.and_then(cells).and_then(|cells| cells.get(column.place()).copied()) {
        let source = document::ISO_4042_1999.read("Table 2");
        return Ok(Some(source.gives(Length::from_um(f64::from(cell)))));
    }
    if !matches!(position, Position::BoltG | Position::BoltF | Position::BoltE) {
        return Err(Refusal::not_covered(
            &format!("a thread of pitch {} without an allowance", pitch.show(&unit::MM, 2)),
            "bolt positions g, f and e",
            document::ISO_4042_1999.read("Table 2"),
        ));
    }
    let room = -deviation(position, pitch)?.value.um() / column.factor();
    let thickest = NOMINAL.iter().rev().find(|nominal| **nominal <= room + 1e-9);
    let rule = document::ISO_4042_1999.computed("rule of Table 2, |es| over 4, 4, 5, 6");
    Ok(thickest.map(|um| rule.gives(Length::from_um(*um))))
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
