//! ASTM A194 grade 2H: heavy hex nuts for high pressure or temperature service.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::source::Source;
use crate::source::document::ASTM_A194;

const MEMORY: Source = ASTM_A194.memory("grade 2H");

/// Grade 2H.
pub static GRADE_2H: [SteelRow; 1] = [SteelRow::new(Sizes::ALL_INCH, Treatment::QuenchedTempered, MEMORY)
    .hrc(24.0, 35.0, MEMORY)
    .hb(248.0, 327.0, MEMORY)
    .temper_fahrenheit(850.0, MEMORY)];
