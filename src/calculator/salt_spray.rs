//! Salt spray: hours where a document states them, and why a hot-dip coat has none.

use super::{About, Calculator, Missed, Problem, Reader, Report, Writer};
use crate::site::salt_spray::{self, Finish, Hours};

mod fields;
mod report;

/// The calculator.
#[derive(Debug)]
pub struct SaltSpray;

/// What it finds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Outcome {
    /// Hours, or that the standard asks for none.
    Stated(Hours),
    /// Hours are no measure of this coat.
    NoMeasure,
}

impl Calculator for SaltSpray {
    const ABOUT: About = About {
        id: "salt-spray",
        title: "Salt spray",
        answers: "Gives hours in the salt spray where a document states them, and says where hours mean nothing.",
        fields: &fields::FIELDS,
        examples: &fields::EXAMPLES,
    };
    type Input = Finish;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Result<Finish, Missed> {
        fields::read(reader)
    }

    fn write(finish: &Finish, writer: &mut Writer) {
        fields::write(*finish, writer);
    }

    fn solve(finish: &Finish) -> Result<Outcome, Problem> {
        match (finish, salt_spray::hours(*finish)) {
            (_, Ok(hours)) => Ok(Outcome::Stated(hours)),
            (Finish::HotDip, Err(_)) => Ok(Outcome::NoMeasure),
            (Finish::Iso4042(..) | Finish::Iso2081(..), Err(refusal)) => {
                Err(fields::THICKNESS.refused(refusal))
            }
            (_, Err(refusal)) => Err(fields::FINISH.refused(refusal)),
        }
    }

    fn explain(finish: &Finish, outcome: &Outcome) -> Report {
        report::report(*finish, outcome)
    }
}
