//! The coated fit: what a coat of zinc does to a bolt thread, and what room is left in the nut.
//!
//! Zinc grows at right angles to the surface. On flanks of 60° a coat t widens the pitch diameter
//! by `2 t / sin 30° = 4 t`; on crest and root, which lie along the axis, diameters grow by `2 t`.

use crate::quantity::Length;
use crate::source::{Source, Sourced, assumed, document};

use super::H;
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
pub const DEFAULT_UNEVENNESS: Sourced<f64> = assumed("spread of a hot-dip coat over a thread").gives(0.25);

/// A coat on a thread.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Coat {
    /// The least thickness stated.
    pub min: Length,
    /// The greatest thickness stated.
    pub max: Length,
    /// How unevenly it lies: roots and flanks carry up to `1 + spread` times the greatest, crests
    /// down to `1 − spread` times the least. 0 is an even coat; from 0 to below 1.
    pub unevenness: f64,
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
    pub major_min: Length,
    /// Room on the minor diameter; likewise.
    pub minor_min: Length,
    /// Room on the pitch diameter with every size, the coat and its unevenness in the middle.
    pub pitch_nominal: Length,
    /// What coat the worst corner has room for.
    pub worst: Room,
    /// Whether the worst corner goes together.
    pub assembly: Assembly,
}

/// What coat a bare bolt and a nut have room for at their worst corner.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Room {
    /// The thickest stated coat that still assembles, with its spread.
    pub thickest: Length,
    /// The thickest even coat that still assembles.
    pub thickest_even: Length,
    /// Which diameter sets [`Room::thickest_even`].
    pub governs: Diameter,
}

/// Whether the worst corner of a coated bolt and a nut goes together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Assembly {
    /// It does.
    Assembles,
    /// It would if the coat were even, and does not with the unevenness stated.
    OnlyEven,
    /// It does not.
    Binds,
}

/// The limits of a bolt thread with its coat on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Coated {
    /// Major diameter.
    pub major: Limits,
    /// Pitch diameter.
    pub pitch: Limits,
    /// Greatest minor diameter, the flat of the GO gauge with the coat on it.
    pub minor_max: Length,
}

/// One corner of the tolerance field: sizes of bolt and nut, coat, and the room left.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Corner {
    /// Bolt before the coat: major, pitch, minor.
    pub bolt: [Length; 3],
    /// Coat on crest, flank and root.
    pub coat: [Length; 3],
    /// Nut: major, pitch, minor.
    pub nut: [Length; 3],
    /// Room on major, pitch and minor diameter; below zero where they bind.
    pub room: [Length; 3],
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
    let pitch = Limits { min: nut.pitch.min - coated.pitch.max, max: nut.pitch.max - coated.pitch.min };
    let [_, pitch_nominal, _] = corner(&bare, coat, &nut, 0.5).room;
    let worst = room(bare.greatest(), nut.least(), coat.unevenness);
    Fit {
        bare,
        coated,
        nut,
        pitch,
        major_min: nut.major_min - coated.major.max,
        minor_min: nut.minor.min - coated.minor_max,
        pitch_nominal,
        worst,
        assembly: worst.assembly(coat.max),
    }
}

/// What coat the worst corner of a bare bolt and a nut has room for, when it lies with this spread: the
/// greatest bolt ([`BoltLimits::greatest`]) in the least nut ([`NutLimits::least`]).
pub fn room(bare: [Length; 3], nut: [Length; 3], unevenness: f64) -> Room {
    let ([bolt_pitch, bolt_major, bolt_minor], [nut_pitch, nut_major, nut_minor]) = (bare, nut);
    let rooms = [
        (Diameter::Pitch, (nut_pitch.mm() - bolt_pitch.mm()) / PITCH_GROWTH, 1.0 + unevenness),
        (Diameter::Major, (nut_major.mm() - bolt_major.mm()) / CREST_GROWTH, 1.0),
        (Diameter::Minor, (nut_minor.mm() - bolt_minor.mm()) / CREST_GROWTH, 1.0 + unevenness),
    ];
    let (mut thickest, mut thickest_even, mut governs) = (f64::INFINITY, f64::INFINITY, Diameter::Pitch);
    for (diameter, even, uneven) in rooms {
        thickest = thickest.min(even / uneven);
        if even < thickest_even {
            (thickest_even, governs) = (even, diameter);
        }
    }
    Room { thickest: Length::from_mm(thickest), thickest_even: Length::from_mm(thickest_even), governs }
}

impl Room {
    /// Whether the worst corner goes together under a coat that is this thick at most.
    pub fn assembly(&self, max: Length) -> Assembly {
        // Sizes are sums of numbers printed to a micrometre; a hundredth of one decides nothing.
        match max.mm() - 1e-5 {
            max if max <= self.thickest.mm() => Assembly::Assembles,
            max if max <= self.thickest_even.mm() => Assembly::OnlyEven,
            _ => Assembly::Binds,
        }
    }
}

/// The worst, the nominal and the best corner, for a picture.
///
/// The greatest major diameter of a nut and the least minor diameter of a bolt are not limited; they
/// are taken as far from their other limit as the pitch diameter is from its own.
pub fn corners(bare: BoltLimits, coat: Coat, nut: NutLimits) -> [Corner; 3] {
    [0.0, 0.5, 1.0].map(|share| corner(&bare, coat, &nut, share))
}

/// The corner at a share of every tolerance: 0 is the worst, 1 the best.
fn corner(bare: &BoltLimits, coat: Coat, nut: &NutLimits, share: f64) -> Corner {
    let mm = Length::mm;
    let between = |min: f64, max: f64| min + share * (max - min);
    // The bolt's share counts from its greatest size, the nut's from its least.
    let bolt_pitch = between(mm(bare.pitch.max), mm(bare.pitch.min));
    let bolt_minor = mm(bare.minor_max) - (mm(bare.pitch.max) - bolt_pitch);
    let nut_pitch = between(mm(nut.pitch.min), mm(nut.pitch.max));
    let nut_major = mm(nut.major_min) + (nut_pitch - mm(nut.pitch.min));
    let bolt = [between(mm(bare.major.max), mm(bare.major.min)), bolt_pitch, bolt_minor];
    let nut = [nut_major, nut_pitch, between(mm(nut.minor.min), mm(nut.minor.max))];
    let thickness = between(mm(coat.max), mm(coat.min));
    let uneven = coat.unevenness * (1.0 - share);
    let coat =
        [thickness * (1.0 - coat.unevenness * share), thickness * (1.0 + uneven), thickness * (1.0 + uneven)];
    let ([bolt_major, _, _], [_, _, nut_minor], [crest, flank, root]) = (bolt, nut, coat);
    let room = [
        nut_major - bolt_major - CREST_GROWTH * crest,
        nut_pitch - bolt_pitch - PITCH_GROWTH * flank,
        nut_minor - bolt_minor - CREST_GROWTH * root,
    ];
    let lengths = |numbers: [f64; 3]| numbers.map(Length::from_mm);
    Corner { bolt: lengths(bolt), coat: lengths(coat), nut: lengths(nut), room: lengths(room) }
}

/// The depth at which bolt and nut overlap at their least material, as a share of the basic 5/8 H: the
/// least major diameter of the bolt over the greatest minor diameter of the nut.
pub fn overlap(bolt_major: Length, nut_minor: Length, pitch: Length) -> f64 {
    (bolt_major.mm() - nut_minor.mm()) / 2.0 / (0.625 * H * pitch.mm())
}

/// The least share of overlap that a pair must keep at least material; what leaves less will not do.
///
/// No document was found to state a floor. The least that a published pair leaves is a little less than
/// 33 %: 1/4-20 2A in a nut tapped over by ASTM A563 (.016 in); this is just below it.
pub const LEAST_OVERLAP: Sourced<f64> =
    assumed("least thread overlap, just below that of published pairs").gives(0.30);

/// Whether a pair keeps enough thread: a share of [`overlap`] of [`LEAST_OVERLAP`] or more.
pub fn keeps_enough(overlap: f64) -> bool {
    overlap >= LEAST_OVERLAP.value
}

/// A bolt thread with its coat on.
pub fn coated(bare: BoltLimits, coat: Coat) -> Coated {
    let grown = |limits: Limits, growth: f64, min: f64, max: f64| Limits {
        min: limits.min + growth * min * coat.min,
        max: limits.max + growth * max * coat.max,
    };
    let thickest = 1.0 + coat.unevenness;
    Coated {
        major: grown(bare.major, CREST_GROWTH, 1.0 - coat.unevenness, 1.0),
        pitch: grown(bare.pitch, PITCH_GROWTH, 1.0, thickest),
        minor_max: bare.minor_max + CREST_GROWTH * thickest * coat.max,
    }
}

impl Coat {
    /// An even coat.
    pub fn even(min: Length, max: Length) -> Self {
        Self { min, max, unevenness: 0.0 }
    }
}

impl Fit {
    /// Whether the worst corner goes together: no diameter of the coated bolt exceeds the nut's.
    pub fn assembles(&self) -> bool {
        self.assembly == Assembly::Assembles
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

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand: at the crests a coat takes its thickness twice, so a tenth of room on the major diameter takes
    /// 0.05 mm; on the flanks of 60° four times.
    #[test]
    fn the_narrowest_diameter_governs() {
        let mm = |sizes: [f64; 3]| sizes.map(Length::from_mm);
        for (nut, governs, thickest) in [
            ([14.0, 12.1, 12.0], Diameter::Major, 0.05),
            ([10.1, 20.0, 20.0], Diameter::Pitch, 0.025),
            ([20.0, 20.0, 8.1], Diameter::Minor, 0.05),
        ] {
            let room = room(mm([10.0, 12.0, 8.0]), mm(nut), 0.0);
            assert_eq!(room.governs, governs);
            assert!((room.thickest.mm() - thickest).abs() < 1e-9, "{nut:?}: {room:?}");
            assert!((room.thickest_even.mm() - thickest).abs() < 1e-9, "{nut:?}: {room:?}");
        }
        // What is a quarter thicker at one place has room for four fifths.
        let uneven = super::room(mm([10.0, 12.0, 8.0]), mm([10.1, 20.0, 20.0]), 0.25);
        assert!(
            (uneven.thickest.mm() - 0.02).abs() < 1e-9 && (uneven.thickest_even.mm() - 0.025).abs() < 1e-9
        );
    }
}
