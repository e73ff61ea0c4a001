//! Room for a coat: which classes of bolt and nut to order so that a coat fits.

use super::thread_fields;
use super::{
    About, Bound, Calculator, Caution, Choice, Example, FieldAbout as Field, Missed, Problem, Reader, Report,
    Verdict,
};
use crate::quantity::{Length, PlainNumber, Quantity, Shown, Unit, unit};
use crate::source::{Source, document};
use crate::table::Refusal;
use crate::table::iso_965_1::Position;
use crate::table::iso_4042_threads::Column;
use crate::thread::class::BoltPosition;
use crate::thread::coat_room::{self, Coated, NutChoice, Pair};
use crate::thread::fit::GROWTH;
use crate::thread::{Thread, ToleranceClass, overtap};

mod answer;

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
    /// The worst corner of bolt, coat and nut, with this unevenness.
    Corner(f64, Coated),
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

static COATS: [&Unit; 4] = [&unit::UM, &unit::MM, &unit::MIL, &unit::INCH];
static RULES: [Choice; 3] = [
    Choice::new("corner", "Worst corner of bolt, coat and nut"),
    Choice::new("iso4042", "ISO 4042:1999, plated coats by deviation and length"),
    Choice::new("quarter", "A quarter of the bolt's allowance (ASME B1.13M, ASTM F1941)"),
];
static MEASURED: [Choice; 4] = [
    Choice::new("local", "At one place, any length"),
    Choice::new("batch5", "Batch average, length up to 5 diameters"),
    Choice::new("batch10", "Batch average, length over 5 up to 10 diameters"),
    Choice::new("batch15", "Batch average, length over 10 up to 15 diameters"),
];
static COATED: [Choice; 2] = [
    Choice::new("bolt", "The bolt only; the nut is tapped after its coat"),
    Choice::new("both", "Bolt and nut (mechanical zinc, plating)"),
];

static FIELDS: [Field; 6] = [
    thread_fields::THREAD,
    Field::quantity(
        "coat",
        "Coat that must fit",
        &COATS,
        Bound::PositiveTo(
            Shown { number: 1.0, unit: &unit::MM, decimals: 0 },
            "zinc coats on threads are far thinner; check the unit",
        ),
        "53 µm",
    )
    .hint("Its greatest thickness; by ISO 4042 its nominal thickness."),
    Field::choice("rule", "Judged by", &RULES, "corner"),
    thread_fields::UNEVENNESS.when("rule", &["corner"]),
    Field::choice("coated", "Which threads carry it", &COATED, "bolt").when("rule", &["corner"]),
    Field::choice("measured", "Thickness measured", &MEASURED, "local").when("rule", &["iso4042"]),
];

impl Calculator for CoatRoom {
    const ABOUT: About = About {
        id: "coat-room",
        title: "Class for a coat",
        answers: "Says which classes of bolt and nut to order so that a coat of a wanted thickness fits.",
        fields: &FIELDS,
        examples: &[
            Example {
                title: "Mechanical zinc of 53 µm on M12, nuts coated as well",
                pairs: &[("thread", "M12"), ("spread", "10"), ("coated", "both")],
            },
            Example {
                title: "Plated 8 µm on M10 x 80 by ISO 4042",
                pairs: &[("thread", "M10"), ("coat", "8"), ("rule", "iso4042"), ("measured", "batch10")],
            },
            Example {
                title: "Plated 0.4 mil on 3/8-16 by the quarter rule",
                pairs: &[("thread", "3/8-16 UNC"), ("coat", "0.4 mil"), ("rule", "quarter")],
            },
            Example { title: "Hot-dip up to 100 µm on M20", pairs: &[("thread", "M20"), ("coat", "100")] },
            Example {
                title: "Hot-dip up to 4 mil on 1/2-13",
                pairs: &[("thread", "1/2-13 UNC"), ("coat", "4 mil"), ("spread", "10")],
            },
            Example {
                title: "A thin even coat that a stock bolt takes",
                pairs: &[("thread", "M16"), ("coat", "8"), ("spread", "0")],
            },
        ],
    };
    type Input = Input;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
        reader.by_name(|reader| {
            let designation = reader.parsed("thread", crate::thread::Designation::read);
            let coat = reader.number_and_unit("coat");
            let rule = reader.choice("rule", |key| RULES.iter().map(|c| c.key).find(|known| *known == key));
            let unevenness = reader.quantity::<PlainNumber>("spread");
            let coated = reader.choice("coated", |key| match key {
                "bolt" => Some(Coated::Bolt),
                "both" => Some(Coated::Both),
                _ => None,
            });
            let column = reader.choice("measured", |key| match key {
                "local" => Some(Column::Local),
                "batch5" => Some(Column::UpTo5),
                "batch10" => Some(Column::UpTo10),
                "batch15" => Some(Column::UpTo15),
                _ => None,
            });
            let rule = match rule? {
                "iso4042" => Method::Iso4042(column?),
                "quarter" => Method::Quarter,
                _ => Method::Corner(unevenness?.one(), coated?),
            };
            let (number, coat_unit) = coat?;
            Some(Input { thread: designation?.thread, coat: Length::of(number, coat_unit), coat_unit, rule })
        })
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let refused = |name: &'static str| {
            let label = FIELDS.iter().find(|field| field.key == name).map_or("", |field| field.label);
            move |refusal: Refusal| Problem::refused(name, label, refusal)
        };
        let Input { thread, coat, rule, .. } = *input;
        if matches!(rule, Method::Iso4042(_)) && !thread.is_metric() {
            return Err(refused("rule")(Refusal::not_covered(
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
        let (unevenness, coated) = match rule {
            Method::Corner(unevenness, coated) => (unevenness, coated),
            Method::Iso4042(_) | Method::Quarter => (0.0, Coated::Bolt),
        };
        let usual = thread_fields::usual_bolt_class(thread);
        let allowance = coat_room::allowance_needed(thread, usual, coat, unevenness, coated)
            .map_err(refused("thread"))?;
        Ok(Outcome { answers, first: answers.into_iter().flatten().find(takes), allowance })
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        let finding = answer::finding(input, outcome);
        Report {
            verdict: Some(Verdict::of(std::slice::from_ref(&finding))),
            headline: finding.text.clone().into_owned(),
            figures: answer::figures(input, outcome),
            sections: vec![answer::tried(input, outcome)],
            findings: vec![finding],
            working: answer::working(input, outcome),
            cautions: vec![Caution::StandardFirst],
            notes: answer::notes(input),
            picture: Some(answer::picture(input, outcome)),
        }
    }
}

/// The thickest coat of a pair by a rule; `None` where the rule does not speak of the pair.
fn answer_of(thread: Thread, pair: Pair, rule: Method) -> Result<Option<Answer>, Refusal> {
    let is_standard_nut = pair.nut == NutChoice::ToleranceClass(overtap::standard_class(thread));
    let (thickest, source) = match rule {
        Method::Corner(unevenness, coated) => {
            (coat_room::thickest(thread, pair, unevenness, coated)?, GROWTH)
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
    class == crate::thread::undersize::CLASS
}

fn position(class: ToleranceClass) -> Option<Position> {
    let ToleranceClass::Bolt(class) = class else { return None };
    match class.position {
        BoltPosition::G => Some(Position::BoltG),
        BoltPosition::F => Some(Position::BoltF),
        BoltPosition::E => Some(Position::BoltE),
        BoltPosition::H | BoltPosition::Az => None,
    }
}
