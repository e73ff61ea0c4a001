//! The 60° thread as a solid: its developed area and its volume for a length of thread.
//!
//! The thread is taken as rings of its profile, which is the helix with its lead set to zero; the
//! area of the true helicoid is larger by less than 0.2 % for every standard thread.

use std::f64::consts::PI;

use crate::quantity::Length;
use crate::source::{Source, document};
use crate::thread::Thread;

/// The basic profile of a thread, as far as area and volume need it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Profile {
    /// Nominal diameter `d`.
    pub diameter: Length,
    /// Pitch `P`.
    pub pitch: Length,
    /// Whether it belongs to an ISO metric thread; the standards of the parts differ.
    pub is_metric: bool,
}

/// The profile is that of ISO 68-1 and ASME B1.1; the root of the bolt is taken at `H/6`.
pub const SOURCE: Source =
    document::ISO_724.computed("basic profile: crest flat P/8, root of the bolt at H/6, thread angle 60°");

/// Crest flat of the bolt in pitches.
pub(super) const BOLT_CREST: f64 = 1.0 / 8.0;
/// Root flat of the bolt in pitches: the profile cut at `H/6` above the sharp root.
pub(super) const BOLT_ROOT: f64 = 1.0 / 6.0;
/// Both flanks of the bolt along the axis, in pitches; along the flank they measure twice that,
/// because `sin 30° = 1/2`, so each single flank is as long as both are along the axis.
pub(super) const BOLT_FLANKS: f64 = 17.0 / 24.0;
/// Crest flat of the nut in pitches.
pub(super) const NUT_CREST: f64 = 1.0 / 4.0;
/// Root flat of the nut in pitches.
pub(super) const NUT_ROOT: f64 = 1.0 / 8.0;
/// Both flanks of the nut along the axis, in pitches.
pub(super) const NUT_FLANKS: f64 = 5.0 / 8.0;

impl From<Thread> for Profile {
    fn from(thread: Thread) -> Self {
        Self { diameter: thread.diameter(), pitch: thread.pitch(), is_metric: thread.is_metric() }
    }
}

impl Profile {
    /// The profile of a metric thread.
    pub const fn metric(diameter: Length, pitch: Length) -> Self {
        Self { diameter, pitch, is_metric: true }
    }

    /// The profile of a unified inch thread.
    pub fn unified(diameter: Length, threads_per_inch: f64) -> Self {
        Self { diameter, pitch: Length::from_inch(1.0 / threads_per_inch), is_metric: false }
    }

    /// Root diameter of the bolt, `d3 = d − 17/24·√3·P = d − 1.2269 P`.
    pub fn root_diameter(&self) -> Length {
        self.diameter - 17.0 / 24.0 * 3f64.sqrt() * self.pitch
    }

    /// Pitch diameter, `d2 = d − 3/8·√3·P`.
    pub fn pitch_diameter(&self) -> Length {
        Length::from_mm(self.diameter.mm() - 3.0 / 8.0 * 3f64.sqrt() * self.pitch.mm())
    }

    /// Minor diameter of the nut, `D1 = D − 5/8·√3·P = D − 1.0825 P`.
    pub fn minor_diameter(&self) -> Length {
        self.diameter - 5.0 / 8.0 * 3f64.sqrt() * self.pitch
    }

    /// Developed area of the bolt's thread against the plain cylinder of its nominal diameter.
    pub fn bolt_factor(&self) -> f64 {
        let ratio = self.root_diameter() / self.diameter;
        BOLT_CREST + BOLT_ROOT * ratio + BOLT_FLANKS * (1.0 + ratio)
    }

    /// Developed area of the nut's thread against the plain cylinder of its nominal diameter.
    pub fn nut_factor(&self) -> f64 {
        let ratio = self.minor_diameter() / self.diameter;
        NUT_CREST * ratio + NUT_ROOT + NUT_FLANKS * (1.0 + ratio)
    }

    /// Mean cross-section of the threaded bolt, in mm².
    pub(super) fn bolt_section(&self) -> f64 {
        let (d, d3) = (self.diameter.mm(), self.root_diameter().mm());
        PI / 4.0 * (BOLT_CREST * d * d + BOLT_ROOT * d3 * d3 + BOLT_FLANKS / 3.0 * (d * d + d * d3 + d3 * d3))
    }

    /// Mean cross-section of the tapped hole, in mm².
    pub(super) fn nut_section(&self) -> f64 {
        let (d, d1) = (self.diameter.mm(), self.minor_diameter().mm());
        PI / 4.0 * (NUT_CREST * d1 * d1 + NUT_ROOT * d * d + NUT_FLANKS / 3.0 * (d * d + d * d1 + d1 * d1))
    }
}
