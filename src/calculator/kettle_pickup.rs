//! Kettle pick-up: the zinc that a load takes out of the kettle, the bath, the baskets and the wiping.

use super::load::{Load, Stated, steel_of};
use super::run::RunStep;
use super::{About, Calculator, Missed, Problem, Reader, Report, Writer, Written};
use crate::coat::kettle::{self, Composition, PickUp, Reactivity, Wiping};
use crate::coat::{Factor, factor};
use crate::quantity::{Length, Mass, PlainNumber, Temperature, Time};
use crate::rule::heat::forbids_high_bath;
use crate::rule::{Case, Cleaning, InForce, Part, SteelFacts, Topic, Under};
use crate::steel::Grade;
use crate::steel::tempering::{self, Bath, Dip, Effect};
use crate::table::Refusal;
use crate::table::hotdip_process::IMMERSION_TIME;

mod examples;
mod fields;
mod finding;
mod report;
mod run;
mod working;

/// The calculator.
#[derive(Debug)]
pub struct KettlePickup;

/// What it needs.
#[derive(Debug, Clone, PartialEq)]
pub struct Input {
    /// The load, nuts as blanks.
    pub stated: Stated,
    /// Average thickness of the coat.
    pub coat: Written<Length>,
    /// From thickness to mass.
    pub factor: &'static Factor,
    /// Zinc lost with the dross, of all the zinc used.
    pub dross: Option<PlainNumber>,
    /// Zinc lost with the ash, of all the zinc used.
    pub ash: Option<PlainNumber>,
    /// Price of a kilogram of zinc, in the user's currency.
    pub price: Option<Written<PlainNumber>>,
    /// What a basket takes.
    pub basket: Option<Written<Mass>>,
    /// Inside length of a basket.
    pub basket_length: Option<Written<Length>>,
    /// Grade of the steel.
    pub grade: Option<Grade>,
    /// What the certificate says it holds: both together, and silicon alone.
    pub composition: (Option<PlainNumber>, Option<PlainNumber>),
    /// The bath.
    pub bath: Written<Temperature>,
    /// Time in it.
    pub dip: Time,
}

/// What it finds.
#[derive(Debug, Clone, PartialEq)]
pub struct Outcome {
    /// The load.
    pub load: Load,
    /// The documents that the load stands under, by the factor of its coat.
    pub in_force: InForce,
    /// The zinc.
    pub zinc: PickUp,
    /// Zinc on the parts for the weight of steel, where it is known.
    pub share: Option<f64>,
    /// What the zinc fed costs.
    pub cost: Option<f64>,
    /// Baskets, where weight and capacity are known.
    pub baskets: Option<f64>,
    /// How the steel reacts with the zinc.
    pub reactivity: Reactivity,
    /// Whether the high-temperature bath is forbidden to the part.
    pub high_bath_forbidden: bool,
    /// Spin or air ring, where the length of the part is known.
    pub wiping: Option<Wiping>,
    /// The steel at its size, where a grade is stated.
    pub steel: Option<SteelFacts>,
    /// The dip, and what it does to the temper.
    pub heat: (Dip, Option<Result<Effect, Refusal>>),
    /// The bath that the steel asks for: coolest and hottest, and what kind it is.
    pub advised: ((Temperature, Temperature), Bath),
    /// The longest dip that the temper bears, and in which bath: as entered where that lies in the range
    /// advised, else the hottest of it.
    pub longest_dip: Option<(Temperature, Time)>,
    /// The part, as the rules judge it.
    pub part: Option<Part>,
    /// The run, step by step.
    pub run: Vec<RunStep>,
}

impl Calculator for KettlePickup {
    const ABOUT: About = About {
        id: "kettle",
        title: "Kettle pick-up",
        answers: "Says how much zinc a load takes out of the kettle, in which bath, in how many baskets, and how to run it.",
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
        let [dross, ash] = [input.dross, input.ash].map(|share| share.map_or(0.0, PlainNumber::one));
        // The hot-dip factors are single values: least and greatest are the same.
        let zinc = kettle::pick_up(load.area, input.coat.quantity, input.factor.min, dross, ash);
        let diameter = load.piece.as_ref().map(|piece| piece.designation.thread.diameter());
        let properties = load.properties(input.grade).map_err(|refusal| fields::GRADE.refused(refusal))?;
        let steel = properties.map(|properties| steel_of(properties, Cleaning::InhibitedAcid));
        let dip = Dip { grade: properties, temper: None, bath: input.bath.quantity, time: input.dip };
        let effect = properties.map(|_| tempering::effect(&dip));
        let against = effect.as_ref().and_then(|effect| effect.as_ref().ok()?.temper);
        let reactivity = input.composition().reactivity();
        let high_bath_forbidden = forbids_high_bath(input.grade, diameter);
        let advised = if reactivity == Reactivity::Reactive && !high_bath_forbidden {
            (tempering::HIGH, Bath::High)
        } else {
            (tempering::NORMAL, Bath::Normal)
        };
        let reckoned = if Bath::of(dip.bath) == advised.1 { dip.bath } else { advised.0.1 };
        let wiping = load.piece.as_ref().and_then(|piece| {
            let basket = input.basket_length.map(|basket| basket.quantity);
            Some(kettle::wiping(piece.shape.overall_length()?, basket))
        });
        let in_baskets = !wiping.is_some_and(Wiping::is_single);
        let mut outcome = Outcome {
            share: load.mass.map(|mass| zinc.on_parts / mass),
            cost: input.price.map(|price| price.quantity.one() * zinc.fed.kg()),
            baskets: load
                .mass
                .zip(input.basket)
                .filter(|_| in_baskets)
                .map(|(mass, basket)| kettle::baskets(mass, basket.quantity)),
            reactivity,
            in_force: input.in_force(),
            high_bath_forbidden,
            wiping,
            steel,
            advised,
            longest_dip: against.map(|against| (reckoned, kettle::longest_dip(against.parameter, reckoned))),
            heat: (dip, effect),
            part: load.part(),
            load,
            zinc,
            run: Vec::new(),
        };
        outcome.run = run::of(input, &outcome);
        Ok(outcome)
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        report::report(input, outcome)
    }
}

impl Input {
    /// Whether the plant's losses are known.
    fn knows_losses(&self) -> bool {
        self.dross.is_some() || self.ash.is_some()
    }

    /// The documents that the load stands under: those that have the factor of its coat.
    fn in_force(&self) -> InForce {
        match self.factor {
            factor if factor == &factor::ISO_1461 => InForce::NONE.and(Under::Iso10684),
            factor if factor == &factor::A123 => InForce::NONE.and(Under::F2329),
            _ => InForce::CURRENT,
        }
    }

    /// What the certificate says, in per cent.
    fn composition(&self) -> Composition {
        let (si_p, si) = self.composition;
        Composition { si_p: si_p.map(PlainNumber::percent), si: si.map(PlainNumber::percent) }
    }
}

impl Outcome {
    /// Whether the high-temperature bath is advised, and the temper bears less than a basket takes in it.
    fn hot_bath_takes_the_temper(&self) -> bool {
        self.advised.1 == Bath::High && self.is_too_short()
    }

    /// Whether the pieces are wiped one by one.
    fn is_wiped_singly(&self) -> bool {
        self.wiping.is_some_and(Wiping::is_single)
    }

    /// Whether the temper bears less than the shortest usual dip of a basket.
    fn is_too_short(&self) -> bool {
        self.longest_dip.is_some_and(|(_, longest)| longest < IMMERSION_TIME.value.0)
    }

    /// The part in the kettle, as the rules judge it.
    pub(super) fn case(&self) -> Case<'_> {
        let (dip, effect) = &self.heat;
        Case {
            steel: self.steel.as_ref(),
            heat: effect.as_ref(),
            dip: Some(dip),
            diameter: self.part.and_then(|part| part.thread).map(|thread| thread.diameter()),
            part: self.part.as_ref(),
            in_force: self.in_force,
            ..Case::of(crate::coat::Process::HotDip)
        }
    }
}
