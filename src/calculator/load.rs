//! A load of parts, as the calculators of the barrel and the kettle ask for it: by shape and count, by
//! shape and weight, by its area, or by weight where nobody knows the shape.

pub mod fields;
mod report;
mod system;
mod working;

use super::Written;
use crate::part::{Kind, STEEL, Shape};
use crate::quantity::{Area, Density, Length, Mass, PlainNumber, Volume};
use crate::rule::{Cleaning, Part, SteelFacts};
use crate::source::{Source, document};
use crate::steel::{Grade, Properties, State, Steel};
use crate::table::{Refusal, mechanical_process as practice};
use crate::thread::class::BoltPosition;
use crate::thread::{Designation, Thread, ToleranceClass};

pub use report::told;
pub use system::System;

/// Where a sum over a load comes from.
pub const SUM: Source = document::ARITHMETIC.computed("sum over the load");

/// A value, and where it is published unless it is the user's own.
pub type Known<Q> = (Q, Option<Source>);

/// A load as it is stated.
#[derive(Debug, Clone, PartialEq)]
pub enum Stated {
    /// So many pieces of a part.
    Count(Piece, u32),
    /// A weight of a part.
    Weight(Piece, Written<Mass>),
    /// An area, and the weight if it is known.
    Area(Written<Area>, Option<Written<Mass>>),
    /// A weight of something measured: a bar or a plate.
    Measured(Body, Written<Mass>),
    /// A weight of something of which a trial was coated, or stripped, and weighed.
    Trial(Trial, Written<Mass>),
}

/// One part of a load.
#[derive(Debug, Clone, PartialEq)]
pub struct Piece {
    /// What kind of part.
    pub kind: Kind,
    /// Its thread, as it was written.
    pub designation: Designation,
    /// Its length, where the kind has one.
    pub length: Option<Written<Length>>,
    /// Sizes that differ from the standard's, as they were written.
    pub sizes: String,
    /// Its shape.
    pub shape: Shape,
}

/// Parts of unknown shape, taken for the body that they come nearest to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Body {
    /// Round: its diameter, and how much of its length is threaded.
    Round(Written<Length>, PlainNumber),
    /// Flat: its thickness.
    Flat(Written<Length>),
}

/// A trial: parts weighed, the zinc that was put on or stripped off them, and the coat measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Trial {
    /// Weight of the parts of the trial.
    pub parts: Written<Mass>,
    /// Zinc on them: the gain of weight, or what was lost in stripping.
    pub zinc: Written<Mass>,
    /// The mean of the coat on them, by gauge.
    pub coat: Written<Length>,
    /// Mass of a coat for its thickness.
    pub deposit: Known<Density>,
}

/// What a load amounts to.
#[derive(Debug, Clone, PartialEq)]
pub struct Load {
    /// Its part, where it is known.
    pub piece: Option<Piece>,
    /// Pieces, where the part is known; a weight need not make a whole number.
    pub pieces: Option<f64>,
    /// Area to be coated.
    pub area: Area,
    /// Weight of steel, where it is known.
    pub mass: Option<Mass>,
    /// Volume of steel, where it is known.
    pub solid: Option<Volume>,
}

impl Stated {
    /// The load with its nuts as blanks, tapped only after the zinc.
    #[must_use]
    pub fn blanks(self) -> Self {
        let blank = |piece: Piece| Piece { shape: piece.shape.blank(), ..piece };
        match self {
            Self::Count(piece, pieces) => Self::Count(blank(piece), pieces),
            Self::Weight(piece, mass) => Self::Weight(blank(piece), mass),
            other => other,
        }
    }

    /// What the load amounts to.
    pub fn load(&self) -> Load {
        match self {
            Self::Count(piece, pieces) => Load::of(piece, f64::from(*pieces)),
            Self::Weight(piece, mass) => Load::of(piece, mass.quantity / piece.shape.mass()),
            Self::Area(area, mass) => Load::of_area(area.quantity, mass.map(|mass| mass.quantity)),
            Self::Measured(body, mass) => {
                Load::of_area(body.area_of_a_kilogram() * mass.quantity.kg(), Some(mass.quantity))
            }
            Self::Trial(trial, mass) => {
                let share = mass.quantity / trial.parts.quantity;
                Load::of_area(trial.area() * share, Some(mass.quantity))
            }
        }
    }
}

impl Body {
    /// Area of a kilogram of it, without its ends or edges; a thread makes half as much again of the
    /// length that it covers.
    pub fn area_of_a_kilogram(self) -> Area {
        // A bar has 4 / (ρ d), a plate 2 / (ρ h): both faces.
        let volume = Mass::from_kg(1.0) / STEEL.value;
        let over = |length: Length, times: f64| Area::from_mm2(times * volume.mm3() / length.mm());
        match self {
            Self::Round(diameter, threaded) => {
                let plain = over(diameter.quantity, 4.0);
                plain * (1.0 + (practice::THREADED_AREA.value - 1.0) * threaded.one())
            }
            Self::Flat(thickness) => over(thickness.quantity, 2.0),
        }
    }
}

impl Trial {
    /// The area of the parts of the trial: their zinc over what their coat weighs.
    pub fn area(self) -> Area {
        let areal = self.deposit.0 * self.coat.quantity;
        Area::from_m2(self.zinc.quantity.g() / areal.g_m2())
    }
}

impl Load {
    /// Its part, as the rules judge it.
    pub fn part(&self) -> Option<Part> {
        self.piece.as_ref().map(|piece| Part {
            kind: piece.kind,
            thread: Some(piece.designation.thread),
            bolt_class: Some(usual_class(piece.designation.thread)),
            is_class_written: false,
            nut_class: None,
            quantity: None,
            length: piece.shape.overall_length(),
            own_mass: Some(piece.shape.mass()),
            bolt: None,
            nut: None,
            is_for_a_hole: false,
            is_washer_hard: None,
            is_steel_proposed: false,
            is_steel_least: false,
            is_steel_not_made: false,
        })
    }

    /// A grade at the size of its part; where the part is not known, only what is the same at any size.
    ///
    /// # Errors
    /// A size that the standard of the grade does not cover.
    pub fn properties(&self, grade: Option<Grade>) -> Result<Option<Properties>, Refusal> {
        let Some(grade) = grade else { return Ok(None) };
        match &self.piece {
            Some(piece) => grade.properties(piece.designation.thread.diameter()).map(Some),
            None => Ok(grade.any_size()),
        }
    }

    fn of(piece: &Piece, pieces: f64) -> Self {
        let shape = piece.shape;
        Self {
            piece: Some(piece.clone()),
            pieces: Some(pieces),
            area: shape.surface() * pieces,
            mass: Some(shape.mass() * pieces),
            solid: Some(shape.volume() * pieces),
        }
    }

    fn of_area(area: Area, mass: Option<Mass>) -> Self {
        Self { piece: None, pieces: None, area, mass, solid: mass.map(|mass| mass / STEEL.value) }
    }
}

/// The steel of a load as delivered, cleaned like this.
pub fn steel_of(properties: Properties, cleaning: Cleaning) -> SteelFacts {
    SteelFacts::new(State::of(Steel::Grade(properties)), cleaning)
}

/// The class of an ordinary bolt, which no rule of a load asks for.
fn usual_class(thread: Thread) -> ToleranceClass {
    if thread.is_metric() { ToleranceClass::bolt(6, BoltPosition::G) } else { ToleranceClass::UnifiedBolt(2) }
}
