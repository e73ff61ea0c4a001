//! ASTM F1554: anchor rods of 36, 55 and 105 ksi yield. It states strengths, and no hardness.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::source::Source;
use crate::source::document::ASTM_F1554;

const STRENGTH: Source = ASTM_F1554.read("tensile strength by grade");

const fn row(to: f64, treatment: Treatment) -> SteelRow {
    SteelRow::new(Sizes::from_to_inch(0.25, to), treatment, STRENGTH)
        .no_proof(ASTM_F1554.memory("tensile requirements"))
}

/// Grade 36.
pub static GRADE_36: [SteelRow; 1] =
    [row(4.0, Treatment::NotHeatTreated).ksi(58.0, STRENGTH).ksi_to(80.0, STRENGTH)];

/// Grade 55: the maker may heat-treat it or not.
pub static GRADE_55: [SteelRow; 1] =
    [row(4.0, Treatment::NotKnown).ksi(75.0, STRENGTH).ksi_to(95.0, STRENGTH)];

/// Grade 105; its least tempering temperature was not found.
pub static GRADE_105: [SteelRow; 1] =
    [row(3.0, Treatment::QuenchedTempered).ksi(125.0, STRENGTH).ksi_to(150.0, STRENGTH)];
