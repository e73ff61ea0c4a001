//! Strength of a bolt in its nut: what breaks or strips first, and at which load.
//!
//! The model is Alexander's, as ISO/TR 16224 gives it: the bolt breaks at its stress area; its
//! thread strips where the nut's crest shears it; the nut's thread strips where the bolt's crest
//! shears it. Three factors take in that the nut widens (C1) and that threads bend when one side is
//! stronger than the other (C2, C3), and the bolt's area takes in that the nut opens like a bell.

use crate::quantity::{Area, Force, Length, Stress};
use crate::source::{Source, document};
use crate::table::Refusal;

use super::limits::{BoltLimits, Limits, NutLimits};

pub mod factor;
pub mod nut_height;
pub mod shear_area;

/// Where the model is published.
pub const MODEL: Source = document::ISO_16224.read("4.2, after Alexander 1977");

/// Shear strength as a share of tensile strength.
pub const SHEAR_SHARE: f64 = 0.6;

/// The four diameters that decide how much thread is sheared.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sizes {
    /// Pitch.
    pub pitch: Length,
    /// Major diameter of the bolt.
    pub bolt_major: Length,
    /// Pitch diameter of the bolt.
    pub bolt_pitch: Length,
    /// Minor diameter of the nut.
    pub nut_minor: Length,
    /// Pitch diameter of the nut.
    pub nut_pitch: Length,
}

/// What is pulled.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Joint {
    /// Nominal diameter of the thread.
    pub diameter: Length,
    /// Stress area of the bolt.
    pub stress_area: Area,
    /// Length of full thread in engagement.
    pub engagement: Length,
    /// Whether the nut is reckoned to open like a bell: see [`shear_area::bell_holds`].
    pub is_bell: bool,
    /// Width across flats of the nut.
    pub across_flats: Length,
    /// Tensile strength of the bolt.
    pub bolt_tensile: Stress,
    /// Tensile strength of the nut's steel.
    pub nut_tensile: Stress,
}

/// The loads at which a joint fails, and what they come from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Strength {
    /// Shear area of the bolt's thread, with bell-mouthing.
    pub bolt_area: Area,
    /// Shear area of the nut's thread.
    pub nut_area: Area,
    /// Strength ratio of nut thread to bolt thread.
    pub ratio: f64,
    /// The nut widens.
    pub c1: f64,
    /// The bolt's threads bend.
    pub c2: f64,
    /// The nut's threads bend.
    pub c3: f64,
    /// The bolt breaks.
    pub bolt_breaks: Force,
    /// The bolt's thread strips.
    pub bolt_strips: Force,
    /// The nut's thread strips.
    pub nut_strips: Force,
}

/// What gives way.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Failure {
    /// The bolt breaks in its thread: seen at once.
    BoltBreaks,
    /// The bolt's thread strips: may stay unseen at assembly.
    BoltStrips,
    /// The nut's thread strips: may stay unseen at assembly.
    NutStrips,
}

/// The strength of a joint with threads of these sizes.
///
/// # Errors
/// Refuses sizes that do not overlap, a nut whose width across flats is below 1.4 diameters, and
/// strength ratios outside 0.4 to 2.2, the ranges of the factors.
pub fn strength(joint: &Joint, sizes: Sizes) -> Result<Strength, Refusal> {
    let bolt_area = if joint.is_bell {
        shear_area::bolt_with_bell(sizes, joint.engagement)?
    } else {
        shear_area::bolt(sizes, joint.engagement)?
    };
    let nut_area = shear_area::nut(sizes, joint.engagement)?;
    let ratio = joint.nut_tensile.mpa() * nut_area.mm2() / (joint.bolt_tensile.mpa() * bolt_area.mm2());
    let c1 = factor::c1(joint.across_flats / joint.diameter)?;
    let (c2, c3) = (factor::c2(ratio)?, factor::c3(ratio)?);
    let strips = |tensile: Stress, area: Area, bending: f64| {
        Force::from_newton(SHEAR_SHARE * tensile.mpa() * area.mm2() * c1 * bending)
    };
    Ok(Strength {
        bolt_area,
        nut_area,
        ratio,
        c1,
        c2,
        c3,
        bolt_breaks: joint.bolt_tensile * joint.stress_area,
        bolt_strips: strips(joint.bolt_tensile, bolt_area, c2),
        nut_strips: strips(joint.nut_tensile, nut_area, c3),
    })
}

impl Strength {
    /// What fails first, and at which load.
    pub fn first(&self) -> (Failure, Force) {
        let (thread, load) = self.strips();
        if self.bolt_breaks <= load { (Failure::BoltBreaks, self.bolt_breaks) } else { (thread, load) }
    }

    /// Which thread strips first, and at which load.
    pub fn strips(&self) -> (Failure, Force) {
        if self.bolt_strips <= self.nut_strips {
            (Failure::BoltStrips, self.bolt_strips)
        } else {
            (Failure::NutStrips, self.nut_strips)
        }
    }

    /// By how much stripping lies above the bolt's breaking, as a share; below zero it comes first.
    pub fn margin(&self) -> f64 {
        self.strips().1 / self.bolt_breaks - 1.0
    }
}

impl Failure {
    /// In words.
    pub fn words(self) -> &'static str {
        match self {
            Self::BoltBreaks => "the bolt breaks",
            Self::BoltStrips => "the bolt's thread strips",
            Self::NutStrips => "the nut's thread strips",
        }
    }
}

impl Sizes {
    /// Least material: the smallest bolt in the widest nut.
    pub fn least_material(pitch: Length, bolt: &BoltLimits, nut: &NutLimits) -> Self {
        Self {
            pitch,
            bolt_major: bolt.major.min,
            bolt_pitch: bolt.pitch.min,
            nut_minor: nut.minor.max,
            nut_pitch: nut.pitch.max,
        }
    }

    /// Every size in the middle of its limits.
    pub fn nominal(pitch: Length, bolt: &BoltLimits, nut: &NutLimits) -> Self {
        let middle = |limits: Limits| Length::from_mm(f64::midpoint(limits.min.mm(), limits.max.mm()));
        Self {
            pitch,
            bolt_major: middle(bolt.major),
            bolt_pitch: middle(bolt.pitch),
            nut_minor: middle(nut.minor),
            nut_pitch: middle(nut.pitch),
        }
    }
}
