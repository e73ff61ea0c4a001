//! Coat thickness and mass: any way of stating a coat into all the others, and the classes it meets.

use super::{About, Calculator, Missed, Problem, Reader, Report, Writer, Written};
use crate::coat::Factor;
use crate::quantity::{ArealMass, Density, Length, unit};
use crate::rule::{Case, Topic};

mod fields;
mod report;
mod working;

/// The calculator.
#[derive(Debug)]
pub struct CoatThickness;

/// What it needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Input {
    /// The coat, as thickness or as mass.
    pub coat: Stated,
    /// What leads from thickness to mass.
    pub conversion: Conversion,
}

/// A coat as it is stated.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Stated {
    /// By thickness.
    Thickness(Written<Length>),
    /// By mass on an area.
    Mass(Written<ArealMass>),
}

/// What leads from thickness to mass.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Conversion {
    /// The factor of a standard or a process.
    Published(&'static Factor),
    /// The user's own.
    Own(Density),
}

/// What it finds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outcome {
    /// Least and greatest thickness.
    pub thickness: (Length, Length),
    /// Least and greatest mass.
    pub mass: (ArealMass, ArealMass),
}

impl Calculator for CoatThickness {
    const ABOUT: About = About {
        id: "coat",
        title: "Coat thickness and mass",
        answers: "Turns any way of stating a zinc coat into all the others, and says which classes it meets.",
        fields: &fields::FIELDS,
        examples: &fields::EXAMPLES,
    };
    type Input = Input;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
        fields::read(reader)
    }

    fn write(input: &Input, writer: &mut Writer) {
        fields::write(input, writer);
    }

    const EXPLAINS: &'static [Topic] = &[Topic::Class];

    fn fill(case: &Case<'_>, writer: &mut Writer) -> Option<()> {
        let offer = case.offer?;
        fields::write(
            &Input {
                coat: Stated::Thickness(Written { quantity: offer.min, unit: &unit::UM }),
                conversion: Conversion::Published(offer.factor()),
            },
            writer,
        );
        Some(())
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let (light, heavy) = input.conversion.densities();
        Ok(match input.coat {
            Stated::Thickness(Written { quantity: thickness, .. }) => {
                Outcome { thickness: (thickness, thickness), mass: (light * thickness, heavy * thickness) }
            }
            // The heavier the deposit, the thinner the same mass.
            Stated::Mass(Written { quantity: mass, .. }) => {
                Outcome { thickness: (mass / heavy, mass / light), mass: (mass, mass) }
            }
        })
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        report::report(input, outcome)
    }
}

impl Conversion {
    /// Least and greatest mass for each unit of thickness; the same where there is one value.
    fn densities(self) -> (Density, Density) {
        match self {
            Self::Published(factor) => (factor.min, factor.max),
            Self::Own(density) => (density, density),
        }
    }
}
