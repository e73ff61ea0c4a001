//! ASTM A354: quenched and tempered alloy steel bolts, grades BC and BD.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::source::Source;
use crate::source::document::ASTM_A354;

const TABLE: Source = ASTM_A354.read("newer edition, table of properties");
const EARLIER: Source = ASTM_A354.memory("earlier edition");
const PROOF: Source = ASTM_A354.memory("proof load, length measurement");
const HEAT_TREATMENT: Source = ASTM_A354.memory("heat treatment");

const fn row(sizes: Sizes, document: Source) -> SteelRow {
    SteelRow::new(sizes, Treatment::QuenchedTempered, document).temper_fahrenheit(800.0, HEAT_TREATMENT)
}

/// Grade BC: up to 2 1/2 in, and above.
pub static GRADE_BC: [SteelRow; 2] = [
    row(Sizes::from_to_inch(0.25, 2.5), TABLE)
        .hrc(26.0, 36.0, TABLE)
        .ksi(125.0, TABLE)
        .proof_ksi(105.0, PROOF),
    row(Sizes::over_inch(2.5), TABLE).hrc(22.0, 33.0, TABLE).ksi(115.0, TABLE).proof_ksi(95.0, PROOF),
];

/// Grade BD, all sizes in the newer edition.
pub static GRADE_BD: [SteelRow; 1] = [row(Sizes::ALL_INCH, TABLE)
    .hrc(33.0, 38.0, TABLE)
    .ksi(150.0, TABLE)
    .proof_ksi(120.0, PROOF)
    .ksi_to(173.0, TABLE)];

/// Grade BD in the earlier edition: up to 2 1/2 in, and above; softer at both ends of the range.
pub static GRADE_BD_EARLIER: [SteelRow; 2] = [
    row(Sizes::from_to_inch(0.25, 2.5), EARLIER)
        .hrc(33.0, 39.0, EARLIER)
        .ksi(150.0, EARLIER)
        .proof_ksi(120.0, PROOF),
    row(Sizes::over_inch(2.5), EARLIER).hrc(31.0, 39.0, EARLIER).ksi(140.0, EARLIER).proof_ksi(105.0, PROOF),
];
