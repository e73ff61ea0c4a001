//! Quantities inside, units only at the edge.
//!
//! A value is a [`Length`] or a [`Temperature`], never a bare number whose unit one must know.
//! One table in [`unit`] says which units each quantity may be written in; a new unit is one line
//! there. Quantities add, subtract, compare and multiply as they are. Text becomes a quantity in [`number`]; a quantity becomes text as a [`Shown`].

pub mod hardness;
pub mod letters;
pub mod number;
mod shown;
mod system;
pub mod unit;

pub use hardness::{Hardness, Scale};
pub use shown::Shown;
pub use system::Units;
pub use unit::{
    Area, ArealMass, Density, Dimension, Force, Length, Mass, PlainNumber, Rate, Stress, Temperature,
    TemperatureDifference, Time, Unit, Volume,
};

/// What every quantity can do; lets one function read or show any of them.
pub trait Quantity: Copy {
    /// The dimension whose units it may be written in.
    const DIMENSION: Dimension;
    /// From a number in the base unit.
    fn from_base(number: f64) -> Self;
    /// The number in the base unit.
    fn base(self) -> f64;

    /// From a number in `unit`, which must be of this dimension.
    fn of(number: f64, unit: &Unit) -> Self {
        debug_assert_eq!(unit.dimension, Self::DIMENSION);
        Self::from_base(number * unit.factor + unit.offset)
    }

    /// The number in `unit`, which must be of this dimension.
    fn in_unit(self, unit: &Unit) -> f64 {
        debug_assert_eq!(unit.dimension, Self::DIMENSION);
        (self.base() - unit.offset) / unit.factor
    }

    /// As shown in `unit` with so many decimals.
    fn show(self, unit: &'static Unit, decimals: u8) -> Shown {
        Shown { number: self.in_unit(unit), unit, decimals }
    }
}

impl std::ops::Sub for Temperature {
    type Output = TemperatureDifference;
    /// The difference of two temperatures.
    ///
    /// Adding two temperatures means nothing, and does not compile:
    ///
    /// ```compile_fail
    /// use kettle_barrel::quantity::Temperature;
    /// let _ = Temperature::from_celsius(450.0) + Temperature::from_celsius(10.0);
    /// ```
    fn sub(self, other: Self) -> TemperatureDifference {
        TemperatureDifference::from_kelvin(self.celsius() - other.celsius())
    }
}

impl std::ops::Add<TemperatureDifference> for Temperature {
    type Output = Self;
    fn add(self, difference: TemperatureDifference) -> Self {
        Self::from_celsius(self.celsius() + difference.kelvin())
    }
}

impl std::ops::Mul<Length> for Density {
    type Output = ArealMass;
    /// A coat's mass on an area: its density times its thickness.
    fn mul(self, thickness: Length) -> ArealMass {
        ArealMass::from_g_m2(self.g_m2_um() * thickness.um())
    }
}

impl std::ops::Div<Density> for ArealMass {
    type Output = Length;
    fn div(self, density: Density) -> Length {
        Length::from_um(self.g_m2() / density.g_m2_um())
    }
}

impl std::ops::Mul<Volume> for Density {
    type Output = Mass;
    fn mul(self, volume: Volume) -> Mass {
        Mass::from_g(self.g_cm3() * volume.cm3())
    }
}

impl std::ops::Div<Density> for Mass {
    type Output = Volume;
    fn div(self, density: Density) -> Volume {
        Volume::from_cm3(self.g() / density.g_cm3())
    }
}

impl std::ops::Mul<Area> for ArealMass {
    type Output = Mass;
    fn mul(self, area: Area) -> Mass {
        Mass::from_g(self.g_m2() * area.m2())
    }
}

impl std::ops::Mul<Area> for Stress {
    type Output = Force;
    fn mul(self, area: Area) -> Force {
        Force::from_newton(self.mpa() * area.mm2())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quantities_reckon_without_their_units() {
        let (inch, mm) = (Length::from_inch(1.0), Length::from_mm(5.4));
        assert_eq!(inch - mm, Length::from_mm(20.0));
        assert_eq!(inch.min(mm), mm);
        assert_eq!(0.5 * inch, inch / 2.0);
        assert_eq!((-inch).abs() / inch, 1.0);
        assert_eq!([mm, mm].into_iter().sum::<Length>(), mm * 2.0);
        let warmer = Temperature::from_celsius(20.0) + TemperatureDifference::from_kelvin(2.0) * 3.0;
        assert_eq!(warmer, Temperature::from_celsius(26.0));
    }
}
