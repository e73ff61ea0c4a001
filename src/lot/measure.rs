//! How readings were taken: as a thickness, or as a mass on an area.

use crate::coat::ThicknessLimit;
use crate::quantity::{ArealMass, Density, Dimension, Length, Quantity, Shown, Unit, unit};

/// The unit of readings, and the factor that makes a mass on an area a thickness.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Measure {
    /// The unit the readings were written in: of length, or of mass on an area.
    pub unit: &'static Unit,
    /// From thickness to mass; belongs to the standard the lot is checked by.
    pub factor: Density,
}

impl Measure {
    /// Whether the readings are masses: the coat was stripped and weighed.
    pub fn is_mass(self) -> bool {
        self.unit.dimension == Dimension::ArealMass
    }

    /// The thickness of a number in the unit of the readings, or in any other of length or mass.
    pub fn thickness(self, shown: Shown) -> Length {
        match shown.unit.dimension {
            Dimension::ArealMass => ArealMass::of(shown.number, shown.unit) / self.factor,
            _ => Length::of(shown.number, shown.unit),
        }
    }

    /// A thickness in the unit of the readings, to what a gauge or a balance shows and so many
    /// decimals more.
    pub fn show(self, thickness: Length, more: u8) -> Shown {
        let decimals = match self.unit {
            unit if *unit == unit::MM => 4,
            unit if *unit == unit::INCH => 5,
            unit if *unit == unit::MIL => 2,
            unit if *unit == unit::OZ_FT2 => 3,
            unit if *unit == unit::G_M2 => 0,
            _ => 1,
        };
        self.in_unit(thickness, self.unit, decimals + more)
    }

    /// A limit in the column that is printed for the unit of the readings; a mass without one is
    /// compared as the thickness it makes.
    pub fn column(self, limit: &ThicknessLimit) -> Shown {
        limit.column(self.unit).unwrap_or(limit.printed)
    }

    /// A thickness in the unit of a column.
    pub fn in_column(self, thickness: Length, column: Shown) -> Shown {
        self.in_unit(thickness, column.unit, column.decimals)
    }

    fn in_unit(self, thickness: Length, unit: &'static Unit, decimals: u8) -> Shown {
        match unit.dimension {
            Dimension::ArealMass => (self.factor * thickness).show(unit, decimals),
            _ => thickness.show(unit, decimals),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A gauge shows a tenth of a micrometre and a hundredth of a mil; a balance whole grams a square metre.
    #[test]
    fn readings_are_shown_to_what_a_gauge_shows() {
        let factor = Density::from_g_cm3(7.2);
        for (unit, shown, finer) in [
            (&unit::UM, "50.8\u{a0}µm", "50.80\u{a0}µm"),
            (&unit::MM, "0.0508\u{a0}mm", "0.05080\u{a0}mm"),
            (&unit::MIL, "2.00\u{a0}mil", "2.000\u{a0}mil"),
            (&unit::INCH, "0.00200\u{a0}in", "0.002000\u{a0}in"),
            (&unit::G_M2, "366\u{a0}g/m²", "365.8\u{a0}g/m²"),
            (&unit::OZ_FT2, "1.199\u{a0}oz/ft²", "1.1986\u{a0}oz/ft²"),
        ] {
            let measure = Measure { unit, factor };
            let coat = Length::from_um(50.8);
            assert_eq!(measure.show(coat, 0).to_string(), shown);
            assert_eq!(measure.show(coat, 1).to_string(), finer);
            let again = measure.thickness(measure.show(coat, 0));
            assert!((again.um() - 50.8).abs() < 0.1, "{}: {}", unit.symbol, again.um());
            assert_eq!(measure.is_mass(), [&unit::G_M2, &unit::OZ_FT2].contains(&unit), "{}", unit.symbol);
        }
    }
}
