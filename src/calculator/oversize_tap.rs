//! Oversize tap: how far to tap the nut over or cut the bolt under, and which coat then fits.

use super::thread_fields::{self, Ruler, thickness};
use super::{About, Calculator, Choice, Example, FieldAbout as Field, Missed, Problem, Reader, Report};
use crate::quantity::{Area, Unit};
use crate::table::Refusal;
use crate::thread::fit::{self, Assembly, Coat, Fit};
use crate::thread::overtap::{self, Allowance, Nut};
use crate::thread::{Thread, ToleranceClass, limits, undersize};

mod answer;
mod finding;

/// The calculator.
#[derive(Debug)]
pub struct OversizeTap;

/// What it needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Input {
    /// The thread.
    pub thread: Thread,
    /// Where the room for the zinc is made.
    pub way: Way,
    /// The class of the bolt before its coat.
    pub bolt_class: ToleranceClass,
    /// How the nut is tapped.
    pub allowance: Allowance,
    /// The coat on the bolt.
    pub coat: Coat,
    /// The unit in which coats are shown.
    pub coat_unit: &'static Unit,
}

/// Where the room for the zinc is made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Way {
    /// The nut is tapped over.
    Over,
    /// The bolt is cut under.
    Under,
}

/// What it finds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outcome {
    /// The nut.
    pub nut: Nut,
    /// The fit of the coated bolt in it.
    pub fit: Fit,
    /// Stress area of the bolt as it is cut.
    pub stress_area: Area,
    /// Stress area of the bolt of standard size.
    pub standard_area: Area,
    /// Overlap of bolt and nut at least material, as a share of 5/8 H.
    pub overlap: f64,
    /// The same with the standard nut and a bolt of the usual class.
    pub standard_overlap: f64,
}

static WAYS: [Choice; 2] = [
    Choice::new("over", "Nut tapped over, bolt of its usual class"),
    Choice::new("under", "Bolt cut under (6az), standard nut"),
];

static FIELDS: [Field; 8] = [
    thread_fields::THREAD,
    Field::choice("way", "Room for the zinc", &WAYS, "over"),
    thread_fields::BOLT_CLASS.when("way", &["over"]),
    thread_fields::ALLOWANCE.when("way", &["over"]),
    thread_fields::OWN_ALLOWANCE,
    thread_fields::COAT_MIN,
    thread_fields::COAT_MAX,
    thread_fields::UNEVENNESS,
];

impl Calculator for OversizeTap {
    const ABOUT: About = About {
        id: "oversize-tap",
        title: "Oversize tap",
        answers: "Says how far to tap the nut over, or cut the bolt under, and which coat then assembles.",
        fields: &FIELDS,
        examples: &[
            Example {
                title: "M16 bolt 6g, spun hot-dip, nut 6AZ",
                pairs: &[("thread", "M16"), ("bolt_class", "6g"), ("allowance", "az")],
            },
            Example {
                title: "1/2-13 UNC bolt 2A, hot-dip, nut tapped to ASTM A563",
                pairs: &[
                    ("thread", "1/2-13 UNC-2A"),
                    ("allowance", "a563"),
                    ("coat_least", "2 mil"),
                    ("coat_greatest", "3 mil"),
                ],
            },
            Example {
                title: "M12 bolt cut under for a standard nut",
                pairs: &[("thread", "M12"), ("way", "under")],
            },
            Example {
                title: "M20 bolt 6g, heavy coat that is not spun, nut 6AX",
                pairs: &[
                    ("thread", "M20"),
                    ("allowance", "ax"),
                    ("coat_least", "70"),
                    ("coat_greatest", "100"),
                ],
            },
            Example {
                title: "Mechanical zinc on M10, own allowance",
                pairs: &[
                    ("thread", "M10"),
                    ("allowance", "own"),
                    ("own_allowance", "0.2 mm"),
                    ("coat_least", "40"),
                    ("coat_greatest", "50"),
                    ("spread", "10"),
                ],
            },
            Example {
                title: "An even coat too thick for a standard nut",
                pairs: &[
                    ("thread", "M16"),
                    ("allowance", "standard"),
                    ("coat_least", "8"),
                    ("coat_greatest", "12"),
                    ("spread", "0"),
                ],
            },
        ],
    };
    type Input = Input;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
        reader.by_name(|reader| {
            let way = reader.choice("way", |key| match key {
                "over" => Some(Way::Over),
                "under" => Some(Way::Under),
                _ => None,
            });
            let bolt = thread_fields::read_bolt(reader);
            let allowance = thread_fields::read_allowance(reader, bolt.map(|(thread, _)| thread));
            let coat = thread_fields::read_coat(reader);
            let (thread, bolt_class) = bolt?;
            let (coat, coat_unit) = coat?;
            let (bolt_class, allowance) = match way? {
                Way::Over => (bolt_class, allowance?),
                Way::Under => (undersize::CLASS, Allowance::Standard),
            };
            Some(Input { thread, way: way?, bolt_class, allowance, coat, coat_unit })
        })
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let Input { thread, way, bolt_class, allowance, coat, .. } = *input;
        let refused = |name: &'static str| {
            let label = FIELDS.iter().find(|field| field.key == name).map_or("", |field| field.label);
            move |refusal: Refusal| Problem::refused(name, label, refusal)
        };
        let nut = overtap::nut(thread, allowance).map_err(refused("allowance"))?;
        let (bare, stress_area) = match way {
            Way::Over => {
                let bare = limits::bolt(thread, bolt_class).map_err(refused("bolt_class"))?;
                (bare, thread.stress_area())
            }
            Way::Under => {
                let bolt = undersize::bolt(thread).map_err(refused("way"))?;
                (bolt.limits, bolt.stress_area)
            }
        };
        let usual =
            limits::bolt(thread, thread_fields::usual_bolt_class(thread)).map_err(refused("thread"))?;
        Ok(Outcome {
            nut,
            fit: fit::fit(bare, coat, nut.limits),
            stress_area,
            standard_area: thread.stress_area(),
            overlap: fit::overlap(bare, nut.limits, thread.pitch()),
            standard_overlap: fit::overlap(usual, nut.standard, thread.pitch()),
        })
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        let ruler = Ruler::of(input.thread);
        let findings = finding::all(input, outcome);
        Report {
            verdict: Some(super::Verdict::of(&findings)),
            headline: headline(input, outcome, ruler),
            figures: answer::figures(input, outcome, ruler),
            sections: answer::sections(input, outcome, ruler),
            findings,
            working: answer::working(input, outcome, ruler),
            cautions: vec![super::Caution::StandardFirst],
            notes: answer::notes(input),
            picture: Some(answer::picture(input, outcome)),
        }
    }
}

fn headline(input: &Input, outcome: &Outcome, ruler: Ruler) -> String {
    let thickest = thickness(outcome.fit.thickest_even, input.coat_unit);
    let pitch = outcome.nut.limits.pitch;
    let (min, max) = (ruler.size(pitch.min).digits(), ruler.size(pitch.max));
    let what = match input.way {
        Way::Over => format!("Tap the {} nut to a pitch diameter of {min} to {max}", input.thread),
        Way::Under => {
            let bolt = outcome.fit.bare.pitch;
            format!(
                "Cut the {} bolt to a pitch diameter of {} to {} before the coat",
                input.thread,
                ruler.size(bolt.min).digits(),
                ruler.size(bolt.max)
            )
        }
    };
    let goes = match outcome.fit.assembly {
        Assembly::Assembles => "goes together",
        Assembly::OnlyEven => "goes together if it is even",
        Assembly::Binds => "does not always go together",
    };
    format!("{what}; the coat stated {goes}. An even coat of at most {thickest} assembles.")
}
