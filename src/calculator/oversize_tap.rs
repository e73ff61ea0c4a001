//! Oversize tap: how far to tap the nut over or cut the bolt under, and which coat then fits.

use super::thread_fields::{ALLOWANCE, BOLT_CLASS, Pair, THREAD, WAY};
use super::{About, Calculator, Missed, Problem, Reader, Report, Writer};
use crate::quantity::{Area, Length, Unit, unit};
use crate::rule::{Case, Topic};
use crate::thread::chance::{self, Spread};
use crate::thread::fit::{self, Coat, Fit, PITCH_GROWTH};
use crate::thread::limits::Limits;
use crate::thread::overtap::{self, Allowance, Nut};
use crate::thread::pair::{self, Found, Room};
use crate::thread::{Thread, ToleranceClass, limits, undersize};

pub use super::thread_fields::Way;

mod fields;
mod report;
mod working;

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
    /// How the sizes of a lot are spread.
    pub sizes: Sizes,
}

/// How pitch diameters and coat of a lot are spread.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Sizes {
    /// Like a bell over their limits: assumed.
    Bell,
    /// Evenly over their limits.
    Even,
    /// By standard deviations about the middle of their limits.
    Own {
        /// Of the bolts' pitch diameter.
        bolt: Length,
        /// Of the nuts' pitch diameter.
        nut: Length,
        /// Of the thickness on the flanks.
        coat: Length,
    },
}

/// What it finds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outcome {
    /// The nut.
    pub nut: Nut,
    /// The fit of the coated bolt in it.
    pub fit: Fit,
    /// The share of pairs that bind on the pitch diameter.
    pub chance: f64,
    /// Stress area of the bolt as it is cut.
    pub stress_area: Area,
    /// Stress area of the bolt of standard size.
    pub standard_area: Area,
    /// Overlap of bolt and nut at least material, as a share of 5/8 H.
    pub overlap: f64,
    /// The same with the standard nut and a bolt of the usual class.
    pub standard_overlap: f64,
}

impl Calculator for OversizeTap {
    const ABOUT: About = About {
        id: "oversize-tap",
        title: "Oversize tap",
        answers: "Says how far to tap the nut over, or cut the bolt under, and which coat then assembles.",
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

    const EXPLAINS: &'static [Topic] = &[Topic::Fit];

    fn fill(case: &Case<'_>, writer: &mut Writer) -> Option<()> {
        let (part, offer) = (case.part?, case.offer?);
        let thread = part.thread?;
        let (room, bolt_class) = match case.fit? {
            Found::Takes(mated) | Found::Binds(mated) => (mated.pair.room, mated.pair.class),
            Found::NotPublished(needed, _) => (Room::Tapped(Allowance::Own(*needed)), part.bolt_class?),
            Found::Unknown(_) => (Room::Ordered, part.bolt_class?),
        };
        let allowance = match room {
            Room::Ordered | Room::Bolt(_) => Allowance::Standard,
            Room::NutG => Allowance::Own(case.mated()?.pair.nut.deviation.value),
            Room::Tapped(allowance) => allowance,
            // The same room, made in the nut instead of on the bolt.
            Room::Smaller(by) => Allowance::Own(by),
        };
        fields::write(
            &Input {
                thread,
                way: Way::Over,
                bolt_class,
                allowance,
                // What the two halves carry together is what shares the room.
                coat: pair::coat(
                    case.process,
                    (thread, part.length),
                    (offer.min, offer.max),
                    pair::INSIDE_SHARE.value,
                ),
                coat_unit: &unit::UM,
                sizes: Sizes::Bell,
            },
            writer,
        );
        Some(())
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let Input { thread, way, bolt_class, allowance, coat, .. } = *input;
        let nut = overtap::nut(thread, allowance).map_err(|refusal| ALLOWANCE.refused(refusal))?;
        let (bare, stress_area) = match way {
            Way::Over => {
                let bare = limits::bolt(thread, bolt_class).map_err(|refusal| BOLT_CLASS.refused(refusal))?;
                let cut_under = bolt_class.is_undercut().then(|| undersize::bolt(thread));
                let area = cut_under.and_then(|bolt| bolt.ok()).map(|bolt| bolt.stress_area);
                (bare, area.unwrap_or_else(|| thread.stress_area()))
            }
            Way::Under => {
                let bolt = undersize::bolt(thread).map_err(|refusal| WAY.refused(refusal))?;
                (bolt.limits, bolt.stress_area)
            }
        };
        let usual = limits::bolt(thread, overtap::usual_bolt_class(thread))
            .map_err(|refusal| THREAD.refused(refusal))?;
        Ok(Outcome {
            nut,
            fit: fit::fit(bare, coat, nut.limits),
            chance: input.chance(bare.pitch, nut.limits.pitch),
            stress_area,
            standard_area: thread.stress_area(),
            overlap: fit::overlap(bare.major.min, nut.limits.minor.max, thread.pitch()),
            standard_overlap: fit::overlap(usual.major.min, nut.standard.minor.max, thread.pitch()),
        })
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        report::report(input, outcome)
    }
}

impl Input {
    /// The share of pairs that bind; the coat on the flanks is spread up to its maximum with its
    /// unevenness.
    fn chance(&self, bolt: Limits, nut: Limits) -> f64 {
        let coat = Limits { min: self.coat.min, max: (1.0 + self.coat.unevenness) * self.coat.max };
        let middle = |limits: Limits| 0.5 * (limits.min + limits.max);
        let [bolt, nut, coat] = match self.sizes {
            Sizes::Bell => [bolt, nut, coat].map(Spread::Bell),
            Sizes::Even => [bolt, nut, coat].map(Spread::Even),
            Sizes::Own { bolt: bolts, nut: nuts, coat: coats } => [(bolt, bolts), (nut, nuts), (coat, coats)]
                .map(|(limits, by)| Spread::Own(middle(limits), by)),
        };
        chance::of_binding(bolt, nut, coat, PITCH_GROWTH)
    }

    fn pair(&self) -> Pair {
        Pair { way: self.way, thread: self.thread, bolt_class: self.bolt_class, allowance: self.allowance }
    }
}
