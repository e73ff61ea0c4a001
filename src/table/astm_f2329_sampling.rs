//! ASTM F2329, Table 1: process control of a batch lot, specimens by size of the batch.
//!
//! Every specimen conforms: the acceptance is zero defects. The table begins at 5 pieces.

use crate::source::Source;
use crate::source::document::{ASTM_E376, ASTM_F2329};

/// One row of the table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Row {
    /// Least batch.
    pub min: u32,
    /// Greatest batch; the last row has no end.
    pub max: Option<u32>,
    /// Specimens for the coat's thickness, one set for every five batches.
    pub thickness: u32,
    /// Specimens for adhesion.
    pub adhesion: u32,
    /// Specimens for appearance.
    pub appearance: u32,
}

const fn row(min: u32, max: Option<u32>, thickness: u32, adhesion: u32, appearance: u32) -> Row {
    Row { min, max, thickness, adhesion, appearance }
}

/// The rows. Known by [`TABLE`].
pub static BATCH: &[Row] = &[
    row(5, Some(25), 1, 1, 1),
    row(26, Some(50), 1, 1, 2),
    row(51, Some(150), 2, 1, 2),
    row(151, None, 2, 2, 2),
];

/// Where the table is printed.
pub const TABLE: Source = ASTM_F2329.read("Table 1");
/// Batches of which one is measured. Known by [`TABLE`].
pub const BATCHES_PER_SET: u32 = 5;
/// Magnetic readings that make the thickness of one specimen, which the document leaves to the method.
pub const READINGS: Source = ASTM_E376.memory("with ASTM F2329: readings spread over the piece");
