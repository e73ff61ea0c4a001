//! A pair that is tried for a coat.

use super::{Pair, Room};
use crate::quantity::Length;
use crate::source::document;
use crate::thread::ToleranceClass;
use crate::thread::fit::{self, Assembly, Coat};
use crate::thread::limits::{BoltLimits, NutLimits};

/// A pair that is tried: its halves stand in the search, and are copied for the one that is taken.
#[derive(Clone, Copy)]
pub(super) struct Trial<'a> {
    pub(super) room: Room,
    pub(super) class: ToleranceClass,
    pub(super) bolt: &'a BoltLimits,
    pub(super) nut: &'a NutLimits,
    /// The room that is made in one of them beyond its class, on the diameter.
    pub(super) beyond: Option<Length>,
}

/// A pair under a coat.
#[derive(Clone, Copy)]
pub(super) struct Tried<'a> {
    pub(super) trial: Trial<'a>,
    /// What coat its worst corner has room for.
    pub(super) worst: fit::Room,
    /// Whether its worst corner goes together.
    pub(super) assembly: Assembly,
}

impl Tried<'_> {
    pub(super) fn assembles(&self) -> bool {
        self.assembly == Assembly::Assembles
    }
}

impl<'a> Trial<'a> {
    pub(super) fn under(self, coat: Coat) -> Tried<'a> {
        let (smaller, wider) = self.made();
        let bolt = self.bolt.greatest().map(|diameter| diameter - smaller);
        let nut = self.nut.least().map(|diameter| diameter + wider);
        self.with_room(fit::room(bolt, nut, coat.unevenness), coat)
    }

    /// The same, where it is known what coat its worst corner has room for.
    pub(super) fn with_room(self, worst: fit::Room, coat: Coat) -> Tried<'a> {
        Tried { trial: self, worst, assembly: worst.assembly(coat.max) }
    }

    /// Overlap of the threads at minimum material, as a share of 5/8 H.
    pub(super) fn overlap(&self, pitch: Length) -> f64 {
        let (smaller, wider) = self.made();
        fit::overlap(self.bolt.major.min - smaller, self.nut.minor.max + wider, pitch)
    }

    pub(super) fn into_pair(self) -> Pair {
        let (smaller, wider) = self.made();
        let (bolt, nut) = match (self.beyond, self.room) {
            (None, _) => (*self.bolt, *self.nut),
            (Some(_), Room::Smaller(_)) => (self.bolt.smaller(smaller), *self.nut),
            (Some(_), _) => {
                let source = document::ARITHMETIC.computed("allowance that the coat needs");
                (*self.bolt, self.nut.widened(source.gives(wider)))
            }
        };
        Pair { room: self.room, class: self.class, bolt, nut }
    }

    /// How much smaller the bolt and how much wider the nut is than its class.
    fn made(&self) -> (Length, Length) {
        match (self.beyond, self.room) {
            (None, _) => (Length::ZERO, Length::ZERO),
            (Some(by), Room::Smaller(_)) => (by, Length::ZERO),
            (Some(by), _) => (Length::ZERO, by),
        }
    }
}
