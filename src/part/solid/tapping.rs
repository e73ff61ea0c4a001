//! Tapping and drywall screws: a core with a thin ridge around it and a sharp point.

use std::f64::consts::PI;

use super::super::Size;
use super::head::{PAN, pan_area, pan_volume};
use super::{
    Body, GEOMETRY, Lead, Limit, Measure, Named, Piece, above, disc, frustum, given, measure, positive,
};
use crate::working::Term;

/// A tapping screw.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TappingScrew {
    /// Its head.
    pub head: TappingHead,
    /// Diameter over the thread.
    pub major: Size,
    /// Diameter of the core.
    pub core: Size,
    /// Pitch.
    pub pitch: Size,
    /// Nominal length; of a bugle head, with the head.
    pub length: Size,
    /// Length of the point.
    pub point: Size,
}

/// The head of a tapping screw.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum TappingHead {
    /// A pan head; its recess is not taken away.
    Pan {
        /// Diameter.
        diameter: Size,
        /// Height.
        height: Size,
    },
    /// A bugle head: a cone of 90° down to the core; its recess is not taken away.
    Bugle {
        /// Diameter.
        diameter: Size,
    },
}

impl TappingScrew {
    /// Height of the bugle head, which the length counts in.
    fn sunk(&self) -> f64 {
        match self.head {
            TappingHead::Pan { .. } => 0.0,
            TappingHead::Bugle { diameter } => (diameter.mm() - self.core.mm()) / 2.0,
        }
    }

    fn full_thread(&self) -> f64 {
        self.length.mm() - self.sunk() - self.point.mm()
    }

    /// Height of the ridge.
    fn ridge(&self) -> f64 {
        (self.major.mm() - self.core.mm()) / 2.0
    }

    fn head_measures(&self) -> (&'static str, Measure, Measure) {
        let core = self.core.mm();
        match self.head {
            TappingHead::Pan { diameter, height } => {
                let (dk, k) = (diameter.mm(), height.mm());
                let area = pan_area(dk, k, core);
                (
                    PAN,
                    Measure { formula: "π/2·dk^2 + π/2·dk·k + π/4·k^2 − π/4·d2^2", ..area },
                    pan_volume(dk, k),
                )
            }
            TappingHead::Bugle { diameter } => {
                let dk = diameter.mm();
                (
                    "bugle head, taken as a cone of 90°",
                    measure(
                        "A_head",
                        "π/4·dk^2 + sqrt(2)·π/4·(dk^2 − d2^2)",
                        disc(dk) + std::f64::consts::SQRT_2 * (disc(dk) - disc(core)),
                    ),
                    measure(
                        "V_head",
                        "π/24·(dk − d2)·(dk^2 + dk·d2 + d2^2)",
                        frustum(dk, core, (dk - core) / 2.0),
                    ),
                )
            }
        }
    }
}

impl Body for TappingScrew {
    fn sizes_mut(&mut self) -> Vec<Named<'_>> {
        let mut sizes = vec![
            ("l", "length", &mut self.length),
            ("d1", "diameter over the thread", &mut self.major),
            ("d2", "core diameter", &mut self.core),
            ("P", "pitch", &mut self.pitch),
            ("y", "length of the point", &mut self.point),
        ];
        match &mut self.head {
            TappingHead::Pan { diameter, height } => {
                sizes.extend([("dk", "head diameter", diameter), ("k", "head height", height)]);
            }
            TappingHead::Bugle { diameter } => sizes.push(("dk", "head diameter", diameter)),
        }
        sizes
    }

    fn pieces(&self, add: &mut dyn FnMut(Piece)) {
        let (d1, d2, p, y) = (self.major.mm(), self.core.mm(), self.pitch.mm(), self.point.mm());
        let (full, h) = (self.full_thread(), self.ridge());
        let (meaning, area, volume) = self.head_measures();
        add(Piece::new(meaning, area, volume));
        let flank = PI * (d1 + d2) * 2.0 / 3f64.sqrt() * h;
        let floor = PI * d2 * (p - 2.0 / 3f64.sqrt() * h);
        add(Piece::new(
            "thread: on each pitch of the core one ridge of 60°",
            measure(
                "A_thread",
                "l_t/P·(π·d2·(P − 2/sqrt(3)·h) + 2/sqrt(3)·π·(d1 + d2)·h)",
                full / p * (floor + flank),
            ),
            measure(
                "V_thread",
                "π·l_t·(d2^2/4 + h^2/(sqrt(3)·P)·(d2 + 2/3·h))",
                full * (disc(d2) + PI * h * h / 3f64.sqrt() / p * (d2 + 2.0 / 3.0 * h)),
            ),
        ));
        add(Piece::new(
            "point, taken as a cone of the core",
            measure("A_point", "π/2·d2·sqrt(d2^2/4 + y^2)", PI / 2.0 * d2 * (d2 * d2 / 4.0 + y * y).sqrt()),
            measure("V_point", "π/12·d2^2·y", disc(d2) * y / 3.0),
        ));
    }

    fn sums(&self) -> (&'static str, &'static str) {
        ("A_head + A_thread + A_point", "V_head + V_thread + V_point")
    }

    fn values(&self) -> Vec<Term> {
        vec![given("l_t", self.full_thread()), given("h", self.ridge())]
    }

    fn lead(&self, lead: &mut Lead<'_>) {
        let full = match self.head {
            TappingHead::Pan { .. } => "l − y",
            TappingHead::Bugle { .. } => "l − (dk − d2) / 2 − y",
        };
        lead.step("thread above the point", "l_t", full, GEOMETRY);
        lead.step("height of the ridge", "h", "(d1 − d2) / 2", GEOMETRY);
    }

    fn limits(&self) -> Vec<Limit> {
        let ridges = 2.0 / 3f64.sqrt() * self.ridge();
        let mut limits = vec![
            positive("d2"),
            above("d1", self.core.mm(), "the core diameter"),
            above("P", ridges, "the foot of the ridge"),
            positive("y"),
            above("l", self.sunk() + self.point.mm(), "the point and the head"),
            above("dk", self.core.mm(), "the core diameter"),
        ];
        if matches!(self.head, TappingHead::Pan { .. }) {
            limits.push(positive("k"));
        }
        limits
    }

    fn extent(&self) -> f64 {
        match self.head {
            TappingHead::Pan { height, .. } => self.length.mm() + height.mm(),
            TappingHead::Bugle { .. } => self.length.mm(),
        }
    }
}
