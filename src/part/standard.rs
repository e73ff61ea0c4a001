//! Standard parts: the shape of a kind of part for a thread, from the tables.

use super::{Bolt, Head, Kind, Nut, Profile, Shape, Size, Washer};
use crate::quantity::{Length, Quantity, unit};
use crate::source::Source;
use crate::table::{
    Refusal, asme_b18_2_1, asme_b18_2_2, asme_b18_2_6, iso_4014, iso_4032, iso_4762, iso_7089,
};

/// The standard part of this kind for a thread; `length` is asked of bolts, screws and rods.
///
/// A bolt too short for its standard thread length is threaded to the head.
///
/// # Errors
/// A [`Refusal`] where the standard has no such size, or where the length is missing.
pub fn standard(kind: Kind, thread: impl Into<Profile>, length: Option<Length>) -> Result<Shape, Refusal> {
    let profile = thread.into();
    let long = || {
        length.ok_or_else(|| {
            Refusal::not_covered(
                &format!("a {kind} without a length"),
                "bolts, screws and rods of a stated length",
                source_of(kind, profile.is_metric),
            )
        })
    };
    let shape = match (kind, profile.is_metric) {
        (Kind::HexBolt, true) => Shape::Bolt(iso_hex_bolt(profile, long()?, false)?),
        (Kind::HexScrew, true) => Shape::Bolt(iso_hex_bolt(profile, long()?, true)?),
        (Kind::HexBolt, false) => Shape::Bolt(inch_hex_bolt(profile, long()?, false)?),
        (Kind::HexScrew, false) => Shape::Bolt(inch_hex_bolt(profile, long()?, true)?),
        (Kind::StructuralBolt, false) => Shape::Bolt(structural_bolt(profile, long()?)?),
        (Kind::SocketScrew, true) => Shape::Bolt(socket_screw(profile, long()?)?),
        (Kind::HexNut, true) => Shape::Nut(iso_nut(profile)?),
        (Kind::HexNut, false) => {
            Shape::Nut(inch_nut(kind, profile, asme_b18_2_2::HEX, asme_b18_2_2::HEX_SOURCE)?)
        }
        (Kind::HeavyHexNut, false) => {
            Shape::Nut(inch_nut(kind, profile, asme_b18_2_2::HEAVY, asme_b18_2_2::HEAVY_SOURCE)?)
        }
        (Kind::Washer, true) => Shape::Washer(iso_washer(profile)?),
        (Kind::Washer, false) => Shape::Washer(inch_washer(profile)?),
        (Kind::Rod | Kind::Stud | Kind::AnchorRod, _) => {
            let length = Size::own(long()?);
            Shape::Bolt(Bolt { head: Head::None, profile, length, thread_length: length })
        }
        (Kind::StructuralBolt | Kind::HeavyHexNut, true) | (Kind::SocketScrew, false) => {
            return Err(not_covered(kind, profile));
        }
        _ => return Err(blank(kind, profile.is_metric)),
    };
    Ok(shape)
}

/// The sizes that are covered for a kind, in words: `M5 to M64`.
pub fn covered(kind: Kind, metric: bool) -> &'static str {
    match (kind, metric) {
        (Kind::HexBolt | Kind::HexScrew, true) => "M5 to M64",
        (Kind::HexBolt | Kind::HexScrew, false) => "1/4 to 4 in",
        (Kind::HexNut | Kind::Washer, true) => "M5 to M64",
        (Kind::SocketScrew, true) => "M5 to M16, M20, M24, M30, M36, M42, M48, M56 and M64",
        (Kind::StructuralBolt, false) => "1/2 to 1 1/2 in, without 9/16 in",
        (Kind::HexNut, false) => "1/4 to 1 1/2 in",
        (Kind::HeavyHexNut, false) => "1/4 to 4 in, without 1 7/8 in",
        (Kind::Washer, false) => "1/4 to 3 in, without 9/16, 1 5/8 and 1 7/8 in",
        (Kind::StructuralBolt | Kind::HeavyHexNut, true) => "inch threads; enter the sizes of a hex part",
        (Kind::SocketScrew, false) => "metric threads; enter the sizes of a metric part",
        (Kind::Rod | Kind::Stud | Kind::AnchorRod, _) => "every thread",
        _ => "no size yet; enter its own sizes",
    }
}

fn source_of(kind: Kind, metric: bool) -> Source {
    match (kind, metric) {
        (Kind::HexBolt | Kind::HexScrew, true) => iso_4014::S,
        (Kind::HexBolt | Kind::HexScrew, false) => asme_b18_2_1::source(crate::source::Basis::Read),
        (Kind::StructuralBolt, _) => asme_b18_2_6::HEAD,
        (Kind::SocketScrew, _) => iso_4762::SOURCE,
        (Kind::HexNut, true) => iso_4032::SOURCE,
        (Kind::HexNut, false) => asme_b18_2_2::HEX_SOURCE,
        (Kind::HeavyHexNut, _) => asme_b18_2_2::HEAVY_SOURCE,
        (Kind::Washer, true) => iso_7089::source(crate::source::Basis::Read),
        (Kind::Washer, false) => asme_b18_2_6::washer_source(crate::source::Basis::Read),
        (Kind::Rod | Kind::Stud | Kind::AnchorRod, _) => super::profile::SOURCE,
        _ => kind.document(metric).memory(""),
    }
}

/// The document gives the sizes, and they were not found.
fn blank(kind: Kind, metric: bool) -> Refusal {
    let what = match kind {
        Kind::Other => "the shape of a part by its own name".to_owned(),
        _ => format!("the shape of a {kind}"),
    };
    Refusal::blank(&what, kind.document(metric).memory("sizes"))
}

fn not_covered(kind: Kind, profile: Profile) -> Refusal {
    let size = if profile.is_metric {
        profile.diameter.show(&unit::MM, 0)
    } else {
        profile.diameter.show(&unit::INCH, 4)
    };
    Refusal::not_covered(
        &format!("a {kind} of thread diameter {size}"),
        covered(kind, profile.is_metric),
        source_of(kind, profile.is_metric),
    )
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

fn iso_hex_bolt(profile: Profile, length: Length, to_the_head: bool) -> Result<Bolt, Refusal> {
    let d = profile.diameter.mm();
    let row = find(iso_4014::ROWS, d, |row| row.d).ok_or_else(|| not_covered(Kind::HexBolt, profile))?;
    let head =
        Head::Hexagon { flats: mm(row.s, iso_4014::S), height: mm(row.k, iso_4014::k_source(row.k_basis)) };
    let b = thread_length(d, length.mm(), &iso_4014::THREAD_ADDITIONS);
    let (min, max) = iso_4014::SCREW_RUN_OUT;
    let run_out = (min + max) / 2.0 * profile.pitch.mm();
    let thread_length = if to_the_head || !has_shank(profile, length.mm(), b) {
        mm(to_head(length.mm(), run_out, &profile), iso_4014::RUN_OUT)
    } else {
        mm(b, iso_4014::THREAD_LENGTH)
    };
    Ok(Bolt { head, profile, length: Size::own(length), thread_length })
}

/// A thread to the head leaves its run-out; a very short screw is taken as threaded throughout.
fn to_head(length: f64, run_out: f64, profile: &Profile) -> f64 {
    if length - run_out > profile.pitch.mm() { length - run_out } else { length }
}

fn inch_hex_bolt(profile: Profile, length: Length, to_the_head: bool) -> Result<Bolt, Refusal> {
    let d = profile.diameter.inch();
    let row = find(asme_b18_2_1::ROWS, d, |row| row.d).ok_or_else(|| not_covered(Kind::HexBolt, profile))?;
    let source = asme_b18_2_1::source(row.basis);
    let head = Head::Hexagon { flats: inch(row.f, source), height: inch(row.h, source) };
    let b = Length::from_inch(thread_length(d, length.inch(), &asme_b18_2_1::THREAD_ADDITIONS));
    let run_out = asme_b18_2_1::RUN_OUT_PITCHES * profile.pitch.mm();
    let thread_length = if to_the_head || !has_shank(profile, length.mm(), b.mm()) {
        mm(to_head(length.mm(), run_out, &profile), asme_b18_2_1::RUN_OUT)
    } else {
        Size::published(b, asme_b18_2_1::THREAD_LENGTH)
    };
    Ok(Bolt { head, profile, length: Size::own(length), thread_length })
}

fn structural_bolt(profile: Profile, length: Length) -> Result<Bolt, Refusal> {
    let row = find(asme_b18_2_6::BOLTS, profile.diameter.inch(), |row| row.d)
        .ok_or_else(|| not_covered(Kind::StructuralBolt, profile))?;
    let head =
        Head::Hexagon { flats: inch(row.f, asme_b18_2_6::HEAD), height: inch(row.h, asme_b18_2_6::HEAD) };
    let b = Length::from_inch(row.thread_length);
    let thread_length = if b < length {
        Size::published(b, asme_b18_2_6::THREAD_LENGTH)
    } else {
        let run_out = asme_b18_2_1::RUN_OUT_PITCHES * profile.pitch.mm();
        mm(to_head(length.mm(), run_out, &profile), asme_b18_2_1::RUN_OUT)
    };
    Ok(Bolt { head, profile, length: Size::own(length), thread_length })
}

fn socket_screw(profile: Profile, length: Length) -> Result<Bolt, Refusal> {
    let d = profile.diameter.mm();
    let row = find(iso_4762::ROWS, d, |row| row.d).ok_or_else(|| not_covered(Kind::SocketScrew, profile))?;
    let head = Head::Socket {
        diameter: mm(row.dk, iso_4762::dk_source(row.dk_basis)),
        height: mm(row.k, iso_4762::SOURCE),
        flats: mm(row.s, iso_4762::SOURCE),
        depth: mm(row.t, iso_4762::SOURCE),
    };
    let b = 2.0 * d + iso_4762::THREAD_ADDITION;
    let (min, max) = iso_4014::SCREW_RUN_OUT;
    let run_out = (min + max) / 2.0 * profile.pitch.mm();
    let thread_length = if has_shank(profile, length.mm(), b) {
        mm(b, iso_4762::THREAD_LENGTH)
    } else {
        mm(to_head(length.mm(), run_out, &profile), iso_4762::THREAD_LENGTH)
    };
    Ok(Bolt { head, profile, length: Size::own(length), thread_length })
}

fn iso_nut(profile: Profile) -> Result<Nut, Refusal> {
    let row = find(iso_4032::ROWS, profile.diameter.mm(), |row| row.d)
        .ok_or_else(|| not_covered(Kind::HexNut, profile))?;
    Ok(Nut {
        profile,
        flats: mm(row.s, iso_4032::SOURCE),
        height: mm(row.m, iso_4032::SOURCE),
        countersink: countersink(profile, iso_4032::COUNTERSINK, iso_4032::COUNTERSINK_SOURCE),
        tapped: true,
    })
}

fn inch_nut(
    kind: Kind,
    profile: Profile,
    rows: &[asme_b18_2_2::Row],
    source: Source,
) -> Result<Nut, Refusal> {
    let row = find(rows, profile.diameter.inch(), |row| row.d).ok_or_else(|| not_covered(kind, profile))?;
    Ok(Nut {
        profile,
        flats: inch(row.f, source),
        height: inch(row.h, source),
        countersink: countersink(profile, asme_b18_2_2::COUNTERSINK, asme_b18_2_2::COUNTERSINK_SOURCE),
        tapped: true,
    })
}

/// The middle of what the standard allows.
fn countersink(profile: Profile, (min, max): (f64, f64), source: Source) -> Size {
    mm(profile.diameter.mm() * (min + max) / 2.0, source)
}

fn iso_washer(profile: Profile) -> Result<Washer, Refusal> {
    let row = find(iso_7089::ROWS, profile.diameter.mm(), |row| row.d)
        .ok_or_else(|| not_covered(Kind::Washer, profile))?;
    let source = iso_7089::source(row.basis);
    Ok(Washer { inside: mm(row.d1, source), outside: mm(row.d2, source), thickness: mm(row.h, source) })
}

fn inch_washer(profile: Profile) -> Result<Washer, Refusal> {
    let row = find(asme_b18_2_6::WASHERS, profile.diameter.inch(), |row| row.d)
        .ok_or_else(|| not_covered(Kind::Washer, profile))?;
    let source = asme_b18_2_6::washer_source(row.basis);
    Ok(Washer {
        inside: inch(row.inside, source),
        outside: inch(row.outside, source),
        thickness: inch((row.min + row.max) / 2.0, source),
    })
}
