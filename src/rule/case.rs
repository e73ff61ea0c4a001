//! What is judged: the facts of one part in one process.

use crate::process::Process;
use crate::quantity::{Length, Time};
use crate::steel::tempering::Effect;
use crate::steel::{Grade, Levels, State};
use crate::table::Refusal;

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
    /// The part.
    pub part: Option<&'a Part>,
}

/// A part: what it is, without its steel.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Part {
    /// Its nominal diameter.
    pub diameter: Length,
}

/// The steel of a part, with what follows from it; computed once for all processes.
#[derive(Debug, Clone, PartialEq)]
pub struct SteelFacts {
    /// The steel.
    pub state: State,
    /// How it is cleaned before the zinc.
    pub cleaning: Cleaning,
    /// Its hardest end in every measure that rules use; a refusal where no table reaches it.
    pub levels: Result<Levels, Refusal>,
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

impl Case<'_> {
    /// The grade of the steel, where it is known by one.
    pub fn grade(&self) -> Option<Grade> {
        self.steel.and_then(|steel| steel.state.grade()).map(|properties| properties.grade)
    }

    /// What the dip does to the temper, where both are known.
    pub fn effect(&self) -> Option<&Effect> {
        self.heat.and_then(|heat| heat.as_ref().ok())
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
        Case { process, in_force: InForce::EVERY, steel: Some(self), heat: None, part: None }
    }
}

/// The longest usual dip of spun fasteners; a longer one softens more.
pub const USUAL_DIP: Time = Time::from_minute(5.0);

impl InForce {
    /// Every document, replaced editions included: each is judged by itself.
    pub const EVERY: Self = Self(u8::MAX);
    /// None but what always counts.
    pub const NONE: Self = Self(0);

    /// With a document.
    #[must_use]
    pub const fn and(self, under: Under) -> Self {
        Self(self.0 | 1 << under as u8)
    }

    /// Whether a rule of this document counts.
    pub const fn holds(self, under: Under) -> bool {
        matches!(under, Under::Any) || self.0 & (1 << under as u8) != 0
    }
}
