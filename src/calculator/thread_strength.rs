//! Thread strength: what breaks or strips first, and what tapping over or cutting under costs.

use super::thread_fields::{self, Ruler};
use super::{About, Bound, Calculator, Choice, Example, Fault, Field, Problem, Reader, Report, Verdict};
use crate::quantity::{Area, Dimension, Force, Hardness, Length, Quantity, Scale, Shown, Stress, Unit, unit};
use crate::source::{Source, document};
use crate::steel::{Converted, Grade, Level, hardness};
use crate::table::Refusal;
use crate::thread::limits::{self, BoltLimits, NutLimits};
use crate::thread::overtap::{self, Allowance};
use crate::thread::strength::nut_height::{self, Body, Style};
use crate::thread::strength::shear_area::{self, Required, Simple};
use crate::thread::strength::{Joint, Sizes, Strength, strength};
use crate::thread::{Class, Thread, undercut};

mod answer;
mod finding;
mod steps;

/// The calculator.
#[derive(Debug)]
pub struct ThreadStrength;

/// What it needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Input {
    /// The thread.
    pub thread: Thread,
    /// Whether the bolt is cut under; the nut is then a standard one.
    pub is_undercut: bool,
    /// The class of the bolt before its coat.
    pub bolt_class: Class,
    /// How the nut is tapped.
    pub allowance: Allowance,
    /// The bolt's grade, or its tensile strength.
    pub bolt: BoltSteel,
    /// The nut's grade, or its own level.
    pub nut: NutSteel,
    /// The nut's body.
    pub body: NutBody,
    /// How many ends of the nut are countersunk.
    pub countersunk_ends: u8,
}

/// The steel of the bolt.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum BoltSteel {
    /// By its grade, at the least strength of it.
    Grade(Grade),
    /// By its own tensile strength.
    Tensile(Stress),
}

/// The steel of the nut.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NutSteel {
    /// By its grade, at the least hardness of it.
    Grade(Grade),
    /// By its own hardness or tensile strength.
    Level(Level),
}

/// The body of the nut.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NutBody {
    /// Of a standard.
    Style(Style),
    /// Its own height and width across flats.
    Own(Length, Length),
}

/// What it finds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outcome {
    /// Least tensile strength of the bolt, and where it is published.
    pub bolt_tensile: (Stress, Option<Source>),
    /// Least tensile strength of the nut's steel.
    pub nut_tensile: Stress,
    /// How it follows from a hardness.
    pub converted: Option<Converted>,
    /// The nut's body.
    pub body: Body,
    /// Depth of a countersink.
    pub countersink: Length,
    /// The pair in hand.
    pub pair: Pair,
    /// A usual bolt in a standard nut, all else the same.
    pub plain: Pair,
    /// Stripping strength lost against the plain pair; below zero where it is gained.
    pub lost: Force,
    /// The same as a share of the plain pair's.
    pub lost_share: f64,
    /// Breaking load lost with the stress area.
    pub breaking_lost: Force,
    /// Shear area of the bolt's thread at least material, in a nut that stays straight.
    pub straight: Area,
    /// Shear areas by the simplified formulas of FED-STD-H28.
    pub simple: Simple,
    /// Engagement by FED-STD-H28.
    pub required: Required,
}

/// A bolt in a nut: sizes and strength.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pair {
    /// The bolt.
    pub bolt: BoltLimits,
    /// The nut.
    pub nut: NutLimits,
    /// What is pulled.
    pub joint: Joint,
    /// Sizes at least material.
    pub sizes: Sizes,
    /// Strength at least material.
    pub least: Strength,
    /// Strength with every size in the middle.
    pub nominal: Strength,
}

const fn of(grade: Grade) -> Choice {
    Choice::new(grade.key(), grade.name())
}

static WAYS: [Choice; 2] = [
    Choice::new("over", "Nut tapped over, bolt of its usual class"),
    Choice::new("under", "Bolt cut under (6az), standard nut"),
];

static BOLTS: [Choice; 23] = [
    of(Grade::Class4_6),
    of(Grade::Class4_8),
    of(Grade::Class5_6),
    of(Grade::Class5_8),
    of(Grade::Class6_8),
    of(Grade::Class8_8),
    of(Grade::Class9_8),
    of(Grade::Class10_9),
    of(Grade::Class12_9),
    of(Grade::J429Grade1),
    of(Grade::J429Grade2),
    of(Grade::J429Grade5),
    of(Grade::J429Grade5_2),
    of(Grade::J429Grade8),
    of(Grade::J429Grade8_2),
    of(Grade::A307),
    of(Grade::A449),
    of(Grade::A354Bc),
    of(Grade::A354Bd),
    of(Grade::A325),
    of(Grade::A193B7),
    of(Grade::A574),
    Choice::new("own", "Own tensile strength"),
];

static NUTS: [Choice; 8] = [
    of(Grade::Nut5),
    of(Grade::Nut6),
    of(Grade::Nut8),
    of(Grade::Nut10),
    of(Grade::Nut12),
    of(Grade::A563Dh),
    of(Grade::A194Grade2H),
    Choice::new("own", "Own hardness or tensile strength"),
];

static STYLES: [Choice; 6] = [
    Choice::new("usual", "Usual: ISO 4032, or heavy hex for an inch thread"),
    Choice::new("iso4032", "ISO 4032, regular"),
    Choice::new("iso4033", "ISO 4033, high"),
    Choice::new("hex", "ASME B18.2.2 hex (ASTM A563 hex)"),
    Choice::new("heavy", "ASME B18.2.2 heavy hex (ASTM A563 heavy hex)"),
    Choice::new("own", "Own height and width"),
];

static ENDS: [Choice; 3] =
    [Choice::new("2", "Both ends"), Choice::new("1", "One end"), Choice::new("0", "None")];

static STRESSES: [&Unit; 2] = [&unit::MPA, &unit::KSI];
static LEVELS: [&Unit; 5] = [&unit::HV, &unit::HRC, &unit::HB, &unit::MPA, &unit::KSI];
static LENGTHS: [&Unit; 2] = [&unit::MM, &unit::INCH];

const STRESS_BOUND: Bound = Bound::Between(
    Shown { number: 200.0, unit: &unit::MPA, decimals: 0 },
    Shown { number: 2000.0, unit: &unit::MPA, decimals: 0 },
    "steel fasteners lie between",
);
const BODY_BOUND: Bound =
    Bound::PositiveTo(Shown { number: 200.0, unit: &unit::MM, decimals: 0 }, "no nut named here is larger");

static FIELDS: [Field; 13] = [
    thread_fields::THREAD,
    Field::choice("way", "Room for the zinc", &WAYS, "over"),
    thread_fields::BOLT_CLASS.when("way", &["over"]),
    thread_fields::ALLOWANCE.when("way", &["over"]),
    thread_fields::OWN_ALLOWANCE,
    Field::choice("bolt_grade", "Bolt", &BOLTS, "8.8").hint("At the least strength of its grade."),
    Field::quantity("bolt_tensile", "Tensile strength of the bolt", &STRESSES, STRESS_BOUND, "800 MPa")
        .when("bolt_grade", &["own"]),
    Field::choice("nut_grade", "Nut", &NUTS, "nut-8")
        .hint("At the least hardness of its grade, turned into a tensile strength by ISO 18265."),
    Field::quantity("nut_level", "Hardness or tensile strength of the nut", &LEVELS, STRESS_BOUND, "200 HV")
        .when("nut_grade", &["own"]),
    Field::choice("nut_style", "Height of the nut", &STYLES, "usual")
        .hint("The least height of the standard is taken."),
    Field::quantity("nut_height", "Own height", &LENGTHS, BODY_BOUND, "13 mm").when("nut_style", &["own"]),
    Field::quantity("nut_width", "Own width across flats", &LENGTHS, BODY_BOUND, "24 mm")
        .when("nut_style", &["own"]),
    Field::choice("countersunk", "Countersunk", &ENDS, "2")
        .hint("Each countersink takes 0.6 of its depth from the height that carries.")
        .source(nut_height::EFFECTIVE),
];

impl Calculator for ThreadStrength {
    const ABOUT: About = About {
        id: "thread-strength",
        title: "Thread strength",
        answers: "Says what gives way first, bolt or thread, and what tapping over or cutting under costs.",
        fields: &FIELDS,
        examples: &[
            Example { title: "M16 bolt 8.8, nut of class 8 tapped to 6AZ", pairs: &[("thread", "M16")] },
            Example {
                title: "The same with a high nut of class 10",
                pairs: &[("thread", "M16"), ("nut_grade", "nut-10"), ("nut_style", "iso4033")],
            },
            Example {
                title: "M24 bolt 10.9, heavier coat, nut 6AX of class 10",
                pairs: &[
                    ("thread", "M24"),
                    ("bolt_grade", "10.9"),
                    ("nut_grade", "nut-10"),
                    ("allowance", "ax"),
                ],
            },
            Example {
                title: "3/4-10 A325 bolt, DH heavy hex nut tapped to ASTM A563",
                pairs: &[("thread", "3/4-10 UNC-2A"), ("bolt_grade", "a325"), ("nut_grade", "a563-dh")],
            },
            Example {
                title: "M12 bolt 8.8 cut under, standard nut of class 8",
                pairs: &[("thread", "M12"), ("way", "under")],
            },
            Example {
                title: "1/2-13 bolt of grade 5, hex nut of known hardness",
                pairs: &[
                    ("thread", "1/2-13 UNC"),
                    ("bolt_grade", "j429-5"),
                    ("nut_grade", "own"),
                    ("nut_level", "24 HRC"),
                    ("nut_style", "hex"),
                ],
            },
            Example {
                title: "M8 bolt, own nut without countersinks",
                pairs: &[
                    ("thread", "M8"),
                    ("bolt_grade", "own"),
                    ("bolt_tensile", "850"),
                    ("nut_style", "own"),
                    ("nut_height", "8"),
                    ("nut_width", "13"),
                    ("countersunk", "0"),
                ],
            },
        ],
    };
    type Input = Input;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Option<Input> {
        let way = reader.choice("way", |key| Some(key == "under"));
        let bolt = thread_fields::read_bolt(reader);
        let allowance = thread_fields::read_allowance(reader, bolt.map(|(thread, _)| thread));
        let bolt_steel = read_bolt_steel(reader);
        let nut_steel = read_nut_steel(reader);
        let body = read_body(reader, bolt.map(|(thread, _)| thread));
        let ends = reader.choice("countersunk", |key| key.parse::<u8>().ok());
        let (thread, bolt_class) = bolt?;
        let is_undercut = way?;
        let (bolt_class, allowance) =
            if is_undercut { (undercut::CLASS, Allowance::Standard) } else { (bolt_class, allowance?) };
        Some(Input {
            thread,
            is_undercut,
            bolt_class,
            allowance,
            bolt: bolt_steel?,
            nut: nut_steel?,
            body: body?,
            countersunk_ends: ends?,
        })
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let thread = input.thread;
        let bolt_tensile = bolt_tensile(input).map_err(refused("bolt_grade"))?;
        let (nut_tensile, converted) = nut_tensile(input).map_err(refused("nut_grade"))?;
        let body = body(input).map_err(refused("nut_style"))?;
        let countersink = nut_height::countersink(thread);
        let engagement = nut_height::effective(body.height, countersink, input.countersunk_ends)
            .map_err(refused("countersunk"))?;
        let nut = overtap::nut(thread, input.allowance).map_err(refused("allowance"))?;
        let joint = Joint {
            diameter: thread.diameter(),
            stress_area: thread.stress_area(),
            engagement,
            across_flats: body.across_flats,
            bolt_tensile: bolt_tensile.0,
            nut_tensile,
        };
        let (bolt, stress_area) = if input.is_undercut {
            let bolt = undercut::bolt(thread).map_err(refused("way"))?;
            (bolt.limits, bolt.stress_area)
        } else {
            let bolt = limits::bolt(thread, input.bolt_class).map_err(refused("bolt_class"))?;
            (bolt, thread.stress_area())
        };
        let usual =
            limits::bolt(thread, thread_fields::usual_bolt_class(thread)).map_err(refused("thread"))?;
        let pair = pair(thread, bolt, nut.limits, Joint { stress_area, ..joint })?;
        let plain = self::pair(thread, usual, nut.standard, joint)?;
        let (here, standard) = (pair.least.strips().1.newton(), plain.least.strips().1.newton());
        let broken = plain.least.bolt_breaks.newton() - pair.least.bolt_breaks.newton();
        Ok(Outcome {
            bolt_tensile,
            nut_tensile,
            converted,
            body,
            countersink,
            pair,
            plain,
            lost: Force::from_newton(standard - here),
            lost_share: (standard - here) / standard,
            breaking_lost: Force::from_newton(broken),
            straight: shear_area::bolt(pair.sizes, engagement).map_err(refused("allowance"))?,
            simple: shear_area::simple(thread, engagement),
            required: shear_area::required(thread, pair.sizes, nut_tensile.mpa() / bolt_tensile.0.mpa())
                .map_err(refused("allowance"))?,
        })
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        let ruler = Ruler::of(input.thread);
        let findings = finding::all(input, outcome);
        Report {
            verdict: Some(Verdict::of(&findings)),
            headline: answer::headline(input, outcome),
            figures: answer::figures(input, outcome),
            sections: answer::sections(input, outcome, ruler),
            findings,
            working: steps::working(input, outcome),
            cautions: vec![super::Caution::NotReused, super::Caution::StandardFirst],
            notes: answer::notes(),
            picture: Some(answer::picture(input, outcome)),
        }
    }
}

fn refused(name: &'static str) -> impl Fn(Refusal) -> Problem {
    let label = FIELDS.iter().find(|field| field.name == name).map_or("", |field| field.label);
    move |refusal| Problem::refused(name, label, refusal)
}

fn pair(thread: Thread, bolt: BoltLimits, nut: NutLimits, joint: Joint) -> Result<Pair, Problem> {
    let sizes = Sizes::least_material(thread.pitch(), &bolt, &nut);
    Ok(Pair {
        bolt,
        nut,
        joint,
        sizes,
        least: strength(&joint, sizes).map_err(refused("nut_grade"))?,
        nominal: strength(&joint, Sizes::nominal(thread.pitch(), &bolt, &nut))
            .map_err(refused("nut_grade"))?,
    })
}

fn bolt_tensile(input: &Input) -> Result<(Stress, Option<Source>), Refusal> {
    match input.bolt {
        BoltSteel::Tensile(tensile) => Ok((tensile, None)),
        BoltSteel::Grade(grade) => {
            let least = grade.properties(input.thread.diameter())?.tensile_least()?;
            Ok((least.value, Some(least.source)))
        }
    }
}

fn nut_tensile(input: &Input) -> Result<(Stress, Option<Converted>), Refusal> {
    let level = match input.nut {
        NutSteel::Level(level) => level,
        NutSteel::Grade(grade) => {
            let properties = grade.properties(input.thread.diameter())?;
            let least = properties.printed().find_map(|limits| limits.least);
            Level::Hardness(least.ok_or_else(|| Refusal::Blank {
                what: format!("least hardness of {}", grade.name()),
                source: grade.document().memory(""),
            })?)
        }
    };
    match level {
        Level::Tensile(tensile) => Ok((tensile, None)),
        Level::Hardness(least) => {
            let converted = hardness::to_tensile(least)?;
            Ok((Stress::from_mpa(converted.to.number()), Some(converted)))
        }
    }
}

fn body(input: &Input) -> Result<Body, Refusal> {
    match input.body {
        NutBody::Style(style) => nut_height::body(input.thread, style),
        NutBody::Own(height, across_flats) => {
            let own = document::OWN.computed("height and width of the nut");
            Ok(Body { height, across_flats, height_source: own, width_source: own })
        }
    }
}

fn read_bolt_steel(reader: &mut Reader<'_>) -> Option<BoltSteel> {
    let own = reader.quantity::<Stress>("bolt_tensile");
    reader
        .choice("bolt_grade", |key| if key == "own" { Some(None) } else { Grade::of_key(key).map(Some) })?
        .map_or_else(|| own.map(BoltSteel::Tensile), |grade| Some(BoltSteel::Grade(grade)))
}

fn read_nut_steel(reader: &mut Reader<'_>) -> Option<NutSteel> {
    let own = reader.number_and_unit("nut_level").and_then(|(number, unit)| {
        if unit.dimension == Dimension::Stress {
            return Some(NutSteel::Level(Level::Tensile(Stress::of(number, unit))));
        }
        let hardness = Hardness { scale: Scale::of_unit(unit)?, number };
        if number > 0.0 {
            return Some(NutSteel::Level(Level::Hardness(hardness)));
        }
        let least = Shown { number: 0.0, unit, decimals: 0 };
        let value = Shown { number, unit, decimals: 1 };
        reader.problem("nut_level", Fault::TooSmall { value, least, exclusive: true, why: "" });
        None
    });
    reader
        .choice("nut_grade", |key| if key == "own" { Some(None) } else { Grade::of_key(key).map(Some) })?
        .map_or(own, |grade| Some(NutSteel::Grade(grade)))
}

fn read_body(reader: &mut Reader<'_>, thread: Option<Thread>) -> Option<NutBody> {
    let height = reader.quantity::<Length>("nut_height");
    let width = reader.quantity::<Length>("nut_width");
    let key = reader.choice("nut_style", |key| STYLES.iter().map(|c| c.key).find(|known| *known == key))?;
    let style = match key {
        "own" => return Some(NutBody::Own(height?, width?)),
        "iso4032" => Style::Iso4032,
        "iso4033" => Style::Iso4033,
        "hex" => Style::Hex,
        "heavy" => Style::HeavyHex,
        _ if thread?.is_metric() => Style::Iso4032,
        _ => Style::HeavyHex,
    };
    Some(NutBody::Style(style))
}
