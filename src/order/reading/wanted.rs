//! How much coat a line asks for.

use crate::coat::factor;
use crate::process::Process;
use crate::quantity::{ArealMass, Density, Length, Quantity, unit};
use crate::table::coat_class::CoatClass;

/// How much coat is asked for, as it was written.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Wanted {
    /// So thick.
    Metric(Length),
    /// So thick, in inches or mils.
    Inch(Length),
    /// So much zinc on an area, in grams.
    Mass(ArealMass),
    /// So much zinc on an area, in ounces.
    Ounces(ArealMass),
}

impl Wanted {
    /// A number with its unit, as fields take that; `None` if coats are not measured in it.
    pub fn read(number: f64, unit: &str) -> Option<Self> {
        match unit {
            "µm" => Some(Self::Metric(Length::from_um(number))),
            "mm" => Some(Self::Metric(Length::from_mm(number))),
            "mil" => Some(Self::Inch(Length::from_mil(number))),
            "in" => Some(Self::Inch(Length::from_inch(number))),
            "g/m²" => Some(Self::Mass(ArealMass::from_g_m2(number))),
            "oz/ft²" => Some(Self::Ounces(ArealMass::from_oz_ft2(number))),
            _ => None,
        }
    }

    /// How thick that is where the zinc is solid.
    pub fn solid(self) -> Length {
        self.where_the_zinc_weighs(factor::A653.min)
    }

    /// How thick that is in the zinc of a process, and where it is porous, as thick as it may be.
    pub fn put_on_by(self, process: Process) -> Length {
        match process {
            Process::Mechanical => self.where_the_zinc_weighs(factor::DEPOSIT.min),
            Process::HotDip | Process::Electroplated => self.solid(),
        }
    }

    /// How thick that is in the zinc of a class: as its document counts, and where the zinc is porous, as thick as it may be.
    pub fn in_the_zinc_of(self, class: &CoatClass) -> Length {
        self.where_the_zinc_weighs(factor::of_class(class).min)
    }

    fn where_the_zinc_weighs(self, density: Density) -> Length {
        match self {
            Self::Metric(thickness) | Self::Inch(thickness) => thickness,
            Self::Mass(mass) | Self::Ounces(mass) => Length::from_um(mass.g_m2() / density.g_m2_um()),
        }
    }

    /// Whether it was written in the units of inches.
    pub fn is_in_inches(self) -> bool {
        matches!(self, Self::Inch(_) | Self::Ounces(_))
    }

    /// As it is said again.
    pub fn show(self) -> String {
        match self {
            Self::Metric(thickness) => thickness.show(&unit::UM, 0).to_string(),
            Self::Inch(thickness) => thickness.show(&unit::INCH, 4).to_string(),
            Self::Mass(mass) => mass.show(&unit::G_M2, 0).to_string(),
            Self::Ounces(mass) => mass.show(&unit::OZ_FT2, 2).to_string(),
        }
    }
}
