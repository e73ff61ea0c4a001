//! What can stand in a piece of a line.

use std::borrow::Cow;

use super::wanted::Wanted;
use crate::process::Process;
use crate::quantity::Mass;
use crate::site::{Category, Surroundings};
use crate::source::Document;
use crate::steel::{Grade, Worked};
use crate::thread::{Thread, ToleranceClass};

/// What stands in a piece of a line, before its neighbours are asked.
#[derive(Debug, Clone, PartialEq)]
pub enum What {
    /// A thread.
    Thread(Written),
    /// A measure in inches that may be the size of a thread or a length.
    Inches {
        /// Its number.
        value: f64,
        /// As a field takes it.
        text: String,
    },
    /// Two measures with a cross between, without a thread's letter.
    Pair {
        /// The first number.
        first: String,
        /// The second number.
        second: String,
        /// Whether a unit says that they are millimetres.
        is_mm: bool,
    },
    /// Hole, outside and thickness of a washer: the hole, in millimetres.
    Washer(String),
    /// A length, as a field takes it.
    Length(String),
    /// The pitch of a thread, or its threads per inch, without its size.
    Pitch(String),
    /// A number of pieces.
    Count(Counted),
    /// A number by itself.
    Bare(Option<u64>),
    /// Words of a part's name.
    Part(&'static str),
    /// The standard of a part: the key of its kind.
    PartStandard(&'static str),
    /// A standard of several parts.
    PartDocument(&'static Document),
    /// A steel.
    Steel(SteelWord),
    /// A hardness or a tensile strength, as a field takes it; of a range the hardest end, and what is not said.
    Hardness(String, Option<String>),
    /// The hardness of the washer that comes with a bolt, as a field takes it.
    OfWasher(String),
    /// A finish by its process; whether its word also names a colour.
    Process(Process, bool),
    /// A finish by the key of its document or class.
    Coat(&'static str),
    /// A finish that is not judged here, by its key.
    Other(&'static str),
    /// A class of ASTM B695, or of a nut.
    Class(u32),
    /// A thickness of plated zinc in µm, by `Fe/Zn`, by `Zn`, by service condition or by a code; and
    /// whether letters for a chromate stand behind it.
    Zinc(u32, Family, bool),
    /// How much coat is asked for, by its thickness or by its mass on an area.
    Thickness(Wanted),
    /// The greatest coat that is taken, by its thickness or by its mass on an area.
    AtMost(Wanted),
    /// The mass of the lot, as it was written.
    Weight(String, Mass),
    /// A category of corrosivity.
    Category(Category),
    /// What surrounds a part that does not stand in air.
    Around(Surroundings),
    /// A place in words.
    Place(&'static [Category]),
    /// Years, as a field takes them.
    Years(String),
    /// A temperature, as a field takes it: of two the hotter, and then the colder.
    Temperature(String, Option<String>),
    /// In front of, or behind, the tempering temperature.
    Tempered,
    /// In front of, or behind, the temperature of the bath.
    Bath,
    /// The nut's own allowance, as a field takes it.
    Allowance(String),
    /// The thread of the nut is the standard one: it is not tapped over.
    StandardNut,
    /// A tapped hole that takes the part instead of a nut; `true` where it is there already.
    Hole(bool),
    /// A bake after the coat.
    Bake(Baked),
    /// At each of two ends, or on each of two sides.
    Ends,
    /// A field of yes or no that is said to be yes.
    Yes(&'static str),
    /// What was done to it after hardening, that leaves stress in it.
    Worked(Worked),
    /// The class of a thread.
    ThreadClass(ToleranceClass),
    /// Coarse or fine.
    Series(&'static str),
    /// What follows comes with the part; `true` where a word says so, `false` for `and`.
    With(bool),
    /// What follows is not wanted.
    Without,
    /// What stands before is not wanted.
    Excluded,
    /// What stands before, if it is a finish, or else what follows, was wanted until now.
    Was,
    /// The finishes before it were wanted until now.
    Instead,
    /// One of the two beside it.
    Or,
    /// The finish beside it is wanted first: behind it, or else in front.
    Preferred {
        /// Whether it speaks of what stands behind it.
        in_front: bool,
    },
    /// The finish before it will do as well.
    Acceptable,
    /// Said to people.
    Polite,
    /// Zinc at a temperature above the usual one.
    HighBath,
    /// A small number in words.
    Small(u32),
    /// A bolt with its nut.
    Set,
    /// A word that only binds.
    Filler,
    /// Understood, and not used: why.
    Not(Cow<'static, str>),
}

/// A thread as it was written.
#[derive(Debug, Clone, PartialEq)]
pub struct Written {
    /// As a field takes it.
    pub text: String,
    /// The thread, if there is such a one.
    pub thread: Option<Thread>,
    /// Whether only the size was written, and the pitch follows from it.
    pub of_size: bool,
    /// Whether its pitch was written.
    pub pitched: bool,
    /// Whether it counts only where no other thread is written: two whole numbers may be anything.
    pub weak: bool,
}

/// A bake as it was written.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Baked {
    /// For how many hours at least.
    pub hours: Option<f64>,
    /// At which temperatures, in °C.
    pub celsius: Option<(f64, f64)>,
}

/// A number of pieces.
#[derive(Debug, Clone, PartialEq)]
pub struct Counted {
    /// How many.
    pub pieces: u64,
    /// Whether they are sets.
    pub sets: bool,
    /// The first figures and the others, where a space stands between them.
    pub spaced: Option<(u32, u64)>,
    /// Whether a minus stands before it.
    pub negative: bool,
}

/// Where the thickness of plated zinc comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Family {
    /// `Fe/Zn 8`.
    FeZn,
    /// `Zn8`.
    Zn,
    /// `SC 2`, as the thickness of ASTM B633.
    B633,
    /// `A2K`: the code of ISO 4042:1999.
    Iso4042,
}

/// A steel as it was written.
#[derive(Debug, Clone, PartialEq)]
pub enum SteelWord {
    /// A grade known here.
    Grade(Grade),
    /// `grade 8`: SAE J429 for a bolt.
    Number(String),
    /// A document without a grade, or a grade without a document.
    Half(String),
    /// A steel that is not known here.
    Unknown(String),
    /// No carbon or alloy steel.
    OtherMetal,
}

/// What a rule found: one piece after the other.
pub type Found = Vec<(usize, What)>;

/// One piece.
pub fn one(end: usize, what: What) -> Option<Found> {
    Some(vec![(end, what)])
}
