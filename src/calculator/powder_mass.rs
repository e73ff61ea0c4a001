//! Powder mass: what to weigh into the barrel for a mechanical zinc coat on a load of parts.

use super::load::{Known, Load, Stated, System, steel_of};
use super::run::{Clock, RunStep};
use super::{About, Calculator, Draft, Fault, Missed, Problem, Reader, Report, Writer, Written};
use crate::coat::barrel::target::{Demand, Earlier, Target, USUAL_SCATTER};
use crate::coat::barrel::{self, Charge};
use crate::coat::factor::DEPOSIT;
use crate::coat::{CoatClass, Process, ThicknessLimit};
use crate::lot::Readings;
use crate::quantity::{Area, Density, Length, Mass, PlainNumber, Quantity, Time, Volume, unit};
use crate::rule::{Case, Cleaning, Part, SteelFacts, Topic};
use crate::source::{Source, Sourced};
use crate::steel::Grade;
use crate::table::mechanical_process as practice;

mod examples;
mod fields;
mod finding;
mod report;
mod run;
mod working;

pub use fields::{BarrelBy, Finish};

/// The calculator.
#[derive(Debug)]
pub struct PowderMass;

/// What it needs.
#[derive(Debug, Clone, PartialEq)]
pub struct Input {
    /// The load.
    pub stated: Stated,
    /// Grade of the steel, if anybody says it.
    pub grade: Option<Grade>,
    /// The coat wanted.
    pub wanted: WantedCoat,
    /// What the acceptance asks; none where a mean is charged for as it is.
    pub pass: Option<Pass>,
    /// The shop's own scatter, as a share of the coat.
    pub scatter: Option<PlainNumber>,
    /// Readings on an earlier load.
    pub earlier: Option<Readings>,
    /// The mean that the earlier load was charged for.
    pub charged: Option<Written<Length>>,
    /// Density of the deposit.
    pub density: DensityOf,
    /// Share of the powder that ends up on the parts.
    pub yielded: PlainNumber,
    /// Thickness of the copper flash.
    pub flash: Length,
    /// Solid share of the heap of parts.
    pub solid_share: PlainNumber,
    /// Own volume of beads to bulk volume of parts.
    pub bead_ratio: Option<PlainNumber>,
    /// Own number of additions.
    pub additions: Option<u32>,
    /// The barrel, if one is stated.
    pub barrel: Option<Written<Volume>>,
    /// What its volume is.
    pub barrel_by: BarrelBy,
    /// Inside diameter of the barrel.
    pub diameter: Option<Written<Length>>,
    /// Times and finish of the run.
    pub plan: Plan,
}

/// The coat wanted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum WantedCoat {
    /// A class of ASTM B695: the least of every place.
    Class(&'static CoatClass, ThicknessLimit),
    /// Another least of every place.
    Least(Written<Length>),
    /// The mean that is charged for, as it is.
    Mean(Written<Length>),
}

/// What the acceptance asks of a load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pass {
    /// Readings that are taken, all of which have to reach the least.
    pub readings: u32,
    /// The chance to pass that is charged for.
    pub chance: PlainNumber,
}

/// Density of the deposit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum DensityOf {
    /// The lightest published.
    Light,
    /// The heaviest published, which takes the most powder.
    Heavy,
    /// The user's own.
    Own(Density),
}

/// Times and finish of the run.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Plan {
    /// The promoter works so long before the copper.
    pub promoter: Time,
    /// Between two additions of zinc.
    pub spacing: Time,
    /// The last tumble.
    pub tumble: Time,
    /// When the run begins.
    pub start: Option<Clock>,
    /// What goes on the zinc.
    pub finish: Finish,
    /// Whether a patch of nylon is sprayed on afterwards.
    pub patch: bool,
}

/// What it finds.
#[derive(Debug, Clone, PartialEq)]
pub struct Outcome {
    /// The load.
    pub load: Load,
    /// Its part, as the rules judge it.
    pub part: Option<Part>,
    /// The steel at its size, where a grade is stated.
    pub steel: Option<SteelFacts>,
    /// The least of every place, and where it is published; none where a mean was asked for.
    pub least: Option<Known<Length>>,
    /// How single readings scatter, as a share of their mean.
    pub scatter: Known<f64>,
    /// The mean that passes; none where a mean was asked for.
    pub target: Option<Target>,
    /// The mean charged for.
    pub mean: Length,
    /// The chance to pass if the mean were the least itself.
    pub chance_at_least: Option<PlainNumber>,
    /// What the earlier load came out at.
    pub earlier: Option<Earlier>,
    /// What the powder is multiplied by, for what the earlier load came out at.
    pub correction: Option<f64>,
    /// What the coat takes.
    pub charge: Charge,
    /// Zinc powder to weigh in, corrected.
    pub powder: Mass,
    /// The powder at the least and the greatest published density of the deposit; none where a trial weighed the zinc,
    /// for its area was found by the same density, which cancels.
    pub powder_range: Option<(Mass, Mass)>,
    /// Number of additions, and the rule where it is not the user's own.
    pub additions: (u32, Option<Source>),
    /// Coat after each addition.
    pub coats: Vec<Length>,
    /// Volume of beads to bulk volume of parts.
    pub bead_ratio: Known<f64>,
    /// Heap of parts and heap of beads, where the weight is known.
    pub bulk: Option<(Volume, Volume)>,
    /// Working volume of the barrel: least and greatest.
    pub working_volume: Option<(Volume, Volume)>,
    /// Loads in that barrel: fewest and most.
    pub loads: Option<(f64, f64)>,
    /// Turns a minute: slowest and fastest.
    pub turns: Option<(f64, f64)>,
    /// The run of one barrel, step by step.
    pub run: Vec<RunStep>,
    /// How long it takes.
    pub takes: Time,
}

impl Calculator for PowderMass {
    const ABOUT: About = About {
        id: "powder",
        title: "Powder mass",
        answers: "Says what to weigh into the barrel for a mechanical zinc coat on a load of parts, and how to run it.",
        fields: &fields::FIELDS,
        examples: &examples::EXAMPLES,
    };
    type Input = Input;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
        fields::read(reader)
    }

    fn write(input: &Input, writer: &mut Writer) {
        fields::write(input, writer);
    }

    const EXPLAINS: &'static [Topic] = &[Topic::Load];

    fn fill(case: &Case<'_>, writer: &mut Writer) -> Option<()> {
        fields::fill(case, writer)
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let load = input.stated.load();
        let properties = load.properties(input.grade).map_err(|refusal| fields::GRADE.refused(refusal))?;
        let earlier = input.earlier.as_ref().and_then(|readings| Earlier::of(readings.values()));
        let scatter = input.scatter(earlier);
        let least = input.wanted.least(input.stated.system());
        let demand = least.zip(input.pass).map(|((least, _), pass)| {
            (Demand { least, scatter: scatter.0, readings: pass.readings }, pass.chance)
        });
        let target = demand.map(|(demand, chance)| target(&demand, chance)).transpose()?;
        let mean = match (input.wanted, target) {
            (_, Some(target)) => target.mean,
            (WantedCoat::Mean(mean) | WantedCoat::Least(mean), None) => mean.quantity,
            (WantedCoat::Class(_, limit), None) => limit.thickness,
        };
        let correction = input.correction(earlier)?;
        let area = load.area;
        let charge = |deposit| barrel::charge(area, mean, deposit, input.yielded.one(), input.flash);
        let of_charge = charge(input.density.known().0);
        let powder = of_charge.powder * correction.unwrap_or(1.0);
        // The number of additions goes by the coat that the class names.
        let nominal = match input.wanted {
            WantedCoat::Class(_, limit) => limit.thickness,
            WantedCoat::Least(coat) | WantedCoat::Mean(coat) => coat.quantity,
        };
        let additions = match input.additions {
            Some(own) => (own, None),
            None => {
                let usual =
                    barrel::usual_additions(nominal).map_err(|refusal| fields::ADDITIONS.refused(refusal))?;
                (usual.value, Some(usual.source))
            }
        };
        let bead_ratio = input.bead_ratio(nominal);
        let bulk = load.solid.map(|solid| {
            let parts = barrel::bulk_volume(solid, input.solid_share.one());
            (parts, parts * bead_ratio.0)
        });
        let working_volume = input.barrel.map(|barrel| {
            let total = input.barrel_by == BarrelBy::Total;
            let (min, max) = if total { practice::WORKING_SHARE.value } else { (1.0, 1.0) };
            (barrel.quantity * min, barrel.quantity * max)
        });
        let loads = bulk
            .zip(working_volume)
            .map(|((parts, _), (min, max))| (barrel::loads(parts, max), barrel::loads(parts, min)));
        let mut outcome = Outcome {
            part: load.part(),
            // Nobody has said how the shop cleans: the harshest way, as in the order line.
            steel: properties.map(|properties| steel_of(properties, Cleaning::Acid)),
            load,
            least,
            scatter,
            target,
            mean,
            chance_at_least: demand.map(|(demand, _)| demand.chance(demand.least)),
            earlier,
            correction,
            charge: of_charge,
            powder,
            powder_range: (!matches!(input.stated, Stated::Trial(..)))
                .then(|| (charge(DEPOSIT.min).powder, charge(DEPOSIT.max).powder)),
            additions,
            coats: barrel::coat_after_each(mean, additions.0).collect(),
            bead_ratio,
            bulk,
            working_volume,
            loads,
            turns: input.diameter.map(|diameter| barrel::turns_a_minute(diameter.quantity)),
            run: Vec::new(),
            takes: Time::from_second(0.0),
        };
        (outcome.run, outcome.takes) = run::of(input, &outcome);
        Ok(outcome)
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        report::report(input, outcome)
    }
}

/// The powder to weigh in for an area where the least of every place is said and nothing else: by what the
/// form has before anybody changes it. None for a coat that no charge is known of.
pub fn usual_powder(area: Area, least: Length) -> Option<Mass> {
    let link = PowderMass::link_with(|writer| fields::fill_usual(area, least, writer));
    let input = super::parse::<PowderMass>(&Draft::from(&link)).ok()?;
    PowderMass::solve(&input).ok().map(|outcome| outcome.powder)
}

/// The greatest mean that is charged for: the thickest class and what a wide scatter asks beyond it.
const GREATEST_MEAN: Length = Length::from_um(200.0);

impl Input {
    /// The scatter: the user's own, else that of the earlier load, else the assumed one.
    fn scatter(&self, earlier: Option<Earlier>) -> Known<f64> {
        let Sourced { value, source } = USUAL_SCATTER;
        let own = self.scatter.map(PlainNumber::one).or(earlier.and_then(|earlier| earlier.scatter));
        own.map_or((value, Some(source)), |own| (own, None))
    }

    /// What the powder is multiplied by.
    fn correction(&self, earlier: Option<Earlier>) -> Result<Option<f64>, Problem> {
        let Some((earlier, charged)) = earlier.zip(self.charged) else { return Ok(None) };
        let correction = earlier.correction(charged.quantity);
        if (0.5..=2.0).contains(&correction) {
            return Ok(Some(correction));
        }
        Err(fields::CHARGED.problem(Fault::Conflict(format!(
            "the earlier load was charged for {} and came out at {}: less than half or more than double is a fault to \
             be found first, or a wrong unit",
            charged.quantity.show(charged.unit, 1),
            earlier.mean.show(charged.unit, 1)
        ))))
    }

    /// Volume of beads to bulk volume of parts.
    fn bead_ratio(&self, coat: Length) -> Known<f64> {
        let Sourced { value, source } = barrel::usual_bead_ratio(coat);
        self.bead_ratio.map_or((value, Some(source)), |own| (own.one(), None))
    }
}

/// The mean to charge for.
fn target(demand: &Demand, chance: PlainNumber) -> Result<Target, Problem> {
    let target = demand.target(chance.one()).filter(|target| target.mean <= GREATEST_MEAN);
    target.ok_or_else(|| {
        let scatter = PlainNumber::from_one(demand.scatter).show(&unit::PERCENT, 0);
        fields::SCATTER.problem(Fault::Conflict(format!(
            "with readings that scatter by {scatter} no coat up to {} passes so often; bring the scatter down, take \
             fewer readings, or accept a lower chance",
            GREATEST_MEAN.show(&unit::UM, 0)
        )))
    })
}

impl WantedCoat {
    /// The least of every place as it is printed for the reader's unit, and where it is published.
    fn least(self, system: System) -> Option<Known<Length>> {
        match self {
            Self::Class(class, limit) => {
                let printed = limit.column(system.coat_unit()).unwrap_or(limit.printed);
                Some((Length::of(printed.number, printed.unit), Some(class.source(&limit))))
            }
            Self::Least(least) => Some((least.quantity, None)),
            Self::Mean(_) => None,
        }
    }
}

impl DensityOf {
    /// The density, and where it is published.
    fn known(self) -> Known<Density> {
        match self {
            Self::Light => (DEPOSIT.min, Some(DEPOSIT.source)),
            Self::Heavy => (DEPOSIT.max, Some(DEPOSIT.source_max)),
            Self::Own(density) => (density, None),
        }
    }
}

impl Outcome {
    /// Barrels that the load is run in: the most, which overfills none.
    pub fn barrels(&self) -> f64 {
        self.loads.map_or(1.0, |(_, most)| most)
    }

    /// The part in the barrel, as the rules judge it.
    pub(super) fn case(&self) -> Case<'_> {
        Case { steel: self.steel.as_ref(), part: self.part.as_ref(), ..Case::of(Process::Mechanical) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::part::STEEL;

    /// The default share of steel in a heap is the published load of a barrel.
    #[test]
    fn the_default_share_is_the_published_load() {
        assert!((barrel::usual_solid_share(STEEL.value) - 0.204).abs() < 5e-4);
    }
}
