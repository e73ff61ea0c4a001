//! ASTM A194: heavy hex nuts for high pressure or temperature service. Of the stainless grades nothing is held.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::source::Source;
use crate::source::document::ASTM_A194;

const HARDNESS: Source = ASTM_A194.read("grade 2H, hardness and temper");
const ALLOY: Source = ASTM_A194.read("grades 7 and 7M, hardness and temper");
const OTHERS: Source = ASTM_A194.memory("grades 1, 2, 2HM and 4, hardness and temper");

const fn row(sizes: Sizes) -> SteelRow {
    SteelRow::new(sizes, Treatment::QuenchedTempered, HARDNESS).temper_fahrenheit(850.0, HARDNESS)
}

const fn tempered(fahrenheit: f64, source: Source) -> SteelRow {
    SteelRow::new(Sizes::ALL_INCH, Treatment::QuenchedTempered, source).temper_fahrenheit(fahrenheit, source)
}

/// Grade 2H: up to 1 1/2 in, and above.
pub static GRADE_2H: [SteelRow; 2] = [
    row(Sizes::to_inch(1.5)).hrc(24.0, 35.0, HARDNESS).hb(248.0, 327.0, HARDNESS),
    row(Sizes::over_inch(1.5)).hrc_to(35.0, HARDNESS).hrb_from(95.0, HARDNESS).hb(212.0, 327.0, HARDNESS),
];
/// Grade 2HM, soft, for wet hydrogen sulphide: as 7M.
pub static GRADE_2HM: [SteelRow; 1] =
    [tempered(1150.0, OTHERS).hrb(84.0, 99.0, OTHERS).hb(159.0, 235.0, OTHERS)];
/// Grade 7, alloy.
pub static GRADE_7: [SteelRow; 1] = [tempered(1100.0, ALLOY).hrc(24.0, 35.0, ALLOY).hb(248.0, 327.0, ALLOY)];
/// Grade 7M, soft.
pub static GRADE_7M: [SteelRow; 1] = [tempered(1150.0, ALLOY).hrb(84.0, 99.0, ALLOY).hb(159.0, 235.0, ALLOY)];
/// Grade 4, which newer editions drop.
pub static GRADE_4: [SteelRow; 1] =
    [tempered(1100.0, OTHERS).hrc(24.0, 35.0, OTHERS).hb(248.0, 327.0, OTHERS)];
/// Grade 2.
pub static GRADE_2: [SteelRow; 1] = [SteelRow::new(Sizes::ALL_INCH, Treatment::NotKnown, OTHERS)
    .hrb_from(84.0, OTHERS)
    .hb(159.0, 352.0, OTHERS)];
/// Grade 1.
pub static GRADE_1: [SteelRow; 1] =
    [SteelRow::new(Sizes::ALL_INCH, Treatment::NotKnown, OTHERS).hrb_from(70.0, OTHERS)];
