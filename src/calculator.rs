//! The calculators, one file each, and the register that lists them.
//!
//! A calculator is a description ([`About`]) and four verbs: `read` turns text into a typed input
//! or names all its problems at once, `write` turns an input back into text, `solve` is pure and the
//! only arithmetic, `explain` arranges what was solved into a [`Report`]. [`evaluate`] reads, solves
//! and explains. The page, the terminal, a link and an exercise all call it with keys and texts:
//! adding a calculator touches its own file and one line of [`REGISTER`].

pub mod coat_room;
pub mod coat_thickness;
pub mod gauges;
pub mod hydrogen;
pub mod kettle_pickup;
pub mod load;
pub mod lot_check;
pub mod oversize_tap;
pub mod powder_mass;
pub mod run;
pub mod salt_spray;
pub mod service_life;
pub mod shape;
mod steel_fields;
pub mod tempering;
mod thread_fields;
pub mod thread_strength;

pub use shape::{
    About, Address, Bar, Bound, Caution, Choice, Converted, Damage, Draft, Ends, Example, Fault, Field,
    FieldAbout, FieldValue, Figure, Filled, Finding, Form, HARDNESS, Kind, Link, Mark, MarkRow, Missed, Note,
    OrOwn, Picture, Problem, Problems, RawText, Reader, Report, ScaleBand, ScaleMark, Section, ThreadCorner,
    Value, Verdict, When, Writer, Written, coat_shown, size_shown,
};
pub(crate) use shape::{choices, chosen_by_key};
pub(crate) use steel_fields::WORKED;

use crate::rule::{Case, Topic};

/// What every calculator is.
pub trait Calculator {
    /// Its description: id, title, fields, worked examples.
    const ABOUT: About;
    /// What it needs, typed.
    type Input: PartialEq;
    /// What it finds; every intermediate value that is shown is a field of it.
    type Outcome;

    /// Reads the fields; what is wrong is kept in the reader, all of it.
    ///
    /// # Errors
    /// [`Missed`] where a field has a problem.
    fn read(reader: &mut Reader<'_>) -> Result<Self::Input, Missed>;

    /// Writes an input back into the fields, so that they read to the same input again.
    fn write(input: &Self::Input, writer: &mut Writer);

    /// The calculator with its fields filled in: what a touch on a finding opens.
    fn link(input: &Self::Input) -> Link {
        Self::link_with(|writer| Self::write(input, writer))
    }

    /// The calculator with what is known filled in, where not all is; the rest is asked.
    fn link_with(write: impl FnOnce(&mut Writer)) -> Link {
        let mut writer = Writer::default();
        write(&mut writer);
        Link { calculator: Self::ABOUT.id, pairs: writer.pairs() }
    }

    /// What it explains: the topics of the rules whose numbers it shows.
    const EXPLAINS: &'static [Topic] = &[];

    /// Fills its fields from a case that was judged, so that it opens with the numbers the rule used;
    /// `None` where the case does not hold what it asks.
    fn fill(_case: &Case<'_>, _writer: &mut Writer) -> Option<()> {
        None
    }

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
    link: fn(&Draft) -> Result<Link, Problems>,
    reads_alike: fn(&Draft, &Draft) -> bool,
    explains: &'static [Topic],
    fill: fn(&Case<'_>) -> Option<Link>,
}

impl Entry {
    const fn of<C: Calculator>() -> Self {
        Self {
            about: C::ABOUT,
            explains: C::EXPLAINS,
            fill: |case| {
                let mut writer = Writer::default();
                C::fill(case, &mut writer)?;
                Some(Link { calculator: C::ABOUT.id, pairs: writer.pairs() })
            },
            evaluate: run::<C>,
            link: |draft| Ok(C::link(&parse::<C>(draft)?)),
            reads_alike: |one, other| match (parse::<C>(one), parse::<C>(other)) {
                (Ok(one), Ok(other)) => one == other,
                _ => false,
            },
        }
    }

    /// Evaluates a draft.
    ///
    /// # Errors
    /// All the problems of its fields at once.
    pub fn evaluate(&self, draft: &Draft) -> Result<Report, Problems> {
        (self.evaluate)(draft)
    }

    /// The link that its input writes: every field that counts, in full.
    ///
    /// # Errors
    /// All the problems of its fields at once.
    pub fn link(&self, draft: &Draft) -> Result<Link, Problems> {
        (self.link)(draft)
    }

    /// Whether two drafts read to the same input.
    pub fn reads_alike(&self, one: &Draft, other: &Draft) -> bool {
        (self.reads_alike)(one, other)
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

/// The calculator behind a rule of a topic, filled in from the case that was judged.
pub fn behind(case: &Case<'_>, topic: Topic) -> Option<Link> {
    let explaining = |topic| {
        let mut entries = REGISTER.iter().filter(|entry| entry.explains.contains(&topic));
        entries.find_map(|entry| (entry.fill)(case))
    };
    match (explaining(topic), topic) {
        // Kettle and barrel each explain their own loads; of electroplating only the class is explained.
        (None, Topic::Load) => explaining(Topic::Class),
        // Where bolt and nut are not both known, the threads are.
        (None, Topic::Strength) => explaining(Topic::Fit),
        (link, _) => link,
    }
}

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
    let mut report = C::explain(&input, &outcome);
    report.working.settle();
    Ok(report)
}

/// Reads a draft into a calculator's typed input.
///
/// # Errors
/// All the problems of its fields at once.
pub fn parse<C: Calculator>(draft: &Draft) -> Result<C::Input, Problems> {
    let mut reader = Reader::new(C::ABOUT.fields, draft);
    let input = C::read(&mut reader);
    reader.end(input)
}
