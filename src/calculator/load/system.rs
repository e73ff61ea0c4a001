//! In which units a load is shown: a person who weighs in pounds gets pounds, square feet and mils back.

use super::{Body, Stated};
use crate::quantity::{Area, Length, Mass, Quantity, Shown, Temperature, Unit, Volume, unit};

/// Metric or inch.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum System {
    /// Kilograms, square metres, litres, micrometres.
    Metric,
    /// Pounds, square feet, cubic feet, mils.
    Inch,
}

impl Stated {
    /// The units of what was written: an inch thread, a weight in pounds, an area in square feet.
    pub fn system(&self) -> System {
        let inch = match self {
            Self::Count(piece, _) => !piece.designation.thread.is_metric(),
            Self::Weight(_, mass) | Self::Trial(_, mass) => is_inch(mass.unit),
            Self::Area(area, _) => is_inch(area.unit),
            Self::Measured(Body::Round(size, _) | Body::Flat(size), mass) => {
                is_inch(size.unit) || is_inch(mass.unit)
            }
        };
        if inch { System::Inch } else { System::Metric }
    }
}

fn is_inch(unit: &Unit) -> bool {
    [&unit::LB, &unit::OZ, &unit::FT2, &unit::IN2, &unit::INCH, &unit::MIL, &unit::FOOT]
        .into_iter()
        .any(|inch| inch == unit)
}

impl System {
    /// A weight as it is weighed: grams below a kilogram, ounces below a pound.
    pub fn weight(self, mass: Mass) -> Shown {
        match self {
            Self::Metric if mass.g() < 1.0 => mass.show(&unit::G, if mass.g() < 0.1 { 3 } else { 2 }),
            Self::Metric if mass.kg() < 1.0 => mass.show(&unit::G, if mass.g() < 10.0 { 1 } else { 0 }),
            Self::Metric => mass.show(&unit::KG, if mass.kg() < 10.0 { 2 } else { 1 }),
            Self::Inch if mass.oz() < 0.1 => mass.show(&unit::OZ, if mass.oz() < 0.01 { 4 } else { 3 }),
            Self::Inch if mass.lb() < 1.0 => mass.show(&unit::OZ, if mass.oz() < 1.0 { 2 } else { 1 }),
            Self::Inch => mass.show(&unit::LB, if mass.lb() < 10.0 { 2 } else { 1 }),
        }
    }

    /// One of so many equal parts of a weight, with the digits that give the whole again.
    pub fn portion(self, whole: Mass, parts: u32) -> Shown {
        let parts = f64::from(parts.max(1));
        let (one, sum) = (self.weight(whole / parts), self.weight(whole));
        let last_digit = sum.unit.factor / 10f64.powi(i32::from(sum.decimals));
        let gives_it = |one: &Shown| {
            let again = parts * one.rounded() * one.unit.factor;
            (again - sum.rounded() * sum.unit.factor).abs() < 0.5 * last_digit
        };
        let finer = (0..3).map(|more| Shown { decimals: one.decimals + more, ..one });
        finer.clone().find(gives_it).or_else(|| finer.clone().next_back()).unwrap_or(one)
    }

    /// An area.
    pub fn area(self, area: Area) -> Shown {
        match self {
            Self::Metric => area.show(&unit::M2, 2),
            Self::Inch => area.show(&unit::FT2, 1),
        }
    }

    /// The room of a heap.
    pub fn heap(self, volume: Volume) -> Shown {
        match self {
            Self::Metric => volume.show(&unit::LITRE, if volume.litre() < 10.0 { 1 } else { 0 }),
            Self::Inch => volume.show(&unit::FT3, if volume.ft3() < 1.0 { 3 } else { 2 }),
        }
    }

    /// The unit of a coat.
    pub fn coat_unit(self) -> &'static Unit {
        match self {
            Self::Metric => &unit::UM,
            Self::Inch => &unit::MIL,
        }
    }

    /// A coat.
    pub fn coat(self, coat: Length) -> Shown {
        match self {
            Self::Metric => coat.show(&unit::UM, if coat.um() < 10.0 { 2 } else { 1 }),
            Self::Inch => coat.show(&unit::MIL, if coat.mil() < 1.0 { 3 } else { 2 }),
        }
    }

    /// A length.
    pub fn length(self, length: Length) -> Shown {
        match self {
            Self::Metric => length.show(&unit::MM, 0),
            Self::Inch => length.show(&unit::INCH, 1),
        }
    }

    /// A temperature.
    pub fn temperature(self, temperature: Temperature) -> Shown {
        match self {
            Self::Metric => temperature.show(&unit::CELSIUS, 0),
            Self::Inch => temperature.show(&unit::FAHRENHEIT, 0),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 47 g in two additions once were 23 g each.
    #[test]
    fn equal_parts_give_the_whole_again() {
        for (grams, parts, shown) in
            [(47.0, 2, "23.5\u{a0}g"), (100.0, 3, "33.3\u{a0}g"), (90.0, 3, "30\u{a0}g")]
        {
            assert_eq!(System::Metric.portion(Mass::from_g(grams), parts).to_string(), shown);
        }
    }

    /// As many digits as a scale shows, more below each step.
    #[test]
    fn a_weight_is_shown_as_it_is_weighed() {
        for (grams, shown) in [
            (0.05, "0.050\u{a0}g"),
            (0.1, "0.10\u{a0}g"),
            (0.99, "0.99\u{a0}g"),
            (1.0, "1.0\u{a0}g"),
            (9.94, "9.9\u{a0}g"),
            (10.0, "10\u{a0}g"),
            (999.0, "999\u{a0}g"),
            (1000.0, "1.00\u{a0}kg"),
            (9990.0, "9.99\u{a0}kg"),
            (10_000.0, "10.0\u{a0}kg"),
        ] {
            assert_eq!(System::Metric.weight(Mass::from_g(grams)).to_string(), shown);
        }
        for (ounces, shown) in [
            (0.005, "0.0050\u{a0}oz"),
            (0.01, "0.010\u{a0}oz"),
            (0.099, "0.099\u{a0}oz"),
            (0.1, "0.10\u{a0}oz"),
            (0.99, "0.99\u{a0}oz"),
            (1.0, "1.0\u{a0}oz"),
            (15.9, "15.9\u{a0}oz"),
            (16.0, "1.00\u{a0}lb"),
            (159.0, "9.94\u{a0}lb"),
            (160.0, "10.0\u{a0}lb"),
        ] {
            assert_eq!(System::Inch.weight(Mass::from_oz(ounces)).to_string(), shown);
        }
    }

    #[test]
    fn coats_and_heaps_are_shown_with_the_digits_that_are_measured() {
        for (um, metric, inch) in [
            (5.0, "5.00\u{a0}µm", "0.197\u{a0}mil"),
            (10.0, "10.0\u{a0}µm", "0.394\u{a0}mil"),
            (25.4, "25.4\u{a0}µm", "1.00\u{a0}mil"),
        ] {
            assert_eq!(System::Metric.coat(Length::from_um(um)).to_string(), metric);
            assert_eq!(System::Inch.coat(Length::from_um(um)).to_string(), inch);
        }
        for (litres, metric) in [(9.9, "9.9\u{a0}L"), (10.0, "10\u{a0}L")] {
            assert_eq!(System::Metric.heap(Volume::from_litre(litres)).to_string(), metric);
        }
        for (feet, inch) in [(0.5, "0.500\u{a0}ft³"), (1.0, "1.00\u{a0}ft³")] {
            assert_eq!(System::Inch.heap(Volume::from_ft3(feet)).to_string(), inch);
        }
    }
}
