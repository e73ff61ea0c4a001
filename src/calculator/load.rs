//! A load of parts, as the calculators of the barrel and the kettle ask for it: by shape and count,
//! by shape and weight, or by its area.

use super::{Bound, Choice, Fault, FieldAbout as Field, Figure, Note, Reader, Section};
use crate::part::{self, Kind, STEEL, Shape, ShapeError};
use crate::quantity::{Area, Density, Length, Mass, Quantity, Shown, Unit, Volume, unit};
use crate::source::{Source, document};
use crate::thread::{Designation, Thread};
use crate::working::Working;

/// Where a sum over a load comes from.
pub const SUM: Source = document::ARITHMETIC.computed("sum over the load");

/// A value, and where it is published unless it is the user's own.
pub type Known<Q> = (Q, Option<Source>);

/// A load as it is stated.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Stated {
    /// So many pieces of a part.
    Count(Piece, u32),
    /// A weight of a part.
    Weight(Piece, Mass),
    /// An area, and the weight if it is known.
    Area(Area, Option<Mass>),
}

/// One part of a load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Piece {
    /// What kind of part.
    pub kind: Kind,
    /// Its thread.
    pub thread: Thread,
    /// Its shape.
    pub shape: Shape,
}

/// What a load amounts to.
#[derive(Debug, Clone, Copy, PartialEq)]
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

static LOADS: [Choice; 3] = [
    Choice::new("count", "Part and number of pieces"),
    Choice::new("weight", "Part and weight"),
    Choice::new("area", "Area"),
];

#[allow(
    clippy::indexing_slicing,
    reason = "evaluated when it is compiled: a place beyond the end is no build"
)]
static KINDS: [Choice; Kind::ALL.len()] = {
    let mut choices = [Choice::new("", ""); Kind::ALL.len()];
    let mut at = 0;
    while at < Kind::ALL.len() {
        choices[at] = Choice::new(Kind::ALL[at].key(), Kind::ALL[at].name());
        at += 1;
    }
    choices
};

static LENGTHS: [&Unit; 3] = [&unit::MM, &unit::INCH, &unit::M];
static MASSES: [&Unit; 3] = [&unit::KG, &unit::LB, &unit::TONNE];
static AREAS: [&Unit; 3] = [&unit::M2, &unit::FT2, &unit::CM2];

/// How the load is stated.
pub const LOAD: Field = Field::choice("load", "Load stated by", &LOADS, "count");
/// The kind of part.
pub const PART: Field = Field::choice("part", "Part", &KINDS, "hex-bolt").when("load", &["count", "weight"]);
/// Its thread.
pub const THREAD: Field = Field::text("thread", "Thread", "M12")
    .hint("M12, M16x1.5, 5/8-11 UNC.")
    .when("load", &["count", "weight"]);
/// Its length.
pub const LENGTH: Field = Field::quantity(
    "length",
    "Length",
    &LENGTHS,
    Bound::PositiveTo(
        Shown { number: 6.0, unit: &unit::M, decimals: 0 },
        "longer rods are not coated whole; check the unit",
    ),
    "50 mm",
)
.hint("Under the head; of a rod, the whole length.")
.when("part", Kind::KEYS_WITH_LENGTH);
/// Sizes that differ from the standard's.
pub const SIZES: Field = Field::text("sizes", "Own sizes", "")
    .hint("Only where the part is not standard: k = 11 mm; s = 25. The sizes in use are listed below.")
    .when("load", &["count", "weight"])
    .optional();
/// The number of pieces.
pub const PIECES: Field = Field::count("pieces", "Pieces", 1, 100_000_000, "4000").when("load", &["count"]);
/// The weight of the load.
pub const WEIGHT: Field =
    Field::quantity("weight", "Weight", &MASSES, HEAVIEST, "500 kg").when("load", &["weight"]);
/// The area of the load.
pub const AREA: Field = Field::quantity(
    "area",
    "Area",
    &AREAS,
    Bound::PositiveTo(
        Shown { number: 100_000.0, unit: &unit::M2, decimals: 0 },
        "that is more than any plant coats in a day; check the unit",
    ),
    "100 m²",
)
.when("load", &["area"]);
/// The weight of a load stated by its area.
pub const AREA_WEIGHT: Field =
    Field::quantity("area_weight", "Weight of the load, if known", &MASSES, HEAVIEST, "")
        .hint("Without it there is no volume of parts, and so no beads, barrels or baskets.")
        .when("load", &["area"])
        .optional();

const HEAVIEST: Bound = Bound::PositiveTo(
    Shown { number: 1000.0, unit: &unit::TONNE, decimals: 0 },
    "that is more than any plant coats in a day; check the unit",
);

/// Reads the fields of a load; problems are kept in the reader.
pub fn read(reader: &mut Reader<'_>) -> Option<Stated> {
    // Every field is read before any answer is missed, so that all problems are told at once.
    let by = reader.choice("load", |key| LOADS.iter().position(|choice| choice.key == key));
    let piece = read_piece(reader);
    let pieces = reader.count("pieces");
    let weight = reader.quantity("weight");
    let area = reader.quantity("area");
    let area_weight = reader.quantity("area_weight");
    match by? {
        0 => Some(Stated::Count(piece?, pieces?)),
        1 => Some(Stated::Weight(piece?, weight?)),
        _ => Some(Stated::Area(area?, area_weight)),
    }
}

fn read_piece(reader: &mut Reader<'_>) -> Option<Piece> {
    let kind = reader.choice("part", Kind::from_key);
    let thread = reader.parsed("thread", Designation::read);
    let length = reader.quantity::<Length>("length");
    if kind?.has_length() && length.is_none() {
        return None;
    }
    let (kind, thread) = (kind?, thread?.thread);
    let shape = if reader.is_empty("sizes") {
        match part::shape(kind, thread, length, "") {
            Ok(shape) => shape,
            Err(ShapeError::Refused(refusal)) => {
                reader.problem("part", Fault::Refused(refusal));
                return None;
            }
            // The length may be shorter than the point of the thread.
            Err(ShapeError::Own(unsound)) => {
                reader.problem("length", Fault::Conflict(unsound.to_string()));
                return None;
            }
        }
    } else {
        reader.parsed("sizes", |text| part::shape(kind, thread, length, text))?
    };
    Some(Piece { kind, thread, shape })
}

impl Stated {
    /// The load with its nuts as blanks, tapped only after the zinc.
    #[must_use]
    pub fn blanks(self) -> Self {
        let blank = |piece: Piece| Piece { shape: piece.shape.blank(), ..piece };
        match self {
            Self::Count(piece, pieces) => Self::Count(blank(piece), pieces),
            Self::Weight(piece, mass) => Self::Weight(blank(piece), mass),
            Self::Area(..) => self,
        }
    }

    /// What the load amounts to.
    pub fn load(&self) -> Load {
        match *self {
            Self::Count(piece, pieces) => Load::of(piece, f64::from(pieces)),
            Self::Weight(piece, mass) => Load::of(piece, mass / piece.shape.mass()),
            Self::Area(area, mass) => {
                let solid = mass.map(|mass| mass / STEEL.value);
                Load { piece: None, pieces: None, area, mass, solid }
            }
        }
    }
}

impl Load {
    fn of(piece: Piece, pieces: f64) -> Self {
        let Piece { shape, .. } = piece;
        Self {
            piece: Some(piece),
            pieces: Some(pieces),
            area: shape.surface() * pieces,
            mass: Some(shape.mass() * pieces),
            solid: Some(shape.volume() * pieces),
        }
    }

    /// Area, weight and pieces.
    pub fn figures(&self) -> Vec<Figure> {
        let mut figures = vec![Figure::one("A", "Area of the load", self.area.show(&unit::M2, 2))];
        if let Some(mass) = self.mass {
            figures.push(Figure::one("M", "Weight of the load", mass.show(&unit::KG, 1)));
            let each = Area::from_m2(self.area.m2() / mass.kg());
            figures.push(Figure::one("", "Area of one kilogram", each.show(&unit::M2, 4)));
        }
        if let Some(pieces) = self.pieces {
            figures.push(Figure::one("n", "Pieces", Shown::pieces(pieces)));
        }
        figures
    }

    /// The sizes of the part with their sources, its area and its mass.
    pub fn section(&self) -> Option<Section> {
        let piece = self.piece?;
        let mut figures: Vec<Figure> = piece
            .shape
            .dimensions()
            .into_iter()
            .map(|own| {
                let mut figure = Figure::one(own.symbol, own.name, own.size.length.show(&unit::MM, 2));
                figure.source = own.size.source;
                figure
            })
            .collect();
        figures.push(Figure::one(
            "A_1",
            "Surface of one, threads developed",
            piece.shape.surface().show(&unit::CM2, 2),
        ));
        figures.push(Figure::one("m_1", "Mass of one", piece.shape.mass().show(&unit::G, 1)));
        Some(Section { title: format!("Sizes of the {}", piece.kind).into(), figures })
    }

    /// From the factor and the coat to the zinc on the load, which is shown in kilograms.
    pub fn zinc(&self, working: &mut Working, factor: Known<Density>, coat: Known<Length>, zinc: Shown) {
        let areal = (factor.0 * coat.0).show(&unit::G_M2, 2);
        let source = document::ARITHMETIC.computed("mass = density × thickness");
        working
            .step("mass of the coat on the area", "m", "k·t", areal, source)
            .known("k", factor.0.show(&unit::G_M2_UM, 3), factor.1)
            .known("t", coat.0.show(&unit::UM, 2), coat.1);
        working
            .step("zinc on the parts", "Z", "m·A / 1000", zinc, SUM)
            .given("m", areal)
            .given("A", self.area.show(&unit::M2, 2));
    }

    /// From the sizes of the part to the area of the load.
    pub fn working(&self, stated: &Stated) -> Working {
        let Some(piece) = self.piece else { return Working::default() };
        let mut working = part::working(&piece.shape);
        let pieces = Shown { decimals: 1, ..Shown::pieces(self.pieces.unwrap_or_default()) };
        if let Stated::Weight(_, mass) = stated {
            working
                .step("pieces in the load", "n", "1000·M / m_1", pieces, SUM)
                .given("M", mass.show(&unit::KG, 2))
                .given("m_1", piece.shape.mass().show(&unit::G, 2));
        }
        working
            .step(
                "area of the load; 1 m² is 10^6 mm²",
                "A",
                "n·A_1 / 10^6",
                self.area.show(&unit::M2, 2),
                SUM,
            )
            .given("n", pieces)
            .given("A_1", piece.shape.surface().show(&unit::MM2, 1));
        working
    }

    /// What the area rests on.
    pub fn notes(&self) -> Vec<Note> {
        if self.piece.is_none() {
            return Vec::new();
        }
        vec![Note::sourced(
            "Sizes are nominal, which for most is the greatest the standard allows; threads count with \
             both flanks. Own sizes replace those of the standard.",
            document::ARITHMETIC.computed("geometry of the solid"),
        )]
    }
}
