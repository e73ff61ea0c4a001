//! What is asked, and how it is read and written.

use std::borrow::Cow;

use super::{Conversion, Input, Stated};
use crate::calculator::{
    Bound, Choice, Example, Fault, Field, FieldAbout, FieldValue, Missed, OrOwn, Reader, Writer, Written,
};
use crate::coat::Factor;
use crate::quantity::{ArealMass, Density, Dimension, Length, Quantity, Shown, Unit, unit};

/// What is asked.
pub(super) static FIELDS: [FieldAbout; 3] = [COAT.about, FACTOR.about, OWN_FACTOR.about];

const COAT: Field<Stated> =
    Field::quantity("coat", "Coat", &THICKNESS_AND_MASS, Bound::Each(&COATS), "50 µm")
        .hint("A thickness or a mass on an area, as your document states it.");

const FACTOR: Field<OrOwn<&'static Factor>> =
    Field::choice("factor", "Thickness to mass by", &FACTORS, "a123")
        .hint("The factor belongs to the standard or the process in hand.");

const OWN_FACTOR: Field<Density> = Field::quantity(
    "own_factor",
    "Own factor",
    &DENSITIES,
    Bound::Between(
        Shown { number: 4.0, unit: &unit::G_M2_UM, decimals: 0 },
        Shown { number: 7.2, unit: &unit::G_M2_UM, decimals: 1 },
        "a deposit cannot be denser than zinc, and below 4 it is no coat",
    ),
    "7.14 g/m² per µm",
)
.when(&FACTOR, &["own"]);

static THICKNESS_AND_MASS: [&Unit; 6] =
    [&unit::UM, &unit::MM, &unit::MIL, &unit::INCH, &unit::G_M2, &unit::OZ_FT2];
/// A millimetre of zinc, as a thickness and as a mass.
static COATS: [Bound; 2] = [
    Bound::PositiveTo(
        Shown { number: 0.01, unit: &unit::UM, decimals: 2 },
        Shown { number: 1.0, unit: &unit::MM, decimals: 0 },
        "zinc coats on fasteners are far thinner; check the unit",
    ),
    Bound::PositiveTo(
        Shown { number: 0.05, unit: &unit::G_M2, decimals: 2 },
        Shown { number: 7200.0, unit: &unit::G_M2, decimals: 0 },
        "that would be a millimetre of zinc; check the unit",
    ),
];
static DENSITIES: [&Unit; 2] = [&unit::G_M2_UM, &unit::OZ_FT2_MIL];

static FACTORS: [Choice; 6] = [
    Choice::new("a123", "ASTM A123, A153, F2329 (hot-dip): 7.067 g/m² per µm"),
    Choice::new("iso1461", "ISO 1461, ISO 10684 (hot-dip): 7.2 g/m² per µm"),
    Choice::new("a653", "Solid zinc, ASTM A653 (sheet, electroplate): 7.14 g/m² per µm"),
    Choice::new("deposit", "Mechanical deposit (porous): 5.41 to 5.71 g/m² per µm"),
    Choice::new("bs729", "BS 729 (older British practice): 7.0 g/m² per µm"),
    Choice::new("own", "Own value"),
];

/// Worked examples.
pub(super) static EXAMPLES: [Example; 5] = [
    Example { title: "Batch average of a spun hot-dip coat", pairs: &[("coat", "50 µm")] },
    Example { title: "A mass from an American drawing", pairs: &[("coat", "1.25 oz/ft²")] },
    Example { title: "A mechanical deposit, class 55", pairs: &[("coat", "53 µm"), ("factor", "deposit")] },
    Example {
        title: "A coat of solid zinc by its mass", pairs: &[("coat", "381 g/m²"), ("factor", "a653")]
    },
    Example {
        title: "A factor measured in the shop",
        pairs: &[("coat", "2.1 mil"), ("factor", "own"), ("own_factor", "0.47 oz/ft² per mil")],
    },
];

/// Reads the fields.
pub(super) fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
    let coat = reader.get(&COAT);
    let conversion = match reader.get(&FACTOR)? {
        OrOwn::Published(factor) => Ok(Conversion::Published(factor)),
        OrOwn::Own => reader.get(&OWN_FACTOR).map(Conversion::Own),
    };
    Ok(Input { coat: coat?, conversion: conversion? })
}

/// Writes the fields.
pub(super) fn write(input: &Input, writer: &mut Writer) {
    writer.put(&COAT, input.coat);
    match input.conversion {
        Conversion::Published(factor) => writer.put(&FACTOR, OrOwn::Published(factor)),
        Conversion::Own(density) => {
            writer.put(&FACTOR, OrOwn::Own);
            writer.put(&OWN_FACTOR, density);
        }
    }
}

impl FieldValue for Stated {
    fn read(text: &str, about: &FieldAbout) -> Result<Self, Fault> {
        let (number, unit) = about.measured(text)?;
        Ok(match unit.dimension {
            Dimension::ArealMass => Self::Mass(Written { quantity: ArealMass::of(number, unit), unit }),
            _ => Self::Thickness(Written { quantity: Length::of(number, unit), unit }),
        })
    }

    fn write(&self, about: &FieldAbout) -> Cow<'static, str> {
        match self {
            Self::Thickness(thickness) => thickness.write(about),
            Self::Mass(mass) => mass.write(about),
        }
    }
}

impl FieldValue for &'static Factor {
    fn read(text: &str, about: &FieldAbout) -> Result<Self, Fault> {
        about.chosen(text, Factor::from_key)
    }

    fn write(&self, _: &FieldAbout) -> Cow<'static, str> {
        self.key.into()
    }
}
