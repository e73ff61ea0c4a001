//! Taps for nuts tapped over: the oversize to order and, for inch taps, the H number.

use crate::quantity::Length;
use crate::source::{Sourced, document};

use super::limits::Limits;

/// A step of the H numbers of inch taps: Hn lies between basic + (n − 1) and basic + n steps.
pub const STEP: Sourced<Length> =
    document::ASME_B94_9.memory("H limits, steps of .0005 in").gives(Length::from_inch(0.0005));

/// The H numbers whose whole band lies inside a nut's pitch-diameter limits; `None` if no band does.
pub fn h_numbers(basic: Length, pitch: Limits) -> Option<(u32, u32)> {
    let steps = |length: Length| (length.mm() - basic.mm()) / STEP.value.mm();
    // A thousandth of a step is rounding between inches and millimetres.
    let first = (steps(pitch.min) - 1e-3).ceil() + 1.0;
    let last = (steps(pitch.max) + 1e-3).floor();
    (first >= 1.0 && first <= last).then_some((first as u32, last as u32))
}

/// The pitch diameter of a tap of this H number, least and greatest.
pub fn h_limits(basic: Length, number: u32) -> Limits {
    let at = |steps: f64| basic + steps * STEP.value;
    Limits { min: at(f64::from(number) - 1.0), max: at(f64::from(number)) }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 1/2-13: basic .4500, tapped to .4680 to .4745: H37 is .4680 to .4685, H49 .4740 to .4745.
    #[test]
    fn h_numbers_lie_inside_the_nut() {
        let inch = Length::from_inch;
        let pitch = Limits { min: inch(0.4680), max: inch(0.4745) };
        assert_eq!(h_numbers(inch(0.45), pitch), Some((37, 49)));
        let limits = h_limits(inch(0.45), 37);
        assert!((limits.min.inch() - 0.4680).abs() < 1e-9 && (limits.max.inch() - 0.4685).abs() < 1e-9);
    }
}
