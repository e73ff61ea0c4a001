//! ISO 898-5: set screws by hardness class. From memory.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::source::Source;
use crate::source::document::ISO_898_5;

const HARDNESS: Source = ISO_898_5.memory("class 45H");

/// Class 45H. It states no tensile strength: a set screw is pressed, not pulled.
pub static CLASS_45H: [SteelRow; 1] =
    [SteelRow::new(Sizes::to_mm(24.0), Treatment::QuenchedTempered, HARDNESS)
        .hv(450.0, 560.0, HARDNESS)
        .hrc(45.0, 53.0, HARDNESS)
        .no_proof(HARDNESS)];
