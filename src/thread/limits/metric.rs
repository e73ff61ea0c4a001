//! ISO metric limits: basic sizes with the deviations and tolerances of the tables.

use crate::quantity::Length;
use crate::source::{Source, Sourced, document};
use crate::table::iso_965_1::{Position, Tolerance, deviation, tolerance};
use crate::table::{Refusal, iso_965_4, iso_965_5};
use crate::thread::class::{BoltClass, BoltPosition, NutClass, NutPosition};
use crate::thread::{H, Thread};

use super::{BoltLimits, Limits, NutLimits};

pub(super) const SOURCE: Source = document::ISO_965_1.read("Tables 1 and 3 to 6");

/// Least radius of a bolt's root in pitches, for property class 8.8 and above (ISO 965-1 clause 11).
const ROOT_RADIUS: f64 = 0.125;

pub(super) fn bolt(thread: Thread, class: BoltClass) -> Result<BoltLimits, Refusal> {
    let (d, p) = (thread.diameter(), thread.pitch());
    let deviation = bolt_deviation(thread, class.position)?;
    let es = deviation.value;
    let major_tolerance = tolerance(Tolerance::BoltMajor, class.crest, d, p)?;
    let pitch_tolerance = tolerance(Tolerance::BoltPitch, class.pitch, d, p)?;
    let major = Limits::down(d + es, major_tolerance.value);
    let pitch = Limits::down(thread.pitch_diameter() + es, pitch_tolerance.value);
    Ok(BoltLimits {
        major,
        pitch,
        minor_max: thread.minor_diameter() + es,
        root_max: pitch.max - 2.0 * max_depth(p, pitch_tolerance.value),
        root_min: Some(pitch.min - (H - 2.0 * ROOT_RADIUS) * p),
        deviation,
        pitch_tolerance,
        major_tolerance,
    })
}

pub(super) fn nut(thread: Thread, class: NutClass) -> Result<NutLimits, Refusal> {
    let (d, p) = (thread.diameter(), thread.pitch());
    let deviation = nut_deviation(thread, class.position)?;
    let pitch_tolerance = tolerance(Tolerance::NutPitch, class.pitch, d, p)?;
    let minor_tolerance = tolerance(Tolerance::NutMinor, class.crest, d, p)?;
    Ok(placed(thread, deviation, pitch_tolerance, minor_tolerance))
}

/// The nut of another position whose tolerances are those of a standard nut, 6H: 6G, 6AZ or 6AX.
pub(in crate::thread) fn placed_like(
    thread: Thread,
    deviation: Sourced<Length>,
    standard: &NutLimits,
) -> NutLimits {
    placed(thread, deviation, standard.pitch_tolerance, standard.minor_tolerance)
}

/// A nut with its tolerances above the deviation.
fn placed(
    thread: Thread,
    deviation: Sourced<Length>,
    pitch_tolerance: Sourced<Length>,
    minor_tolerance: Sourced<Length>,
) -> NutLimits {
    let ei = deviation.value;
    NutLimits {
        major_min: thread.diameter() + ei,
        pitch: Limits::up(thread.pitch_diameter() + ei, pitch_tolerance.value),
        minor: Limits::up(thread.minor_diameter() + ei, minor_tolerance.value),
        deviation,
        pitch_tolerance,
        minor_tolerance,
    }
}

fn bolt_deviation(thread: Thread, position: BoltPosition) -> Result<Sourced<Length>, Refusal> {
    match position.of_iso_965_1() {
        Some(position) => deviation(position, thread.pitch()),
        None => {
            let printed = iso_965_4::deviation_az(thread.pitch()).filter(|_| is_in_hot_dip_tables(thread));
            Ok(printed.unwrap_or_else(|| az_by_formula(thread.pitch())))
        }
    }
}

/// The fundamental deviation of a nut.
///
/// # Errors
/// Refuses a pitch that ISO 965-1 does not have, for G and H.
pub(in crate::thread) fn nut_deviation(
    thread: Thread,
    position: NutPosition,
) -> Result<Sourced<Length>, Refusal> {
    let over_size = |position| {
        let printed = iso_965_5::deviation(position, thread.pitch()).filter(|_| is_in_hot_dip_tables(thread));
        Ok(printed.unwrap_or_else(|| over_size_by_formula(position, thread.pitch())))
    };
    match position {
        NutPosition::G => deviation(Position::NutG, thread.pitch()),
        NutPosition::H => deviation(Position::NutH, thread.pitch()),
        NutPosition::Az => over_size(iso_965_5::Position::Az),
        NutPosition::Ax => over_size(iso_965_5::Position::Ax),
    }
}

/// ISO 965-4 and ISO 965-5 print coarse threads from M10 to M64.
fn is_in_hot_dip_tables(thread: Thread) -> bool {
    thread.metric_key().is_some_and(|(diameter_mm, coarse)| coarse && diameter_mm >= 10)
}

/// The deviation of a bolt's position az where Table 1 of ISO 965-4 has no row: −(300 + 20 P), P in mm
/// and the result in µm, which all its printed values obey.
fn az_by_formula(pitch: Length) -> Sourced<Length> {
    document::ISO_965_4.computed("−(300 + 20 P)").gives(Length::from_um(-(300.0 + 20.0 * pitch.mm())))
}

/// The deviation of a nut where Table 1 of ISO 965-5 has no row, by its clause 1: AZ is 300 + 20 P
/// and AX is 220 P − 20, P in mm and the result in µm. The two cross at 1.6 mm.
pub(in crate::thread) fn over_size_by_formula(
    position: iso_965_5::Position,
    pitch: Length,
) -> Sourced<Length> {
    let (um, formula) = match position {
        iso_965_5::Position::Az => (300.0 + 20.0 * pitch.mm(), "clause 1, 300 + 20 P"),
        iso_965_5::Position::Ax => (220.0 * pitch.mm() - 20.0, "clause 1, 220 P − 20"),
    };
    document::ISO_965_5.computed(formula).gives(Length::from_um(um))
}

/// How far below the pitch line a rounded root may reach up, by ISO 965-1 clause 11:
/// `H/4 − R (1 − cos(60° − arccos(1 − Td2 / 4R))) + Td2 / 2`.
fn max_depth(pitch: Length, pitch_tolerance: Length) -> Length {
    let (p, t) = (pitch.mm(), pitch_tolerance.mm());
    let r = ROOT_RADIUS * p;
    // cos(60° − arccos c) = c / 2 + sin 60° · √(1 − c²).
    let c = 1.0 - t / (4.0 * r);
    let cosine = c / 2.0 + 0.75f64.sqrt() * (1.0 - c * c).sqrt();
    Length::from_mm(H * p / 4.0 - r * (1.0 - cosine) + t / 2.0)
}
