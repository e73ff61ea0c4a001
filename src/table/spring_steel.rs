//! Spring steel of washers, rings and pins: the hardness that the standard of each part asks for.
//!
//! Their least tempering temperature was not found; springs are tempered lower than bolts.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::source::Source;
use crate::source::document::{ASME_B18_21_1, DIN_127, DIN_471, DIN_6796, ISO_8752};

const LOCK: Source = DIN_127.memory("hardness, by DIN 267-26 of the time");
const INCH_LOCK: Source = ASME_B18_21_1.read("2009, hardness of carbon steel lock washers");
const CONICAL: Source = DIN_6796.read("hardness, as a maker states it");
const RING: Source = DIN_471.read("hardness, as a maker states it");
const PIN: Source = ISO_8752.memory("hardness of pins quenched and tempered");

const fn spring(sizes: Sizes, document: Source) -> SteelRow {
    SteelRow::new(sizes, Treatment::QuenchedTempered, document).no_proof(document)
}

/// Spring lock washers of DIN 127.
pub static DIN_127_WASHER: [SteelRow; 1] = [spring(Sizes::ALL, LOCK).hv(430.0, 530.0, LOCK)];

/// Helical spring lock washers of ASME B18.21.1.
pub static B18_21_1_WASHER: [SteelRow; 1] = [spring(Sizes::ALL_INCH, INCH_LOCK).hrc(38.0, 46.0, INCH_LOCK)];

/// Conical spring washers of DIN 6796.
pub static DIN_6796_WASHER: [SteelRow; 1] = [spring(Sizes::ALL, CONICAL).hrc(43.0, 48.0, CONICAL)];

/// Retaining rings of DIN 471: for shafts up to 48 mm, and above.
pub static DIN_471_RING: [SteelRow; 2] = [
    spring(Sizes::to_mm(48.0), RING).hrc(47.0, 54.0, RING),
    spring(Sizes::over_mm(48.0), RING).hrc(44.0, 51.0, RING),
];

/// Spring pins of ISO 8752.
pub static ISO_8752_PIN: [SteelRow; 1] = [spring(Sizes::ALL, PIN).hv(420.0, 520.0, PIN)];
