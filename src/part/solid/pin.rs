//! Pins: the cotter pin, bent of half-round wire, and the spring pin, rolled of strip.

use std::f64::consts::PI;

use super::super::Size;
use super::{Body, GEOMETRY, Lead, Limit, Named, Piece, above, at_most, given, measure, positive};
use crate::working::Term;

/// A cotter pin.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CotterPin {
    /// Diameter of the shank: two half-round legs.
    pub diameter: Size,
    /// Length of the shorter leg below the eye.
    pub length: Size,
    /// What the longer leg has more.
    pub long_end: Size,
    /// Length of the eye.
    pub eye_length: Size,
    /// Width of the eye.
    pub eye_width: Size,
}

/// A slotted spring pin.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpringPin {
    /// Nominal diameter, that of its hole: the slot is then closed.
    pub diameter: Size,
    /// Wall.
    pub wall: Size,
    /// Length.
    pub length: Size,
}

impl CotterPin {
    /// Wire in the eye: an oval (after Hudson, first term), less the neck where it runs into the legs.
    fn eye(&self) -> f64 {
        let (b, c) = (self.eye_length.mm(), self.eye_width.mm());
        PI / 2.0 * (b + c) * (1.0 + ((b - c) / (b + c)).powi(2) / 4.0) - self.diameter.mm()
    }

    fn wire(&self) -> f64 {
        2.0 * self.length.mm() + self.long_end.mm() + self.eye()
    }
}

impl Body for CotterPin {
    fn sizes_mut(&mut self) -> Vec<Named<'_>> {
        vec![
            ("l", "length", &mut self.length),
            ("d", "shank diameter", &mut self.diameter),
            ("a", "longer end", &mut self.long_end),
            ("b", "length of the eye", &mut self.eye_length),
            ("c", "width of the eye", &mut self.eye_width),
        ]
    }

    fn pieces(&self, add: &mut dyn FnMut(Piece)) {
        let (d, wire) = (self.diameter.mm(), self.wire());
        add(Piece::new(
            "half-round wire, both sides and both ends",
            measure("A_wire", "(π/2 + 1)·d·l_w + π/4·d^2", (PI / 2.0 + 1.0) * d * wire + PI / 4.0 * d * d),
            measure("V_wire", "π/8·d^2·l_w", PI / 8.0 * d * d * wire),
        ));
    }

    fn sums(&self) -> (&'static str, &'static str) {
        ("A_wire", "V_wire")
    }

    fn values(&self) -> Vec<Term> {
        vec![given("l_e", self.eye()), given("l_w", self.wire())]
    }

    fn lead(&self, lead: &mut Lead<'_>) {
        lead.step(
            "wire in the eye: an oval less the neck",
            "l_e",
            "π/2·(b + c)·(1 + ((b − c)/(b + c))^2/4) − d",
            GEOMETRY,
        );
        lead.step("wire of both legs and the eye", "l_w", "2·l + a + l_e", GEOMETRY);
    }

    fn limits(&self) -> Vec<Limit> {
        vec![
            positive("l"),
            positive("d"),
            positive("a"),
            above("b", self.diameter.mm(), "the shank diameter"),
            above("c", self.diameter.mm(), "the shank diameter"),
        ]
    }

    fn extent(&self) -> f64 {
        self.length.mm() + self.long_end.mm() + self.eye_length.mm()
    }
}

impl Body for SpringPin {
    fn sizes_mut(&mut self) -> Vec<Named<'_>> {
        vec![
            ("l", "length", &mut self.length),
            ("d", "nominal diameter", &mut self.diameter),
            ("s", "wall", &mut self.wall),
        ]
    }

    fn pieces(&self, add: &mut dyn FnMut(Piece)) {
        let (d, s, l) = (self.diameter.mm(), self.wall.mm(), self.length.mm());
        let strip = PI * (d - s);
        add(Piece::new(
            "strip that closes to the nominal diameter: inside, outside and all edges",
            measure("A_strip", "2·π·(d − s)·(l + s) + 2·s·l", 2.0 * strip * (l + s) + 2.0 * s * l),
            measure("V_strip", "π·(d − s)·s·l", strip * s * l),
        ));
    }

    fn sums(&self) -> (&'static str, &'static str) {
        ("A_strip", "V_strip")
    }

    fn values(&self) -> Vec<Term> {
        Vec::new()
    }

    fn limits(&self) -> Vec<Limit> {
        vec![
            positive("l"),
            positive("d"),
            positive("s"),
            at_most("s", self.diameter.mm() / 2.0, "half of the diameter"),
        ]
    }

    fn extent(&self) -> f64 {
        self.length.mm()
    }
}
