//! Which bolt goes into which nut under a coat: the pair that was ordered, then wider ones.
//!
//! Room for zinc is made in the nut (6G, or tapped over), or on the bolt (6f, 6e, or a thread that is
//! made smaller before the coat). [`Search::narrowest`] finds the first that assembles at its worst
//! corner: the greatest bolt, the thickest coat, the least nut.

use super::class::{BoltPosition, NutPosition};
use super::fit::{self, Assembly, Coat, DEFAULT_UNEVENNESS, PITCH_GROWTH};
use super::limits::{BoltLimits, NutLimits};
use super::overtap::Allowance;
use super::{Thread, ToleranceClass, coat_room};
use crate::process::Process;
use crate::quantity::Length;
use crate::source::{Sourced, assumed};
use crate::table::Refusal;

mod halves;
mod search;
mod trial;

pub use search::Search;

/// The share of a coat that reaches the inside of a nut in the barrel; no measured figure was found.
pub const INSIDE_SHARE: Sourced<f64> = assumed("share of a mechanical coat inside a nut").gives(0.5);

/// A nut that is tapped by what its coat needs leaves this much of the depth of the thread, or it is
/// agreed first: published nuts of the usual sizes leave about as much, or more.
pub const DEEP_OVERLAP: Sourced<f64> = assumed("overlap of a nut tapped as a matter of course").gives(0.40);

/// What an order says of its threads.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ordered {
    /// The thread.
    pub thread: Thread,
    /// The class of the bolt, as written or as its standard has it.
    pub bolt: ToleranceClass,
    /// The class of the nut, if it was written.
    pub nut: Option<ToleranceClass>,
    /// The user's own diametral allowance of the nut.
    pub own: Option<Length>,
    /// The length of the bolt, if it is known: ISO 4042 gives long plated bolts more room.
    pub length: Option<Length>,
    /// Whether the bolt is spun after the bath: then its nut is 6AZ; 6AX is for what is not spun.
    pub is_spun: bool,
    /// Whether a metric nut is one of ASTM A563M.
    pub is_astm: bool,
}

/// Where the room for the zinc is made.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Room {
    /// Nowhere: bolt and nut as they were ordered, the nut not tapped over.
    Ordered,
    /// The nut is of class 6G.
    NutG,
    /// The bolt is of this position before the coat: 6f or 6e.
    Bolt(BoltPosition),
    /// The nut is tapped over size.
    Tapped(Allowance),
    /// The bolt's thread is made smaller before the coat, by this much on every diameter.
    Smaller(Length),
}

/// A bolt and a nut, before any coat.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pair {
    /// Where the room is made.
    pub room: Room,
    /// Class of the bolt.
    pub class: ToleranceClass,
    /// The bolt.
    pub bolt: BoltLimits,
    /// The nut.
    pub nut: NutLimits,
}

/// What was found for a coat.
#[derive(Debug, Clone, PartialEq)]
pub enum Found {
    /// This pair assembles at its worst corner.
    Takes(Box<Mated>),
    /// No published pair assembles; the widest that was tried.
    Binds(Box<Mated>),
    /// No tapped nut is published for this thread: the allowance on the diameter that the coat needs.
    NotPublished(Length, Refusal),
    /// The limits of the thread are not known.
    Unknown(Refusal),
}

impl Found {
    /// The pair that goes together at least under an even coat: its room goes on the order.
    pub fn pair_to_order(&self) -> Option<&Mated> {
        match self {
            Self::Takes(mated) => Some(mated),
            Self::Binds(mated) if mated.assembly == Assembly::OnlyEven => Some(mated),
            Self::Binds(_) | Self::NotPublished(..) | Self::Unknown(_) => None,
        }
    }
}

/// A pair under its coat.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mated {
    /// The pair.
    pub pair: Pair,
    /// What coat its worst corner has room for.
    pub worst: fit::Room,
    /// Whether its worst corner goes together under the coat.
    pub assembly: Assembly,
    /// Overlap of the threads at minimum material, as a share of 5/8 H.
    pub overlap: f64,
}

impl Ordered {
    /// Whether the nut is the standard one, which leaves the search free to widen it.
    fn is_standard_nut(&self) -> bool {
        self.nut.is_none() && self.own.is_none()
    }
}

impl Room {
    /// The room that a nut of a class makes by itself.
    pub fn of_nut(class: ToleranceClass) -> Self {
        const G: ToleranceClass = ToleranceClass::nut(6, NutPosition::G);
        const AZ: ToleranceClass = ToleranceClass::nut(6, NutPosition::Az);
        const AX: ToleranceClass = ToleranceClass::nut(6, NutPosition::Ax);
        match class {
            G => Self::NutG,
            AZ => Self::Tapped(Allowance::Az),
            AX => Self::Tapped(Allowance::Ax),
            _ => Self::Ordered,
        }
    }
}

/// Which ways of making room are tried, beyond the pair that was ordered.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Ways {
    /// None.
    Ordered,
    /// The nut tapped over by a published allowance.
    Tapped,
    /// The nut 6G, or tapped over by a published allowance, or by what the coat needs.
    AnyNut,
    /// The nut 6G, or tapped over by a published allowance, and by nothing else.
    PublishedNut,
    /// The nut 6G, or tapped over by what the coat needs and no more.
    ThinNut,
    /// The nut 6G, the bolt 6f or 6e, or a thread that its maker makes smaller before the coat.
    Bolt,
}

/// The coat that shares the room: what lies on the bolt, and in the barrel the share of it that reaches
/// the inside of the nut.
///
/// A nut for hot-dip is tapped after the bath and bare; a plated nut meets its limits after plating. A
/// long plated bolt is thicker at its ends: ISO 4042 asks for room for 5 t and 6 t of the nominal
/// thickness instead of 4 t. Beyond 15 diameters it leaves the thickness to agreement, and the fit is
/// that of the thickness stated.
pub fn coat(
    process: Process,
    (thread, length): (Thread, Option<Length>),
    (min, max): (Length, Length),
    inside: f64,
) -> Coat {
    match process {
        Process::HotDip => Coat { min, max, unevenness: DEFAULT_UNEVENNESS.value },
        Process::Mechanical => {
            let both = 1.0 + inside;
            Coat { min: both * min, max: both * max, unevenness: 0.0 }
        }
        Process::Electroplated => plated(at_ends(thread, length), min, max),
    }
}

/// How many times its thickness the room is that ISO 4042 asks for under a plated coat of a metric bolt of
/// this length, in growths of the pitch diameter; `None` where it does not say.
fn at_ends(thread: Thread, length: Option<Length>) -> Option<f64> {
    let column = coat_room::iso_4042_column(thread, length.filter(|_| thread.is_metric())?).ok()?;
    Some(column.factor() / PITCH_GROWTH)
}

fn plated(at_ends: Option<f64>, min: Length, max: Length) -> Coat {
    let at_ends = at_ends.map_or(max, |times| times * min);
    Coat { min, max: max.max(at_ends), unevenness: 0.0 }
}
