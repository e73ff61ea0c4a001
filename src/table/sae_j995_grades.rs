//! SAE J995: hardness of inch nuts by grade; its proof stresses stand in `sae_j995`.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::source::Source;
use crate::source::document::SAE_J995;

const HARDNESS: Source = SAE_J995.read("hardness by grade");
const HEAT_TREATMENT: Source = SAE_J995.memory("grade 8, heat treatment");

const fn soft() -> SteelRow {
    SteelRow::new(Sizes::from_to_inch(0.25, 1.5), Treatment::NotKnown, HARDNESS).hrc_to(32.0, HARDNESS)
}

const fn hard(sizes: Sizes, min: f64, max: f64) -> SteelRow {
    SteelRow::new(sizes, Treatment::QuenchedTempered, HARDNESS)
        .hrc(min, max, HARDNESS)
        .temper_fahrenheit(800.0, HEAT_TREATMENT)
}

/// Grade 2.
pub static GRADE_2: [SteelRow; 1] = [soft()];

/// Grade 5.
pub static GRADE_5: [SteelRow; 1] = [soft()];

/// Grade 8: up to 5/8 in, up to 1 in, up to 1 1/2 in.
pub static GRADE_8: [SteelRow; 3] = [
    hard(Sizes::from_to_inch(0.25, 0.625), 24.0, 32.0),
    hard(Sizes::over_to_inch(0.625, 1.0), 26.0, 34.0),
    hard(Sizes::over_to_inch(1.0, 1.5), 26.0, 36.0),
];
