//! ASTM A194 grade 2H: heavy hex nuts for high pressure or temperature service.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::source::Source;
use crate::source::document::ASTM_A194;

const HARDNESS: Source = ASTM_A194.read("grade 2H, hardness and temper");

const fn row(sizes: Sizes) -> SteelRow {
    SteelRow::new(sizes, Treatment::QuenchedTempered, HARDNESS).temper_fahrenheit(850.0, HARDNESS)
}

/// Grade 2H: up to 1 1/2 in, and above.
pub static GRADE_2H: [SteelRow; 2] = [
    row(Sizes::to_inch(1.5)).hrc(24.0, 35.0, HARDNESS).hb(248.0, 327.0, HARDNESS),
    row(Sizes::over_inch(1.5)).hrc_to(35.0, HARDNESS).hrb_from(95.0, HARDNESS).hb(212.0, 327.0, HARDNESS),
];
