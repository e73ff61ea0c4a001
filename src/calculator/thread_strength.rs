//! Thread strength: what breaks or strips first, and what tapping over or cutting under costs.

use self::fields::{BOLT_GRADE, COUNTERSUNK, NUT_GRADE, NUT_STYLE};
use super::thread_fields::{ALLOWANCE, BOLT_CLASS, THREAD};
use super::{About, Calculator, Missed, Problem, Reader, Report, Writer};
use crate::rule::bolt_and_nut::{Blame, Carries, Model};
use crate::rule::{Case, Topic};
use crate::steel::pairing::Nuts;
use crate::table::Refusal;
use crate::thread::load::{BoltLoads, Load};
use crate::thread::overtap::Allowance;

pub use crate::rule::bolt_and_nut::{BoltAndNut as Input, BoltSteel, NutBody, NutSteel};

mod fields;
mod report;
mod working;

/// The calculator.
#[derive(Debug)]
pub struct ThreadStrength;

/// What it finds.
#[derive(Debug, Clone, PartialEq)]
pub struct Outcome {
    /// What a document says of the load of the pair.
    pub stated: Option<Carries>,
    /// What the model says, where it reaches the pair.
    pub model: Result<Model, Refusal>,
    /// What the standards give the bolt, where its grade is known.
    pub bolt_loads: Option<BoltLoads>,
    /// What the standards give a standard nut, where its grade and style are known.
    pub standard_nut_load: Option<Result<Load, Refusal>>,
    /// Which nuts the standards put on the bolt, where its grade is known.
    pub nuts: Option<Result<Nuts, Refusal>>,
    /// What they give this nut, where it is tapped over.
    pub nut_load: Option<Result<Load, Refusal>>,
}

impl Calculator for ThreadStrength {
    const ABOUT: About = About {
        id: "thread-strength",
        title: "Thread strength",
        answers: "Says what gives way first, bolt or thread, and what tapping over or cutting under costs.",
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

    const EXPLAINS: &'static [Topic] = &[Topic::Strength];

    fn fill(case: &Case<'_>, writer: &mut Writer) -> Option<()> {
        fields::write(&case.pair?.pair, writer);
        Some(())
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let threads = input.threads().map_err(of_field)?;
        let standard_nut_load = input.standard_nut_load();
        let nut_load = input.nut_load().filter(|_| input.allowance != Allowance::Standard);
        let is_known = [&standard_nut_load, &nut_load].into_iter().flatten().any(Result::is_ok);
        let model = match input.model(&threads) {
            Ok(model) => Ok(model),
            // What the standards say stands without the model.
            Err((_, refusal)) if is_known => Err(refusal),
            Err(refused) => return Err(of_field(refused)),
        };
        Ok(Outcome {
            stated: input.stated(),
            model,
            bolt_loads: input.bolt_loads(),
            standard_nut_load,
            nuts: input.nuts(),
            nut_load,
        })
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        report::report(input, outcome)
    }
}

/// The field that a refusal is about.
fn of_field((about, refusal): (Blame, Refusal)) -> Problem {
    match about {
        Blame::Thread => THREAD.refused(refusal),
        Blame::BoltClass => BOLT_CLASS.refused(refusal),
        Blame::Bolt => BOLT_GRADE.refused(refusal),
        Blame::Allowance => ALLOWANCE.refused(refusal),
        Blame::Nut => NUT_GRADE.refused(refusal),
        Blame::Body => NUT_STYLE.refused(refusal),
        Blame::Countersunk => COUNTERSUNK.refused(refusal),
    }
}
