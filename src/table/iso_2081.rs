//! ISO 2081, earlier edition: baking of electroplated zinc by strength and section, as quoted.

use crate::quantity::{Hardness, Length, Stress, Temperature, Time};
use crate::source::document::ISO_2081;
use crate::source::{Source, Sourced};

/// A row: a range of tensile strength and of section, and its shortest bake.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Tensile strength from which the row holds.
    pub from: Stress,
    /// Tensile strength up to which it holds.
    pub to: Stress,
    /// Thickest section.
    pub section_to: Length,
    /// Shortest time at temperature.
    pub hours: Time,
}

/// The bake table.
pub const BAKE_SOURCE: Source = ISO_2081.read("earlier edition, bake table");

/// Lowest and highest temperature of the bake.
pub const TEMPERATURE: (Temperature, Temperature) =
    (Temperature::from_celsius(190.0), Temperature::from_celsius(210.0));

/// Above this strength conventional zinc electroplating should not be used.
pub const NOT_ABOVE: Sourced<Stress> =
    ISO_2081.read("earlier edition, limit of strength").gives(Stress::from_mpa(1500.0));

/// The same limit as hardness, as it is printed beside the strength: Rockwell C and Vickers.
pub const NOT_ABOVE_HARDNESS: (Hardness, Hardness) = (Hardness::hrc(45.0), Hardness::hv(440.0));

/// The bake table. Sections above 40 mm are left to experiment.
pub static BAKE: &[Row] = &[
    r(1000.0, 1150.0, 12.0, 2.0),
    r(1000.0, 1150.0, 25.0, 4.0),
    r(1000.0, 1150.0, 40.0, 8.0),
    r(1150.0, 1400.0, 12.0, 4.0),
    r(1150.0, 1400.0, 25.0, 12.0),
    r(1150.0, 1400.0, 40.0, 24.0),
];

const fn r(from: f64, to: f64, section: f64, hours: f64) -> Row {
    Row {
        from: Stress::from_mpa(from),
        to: Stress::from_mpa(to),
        section_to: Length::from_mm(section),
        hours: Time::from_hour(hours),
    }
}
