//! The heads of bolts and screws.

use std::f64::consts::PI;

use super::super::{Size, hexagon};
use super::{GEOMETRY, Lead, Limit, Named, above, at_most, given, positive};
use crate::source::{Source, document};
use crate::working::Term;

mod piece;

pub(super) use piece::{PAN, pan_area, pan_volume};

/// The head of a bolt.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Head {
    /// No head, threaded over the whole length, a point at both ends: a rod.
    None,
    /// No head, threaded over a part of the length: an anchor rod.
    Plain,
    /// A bar bent to a half circle, both legs threaded.
    Bow {
        /// Inside width of the bow.
        width: Size,
    },
    /// A hexagon.
    Hexagon {
        /// Width across flats.
        flats: Size,
        /// Height.
        height: Size,
    },
    /// A hexagon on a flange.
    Flange {
        /// Width across flats.
        flats: Size,
        /// Height with the flange.
        height: Size,
        /// Diameter of the flange.
        flange: Size,
        /// Thickness of the flange at its rim.
        rim: Size,
    },
    /// A cylinder with a hexagon socket.
    Socket {
        /// Diameter.
        diameter: Size,
        /// Height.
        height: Size,
        /// Socket across flats.
        flats: Size,
        /// Socket depth.
        depth: Size,
    },
    /// A cone with a hexagon socket; the length counts with the head.
    Countersunk {
        /// Diameter of its edge.
        diameter: Size,
        /// Height.
        height: Size,
        /// Socket across flats.
        flats: Size,
        /// Socket depth.
        depth: Size,
        /// The angle of the cone.
        angle: Angle,
    },
    /// A spherical cap with a hexagon socket.
    Button {
        /// Diameter.
        diameter: Size,
        /// Height.
        height: Size,
        /// Socket across flats.
        flats: Size,
        /// Socket depth.
        depth: Size,
    },
    /// A spherical cap on a square neck; the length counts with the neck.
    Round {
        /// Diameter.
        diameter: Size,
        /// Height.
        height: Size,
        /// Width of the square.
        square: Size,
        /// Depth of the square.
        depth: Size,
    },
    /// A pan: below a cylinder, above a cap, half of the height each.
    Pan {
        /// Diameter.
        diameter: Size,
        /// Height.
        height: Size,
    },
    /// A ball flattened on two sides, with a hole; the length counts from the middle of the hole.
    Eye {
        /// Diameter of the ball.
        diameter: Size,
        /// Hole.
        hole: Size,
        /// Thickness.
        thickness: Size,
    },
}

/// The angle of a countersunk head.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Angle {
    /// 90°, metric.
    Ninety,
    /// 82°, inch.
    EightyTwo,
}

impl Angle {
    /// Height of the cone for a difference of radii of one: `1 / tan` of half the angle.
    const fn cotangent(self) -> f64 {
        match self {
            Self::Ninety => 1.0,
            Self::EightyTwo => 1.150_368_407_221_009_6,
        }
    }

    /// Length along the cone for a difference of radii of one: `1 / sin` of half the angle.
    const fn cosecant(self) -> f64 {
        match self {
            Self::Ninety => std::f64::consts::SQRT_2,
            Self::EightyTwo => 1.524_253_086_702_775_5,
        }
    }
}

/// Slope of a flange: 15° to 25°, taken at 20°.
pub(in super::super) const FLANGE_ANGLE: Source =
    document::EN_1665.memory("angle of the flange 15° to 25°, taken at 20°");
/// `tan 20°`.
pub(super) const TAN_20: f64 = 0.363_970_234_266_202_36;
/// `1 / cos 20°`.
pub(super) const SEC_20: f64 = 1.064_177_772_475_912_4;

/// Height of the flange's cone above its rim.
pub(super) fn flange_cone(flange: f64, flats: f64) -> f64 {
    (flange - flats) / 2.0 * TAN_20
}

impl Head {
    /// Whether there is only a bar, with a point at both ends.
    pub(super) fn is_bar(&self) -> bool {
        matches!(self, Self::None | Self::Plain | Self::Bow { .. })
    }

    /// What sticks out beyond the nominal length.
    pub(super) fn beyond_length(&self, d: f64) -> f64 {
        match self {
            Self::None | Self::Plain | Self::Countersunk { .. } => 0.0,
            Self::Bow { .. } => d,
            Self::Eye { diameter, .. } => diameter.mm() / 2.0,
            Self::Hexagon { height, .. }
            | Self::Flange { height, .. }
            | Self::Socket { height, .. }
            | Self::Button { height, .. }
            | Self::Round { height, .. }
            | Self::Pan { height, .. } => height.mm(),
        }
    }

    /// Length of the bar that the head leaves of the nominal length.
    pub(super) fn body_length(&self, l: f64, d: f64) -> f64 {
        match self {
            Self::Bow { width } => 2.0 * l - width.mm() + PI / 2.0 * (width.mm() + d),
            Self::Countersunk { height, .. } => l - height.mm(),
            Self::Round { depth, .. } => l - depth.mm(),
            Self::Eye { diameter, .. } => l - diameter.mm() / 2.0,
            _ => l,
        }
    }

    /// The formula of the plain shank.
    pub(super) fn shank_formula(&self) -> &'static str {
        match self {
            Self::Bow { .. } => "2·l − w + π/2·(w + d) − 2·b",
            Self::Countersunk { .. } => "l − k − b",
            Self::Round { .. } => "l − f − b",
            Self::Eye { .. } => "l − d_e/2 − b",
            _ => "l − b",
        }
    }

    pub(super) fn sizes_mut(&mut self) -> Vec<Named<'_>> {
        match self {
            Self::None | Self::Plain => Vec::new(),
            Self::Bow { width } => vec![("w", "inside width", width)],
            Self::Hexagon { flats, height } => {
                vec![("s", "width across flats", flats), ("k", "head height", height)]
            }
            Self::Flange { flats, height, flange, rim } => vec![
                ("s", "width across flats", flats),
                ("k", "head height", height),
                ("dc", "flange diameter", flange),
                ("c", "thickness of the rim", rim),
            ],
            Self::Socket { diameter, height, flats, depth }
            | Self::Countersunk { diameter, height, flats, depth, .. }
            | Self::Button { diameter, height, flats, depth } => vec![
                ("dk", "head diameter", diameter),
                ("k", "head height", height),
                ("s", "socket across flats", flats),
                ("t", "socket depth", depth),
            ],
            Self::Round { diameter, height, square, depth } => vec![
                ("dk", "head diameter", diameter),
                ("k", "head height", height),
                ("v", "width of the square", square),
                ("f", "depth of the square", depth),
            ],
            Self::Pan { diameter, height } => {
                vec![("dk", "head diameter", diameter), ("k", "head height", height)]
            }
            Self::Eye { diameter, hole, thickness } => vec![
                ("d_e", "eye diameter", diameter),
                ("d_h", "hole of the eye", hole),
                ("s", "eye thickness", thickness),
            ],
        }
    }

    pub(super) fn values(&self, d: f64) -> Vec<Term> {
        match self {
            Self::Flange { flats, flange, .. } => vec![given("h_f", flange_cone(flange.mm(), flats.mm()))],
            Self::Countersunk { diameter, angle, .. } => {
                vec![given("h_c", (diameter.mm() - d) / 2.0 * angle.cotangent())]
            }
            _ => Vec::new(),
        }
    }

    pub(super) fn lead(&self, lead: &mut Lead<'_>) {
        match self {
            Self::Flange { .. } => flange_step(lead),
            Self::Countersunk { angle: Angle::Ninety, .. } => {
                lead.step("height of the cone of 90°", "h_c", "(dk − d) / 2", GEOMETRY);
            }
            Self::Countersunk { angle: Angle::EightyTwo, .. } => {
                lead.step("height of the cone of 82°", "h_c", "1.15037·(dk − d) / 2", GEOMETRY);
            }
            _ => {}
        }
    }

    pub(super) fn limits(&self, d: f64) -> Vec<Limit> {
        const THREAD: &str = "the thread diameter";
        let socket = |diameter: &Size, height: &Size| {
            vec![
                above("dk", d, THREAD),
                positive("k"),
                positive("s"),
                at_most("s", diameter.mm() * hexagon::COS_30, "the hexagon that fits into the head"),
                positive("t"),
                at_most("t", height.mm(), "the height of the head"),
            ]
        };
        match self {
            Self::None | Self::Plain => Vec::new(),
            Self::Bow { .. } => vec![positive("w")],
            Self::Hexagon { flats, .. } => vec![
                above("s", d, THREAD),
                above("k", hexagon::CHAMFER_DEPTH * flats.mm(), "the depth of the chamfer on the head"),
            ],
            Self::Flange { flats, flange, rim, .. } => vec![
                above("s", d, THREAD),
                above("dc", flats.mm(), "the width across flats"),
                positive("c"),
                above("k", rim.mm() + flange_cone(flange.mm(), flats.mm()), "the flange below the hexagon"),
            ],
            Self::Socket { diameter, height, .. } | Self::Button { diameter, height, .. } => {
                socket(diameter, height)
            }
            Self::Countersunk { diameter, height, angle, .. } => {
                let mut limits = socket(diameter, height);
                let cone = (diameter.mm() - d) / 2.0 * angle.cotangent();
                limits.push(above("k", cone * (1.0 - 1e-9), "the cone below its edge"));
                limits
            }
            Self::Round { .. } => vec![above("dk", d, THREAD), positive("k"), positive("v"), positive("f")],
            Self::Pan { .. } => vec![above("dk", d, THREAD), positive("k")],
            Self::Eye { diameter, .. } => vec![
                positive("d_e"),
                positive("d_h"),
                at_most("d_h", diameter.mm(), "the eye"),
                positive("s"),
                at_most("s", diameter.mm(), "the eye"),
            ],
        }
    }
}

/// The cone of a flange, which bolts and nuts share.
pub(super) fn flange_step(lead: &mut Lead<'_>) {
    lead.step(
        "height of the flange's cone above its rim, at 20°",
        "h_f",
        "0.36397·(dc − s) / 2",
        FLANGE_ANGLE,
    );
}
