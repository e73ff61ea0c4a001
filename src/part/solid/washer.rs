//! Washers: plain and conical, and the spring lock washer.

use std::f64::consts::PI;

use super::super::Size;
use super::{Body, Limit, Named, Piece, above, disc, measure, positive};
use crate::working::Term;

/// A plain washer, or a conical one: its slope is so small that it measures the same.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Washer {
    /// Hole.
    pub inside: Size,
    /// Outside diameter.
    pub outside: Size,
    /// Thickness.
    pub thickness: Size,
}

/// A spring lock washer: one turn of a bar.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpringWasher {
    /// Hole.
    pub inside: Size,
    /// Width of the bar.
    pub width: Size,
    /// Thickness of the bar.
    pub thickness: Size,
}

impl Body for Washer {
    fn sizes_mut(&mut self) -> Vec<Named<'_>> {
        vec![
            ("d1", "hole", &mut self.inside),
            ("d2", "outside diameter", &mut self.outside),
            ("h", "thickness", &mut self.thickness),
        ]
    }

    fn pieces(&self, add: &mut dyn FnMut(Piece)) {
        let (d1, d2, h) = (self.inside.mm(), self.outside.mm(), self.thickness.mm());
        let face = disc(d2) - disc(d1);
        add(Piece::new(
            "two faces",
            measure("A_faces", "π/2·(d2^2 − d1^2)", 2.0 * face),
            measure("V_ring", "π/4·(d2^2 − d1^2)·h", face * h),
        ));
        add(Piece::new(
            "both edges",
            measure("A_edges", "π·(d1 + d2)·h", PI * (d1 + d2) * h),
            super::NOTHING,
        ));
    }

    fn sums(&self) -> (&'static str, &'static str) {
        ("A_faces + A_edges", "V_ring")
    }

    fn values(&self) -> Vec<Term> {
        Vec::new()
    }

    fn limits(&self) -> Vec<Limit> {
        vec![positive("d1"), above("d2", self.inside.mm(), "the hole"), positive("h")]
    }

    fn extent(&self) -> f64 {
        self.thickness.mm()
    }
}

impl Body for SpringWasher {
    fn sizes_mut(&mut self) -> Vec<Named<'_>> {
        vec![
            ("d1", "hole", &mut self.inside),
            ("b", "width of the bar", &mut self.width),
            ("s", "thickness of the bar", &mut self.thickness),
        ]
    }

    fn pieces(&self, add: &mut dyn FnMut(Piece)) {
        let (d1, b, s) = (self.inside.mm(), self.width.mm(), self.thickness.mm());
        let turn = PI * (d1 + b);
        add(Piece::new(
            "one turn of the bar",
            measure("A_turn", "2·π·(d1 + b)·(b + s)", 2.0 * turn * (b + s)),
            measure("V_turn", "π·(d1 + b)·b·s", turn * b * s),
        ));
        add(Piece::new("both cut ends", measure("A_ends", "2·b·s", 2.0 * b * s), super::NOTHING));
    }

    fn sums(&self) -> (&'static str, &'static str) {
        ("A_turn + A_ends", "V_turn")
    }

    fn values(&self) -> Vec<Term> {
        Vec::new()
    }

    fn limits(&self) -> Vec<Limit> {
        vec![positive("d1"), positive("b"), positive("s")]
    }

    fn extent(&self) -> f64 {
        2.0 * self.thickness.mm()
    }
}
