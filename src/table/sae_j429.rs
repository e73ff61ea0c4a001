//! SAE J429: inch bolts, screws and studs by grade.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::source::Source;
use crate::source::document::SAE_J429;

const TABLE_1: Source = SAE_J429.read("Table 1");
const PROOF: Source = SAE_J429.memory("Table 1, proof load");
const HEAT_TREATMENT: Source = SAE_J429.memory("heat treatment");

const fn soft(sizes: Sizes) -> SteelRow {
    SteelRow::new(sizes, Treatment::NotHeatTreated, TABLE_1)
}

const fn tempered(sizes: Sizes) -> SteelRow {
    SteelRow::new(sizes, Treatment::QuenchedTempered, TABLE_1)
}

/// Grade 1.
pub static GRADE_1: [SteelRow; 1] = [soft(Sizes::from_to_inch(0.25, 1.5))
    .hrb(70.0, 100.0, TABLE_1)
    .ksi(60.0, TABLE_1)
    .proof_ksi(33.0, PROOF)];

/// Grade 2: up to 3/4 in, and above.
pub static GRADE_2: [SteelRow; 2] = [
    soft(Sizes::from_to_inch(0.25, 0.75)).hrb(80.0, 100.0, TABLE_1).ksi(74.0, TABLE_1).proof_ksi(55.0, PROOF),
    soft(Sizes::over_to_inch(0.75, 1.5)).hrb(70.0, 100.0, TABLE_1).ksi(60.0, TABLE_1).proof_ksi(33.0, PROOF),
];

/// Grade 5: up to 1 in, and above.
pub static GRADE_5: [SteelRow; 2] = [
    tempered(Sizes::from_to_inch(0.25, 1.0))
        .hrc(25.0, 34.0, TABLE_1)
        .ksi(120.0, TABLE_1)
        .proof_ksi(85.0, PROOF)
        .temper_fahrenheit(800.0, TABLE_1),
    tempered(Sizes::over_to_inch(1.0, 1.5))
        .hrc(19.0, 30.0, TABLE_1)
        .ksi(105.0, TABLE_1)
        .proof_ksi(74.0, PROOF)
        .temper_fahrenheit(800.0, TABLE_1),
];

/// Grade 5.2: low-carbon boron steel, tempered lower.
pub static GRADE_5_2: [SteelRow; 1] = [tempered(Sizes::from_to_inch(0.25, 1.0))
    .hrc(26.0, 36.0, TABLE_1)
    .ksi(120.0, TABLE_1)
    .proof_ksi(85.0, PROOF)
    .temper_fahrenheit(650.0, HEAT_TREATMENT)];

/// Grade 8.
pub static GRADE_8: [SteelRow; 1] = [tempered(Sizes::from_to_inch(0.25, 1.5))
    .hrc(33.0, 39.0, TABLE_1)
    .ksi(150.0, TABLE_1)
    .proof_ksi(120.0, PROOF)
    .temper_fahrenheit(800.0, TABLE_1)];

/// Grade 8.2: low-carbon boron steel, tempered lower.
pub static GRADE_8_2: [SteelRow; 1] = [tempered(Sizes::from_to_inch(0.25, 1.0))
    .hrc(33.0, 39.0, TABLE_1)
    .ksi(150.0, TABLE_1)
    .proof_ksi(120.0, PROOF)
    .temper_fahrenheit(650.0, HEAT_TREATMENT)];
