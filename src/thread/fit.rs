//! The coated fit: what a coat of zinc does to a bolt thread, and what room is left in the nut.
//!
//! Zinc grows at right angles to the surface. On flanks of 60° a coat t widens the pitch diameter
//! by `2 t / sin 30° = 4 t`; on crest and root, which lie along the axis, diameters grow by `2 t`.

use crate::quantity::Length;
use crate::source::{Source, assumed, document};

use super::limits::{BoltLimits, Limits, NutLimits};

/// The growth of the pitch diameter for each thickness of coat on the flanks.
pub const PITCH_GROWTH: f64 = 4.0;
/// The growth of major and minor diameter for each thickness of coat on crest and root.
pub const CREST_GROWTH: f64 = 2.0;
/// Where the two are published.
pub const GROWTH: Source = document::MACHINERYS_HANDBOOK.read("27th ed., p. 1793, after ASME B1.13M");

/// The default unevenness of a hot-dip coat on a thread.
///
/// No measured figure was found; readings taken on the head say little about the thread.
pub const DEFAULT_SPREAD: f64 = 0.25;
/// Where the default spread comes from.
pub const DEFAULT_SPREAD_SOURCE: Source = assumed("spread of a hot-dip coat over a thread");

/// A coat on a thread.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Coat {
    /// The least thickness stated.
    pub least: Length,
    /// The greatest thickness stated.
    pub greatest: Length,
    /// How unevenly it lies: roots and flanks carry up to `1 + spread` times the greatest, crests
    /// down to `1 − spread` times the least. 0 is an even coat; from 0 to below 1.
    pub spread: f64,
}

/// A bolt before and after its coat, in a nut.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fit {
    /// The bolt before the coat.
    pub bare: BoltLimits,
    /// The bolt after the coat.
    pub coated: Coated,
    /// The nut; its thread is bare.
    pub nut: NutLimits,
    /// Room on the pitch diameter.
    pub pitch: Limits,
    /// Room on the major diameter; the nut's greatest is not limited, so only the least is known.
    pub major_least: Length,
    /// Room on the minor diameter; likewise.
    pub minor_least: Length,
    /// Room on the pitch diameter with every size and the coat in the middle of its range.
    pub pitch_nominal: Length,
    /// The thickest stated coat that still assembles at the worst corner, with this spread.
    pub thickest: Length,
    /// The thickest even coat that still assembles at the worst corner.
    pub thickest_even: Length,
    /// Which diameter sets [`Fit::thickest_even`].
    pub governs: Diameter,
}

/// The limits of a bolt thread with its coat on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Coated {
    /// Major diameter.
    pub major: Limits,
    /// Pitch diameter.
    pub pitch: Limits,
    /// Greatest minor diameter, the flat of the GO gauge with the coat on it.
    pub minor_greatest: Length,
}

/// One of the three diameters on which bolt and nut can meet.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Diameter {
    /// The flanks.
    Pitch,
    /// The bolt's crest in the nut's root.
    Major,
    /// The nut's crest in the bolt's root.
    Minor,
}

/// A coated bolt in a nut, judged at its worst corner: greatest bolt, greatest coat, least nut.
pub fn fit(bare: BoltLimits, coat: Coat, nut: NutLimits) -> Fit {
    let coated = coated(bare, coat);
    let room = |nut: Length, bolt: Length| Length::from_mm(nut.mm() - bolt.mm());
    let pitch = Limits {
        least: room(nut.pitch.least, coated.pitch.greatest),
        greatest: room(nut.pitch.greatest, coated.pitch.least),
    };
    let middle = |limits: Limits| f64::midpoint(limits.least.mm(), limits.greatest.mm());
    let nominal_coat = f64::midpoint(coat.least.mm(), coat.greatest.mm());
    let bare_room = [
        (Diameter::Pitch, room(nut.pitch.least, bare.pitch.greatest), PITCH_GROWTH, 1.0 + coat.spread),
        (Diameter::Major, room(nut.major_least, bare.major.greatest), CREST_GROWTH, 1.0),
        (Diameter::Minor, room(nut.minor.least, bare.minor_greatest), CREST_GROWTH, 1.0 + coat.spread),
    ];
    let (mut thickest, mut thickest_even, mut governs) = (f64::INFINITY, f64::INFINITY, Diameter::Pitch);
    for (diameter, room, growth, spread) in bare_room {
        thickest = thickest.min(room.mm() / (growth * spread));
        if room.mm() / growth < thickest_even {
            (thickest_even, governs) = (room.mm() / growth, diameter);
        }
    }
    Fit {
        bare,
        coated,
        nut,
        pitch,
        major_least: room(nut.major_least, coated.major.greatest),
        minor_least: room(nut.minor.least, coated.minor_greatest),
        pitch_nominal: Length::from_mm(middle(nut.pitch) - middle(bare.pitch) - PITCH_GROWTH * nominal_coat),
        thickest: Length::from_mm(thickest),
        thickest_even: Length::from_mm(thickest_even),
        governs,
    }
}

/// A bolt thread with its coat on.
pub fn coated(bare: BoltLimits, coat: Coat) -> Coated {
    let grown = |limits: Limits, growth: f64, least: f64, greatest: f64| Limits {
        least: Length::from_mm(limits.least.mm() + growth * least * coat.least.mm()),
        greatest: Length::from_mm(limits.greatest.mm() + growth * greatest * coat.greatest.mm()),
    };
    let thickest = 1.0 + coat.spread;
    Coated {
        major: grown(bare.major, CREST_GROWTH, 1.0 - coat.spread, 1.0),
        pitch: grown(bare.pitch, PITCH_GROWTH, 1.0, thickest),
        minor_greatest: Length::from_mm(
            bare.minor_greatest.mm() + CREST_GROWTH * thickest * coat.greatest.mm(),
        ),
    }
}

impl Coat {
    /// An even coat.
    pub fn even(least: Length, greatest: Length) -> Self {
        Self { least, greatest, spread: 0.0 }
    }
}

impl Fit {
    /// Whether the worst corner goes together: no diameter of the coated bolt exceeds the nut's.
    ///
    /// Sizes are sums of numbers printed to a micrometre; a hundredth of one decides nothing.
    pub fn assembles(&self) -> bool {
        let limit = -1e-5;
        self.pitch.least.mm() >= limit && self.major_least.mm() >= limit && self.minor_least.mm() >= limit
    }
}

impl Diameter {
    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::Pitch => "pitch diameter",
            Self::Major => "major diameter",
            Self::Minor => "minor diameter",
        }
    }
}
