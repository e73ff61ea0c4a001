//! ASTM A307 grades A and B: carbon steel bolts. Both hardness scales stand beside each other in Table 2.
//!
//! The least hardness is asked only of bolts too short to be pulled (under three diameters).

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::source::Source;
use crate::source::document::ASTM_A307;

const TABLE_2: Source = ASTM_A307.read("Table 2");
const TABLE_3: Source = ASTM_A307.read("Table 3, note");

/// Grade A, 1/4 to 4 in.
pub static GRADE_A: [SteelRow; 1] =
    [SteelRow::new(Sizes::from_to_inch(0.25, 4.0), Treatment::NotHeatTreated, ASTM_A307.read(""))
        .hrb(69.0, 100.0, TABLE_2)
        .hb(121.0, 241.0, TABLE_2)
        .ksi(60.0, TABLE_3)
        .no_proof(ASTM_A307.memory("tensile requirements"))];

/// Grade B, for flanged joints, 1/4 to 4 in.
pub static GRADE_B: [SteelRow; 1] =
    [SteelRow::new(Sizes::from_to_inch(0.25, 4.0), Treatment::NotHeatTreated, ASTM_A307.read(""))
        .hrb(69.0, 95.0, TABLE_2)
        .ksi(60.0, TABLE_3)
        .no_proof(ASTM_A307.memory("tensile requirements"))];
