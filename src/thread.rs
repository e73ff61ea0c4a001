//! Screw threads: what a designation means, limits of size, the coated fit, strength.
//!
//! A [`Thread`] is a size that exists in a published series, so nothing below has to ask whether it
//! does. Limits of size are in [`limits`]; the two ways of making room for zinc are [`overtap`] and
//! [`undersize`]; what fits is judged in [`fit`].

use std::fmt;

use crate::quantity::{Area, Length};
use crate::source::{Source, document};
use crate::table::asme_b1_1::{self, Diameter, Series};
use crate::table::iso_261;

pub mod chance;
pub mod class;
pub mod coat_room;
pub mod designation;
pub mod fit;
pub mod gauge;
pub mod limits;
pub mod load;
pub mod overtap;
pub mod pair;
pub mod strength;
pub mod tap;
pub mod undersize;

pub use class::ToleranceClass;
pub use designation::{Designation, Unreadable};

/// A thread of ISO 261 from M3 to M64, or of the unified series UNC, UNF, UNEF and 8UN from #4 to 4 in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Thread {
    kind: Kind,
    /// Its place in [`Thread::all`]: what is kept of every thread is found by it.
    place: u16,
}

/// Whole numbers, so that two threads are equal exactly when they are the same thread.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
enum Kind {
    Metric { diameter_mm: u16, pitch_um: u16, coarse: bool },
    Unified { series: Series, diameter: Diameter, per_two_inches: u16 },
}

impl Thread {
    /// Every thread known: metric from the smallest, then the unified series one by one.
    pub fn all() -> impl Iterator<Item = Self> {
        let metric = iso_261::SIZES.iter().flat_map(|size| {
            size.pitches_um.iter().enumerate().map(move |(at, &pitch_um)| Kind::Metric {
                diameter_mm: size.diameter_mm,
                pitch_um,
                coarse: at == 0,
            })
        });
        let unified = Series::ALL.into_iter().flat_map(|series| {
            series.sizes().iter().map(move |size| Kind::Unified {
                series,
                diameter: size.diameter,
                per_two_inches: size.per_two_inches,
            })
        });
        metric.chain(unified).zip(0..).map(|(kind, place)| Self { kind, place })
    }

    /// Its place among [`Thread::all`].
    pub fn place(self) -> usize {
        usize::from(self.place)
    }

    /// The metric thread of this diameter in mm: coarse, or of the pitch in µm if one is given.
    pub fn metric(diameter_mm: u16, pitch_um: Option<u16>) -> Option<Self> {
        Self::all().find(|thread| match thread.kind {
            Kind::Metric { diameter_mm: mm, pitch_um: um, coarse } => {
                mm == diameter_mm && pitch_um.map_or(coarse, |pitch| pitch == um)
            }
            Kind::Unified { .. } => false,
        })
    }

    /// The unified thread of this diameter in sixteenths of an inch in a series.
    pub fn unified(series: Series, sixteenths: u16) -> Option<Self> {
        Self::of_diameter(series, Diameter::Sixteenths(sixteenths))
    }

    /// The unified thread of a numbered small screw in a series: `#8-32 UNC`.
    pub fn numbered(series: Series, number: u8) -> Option<Self> {
        Self::of_diameter(series, Diameter::Number(number))
    }

    fn of_diameter(series: Series, diameter: Diameter) -> Option<Self> {
        Self::all().find(|thread| match thread.kind {
            Kind::Unified { series: of, diameter: size, .. } => of == series && size == diameter,
            Kind::Metric { .. } => false,
        })
    }

    /// The coarse thread of its diameter, metric or UNC.
    pub fn coarse(self) -> Option<Self> {
        match self.kind {
            Kind::Metric { diameter_mm, .. } => Self::metric(diameter_mm, None),
            Kind::Unified { diameter, .. } => Self::of_diameter(Series::Unc, diameter),
        }
    }

    /// Nominal major diameter.
    pub fn diameter(self) -> Length {
        match self.kind {
            Kind::Metric { diameter_mm, .. } => Length::from_mm(f64::from(diameter_mm)),
            Kind::Unified { diameter, .. } => Length::from_inch(diameter.inch()),
        }
    }

    /// Pitch.
    pub fn pitch(self) -> Length {
        match self.kind {
            Kind::Metric { pitch_um, .. } => Length::from_mm(f64::from(pitch_um) / 1000.0),
            Kind::Unified { per_two_inches, .. } => Length::from_inch(2.0 / f64::from(per_two_inches)),
        }
    }

    /// Basic pitch diameter d2, rounded as its standard prints it: 0.001 mm or 0.0001 in.
    pub fn pitch_diameter(self) -> Length {
        self.basic(PITCH_DIAMETER)
    }

    /// Basic minor diameter d1 (D1 of the nut), rounded as its standard prints it.
    pub fn minor_diameter(self) -> Length {
        self.basic(MINOR_DIAMETER)
    }

    /// Root diameter d3 of the bolt for stress: d1 − H/6, or with unified threads that of the
    /// rounded root UNR; rounded as its standard prints it.
    pub fn root_diameter(self) -> Length {
        self.basic(if self.is_metric() { ROOT_DIAMETER } else { UNR_ROOT_DIAMETER })
    }

    /// Whether it is an ISO metric thread.
    pub fn is_metric(self) -> bool {
        matches!(self.kind, Kind::Metric { .. })
    }

    /// Whether it is the coarse thread of its diameter: metric coarse, or UNC.
    pub fn is_coarse(self) -> bool {
        match self.kind {
            Kind::Metric { coarse, .. } => coarse,
            Kind::Unified { series, .. } => series == Series::Unc,
        }
    }

    /// Threads per inch of a unified thread.
    pub fn threads_per_inch(self) -> Option<f64> {
        match self.kind {
            Kind::Metric { .. } => None,
            Kind::Unified { per_two_inches, .. } => Some(f64::from(per_two_inches) / 2.0),
        }
    }

    /// The series of a unified thread.
    pub fn series(self) -> Option<Series> {
        match self.kind {
            Kind::Metric { .. } => None,
            Kind::Unified { series, .. } => Some(series),
        }
    }

    /// Diameter in sixteenths of an inch and threads in two inches, the keys of the inch tables; `None`
    /// of a metric thread and of the small ones that go by a number.
    pub fn inch_key(self) -> Option<(u16, u16)> {
        match self.kind {
            Kind::Unified { diameter: Diameter::Sixteenths(sixteenths), per_two_inches, .. } => {
                Some((sixteenths, per_two_inches))
            }
            Kind::Metric { .. } | Kind::Unified { .. } => None,
        }
    }

    /// Its number, where a small unified thread goes by one.
    pub fn number(self) -> Option<u8> {
        match self.kind {
            Kind::Unified { diameter: Diameter::Number(number), .. } => Some(number),
            _ => None,
        }
    }

    /// Diameter in mm of a metric thread, and whether it is coarse: the keys of the metric tables.
    pub fn metric_key(self) -> Option<(u16, bool)> {
        match self.kind {
            Kind::Metric { diameter_mm, coarse, .. } => Some((diameter_mm, coarse)),
            Kind::Unified { .. } => None,
        }
    }

    /// Whether tables of inch loads count it as coarse: UNC and 8UN, not UNF and finer.
    pub fn has_coarse_loads(self) -> bool {
        match self.kind {
            Kind::Metric { coarse, .. } => coarse,
            Kind::Unified { series, .. } => matches!(series, Series::Unc | Series::Un8),
        }
    }

    /// Tensile stress area: by ISO 898-1 for metric threads, by ASME B1.1 for unified ones.
    pub fn stress_area(self) -> Area {
        let (d, p) = (self.diameter().mm(), self.pitch().mm());
        // ((d2 + d3) / 2)² of ISO 898-1 with d3 = d1 − H/6, and (d − 0.9743/n)² of ASME B1.1.
        let mean = match self.kind {
            Kind::Metric { .. } => d - (PITCH_DIAMETER + ROOT_DIAMETER) / 2.0 * p,
            Kind::Unified { .. } => d - 0.9743 * p,
        };
        Area::from_mm2(std::f64::consts::FRAC_PI_4 * mean * mean)
    }

    /// Where the formula of [`Thread::stress_area`] is published.
    pub fn stress_area_source(self) -> Source {
        match self.kind {
            Kind::Metric { .. } => document::ISO_898_1.read("9.1.6, As,nom"),
            Kind::Unified { .. } => document::ASME_B1_1.read("Appendix B, tensile stress area"),
        }
    }

    /// Where its basic profile and its pitch come from.
    pub fn source(self) -> Source {
        match self.kind {
            Kind::Metric { .. } => iso_261::SOURCE,
            Kind::Unified { .. } => asme_b1_1::SIZES_SOURCE,
        }
    }

    /// Other threads of the same diameter, and this one.
    pub fn of_same_diameter(self) -> impl Iterator<Item = Self> {
        Self::all()
            .filter(move |other| other.is_metric() == self.is_metric() && other.diameter() == self.diameter())
    }

    fn basic(self, pitches_off: f64) -> Length {
        match self.kind {
            Kind::Metric { diameter_mm, pitch_um, .. } => {
                let um = f64::from(diameter_mm) * 1000.0 - pitches_off * f64::from(pitch_um);
                // The cast cuts off; it takes no call, and every order asks a dozen times.
                Length::from_um(f64::from((um + 0.5) as u32))
            }
            Kind::Unified { diameter, per_two_inches, .. } => {
                let inch = diameter.inch() - pitches_off * 2.0 / f64::from(per_two_inches);
                Length::from_inch((inch * 1e4).round() / 1e4)
            }
        }
    }
}

/// d − d2 in pitches: 3/4 H, with H = √3/2 P.
const PITCH_DIAMETER: f64 = 0.75 * H;
/// d − d1 in pitches: 5/4 H.
const MINOR_DIAMETER: f64 = 1.25 * H;
/// d − d3 in pitches: d1 − H/6 (ISO 898-1).
const ROOT_DIAMETER: f64 = 17.0 / 12.0 * H;
/// d − d3 in pitches for a UNR root: 11/8 H.
const UNR_ROOT_DIAMETER: f64 = 1.375 * H;
/// Height of the fundamental triangle in pitches: √3/2.
pub const H: f64 = 0.866_025_403_784_438_6;

impl fmt::Display for Thread {
    /// `M16`, `M16x1.5`, `5/8-11 UNC`, `1-1/8-8 UN`, `#8-32 UNC`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.kind {
            Kind::Metric { diameter_mm, coarse: true, .. } => write!(f, "M{diameter_mm}"),
            Kind::Metric { diameter_mm, pitch_um, .. } => {
                write!(f, "M{diameter_mm}x{}", f64::from(pitch_um) / 1000.0)
            }
            Kind::Unified { series, diameter, per_two_inches } => {
                match diameter {
                    Diameter::Sixteenths(sixteenths) => write_inches(f, sixteenths)?,
                    Diameter::Number(number) => write!(f, "#{number}")?,
                }
                write!(f, "-{} {}", f64::from(per_two_inches) / 2.0, series.name())
            }
        }
    }
}

/// A diameter in the fraction of an inch that the trade writes: `5/8`, `1`, `1-1/8`.
fn write_inches(f: &mut fmt::Formatter<'_>, sixteenths: u16) -> fmt::Result {
    let (whole, part) = (sixteenths / 16, sixteenths % 16);
    match (whole, part) {
        (_, 0) => write!(f, "{whole}"),
        (0, _) => write_fraction(f, part),
        _ => {
            write!(f, "{whole}-")?;
            write_fraction(f, part)
        }
    }
}

fn write_fraction(f: &mut fmt::Formatter<'_>, sixteenths: u16) -> fmt::Result {
    let common = 1 << sixteenths.trailing_zeros().min(4);
    write!(f, "{}/{}", sixteenths / common, 16 / common)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn threads_show_as_the_trade_writes_them() {
        let shown = |thread: Option<Thread>| thread.unwrap().to_string();
        assert_eq!(shown(Thread::metric(16, None)), "M16");
        assert_eq!(shown(Thread::metric(16, Some(1500))), "M16x1.5");
        assert_eq!(shown(Thread::unified(Series::Unc, 10)), "5/8-11 UNC");
        assert_eq!(shown(Thread::unified(Series::Un8, 18)), "1-1/8-8 UN");
        assert_eq!(shown(Thread::unified(Series::Unc, 36)), "2-1/4-4.5 UNC");
        assert_eq!(shown(Thread::numbered(Series::Unf, 10)), "#10-32 UNF");
    }

    #[test]
    fn a_thread_stands_at_its_place_however_it_is_found() {
        for (place, thread) in Thread::all().enumerate() {
            assert_eq!(thread.place(), place);
            let found = match thread.kind {
                Kind::Metric { diameter_mm, pitch_um, .. } => Thread::metric(diameter_mm, Some(pitch_um)),
                Kind::Unified { series, diameter, .. } => Thread::of_diameter(series, diameter),
            };
            assert_eq!(found, Some(thread));
        }
    }

    #[test]
    fn no_thread_is_listed_twice() {
        let all: Vec<_> = Thread::all().map(|thread| thread.to_string()).collect();
        let mut once = all.clone();
        once.sort();
        once.dedup();
        assert_eq!(once.len(), all.len());
    }
}
