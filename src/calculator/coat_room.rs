//! Room for a coat: which classes of bolt and nut to order so that a coat fits.

use super::thread_fields::THREAD;
use super::{About, Calculator, Missed, Problem, Reader, Report, Writer};
use crate::quantity::{Length, Unit};
use crate::source::{Source, document};
use crate::table::Refusal;
use crate::table::iso_965_1::Position;
use crate::table::iso_4042_threads::Column;
use crate::thread::coat_room::{self, Coated, NutChoice, Pair};
use crate::thread::fit::GROWTH;
use crate::thread::{Thread, ToleranceClass, overtap, undersize};

mod fields;
mod report;
mod working;

/// The calculator.
#[derive(Debug)]
pub struct CoatRoom;

/// What it needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Input {
    /// The thread.
    pub thread: Thread,
    /// The coat that must fit: its greatest thickness, or its nominal one by ISO 4042.
    pub coat: Length,
    /// The unit in which coats are shown.
    pub coat_unit: &'static Unit,
    /// By which rule.
    pub rule: Method,
}

/// By which rule it is judged whether a coat fits.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Method {
    /// The worst corner of bolt, coat and nut.
    Corner {
        /// How unevenly the coat lies.
        unevenness: f64,
        /// Which threads carry it.
        coated: Coated,
        /// The share that reaches the inside of the nut, where it is shared.
        inside: f64,
    },
    /// ISO 4042:1999, by deviation and length.
    Iso4042(Column),
    /// A quarter of the bolt's allowance: ASME B1.13M, ASTM F1941.
    Quarter,
}

/// The most pairs that are tried.
const PAIRS: usize = 9;

/// What it finds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outcome {
    /// The pairs tried, the one nearest to stock first.
    pub answers: [Option<Answer>; PAIRS],
    /// The first that takes the coat.
    pub first: Option<Answer>,
    /// The diametral allowance on a standard nut with which a usual bolt takes it.
    pub allowance: Length,
}

/// A pair and the thickest coat that it takes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Answer {
    /// Bolt and nut.
    pub pair: Pair,
    /// The thickest coat.
    pub thickest: Length,
    /// The rule, and how it is known.
    pub source: Source,
}

impl Calculator for CoatRoom {
    const ABOUT: About = About {
        id: "coat-room",
        title: "Class for a coat",
        answers: "Says which classes of bolt and nut to order so that a coat of a wanted thickness fits.",
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

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let Input { thread, coat, rule, .. } = *input;
        if matches!(rule, Method::Iso4042(_)) && !thread.is_metric() {
            return Err(fields::RULE.refused(Refusal::not_covered(
                &thread.to_string(),
                "metric threads",
                document::ISO_4042_1999.read("Table 2"),
            )));
        }
        let mut answers = [None; PAIRS];
        for (answer, &pair) in answers.iter_mut().zip(coat_room::pairs(thread)) {
            // A pair that a table does not have for this thread is not offered.
            *answer = answer_of(thread, pair, rule).unwrap_or_default();
        }
        let takes = |answer: &Answer| coat.mm() <= answer.thickest.mm() + 1e-9;
        let (unevenness, parts) = match rule {
            Method::Corner { unevenness, coated, inside } => (unevenness, coated.parts(inside)),
            Method::Iso4042(_) | Method::Quarter => (0.0, 1.0),
        };
        let usual = overtap::usual_bolt_class(thread);
        let allowance = coat_room::allowance_needed(thread, usual, coat, unevenness, parts)
            .map_err(|refusal| THREAD.refused(refusal))?;
        Ok(Outcome { answers, first: answers.into_iter().flatten().find(takes), allowance })
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        report::report(input, outcome)
    }
}

/// The thickest coat of a pair by a rule; `None` where the rule does not speak of the pair.
fn answer_of(thread: Thread, pair: Pair, rule: Method) -> Result<Option<Answer>, Refusal> {
    let is_standard_nut = pair.nut == NutChoice::ToleranceClass(overtap::standard_class(thread));
    let (thickest, source) = match rule {
        Method::Corner { unevenness, coated, inside } => {
            (coat_room::thickest(thread, pair, unevenness, coated.parts(inside))?, GROWTH)
        }
        Method::Quarter if is_standard_nut && !is_undercut(pair.bolt) => {
            (coat_room::quarter(thread, pair.bolt)?, coat_room::quarter_source(thread))
        }
        Method::Iso4042(column) if is_standard_nut => {
            let Some(position) = position(pair.bolt) else { return Ok(None) };
            match coat_room::iso_4042_max(thread.pitch(), position, column)? {
                Some(printed) => (printed.value, printed.source),
                None => return Ok(None),
            }
        }
        _ => return Ok(None),
    };
    Ok(Some(Answer { pair, thickest, source }))
}

fn is_undercut(class: ToleranceClass) -> bool {
    class == undersize::CLASS
}

fn position(class: ToleranceClass) -> Option<Position> {
    let ToleranceClass::Bolt(class) = class else { return None };
    class.position.of_iso_965_1().filter(|position| *position != Position::BoltH)
}
