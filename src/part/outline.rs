//! What a part looks like from its side, for a picture with its dimensions.

use super::{Bolt, Head, Nut, NutBody, Shape, Size, Solid, TappingHead, TappingScrew};
use crate::quantity::Length;

/// A part from its side: bodies turned about one axis, and the sizes that are written at it.
#[derive(Debug, Clone, PartialEq)]
pub struct Outline {
    /// The bodies, along the axis in millimetres; below the head is 0.
    pub bodies: Vec<Turned>,
    /// The sizes.
    pub sizes: Vec<Drawn>,
}

/// A body turned about the axis or one beside it, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Turned {
    /// How far its own axis lies beside that of the part.
    pub off: f64,
    /// Where it begins and ends along the axis.
    pub along: (f64, f64),
    /// Its diameters there.
    pub across: (f64, f64),
    /// What it is.
    pub surface: Surface,
}

/// What a turned body is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Surface {
    /// Plain steel.
    Plain,
    /// A round cap that ends in the wider diameter.
    Cap,
    /// An outside thread.
    Thread,
    /// A hole, seen through the steel.
    Hole,
    /// An eye, seen from its face: the diameters are those outside and of its hole.
    Eye,
    /// Half of one, that the legs of a bow run out of.
    Bow,
}

/// A size and where it is drawn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Drawn {
    /// Its symbol in the standards.
    pub symbol: &'static str,
    /// The size.
    pub length: Length,
    /// Where.
    pub place: Place,
}

/// Where a size is drawn, in millimetres along the axis.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Place {
    /// From here to there.
    Along(f64, f64),
    /// Across, at the beginning of the part.
    Front,
    /// Across, at its end.
    Back,
}

impl Shape {
    /// What it looks like from its side; `None` for parts of which only area and mass are known.
    pub fn outline(&self) -> Option<Outline> {
        let mut outline = Outline { bodies: Vec::new(), sizes: Vec::new() };
        match &self.solid {
            Solid::Bolt(bolt) => outline.bolt(bolt),
            Solid::Nut(nut) => outline.nut(nut),
            Solid::SetScrew(screw) => {
                let (d, l) = (screw.profile.diameter, screw.length);
                outline.body(Surface::Thread, (0.0, l.mm()), (d.mm(), d.mm()));
                outline.hole((0.0, screw.depth.mm()), screw.flats.mm());
                outline.size("l", l, Place::Along(0.0, l.mm()));
                outline.width("d", d, Place::Back);
                outline.size("s", screw.flats, Place::Front);
            }
            Solid::Washer(washer) => {
                outline.disc(washer.thickness, washer.outside.mm(), washer.inside.mm());
                outline.size("d2", washer.outside, Place::Front);
                outline.size("d1", washer.inside, Place::Back);
            }
            Solid::SpringWasher(washer) => {
                let outside = washer.inside.length + 2.0 * washer.width.length;
                outline.disc(washer.thickness, outside.mm(), washer.inside.mm());
                outline.width("d2", outside, Place::Front);
                outline.size("d1", washer.inside, Place::Back);
            }
            Solid::SpringPin(pin) => {
                let (d, l) = (pin.diameter.mm(), pin.length.mm());
                outline.body(Surface::Plain, (0.0, l), (d, d));
                outline.hole((0.0, l), d - 2.0 * pin.wall.mm());
                outline.size("l", pin.length, Place::Along(0.0, l));
                outline.size("d", pin.diameter, Place::Back);
            }
            Solid::Tapping(screw) => outline.tapping(screw),
            Solid::Ring(ring) => {
                let (free, both) = (ring.free.mm(), 2.0 * ring.width.mm());
                let (outside, inside) = if ring.internal { (free, free - both) } else { (free + both, free) };
                let along = (0.0, ring.thickness.mm());
                outline.body(Surface::Plain, along, (outside, outside));
                outline.hole(along, inside);
                outline.size("s", ring.thickness, Place::Along(along.0, along.1));
                outline.size("d3", ring.free, if ring.internal { Place::Front } else { Place::Back });
            }
            Solid::CotterPin(pin) => {
                let (d, l, eye) = (pin.diameter.mm(), pin.length.mm(), pin.eye_length.mm());
                let width = pin.eye_width.mm();
                outline.body(Surface::Eye, (-eye, 0.0), (width, (width - d).max(0.0)));
                // Two half-round legs, one longer than the other.
                for (off, end) in [(-d / 4.0, l), (d / 4.0, l + pin.long_end.mm())] {
                    let across = (d / 2.0, d / 2.0);
                    outline.bodies.push(Turned { off, along: (0.0, end), across, surface: Surface::Plain });
                }
                outline.size("b", pin.eye_length, Place::Along(-eye, 0.0));
                outline.size("l", pin.length, Place::Along(0.0, l));
                outline.size("a", pin.long_end, Place::Along(l, l + pin.long_end.mm()));
                outline.size("c", pin.eye_width, Place::Front);
                outline.size("d", pin.diameter, Place::Back);
            }
            Solid::Measured(..) => return None,
        }
        Some(outline)
    }
}

impl Outline {
    fn body(&mut self, surface: Surface, along: (f64, f64), across: (f64, f64)) {
        self.bodies.push(Turned { off: 0.0, along, across, surface });
    }

    fn hole(&mut self, along: (f64, f64), across: f64) {
        self.body(Surface::Hole, along, (across, across));
    }

    fn size(&mut self, symbol: &'static str, size: Size, place: Place) {
        self.width(symbol, size.length, place);
    }

    fn width(&mut self, symbol: &'static str, length: Length, place: Place) {
        self.sizes.push(Drawn { symbol, length, place });
    }

    fn disc(&mut self, thickness: Size, outside: f64, inside: f64) {
        let along = (0.0, thickness.mm());
        self.body(Surface::Plain, along, (outside, outside));
        self.hole(along, inside);
        self.size("h", thickness, Place::Along(along.0, along.1));
    }

    fn bolt(&mut self, bolt: &Bolt) {
        let (d, l) = (bolt.profile.diameter.mm(), bolt.length.mm());
        // Where the plain shank begins.
        let mut start = 0.0;
        match bolt.head {
            Head::Bow { width } => {
                self.bow(bolt, width);
                return;
            }
            Head::Eye { diameter, hole, .. } => {
                // The length is measured from the middle of the eye.
                start = diameter.mm() / 2.0;
                self.body(Surface::Eye, (-start, start), (diameter.mm(), hole.mm()));
                self.size("d_e", diameter, Place::Front);
            }
            Head::None | Head::Plain => {}
            Head::Hexagon { flats, height } => self.head(Surface::Plain, flats, height, "s"),
            Head::Flange { flats, height, flange, rim } => {
                self.head(Surface::Plain, flats, height, "s");
                self.body(Surface::Plain, (-rim.mm(), 0.0), (flange.mm(), flange.mm()));
            }
            Head::Socket { diameter, height, flats, depth } => {
                self.head(Surface::Plain, diameter, height, "dk");
                self.hole((-height.mm(), depth.mm() - height.mm()), flats.mm());
            }
            Head::Button { diameter, height, flats, depth } => {
                self.head(Surface::Cap, diameter, height, "dk");
                self.hole((-height.mm(), depth.mm() - height.mm()), flats.mm());
            }
            Head::Pan { diameter, height } => self.head(Surface::Cap, diameter, height, "dk"),
            Head::Round { diameter, height, square, depth } => {
                self.head(Surface::Cap, diameter, height, "dk");
                start = depth.mm();
                self.body(Surface::Plain, (0.0, start), (square.mm(), square.mm()));
            }
            Head::Countersunk { diameter, height, flats, depth, .. } => {
                start = height.mm();
                self.body(Surface::Plain, (0.0, start), (diameter.mm(), d));
                self.hole((0.0, depth.mm()), flats.mm());
                self.size("dk", diameter, Place::Front);
            }
        }
        let thread = (l - bolt.thread_length.mm()).max(start);
        if thread > start {
            let shank = bolt.shank.map_or(d, |shank| shank.mm());
            self.body(Surface::Plain, (start, thread), (shank, shank));
        }
        self.body(Surface::Thread, (thread, l), (d, d));
        if thread > 0.0 {
            self.size("b", bolt.thread_length, Place::Along(thread, l));
        }
        self.size("l", bolt.length, Place::Along(0.0, l));
        self.width("d", bolt.profile.diameter, Place::Back);
    }

    /// A bar bent to a half circle: its legs begin where the bend ends, and are measured from inside the bow.
    fn bow(&mut self, bolt: &Bolt, width: Size) {
        let (d, l, w) = (bolt.profile.diameter.mm(), bolt.length.mm(), width.mm());
        let (outside, bend, thread) = (w + 2.0 * d, w / 2.0, l - bolt.thread_length.mm());
        self.body(Surface::Bow, (-d, bend), (outside, w));
        for off in [-(w + d) / 2.0, (w + d) / 2.0] {
            for (surface, along) in [(Surface::Plain, (bend, thread)), (Surface::Thread, (thread, l))] {
                if along.1 > along.0 {
                    self.bodies.push(Turned { off, along, across: (d, d), surface });
                }
            }
        }
        self.size("b", bolt.thread_length, Place::Along(thread, l));
        self.size("l", bolt.length, Place::Along(0.0, l));
        self.width("w + 2 d", Length::from_mm(outside), Place::Front);
        self.size("w", width, Place::Back);
    }

    fn tapping(&mut self, screw: &TappingScrew) {
        let (d1, d2, l, y) = (screw.major.mm(), screw.core.mm(), screw.length.mm(), screw.point.mm());
        let mut start = 0.0;
        match screw.head {
            TappingHead::Pan { diameter, height } => self.head(Surface::Cap, diameter, height, "dk"),
            TappingHead::Bugle { diameter } => {
                start = (diameter.mm() - d2) / 2.0;
                self.body(Surface::Plain, (0.0, start), (diameter.mm(), d2));
                self.size("dk", diameter, Place::Front);
            }
        }
        self.body(Surface::Thread, (start, l - y), (d1, d1));
        self.body(Surface::Plain, (l - y, l), (d2, 0.0));
        self.size("y", screw.point, Place::Along(l - y, l));
        self.size("l", screw.length, Place::Along(0.0, l));
        self.size("d1", screw.major, Place::Back);
    }

    fn head(&mut self, surface: Surface, width: Size, height: Size, symbol: &'static str) {
        let from = -height.mm();
        self.body(surface, (from, 0.0), (width.mm(), width.mm()));
        self.size("k", height, Place::Along(from, 0.0));
        self.size(symbol, width, Place::Front);
    }

    fn nut(&mut self, nut: &Nut) {
        let height = match nut.body {
            NutBody::Collar { overall } => overall,
            _ => nut.height,
        };
        let (flats, along) = (nut.flats.mm(), (0.0, height.mm()));
        self.body(Surface::Plain, along, (flats, flats));
        if let NutBody::Flange { flange, rim } = nut.body {
            self.body(Surface::Plain, (along.1 - rim.mm(), along.1), (flange.mm(), flange.mm()));
        }
        let hole = if nut.tapped { nut.profile.diameter } else { nut.profile.minor_diameter() };
        self.hole(along, hole.mm());
        self.size("m", height, Place::Along(along.0, along.1));
        self.size("s", nut.flats, Place::Front);
        self.width(if nut.tapped { "D" } else { "D1" }, hole, Place::Back);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::part::{Kind, Profile, standard};

    /// A size that stands at the picture, in millimetres.
    fn size(outline: &Outline, symbol: &str) -> f64 {
        let found = outline.sizes.iter().find(|size| size.symbol == symbol);
        found.unwrap_or_else(|| panic!("{symbol}")).length.mm()
    }

    /// A bar of 12 mm bent round 64 mm, by hand, from the sizes that stand at its picture. DIN 3570 measures its
    /// height from the inside of the bow; its outside lies one bar farther out.
    #[test]
    fn a_bow_is_drawn_with_its_legs_where_they_are() {
        let profile = Profile::metric(Length::from_mm(12.0), Length::from_mm(1.75));
        let shape = standard(Kind::UBolt, profile, Some(Length::from_mm(109.0))).unwrap();
        let outline = shape.outline().unwrap();
        let size = |symbol| size(&outline, symbol);
        let (d, w, l, b) = (12.0, size("w"), size("l"), size("b"));
        assert!((size("w + 2 d") - (w + 2.0 * d)).abs() < 1e-9);
        let surfaces: Vec<Surface> = outline.bodies.iter().map(|body| body.surface).collect();
        let leg = [Surface::Plain, Surface::Thread];
        assert_eq!(surfaces, [&[Surface::Bow][..], &leg, &leg].concat());
        let bow = outline.bodies[0];
        assert_eq!((bow.off, bow.across), (0.0, (w + 2.0 * d, w)));
        assert!(bow.along.0 == -d && (bow.along.1 - w / 2.0).abs() < 1e-9, "{bow:?}");
        // Half a circle is as high as half of its width.
        assert!((bow.along.1 - bow.along.0 - bow.across.0 / 2.0).abs() < 1e-9, "{bow:?}");
        assert!((shape.overall_length().unwrap().mm() - (l + d)).abs() < 1e-9);
        for (legs, side) in [(&outline.bodies[1..3], -1.0), (&outline.bodies[3..5], 1.0)] {
            for (leg, (from, to)) in legs.iter().zip([(bow.along.1, l - b), (l - b, l)]) {
                // The middles of the legs stand apart by the room between them and one diameter.
                assert!((leg.off - side * (w + d) / 2.0).abs() < 1e-9, "{leg:?}");
                assert!((leg.along.0 - from).abs() < 1e-9 && (leg.along.1 - to).abs() < 1e-9, "{leg:?}");
                assert_eq!(leg.across, (d, d));
            }
        }
    }

    /// 60 mm inside: the bend ends 30 mm below its inside, and so do legs of 100 mm that are threaded over 70.
    #[test]
    fn legs_that_are_all_thread_have_no_shank() {
        let size = |mm| Size::own(Length::from_mm(mm));
        let bolt = |thread| Bolt {
            head: Head::Bow { width: size(60.0) },
            profile: Profile::metric(Length::from_mm(12.0), Length::from_mm(1.75)),
            length: size(100.0),
            thread_length: size(thread),
            shank: None,
        };
        let surfaces = |thread| {
            let shape = Shape::from(Solid::Bolt(bolt(thread)));
            shape.outline().unwrap().bodies.iter().map(|body| body.surface).collect::<Vec<_>>()
        };
        assert_eq!(surfaces(70.0), [Surface::Bow, Surface::Thread, Surface::Thread]);
        let leg = [Surface::Plain, Surface::Thread];
        assert_eq!(surfaces(69.0), [&[Surface::Bow][..], &leg, &leg].concat());
    }

    /// A bugle is a cone of 90°: as long as half of what its diameters differ by.
    #[test]
    fn a_drywall_screw_is_drawn_with_its_cone_and_point() {
        let profile = Profile::metric(Length::from_mm(3.5), Length::from_mm(0.7));
        let shape = standard(Kind::DrywallScrew, profile, Some(Length::from_mm(35.0))).unwrap();
        let outline = shape.outline().unwrap();
        let size = |symbol| size(&outline, symbol);
        let [cone, thread, point] = outline.bodies[..] else { panic!("{:?}", outline.bodies) };
        assert_eq!(cone.along.0, 0.0);
        assert!((cone.along.1 - (cone.across.0 - cone.across.1) / 2.0).abs() < 1e-9, "{cone:?}");
        assert_eq!(cone.across, (size("dk"), point.across.0));
        assert_eq!((thread.along.0, thread.across.0), (cone.along.1, size("d1")));
        assert!((thread.along.1 - (35.0 - size("y"))).abs() < 1e-9, "{thread:?}");
        assert_eq!((point.along, point.across.1), ((thread.along.1, 35.0), 0.0));
    }
}
