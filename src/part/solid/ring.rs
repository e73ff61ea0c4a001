//! Retaining rings, punched from sheet: a flat ring whose width differs around it.

use std::f64::consts::PI;

use super::super::Size;
use super::{Body, Limit, Named, Piece, at_most, measure, positive};
use crate::working::Term;

/// A retaining ring.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ring {
    /// Whether it sits in a bore: its free diameter is then the outside one.
    pub internal: bool,
    /// Free diameter at the groove.
    pub free: Size,
    /// Thickness.
    pub thickness: Size,
    /// Radial width, averaged around the ring.
    pub width: Size,
}

impl Ring {
    /// The radial width that a ring of this mass has on average: the face is the mass by thickness.
    pub(in super::super) fn mean_width(internal: bool, free: f64, face: f64) -> f64 {
        // π·(d3 ± w)·w = face.
        let root = if internal { free * free - 4.0 * face / PI } else { free * free + 4.0 * face / PI };
        (root.sqrt() - free).abs() / 2.0
    }
}

impl Body for Ring {
    fn sizes_mut(&mut self) -> Vec<Named<'_>> {
        vec![
            ("d3", "free diameter", &mut self.free),
            ("s", "thickness", &mut self.thickness),
            ("w", "mean radial width", &mut self.width),
        ]
    }

    fn pieces(&self, add: &mut dyn FnMut(Piece)) {
        let (d3, s, w) = (self.free.mm(), self.thickness.mm(), self.width.mm());
        let middle = if self.internal { d3 - w } else { d3 + w };
        let (faces, edges, volume) = if self.internal {
            ("2·π·(d3 − w)·w", "2·π·(d3 − w)·s", "π·(d3 − w)·w·s")
        } else {
            ("2·π·(d3 + w)·w", "2·π·(d3 + w)·s", "π·(d3 + w)·w·s")
        };
        add(Piece::new(
            "two faces",
            measure("A_faces", faces, 2.0 * PI * middle * w),
            measure("V_ring", volume, PI * middle * w * s),
        ));
        add(Piece::new("both edges", measure("A_edges", edges, 2.0 * PI * middle * s), super::NOTHING));
    }

    fn sums(&self) -> (&'static str, &'static str) {
        ("A_faces + A_edges", "V_ring")
    }

    fn values(&self) -> Vec<Term> {
        Vec::new()
    }

    fn limits(&self) -> Vec<Limit> {
        let mut limits = vec![positive("d3"), positive("s"), positive("w")];
        if self.internal {
            limits.push(at_most("w", self.free.mm() / 2.0, "the radius"));
        }
        limits
    }

    fn extent(&self) -> f64 {
        self.thickness.mm()
    }
}
