//! What the model says of a bolt in its nut.

use super::{Blame, BoltAndNut, BoltSteel, NutBody, NutSteel};
use crate::quantity::{Area, Force, Length, Stress};
use crate::source::{Source, Sourced, assumed, document};
use crate::steel::{Converted, Level, hardness};
use crate::table::Refusal;
use crate::thread::limits::{self, BoltLimits, NutLimits};
use crate::thread::strength::nut_height::{self, Body};
use crate::thread::strength::shear_area::{self, Required, Simple};
use crate::thread::strength::{Failure, Joint, Sizes, Strength, strength};
use crate::thread::{Thread, overtap, undersize};

/// What the model says of the pair.
#[derive(Debug, Clone, PartialEq)]
pub struct Model {
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
    pub min: Strength,
    /// Strength with every size in the middle.
    pub nominal: Strength,
}

/// Up to this loss against a standard pair, by the model, a pair counts as one of its standard: half of
/// what 6AZ costs M12, whose loads ISO 10684 does not reduce.
pub const LITTLE_LOST: Sourced<f64> =
    assumed("loss of stripping strength that no document would reduce a load for").gives(0.10);

impl BoltAndNut {
    /// The threads of the pair.
    ///
    /// # Errors
    /// Refuses a class or an allowance that the thread does not have, with what the refusal is about.
    pub fn threads(&self) -> Result<Threads, (Blame, Refusal)> {
        let about = |about| move |refusal| (about, refusal);
        let thread = self.thread;
        let nut = overtap::nut(thread, self.allowance).map_err(about(Blame::Allowance))?;
        let bolt = limits::bolt(thread, self.bolt_class).map_err(about(Blame::BoltClass))?;
        let usual = overtap::usual_bolt_class(thread);
        let usual = limits::bolt(thread, usual).map_err(about(Blame::Thread))?;
        let stress_area = if self.is_undercut() {
            undersize::bolt(thread).map_err(about(Blame::BoltClass))?.stress_area
        } else {
            thread.stress_area()
        };
        Ok(Threads { bolt, usual, nut: nut.limits, standard: nut.standard, stress_area })
    }

    /// What the model says.
    ///
    /// # Errors
    /// Refuses a steel whose strength is not known, a body that is not known, and what lies outside the
    /// ranges of the model.
    pub fn model(&self, threads: &Threads) -> Result<Model, (Blame, Refusal)> {
        let about = |about| move |refusal| (about, refusal);
        let thread = self.thread;
        let bolt_tensile = self.bolt_tensile().map_err(about(Blame::Bolt))?;
        let (nut_tensile, converted) = self.nut_tensile().map_err(about(Blame::Nut))?;
        let body = self.body().map_err(about(Blame::Body))?;
        let countersink = nut_height::countersink(thread);
        let engagement = nut_height::effective(body.height, countersink, self.countersunk_ends)
            .map_err(about(Blame::Countersunk))?;
        let joint = Joint {
            diameter: thread.diameter(),
            stress_area: thread.stress_area(),
            engagement,
            is_bell: shear_area::bell_holds(&threads.usual, &threads.standard, thread.pitch()),
            across_flats: body.across_flats,
            bolt_tensile: bolt_tensile.0,
            nut_tensile,
        };
        let here = Joint { stress_area: threads.stress_area, ..joint };
        let pair = pair(thread, threads.bolt, threads.nut, here).map_err(about(Blame::Nut))?;
        let plain = self::pair(thread, threads.usual, threads.standard, joint).map_err(about(Blame::Nut))?;
        let (strips, standard) = (pair.min.strips().1.newton(), plain.min.strips().1.newton());
        let broken = plain.min.bolt_breaks.newton() - pair.min.bolt_breaks.newton();
        Ok(Model {
            bolt_tensile,
            nut_tensile,
            converted,
            body,
            countersink,
            pair,
            plain,
            lost: Force::from_newton(standard - strips),
            lost_share: (standard - strips) / standard,
            breaking_lost: Force::from_newton(broken),
            straight: shear_area::bolt(pair.sizes, engagement).map_err(about(Blame::Allowance))?,
            simple: shear_area::simple(thread, engagement),
            required: shear_area::required(thread, pair.sizes, nut_tensile.mpa() / bolt_tensile.0.mpa())
                .map_err(about(Blame::Allowance))?,
        })
    }

    fn bolt_tensile(&self) -> Result<(Stress, Option<Source>), Refusal> {
        match self.bolt {
            BoltSteel::Tensile(tensile) => Ok((tensile, None)),
            BoltSteel::Grade(grade) => {
                let min = grade.properties(self.thread.diameter())?.tensile_min()?;
                Ok((min.value, Some(min.source)))
            }
        }
    }

    fn nut_tensile(&self) -> Result<(Stress, Option<Converted>), Refusal> {
        let level = match self.nut {
            NutSteel::Level(level) => level,
            NutSteel::Grade(grade) => {
                let properties = grade.properties(self.thread.diameter())?;
                let min = properties.printed().find_map(|limits| limits.min);
                Level::Hardness(min.ok_or_else(|| {
                    let what = format!("the least hardness of {}", grade.name());
                    Refusal::blank(&what, grade.document().memory("hardness"))
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

    fn body(&self) -> Result<Body, Refusal> {
        match self.body {
            NutBody::Style(style) => nut_height::body(self.thread, style),
            NutBody::Own(height, across_flats) => {
                let own = document::OWN.computed("height and width of the nut");
                Ok(Body { height, across_flats, height_source: own, width_source: own, is_least_width: true })
            }
        }
    }
}

/// The threads of a pair, before any coat.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Threads {
    bolt: BoltLimits,
    usual: BoltLimits,
    nut: NutLimits,
    standard: NutLimits,
    stress_area: Area,
}

impl Model {
    /// Whether the bolt breaks before a thread strips, at least material.
    pub fn bolt_breaks(&self) -> bool {
        self.pair.min.first().0 == Failure::BoltBreaks
    }

    /// Whether the pair loses so little against a standard one that it counts as such.
    pub fn loses_little(&self) -> bool {
        self.lost_share <= LITTLE_LOST.value
    }
}

fn pair(thread: Thread, bolt: BoltLimits, nut: NutLimits, joint: Joint) -> Result<Pair, Refusal> {
    let sizes = Sizes::least_material(thread.pitch(), &bolt, &nut);
    let nominal = strength(&joint, Sizes::nominal(thread.pitch(), &bolt, &nut))?;
    Ok(Pair { bolt, nut, joint, sizes, min: strength(&joint, sizes)?, nominal })
}
