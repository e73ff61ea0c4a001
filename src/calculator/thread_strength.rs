//! Thread strength: what breaks or strips first, and what tapping over or cutting under costs.

use self::fields::{BOLT_GRADE, COUNTERSUNK, NUT_GRADE, NUT_STYLE};
use super::thread_fields::{self, ALLOWANCE, BOLT_CLASS, THREAD, WAY};
use super::{About, Calculator, Missed, Problem, Reader, Report, Writer};
use crate::quantity::{Area, Force, Length, Stress};
use crate::source::{Source, document};
use crate::steel::pairing::{self, Asked, Nuts};
use crate::steel::{self, Converted, Grade, Level, hardness};
use crate::table::Refusal;
use crate::thread::limits::{self, BoltLimits, NutLimits};
use crate::thread::load::{self, BoltLoads, Load};
use crate::thread::overtap::{self, Allowance};
use crate::thread::strength::nut_height::{self, Body, Style};
use crate::thread::strength::shear_area::{self, Required, Simple};
use crate::thread::strength::{Joint, Sizes, Strength, strength};
use crate::thread::{Thread, ToleranceClass, undersize};

mod fields;
mod report;
mod working;

/// The calculator.
#[derive(Debug)]
pub struct ThreadStrength;

/// What it needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Input {
    /// The thread.
    pub thread: Thread,
    /// The class of the bolt before its coat; a bolt cut under has position az.
    pub bolt_class: ToleranceClass,
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
#[derive(Debug, Clone, PartialEq)]
pub struct Outcome {
    /// Least tensile strength of the bolt, and where it is published.
    pub bolt_tensile: (Stress, Option<Source>),
    /// Least tensile strength of the nut's steel.
    pub nut_tensile: Stress,
    /// How it follows from a hardness.
    pub converted: Option<Converted>,
    /// What the standards give the bolt, where its grade is known.
    pub bolt_loads: Option<BoltLoads>,
    /// What the standards give a standard nut, where its grade and style are known.
    pub standard_nut_load: Option<Result<Load, Refusal>>,
    /// Which nuts the standards put on the bolt, where its grade is known.
    pub nuts: Option<Result<Nuts, Refusal>>,
    /// What they give this nut, where it is tapped over.
    pub nut_load: Option<Result<Load, Refusal>>,
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
    pub min: Strength,
    /// Strength with every size in the middle.
    pub nominal: Strength,
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

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let thread = input.thread;
        let bolt_tensile = bolt_tensile(input).map_err(|refusal| BOLT_GRADE.refused(refusal))?;
        let (nut_tensile, converted) = nut_tensile(input).map_err(|refusal| NUT_GRADE.refused(refusal))?;
        let body = body(input).map_err(|refusal| NUT_STYLE.refused(refusal))?;
        let countersink = nut_height::countersink(thread);
        let engagement = nut_height::effective(body.height, countersink, input.countersunk_ends)
            .map_err(|refusal| COUNTERSUNK.refused(refusal))?;
        let nut = overtap::nut(thread, input.allowance).map_err(|refusal| ALLOWANCE.refused(refusal))?;
        let usual = limits::bolt(thread, thread_fields::usual_bolt_class(thread))
            .map_err(|refusal| THREAD.refused(refusal))?;
        let joint = Joint {
            diameter: thread.diameter(),
            stress_area: thread.stress_area(),
            engagement,
            is_bell: shear_area::bell_holds(&usual, &nut.standard, thread.pitch()),
            across_flats: body.across_flats,
            bolt_tensile: bolt_tensile.0,
            nut_tensile,
        };
        let bolt = limits::bolt(thread, input.bolt_class).map_err(|refusal| BOLT_CLASS.refused(refusal))?;
        let stress_area = if input.is_undercut() {
            undersize::bolt(thread).map_err(|refusal| WAY.refused(refusal))?.stress_area
        } else {
            thread.stress_area()
        };
        let pair = pair(thread, bolt, nut.limits, Joint { stress_area, ..joint })?;
        let plain = self::pair(thread, usual, nut.standard, joint)?;
        let (here, standard) = (pair.min.strips().1.newton(), plain.min.strips().1.newton());
        let broken = plain.min.bolt_breaks.newton() - pair.min.bolt_breaks.newton();
        Ok(Outcome {
            bolt_tensile,
            nut_tensile,
            converted,
            bolt_loads: bolt_loads(input),
            standard_nut_load: nut_load(input, Allowance::Standard),
            nuts: nuts(input),
            nut_load: nut_load(input, input.allowance).filter(|_| input.allowance != Allowance::Standard),
            body,
            countersink,
            pair,
            plain,
            lost: Force::from_newton(standard - here),
            lost_share: (standard - here) / standard,
            breaking_lost: Force::from_newton(broken),
            straight: shear_area::bolt(pair.sizes, engagement)
                .map_err(|refusal| ALLOWANCE.refused(refusal))?,
            simple: shear_area::simple(thread, engagement),
            required: shear_area::required(thread, pair.sizes, nut_tensile.mpa() / bolt_tensile.0.mpa())
                .map_err(|refusal| ALLOWANCE.refused(refusal))?,
        })
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        report::report(input, outcome)
    }
}

impl Input {
    /// Whether the bolt is cut under, however that was written.
    pub fn is_undercut(&self) -> bool {
        self.bolt_class.is_undercut()
    }

    /// Whether room is made for zinc: the nut tapped over or the bolt cut under.
    pub fn is_for_zinc(&self) -> bool {
        self.is_undercut() || self.allowance != Allowance::Standard
    }
}

fn pair(thread: Thread, bolt: BoltLimits, nut: NutLimits, joint: Joint) -> Result<Pair, Problem> {
    let sizes = Sizes::least_material(thread.pitch(), &bolt, &nut);
    Ok(Pair {
        bolt,
        nut,
        joint,
        sizes,
        min: strength(&joint, sizes).map_err(|refusal| NUT_GRADE.refused(refusal))?,
        nominal: strength(&joint, Sizes::nominal(thread.pitch(), &bolt, &nut))
            .map_err(|refusal| NUT_GRADE.refused(refusal))?,
    })
}

fn bolt_tensile(input: &Input) -> Result<(Stress, Option<Source>), Refusal> {
    match input.bolt {
        BoltSteel::Tensile(tensile) => Ok((tensile, None)),
        BoltSteel::Grade(grade) => {
            let min = grade.properties(input.thread.diameter())?.tensile_min()?;
            Ok((min.value, Some(min.source)))
        }
    }
}

fn nut_tensile(input: &Input) -> Result<(Stress, Option<Converted>), Refusal> {
    let level = match input.nut {
        NutSteel::Level(level) => level,
        NutSteel::Grade(grade) => {
            let properties = grade.properties(input.thread.diameter())?;
            let min = properties.printed().find_map(|limits| limits.min);
            Level::Hardness(min.ok_or_else(|| {
                Refusal::blank(&format!("least hardness of {}", grade.name()), grade.document().memory(""))
            })?)
        }
    };
    match level {
        Level::Tensile(tensile) => Ok((tensile, None)),
        Level::Hardness(min) => {
            let converted = hardness::to_tensile(min)?;
            Ok((Stress::from_mpa(converted.to.number()), Some(converted)))
        }
    }
}

fn bolt_loads(input: &Input) -> Option<BoltLoads> {
    let BoltSteel::Grade(grade) = input.bolt else { return None };
    let strength = steel::load::bolt(grade, input.thread.diameter()).ok()?;
    Some(load::bolt(input.thread, &strength, input.is_undercut()))
}

fn nut_load(input: &Input, allowance: Allowance) -> Option<Result<Load, Refusal>> {
    let (NutSteel::Grade(grade), NutBody::Style(style)) = (input.nut, input.body) else { return None };
    Some(
        steel::load::nut(grade)
            .and_then(|nut| load::nut(input.thread, nut, style.of_loads(), allowance.tapping())),
    )
}

fn nuts(input: &Input) -> Option<Result<Nuts, Refusal>> {
    let BoltSteel::Grade(grade) = input.bolt else { return None };
    Some(pairing::nuts(Asked {
        is_structural: false,
        grade,
        diameter: input.thread.diameter(),
        is_coarse: input.thread.has_coarse_loads(),
        is_zinc_coated: input.is_for_zinc(),
    }))
}

fn body(input: &Input) -> Result<Body, Refusal> {
    match input.body {
        NutBody::Style(style) => nut_height::body(input.thread, style),
        NutBody::Own(height, across_flats) => {
            let own = document::OWN.computed("height and width of the nut");
            Ok(Body { height, across_flats, height_source: own, width_source: own, is_least_width: true })
        }
    }
}
