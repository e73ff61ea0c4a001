//! ISO 898-2: nuts by property class, coarse threads; class 8 in style 1. The hardness limits are from
//! memory, which classes are quenched and tempered was read; no least tempering temperature was found.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::source::Source;
use crate::source::document::ISO_898_2;

const TABLE_3: Source = ISO_898_2.read("Table 3, heat treatment");
const HARDNESS: Source = ISO_898_2.memory("hardness table");

const fn nut(sizes: Sizes, treatment: Treatment, min: f64, max: f64) -> SteelRow {
    SteelRow::new(sizes, treatment, TABLE_3).hv(min, max, HARDNESS)
}

const SMALL: Sizes = Sizes::to_mm(16.0);
const LARGE: Sizes = Sizes::over_to_mm(16.0, 39.0);

const ALL: Sizes = Sizes::to_mm(39.0);

/// The table ends at M39: what a larger nut has is agreed, and nothing is known of it here.
const BEYOND: SteelRow =
    SteelRow::new(Sizes::over_mm(39.0), Treatment::NotKnown, ISO_898_2.memory("scope, to M39"));

/// Class 04, thin nuts.
pub static NUT_04: [SteelRow; 1] = [nut(ALL, Treatment::NotHeatTreated, 188.0, 302.0)];

/// Class 05, thin nuts.
pub static NUT_05: [SteelRow; 1] = [nut(ALL, Treatment::QuenchedTempered, 272.0, 353.0)];

/// Class 9, high nuts.
pub static NUT_9: [SteelRow; 1] = [nut(ALL, Treatment::NotHeatTreated, 188.0, 302.0)];

/// Class 5.
pub static NUT_5: [SteelRow; 3] = [
    nut(SMALL, Treatment::NotHeatTreated, 130.0, 302.0),
    nut(LARGE, Treatment::NotHeatTreated, 146.0, 302.0),
    BEYOND,
];

/// Class 6.
pub static NUT_6: [SteelRow; 3] = [
    nut(SMALL, Treatment::NotHeatTreated, 150.0, 302.0),
    nut(LARGE, Treatment::NotHeatTreated, 170.0, 302.0),
    BEYOND,
];

/// Class 8.
pub static NUT_8: [SteelRow; 3] = [
    nut(SMALL, Treatment::NotHeatTreated, 200.0, 302.0),
    nut(LARGE, Treatment::QuenchedTempered, 233.0, 353.0),
    BEYOND,
];

/// Class 10.
pub static NUT_10: [SteelRow; 2] = [nut(ALL, Treatment::QuenchedTempered, 272.0, 353.0), BEYOND];

/// Class 12.
pub static NUT_12: [SteelRow; 3] = [
    nut(SMALL, Treatment::QuenchedTempered, 295.0, 353.0),
    nut(LARGE, Treatment::QuenchedTempered, 272.0, 353.0),
    BEYOND,
];

/// Class 8 as nuts HR 8 of EN 14399-3 have it.
pub static STRUCTURAL_8: [SteelRow; 2] = [
    nut(Sizes::from_to_mm(12.0, 16.0), Treatment::NotHeatTreated, 200.0, 302.0),
    nut(Sizes::over_to_mm(16.0, 36.0), Treatment::QuenchedTempered, 233.0, 353.0),
];

/// Class 10 as nuts HR 10 and HV 10 of EN 14399 have it.
pub static STRUCTURAL_10: [SteelRow; 1] =
    [nut(Sizes::from_to_mm(12.0, 36.0), Treatment::QuenchedTempered, 272.0, 353.0)];
