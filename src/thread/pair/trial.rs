//! A pair that is tried for a coat.

use super::{Mated, Pair, Room};
use crate::quantity::Length;
use crate::source::document;
use crate::thread::fit::{self, Assembly, Coat};

/// A pair whose halves are those of a class, and what holds of it under every coat.
#[derive(Debug, Clone)]
pub(super) struct Known {
    pub(super) pair: Pair,
    /// What even coat its worst corner has room for.
    even: fit::Room,
    /// Overlap of the threads at minimum material, as a share of 5/8 H.
    overlap: f64,
    pitch: Length,
}

/// A pair that is tried: one that is known, or the same with more room made in one of its halves.
#[derive(Clone, Copy)]
pub(super) struct Trial<'a> {
    pub(super) room: Room,
    known: &'a Known,
    /// The room that is made in one of them beyond its class, on the diameter.
    beyond: Option<Length>,
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

impl Known {
    pub(super) fn new(pair: Pair, pitch: Length) -> Self {
        let even = fit::room(pair.bolt.greatest(), pair.nut.least(), 0.0);
        let overlap = fit::overlap(pair.bolt.major.min, pair.nut.minor.max, pitch);
        Self { pair, even, overlap, pitch }
    }

    /// The pair as it is.
    pub(super) fn trial(&self) -> Trial<'_> {
        Trial { room: self.pair.room, known: self, beyond: None }
    }
}

impl Tried<'_> {
    pub(super) fn assembles(&self) -> bool {
        self.assembly == Assembly::Assembles
    }

    pub(super) fn mated(&self) -> Box<Mated> {
        let Self { trial, worst, assembly } = *self;
        Box::new(Mated { pair: trial.pair(), worst, assembly, overlap: trial.overlap() })
    }
}

impl<'a> Trial<'a> {
    /// The same, with so much more room made there.
    pub(super) fn with(self, room: Room, beyond: Length) -> Self {
        Self { room, beyond: Some(beyond), ..self }
    }

    pub(super) fn under(self, coat: Coat) -> Tried<'a> {
        let worst = match self.beyond {
            None if coat.unevenness == 0.0 => self.known.even,
            _ => self.worst(coat.unevenness),
        };
        Tried { trial: self, worst, assembly: worst.assembly(coat.max) }
    }

    fn worst(&self, unevenness: f64) -> fit::Room {
        let (smaller, wider) = self.made();
        let bolt = self.known.pair.bolt.greatest().map(|diameter| diameter - smaller);
        let nut = self.known.pair.nut.least().map(|diameter| diameter + wider);
        fit::room(bolt, nut, unevenness)
    }

    /// Overlap of the threads at minimum material, as a share of 5/8 H.
    pub(super) fn overlap(&self) -> f64 {
        let Known { pair, overlap, pitch, .. } = self.known;
        if self.beyond.is_none() {
            return *overlap;
        }
        let (smaller, wider) = self.made();
        fit::overlap(pair.bolt.major.min - smaller, pair.nut.minor.max + wider, *pitch)
    }

    pub(super) fn pair(&self) -> Pair {
        let known = &self.known.pair;
        let (smaller, wider) = self.made();
        match (self.beyond, self.room) {
            (None, _) => *known,
            (Some(_), room @ Room::Smaller(_)) => Pair { room, bolt: known.bolt.smaller(smaller), ..*known },
            (Some(_), room) => {
                let source = document::ARITHMETIC.computed("allowance that the coat needs");
                Pair { room, nut: known.nut.widened(source.gives(wider)), ..*known }
            }
        }
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
