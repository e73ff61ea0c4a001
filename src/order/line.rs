//! The order line: what its fields say together.

use super::asked::{Asked, LeftOut};
use crate::calculator::{Draft, Problems, Reader, Writer};
use crate::part;
use crate::quantity::{Hardness, Length, Temperature, Time};
use crate::sentence::worded;
use crate::site::{Categories, Surroundings};
use crate::steel::{Grade, State};
use crate::thread::{Thread, ToleranceClass};

mod choices;
mod examples;
mod fields;
mod misfit;
mod read;
mod write;

pub(super) use choices::{
    BY_HARDNESS, BY_TENSILE, END_OF_STEEL, HOLE, HOLE_AS_IT_STANDS, LEAST, NOT_MADE, OTHER_METAL, PLACES,
};
pub use fields::{ABOUT, FIELDS, USUAL_BATH};

/// An order line, typed. What it does not say is `None`, and never taken from anywhere else.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OrderLine {
    /// Whether words of the written line stand unused of which nobody knows whether they ask for something.
    pub has_open_words: bool,
    /// What kind of part.
    pub part: part::Kind,
    /// Its thread, or for a washer the thread it goes on, if it was written.
    pub thread: Option<Thread>,
    /// The class of the thread, if it was written.
    pub class: Option<ToleranceClass>,
    /// Whether its thread is left-hand, and with it the nut's.
    pub is_left_hand: bool,
    /// Length, for what has one.
    pub length: Option<Length>,
    /// Number of pieces, or of sets.
    pub quantity: Option<u32>,
    /// The steel.
    pub steel: Option<State>,
    /// Whether the hardness or the strength by which it is known is the least that is asked for; what the
    /// greatest may be is not said then.
    pub is_steel_least: bool,
    /// Whether a grade was named that its document does not have in this size; then no steel is known.
    pub is_steel_not_made: bool,
    /// Whether a nylon patch is sprayed on the finished thread.
    pub has_patch: bool,
    /// The temperature it was tempered at, if known.
    pub temper: Option<Temperature>,
    /// What will surround it.
    pub surroundings: Surroundings,
    /// Where it will stand, if that is in air.
    pub place: Option<Categories>,
    /// The heat that it will bear in service, if anybody said.
    pub heat: Option<Temperature>,
    /// Years wanted, if anybody said.
    pub years: Option<Time>,
    /// The coat asked for; `None` asks for advice.
    pub asked: Option<Asked>,
    /// The greatest thickness of the coat that is taken, if anybody said.
    pub most: Option<Length>,
    /// What it leaves out, which is never taken.
    pub left_out: LeftOut,
    /// Temperature of the zinc in the kettle.
    pub bath: Temperature,
    /// The nuts that come with it.
    pub nut: Option<Mate>,
    /// The tapped hole that it goes into instead of a nut, where somebody says so.
    pub hole: Option<Hole>,
    /// The washers that come with it.
    pub washer: Option<Mate>,
    /// The user's own allowance of the nut over 6H or 2B, on the diameter.
    pub own_allowance: Option<Length>,
}

/// A tapped hole that a bolt goes into.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Hole {
    /// It is still to be made, with the room that the coat needs.
    ForTheCoat,
    /// It is tapped to 6H or 2B already.
    AsItStands,
}

/// A nut or washer that comes with a bolt.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mate {
    /// Its grade; where neither this nor its hardness is said, it is the one that the standards ask for.
    pub grade: Option<Grade>,
    /// Its hardness, if it is known by that.
    pub hardness: Option<Hardness>,
    /// Whether that is the least that is asked for; what the greatest may be is not said then.
    pub is_hardness_least: bool,
    /// What kind of washer, where it is not the usual one.
    pub kind: Option<part::Kind>,
    /// The class of its thread, if it was written.
    pub class: Option<ToleranceClass>,
    /// How many go with one bolt; one or more.
    pub per_set: u32,
}

impl OrderLine {
    /// Whether it goes into a tapped hole, and not into a nut.
    pub fn goes_into_a_tapped_hole(&self) -> bool {
        self.hole.is_some() || self.part.goes_into_a_tapped_hole()
    }

    /// That a coat is asked for which is not judged here, or no zinc, as a sentence without its end: then there is
    /// nothing to order.
    pub fn not_judged(&self) -> Option<String> {
        match self.asked {
            Some(Asked::Other(coat)) => {
                Some(worded(format_args!("{coat} is asked for, and is not judged here")))
            }
            _ => None,
        }
    }
}

/// Reads an order line.
///
/// # Errors
/// All the problems of its fields at once.
pub fn read(draft: &Draft) -> Result<OrderLine, Problems> {
    let mut reader = Reader::new(&FIELDS, draft);
    let line = read::read(&mut reader);
    reader.end(line)
}

/// Writes an order line, so that it reads to the same line again.
pub fn write(line: &OrderLine) -> Draft {
    let mut writer = Writer::default();
    write::write(line, &mut writer);
    writer.pairs().into_iter().collect()
}
