//! The tap to order, and the hole before it.
//!
//! A tap cuts larger than it measures, and wears smaller. So the tap advised lies where makers put the
//! tap of a standard nut, with the allowance of the nut added: low in the limits, with room above.

use super::Thread;
use super::limits::{Limits, NutLimits};
use crate::quantity::{Length, Quantity, Shown, unit};
use crate::source::{Source, Sourced, assumed, document};
use crate::table::iso_965_1::{Tolerance, tolerance};
use crate::table::{Refusal, asme_b94_9, iso_2857, tap_drills};

/// How the thread is made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Making {
    /// Cut.
    Cut,
    /// Formed without chips.
    Formed,
}

/// A tap to order.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tap {
    /// What it is called.
    pub name: Name,
    /// Its pitch diameter.
    pub pitch: Limits,
    /// From the nut's minimum to the tap's: what it may wear.
    pub below: Length,
    /// From the tap's maximum to the nut's: what it may cut larger.
    pub above: Length,
    /// Where its place in the limits comes from.
    pub source: Source,
}

/// What a tap is called.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Name {
    /// A class of ISO 2857, with an oversize.
    Iso(u8, Length),
    /// An H number of a cutting tap, a G number of a forming one.
    Number(Making, u32),
    /// Such a number with an oversize that is no multiple of its steps.
    Plus(Making, u32, Length),
}

/// The hole before the tap.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hole {
    /// The drill for the standard thread.
    pub standard: Sourced<Length>,
    /// Its name in a list of inch drills.
    pub name: Option<&'static str>,
    /// With what the minor diameter of the nut is larger by.
    pub diameter: Length,
}

/// How much a ground tap cuts larger than it measures, in steel under fair conditions: up to this.
pub const CUTS_LARGER: Sourced<Length> =
    document::TAP_MAKERS_TEXT.memory("what ground taps cut over size").gives(Length::from_inch(0.0005));

/// Where no H number is recommended: so far up in the tolerance of 2B lies the end of the tap's band.
pub const PLACE: Sourced<f64> =
    assumed("place of a tap in the nut's limits, as of those recommended").gives(0.4);

/// Where drill and tap of a nut tapped over are said to grow by its allowance.
pub const OVER: Source = document::ISO_965_5.read("Table 1, EI alike on all diameters");

/// The tap for a nut of 6H or 2B, or one tapped over from it by a diametral allowance.
///
/// # Errors
/// A blank for forming taps that are not listed, whose limits are the maker's own, and a refusal where no tap leaves a margin
/// inside the limits.
pub fn tap(thread: Thread, nut: &NutLimits, allowance: Length, making: Making) -> Result<Tap, Refusal> {
    let (name, pitch, source) = match (making, thread.is_metric()) {
        (Making::Formed, _) => {
            let listed = thread.inch_key().and_then(|(d, n)| asme_b94_9::forming(d, n)).ok_or_else(|| {
                Refusal::blank(
                    &format!(
                        "the limit of a forming tap for {thread}, which is larger than that of a cutting tap"
                    ),
                    document::TAP_MAKERS_TEXT.read("forming taps"),
                )
            })?;
            inch(thread, making, listed.source.gives(listed.value.number), allowance)
        }
        (Making::Cut, true) => {
            let t = tolerance(Tolerance::NutPitch, iso_2857::GRADE, thread.diameter(), thread.pitch())?.value;
            let class = iso_2857::CLASS_2;
            let from = thread.pitch_diameter() + allowance;
            let pitch = Limits { min: from + class.from * t, max: from + class.to * t };
            (Name::Iso(class.number, allowance), pitch, iso_2857::SOURCE)
        }
        (Making::Cut, false) => {
            let small = || {
                let per_two_inches = (2.0 * thread.threads_per_inch()?).round() as u16;
                asme_b94_9::recommended_small(thread.number()?, per_two_inches, false)
            };
            let standard = thread
                .inch_key()
                .and_then(|(d, n)| asme_b94_9::recommended(d, n, false))
                .or_else(small)
                .unwrap_or_else(|| PLACE.source.gives(by_place(nut)));
            inch(thread, making, standard, allowance)
        }
    };
    let tap = Tap { name, pitch, below: pitch.min - nut.pitch.min, above: nut.pitch.max - pitch.max, source };
    // What is formed springs back: the thread comes out no larger than its tap.
    let larger = if making == Making::Cut { CUTS_LARGER.value } else { Length::ZERO };
    if tap.below >= Length::ZERO && tap.above > larger {
        return Ok(tap);
    }
    Err(Refusal::not_covered(
        &format!("a tap for {thread} that may cut {} larger", larger.show(&unit::UM, 0)),
        "nuts with a wider tolerance",
        source,
    ))
}

fn inch(thread: Thread, making: Making, standard: Sourced<u32>, allowance: Length) -> (Name, Limits, Source) {
    let basic = thread.pitch_diameter();
    let steps = allowance / asme_b94_9::STEP.value;
    if (steps - steps.round()).abs() < 1e-6 {
        let number = standard.value + steps.round() as u32;
        return (Name::Number(making, number), h_limits(basic, number), standard.source);
    }
    let limits = h_limits(basic, standard.value).moved(allowance);
    (Name::Plus(making, standard.value, allowance), limits, standard.source)
}

/// The H number whose band ends nearest below [`PLACE`] of the nut's tolerance.
fn by_place(nut: &NutLimits) -> u32 {
    let share = PLACE.value * ((nut.pitch.max - nut.pitch.min) / asme_b94_9::STEP.value);
    (share.floor() as u32).max(1)
}

impl Making {
    /// The letter of its taps' numbers.
    pub const fn letter(self) -> char {
        match self {
            Self::Cut => 'H',
            Self::Formed => 'G',
        }
    }
}

/// The pitch diameter of a tap of an H number, or of a G number, which counts alike.
pub fn h_limits(basic: Length, number: u32) -> Limits {
    let at = |steps: f64| basic + steps * asme_b94_9::STEP.value;
    Limits { min: at(f64::from(number) - 1.0), max: at(f64::from(number)) }
}

/// The hole before the tap; a nut tapped over gets it larger by its allowance, and one that is coated
/// afterwards by what the coat takes from its minor diameter.
pub fn hole(thread: Thread, larger: Length, making: Making) -> Hole {
    let by_share = || {
        let share = tap_drills::FORMING_SHARE;
        share.source.gives(thread.diameter() - share.value * thread.pitch())
    };
    let (name, standard) = match (making, thread.inch_key()) {
        (Making::Formed, key) => {
            let listed = key.and_then(|(d, n)| asme_b94_9::forming(d, n));
            (None, listed.map_or_else(by_share, |listed| listed.source.gives(listed.value.hole)))
        }
        (Making::Cut, Some((d, n))) => match tap_drills::inch(d, n) {
            Some((name, drill)) => (Some(name), drill),
            None => (None, by_rule(thread)),
        },
        (Making::Cut, None) if !thread.is_metric() => (None, by_rule(thread)),
        (Making::Cut, None) => {
            let listed = tap_drills::metric(thread.diameter().mm(), thread.pitch().mm());
            (None, listed.unwrap_or_else(|| by_rule(thread)))
        }
    };
    Hole { name, standard, diameter: standard.value + larger }
}

fn by_rule(thread: Thread) -> Sourced<Length> {
    tap_drills::CUTTING_RULE.gives(thread.diameter() - thread.pitch())
}

impl Name {
    /// As it is ordered; an oversize in the unit of the thread.
    pub fn words(self, show: impl Fn(Length) -> Shown) -> String {
        match self {
            Self::Iso(class, oversize) if oversize == Length::ZERO => format!("class {class}"),
            Self::Iso(class, oversize) => format!("class {class}, oversize {}", show(oversize)),
            Self::Number(making, number) => format!("{}{number}", making.letter()),
            Self::Plus(making, number, oversize) => {
                format!("{}{number} plus {}", making.letter(), show(oversize))
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 1/2-13 UNC-2B: 0.0065 in of tolerance are thirteen steps of half a thousandth, and four tenths of them five.
    #[test]
    fn a_tap_ends_where_those_recommended_do() {
        let thread = crate::thread::Designation::read("1/2-13 UNC").unwrap().thread;
        let class = crate::thread::ToleranceClass::read("2B").unwrap();
        let nut = super::super::limits::nut(thread, class).unwrap();
        assert!((nut.pitch.max - nut.pitch.min - Length::from_inch(0.0065)).abs().inch() < 1e-9);
        assert_eq!(by_place(&nut), 5);
    }
}
