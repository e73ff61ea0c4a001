//! ISO 261: the pitches of ISO metric threads, M3 to M64.

use crate::source::{Source, document};

/// The diameters of the document's first and second choice (with M7; of M3 without the fine pitch, for which no tolerance is printed), each with the coarse pitch
/// first and then the fine ones; diameter in mm, pitches in µm.
pub static SIZES: &[Size] = &[
    size(3, &[500]),
    size(4, &[700, 500]),
    size(5, &[800, 500]),
    size(6, &[1000, 750]),
    size(7, &[1000, 750]),
    size(8, &[1250, 1000, 750]),
    size(10, &[1500, 1250, 1000, 750]),
    size(12, &[1750, 1500, 1250, 1000]),
    size(14, &[2000, 1500, 1250, 1000]),
    size(16, &[2000, 1500, 1000]),
    size(18, &[2500, 2000, 1500, 1000]),
    size(20, &[2500, 2000, 1500, 1000]),
    size(22, &[2500, 2000, 1500, 1000]),
    size(24, &[3000, 2000, 1500, 1000]),
    size(27, &[3000, 2000, 1500, 1000]),
    size(30, &[3500, 3000, 2000, 1500, 1000]),
    size(33, &[3500, 3000, 2000, 1500]),
    size(36, &[4000, 3000, 2000, 1500]),
    size(39, &[4000, 3000, 2000, 1500]),
    size(42, &[4500, 4000, 3000, 2000, 1500]),
    size(45, &[4500, 4000, 3000, 2000, 1500]),
    size(48, &[5000, 4000, 3000, 2000, 1500]),
    size(52, &[5000, 4000, 3000, 2000, 1500]),
    size(56, &[5500, 4000, 3000, 2000, 1500]),
    size(60, &[5500, 4000, 3000, 2000, 1500]),
    size(64, &[6000, 4000, 3000, 2000, 1500]),
];

/// Where the list comes from. The coarse pitches were read in tables of limits and loads.
pub static SOURCE: Source = document::ISO_261.memory("Table 2");

/// A diameter and its pitches.
#[derive(Debug, PartialEq, Eq)]
pub struct Size {
    /// Nominal diameter in whole millimetres.
    pub diameter_mm: u16,
    /// Pitches in µm: the coarse one first, then the fine ones, coarser before finer.
    pub pitches_um: &'static [u16],
}

const fn size(diameter_mm: u16, pitches_um: &'static [u16]) -> Size {
    Size { diameter_mm, pitches_um }
}
