//! ASTM A449 type 1: quenched and tempered bolts and studs.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::source::Source;
use crate::source::document::ASTM_A449;

const TABLE: Source = ASTM_A449.read("table of properties");
const PROOF: Source = ASTM_A449.memory("proof load, length measurement");
const HEAT_TREATMENT: Source = ASTM_A449.memory("heat treatment");

const fn row(sizes: Sizes) -> SteelRow {
    SteelRow::new(sizes, Treatment::QuenchedTempered, TABLE).temper_fahrenheit(800.0, HEAT_TREATMENT)
}

/// Type 1: up to 1 in, up to 1 1/2 in, up to 3 in.
pub static TYPE_1: [SteelRow; 3] = [
    row(Sizes::from_to_inch(0.25, 1.0)).hrc(25.0, 34.0, TABLE).ksi(120.0, TABLE).proof_ksi(85.0, PROOF),
    row(Sizes::over_to_inch(1.0, 1.5)).hrc(19.0, 30.0, TABLE).ksi(105.0, TABLE).proof_ksi(74.0, PROOF),
    row(Sizes::over_to_inch(1.5, 3.0)).hb(183.0, 235.0, TABLE).ksi(90.0, TABLE).proof_ksi(55.0, PROOF),
];
