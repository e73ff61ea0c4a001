//! ISO 898-2: nuts by property class. The hardness limits are from memory; tempering was not read.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::source::Source;
use crate::source::document::ISO_898_2;

const HARDNESS: Source = ISO_898_2.memory("hardness table");

const fn nut(sizes: Sizes, treatment: Treatment, min: f64, max: f64) -> SteelRow {
    SteelRow::new(sizes, treatment, ISO_898_2.memory("")).hv(min, max, HARDNESS)
}

const SMALL: Sizes = Sizes::to_mm(16.0);
const LARGE: Sizes = Sizes::over_to_mm(16.0, 39.0);

/// Class 5.
pub static NUT_5: [SteelRow; 2] = [
    nut(SMALL, Treatment::NotHeatTreated, 130.0, 302.0),
    nut(LARGE, Treatment::NotHeatTreated, 146.0, 302.0),
];

/// Class 6.
pub static NUT_6: [SteelRow; 2] = [
    nut(SMALL, Treatment::NotHeatTreated, 150.0, 302.0),
    nut(LARGE, Treatment::NotHeatTreated, 170.0, 302.0),
];

/// Class 8.
pub static NUT_8: [SteelRow; 2] =
    [nut(SMALL, Treatment::NotKnown, 200.0, 302.0), nut(LARGE, Treatment::NotKnown, 233.0, 353.0)];

/// Class 10.
pub static NUT_10: [SteelRow; 1] = [nut(Sizes::to_mm(39.0), Treatment::NotKnown, 272.0, 353.0)];

/// Class 12.
pub static NUT_12: [SteelRow; 2] =
    [nut(SMALL, Treatment::NotKnown, 295.0, 353.0), nut(LARGE, Treatment::NotKnown, 272.0, 353.0)];
