//! The pieces a part is made of, in mm, mm² and mm³: heads, shanks, threads, points, faces, holes.

use std::f64::consts::PI;

use super::{Bolt, Head, Nut, Washer, hexagon};

/// `tan 30°`.
const TAN_30: f64 = 0.577_350_269_189_625_8;
/// `1 / cos 30°`.
const SEC_30: f64 = 2.0 * TAN_30;
/// `1 / cos 45°`.
const SEC_45: f64 = std::f64::consts::SQRT_2;

impl Head {
    pub(super) fn height(&self) -> f64 {
        match self {
            Self::None => 0.0,
            Self::Hexagon { height, .. } | Self::Socket { height, .. } => height.mm(),
        }
    }
}

/// Pieces of a bolt, in mm² and mm³.
impl Bolt {
    /// The whole surface, threads developed.
    pub(super) fn area(&self) -> f64 {
        self.head_area() + self.shank_area() + self.thread_area() + self.points_area()
    }

    /// The whole solid.
    pub(super) fn volume(&self) -> f64 {
        self.head_volume() + self.shank_volume() + self.thread_volume() + self.points_volume()
    }

    /// Ends with a point: one below a head, two on a rod.
    pub(super) fn ends(&self) -> f64 {
        if matches!(self.head, Head::None) { 2.0 } else { 1.0 }
    }

    /// Length of the 45° point, from the root diameter to the nominal.
    pub(super) fn point_length(&self) -> f64 {
        (self.profile.diameter.mm() - self.profile.root_diameter().mm()) / 2.0
    }

    /// Length of thread without the points.
    pub(super) fn full_thread(&self) -> f64 {
        self.thread_length.mm() - self.ends() * self.point_length()
    }

    pub(super) fn shank_length(&self) -> f64 {
        self.length.mm() - self.thread_length.mm()
    }

    /// The head without the seat of the shank below it.
    pub(super) fn head_area(&self) -> f64 {
        let seat = PI / 4.0 * self.profile.diameter.mm().powi(2);
        match self.head {
            Head::None => 0.0,
            Head::Hexagon { flats, height } => {
                let s = flats.mm();
                2.0 * hexagon::face(s) + hexagon::sides(s, height.mm()) - hexagon::CHAMFER_AREA * s * s - seat
            }
            Head::Socket { diameter, height, flats, depth } => {
                let dk = diameter.mm();
                PI / 2.0 * dk * dk + PI * dk * height.mm() + hexagon::sides(flats.mm(), depth.mm()) - seat
            }
        }
    }

    pub(super) fn head_volume(&self) -> f64 {
        match self.head {
            Head::None => 0.0,
            Head::Hexagon { flats, height } => {
                let s = flats.mm();
                hexagon::face(s) * height.mm() - hexagon::CHAMFER_VOLUME * s * s * s
            }
            Head::Socket { diameter, height, flats, depth } => {
                PI / 4.0 * diameter.mm().powi(2) * height.mm() - hexagon::face(flats.mm()) * depth.mm()
            }
        }
    }

    pub(super) fn shank_area(&self) -> f64 {
        PI * self.profile.diameter.mm() * self.shank_length()
    }

    pub(super) fn shank_volume(&self) -> f64 {
        PI / 4.0 * self.profile.diameter.mm().powi(2) * self.shank_length()
    }

    pub(super) fn thread_area(&self) -> f64 {
        PI * self.profile.diameter.mm() * self.full_thread() * self.profile.bolt_factor()
    }

    pub(super) fn thread_volume(&self) -> f64 {
        self.profile.bolt_section() * self.full_thread()
    }

    /// The cones of the points and the flat ends.
    pub(super) fn points_area(&self) -> f64 {
        let (d, d3) = (self.profile.diameter.mm(), self.profile.root_diameter().mm());
        self.ends() * PI / 4.0 * (SEC_45 * (d * d - d3 * d3) + d3 * d3)
    }

    pub(super) fn points_volume(&self) -> f64 {
        let (d, d3) = (self.profile.diameter.mm(), self.profile.root_diameter().mm());
        self.ends() * PI / 12.0 * self.point_length() * (d * d + d * d3 + d3 * d3)
    }
}

/// Pieces of a nut, in mm² and mm³.
impl Nut {
    /// The whole surface, the thread developed where it is tapped.
    pub(super) fn area(&self) -> f64 {
        self.faces_area() + self.sides_area() + self.hole_area() + self.countersinks_area()
    }

    /// The whole solid.
    pub(super) fn volume(&self) -> f64 {
        self.hexagon_volume() - self.hole_volume() - self.countersinks_volume()
    }

    /// Depth of each countersink of 120°.
    pub(super) fn countersink_depth(&self) -> f64 {
        (self.countersink.mm() - self.profile.minor_diameter().mm()) / 2.0 * TAN_30
    }

    /// Length of hole between the countersinks.
    pub(super) fn hole_length(&self) -> f64 {
        self.height.mm() - 2.0 * self.countersink_depth()
    }

    pub(super) fn faces_area(&self) -> f64 {
        let s = self.flats.mm();
        2.0 * (hexagon::face(s) - PI / 4.0 * self.countersink.mm().powi(2) - hexagon::CHAMFER_AREA * s * s)
    }

    pub(super) fn sides_area(&self) -> f64 {
        hexagon::sides(self.flats.mm(), self.height.mm())
    }

    pub(super) fn countersinks_area(&self) -> f64 {
        let (da, d1) = (self.countersink.mm(), self.profile.minor_diameter().mm());
        PI / 2.0 * SEC_30 * (da * da - d1 * d1)
    }

    pub(super) fn hole_area(&self) -> f64 {
        let cylinder = PI * self.hole_length();
        if self.tapped {
            cylinder * self.profile.diameter.mm() * self.profile.nut_factor()
        } else {
            cylinder * self.profile.minor_diameter().mm()
        }
    }

    pub(super) fn hexagon_volume(&self) -> f64 {
        let s = self.flats.mm();
        hexagon::face(s) * self.height.mm() - 2.0 * hexagon::CHAMFER_VOLUME * s * s * s
    }

    pub(super) fn hole_volume(&self) -> f64 {
        let section = if self.tapped {
            self.profile.nut_section()
        } else {
            PI / 4.0 * self.profile.minor_diameter().mm().powi(2)
        };
        section * self.hole_length()
    }

    pub(super) fn countersinks_volume(&self) -> f64 {
        let (da, d1) = (self.countersink.mm(), self.profile.minor_diameter().mm());
        PI / 6.0 * self.countersink_depth() * (da * da + da * d1 + d1 * d1)
    }
}

impl Washer {
    pub(super) fn area(&self) -> f64 {
        let (d1, d2, h) = (self.inside.mm(), self.outside.mm(), self.thickness.mm());
        PI / 2.0 * (d2 * d2 - d1 * d1) + PI * (d1 + d2) * h
    }

    pub(super) fn volume(&self) -> f64 {
        let (d1, d2, h) = (self.inside.mm(), self.outside.mm(), self.thickness.mm());
        PI / 4.0 * (d2 * d2 - d1 * d1) * h
    }
}
