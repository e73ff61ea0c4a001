//! The calculators, one file each, and the register that lists them.
//!
//! A calculator is a description ([`About`]) and three verbs: `read` turns text into a typed input
//! or names all its problems at once, `solve` is pure and the only arithmetic, `explain` arranges
//! what was solved into a [`Report`]. [`evaluate`] runs them in turn. The page, the terminal, a
//! link and an exercise all call it with names and texts: adding a calculator touches its own file
//! and one line of [`REGISTER`].

pub mod coat_room;
pub mod coat_thickness;
pub mod gauges;
pub mod hydrogen;
pub mod kettle_pickup;
pub mod load;
pub mod lot_check;
pub mod oversize_tap;
pub mod powder_mass;
pub mod salt_spray;
pub mod service_life;
pub mod shape;
mod steel_fields;
pub mod tempering;
mod thread_fields;
pub mod thread_strength;

pub use shape::{
    About, Address, Bar, Bound, Caution, Choice, Damage, Draft, Example, Fault, Field, Figure, Filled,
    Finding, Form, Kind, Link, Mark, Note, Picture, Problem, Problems, Reader, Report, ScaleBand, ScaleMark,
    Section, ThreadCorner, Value, Verdict, When,
};

/// What every calculator is.
pub trait Calculator {
    /// Its description: id, title, fields, worked examples.
    const ABOUT: About;
    /// What it needs, typed.
    type Input;
    /// What it finds; every intermediate value that is shown is a field of it.
    type Outcome;

    /// Reads the fields; what is wrong is collected in the reader, all of it.
    ///
    /// `None` only where the reader holds a problem.
    fn read(reader: &mut Reader<'_>) -> Option<Self::Input>;

    /// Computes. The only place with arithmetic.
    ///
    /// # Errors
    /// A [`Problem`] where a table or a formula has no answer, tied to the field that asked for it.
    fn solve(input: &Self::Input) -> Result<Self::Outcome, Problem>;

    /// Arranges input and outcome into a report.
    fn explain(input: &Self::Input, outcome: &Self::Outcome) -> Report;
}

/// A calculator in the register, as plain data.
#[derive(Debug)]
pub struct Entry {
    /// Its description.
    pub about: About,
    evaluate: fn(&Draft) -> Result<Report, Problems>,
}

impl Entry {
    const fn of<C: Calculator>() -> Self {
        Self { about: C::ABOUT, evaluate: run::<C> }
    }

    /// Evaluates a draft.
    ///
    /// # Errors
    /// All the problems of its fields at once.
    pub fn evaluate(&self, draft: &Draft) -> Result<Report, Problems> {
        (self.evaluate)(draft)
    }
}

/// Every calculator, in the order the page shows them.
// One line each, so that adding one touches one line.
#[rustfmt::skip]
pub static REGISTER: &[Entry] = &[
    Entry::of::<coat_thickness::CoatThickness>(),
    Entry::of::<oversize_tap::OversizeTap>(),
    Entry::of::<coat_room::CoatRoom>(),
    Entry::of::<thread_strength::ThreadStrength>(),
    Entry::of::<gauges::Gauges>(),
    Entry::of::<hydrogen::HydrogenRisk>(),
    Entry::of::<tempering::TemperingMargin>(),
    Entry::of::<powder_mass::PowderMass>(),
    Entry::of::<kettle_pickup::KettlePickup>(),
    Entry::of::<service_life::ServiceLife>(),
    Entry::of::<lot_check::LotCheck>(),
    Entry::of::<salt_spray::SaltSpray>(),
];

/// The calculator of that id.
pub fn find(id: &str) -> Option<&'static Entry> {
    REGISTER.iter().find(|entry| entry.about.id == id)
}

/// Evaluates the calculator of that id with names and texts; a name left out takes its default.
///
/// # Errors
/// All the problems of its fields at once, or that there is no such calculator.
pub fn evaluate<'a>(
    id: &str,
    pairs: impl IntoIterator<Item = (&'a str, &'a str)>,
) -> Result<Report, Problems> {
    match find(id) {
        Some(entry) => entry.evaluate(&pairs.into_iter().collect()),
        None => Err(Problems::one(Problem::new(
            "calculator",
            "Calculator",
            Fault::NotAChoice {
                text: id.to_owned(),
                offered: REGISTER.iter().map(|entry| entry.about.id).collect(),
            },
        ))),
    }
}

/// Runs a calculator on a draft.
///
/// # Errors
/// All the problems of its fields at once.
pub fn run<C: Calculator>(draft: &Draft) -> Result<Report, Problems> {
    let input = parse::<C>(draft)?;
    let outcome = C::solve(&input).map_err(Problems::one)?;
    Ok(C::explain(&input, &outcome))
}

/// Reads a draft into a calculator's typed input.
///
/// # Errors
/// All the problems of its fields at once.
pub fn parse<C: Calculator>(draft: &Draft) -> Result<C::Input, Problems> {
    let mut reader = Reader::new(C::ABOUT.fields, draft);
    let input = C::read(&mut reader);
    reader.finish(input)
}
