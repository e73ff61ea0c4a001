//! What is judged: the facts of one part in one process.

use super::bolt_and_nut::Carried;
use crate::coat::factor::{self, Factor};
use crate::part;
use crate::process::Process;
use crate::quantity::{Length, Mass, Quantity, Shown, Temperature, Time, unit};
use crate::site::life::{self, Exponent, Promise, Years};
use crate::site::{Categories, Surroundings};
use crate::source::Source;
use crate::steel::pairing::Nuts;
use crate::steel::tempering::{Dip, Effect};
use crate::steel::{Grade, Levels, State};
use crate::table::coat_class::CoatClass;
use crate::table::{Kept, Refusal};
use crate::thread::pair::{Found, Mated};
use crate::thread::{Thread, ToleranceClass};

/// One part in one process: what the rules may ask about.
///
/// A fact that is not known is `None`: a rule that needs it does not speak.
#[derive(Debug, Clone, Copy)]
pub struct Case<'a> {
    /// The process.
    pub process: Process,
    /// The documents that the order stands under.
    pub in_force: InForce,
    /// The steel.
    pub steel: Option<&'a SteelFacts>,
    /// What the dip does to its temper; a refusal where the temper is not known.
    pub heat: Option<&'a Result<Effect, Refusal>>,
    /// The dip that was reckoned with.
    pub dip: Option<&'a Dip>,
    /// Nominal diameter of the thread.
    pub diameter: Option<Length>,
    /// The part.
    pub part: Option<&'a Part>,
    /// Whether it comes with the part that is ordered: the nut or the washer of a set.
    pub is_mate: bool,
    /// Whether a nylon patch is sprayed on it after the coat.
    pub has_patch: bool,
    /// The nuts that the standards put on it, zinc-coated, where it is a bolt that they know.
    pub nuts: Option<&'a Nuts>,
    /// The coat on offer.
    pub offer: Option<&'a Offer>,
    /// How the coated thread goes together; `None` for a part without a thread of its own.
    pub fit: Option<&'a Found>,
    /// The bolt in its nut and what they carry, where both are known and room is made in one of them.
    pub pair: Option<&'a Carried>,
    /// Where it will stand and for how long.
    pub site: Option<&'a Site>,
}

/// A part, without its steel.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Part {
    /// What kind of part.
    pub kind: part::Kind,
    /// Its thread, or the thread it goes on, if anybody said.
    pub thread: Option<Thread>,
    /// The class of the bolt of its pair, where the thread is known.
    pub bolt_class: Option<ToleranceClass>,
    /// Whether that class was written.
    pub is_class_written: bool,
    /// The class of the nut of its pair, if it was written.
    pub nut_class: Option<ToleranceClass>,
    /// Number of pieces, if anybody said.
    pub quantity: Option<u32>,
    /// Its length, for what has one.
    pub length: Option<Length>,
    /// Mass of one piece, where it is known of a shape of its own; else its standard says it: [`Part::mass`].
    pub own_mass: Option<Mass>,
    /// The grade of the bolt it is sold with or for, if the order says.
    pub bolt: Option<Grade>,
    /// The nut named beside the bolt.
    pub nut: Option<Grade>,
    /// Whether it is said to go into a tapped hole, and not into a nut.
    pub is_for_a_hole: bool,
    /// Whether the washer named beside the bolt is hardened as those of structural bolts are; `None` where none
    /// is named.
    pub is_washer_hard: Option<bool>,
    /// Whether its steel is the one proposed here: neither the order nor a document names it.
    pub is_steel_proposed: bool,
    /// Whether its steel is known by the least hardness or strength that is asked for, and by no greatest.
    pub is_steel_least: bool,
    /// Whether a grade was named for it that its document does not have in this size.
    pub is_steel_not_made: bool,
}

impl Part {
    /// A bolt and its nut, of which nothing is known but the threads.
    pub const fn of_pair(
        thread: Thread,
        bolt_class: ToleranceClass,
        nut_class: Option<ToleranceClass>,
    ) -> Self {
        Self {
            kind: part::Kind::HexBolt,
            thread: Some(thread),
            bolt_class: Some(bolt_class),
            is_class_written: false,
            nut_class,
            quantity: None,
            length: None,
            own_mass: None,
            bolt: None,
            nut: None,
            is_for_a_hole: false,
            is_washer_hard: None,
            is_steel_proposed: false,
            is_steel_least: false,
            is_steel_not_made: false,
        }
    }

    /// Mass of one piece, where its shape is known.
    pub fn mass(&self) -> Option<Mass> {
        let of_standard = || part::standard(self.kind, self.thread?, self.length).ok();
        self.own_mass.or_else(|| of_standard().map(|shape| shape.mass()))
    }
}

/// Where a part will stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Site {
    /// What surrounds it.
    pub surroundings: Surroundings,
    /// The category of the place, or all that it may be, if it is in air and anybody said.
    pub place: Option<Categories>,
    /// The heat that it will bear in service, if anybody said.
    pub heat: Option<Temperature>,
    /// Years wanted, if anybody said.
    pub wanted: Option<Time>,
    /// The greatest thickness of the coat that is taken, if anybody said.
    pub most: Option<Length>,
}

/// A coat on offer.
#[derive(Debug, Clone, Copy)]
pub struct Offer {
    /// The class it is ordered by.
    pub class: &'static CoatClass,
    /// The minimum thickness of a single article or place.
    pub min: Length,
    /// The maximum thickness to reckon with.
    pub max: Length,
    /// Where the maximum comes from.
    pub max_source: Source,
    /// Why this class.
    pub choice: Choice,
}

/// Why a class was chosen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Choice {
    /// The order asks for it.
    Asked,
    /// The standard of the process, or of the product, for this thread.
    OfStandard,
    /// The thinnest class that is sure to last the years wanted.
    ForYears,
    /// The thickest class that fits; the years wanted need more.
    Thickest,
    /// The usual class for the place, where no years are wanted.
    ForPlace,
}

/// The steel of a part, with what follows from it; computed once for all processes.
#[derive(Debug, Clone, PartialEq)]
pub struct SteelFacts {
    /// The steel.
    pub state: State,
    /// How it is cleaned before the zinc.
    pub cleaning: Cleaning,
    /// Its hardest end in every measure that rules use; a refusal where no table reaches it.
    pub levels: Kept<Result<Levels, Refusal>>,
}

/// How the steel is cleaned before the zinc.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Cleaning {
    /// Pickled in acid.
    Acid,
    /// Pickled in inhibited acid for the shortest time that cleans.
    InhibitedAcid,
    /// Alkaline, without current or with the part as the anode.
    Alkaline,
    /// Blasted or tumbled, with at most a flash pickle.
    Mechanical,
}

/// The document under which an order has to stand for a rule to count.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Under {
    /// The product standard of the part, common practice, or a fact: it always counts.
    Any,
    /// ISO 10684.
    Iso10684,
    /// ASTM F2329 with A153 and A143.
    F2329,
    /// ASTM B695.
    B695,
    /// ASTM F1941.
    F1941,
    /// ISO 4042:2018.
    Iso4042,
    /// ASTM B633 with B849 and B850.
    B633,
    /// An edition that was replaced.
    Replaced,
}

/// The documents that an order stands under.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct InForce(u8);

impl<'a> Case<'a> {
    /// A process of which nothing else is known, every document judged by itself.
    pub const fn of(process: Process) -> Self {
        Self {
            process,
            in_force: InForce::CURRENT,
            steel: None,
            heat: None,
            dip: None,
            diameter: None,
            part: None,
            is_mate: false,
            has_patch: false,
            nuts: None,
            offer: None,
            fit: None,
            pair: None,
            site: None,
        }
    }

    /// The grade of the steel, where it is known by one.
    pub fn grade(&self) -> Option<Grade> {
        self.steel.and_then(|steel| steel.state.grade()).map(|properties| properties.grade)
    }

    /// What the dip does to the temper, where both are known.
    pub fn effect(&self) -> Option<&'a Effect> {
        self.heat.and_then(|heat| heat.as_ref().ok())
    }

    /// Whether the actual temper of the steel was said.
    pub fn temper_is_said(&self) -> bool {
        self.effect()
            .and_then(|effect| effect.temper)
            .is_some_and(|against| against.temper.least_of.is_none())
    }

    /// The thread of the part, or the thread that it goes on, where both are known.
    pub fn thread(&self) -> Option<Thread> {
        self.part?.thread
    }

    /// Whether the part goes into a tapped hole, and no nut on it.
    pub fn is_for_a_tapped_hole(&self) -> bool {
        self.part.is_some_and(|part| part.is_for_a_hole || part.kind.goes_into_a_tapped_hole())
    }

    /// A length on a diameter in the unit of the thread: metric with these decimals, or inches with four.
    pub fn size(&self, length: Length, decimals: u8) -> Shown {
        let metric = self.thread().is_none_or(|thread| thread.is_metric());
        if metric { length.show(&unit::MM, decimals) } else { length.show(&unit::INCH, 4) }
    }

    /// The pair that assembles, if one does.
    pub fn mated(&self) -> Option<&'a Mated> {
        match self.fit {
            Some(Found::Takes(mated)) => Some(mated),
            _ => None,
        }
    }

    /// The years of the coat on offer in the place, from its minimum to its maximum thickness.
    pub fn years(&self) -> Option<(Years, Years)> {
        let (offer, place) = (self.offer?, self.site?.place?);
        let rates = place.rates();
        let years = |thickness| life::range(thickness, rates, Exponent::Straight);
        Some((years(offer.min), years(offer.max)))
    }

    /// Whether the coat on offer lasts the years wanted.
    pub fn promise(&self) -> Option<Promise> {
        let (offer, site) = (self.offer?, self.site?);
        Some(life::promise(offer.min, offer.max, site.place?.rates(), site.wanted?))
    }

    /// How the steel is cleaned; the harshest way where nobody said.
    pub fn cleaning(&self) -> Cleaning {
        self.steel.map_or(Cleaning::Acid, |steel| steel.cleaning)
    }
}

impl SteelFacts {
    /// The facts of a steel that is cleaned like this.
    pub fn new(state: State, cleaning: Cleaning) -> Self {
        Self { state, cleaning, levels: state.levels() }
    }

    /// The case of this steel in a process, every document judged by itself; nothing else is known.
    pub fn alone(&self, process: Process) -> Case<'_> {
        Case { steel: Some(self), ..Case::of(process) }
    }
}

impl Offer {
    /// The average of the coat: as the class asks for it, or else its minimum.
    pub fn average(&self) -> Length {
        self.class.average.map_or(self.min, |limit| limit.thickness).max(self.min)
    }

    /// The mean that a load is dipped for: that of the production lot as well, where its document asks one.
    pub fn mean_of_a_load(&self) -> Length {
        self.class.lot_average.map_or(self.min, |limit| limit.thickness).max(self.average())
    }

    /// From its thickness to its mass, by the standard it is ordered by.
    pub fn factor(&self) -> &'static Factor {
        factor::of_class(self.class)
    }
}

/// The usual bath: common practice.
pub const USUAL_BATH: Temperature = Temperature::from_fahrenheit(860.0);

/// The longest usual dip of spun fasteners; a longer one softens more.
pub const USUAL_DIP: Time = Time::from_minute(5.0);

impl Under {
    /// How many there are.
    pub const COUNT: usize = Self::Replaced as usize + 1;

    /// For which orders a rule of this document counts; `None` where it always does.
    pub const fn counts_for(self) -> Option<&'static str> {
        match self {
            Self::Any => None,
            Self::Iso10684 => Some("orders under ISO 10684"),
            Self::F2329 => Some("orders under ASTM F2329"),
            Self::B695 => Some("orders under ASTM B695"),
            Self::F1941 => Some("orders under ASTM F1941"),
            Self::Iso4042 => Some("orders under ISO 4042"),
            Self::B633 => Some("orders under ASTM B633"),
            Self::Replaced => Some("no order: the edition was replaced"),
        }
    }
}

impl InForce {
    /// Every document in force, each judged by itself; replaced editions are told.
    pub const CURRENT: Self = Self(!(1 << Under::Replaced as u8));
    /// None but what always counts.
    pub const NONE: Self = Self(1 << Under::Any as u8);

    /// With a document.
    #[must_use]
    pub const fn and(self, under: Under) -> Self {
        Self(self.0 | 1 << under as u8)
    }

    /// Whether a rule of this document counts.
    pub const fn holds(self, under: Under) -> bool {
        self.0 & (1 << under as u8) != 0
    }
}
