//! ASTM A193 grades B7 and B7M: alloy steel studs and bolts for high temperature service.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::source::Source;
use crate::source::document::ASTM_A193;

const TABLE_2: Source = ASTM_A193.read("Table 2");

const fn row(sizes: Sizes) -> SteelRow {
    SteelRow::new(sizes, Treatment::QuenchedTempered, TABLE_2)
        .temper_fahrenheit(1100.0, TABLE_2)
        .no_proof(ASTM_A193.memory("Table 2"))
}

// The document names M100 and 4 in together; the larger of the two ends the row.
const FOUR_INCHES: f64 = 101.6;

/// Grade B7: up to M64, up to M100, up to M180.
pub static GRADE_B7: [SteelRow; 3] = [
    row(Sizes::to_mm(64.0)).hrc_to(35.0, TABLE_2).mpa(860.0, TABLE_2),
    row(Sizes::over_to_mm(64.0, FOUR_INCHES)).hrc_to(35.0, TABLE_2).mpa(795.0, TABLE_2),
    row(Sizes::over_to_mm(FOUR_INCHES, 180.0)).hrc_to(25.0, TABLE_2).mpa(690.0, TABLE_2),
];

/// Grade B7M, up to 7 in.
pub static GRADE_B7M: [SteelRow; 1] =
    [SteelRow::new(Sizes::to_mm(180.0), Treatment::QuenchedTempered, TABLE_2)
        .hb_to(235.0, TABLE_2)
        .hrb_to(99.0, TABLE_2)
        .ksi(100.0, TABLE_2)
        .temper_fahrenheit(1150.0, TABLE_2)
        .no_proof(ASTM_A193.memory("Table 2"))];
