//! Bolts, screws and bars with a machine thread.

use std::f64::consts::PI;

use super::super::profile::SOURCE as PROFILE;
use super::super::{Head, Profile, Size};
use super::{
    Body, GEOMETRY, Lead, Limit, Named, Piece, above, at_most, chamfer_area, chamfer_volume, disc, frustum,
    given, measure, positive,
};
use crate::quantity::Shown;
use crate::working::Term;

/// `1 / cos 45°`.
const SEC_45: f64 = std::f64::consts::SQRT_2;

/// An externally threaded part.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bolt {
    /// Its head.
    pub head: Head,
    /// Its thread.
    pub profile: Profile,
    /// Nominal length: as its standard measures it, of a bar the whole.
    pub length: Size,
    /// Threaded length with the point; of a bow, of each leg.
    pub thread_length: Size,
    /// Diameter of the shank, where it is not that of the thread.
    pub shank: Option<Size>,
}

impl Bolt {
    fn d(&self) -> f64 {
        self.profile.diameter.mm()
    }

    fn d3(&self) -> f64 {
        self.profile.root_diameter().mm()
    }

    /// Ends with a point: one below a head, two on a bar.
    fn ends(&self) -> f64 {
        if self.head.is_bar() { 2.0 } else { 1.0 }
    }

    /// Length of the 45° point, from the root diameter to the nominal.
    fn point_length(&self) -> f64 {
        (self.d() - self.d3()) / 2.0
    }

    /// All thread, with the points.
    fn threads(&self) -> f64 {
        let both = matches!(self.head, Head::Bow { .. });
        if both { 2.0 * self.thread_length.mm() } else { self.thread_length.mm() }
    }

    /// Length of thread without the points.
    fn full_thread(&self) -> f64 {
        self.threads() - self.ends() * self.point_length()
    }

    /// Length of the bar from the head to the end.
    fn body_length(&self) -> f64 {
        self.head.body_length(self.length.mm(), self.d())
    }

    fn shank_length(&self) -> f64 {
        self.body_length() - self.threads()
    }

    fn shank_diameter(&self) -> f64 {
        self.shank.map_or(self.d(), |size| size.mm())
    }

    /// A rod has no shank at all.
    fn has_shank(&self) -> bool {
        !matches!(self.head, Head::None)
    }
}

impl Body for Bolt {
    fn sizes_mut(&mut self) -> Vec<Named<'_>> {
        let mut sizes = vec![("l", "length", &mut self.length)];
        if !matches!(self.head, Head::None) {
            sizes.push(("b", "thread length", &mut self.thread_length));
        }
        if let Some(shank) = &mut self.shank {
            sizes.push(("ds", "shank diameter", shank));
        }
        sizes.extend(self.head.sizes_mut());
        sizes
    }

    fn pieces(&self, add: &mut dyn FnMut(Piece)) {
        let (d, d3, full, bar) = (self.d(), self.d3(), self.full_thread(), self.ends() == 2.0);
        if let Some(head) = self.head.piece(d) {
            add(head);
        }
        if self.has_shank() {
            let (ds, length) = (self.shank_diameter(), self.shank_length());
            let own = self.shank.is_some();
            add(Piece::new(
                "plain shank",
                measure("A_shank", if own { "π·ds·l_s" } else { "π·d·l_s" }, PI * ds * length),
                measure("V_shank", if own { "π/4·ds^2·l_s" } else { "π/4·d^2·l_s" }, disc(ds) * length),
            ));
        }
        add(Piece::new(
            "developed thread",
            measure("A_thread", "π·d·l_t·f_t", PI * d * full * self.profile.bolt_factor()),
            measure(
                "V_thread",
                "π/4·l_t·(d^2/8 + d3^2/6 + 17/72·(d^2 + d·d3 + d3^2))",
                self.profile.bolt_section() * full,
            ),
        ));
        let (of_area, of_volume) = if bar {
            ("π/2·(sqrt(2)·(d^2 − d3^2) + d3^2)", "π/12·(d − d3)·(d^2 + d·d3 + d3^2)")
        } else {
            ("π/4·(sqrt(2)·(d^2 − d3^2) + d3^2)", "π/24·(d − d3)·(d^2 + d·d3 + d3^2)")
        };
        let area = self.ends() * PI / 4.0 * (SEC_45 * (d * d - d3 * d3) + d3 * d3);
        add(Piece::new(
            if bar { "cones and flat ends of both points" } else { "cone and flat end of the point" },
            measure("A_point", of_area, area),
            measure("V_point", of_volume, self.ends() * frustum(d, d3, self.point_length())),
        ));
    }

    fn sums(&self) -> (&'static str, &'static str) {
        match (self.has_shank(), self.head.is_bar()) {
            (false, _) => ("A_thread + A_point", "V_thread + V_point"),
            (true, true) => ("A_shank + A_thread + A_point", "V_shank + V_thread + V_point"),
            (true, false) => {
                ("A_head + A_shank + A_thread + A_point", "V_head + V_shank + V_thread + V_point")
            }
        }
    }

    fn values(&self) -> Vec<Term> {
        let mut values = vec![
            given("d", self.d()),
            given("P", self.profile.pitch.mm()),
            given("d3", self.d3()),
            Term::given("f_t", Shown::plain(self.profile.bolt_factor(), 4)),
            given("l_t", self.full_thread()),
            given("l_s", self.shank_length()),
            chamfer_area(),
            chamfer_volume(),
        ];
        values.extend(self.head.values(self.d()));
        values
    }

    fn lead(&self, lead: &mut Lead<'_>) {
        lead.step(
            "root diameter of the bolt, at H/6 above the sharp root",
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
        let full = match self.head {
            Head::None => "l − (d − d3)",
            Head::Plain => "b − (d − d3)",
            Head::Bow { .. } => "2·b − (d − d3)",
            _ => "b − (d − d3) / 2",
        };
        lead.step("thread without the 45° points, which reach from d3 to d", "l_t", full, GEOMETRY);
        if self.has_shank() {
            lead.step("plain shank beside the thread", "l_s", self.head.shank_formula(), GEOMETRY);
        }
        self.head.lead(lead);
    }

    fn limits(&self) -> Vec<Limit> {
        let point = self.ends() * self.point_length();
        let mut limits = vec![above("l", point, "the length of its point")];
        limits.extend(self.head.limits(self.d()));
        if !matches!(self.head, Head::None) {
            let each = if matches!(self.head, Head::Bow { .. }) { 2.0 } else { 1.0 };
            limits.push(above("b", point / each, "the length of the point"));
            limits.push(at_most("b", self.body_length() / each, "the length beside the head"));
        }
        if self.shank.is_some() {
            limits.push(positive("ds"));
        }
        limits
    }

    fn extent(&self) -> f64 {
        self.length.mm() + self.head.beyond_length(self.d())
    }
}

#[cfg(test)]
mod tests;
