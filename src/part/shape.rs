//! The shape of a part: its sizes, surface, volume and mass.

use std::fmt;

use super::solid::{self, Body};
use super::{
    Bolt, CotterPin, Head, Nut, Ring, STEEL, SetScrew, SpringPin, SpringWasher, TappingScrew, Washer,
};
use crate::quantity::{Area, Length, Mass, Quantity, Volume, unit};
use crate::source::{Source, document};
use crate::working::{Term, Working};

/// A part as a solid, and its mass where that is published and better than the solid's.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shape {
    /// The solid.
    pub solid: Solid,
    /// The mass of one piece as a list gives it.
    pub listed: Option<Listed>,
}

/// A published mass.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Listed {
    /// The mass of one piece.
    pub mass: Mass,
    /// Where it is listed.
    pub source: Source,
}

/// The solids that parts are taken as.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Solid {
    /// A bolt, a screw or a bar with a machine thread.
    Bolt(Bolt),
    /// A set screw.
    SetScrew(SetScrew),
    /// A tapping or drywall screw.
    Tapping(TappingScrew),
    /// A nut.
    Nut(Nut),
    /// A plain or conical washer.
    Washer(Washer),
    /// A spring lock washer.
    SpringWasher(SpringWasher),
    /// A retaining ring.
    Ring(Ring),
    /// A cotter pin.
    CotterPin(CotterPin),
    /// A spring pin.
    SpringPin(SpringPin),
    /// Any other part: only its area and its mass are known.
    Measured(Area, Mass),
}

/// A size of a shape and where it comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Size {
    /// The size.
    pub length: Length,
    /// Where it is published; `None` for the user's own.
    pub source: Option<Source>,
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

impl From<Solid> for Shape {
    fn from(solid: Solid) -> Self {
        Self { solid, listed: None }
    }
}

impl Solid {
    fn body(&self) -> Option<&dyn Body> {
        Some(match self {
            Self::Bolt(body) => body,
            Self::SetScrew(body) => body,
            Self::Tapping(body) => body,
            Self::Nut(body) => body,
            Self::Washer(body) => body,
            Self::SpringWasher(body) => body,
            Self::Ring(body) => body,
            Self::CotterPin(body) => body,
            Self::SpringPin(body) => body,
            Self::Measured(..) => return None,
        })
    }

    fn sizes_mut(&mut self) -> Vec<solid::Named<'_>> {
        match self {
            Self::Bolt(body) => body.sizes_mut(),
            Self::SetScrew(body) => body.sizes_mut(),
            Self::Tapping(body) => body.sizes_mut(),
            Self::Nut(body) => body.sizes_mut(),
            Self::Washer(body) => body.sizes_mut(),
            Self::SpringWasher(body) => body.sizes_mut(),
            Self::Ring(body) => body.sizes_mut(),
            Self::CotterPin(body) => body.sizes_mut(),
            Self::SpringPin(body) => body.sizes_mut(),
            Self::Measured(..) => Vec::new(),
        }
    }

    fn volume(&self) -> Volume {
        match self {
            Self::Measured(_, mass) => *mass / STEEL.value,
            _ => Volume::from_mm3(self.body().map_or(0.0, |body| body.volume())),
        }
    }
}

impl Shape {
    /// A part of which only the surface and the mass of one piece are known.
    pub fn measured(area: Area, mass: Mass) -> Self {
        Solid::Measured(area, mass).into()
    }

    /// The whole surface, threads developed.
    pub fn surface(&self) -> Area {
        match self.solid {
            Solid::Measured(area, _) => area,
            _ => Area::from_mm2(self.solid.body().map_or(0.0, |body| body.area())),
        }
    }

    /// The volume of the steel.
    pub fn volume(&self) -> Volume {
        self.listed.map_or_else(|| self.solid.volume(), |listed| listed.mass / STEEL.value)
    }

    /// The mass in steel: as listed, else that of the solid.
    pub fn mass(&self) -> Mass {
        match (self.listed, self.solid) {
            (Some(listed), _) => listed.mass,
            (None, Solid::Measured(_, mass)) => mass,
            _ => STEEL.value * self.solid.volume(),
        }
    }

    /// The greatest extent along the axis; `None` where the shape is not known.
    pub fn overall_length(&self) -> Option<Length> {
        self.solid.body().map(|body| Length::from_mm(body.extent()))
    }

    /// The nut before it is tapped, as it goes into the kettle; any other part as it is.
    #[must_use]
    pub fn blank(mut self) -> Self {
        let before = self.solid.volume();
        if let Solid::Nut(nut) = &mut self.solid {
            nut.tapped = false;
        }
        if let Some(listed) = &mut self.listed {
            listed.mass = listed.mass + STEEL.value * (self.solid.volume() - before);
        }
        self
    }

    /// Every size, with its symbol and source.
    pub fn dimensions(&self) -> Vec<Dimension> {
        let mut solid = self.solid;
        let sizes = solid.sizes_mut().into_iter();
        sizes.map(|(symbol, name, size)| Dimension { symbol, name, size: *size }).collect()
    }

    /// The shape with one size overwritten by the user's own; `None` if it has no such size.
    ///
    /// A listed mass is that of the listed sizes and goes with them.
    #[must_use]
    pub fn resized(mut self, symbol: &str, length: Length) -> Option<Self> {
        let (_, _, size) = self.solid.sizes_mut().into_iter().find(|(own, _, _)| *own == symbol)?;
        *size = Size::own(length);
        self.listed = None;
        // A rod is threaded over its whole length.
        if let Solid::Bolt(Bolt { head: Head::None, length, thread_length, .. }) = &mut self.solid {
            *thread_length = *length;
        }
        Some(self)
    }

    /// Whether a part can have these sizes.
    ///
    /// # Errors
    /// The first size that cannot be, with its limit.
    pub fn check(&self) -> Result<(), Unsound> {
        let Some(body) = self.solid.body() else { return Ok(()) };
        let dimensions = self.dimensions();
        for limit in body.limits() {
            let wrong = |mm: f64| if limit.at_most { mm > limit.mm } else { mm <= limit.mm || mm.is_nan() };
            if let Some(&dimension) = dimensions.iter().find(|own| own.symbol == limit.symbol)
                && wrong(dimension.size.mm())
            {
                let solid::Limit { mm, at_most, than, .. } = limit;
                return Err(Unsound { dimension, limit: Length::from_mm(mm), at_most, than });
            }
        }
        Ok(())
    }
}

/// The steps to the surface, the volume and the mass of a shape.
pub fn working(shape: &Shape) -> Working {
    let mut working = Working::default();
    working.topic("One part");
    let sizes: Vec<Term> = shape
        .dimensions()
        .into_iter()
        .map(|own| Term::known(own.symbol, own.size.length.show(&unit::MM, 3), own.size.source))
        .collect();
    if let Some(body) = shape.solid.body() {
        solid::steps(&mut working, body, &sizes);
    }
    let mass = shape.mass().show(&unit::G, 2);
    if let Some(listed) = shape.listed {
        working.table("mass of one part, as listed", "m_1", mass, listed.source);
        return working;
    }
    if let Solid::Measured(area, _) = shape.solid {
        working.table("surface of one part, as stated", "A_1", area.show(&unit::MM2, 1), OWN);
        working.table("mass of one part, as stated", "m_1", mass, OWN);
        return working;
    }
    working
        .step("mass of one part; g/cm³ is mg/mm³", "m_1", "V_1·ρ / 1000", mass, solid::GEOMETRY)
        .given("V_1", shape.volume().show(&unit::MM3, 1))
        .published("ρ", STEEL.value.show(&unit::G_CM3, 2), STEEL.source);
    working
}

const OWN: Source = document::OWN.computed("");

impl Size {
    /// A published size.
    pub const fn published(length: Length, source: Source) -> Self {
        Self { length, source: Some(source) }
    }

    /// The user's own size.
    pub const fn own(length: Length) -> Self {
        Self { length, source: None }
    }

    /// A size that is still to be given.
    pub(super) const fn missing() -> Self {
        Self::own(Length::from_mm(f64::NAN))
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
