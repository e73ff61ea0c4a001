//! The solids that parts are made of: each says in one place what its pieces are, how large, and by
//! which formula.

use std::f64::consts::PI;

use super::{Size, hexagon};
use crate::quantity::{Area, Length, Quantity, Shown, Volume, unit};
use crate::source::{Source, document};
use crate::working::{Step, Term, Working, symbols};

pub(super) mod bolt;
pub(super) mod head;
pub(super) mod nut;
pub(super) mod pin;
pub(super) mod ring;
pub(super) mod set_screw;
pub(super) mod tapping;
pub(super) mod washer;

/// Where the formulas come from.
pub(super) const GEOMETRY: Source = document::ARITHMETIC.computed("geometry of the solid");

/// A size with its symbol and its name.
pub(super) type Named<'a> = (&'static str, &'static str, &'a mut Size);

/// What every solid says of itself, in mm, mm² and mm³.
pub(super) trait Body {
    /// Its sizes, each with its symbol and name.
    fn sizes_mut(&mut self) -> Vec<Named<'_>>;
    /// Its pieces, one after the other.
    fn pieces(&self, add: &mut dyn FnMut(Piece));
    /// The formulas of its surface and its volume over the symbols of the pieces.
    fn sums(&self) -> (&'static str, &'static str);
    /// What the formulas use beside the sizes.
    fn values(&self) -> Vec<Term>;
    /// The steps before those of the pieces.
    fn lead(&self, _lead: &mut Lead<'_>) {}
    /// What its sizes must be above, or at most.
    fn limits(&self) -> Vec<Limit>;
    /// The greatest extent along the axis.
    fn extent(&self) -> f64;

    /// The whole surface.
    fn area(&self) -> f64 {
        let mut sum = 0.0;
        self.pieces(&mut |piece| sum += piece.area.value);
        sum
    }

    /// The whole volume.
    fn volume(&self) -> f64 {
        let mut sum = 0.0;
        self.pieces(&mut |piece| sum += if piece.is_hole { -piece.volume.value } else { piece.volume.value });
        sum
    }
}

/// A piece of a solid.
#[derive(Debug, Clone, Copy)]
pub(super) struct Piece {
    /// What it is.
    pub meaning: &'static str,
    /// Its area.
    pub area: Measure,
    /// Its volume.
    pub volume: Measure,
    /// Whether its volume is taken away.
    pub is_hole: bool,
}

/// An area or a volume, and its formula.
#[derive(Debug, Clone, Copy)]
pub(super) struct Measure {
    /// Its symbol.
    pub symbol: &'static str,
    /// The formula over sizes and values of the solid; empty where the piece has none.
    pub formula: &'static str,
    /// What the formula gives.
    pub value: f64,
}

/// What a size must be above, or at most.
#[derive(Debug, Clone, Copy)]
pub(super) struct Limit {
    /// The size.
    pub symbol: &'static str,
    /// The limit in mm.
    pub mm: f64,
    /// Whether it is a greatest value.
    pub at_most: bool,
    /// What the limit is.
    pub than: &'static str,
}

impl Piece {
    /// A piece of the solid.
    pub fn new(meaning: &'static str, area: Measure, volume: Measure) -> Self {
        Self { meaning, area, volume, is_hole: false }
    }

    /// A piece whose volume is taken away.
    pub fn hole(meaning: &'static str, area: Measure, volume: Measure) -> Self {
        Self { meaning, area, volume, is_hole: true }
    }
}

/// An area or a volume by its formula.
pub(super) fn measure(symbol: &'static str, formula: &'static str, value: f64) -> Measure {
    Measure { symbol, formula, value }
}

/// No area, or no volume.
pub(super) const NOTHING: Measure = Measure { symbol: "", formula: "", value: 0.0 };

/// A size must be above this.
pub(super) fn above(symbol: &'static str, mm: f64, than: &'static str) -> Limit {
    Limit { symbol, mm, at_most: false, than }
}

/// A size must be above zero.
pub(super) fn positive(symbol: &'static str) -> Limit {
    above(symbol, 0.0, "zero")
}

/// A size must be at most this.
pub(super) fn at_most(symbol: &'static str, mm: f64, than: &'static str) -> Limit {
    Limit { symbol, mm, at_most: true, than }
}

/// Steps before those of the pieces: lengths and factors.
pub(super) struct Lead<'w> {
    working: &'w mut Working,
    terms: Vec<Term>,
}

impl Lead<'_> {
    /// A step whose result is one of the values of the solid.
    pub fn step(
        &mut self,
        meaning: &'static str,
        symbol: &'static str,
        formula: &'static str,
        source: Source,
    ) {
        let Some(own) = self.terms.iter().find(|term| term.symbol == symbol) else { return };
        put_in(self.working.step(meaning, symbol, formula, own.value, source), &self.terms);
    }
}

/// The steps to the surface and the volume of a solid.
pub(super) fn steps(working: &mut Working, body: &dyn Body, sizes: &[Term]) {
    let mut terms: Vec<Term> = sizes.to_vec();
    terms.extend(body.values());
    let mut lead = Lead { working, terms };
    body.lead(&mut lead);
    let terms = lead.terms;
    let (mut areas, mut volumes) = (Vec::new(), Vec::new());
    body.pieces(&mut |piece| {
        if !piece.area.formula.is_empty() {
            let shown = area(piece.area.value);
            let step = working.step(piece.meaning, piece.area.symbol, piece.area.formula, shown, GEOMETRY);
            put_in(step, &terms);
            areas.push(Term::given(piece.area.symbol, shown));
        }
        if !piece.volume.formula.is_empty() {
            let shown = volume(piece.volume.value);
            let step =
                working.step(piece.meaning, piece.volume.symbol, piece.volume.formula, shown, GEOMETRY);
            put_in(step, &terms);
            volumes.push(Term::given(piece.volume.symbol, shown));
        }
    });
    let (of_area, of_volume) = body.sums();
    let step =
        working.step("surface of one part, threads developed", "A_1", of_area, area(body.area()), GEOMETRY);
    put_in(step, &areas);
    let step = working.step("volume of one part", "V_1", of_volume, volume(body.volume()), GEOMETRY);
    put_in(step, &volumes);
}

/// Puts in what the formula names, in its order.
fn put_in(step: &mut Step, terms: &[Term]) {
    for symbol in symbols(step.formula) {
        let known = terms.iter().find(|term| term.symbol == symbol);
        if let Some(term) = known.filter(|_| !step.terms.iter().any(|put| put.symbol == symbol)) {
            step.term(*term);
        }
    }
}

/// A value that an earlier step gave, in mm.
pub(super) fn given(symbol: &'static str, mm: f64) -> Term {
    Term::given(symbol, Length::from_mm(mm).show(&unit::MM, 3))
}

/// What a chamfer takes from the area of a hexagon.
pub(super) fn chamfer_area() -> Term {
    constant("c_A", hexagon::CHAMFER_AREA)
}

/// What a chamfer takes from the volume of a hexagon.
pub(super) fn chamfer_volume() -> Term {
    constant("c_V", hexagon::CHAMFER_VOLUME)
}

fn constant(symbol: &'static str, number: f64) -> Term {
    Term::known(symbol, Shown::plain(number, 5), Some(hexagon::CHAMFER_SOURCE))
}

/// Area of a circle.
pub(super) fn disc(diameter: f64) -> f64 {
    PI / 4.0 * diameter * diameter
}

/// Volume of a cone cut off between two diameters.
pub(super) fn frustum(large: f64, small: f64, height: f64) -> f64 {
    PI / 12.0 * height * (large * large + large * small + small * small)
}

/// Volume under a spherical cap of a diameter and a height.
pub(super) fn cap(diameter: f64, height: f64) -> f64 {
    PI / 24.0 * height * (3.0 * diameter * diameter + 4.0 * height * height)
}

/// The curved area of a spherical cap.
pub(super) fn cap_area(diameter: f64, height: f64) -> f64 {
    PI * (diameter * diameter / 4.0 + height * height)
}

fn area(mm2: f64) -> Shown {
    Area::from_mm2(mm2).show(&unit::MM2, 1)
}

fn volume(mm3: f64) -> Shown {
    Volume::from_mm3(mm3).show(&unit::MM3, 1)
}
