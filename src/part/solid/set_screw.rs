//! Set screws: a thread with a socket at one end and a flat point at the other.

use std::f64::consts::PI;

use super::super::profile::SOURCE as PROFILE;
use super::super::{Profile, Size, hexagon};
use super::{
    Body, GEOMETRY, Lead, Limit, Named, Piece, above, at_most, disc, frustum, given, measure, positive,
};
use crate::quantity::Shown;
use crate::working::Term;

/// A screw without a head, threaded over its length.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SetScrew {
    /// Its thread.
    pub profile: Profile,
    /// Length over all.
    pub length: Size,
    /// Diameter of the flat point; a cone of 45° leads to it.
    pub point: Size,
    /// Socket across flats.
    pub flats: Size,
    /// Socket depth.
    pub depth: Size,
}

impl SetScrew {
    fn d(&self) -> f64 {
        self.profile.diameter.mm()
    }

    fn d3(&self) -> f64 {
        self.profile.root_diameter().mm()
    }

    /// Both cones of 45°: to the point, and to the root at the end of the socket.
    fn ends(&self) -> f64 {
        self.d() - (self.point.mm() + self.d3()) / 2.0
    }

    fn full_thread(&self) -> f64 {
        self.length.mm() - self.ends()
    }
}

impl Body for SetScrew {
    fn sizes_mut(&mut self) -> Vec<Named<'_>> {
        vec![
            ("l", "length", &mut self.length),
            ("dp", "diameter of the point", &mut self.point),
            ("s", "socket across flats", &mut self.flats),
            ("t", "socket depth", &mut self.depth),
        ]
    }

    fn pieces(&self, add: &mut dyn FnMut(Piece)) {
        let (d, d3, dp, s, t) = (self.d(), self.d3(), self.point.mm(), self.flats.mm(), self.depth.mm());
        let full = self.full_thread();
        add(Piece::new(
            "developed thread",
            measure("A_thread", "π·d·l_t·f_t", PI * d * full * self.profile.bolt_factor()),
            measure(
                "V_thread",
                "π/4·l_t·(d^2/8 + d3^2/6 + 17/72·(d^2 + d·d3 + d3^2))",
                self.profile.bolt_section() * full,
            ),
        ));
        add(Piece::new(
            "cones of 45° and faces at both ends",
            measure(
                "A_ends",
                "π/4·(sqrt(2)·(2·d^2 − d3^2 − dp^2) + d3^2 + dp^2)",
                std::f64::consts::SQRT_2 * (2.0 * disc(d) - disc(d3) - disc(dp)) + disc(d3) + disc(dp),
            ),
            measure(
                "V_ends",
                "π/24·((d − dp)·(d^2 + d·dp + dp^2) + (d − d3)·(d^2 + d·d3 + d3^2))",
                frustum(d, dp, (d - dp) / 2.0) + frustum(d, d3, (d - d3) / 2.0),
            ),
        ));
        add(Piece::hole(
            "socket: its walls, and what it takes away",
            measure("A_socket", "2·sqrt(3)·s·t", hexagon::sides(s, t)),
            measure("V_socket", "sqrt(3)/2·s^2·t", hexagon::face(s) * t),
        ));
    }

    fn sums(&self) -> (&'static str, &'static str) {
        ("A_thread + A_ends + A_socket", "V_thread + V_ends − V_socket")
    }

    fn values(&self) -> Vec<Term> {
        vec![
            given("d", self.d()),
            given("P", self.profile.pitch.mm()),
            given("d3", self.d3()),
            Term::given("f_t", Shown::plain(self.profile.bolt_factor(), 4)),
            given("l_t", self.full_thread()),
        ]
    }

    fn lead(&self, lead: &mut Lead<'_>) {
        lead.step(
            "root diameter of the thread, at H/6 above the sharp root",
            "d3",
            "d − 17/24·sqrt(3)·P",
            PROFILE,
        );
        lead.step(
            "area of the thread against the plain cylinder: crest P/8, root P/6, and two flanks that measure \
             17/24·P each",
            "f_t",
            "1/8 + d3/(6·d) + 17/24·(1 + d3/d)",
            PROFILE,
        );
        lead.step("thread between the cones of 45°", "l_t", "l − d + (dp + d3) / 2", GEOMETRY);
    }

    fn limits(&self) -> Vec<Limit> {
        vec![
            above("l", self.ends().max(self.depth.mm()), "its point and its socket"),
            positive("dp"),
            at_most("dp", self.d(), "the thread diameter"),
            positive("s"),
            at_most("s", self.d3() * hexagon::COS_30, "the hexagon that fits into the root of the thread"),
            positive("t"),
        ]
    }

    fn extent(&self) -> f64 {
        self.length.mm()
    }
}
