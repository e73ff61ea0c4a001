//! Unified limits: the formulas of ASME B1.1 with its rounding, in whole millionths of an inch.
//!
//! The document rounds on the way (tolerances to six places, allowances and limits to four), and
//! its last printed digit depends on it. So lengths here are integers.

use crate::quantity::Length;
use crate::source::{Basis, Source, Sourced};
use crate::table::Refusal;
use crate::table::asme_b1_1::{self, ExceptionalValue, Series};
use crate::thread::{H, Thread};

use super::{BoltLimits, Limits, NutLimits};

pub(super) const SOURCE: Source = Source { basis: Basis::Computed, ..asme_b1_1::FORMULAS };

/// Millionths of an inch.
type Micro = i64;

pub(super) fn bolt(thread: Thread, class: u8) -> Result<BoltLimits, Refusal> {
    let size = Size::of(thread);
    let (pitch_share, crest_factor) = match class {
        1 => (1.5, 0.090),
        2 => (1.0, 0.060),
        _ => (0.75, 0.060),
    };
    let pitch_tolerance = micro(pitch_share * inch(size.tolerance_2a));
    let major_tolerance = micro(crest_factor * size.pitch_to_two_thirds);
    let Sourced { value: allowance, source } = if class == 3 { SOURCE.gives(0) } else { size.allowance() };
    let major = size.diameter - allowance;
    let pitch = places_4(size.diameter - allowance - size.heights(0.75));
    let limits =
        |max: Micro, tolerance: Micro| Limits { min: length(places_4(max - tolerance)), max: length(max) };
    Ok(BoltLimits {
        major: limits(major, major_tolerance),
        pitch: limits(pitch, pitch_tolerance),
        minor_max: length(places_4(major - size.heights(1.25))),
        root_max: length(places_4(major - size.heights(1.375))),
        root_min: None,
        deviation: source.gives(length(-allowance)),
        pitch_tolerance: computed(pitch_tolerance),
        major_tolerance: computed(major_tolerance),
    })
}

pub(super) fn nut(thread: Thread, class: u8) -> Result<NutLimits, Refusal> {
    let size = Size::of(thread);
    let share = match class {
        1 => 1.95,
        2 => 1.3,
        _ => 0.975,
    };
    let pitch_tolerance = places_4(micro(share * inch(size.tolerance_2a)));
    let pitch_min = places_4(size.diameter - size.heights(0.75));
    let exact_minor = size.diameter - size.heights(1.25);
    let p = size.pitch;
    let (minor_tolerance, minor) = if class == 3 {
        let tolerance = micro(size.minor_tolerance_3b());
        // Class 3B prints four places, the least diameter as that of 2B with a zero behind it.
        (tolerance, (places_3(exact_minor), places_4(exact_minor + tolerance)))
    } else {
        let least = if size.per_inch >= 4.0 { 0.25 * p - 0.4 * p * p } else { 0.15 * p };
        // Below 1/4 in the tolerance follows the diameter, from that of the larger sizes up.
        let small = thread.number().map(|_| size.minor_tolerance_below_a_quarter().max(least));
        let tolerance = micro(small.unwrap_or(least));
        // Below #6 four places are printed; from #6 up to #12 these are rounded once more.
        let round = match thread.number() {
            Some(0..6) => places_4,
            Some(_) => |micro| places_3(places_4(micro)),
            None => places_3,
        };
        (tolerance, (round(exact_minor), round(exact_minor + tolerance)))
    };
    let (minor, minor_source) = match size.exceptional_minor() {
        Some(exceptional) if class != 3 => (exceptional.value, exceptional.source),
        _ => (minor, SOURCE),
    };
    Ok(NutLimits {
        major_min: length(size.diameter),
        pitch: Limits { min: length(pitch_min), max: length(pitch_min + pitch_tolerance) },
        minor: Limits { min: length(minor.0), max: length(minor.1) },
        deviation: SOURCE.gives(Length::from_mm(0.0)),
        pitch_tolerance: computed(pitch_tolerance),
        minor_tolerance: minor_source.gives(length(minor_tolerance)),
    })
}

struct Size {
    thread: Thread,
    diameter: Micro,
    /// Pitch in inches.
    pitch: f64,
    /// The same to the power of two thirds.
    pitch_to_two_thirds: f64,
    /// Threads per inch.
    per_inch: f64,
    /// Pitch-diameter tolerance of class 2A, from which all others are derived.
    tolerance_2a: Micro,
}

impl Size {
    fn of(thread: Thread) -> Self {
        let (d, p) = (thread.diameter().inch(), thread.pitch().inch());
        // Length of engagement: one diameter for the standard series, nine pitches for the others.
        let engagement = if thread.series() == Some(Series::Unef) { 9.0 * p } else { d };
        let per_inch = thread.threads_per_inch().unwrap_or(1.0 / p);
        let pitch_to_two_thirds = p.cbrt().powi(2);
        let tolerance = 0.0015 * d.cbrt() + 0.0015 * engagement.sqrt() + 0.015 * pitch_to_two_thirds;
        let tolerance_2a = micro(tolerance);
        Self { thread, diameter: micro(d), pitch: p, pitch_to_two_thirds, per_inch, tolerance_2a }
    }

    /// So many heights of the fundamental triangle.
    fn heights(&self, count: f64) -> Micro {
        micro(count * H * self.pitch)
    }

    fn allowance(&self) -> Sourced<Micro> {
        let printed = self.exception().find_map(|exception| match exception.value {
            ExceptionalValue::Allowance(allowance) => Some(exception.source.gives(allowance)),
            ExceptionalValue::NutMinor(..) => None,
        });
        printed.unwrap_or_else(|| SOURCE.gives(places_4(micro(0.3 * inch(self.tolerance_2a)))))
    }

    fn exceptional_minor(&self) -> Option<Sourced<(Micro, Micro)>> {
        self.exception().find_map(|exception| match exception.value {
            ExceptionalValue::NutMinor(min, max) => Some(exception.source.gives((min, max))),
            ExceptionalValue::Allowance(_) => None,
        })
    }

    fn exception(&self) -> impl Iterator<Item = &'static asme_b1_1::Exception> {
        let key = self.thread.inch_key();
        asme_b1_1::EXCEPTIONS
            .iter()
            .filter(move |exception| key == Some((exception.sixteenths, exception.per_two_inches)))
    }

    fn minor_tolerance_3b(&self) -> f64 {
        let p = self.pitch;
        let min = if self.per_inch >= 13.0 { 0.23 * p - 1.5 * p * p } else { 0.12 * p };
        // The document bounds its formula from both sides.
        self.minor_tolerance_below_a_quarter().max(min)
    }

    /// The formula of class 3B, which is also that of 2B below 1/4 in, bounded from above.
    fn minor_tolerance_below_a_quarter(&self) -> f64 {
        let (d, p) = (inch(self.diameter), self.pitch);
        (0.05 * self.pitch_to_two_thirds + 0.03 * p / d - 0.002).min(0.394 * p)
    }
}

fn computed(micro: Micro) -> Sourced<Length> {
    SOURCE.gives(length(micro))
}

fn length(micro: Micro) -> Length {
    Length::from_inch(inch(micro))
}

fn inch(micro: Micro) -> f64 {
    micro as f64 / 1e6
}

fn micro(inch: f64) -> Micro {
    (inch * 1e6).round() as Micro
}

/// To four places; a five behind them rounds up.
fn places_4(micro: Micro) -> Micro {
    (micro + 50).div_euclid(100) * 100
}

/// To three places; a five behind them rounds up.
fn places_3(micro: Micro) -> Micro {
    (micro + 500).div_euclid(1000) * 1000
}

#[cfg(test)]
mod tests {
    use super::*;

    fn thread(text: &str) -> Thread {
        crate::thread::Designation::read(text).unwrap().thread
    }

    /// By hand from clause 5.8 of ASME B1.1-2003: 0.05 · ∛P² + 0.03 · P/D − 0.002, never below 0.23 · P − 1.5 · P²
    /// from 13 threads per inch on (5/8-18), nor below 0.12 · P with fewer (1-8).
    #[test]
    fn the_minor_diameter_of_class_3b() {
        for (name, min, max) in [
            ("1/2-13 UNC", 0.417, 0.4284),
            ("5/8-11 UNC", 0.527, 0.5391),
            ("5/8-18 UNF", 0.565, 0.5730),
            ("1-8 UNC", 0.865, 0.8797),
        ] {
            let minor = nut(thread(name), 3).unwrap().minor;
            assert!((minor.min.inch() - min).abs() < 1e-7, "{name}: {}", minor.min.inch());
            assert!((minor.max.inch() - max).abs() < 1e-7, "{name}: {}", minor.max.inch());
        }
    }

    /// Class 1A has half as much again of the tolerances of 2A, at the flanks and at the crest; class 3A three
    /// quarters at the flanks (ASME B1.1-2003, 5.8).
    #[test]
    fn the_classes_of_bolts_differ_by_their_shares() {
        let of = |class| bolt(thread("5/8-11 UNC"), class).unwrap();
        let share = |class| {
            let (one, two) = (of(class), of(2));
            (
                one.pitch_tolerance.value / two.pitch_tolerance.value,
                one.major_tolerance.value / two.major_tolerance.value,
            )
        };
        for (class, pitch, crest) in [(1, 1.5, 1.5), (3, 0.75, 1.0)] {
            let (of_pitch, of_crest) = share(class);
            assert!((of_pitch - pitch).abs() < 1e-3 && (of_crest - crest).abs() < 1e-3, "{class}");
        }
        assert_eq!(of(1).deviation.value, of(2).deviation.value);
        assert_eq!(of(3).deviation.value, Length::ZERO);
    }
}
