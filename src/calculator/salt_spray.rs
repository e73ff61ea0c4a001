//! Salt spray: hours where a standard states them, and why a hot-dip coat has none.

use super::{
    About, Bar, Calculator, Caution, Choice, Example, Field, FieldAbout, Figure, Finding, Link, Mark, Missed,
    Note, Picture, Problem, Reader, Report, Section, Writer, chosen_by_key,
};
use crate::quantity::{Shown, unit};
use crate::site::salt_spray::{self, Finish, Hours};
use crate::source::document;
use crate::table::astm_b117;

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

static FINISHES: [Choice; 12] = [
    Choice::new("b633-i", "Electroplated, ASTM B633 type I: as plated"),
    Choice::new("b633-ii", "Electroplated, ASTM B633 type II: coloured chromate"),
    Choice::new("b633-iii", "Electroplated, ASTM B633 type III: colourless chromate"),
    Choice::new("b633-iv", "Electroplated, ASTM B633 type IV: phosphate"),
    Choice::new("b633-v", "Electroplated, ASTM B633 type V: colourless passivate"),
    Choice::new("b633-vi", "Electroplated, ASTM B633 type VI: coloured passivate"),
    Choice::new("f1941", "Electroplated threaded fasteners, ASTM F1941"),
    Choice::new("b695-i", "Mechanical, ASTM B695 type I: as coated"),
    Choice::new("b695-ii", "Mechanical, ASTM B695 type II: coloured chromate"),
    Choice::new("barrel-5", "Mechanical, about 5 µm, without a standard"),
    Choice::new("cell-5", "Electroplated, about 5 µm, without a standard"),
    Choice::new("kettle", "Hot-dip"),
];

static FIELDS: [FieldAbout; 1] = [FINISH.about];

const FINISH: Field<Finish> = Field::choice("finish", "Finish", &FINISHES, "b633-ii");

chosen_by_key!(Finish, Self::from_key);

impl Calculator for SaltSpray {
    const ABOUT: About = About {
        id: "salt-spray",
        title: "Salt spray",
        answers: "Gives hours in the salt spray where a standard states them, and says where hours mean nothing.",
        fields: &FIELDS,
        examples: &[
            Example { title: "Electroplate with a coloured chromate", pairs: &[("finish", "b633-ii")] },
            Example { title: "About 5 µm of mechanical zinc", pairs: &[("finish", "barrel-5")] },
            Example { title: "Mechanical zinc with a chromate", pairs: &[("finish", "b695-ii")] },
        ],
    };
    type Input = Finish;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Result<Finish, Missed> {
        reader.get(&FINISH)
    }

    fn write(finish: &Finish, writer: &mut Writer) {
        writer.put(&FINISH, *finish);
    }

    fn solve(finish: &Finish) -> Result<Outcome, Problem> {
        match (finish, salt_spray::hours(*finish)) {
            (_, Ok(hours)) => Ok(Outcome::Stated(hours)),
            (Finish::HotDip, Err(_)) => Ok(Outcome::NoMeasure),
            (_, Err(refusal)) => Err(FINISH.refused(refusal)),
        }
    }

    fn explain(finish: &Finish, outcome: &Outcome) -> Report {
        let mut report = Report {
            sections: vec![about_5_um()],
            cautions: vec![Caution::StandardFirst],
            notes: vec![Note::sourced(
                "Hours in the salt spray compare one batch with another of the same finish; they do not convert \
                 into years.",
                document::ASTM_B117.memory("significance and use"),
            )],
            picture: Some(picture(finish)),
            ..Report::default()
        };
        match outcome {
            Outcome::NoMeasure => {
                report.headline = "Hot-dip: hours are not given; see its years by place.".to_owned();
                report.findings = vec![
                    Finding::new(Mark::Note, salt_spray::WHY_NOT_HOT_DIP, salt_spray::HOT_DIP)
                        .opens(Link { calculator: "life", pairs: vec![("thickness", "50 µm".to_owned())] }),
                ];
            }
            Outcome::Stated(hours) => state(&mut report, finish, *hours),
        }
        report
    }
}

fn state(report: &mut Report, finish: &Finish, hours: Hours) {
    match hours.hours.map(shown) {
        Some(min) => {
            report.headline = format!("At least {min} to {}", hours.until);
            let name = format!("Hours to {}", hours.until);
            report.figures = vec![Figure::one("", name, min).source(hours.source)];
            report.working.table("hours as the source states them", "h", min, hours.source);
        }
        None => {
            report.headline = format!("{} asks for no hours with this finish", hours.source.document.name);
            report.figures = vec![Figure::words("Hours", "none asked").source(hours.source)];
        }
    }
    if let Finish::B695(_) = finish {
        let refusal = salt_spray::red_rust_of_mechanical();
        report.findings.push(Finding::new(Mark::Note, refusal.to_string(), refusal.source()));
    }
}

fn shown(hours: u32) -> Shown {
    Shown { number: f64::from(hours), unit: &unit::HOUR, decimals: 0 }
}

/// The rule of the trade that compares the two thin coats.
fn about_5_um() -> Section {
    Section {
        title: "About 5 µm of zinc, by common practice".into(),
        figures: vec![
            Figure::one("", "Mechanical", shown(astm_b117::MECHANICAL_5_UM)).source(astm_b117::ABOUT_5_UM),
            Figure::one("", "Electroplated", shown(astm_b117::ELECTROPLATED_5_UM))
                .source(astm_b117::ABOUT_5_UM),
        ],
    }
}

/// The hours that are known, side by side.
fn picture(finish: &Finish) -> Picture {
    let bars = FINISHES.iter().filter_map(|choice| {
        let of_choice = Finish::from_key(choice.key)?;
        let hours = salt_spray::hours(of_choice).ok()?.hours?;
        Some(Bar {
            label: choice.label.into(),
            from: Shown { number: 0.0, unit: &unit::HOUR, decimals: 0 },
            to: shown(hours),
            marked: of_choice == *finish,
        })
    });
    Picture::Bars {
        title: "Hours in the salt spray that are stated, by finish.".into(),
        bars: bars.collect(),
        line: None,
        logarithmic: false,
    }
}
