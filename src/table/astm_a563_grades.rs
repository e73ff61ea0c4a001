//! ASTM A563 grade DH: heavy hex nuts for high-strength bolts; strength, not threads.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::source::Source;
use crate::source::document::ASTM_A563;

const MEMORY: Source = ASTM_A563.memory("grade DH");

/// Grade DH.
pub static GRADE_DH: [SteelRow; 1] = [SteelRow::new(Sizes::ALL_INCH, Treatment::QuenchedTempered, MEMORY)
    .hrc(24.0, 38.0, MEMORY)
    .hb(248.0, 352.0, MEMORY)
    .temper_fahrenheit(800.0, MEMORY)];
