//! Limits of size of bolt and nut threads, before any coat.

use crate::quantity::Length;
use crate::source::Sourced;
use crate::table::Refusal;

use super::class::NutPosition;
use super::{Thread, ToleranceClass};

pub(super) mod metric;
mod unified;

/// A least and a greatest length.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limits {
    /// The least.
    pub min: Length,
    /// The greatest.
    pub max: Length,
}

/// The limits of size of a bolt thread.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BoltLimits {
    /// Major diameter d.
    pub major: Limits,
    /// Pitch diameter d2.
    pub pitch: Limits,
    /// Greatest minor diameter d1, the flat of the GO gauge: what a nut's crest must clear.
    pub minor_max: Length,
    /// Greatest root diameter d3 of a rounded root; unified threads: root UNR.
    pub root_max: Length,
    /// Least root diameter d3, where the standard gives one.
    pub root_min: Option<Length>,
    /// Fundamental deviation es, zero or below: the allowance with a minus sign.
    pub deviation: Sourced<Length>,
    /// Tolerance of the pitch diameter.
    pub pitch_tolerance: Sourced<Length>,
    /// Tolerance of the major diameter.
    pub major_tolerance: Sourced<Length>,
}

/// The limits of size of a nut thread.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NutLimits {
    /// Least major diameter D.
    pub major_min: Length,
    /// Pitch diameter D2.
    pub pitch: Limits,
    /// Minor diameter D1.
    pub minor: Limits,
    /// Fundamental deviation EI, zero or above.
    pub deviation: Sourced<Length>,
    /// Tolerance of the pitch diameter.
    pub pitch_tolerance: Sourced<Length>,
    /// Tolerance of the minor diameter.
    pub minor_tolerance: Sourced<Length>,
}

/// The limits of a bolt thread: ISO 965-1 and ISO 965-4 by their tables, ASME B1.1 by its formulas.
///
/// # Errors
/// Refuses a class that is not a bolt's, that belongs to the other system of threads, or that the
/// tables do not have for this thread.
pub fn bolt(thread: Thread, class: ToleranceClass) -> Result<BoltLimits, Refusal> {
    match (thread.is_metric(), class) {
        (true, ToleranceClass::Bolt(class)) => metric::bolt(thread, class),
        (false, ToleranceClass::UnifiedBolt(class)) => unified::bolt(thread, class),
        _ => Err(wrong_class(thread, class, "bolt", "e, f, g, h or az (6g, 5g6g, 6az)", "1A, 2A and 3A")),
    }
}

/// The limits of a nut thread: ISO 965-1 and ISO 965-5 by their tables, ASME B1.1 by its formulas.
///
/// # Errors
/// Refuses as [`bolt`] does.
pub fn nut(thread: Thread, class: ToleranceClass) -> Result<NutLimits, Refusal> {
    match (thread.is_metric(), class) {
        (true, ToleranceClass::Nut(class)) => metric::nut(thread, class),
        (false, ToleranceClass::UnifiedNut(class)) => unified::nut(thread, class),
        _ => Err(wrong_class(thread, class, "nut", "G, H, AZ or AX (6H, 6AZ, 6AX)", "1B, 2B and 3B")),
    }
}

/// The limits of a nut of class 6G, where those of the standard one, 6H, are known.
///
/// # Errors
/// Refuses a pitch that ISO 965-1 does not have.
pub fn nut_6g(thread: Thread, standard: &NutLimits) -> Result<NutLimits, Refusal> {
    Ok(metric::placed_like(thread, metric::nut_deviation(thread, NutPosition::G)?, standard))
}

fn wrong_class(
    thread: Thread,
    class: ToleranceClass,
    part: &str,
    metric: &'static str,
    unified: &'static str,
) -> Refusal {
    let source = if thread.is_metric() { metric::SOURCE } else { unified::SOURCE };
    Refusal::not_covered(
        &format!("class {class} on a {thread} {part}"),
        &if thread.is_metric() {
            format!("{part}s with a grade and position {metric}")
        } else {
            format!("{part}s of classes {unified}")
        },
        source,
    )
}

impl Limits {
    /// From a least value and a tolerance above it.
    pub fn up(min: Length, tolerance: Length) -> Self {
        Self { min, max: min + tolerance }
    }

    /// From a greatest value and a tolerance below it.
    pub fn down(max: Length, tolerance: Length) -> Self {
        Self { min: max - tolerance, max }
    }

    /// Both limits moved by the same length.
    pub fn moved(self, by: Length) -> Self {
        Self { min: self.min + by, max: self.max + by }
    }
}

impl BoltLimits {
    /// The allowance: how far below the basic size the zone begins.
    pub fn allowance(&self) -> Length {
        Length::ZERO - self.deviation.value
    }

    /// Pitch, major and minor diameter at most: where it meets the least nut.
    pub fn greatest(&self) -> [Length; 3] {
        [self.pitch.max, self.major.max, self.minor_max]
    }

    /// The same bolt with every diameter smaller: what it is made to before a coat that grows it back.
    pub fn smaller(self, by: Length) -> Self {
        let back = Length::ZERO - by;
        Self {
            major: self.major.moved(back),
            pitch: self.pitch.moved(back),
            minor_max: self.minor_max + back,
            root_max: self.root_max + back,
            root_min: self.root_min.map(|root| root + back),
            deviation: self.deviation.source.gives(self.deviation.value + back),
            ..self
        }
    }
}

impl NutLimits {
    /// Pitch, major and minor diameter at least: where it meets the greatest bolt.
    pub fn least(&self) -> [Length; 3] {
        [self.pitch.min, self.major_min, self.minor.min]
    }

    /// The same nut with every diameter larger by a diametral allowance.
    pub fn widened(self, by: Sourced<Length>) -> Self {
        Self {
            major_min: self.major_min + by.value,
            pitch: self.pitch.moved(by.value),
            minor: self.minor.moved(by.value),
            deviation: by.source.gives(self.deviation.value + by.value),
            ..self
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_smaller_bolt_is_smaller_everywhere() {
        let thread = crate::thread::Designation::read("M16").unwrap().thread;
        let class = crate::thread::ToleranceClass::read("6g").unwrap();
        let usual = bolt(thread, class).unwrap();
        let small = usual.smaller(Length::from_mm(0.1));
        let sizes = |limits: &BoltLimits| {
            let ends = [limits.major, limits.pitch].map(|of| [of.min, of.max]).concat();
            let rest = [limits.minor_max, limits.root_max, limits.deviation.value];
            ends.into_iter().chain(rest).chain(limits.root_min).map(|size| size.mm()).collect::<Vec<_>>()
        };
        assert_eq!(sizes(&usual).len(), sizes(&small).len());
        for (usual, small) in sizes(&usual).into_iter().zip(sizes(&small)) {
            assert!((usual - small - 0.1).abs() < 1e-9, "{usual}, {small}");
        }
        assert_eq!(usual.pitch_tolerance.value, small.pitch_tolerance.value);
    }
}
