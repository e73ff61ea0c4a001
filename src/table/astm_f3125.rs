//! ASTM F3125: high-strength structural bolts, A325 and A490 with their metric and twist-off grades.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::source::Source;
use crate::source::document::{ASTM_A325, ASTM_A490, ASTM_F3125};

const STRENGTH: Source = ASTM_F3125.read("strength by grade");
const HARDNESS: Source = ASTM_F3125.memory("hardness by grade");
const PROOF: Source = ASTM_F3125.memory("proof load by grade");
const HEAT_TREATMENT: Source = ASTM_F3125.memory("heat treatment");
const A325_PROOF: Source = ASTM_A325.memory("proof load");
const A325: Source = ASTM_A325.read("table of properties");

const fn row() -> SteelRow {
    SteelRow::new(Sizes::from_to_inch(0.5, 1.5), Treatment::QuenchedTempered, STRENGTH)
        .temper_fahrenheit(800.0, HEAT_TREATMENT)
}

/// Grade A325.
pub static GRADE_A325: [SteelRow; 1] =
    [row().hrc(25.0, 34.0, HARDNESS).ksi(120.0, STRENGTH).proof_ksi(85.0, PROOF)];

/// Grade A490.
pub static GRADE_A490: [SteelRow; 1] =
    [row().hrc(33.0, 38.0, HARDNESS).ksi(150.0, STRENGTH).proof_ksi(120.0, PROOF).ksi_to(173.0, STRENGTH)];

const TWIST_OFF: Source = ASTM_F3125.memory("twist-off grades: as their hexagon grades");
const METRIC: Source = ASTM_F3125.memory("metric grades");

/// Grade F1852: twist-off bolts of the strength of A325.
pub static GRADE_F1852: [SteelRow; 1] =
    [row().hrc(25.0, 34.0, TWIST_OFF).ksi(120.0, STRENGTH).proof_ksi(85.0, PROOF)];

/// Grade F2280: twist-off bolts of the strength of A490.
pub static GRADE_F2280: [SteelRow; 1] =
    [row().hrc(33.0, 38.0, TWIST_OFF).ksi(150.0, STRENGTH).proof_ksi(120.0, PROOF).ksi_to(173.0, STRENGTH)];

const fn metric() -> SteelRow {
    SteelRow::new(Sizes::from_to_mm(12.0, 36.0), Treatment::QuenchedTempered, METRIC)
        .temper_fahrenheit(800.0, HEAT_TREATMENT)
}

/// Grade A325M, M12 to M36.
pub static GRADE_A325M: [SteelRow; 1] =
    [metric().hrc(25.0, 34.0, METRIC).mpa(830.0, METRIC).proof_mpa(600.0, METRIC)];

/// Grade A490M, M12 to M36.
pub static GRADE_A490M: [SteelRow; 1] =
    [metric().hrc(33.0, 38.0, METRIC).mpa(1040.0, METRIC).proof_mpa(830.0, METRIC).mpa_to(1210.0, METRIC)];

/// ASTM A325 type 1 before F3125: up to 1 in, and above.
pub static A325_BEFORE_F3125: [SteelRow; 2] = [
    SteelRow::new(Sizes::from_to_inch(0.5, 1.0), Treatment::QuenchedTempered, A325)
        .hrc(24.0, 35.0, A325)
        .ksi(120.0, A325)
        .proof_ksi(85.0, A325_PROOF),
    SteelRow::new(Sizes::from_to_inch(1.125, 1.5), Treatment::QuenchedTempered, A325)
        .hrc(19.0, 31.0, A325)
        .ksi(105.0, A325)
        .proof_ksi(74.0, A325_PROOF),
];

/// Coatings of grade A490: zinc flake, and none of zinc metal.
pub const A490_COATINGS: Source = ASTM_F3125.memory("coatings of grade A490");
/// No coating on A490 before F3125.
pub const A490_BEFORE: Source = ASTM_A490.read("coatings");
