//! ASTM B850: baking after coating, so that hydrogen leaves the steel before it is loaded.

use crate::quantity::{Stress, Temperature, Time};
use crate::source::document::ASTM_B850;
use crate::source::{Source, Sourced};

/// A row of Table 1: a range of tensile strength and its shortest bake.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Tensile strength above which the row begins.
    pub over: Stress,
    /// Tensile strength up to which it holds.
    pub to: Stress,
    /// The Rockwell C range printed beside it.
    pub hrc: (f64, f64),
    /// Shortest time at temperature.
    pub hours: Time,
}

/// Table 1 of the 1998 edition, as far as it was read.
pub const TABLE_1_SOURCE: Source = ASTM_B850.read("Table 1");

/// Lowest and highest temperature of the bake.
pub const TEMPERATURE: (Temperature, Temperature) =
    (Temperature::from_celsius(190.0), Temperature::from_celsius(220.0));

/// The bake begins within this time after coating, better within [`PREFERABLY_WITHIN`].
pub const WITHIN: Sourced<Time> = ASTM_B850.memory("section 4").gives(Time::from_hour(4.0));

/// The time the document prefers.
pub const PREFERABLY_WITHIN: Time = Time::from_hour(1.0);

const fn r(over: f64, to: f64, hrc: (f64, f64), hours: f64) -> Row {
    Row { over: Stress::from_mpa(over), to: Stress::from_mpa(to), hrc, hours: Time::from_hour(hours) }
}

/// Table 1. It prints whole numbers (1001 to 1100 MPa, and so on); what lies between two rows
/// belongs to the stronger one, which bakes longer.
pub static TABLE_1: &[Row] = &[
    r(1000.0, 1100.0, (31.0, 33.0), 8.0),
    r(1100.0, 1200.0, (33.0, 36.0), 10.0),
    r(1200.0, 1300.0, (36.0, 39.0), 12.0),
    r(1300.0, 1400.0, (39.0, 43.0), 14.0),
    r(1400.0, 1500.0, (43.0, 45.0), 16.0),
    r(1500.0, 1600.0, (45.0, 47.0), 18.0),
    r(1600.0, 1700.0, (47.0, 49.0), 20.0),
    r(1700.0, 1800.0, (49.0, 51.0), 22.0),
];

/// Above this strength the table asks for a bake.
pub const ABOVE: Stress = Stress::from_mpa(1000.0);
