//! Nuts: hexagon and square, with a flange or with a collar that locks.

use std::f64::consts::PI;

use super::super::profile::SOURCE as PROFILE;
use super::super::{Profile, Size, hexagon};
use super::head::{SEC_20, flange_cone, flange_step};
use super::{
    Body, GEOMETRY, Lead, Limit, Named, Piece, above, chamfer_area, chamfer_volume, disc, frustum, given,
    measure, positive,
};
use crate::quantity::Shown;
use crate::source::{Source, assumed};
use crate::working::Term;

/// A nut.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Nut {
    /// Its thread.
    pub profile: Profile,
    /// What it is turned by, and what belongs to that.
    pub body: NutBody,
    /// Width across flats.
    pub flats: Size,
    /// Height; below a collar, that of the hexagon.
    pub height: Size,
    /// Diameter of the countersinks.
    pub countersink: Size,
    /// Whether it is tapped; a blank has a plain hole of the minor diameter.
    pub tapped: bool,
}

/// The body of a nut.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NutBody {
    /// A hexagon, chamfered at both faces.
    Hexagon,
    /// A square, both faces chamfered to a circle of this diameter.
    Square {
        /// Diameter where the chamfer begins.
        circle: Size,
    },
    /// A hexagon on a flange.
    Flange {
        /// Diameter of the flange.
        flange: Size,
        /// Thickness of the flange at its rim.
        rim: Size,
    },
    /// A hexagon with a collar above it that holds the insert.
    Collar {
        /// Height over all.
        overall: Size,
    },
}

/// `∫ sec³` from 0° to 45°, by 24: the share of a square's chamfer that its width alone decides.
const SQUARE: f64 = 1.147_793_574_696_319 / 24.0;
/// Diameter of the collar of a lock nut, in widths across flats.
const COLLAR: f64 = 0.95;
/// How much of the collar is steel; the rest is the insert.
const COLLAR_STEEL: f64 = 0.5;
/// Nothing was found about collars; with these two, masses agree with a list on the average.
const COLLAR_SOURCE: Source =
    assumed("collar of a lock nut: 0.95 of the width across flats, half of it steel");

impl Nut {
    fn minor(&self) -> f64 {
        self.profile.minor_diameter().mm()
    }

    /// Depth of each countersink of 120°.
    fn countersink_depth(&self) -> f64 {
        (self.countersink.mm() - self.minor()) / 2.0 / 3f64.sqrt()
    }

    /// Countersinks: below a collar there is none.
    fn countersinks(&self) -> f64 {
        if matches!(self.body, NutBody::Collar { .. }) { 1.0 } else { 2.0 }
    }

    /// Length of hole between the countersinks.
    fn hole_length(&self) -> f64 {
        self.height.mm() - self.countersinks() * self.countersink_depth()
    }

    /// The body without its hole: what it is outside, and its faces less the countersinks.
    fn outside(&self) -> Piece {
        let (s, m, da) = (self.flats.mm(), self.height.mm(), self.countersink.mm());
        match self.body {
            NutBody::Hexagon => Piece::new(
                "hexagon: two faces and six sides, less chamfers and countersinks",
                measure(
                    "A_hex",
                    "sqrt(3)·s^2 + 2·sqrt(3)·s·m − 2·c_A·s^2 − π/2·da^2",
                    2.0 * (hexagon::face(s) - hexagon::CHAMFER_AREA * s * s - disc(da))
                        + hexagon::sides(s, m),
                ),
                measure(
                    "V_hex",
                    "sqrt(3)/2·s^2·m − 2·c_V·s^3",
                    hexagon::face(s) * m - 2.0 * hexagon::CHAMFER_VOLUME * s * s * s,
                ),
            ),
            NutBody::Square { circle } => {
                let dw = circle.mm();
                let cut =
                    16.0 / 3f64.sqrt() * (SQUARE * s * s * s - dw * s * s / 16.0 + PI * dw * dw * dw / 192.0);
                Piece::new(
                    "square: two faces and four sides, less countersinks; chamfers of 30° down to the circle dw",
                    measure("A_sq", "2·s^2 + 4·s·m − π/2·da^2", 2.0 * (s * s - disc(da)) + 4.0 * s * m),
                    measure(
                        "V_sq",
                        "s^2·m − 16/sqrt(3)·(0.0478247·s^3 − dw·s^2/16 + π·dw^3/192)",
                        s * s * m - cut,
                    ),
                )
            }
            NutBody::Flange { flange, rim } => {
                let (dc, c) = (flange.mm(), rim.mm());
                let cone = flange_cone(dc, s);
                Piece::new(
                    "hexagon on its flange: seat, rim, cone, six sides and the face, less countersinks",
                    measure(
                        "A_hex",
                        "π/4·dc^2 + π·dc·c + 1.0642·π/4·(dc^2 − s^2) + 2·sqrt(3)·s·(m − c − h_f) + \
                         sqrt(3)/2·s^2 − c_A·s^2 − π/2·da^2",
                        disc(dc)
                            + PI * dc * c
                            + SEC_20 * (disc(dc) - disc(s))
                            + hexagon::sides(s, m - c - cone)
                            + hexagon::face(s)
                            - hexagon::CHAMFER_AREA * s * s
                            - 2.0 * disc(da),
                    ),
                    measure(
                        "V_hex",
                        "π/4·dc^2·c + π/12·h_f·(dc^2 + dc·s + s^2) + sqrt(3)/2·s^2·(m − c − h_f) − c_V·s^3",
                        disc(dc) * c + frustum(dc, s, cone) + hexagon::face(s) * (m - c - cone)
                            - hexagon::CHAMFER_VOLUME * s * s * s,
                    ),
                )
            }
            NutBody::Collar { overall } => {
                let (h, d) = (overall.mm(), self.profile.diameter.mm());
                Piece::new(
                    "hexagon and the collar above it, less the countersink",
                    measure(
                        "A_hex",
                        "sqrt(3)·s^2 + 2·sqrt(3)·s·m − c_A·s^2 + π·(f_d·s + d)·(h − m) − π/4·(da^2 + d^2)",
                        2.0 * hexagon::face(s) + hexagon::sides(s, m) - hexagon::CHAMFER_AREA * s * s
                            + PI * (COLLAR * s + d) * (h - m)
                            - disc(da)
                            - disc(d),
                    ),
                    measure(
                        "V_hex",
                        "sqrt(3)/2·s^2·m − c_V·s^3 + f_s·π/4·((f_d·s)^2 − d^2)·(h − m)",
                        hexagon::face(s) * m - hexagon::CHAMFER_VOLUME * s * s * s
                            + COLLAR_STEEL * (disc(COLLAR * s) - disc(d)) * (h - m),
                    ),
                )
            }
        }
    }
}

impl Body for Nut {
    fn sizes_mut(&mut self) -> Vec<Named<'_>> {
        let mut sizes = vec![
            ("s", "width across flats", &mut self.flats),
            ("m", "nut height", &mut self.height),
            ("da", "diameter of the countersink", &mut self.countersink),
        ];
        match &mut self.body {
            NutBody::Hexagon => {}
            NutBody::Square { circle } => sizes.push(("dw", "circle of the chamfer", circle)),
            NutBody::Flange { flange, rim } => {
                sizes.extend([("dc", "flange diameter", flange), ("c", "thickness of the rim", rim)]);
            }
            NutBody::Collar { overall } => sizes.push(("h", "height over all", overall)),
        }
        sizes
    }

    fn pieces(&self, add: &mut dyn FnMut(Piece)) {
        let (d, d1, da) = (self.profile.diameter.mm(), self.minor(), self.countersink.mm());
        let (hole, sinks) = (self.hole_length(), self.countersinks());
        add(self.outside());
        if self.tapped {
            add(Piece::hole(
                "tapped hole with its thread developed",
                measure("A_hole", "π·d·l_h·f_n", PI * d * hole * self.profile.nut_factor()),
                measure(
                    "V_hole",
                    "π/4·l_h·(D1^2/4 + d^2/8 + 5/24·(d^2 + d·D1 + D1^2))",
                    self.profile.nut_section() * hole,
                ),
            ));
        } else {
            add(Piece::hole(
                "plain hole of a blank, tapped only after the zinc",
                measure("A_hole", "π·D1·l_h", PI * d1 * hole),
                measure("V_hole", "π/4·D1^2·l_h", disc(d1) * hole),
            ));
        }
        let one = sinks == 1.0;
        add(Piece::hole(
            if one { "countersink of 120°" } else { "two countersinks of 120°" },
            measure(
                "A_sinks",
                if one { "π/(2·sqrt(3))·(da^2 − D1^2)" } else { "π/sqrt(3)·(da^2 − D1^2)" },
                sinks * 2.0 / 3f64.sqrt() * (disc(da) - disc(d1)),
            ),
            measure(
                "V_sinks",
                if one {
                    "π/(24·sqrt(3))·(da − D1)·(da^2 + da·D1 + D1^2)"
                } else {
                    "π/(12·sqrt(3))·(da − D1)·(da^2 + da·D1 + D1^2)"
                },
                sinks * frustum(da, d1, self.countersink_depth()),
            ),
        ));
    }

    fn sums(&self) -> (&'static str, &'static str) {
        match self.body {
            NutBody::Square { .. } => ("A_sq + A_hole + A_sinks", "V_sq − V_hole − V_sinks"),
            _ => ("A_hex + A_hole + A_sinks", "V_hex − V_hole − V_sinks"),
        }
    }

    fn values(&self) -> Vec<Term> {
        let mut values = vec![
            given("d", self.profile.diameter.mm()),
            given("P", self.profile.pitch.mm()),
            given("D1", self.minor()),
            Term::given("f_n", Shown::plain(self.profile.nut_factor(), 4)),
            given("l_h", self.hole_length()),
            chamfer_area(),
            chamfer_volume(),
        ];
        let assumed = |symbol, number| Term::known(symbol, Shown::plain(number, 2), Some(COLLAR_SOURCE));
        match self.body {
            NutBody::Flange { flange, .. } => {
                values.push(given("h_f", flange_cone(flange.mm(), self.flats.mm())));
            }
            NutBody::Collar { .. } => {
                values.extend([assumed("f_d", COLLAR), assumed("f_s", COLLAR_STEEL)]);
            }
            _ => {}
        }
        values
    }

    fn lead(&self, lead: &mut Lead<'_>) {
        lead.step("minor diameter of the nut", "D1", "d − 5/8·sqrt(3)·P", PROFILE);
        let hole = if self.countersinks() == 1.0 {
            "m − (da − D1) / (2·sqrt(3))"
        } else {
            "m − (da − D1) / sqrt(3)"
        };
        lead.step("hole beside the countersinks of 120°", "l_h", hole, GEOMETRY);
        if self.tapped {
            lead.step(
                "area of the thread against the plain hole: crest P/4, root P/8, and two flanks that measure \
                 5/8·P each",
                "f_n",
                "D1/(4·d) + 1/8 + 5/8·(1 + D1/d)",
                PROFILE,
            );
        }
        if matches!(self.body, NutBody::Flange { .. }) {
            flange_step(lead);
        }
    }

    fn limits(&self) -> Vec<Limit> {
        let (s, m) = (self.flats.mm(), self.height.mm());
        let cut = self.countersinks() * self.countersink_depth().max(hexagon::CHAMFER_DEPTH * s);
        let mut limits = vec![
            above("da", self.minor(), "the minor diameter of the thread"),
            above("s", self.countersink.mm(), "the diameter of the countersink"),
            above("m", cut, "what chamfers and countersinks take"),
        ];
        match self.body {
            NutBody::Hexagon => {}
            NutBody::Square { .. } => {
                limits.push(above("dw", self.countersink.mm(), "the diameter of the countersink"));
                limits.push(super::at_most("dw", s, "the width across flats"));
            }
            NutBody::Flange { flange, rim } => limits.extend([
                above("dc", s, "the width across flats"),
                positive("c"),
                above("m", rim.mm() + flange_cone(flange.mm(), s), "the flange below the hexagon"),
            ]),
            NutBody::Collar { .. } => limits.push(above("h", m, "the height of the hexagon")),
        }
        limits
    }

    fn extent(&self) -> f64 {
        match self.body {
            NutBody::Collar { overall } => overall.mm(),
            _ => self.height.mm(),
        }
    }
}
