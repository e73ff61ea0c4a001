//! Shear areas of threads: FED-STD-H28/2B and, with bell-mouthing, ISO/TR 16224.

use std::f64::consts::PI;

use crate::quantity::{Area, Length, Quantity, unit};
use crate::source::{Source, document};
use crate::table::Refusal;
use crate::thread::Thread;
use crate::thread::limits::{BoltLimits, NutLimits};

use super::Sizes;

/// Where the areas at given sizes are published; ASME B1.1 Appendix B gives the same.
pub const H28: Source = document::FED_STD_H28.read("Table II.B.1, formulas 2a and 4a");
/// Where the simplified areas are published.
pub const H28_SIMPLE: Source = document::FED_STD_H28.read("Table II.B.1, formulas 3, 5 and 6b");
/// Where the required engagement is published.
pub const H28_ENGAGEMENT: Source = document::FED_STD_H28.read("Table II.B.1, formulas 13, 14 and 16");

/// How far the minor diameter opens at the bearing face.
pub const BELL: f64 = 1.026;

/// Shear area of the nut's thread: `(π LE / P) d [P/2 + (d − D2) / √3]`.
///
/// # Errors
/// Refuses sizes at which bolt and nut thread do not overlap.
pub fn nut(sizes: Sizes, engagement: Length) -> Result<Area, Refusal> {
    area(sizes, engagement, sizes.bolt_major, sizes.bolt_major.mm() - sizes.nut_pitch.mm())
}

/// Shear area of the bolt's thread: `(π LE / P) D1 [P/2 + (d2 − D1) / √3]`.
///
/// # Errors
/// Refuses sizes at which bolt and nut thread do not overlap.
pub fn bolt(sizes: Sizes, engagement: Length) -> Result<Area, Refusal> {
    area(sizes, engagement, sizes.nut_minor, sizes.bolt_pitch.mm() - sizes.nut_minor.mm())
}

/// Shear area of the bolt's thread in a nut that opens like a bell over four tenths of its height.
///
/// Where the opened nut passes the bolt, that part carries nothing.
///
/// # Errors
/// Refuses sizes at which bolt and nut thread do not overlap.
pub fn bolt_with_bell(sizes: Sizes, engagement: Length) -> Result<Area, Refusal> {
    let straight = bolt(sizes, engagement)?;
    let opened = if opens_past(sizes) {
        Area::from_mm2(0.0)
    } else {
        let opened = Sizes { nut_minor: Length::from_mm(BELL * sizes.nut_minor.mm()), ..sizes };
        bolt(opened, engagement).unwrap_or(Area::from_mm2(0.0))
    };
    Ok(Area::from_mm2(0.6 * straight.mm2() + 0.4 * opened.mm2()))
}

/// Whether the mouth of the nut, opened like a bell, passes the bolt's crest.
pub fn opens_past(sizes: Sizes) -> bool {
    BELL * sizes.nut_minor.mm() >= sizes.bolt_major.mm()
}

/// Whether the bell-mouth factor holds for a thread.
///
/// It is a share of the diameter, found on threads of usual pitch. On the finest threads of the largest
/// diameters it would open even a standard nut past its bolt, where it cannot be meant.
pub fn bell_holds(bolt: &BoltLimits, standard_nut: &NutLimits, pitch: Length) -> bool {
    !opens_past(Sizes::least_material(pitch, bolt, standard_nut))
}

fn area(sizes: Sizes, engagement: Length, at: Length, difference: f64) -> Result<Area, Refusal> {
    let p = sizes.pitch.mm();
    let tooth = p / 2.0 + difference / 3f64.sqrt();
    if tooth <= 0.0 || sizes.nut_minor >= sizes.bolt_major {
        return Err(Refusal::not_covered(
            &format!(
                "a bolt of {} in a nut of {} minor diameter",
                sizes.bolt_major.show(&unit::MM, 3),
                sizes.nut_minor.show(&unit::MM, 3)
            ),
            "threads that overlap",
            H28,
        ));
    }
    Ok(Area::from_mm2(PI * engagement.mm() / p * at.mm() * tooth))
}

/// Shear areas by the simplified formulas, from basic sizes: nut (3, from 1/4 in up), bolt (5), and
/// bolt at its greatest (6b).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Simple {
    /// `π D2 (3/4) LE`.
    pub nut: Area,
    /// `π d2 (5/8) LE`.
    pub bolt: Area,
    /// `π D1 (3/4) LE`.
    pub bolt_max: Area,
}

/// The simplified shear areas of a thread.
pub fn simple(thread: Thread, engagement: Length) -> Simple {
    let share = |diameter: Length, share: f64| Area::from_mm2(PI * diameter.mm() * share * engagement.mm());
    Simple {
        nut: share(thread.pitch_diameter(), 0.75),
        bolt: share(thread.pitch_diameter(), 0.625),
        bolt_max: share(thread.minor_diameter(), 0.75),
    }
}

/// The engagement at which the bolt breaks before a thread strips, by FED-STD-H28.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Required {
    /// Both threads shear together: formula 13.
    pub combined: Length,
    /// The bolt's thread shears: formula 14.
    pub bolt: Length,
    /// The nut's thread shears: formula 16.
    pub nut: Length,
    /// The one that the document selects.
    pub governing: Length,
}

/// The engagement that FED-STD-H28 asks for, with a shear strength of half the tensile strength.
///
/// `nut_to_bolt` is the ratio of the tensile strengths.
///
/// # Errors
/// Refuses sizes at which bolt and nut thread do not overlap.
pub fn required(thread: Thread, sizes: Sizes, nut_to_bolt: f64) -> Result<Required, Refusal> {
    let unit = Length::from_mm(1.0);
    let (bolt_area, nut_area) = (bolt(sizes, unit)?.mm2(), nut(sizes, unit)?.mm2());
    let stress_area = thread.stress_area().mm2();
    let combined = Length::from_mm(4.0 * stress_area / (PI * thread.pitch_diameter().mm()));
    let by_bolt = Length::from_mm(2.0 * stress_area / bolt_area);
    let by_nut = Length::from_mm(2.0 * stress_area / nut_area / nut_to_bolt);
    let first = simple(thread, unit).bolt_max.mm2() / nut_area / nut_to_bolt;
    let governing = if first < 1.0 {
        by_bolt
    } else if combined > by_nut {
        combined
    } else {
        by_nut
    };
    Ok(Required { combined, bolt: by_bolt, nut: by_nut, governing })
}
