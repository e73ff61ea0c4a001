//! Tempering margin: whether the heat of the bath takes the temper out of the steel.

use super::steel_fields::DIAMETER;
use super::{About, Calculator, Missed, Problem, Reader, Report, Writer};
use crate::quantity::{Length, Temperature, Time};
use crate::rule::{Case, Topic};
use crate::steel::tempering::{self, Dip, Temper};
use crate::steel::{Grade, Properties};

mod fields;
mod report;
mod working;

/// The calculator.
#[derive(Debug)]
pub struct TemperingMargin;

/// What it needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Input {
    /// The grade and its nominal diameter, if the steel is known by its grade.
    pub grade: Option<(Grade, Length)>,
    /// The actual temper, if known.
    pub temper: Option<Temper>,
    /// The bath.
    pub bath: Temperature,
    /// Time in the bath.
    pub dip: Time,
}

/// What it finds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outcome {
    /// What the grade asks for.
    pub properties: Option<Properties>,
    /// What the heat does.
    pub heat: tempering::Effect,
}

impl Calculator for TemperingMargin {
    const ABOUT: About = About {
        id: "tempering",
        title: "Tempering margin",
        answers: "Says how far the bath stays from the temper of the steel, and whether the dip softens it.",
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

    const EXPLAINS: &'static [Topic] = &[Topic::Heat];

    fn fill(case: &Case<'_>, writer: &mut Writer) -> Option<()> {
        // A hardness or a strength says nothing of a temper: then only the actual one can be judged.
        fields::write_steel(case.grade().zip(case.diameter), writer);
        fields::write_dip(case.dip?, writer);
        Some(())
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let properties = input
            .grade
            .map(|(grade, diameter)| grade.properties(diameter))
            .transpose()
            .map_err(|refusal| DIAMETER.refused(refusal))?;
        let dip = Dip { grade: properties, temper: input.temper, bath: input.bath, time: input.dip };
        let heat = tempering::effect(&dip).map_err(|refusal| fields::TEMPER.refused(refusal))?;
        Ok(Outcome { properties, heat })
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        report::report(input, outcome)
    }
}
