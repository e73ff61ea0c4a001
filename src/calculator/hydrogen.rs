//! Hydrogen risk: which documents' limits a steel meets or passes, what each asks for, and the verdict.

use super::steel_fields::{DIAMETERS, GRADES};
use super::{
    About, Bound, Calculator, Choice, Example, FieldAbout as Field, HARDNESS, Missed, Problem, Reader, Report,
};
use crate::coat::Process;
use crate::quantity::{Hardness, Length, Scale, Shown, Stress, Unit, unit};
use crate::rule::{Cleaning, SteelFacts};
use crate::steel::bake::{self, Bake};
use crate::steel::{Grade, Hardest, Level, Measure, State, Steel};
use crate::table::{Refusal, iso_2081};

mod report;

/// The calculator.
#[derive(Debug)]
pub struct HydrogenRisk;

/// What it needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Input {
    /// How the steel is known.
    pub steel: Known,
    /// Whether its surface was hardened apart from its core.
    pub case_hardened: bool,
    /// Whether it was bent cold.
    pub cold_worked: bool,
    /// The process asked about.
    pub process: Process,
    /// How the steel is cleaned.
    pub cleaning: Cleaning,
}

/// How the steel is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Known {
    /// By its grade and nominal diameter.
    Grade(Grade, Length),
    /// By its greatest hardness.
    Hardness(Hardness),
    /// By its greatest tensile strength.
    Tensile(Stress),
}

/// What it finds.
#[derive(Debug, Clone, PartialEq)]
pub struct Outcome {
    /// The steel, as the rules judge it.
    pub steel: SteelFacts,
    /// The hardest end in HRC, HV and MPa; a refusal where no table leads there.
    pub hardest: [Result<Hardest, Refusal>; 3],
    /// The bake after electroplating by ASTM B850.
    pub bake: Result<Option<Bake>, Refusal>,
    /// The bake of the earlier ISO 2081, for a bolt whose section is known.
    pub bake_by_section: Option<&'static iso_2081::Row>,
}

static KNOWN: [Choice; 3] = [
    Choice::new("grade", "Grade or property class"),
    Choice::new("hardness", "Hardness"),
    Choice::new("tensile", "Tensile strength"),
];
static YES_NO: [Choice; 2] = [Choice::new("no", "No"), Choice::new("yes", "Yes")];
static PROCESSES: [Choice; 3] = [
    Choice::new("kettle", "Hot-dip (kettle)"),
    Choice::new("barrel", "Mechanical (barrel)"),
    Choice::new("cell", "Electroplating (cell)"),
];
static CLEANINGS: [Choice; 4] = [
    Choice::new("acid", "Acid pickle"),
    Choice::new("inhibited", "Inhibited acid, short"),
    Choice::new("alkaline", "Alkaline, without cathodic current"),
    Choice::new("mechanical", "Mechanical (blast), at most a flash pickle"),
];
static SCALES: [&Unit; 4] = [&unit::HRC, &unit::HV, &unit::HB, &unit::HRB];
static STRESSES: [&Unit; 2] = [&unit::MPA, &unit::KSI];
static LENGTHS: [&Unit; 2] = [&unit::MM, &unit::INCH];

static FIELDS: [Field; 9] = [
    Field::choice("known", "Steel known by", &KNOWN, "grade"),
    Field::choice("grade", "Grade", &GRADES, "10.9").when("known", &["grade"]),
    Field::quantity("diameter", "Nominal diameter", &LENGTHS, DIAMETERS, "20 mm")
        .hint("Some grades ask for another hardness above a certain size.")
        .when("known", &["grade"]),
    Field::quantity(
        "hardness",
        "Greatest hardness",
        &SCALES,
        HARDNESS,
        "39 HRC",
    )
    .hint("The hardest reading of the lot, or the greatest that is allowed; of the surface if it is case-hardened.")
    .when("known", &["hardness"]),
    Field::quantity(
        "tensile",
        "Greatest tensile strength",
        &STRESSES,
        Bound::Between(
            Shown { number: 255.0, unit: &unit::MPA, decimals: 0 },
            Shown { number: 2180.0, unit: &unit::MPA, decimals: 0 },
            "the range of the conversion table of ISO 18265",
        ),
        "1100 MPa",
    )
    .when("known", &["tensile"]),
    Field::choice("case", "Case-hardened", &YES_NO, "no")
        .hint("A surface hardened apart from its core, as on many tapping screws."),
    Field::choice("cold", "Bent or formed cold", &YES_NO, "no")
        .hint("After any heat treatment: hooks, eyes, U-bolts."),
    Field::choice("process", "Process", &PROCESSES, "kettle").hint("The other two are judged beside it."),
    Field::choice("cleaning", "Cleaning before the zinc", &CLEANINGS, "acid"),
];

impl Calculator for HydrogenRisk {
    const ABOUT: About = About {
        id: "hydrogen",
        title: "Hydrogen risk",
        answers: "Says, rule by rule, whether hydrogen stands against a zinc coat on this steel, and what to do.",
        fields: &FIELDS,
        examples: &[
            Example {
                title: "A class 10.9 bolt for the kettle",
                pairs: &[("grade", "10.9"), ("diameter", "20 mm")],
            },
            Example {
                title: "A grade 8 bolt, electroplated",
                pairs: &[("grade", "j429-8"), ("diameter", "3/4 in"), ("process", "cell")],
            },
            Example {
                title: "A structural bolt that takes no coat of zinc",
                pairs: &[("grade", "a490"), ("diameter", "1 in"), ("process", "barrel")],
            },
            Example {
                title: "A socket screw in the barrel",
                pairs: &[
                    ("grade", "a574"),
                    ("diameter", "10 mm"),
                    ("process", "barrel"),
                    ("cleaning", "inhibited"),
                ],
            },
            Example {
                title: "A lot known by its hardness, blasted",
                pairs: &[("known", "hardness"), ("hardness", "36.5 HRC"), ("cleaning", "mechanical")],
            },
            Example {
                title: "A case-hardened tapping screw",
                pairs: &[("known", "hardness"), ("hardness", "450 HV"), ("case", "yes")],
            },
            Example {
                title: "A mild steel U-bolt, bent cold",
                pairs: &[("known", "tensile"), ("tensile", "420 MPa"), ("cold", "yes")],
            },
            Example {
                title: "A hard spring ring, electroplated",
                pairs: &[("known", "hardness"), ("hardness", "52 HRC"), ("process", "cell")],
            },
        ],
    };
    type Input = Input;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
        reader.by_name(|reader| {
            let known = reader.choice("known", |key| Some(key.to_owned()));
            let grade = reader.choice("grade", Grade::of_key);
            let diameter = reader.quantity::<Length>("diameter");
            let hardness = reader.hardness("hardness");
            let tensile = reader.quantity::<Stress>("tensile");
            let yes = |key: &str| Some(key == "yes");
            let case_hardened = reader.choice("case", yes);
            let cold_worked = reader.choice("cold", yes);
            let process = reader.choice("process", Process::from_key);
            let cleaning = reader.choice("cleaning", |key| match key {
                "acid" => Some(Cleaning::Acid),
                "inhibited" => Some(Cleaning::InhibitedAcid),
                "alkaline" => Some(Cleaning::Alkaline),
                "mechanical" => Some(Cleaning::Mechanical),
                _ => None,
            });
            let steel = match known?.as_str() {
                "grade" => Known::Grade(grade?, diameter?),
                "hardness" => Known::Hardness(hardness?),
                _ => Known::Tensile(tensile?),
            };
            Some(Input {
                steel,
                case_hardened: case_hardened?,
                cold_worked: cold_worked?,
                process: process?,
                cleaning: cleaning?,
            })
        })
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let (steel, field, label) = match input.steel {
            Known::Grade(grade, diameter) => match Steel::grade(grade, diameter) {
                Ok(steel) => (steel, "grade", "Grade"),
                Err(refusal) => return Err(Problem::refused("diameter", "Nominal diameter", refusal)),
            },
            Known::Hardness(hardness) => (Steel::Hardness(hardness), "hardness", "Greatest hardness"),
            Known::Tensile(tensile) => (Steel::Tensile(tensile), "tensile", "Greatest tensile strength"),
        };
        let state = State { steel, case_hardened: input.case_hardened, cold_worked: input.cold_worked };
        let steel = SteelFacts::new(state, input.cleaning);
        if let Err(refusal) = &steel.levels {
            return Err(Problem::refused(field, label, refusal.clone()));
        }
        let hardest = [Measure::Scale(Scale::Hrc), Measure::Scale(Scale::Hv), Measure::Tensile]
            .map(|measure| state.hardest(measure));
        let [_, _, tensile] = &hardest;
        let bake_by_section = match (input.steel, tensile) {
            (Known::Grade(grade, diameter), Ok(Hardest { level: Level::Tensile(tensile), .. }))
                if !grade.is_nut() && !grade.is_washer() =>
            {
                bake::by_section(*tensile, diameter)
            }
            _ => None,
        };
        Ok(Outcome { steel, hardest, bake: bake::by_b850(&state), bake_by_section })
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        report::report(input, outcome)
    }
}
