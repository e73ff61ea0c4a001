//! Tempering margin: whether the heat of the bath takes the temper out of the steel.

use super::steel_fields::{DIAMETERS, GRADES};
use super::{
    About, Bound, Calculator, Choice, Example, Fault, FieldAbout as Field, Missed, Problem, Reader, Report,
};
use crate::quantity::{Length, Shown, Temperature, Time, Unit, unit};
use crate::source::{common_practice, document};
use crate::steel::tempering::{self, Dip, Temper};
use crate::steel::{Grade, Properties};

mod report;

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

static KNOWN: [Choice; 2] =
    [Choice::new("grade", "Grade or property class"), Choice::new("temper", "Its actual temper only")];
static LENGTHS: [&Unit; 2] = [&unit::MM, &unit::INCH];
static TEMPERATURES: [&Unit; 2] = [&unit::CELSIUS, &unit::FAHRENHEIT];
static TEMPER_TIMES: [&Unit; 2] = [&unit::HOUR, &unit::MINUTE];
static DIP_TIMES: [&Unit; 2] = [&unit::MINUTE, &unit::SECOND];

static FIELDS: [Field; 7] = [
    Field::choice("known", "Steel known by", &KNOWN, "grade"),
    Field::choice("grade", "Grade", &GRADES, "10.9").when("known", &["grade"]),
    Field::quantity("diameter", "Nominal diameter", &LENGTHS, DIAMETERS, "20 mm")
        .hint("From M27 a class 10.9 bolt is kept out of the high-temperature bath.")
        .when("known", &["grade"]),
    Field::quantity(
        "temper",
        "Actual tempering temperature",
        &TEMPERATURES,
        Bound::Between(
            Shown { number: 150.0, unit: &unit::CELSIUS, decimals: 0 },
            Shown { number: 720.0, unit: &unit::CELSIUS, decimals: 0 },
            "steels for fasteners are tempered in this range",
        ),
        "",
    )
    .hint("From the maker's certificate. Left empty, the least of the grade's standard is taken.")
    .optional(),
    Field::quantity(
        "temper_time",
        "Time of the temper",
        &TEMPER_TIMES,
        Bound::Between(
            Shown { number: 0.01, unit: &unit::HOUR, decimals: 2 },
            Shown { number: 48.0, unit: &unit::HOUR, decimals: 0 },
            "a temper lasts from a minute to two days",
        ),
        "1 h",
    )
    .hint("One hour is assumed where only the temperature is known.")
    .source(tempering::ONE_HOUR_ASSUMED),
    Field::quantity(
        "bath",
        "Temperature of the bath",
        &TEMPERATURES,
        Bound::Between(
            Shown { number: 420.0, unit: &unit::CELSIUS, decimals: 0 },
            Shown { number: 650.0, unit: &unit::CELSIUS, decimals: 0 },
            "zinc melts just below 420 °C, and no bath is run so hot",
        ),
        "860 °F",
    )
    .hint("The usual bath is 860 °F, which is 460 °C.")
    .source(common_practice("usual bath temperature")),
    Field::quantity(
        "dip",
        "Time in the bath",
        &DIP_TIMES,
        Bound::Between(
            Shown { number: 0.05, unit: &unit::MINUTE, decimals: 2 },
            Shown { number: 60.0, unit: &unit::MINUTE, decimals: 0 },
            "fasteners stay in the zinc for minutes",
        ),
        "5 min",
    )
    .hint("The whole time in the zinc; the part is taken to be as hot as the bath all along.")
    .source(document::GALVANIZING_TEXT.memory("1.5 to 5 min for spun fasteners")),
];

impl Calculator for TemperingMargin {
    const ABOUT: About = About {
        id: "tempering",
        title: "Tempering margin",
        answers: "Says how far the bath stays from the temper of the steel, and whether the dip softens it.",
        fields: &FIELDS,
        examples: &[
            Example {
                title: "A class 10.9 bolt at the least temper of its class",
                pairs: &[("bath", "860 °F")],
            },
            Example { title: "465 °C for 5 min is like one hour at 425 °C", pairs: &[("bath", "465 °C")] },
            Example {
                title: "A socket screw",
                pairs: &[("grade", "a574"), ("diameter", "10 mm"), ("bath", "860 °F")],
            },
            Example {
                title: "A stud for heat",
                pairs: &[("grade", "a193-b7"), ("diameter", "3/4 in"), ("bath", "860 °F")],
            },
            Example {
                title: "A large class 10.9 bolt in a high-temperature bath",
                pairs: &[("grade", "10.9"), ("diameter", "30 mm"), ("bath", "545 °C"), ("dip", "3 min")],
            },
            Example {
                title: "A structural bolt that is not hot-dipped at all",
                pairs: &[("grade", "a490"), ("diameter", "1 in")],
            },
            Example {
                title: "A class 10.9 bolt with its certificate",
                pairs: &[
                    ("grade", "10.9"),
                    ("temper", "500 °C"),
                    ("temper_time", "90 min"),
                    ("bath", "455 °C"),
                ],
            },
            Example {
                title: "A steel known by its temper only",
                pairs: &[("known", "temper"), ("temper", "450 °C"), ("bath", "460 °C"), ("dip", "3 min")],
            },
            Example { title: "A bolt that is not tempered", pairs: &[("grade", "4.6")] },
        ],
    };
    type Input = Input;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
        reader.by_name(|reader| {
            let by_grade = reader.choice("known", |key| Some(key == "grade"));
            let grade = reader.choice("grade", Grade::of_key);
            let diameter = reader.quantity::<Length>("diameter");
            let temper = reader.quantity::<Temperature>("temper");
            let time = reader.quantity::<Time>("temper_time");
            let bath = reader.quantity::<Temperature>("bath");
            let dip = reader.quantity::<Time>("dip");
            let by_grade = by_grade?;
            if !by_grade && reader.is_empty("temper") {
                reader.problem("temper", Fault::Missing);
            }
            let unreadable = temper.is_none() && !reader.is_empty("temper");
            if unreadable || (temper.is_none() && !by_grade) {
                return None;
            }
            Some(Input {
                grade: if by_grade { Some((grade?, diameter?)) } else { None },
                temper: match temper {
                    Some(temperature) => Some(Temper::actual(temperature, time?)),
                    None => None,
                },
                bath: bath?,
                dip: dip?,
            })
        })
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let properties = match input.grade {
            Some((grade, diameter)) => match grade.properties(diameter) {
                Ok(properties) => Some(properties),
                Err(refusal) => return Err(Problem::refused("diameter", "Nominal diameter", refusal)),
            },
            None => None,
        };
        let dip = Dip { grade: properties, temper: input.temper, bath: input.bath, time: input.dip };
        match tempering::effect(&dip) {
            Ok(heat) => Ok(Outcome { properties, heat }),
            Err(refusal) => Err(Problem::refused("temper", "Actual tempering temperature", refusal)),
        }
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        report::report(input, outcome)
    }
}
