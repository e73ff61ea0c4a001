//! ISO 898-1: bolts, screws and studs by property class.
//!
//! Hardness and tensile strength are those of Table 3, in which the 1999 edition (read) and the
//! 2013 edition agree but for Brinell; the Brinell limits of [`ROWS`] are the later ones, from
//! memory. Tempering temperatures are those of Table 2 of the 2009 edition.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::quantity::{Hardness, Temperature};
use crate::source::document::{ISO_898_1, ISO_898_1_1999};
use crate::source::{Source, Sourced};

const TABLE_3: Source = ISO_898_1_1999.read("Table 3");
const TABLE_3_HB: Source = ISO_898_1.memory("2013, Table 3");
const PROOF: Source = ISO_898_1.read("2013, Table 3, stress under proof load");
const TABLE_2: Source = ISO_898_1.read("2009, Table 2");

/// Bolts of this document are used from the first of these temperatures to the second; outside them somebody who knows
/// their steels is asked.
pub const SERVICE: Sourced<(Temperature, Temperature)> = ISO_898_1
    .read("2013, scope, note 1")
    .gives((Temperature::from_celsius(-50.0), Temperature::from_celsius(150.0)));

/// What such a steel carries is tested from the first of these temperatures to the second.
pub const TESTED_AT: Sourced<(Temperature, Temperature)> =
    ISO_898_1.read("2013, scope").gives((Temperature::from_celsius(10.0), Temperature::from_celsius(35.0)));

const fn soft() -> SteelRow {
    SteelRow::new(Sizes::ALL, Treatment::NotHeatTreated, TABLE_2)
}

const fn tempered(sizes: Sizes) -> SteelRow {
    SteelRow::new(sizes, Treatment::QuenchedTempered, TABLE_2)
}

/// Class 4.6.
pub static CLASS_4_6: [SteelRow; 1] = [soft()
    .hrb(67.0, 95.0, TABLE_3)
    .hv(120.0, 220.0, TABLE_3)
    .hb(114.0, 209.0, TABLE_3)
    .mpa(400.0, TABLE_3)
    .proof_mpa(225.0, PROOF)];

/// Class 4.8.
pub static CLASS_4_8: [SteelRow; 1] = [soft()
    .hrb(71.0, 95.0, TABLE_3)
    .hv(130.0, 220.0, TABLE_3)
    .hb(124.0, 209.0, TABLE_3)
    .mpa(420.0, TABLE_3)
    .proof_mpa(310.0, PROOF)];

/// Class 5.6.
pub static CLASS_5_6: [SteelRow; 1] = [soft()
    .hrb(79.0, 95.0, TABLE_3)
    .hv(155.0, 220.0, TABLE_3)
    .hb(147.0, 209.0, TABLE_3)
    .mpa(500.0, TABLE_3)
    .proof_mpa(280.0, PROOF)];

/// Class 5.8.
pub static CLASS_5_8: [SteelRow; 1] = [soft()
    .hrb(82.0, 95.0, TABLE_3)
    .hv(160.0, 220.0, TABLE_3)
    .hb(152.0, 209.0, TABLE_3)
    .mpa(520.0, TABLE_3)
    .proof_mpa(380.0, PROOF)];

/// Class 6.8.
pub static CLASS_6_8: [SteelRow; 1] = [soft()
    .hrb(89.0, 99.5, TABLE_3)
    .hv(190.0, 250.0, TABLE_3)
    .hb(181.0, 238.0, TABLE_3)
    .mpa(600.0, TABLE_3)
    .proof_mpa(440.0, PROOF)];

/// Class 8.8: up to 16 mm, and above.
pub static CLASS_8_8: [SteelRow; 2] = [
    tempered(Sizes::to_mm(16.0))
        .hrc(22.0, 32.0, TABLE_3)
        .hv(250.0, 320.0, TABLE_3)
        .hb(245.0, 316.0, TABLE_3_HB)
        .mpa(800.0, TABLE_3)
        .proof_mpa(580.0, PROOF)
        .temper_celsius(425.0, TABLE_2),
    tempered(Sizes::over_mm(16.0))
        .hrc(23.0, 34.0, TABLE_3)
        .hv(255.0, 335.0, TABLE_3)
        .hb(250.0, 331.0, TABLE_3_HB)
        .mpa(830.0, TABLE_3)
        .proof_mpa(600.0, PROOF)
        .temper_celsius(425.0, TABLE_2),
];

/// Class 9.8: up to 16 mm only.
pub static CLASS_9_8: [SteelRow; 1] = [tempered(Sizes::to_mm(16.0))
    .hrc(28.0, 37.0, TABLE_3)
    .hv(290.0, 360.0, TABLE_3)
    .hb(286.0, 355.0, TABLE_3_HB)
    .mpa(900.0, TABLE_3)
    .proof_mpa(650.0, PROOF)
    .temper_celsius(425.0, TABLE_2)];

/// Class 10.9.
pub static CLASS_10_9: [SteelRow; 1] = [tempered(Sizes::ALL)
    .hrc(32.0, 39.0, TABLE_3)
    .hv(320.0, 380.0, TABLE_3)
    .hb(316.0, 375.0, TABLE_3_HB)
    .mpa(1040.0, TABLE_3)
    .proof_mpa(830.0, PROOF)
    .temper_celsius(425.0, TABLE_2)];

/// Class 12.9.
pub static CLASS_12_9: [SteelRow; 1] = [tempered(Sizes::ALL)
    .hrc(39.0, 44.0, TABLE_3)
    .hv(385.0, 435.0, TABLE_3)
    .hb(380.0, 429.0, TABLE_3_HB)
    .mpa(1220.0, TABLE_3)
    .proof_mpa(970.0, PROOF)
    .temper_celsius(425.0, TABLE_2)];

/// Class 12.9 underlined: carbon steel with additives, tempered lower.
pub static CLASS_12_9_UNDERLINED: [SteelRow; 1] = [tempered(Sizes::ALL)
    .hrc(39.0, 44.0, TABLE_3)
    .hv(385.0, 435.0, TABLE_3)
    .hb(380.0, 429.0, TABLE_3_HB)
    .mpa(1220.0, TABLE_3)
    .proof_mpa(970.0, PROOF)
    .temper_celsius(380.0, TABLE_2)];

/// Greatest surface hardness of class 10.9: a harder skin is not accepted.
pub const SURFACE_10_9: Sourced<Hardness> =
    ISO_898_1.read("footnote on surface hardness").gives(Hardness::hv(390.0));

/// Greatest surface hardness of class 12.9.
pub const SURFACE_12_9: Sourced<Hardness> =
    ISO_898_1.read("footnote on surface hardness").gives(Hardness::hv(435.0));

/// Least tempering temperature of class 12.9 in the 1999 edition, lower than today's.
pub const TEMPER_12_9_IN_1999: Sourced<Temperature> =
    ISO_898_1_1999.read("Table 2").gives(Temperature::from_celsius(380.0));

/// Least tempering temperature of underlined class 10.9 (low-carbon boron steel) in the 1999 edition.
pub const TEMPER_10_9_UNDERLINED_IN_1999: Sourced<Temperature> =
    ISO_898_1_1999.read("Table 2").gives(Temperature::from_celsius(340.0));
