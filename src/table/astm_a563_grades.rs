//! ASTM A563: nuts by grade, hardness and temper; their proof stresses stand in `astm_a563_proof`.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::source::Source;
use crate::source::document::ASTM_A563;

const BRINELL: Source = ASTM_A563.read("Brinell hardness by grade");
const ROCKWELL: Source = ASTM_A563.memory("Rockwell hardness by grade");
const TEMPER: Source = ASTM_A563.memory("D, DH, DH3: least tempering temperature");

const fn row(treatment: Treatment) -> SteelRow {
    SteelRow::new(Sizes::ALL_INCH, treatment, BRINELL)
}

const fn tempered() -> SteelRow {
    row(Treatment::QuenchedTempered)
        .hrc(24.0, 38.0, ROCKWELL)
        .hb(248.0, 352.0, BRINELL)
        .temper_fahrenheit(800.0, TEMPER)
}

/// Grade A.
pub static GRADE_A: [SteelRow; 1] =
    [row(Treatment::NotKnown).hb(116.0, 302.0, BRINELL).hrc_to(32.0, ROCKWELL).hrb_from(68.0, ROCKWELL)];

/// Grade B.
pub static GRADE_B: [SteelRow; 1] =
    [row(Treatment::NotKnown).hb(121.0, 302.0, BRINELL).hrc_to(32.0, ROCKWELL).hrb_from(69.0, ROCKWELL)];

/// Grades C and C3, which is of weathering steel.
pub static GRADE_C: [SteelRow; 1] =
    [row(Treatment::NotKnown).hb(143.0, 352.0, BRINELL).hrc_to(38.0, ROCKWELL).hrb_from(78.0, ROCKWELL)];

/// Grade D; it may be made without heat treatment. Its least hardness is printed as 248 and remembered as
/// 159 HB, and is left out.
pub static GRADE_D: [SteelRow; 1] =
    [row(Treatment::NotKnown).hb_to(352.0, BRINELL).hrc_to(38.0, ROCKWELL).temper_fahrenheit(800.0, TEMPER)];

/// Grades DH and DH3, which is of weathering steel.
pub static GRADE_DH: [SteelRow; 1] = [tempered()];
