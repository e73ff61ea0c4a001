//! Standard parts: the shape of a kind of part for a thread, from the tables.

use super::{Bolt, Form, Head, Kind, Profile, Shape, Size, Solid};
use crate::quantity::{Length, Quantity, unit};
use crate::source::{Source, document};
use crate::table::{Refusal, asme_b18_2_1, iso_4014};

mod bars;
mod bolts;
mod nuts;
mod rings_pins;
mod screws;
mod small_screws;
mod template;
mod washers;

pub(super) use template::template;

/// The standard part of this kind for a thread; `length` is asked of what has one.
///
/// The size of a part without a thread is that of the thread, the shaft or the hole it goes with. A bolt
/// too short for its standard thread length is threaded to the head.
///
/// # Errors
/// A [`Refusal`] where the sizes of the kind were not found, where its standard has no such size, or
/// where the length is missing.
pub fn standard(kind: Kind, thread: impl Into<Profile>, length: Option<Length>) -> Result<Shape, Refusal> {
    let profile = thread.into();
    let metric = profile.is_metric;
    let Some(found) = found(kind, metric) else { return Err(blank(kind, metric)) };
    let length = match (kind.has_length(), length) {
        (true, None) => {
            let needs = format!("a {kind} without a length");
            return Err(Refusal::not_covered(&needs, "parts of a stated length", found.source));
        }
        // What has no length does not ask for one.
        (_, length) => length.unwrap_or(Length::from_mm(0.0)),
    };
    match (found.build)(profile, length) {
        Some(shape) => Ok(shape),
        None => Err(not_covered(kind, profile, &found)),
    }
}

/// How thick a washer for a thread is, where its standard has this size; `None` for what is no washer.
pub fn thickness_of_washer(kind: Kind, thread: impl Into<Profile>) -> Option<Length> {
    let washer = kind.is_washer().then(|| standard(kind, thread, None).ok()).flatten();
    washer.and_then(|shape| shape.overall_length())
}

/// The sizes that are covered for a kind, in words: `M5 to M64`; `None` where none were found.
pub fn covered(kind: Kind, metric: bool) -> Option<String> {
    found(kind, metric).map(|found| found.sizes(metric))
}

/// A table of sizes, and how a part is made from it.
struct Found {
    /// The nominal diameters it has, in mm or in inches; empty where every thread will do. Listed only for
    /// whoever tells them.
    diameters: fn() -> Vec<f64>,
    /// Where it is published.
    source: Source,
    /// The part of a thread and a length; `None` where the table has no such size.
    build: fn(Profile, Length) -> Option<Shape>,
}

impl Found {
    fn sizes(&self, metric: bool) -> String {
        let show = |size: &f64| if metric { format!("M{size}") } else { inches(*size) };
        match (self.diameters)().as_slice() {
            [] => "every thread".to_owned(),
            all if all.len() <= 12 => all.iter().map(show).collect::<Vec<_>>().join(", "),
            [first, .., last] => format!("{} to {}", show(first), show(last)),
            [only] => show(only),
        }
    }
}

/// The table that gives the sizes of a kind.
fn found(kind: Kind, metric: bool) -> Option<Found> {
    match kind.form() {
        Form::Bolt | Form::Bar => bars::found(kind, metric)
            .or_else(|| bolts::found(kind, metric))
            .or_else(|| screws::found(kind, metric))
            .or_else(|| small_screws::found(kind, metric)),
        Form::Nut => nuts::found(kind, metric),
        Form::Washer => washers::found(kind, metric),
        Form::Ring | Form::Pin => rings_pins::found(kind, metric),
        Form::Other => None,
    }
}

/// The document gives the sizes, and they were not found.
fn blank(kind: Kind, metric: bool) -> Refusal {
    let what = match kind {
        Kind::Other => "the shape of a part by its own name".to_owned(),
        _ if kind.document(metric) == &document::OWN => {
            format!("the shape of a {kind}, of which no standard is known here,")
        }
        _ => format!("the shape of a {kind}"),
    };
    Refusal::blank(&what, kind.document(metric).memory("sizes"))
}

fn not_covered(kind: Kind, profile: Profile, found: &Found) -> Refusal {
    let size = if profile.is_metric {
        profile.diameter.show(&unit::MM, 1)
    } else {
        profile.diameter.show(&unit::INCH, 4)
    };
    let covers = match kind {
        Kind::UBolt => format!("{} of the heights of its table", found.sizes(profile.is_metric)),
        _ => found.sizes(profile.is_metric),
    };
    Refusal::not_covered(&format!("a {kind} of nominal diameter {size}"), &covers, found.source)
}

/// A size in inches as the trade writes it: `#8`, `1 1/8 in`.
fn inches(size: f64) -> String {
    let sixteenths = size * 16.0;
    if (sixteenths - sixteenths.round()).abs() > 1e-6 {
        return format!("#{}", ((size - 0.06) / 0.013).round());
    }
    let (whole, rest) = (size.trunc(), sixteenths.round() % 16.0);
    let mut parts = (rest, 16.0);
    while parts.0 > 0.0 && parts.0 % 2.0 == 0.0 {
        parts = (parts.0 / 2.0, parts.1 / 2.0);
    }
    match (whole > 0.0, rest > 0.0) {
        (true, true) => format!("{whole} {}/{} in", parts.0, parts.1),
        (true, false) => format!("{whole} in"),
        _ => format!("{}/{} in", parts.0, parts.1),
    }
}

/// The row of a table whose diameter is that of the thread.
fn find<R: Copy>(rows: &[R], diameter: f64, of: impl Fn(&R) -> f64) -> Option<R> {
    rows.iter().find(|row| (of(row) - diameter).abs() < 1e-6).copied()
}

fn mm(number: f64, source: Source) -> Size {
    Size::published(Length::from_mm(number), source)
}

fn inch(number: f64, source: Source) -> Size {
    Size::published(Length::from_inch(number), source)
}

/// The middle of two limits.
fn middle((max, min): (f64, f64)) -> f64 {
    (max + min) / 2.0
}

/// Twice the diameter and what the standard adds for this length.
fn thread_length(diameter: f64, length: f64, additions: &[(f64, f64)]) -> f64 {
    let addition =
        additions.iter().find(|(up_to, _)| length <= *up_to).map_or(0.0, |(_, addition)| *addition);
    2.0 * diameter + addition
}

/// The run-out behind the last full thread of a partly threaded bolt is up to five pitches long,
/// and the standards want at least half a diameter of plain shank behind it.
fn has_shank(profile: Profile, length: f64, thread: f64) -> bool {
    length - thread >= 5.0 * profile.pitch.mm() + 0.5 * profile.diameter.mm()
}

/// A thread to the head leaves its run-out; a very short screw is taken as threaded throughout.
fn to_head(length: f64, profile: Profile) -> Size {
    let (pitches, source) = if profile.is_metric {
        let (min, max) = iso_4014::SCREW_RUN_OUT;
        ((min + max) / 2.0, iso_4014::RUN_OUT)
    } else {
        (asme_b18_2_1::RUN_OUT_PITCHES, asme_b18_2_1::RUN_OUT)
    };
    let run_out = pitches * profile.pitch.mm();
    mm(if length - run_out > profile.pitch.mm() { length - run_out } else { length }, source)
}

/// The standard thread length where it leaves a shank beside the head, else a thread to the head.
/// `beside` is the length that the head leaves.
fn partly(profile: Profile, beside: f64, thread: Size) -> Size {
    if has_shank(profile, beside, thread.mm()) { thread } else { to_head(beside, profile) }
}

fn bolt(head: Head, profile: Profile, length: Length, thread_length: Size) -> Shape {
    Solid::Bolt(Bolt { head, profile, length: Size::own(length), thread_length, shank: None }).into()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn inches_are_written_as_in_the_trade() {
        for (size, text) in [(0.164, "#8"), (0.25, "1/4 in"), (1.0, "1 in"), (1.125, "1 1/8 in")] {
            assert_eq!(inches(size), text);
        }
    }

    #[test]
    fn a_kind_without_a_table_names_its_document() {
        let m12 = Profile::metric(Length::from_mm(12.0), Length::from_mm(1.75));
        let blank = |kind| standard(kind, m12, None).unwrap_err().to_string();
        assert!(blank(Kind::ToothedWasher).contains("open DIN 6797"));
        assert!(blank(Kind::SnapRing).contains("open ISO 464"));
        assert!(blank(Kind::Other).contains("own name"));
        assert_eq!(covered(Kind::NarrowWasher, true), None);
        assert_eq!(covered(Kind::StructuralBolt, true).unwrap(), "M12, M16, M20, M22, M24, M27, M30, M36");
    }
}
