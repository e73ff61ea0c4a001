//! ASTM A574: alloy steel socket head cap screws.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::quantity::{Temperature, Time};
use crate::source::document::{ASTM_A574, ASTM_A574_OLD};
use crate::source::{Source, Sourced};

const TABLE: Source = ASTM_A574.read("table of mechanical requirements");
const PROOF: Source = ASTM_A574.read("tensile requirements, proof load stress");
const TEMPER: Source = ASTM_A574.read("5.4");

const fn row(sizes: Sizes) -> SteelRow {
    SteelRow::new(sizes, Treatment::QuenchedTempered, TABLE).temper_fahrenheit(700.0, TEMPER)
}

/// Up to 1/2 in, and above.
pub static SCREWS: [SteelRow; 2] = [
    row(Sizes::to_inch(0.5)).hrc(39.0, 45.0, TABLE).ksi(180.0, TABLE).proof_ksi(140.0, PROOF),
    row(Sizes::over_inch(0.5)).hrc(37.0, 45.0, TABLE).ksi(170.0, TABLE).proof_ksi(135.0, PROOF),
];

/// Least tempering temperature in editions before 2017, lower than today's.
pub const TEMPER_EARLIER: Sourced<Temperature> =
    ASTM_A574_OLD.memory("heat treatment").gives(Temperature::from_fahrenheit(650.0));

/// The check of the temper: heated so hot and so long, the hardness changes by no more than 2 HRC.
pub const VERIFICATION: Sourced<(Temperature, Time)> =
    ASTM_A574.read("5.4.1").gives((Temperature::from_fahrenheit(680.0), Time::from_minute(30.0)));
