//! The shape of a part: its sizes, surface, volume and mass.

use std::fmt;

use super::{Profile, STEEL, hexagon};
use crate::quantity::{Area, Length, Mass, Quantity, Volume, unit};
use crate::source::Source;

/// A part as a solid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Shape {
    /// A bolt, a screw or a rod.
    Bolt(Bolt),
    /// A nut.
    Nut(Nut),
    /// A washer.
    Washer(Washer),
}

/// A size of a shape and where it comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Size {
    /// The size.
    pub length: Length,
    /// Where it is published; `None` for the user's own.
    pub source: Option<Source>,
}

/// An externally threaded part.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bolt {
    /// Its head.
    pub head: Head,
    /// Its thread; the shank is as thick as the thread.
    pub profile: Profile,
    /// Nominal length: under the head, or the whole of a rod.
    pub length: Size,
    /// Threaded length with the point; of a rod, its whole length.
    pub thread_length: Size,
}

/// The head of a bolt.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Head {
    /// No head, a point at both ends.
    None,
    /// A hexagon.
    Hexagon {
        /// Width across flats.
        flats: Size,
        /// Height.
        height: Size,
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
}

/// A hexagon nut.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Nut {
    /// Its thread.
    pub profile: Profile,
    /// Width across flats.
    pub flats: Size,
    /// Height.
    pub height: Size,
    /// Diameter of the countersink at both faces.
    pub countersink: Size,
    /// Whether it is tapped; a blank has a plain hole of the minor diameter.
    pub tapped: bool,
}

/// A plain washer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Washer {
    /// Hole.
    pub inside: Size,
    /// Outside diameter.
    pub outside: Size,
    /// Thickness.
    pub thickness: Size,
}

/// One size of a shape, by its symbol in the standards.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dimension {
    /// Its symbol: `s`, `k`, `b`.
    pub symbol: &'static str,
    /// Its name: `width across flats`.
    pub name: &'static str,
    /// The size.
    pub size: Size,
}

/// Sizes that no part can have.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Unsound {
    /// The size that cannot be.
    pub dimension: Dimension,
    /// What it must be above, or at most.
    pub limit: Length,
    /// Whether `limit` is a greatest value.
    pub at_most: bool,
    /// What the limit is: `the width across flats`.
    pub than: &'static str,
}

impl Shape {
    /// The whole surface, threads developed.
    pub fn surface(&self) -> Area {
        Area::from_mm2(match self {
            Self::Bolt(bolt) => bolt.area(),
            Self::Nut(nut) => nut.area(),
            Self::Washer(washer) => washer.area(),
        })
    }

    /// The volume of the solid.
    pub fn volume(&self) -> Volume {
        Volume::from_mm3(match self {
            Self::Bolt(bolt) => bolt.volume(),
            Self::Nut(nut) => nut.volume(),
            Self::Washer(washer) => washer.volume(),
        })
    }

    /// The mass in steel.
    pub fn mass(&self) -> Mass {
        STEEL.value * self.volume()
    }

    /// The greatest extent along the axis.
    pub fn overall_length(&self) -> Length {
        match self {
            Self::Bolt(bolt) => Length::from_mm(bolt.length.mm() + bolt.head.height()),
            Self::Nut(nut) => nut.height.length,
            Self::Washer(washer) => washer.thickness.length,
        }
    }

    /// The nut before it is tapped, as it goes into the kettle; any other part as it is.
    #[must_use]
    pub fn blank(mut self) -> Self {
        if let Self::Nut(nut) = &mut self {
            nut.tapped = false;
        }
        self
    }

    /// Every size, with its symbol and source.
    pub fn dimensions(&self) -> Vec<Dimension> {
        let mut copy = *self;
        copy.sizes_mut()
            .into_iter()
            .map(|(symbol, name, size)| Dimension { symbol, name, size: *size })
            .collect()
    }

    /// The shape with one size overwritten by the user's own; `None` if it has no such size.
    #[must_use]
    pub fn resized(mut self, symbol: &str, length: Length) -> Option<Self> {
        let (_, _, size) = self.sizes_mut().into_iter().find(|(own, _, _)| *own == symbol)?;
        *size = Size::own(length);
        // A rod is threaded over its whole length.
        if let Self::Bolt(Bolt { head: Head::None, length, thread_length, .. }) = &mut self {
            *thread_length = *length;
        }
        Some(self)
    }

    /// Whether a part can have these sizes.
    ///
    /// # Errors
    /// The first size that cannot be, with its limit.
    pub fn check(&self) -> Result<(), Unsound> {
        let dimensions = self.dimensions();
        let above = |symbol: &str, limit: f64, than| self.bound(&dimensions, symbol, limit, false, than);
        let at_most = |symbol: &str, limit: f64, than| self.bound(&dimensions, symbol, limit, true, than);
        match self {
            Self::Bolt(bolt) => {
                let (d, point) = (bolt.profile.diameter.mm(), bolt.ends() * bolt.point_length());
                above("l", point, "the length of its point")?;
                match bolt.head {
                    Head::None => {}
                    Head::Hexagon { flats, .. } => {
                        above("s", d, "the thread diameter")?;
                        above(
                            "k",
                            hexagon::CHAMFER_DEPTH * flats.mm(),
                            "the depth of the chamfer on the head",
                        )?;
                    }
                    Head::Socket { diameter, height, .. } => {
                        above("dk", d, "the thread diameter")?;
                        above("k", 0.0, "zero")?;
                        above("s", 0.0, "zero")?;
                        at_most("s", diameter.mm() * hexagon::COS_30, "the hexagon that fits into the head")?;
                        above("t", 0.0, "zero")?;
                        at_most("t", height.mm(), "the height of the head")?;
                    }
                }
                if !matches!(bolt.head, Head::None) {
                    above("b", point, "the length of the point")?;
                    at_most("b", bolt.length.mm(), "the length of the bolt")?;
                }
                Ok(())
            }
            Self::Nut(nut) => {
                above("da", nut.profile.minor_diameter().mm(), "the minor diameter of the thread")?;
                above("s", nut.countersink.mm(), "the diameter of the countersink")?;
                let cut = 2.0 * nut.countersink_depth().max(hexagon::CHAMFER_DEPTH * nut.flats.mm());
                above("m", cut, "what chamfers and countersinks take")
            }
            Self::Washer(washer) => {
                above("d1", 0.0, "zero")?;
                above("d2", washer.inside.mm(), "the hole")?;
                above("h", 0.0, "zero")
            }
        }
    }

    fn bound(
        &self,
        dimensions: &[Dimension],
        symbol: &str,
        limit: f64,
        at_most: bool,
        than: &'static str,
    ) -> Result<(), Unsound> {
        let wrong = |mm: f64| if at_most { mm > limit } else { mm <= limit || mm.is_nan() };
        match dimensions.iter().find(|own| own.symbol == symbol) {
            Some(&dimension) if wrong(dimension.size.mm()) => {
                Err(Unsound { dimension, limit: Length::from_mm(limit), at_most, than })
            }
            _ => Ok(()),
        }
    }

    fn sizes_mut(&mut self) -> Vec<(&'static str, &'static str, &mut Size)> {
        match self {
            Self::Bolt(bolt) => {
                let mut sizes = match &mut bolt.head {
                    Head::None => vec![("l", "length", &mut bolt.length)],
                    _ => vec![
                        ("l", "length", &mut bolt.length),
                        ("b", "thread length", &mut bolt.thread_length),
                    ],
                };
                match &mut bolt.head {
                    Head::None => {}
                    Head::Hexagon { flats, height } => {
                        sizes.extend([("s", "width across flats", flats), ("k", "head height", height)]);
                    }
                    Head::Socket { diameter, height, flats, depth } => sizes.extend([
                        ("dk", "head diameter", diameter),
                        ("k", "head height", height),
                        ("s", "socket across flats", flats),
                        ("t", "socket depth", depth),
                    ]),
                }
                sizes
            }
            Self::Nut(nut) => vec![
                ("s", "width across flats", &mut nut.flats),
                ("m", "nut height", &mut nut.height),
                ("da", "diameter of the countersink", &mut nut.countersink),
            ],
            Self::Washer(washer) => vec![
                ("d1", "hole", &mut washer.inside),
                ("d2", "outside diameter", &mut washer.outside),
                ("h", "thickness", &mut washer.thickness),
            ],
        }
    }
}

impl Size {
    /// A published size.
    pub const fn published(length: Length, source: Source) -> Self {
        Self { length, source: Some(source) }
    }

    /// The user's own size.
    pub const fn own(length: Length) -> Self {
        Self { length, source: None }
    }

    pub(super) fn mm(&self) -> f64 {
        self.length.mm()
    }
}

impl fmt::Display for Unsound {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Dimension { symbol, name, size } = self.dimension;
        let must = if self.at_most { "at most" } else { "above" };
        let (is, limit) = (size.length.show(&unit::MM, 2), self.limit.show(&unit::MM, 2));
        write!(f, "{name} {symbol} = {is} must be {must} {limit}, {}", self.than)
    }
}
