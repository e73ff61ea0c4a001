//! The order line: what its fields say together.

use super::asked::{self, Asked};
use crate::calculator::{Draft, Fault, Problem, Problems, Reader};
use crate::part;
use crate::quantity::{Length, Temperature, Time};
use crate::site::Category;
use crate::steel::{Grade, State, Steel};
use crate::thread::{Designation, Thread, ToleranceClass};

mod fields;

pub use fields::{ABOUT, FIELDS};

/// An order line, typed. What it does not say is `None`, and never taken from anywhere else.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OrderLine {
    /// What kind of part.
    pub part: part::Kind,
    /// Its thread; for a washer, the thread it goes on.
    pub thread: Thread,
    /// The class of the thread, if it was written.
    pub class: Option<ToleranceClass>,
    /// Length, for what has one.
    pub length: Option<Length>,
    /// Number of pieces, or of sets.
    pub quantity: Option<u32>,
    /// The steel.
    pub steel: Option<State>,
    /// The temperature it was tempered at, if known.
    pub temper: Option<Temperature>,
    /// Where it will stand.
    pub place: Option<Category>,
    /// Years wanted, if anybody said.
    pub years: Option<Time>,
    /// The coat asked for; `None` asks for advice.
    pub asked: Option<Asked>,
    /// Temperature of the zinc in the kettle.
    pub bath: Temperature,
    /// The nuts that come with it.
    pub nut: Option<Mate>,
    /// The washers that come with it.
    pub washer: Option<Mate>,
    /// The user's own allowance of the nut over 6H or 2B, on the diameter.
    pub own_allowance: Option<Length>,
}

/// A nut or washer that comes with a bolt.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mate {
    /// Its grade; `None` is the one that the standards ask for.
    pub grade: Option<Grade>,
    /// The class of its thread, if it was written.
    pub class: Option<ToleranceClass>,
    /// How many go with one bolt; one or more.
    pub per_set: u32,
}

/// Reads an order line.
///
/// # Errors
/// All the problems of its fields at once.
pub fn read(draft: &Draft) -> Result<OrderLine, Problems> {
    let mut reader = Reader::new(&FIELDS, draft);
    let line = typed(&mut reader);
    reader.finish(line)
}

/// Every field is read before any answer is missed, so that all problems are told at once.
fn typed(reader: &mut Reader<'_>) -> Option<OrderLine> {
    let part = reader.choice("part", part::Kind::from_key);
    let designation = reader.parsed("thread", Designation::read);
    let length = reader.quantity::<Length>("length");
    let quantity = reader.count("quantity");
    let steel = steel(reader, part, designation.map(|it| it.thread));
    let temper = reader.quantity::<Temperature>("temper");
    let nut = nut(reader, designation.map(|it| it.thread));
    let washer = mate(reader, "washer", "washers", None);
    let own_allowance = reader.quantity::<Length>("own_allowance");
    let place = reader.choice("place", Category::read);
    let years = reader.quantity::<Time>("years");
    let asked = reader.choice("asked", |key| match key {
        asked::ADVISE => Some(None),
        _ => asked::from_key(key).map(Some),
    });
    let bath = reader.quantity::<Temperature>("bath");
    let (part, designation) = (part?, designation?);
    if designation.class.is_some_and(|class| class.is_bolt() == part.is_nut()) {
        reader.problem("thread", Fault::Conflict(OTHER_HALF.to_owned()));
        return None;
    }
    Some(OrderLine {
        part,
        thread: designation.thread,
        class: designation.class,
        length,
        quantity,
        steel,
        temper,
        place,
        years,
        asked: asked?,
        bath: bath?,
        nut,
        washer,
        own_allowance,
    })
}

const OTHER_HALF: &str =
    "the class belongs to the other half of the pair: bolts take 6g, 8g or 2A, nuts take 6H or 2B";

/// The steel and what was done to it; a grade that its standard does not have in this size is a problem
/// of the field.
fn steel(reader: &mut Reader<'_>, part: Option<part::Kind>, thread: Option<Thread>) -> Option<State> {
    let grade = reader.choice("steel", |key| match key {
        "hardness" => Some(None),
        _ => Grade::of_key(key).map(Some),
    });
    let hardness = reader.hardness("hardness");
    let yes = |key: &str| Some(key == "yes");
    let usually = part.is_some_and(|part| part.usual_steel() == part::UsualSteel::CaseHardened);
    let case = reader.choice("case", |key| Some((key != "usual").then_some(key == "yes")))?;
    let cold_worked = reader.choice("cold", yes)?;
    let case_hardened = case.unwrap_or(usually);
    let Some(grade) = grade else {
        // How it was treated is judged only on a steel that is known.
        if (case == Some(true) || cold_worked) && reader.is_empty("steel") {
            reader.problem("steel", Fault::Missing);
        }
        return None;
    };
    let steel = match grade {
        Some(grade) => of_size(reader, grade, thread?)?,
        None => Steel::Hardness(hardness?),
    };
    Some(State { steel, case_hardened, cold_worked })
}

fn of_size(reader: &mut Reader<'_>, grade: Grade, thread: Thread) -> Option<Steel> {
    match Steel::grade(grade, thread.diameter()) {
        Ok(steel) => Some(steel),
        Err(refusal) => {
            reader.problem("steel", Problem::refused("steel", "Steel", refusal).fault);
            None
        }
    }
}

fn nut(reader: &mut Reader<'_>, thread: Option<Thread>) -> Option<Mate> {
    let class = reader.parsed("nut_class", |text| {
        ToleranceClass::read(text)
            .ok_or_else(|| format!("“{text}” is no class of a nut; write 6H, 6AZ, 6AX or 2B"))
    });
    if let (Some(class), Some(thread)) = (class, thread)
        && (class.is_bolt() || class.is_metric() != thread.is_metric())
    {
        let nuts = if thread.is_metric() { "6H, 6AZ or 6AX" } else { "2B" };
        reader.problem(
            "nut_class",
            Fault::Conflict(format!("{class} is no class of a nut for {thread}; write {nuts}")),
        );
    }
    mate(reader, "nut", "nuts", class)
}

fn mate(reader: &mut Reader<'_>, name: &str, per_set: &str, class: Option<ToleranceClass>) -> Option<Mate> {
    let grade = reader.choice(name, |key| match key {
        fields::NONE => Some(None),
        fields::STANDARD => Some(Some(None)),
        _ => Grade::of_key(key).map(|grade| Some(Some(grade))),
    });
    let per_set = reader.count(per_set);
    Some(Mate { grade: grade??, class, per_set: per_set? })
}
