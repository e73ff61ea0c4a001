//! Own sizes as people write them: `k = 11 mm; s = 25`; of a part by its own name `A = 12 cm²; m = 35 g`.

use std::fmt;

use super::standard::template;
use super::{Dimension, Kind, Profile, Shape, Unsound, standard};
use crate::quantity::number::{self, Unreadable};
use crate::quantity::{Area, Length, Mass, Quantity, Unit, unit};
use crate::table::Refusal;

/// Units that a size may carry; without one it is in millimetres.
static UNITS: [&Unit; 3] = [&unit::MM, &unit::INCH, &unit::M];

/// Why own sizes cannot be used.
#[derive(Debug, Clone, PartialEq)]
pub enum OwnSizeError {
    /// No `symbol = size`.
    NoPair {
        /// As it was written.
        text: String,
        /// What the shape has.
        has: Vec<Dimension>,
    },
    /// The shape has no size of that symbol.
    NoSuchSize {
        /// The symbol as it was written.
        symbol: String,
        /// What the shape has.
        has: Vec<Dimension>,
    },
    /// The size is no length.
    Unreadable {
        /// The symbol.
        symbol: String,
        /// What is wrong with its number.
        why: Unreadable,
    },
    /// No part can have these sizes.
    Unsound(Unsound),
    /// No table gives these, and they were not given.
    Missing(Vec<Dimension>),
    /// Of a part by its own name, neither its area and mass nor its mass and the area of a kilogram.
    NoAreaAndMass,
}

/// Why a part has no shape.
#[derive(Debug, Clone, PartialEq)]
pub enum ShapeError {
    /// No table has it, and no sizes were given.
    Refused(Refusal),
    /// The own sizes cannot be used.
    Own(OwnSizeError),
}

/// The part of a kind for a thread: the standard's sizes, overwritten by the user's own. Where no table
/// has the part, all of its sizes must be given.
///
/// # Errors
/// [`ShapeError`] says what is refused, or which size is wrong or still missing.
pub fn shape(
    kind: Kind,
    thread: impl Into<Profile>,
    length: Option<Length>,
    own: &str,
) -> Result<Shape, ShapeError> {
    let profile = thread.into();
    let of_standard = standard(kind, profile, length);
    if own.trim().is_empty() {
        let shape = of_standard.map_err(ShapeError::Refused)?;
        shape.check().map_err(|unsound| ShapeError::Own(OwnSizeError::Unsound(unsound)))?;
        return Ok(shape);
    }
    if kind == Kind::Other {
        return measured(own).map_err(ShapeError::Own);
    }
    let start = match of_standard {
        Ok(shape) => shape,
        Err(refusal) => template(kind, profile, length).ok_or(ShapeError::Refused(refusal))?,
    };
    start.with_own_sizes(own).map_err(ShapeError::Own)
}

static AREAS: [&Unit; 3] = [&unit::CM2, &unit::MM2, &unit::M2];
static MASSES: [&Unit; 3] = [&unit::G, &unit::KG, &unit::LB];

/// `A = 12 cm²; m = 35 g`, or `m = 35 g; a = 0.2 m²/kg`.
fn measured(text: &str) -> Result<Shape, OwnSizeError> {
    let (mut area, mut mass, mut of_kg) = (None, None, None);
    for (symbol, written) in pairs(text) {
        let Some(written) = written else { return Err(OwnSizeError::NoAreaAndMass) };
        let unreadable = |why| OwnSizeError::Unreadable { symbol: symbol.to_owned(), why };
        match symbol {
            "A" => {
                let reading = number::read(written, &AREAS).map_err(unreadable)?;
                area = Some(Area::of(reading.number, reading.unit.unwrap_or(&unit::CM2)));
            }
            "m" => {
                let reading = number::read(written, &MASSES).map_err(unreadable)?;
                mass = Some(Mass::of(reading.number, reading.unit.unwrap_or(&unit::G)));
            }
            "a" => {
                let per_kg = written.trim_end().strip_suffix("/kg").unwrap_or(written);
                let reading = number::read(per_kg, &AREAS).map_err(unreadable)?;
                of_kg = Some(Area::of(reading.number, reading.unit.unwrap_or(&unit::M2)));
            }
            _ => return Err(OwnSizeError::NoAreaAndMass),
        }
    }
    let positive = |area: Area, mass: Mass| area.m2() > 0.0 && mass.kg() > 0.0;
    match (area, mass, of_kg) {
        (Some(area), Some(mass), None) if positive(area, mass) => Ok(Shape::measured(area, mass)),
        (None, Some(mass), Some(of_kg)) if positive(of_kg, mass) => {
            Ok(Shape::measured(Area::from_m2(of_kg.m2() * mass.kg()), mass))
        }
        _ => Err(OwnSizeError::NoAreaAndMass),
    }
}

/// The pairs between `;`, each cut at its sign; without one there is no second half.
fn pairs(text: &str) -> impl Iterator<Item = (&str, Option<&str>)> {
    let pairs = text.split([';', '\n']).map(str::trim).filter(|pair| !pair.is_empty());
    pairs.map(|pair| match pair.split_once(['=', ':']) {
        Some((symbol, written)) => (symbol.trim(), Some(written)),
        None => (pair, None),
    })
}

impl Shape {
    /// The shape with sizes overwritten as `symbol = size` between `;`, in mm unless said otherwise.
    ///
    /// # Errors
    /// [`OwnSizeError`] names the size, and what would do.
    pub fn with_own_sizes(self, text: &str) -> Result<Self, OwnSizeError> {
        let mut shape = self;
        for (symbol, size) in pairs(text) {
            let no_pair = || OwnSizeError::NoPair { text: symbol.to_owned(), has: self.dimensions() };
            let size = size.ok_or_else(no_pair)?;
            let reading = number::read(size, &UNITS)
                .map_err(|why| OwnSizeError::Unreadable { symbol: symbol.to_owned(), why })?;
            let length = Length::of(reading.number, reading.unit.unwrap_or(&unit::MM));
            shape = shape.resized(symbol, length).ok_or_else(|| OwnSizeError::NoSuchSize {
                symbol: symbol.to_owned(),
                has: self.dimensions(),
            })?;
        }
        let missing: Vec<Dimension> =
            shape.dimensions().into_iter().filter(|own| own.size.mm().is_nan()).collect();
        if !missing.is_empty() {
            return Err(OwnSizeError::Missing(missing));
        }
        shape.check().map_err(OwnSizeError::Unsound)?;
        Ok(shape)
    }
}

impl fmt::Display for OwnSizeError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let list = |f: &mut fmt::Formatter<'_>, has: &[Dimension]| {
            has.iter().enumerate().try_for_each(|(at, own)| {
                write!(f, "{}{} ({})", if at > 0 { ", " } else { "" }, own.symbol, own.name)
            })
        };
        match self {
            Self::NoPair { text, has } => {
                write!(f, "“{text}” is no size; write for example k = 11 mm, with one of ")?;
                list(f, has)
            }
            Self::NoSuchSize { symbol, has } => {
                write!(f, "this part has no size “{symbol}”; it has ")?;
                list(f, has)
            }
            Self::Unreadable { symbol, why } => write!(f, "{symbol}: {why}"),
            Self::Unsound(unsound) => write!(f, "{unsound}; change one of the two"),
            Self::Missing(has) => {
                write!(f, "no table here has this part; give these sizes too: ")?;
                list(f, has)
            }
            Self::NoAreaAndMass => write!(
                f,
                "write the area and the mass of one part, A = 12 cm²; m = 35 g, or its mass and the measured \
                 area of a kilogram, m = 35 g; a = 0.2 m²/kg"
            ),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn own_sizes_replace_those_of_the_standard_and_wrong_ones_are_named() {
        let m16 = Profile::metric(Length::from_mm(16.0), Length::from_mm(2.0));
        let bolt = standard(Kind::HexBolt, m16, Some(Length::from_mm(80.0))).unwrap();
        let own = bolt.with_own_sizes("k = 11 mm; s=1 in").unwrap();
        let sizes: Vec<f64> = own.dimensions().iter().map(|own| own.size.length.mm()).collect();
        assert_eq!(sizes, [80.0, 38.0, 25.4, 11.0]);
        assert!(own.dimensions().iter().filter(|own| own.size.source.is_none()).count() == 3);
        for (text, says) in [
            ("k 11", "write for example k = 11 mm, with one of l (length), b (thread length)"),
            ("m = 3", "no size “m”"),
            ("k = tall", "k: “tall” is not a number"),
            ("b = 90", "at most"),
            ("k = 0", "above"),
        ] {
            let why = bolt.with_own_sizes(text).unwrap_err().to_string();
            assert!(why.contains(says), "{text}: {why}");
        }
    }

    #[test]
    fn a_part_that_no_table_has_takes_all_its_sizes() {
        let m20 = Profile::metric(Length::from_mm(20.0), Length::from_mm(2.5));
        let text = |kind, own| match shape(kind, m20, None, own) {
            Ok(shape) => format!("{:.1} g", shape.mass().g()),
            Err(ShapeError::Own(why)) => why.to_string(),
            Err(ShapeError::Refused(refusal)) => refusal.to_string(),
        };
        assert!(text(Kind::ToothedWasher, "").contains("DIN 6797"));
        let missing = text(Kind::ToothedWasher, "d1 = 21; d2 = 33");
        assert!(missing.ends_with("give these sizes too: h (thickness)"), "{missing}");
        assert_eq!(text(Kind::ToothedWasher, "d1 = 21; d2 = 33; h = 1.4"), "5.6 g");
    }

    #[test]
    fn a_part_by_its_own_name_takes_an_area_and_a_mass() {
        let m20 = Profile::metric(Length::from_mm(20.0), Length::from_mm(2.5));
        let of = |own: &str| shape(Kind::Other, m20, None, own);
        let by_area = of("A = 12 cm²; m = 35 g").unwrap();
        assert_eq!((by_area.surface().mm2().round(), by_area.mass().g()), (1200.0, 35.0));
        let by_kg = of("m = 50 g; a = 0.2 m²/kg").unwrap();
        assert_eq!(by_kg.surface().mm2().round(), 10_000.0);
        // Steel of 7.85 g/cm³.
        assert!((by_area.volume().mm3() / 1000.0 - 35.0 / 7.85).abs() < 1e-9);
        for grams in 1..100 {
            let part = of(&format!("A = 12 cm²; m = {grams} g")).unwrap();
            assert_eq!(part.mass(), Mass::from_g(f64::from(grams)));
        }
        for wrong in [
            "m = 35 g",
            "A = 12 cm²",
            "A 12",
            "A = 0; m = 35",
            "A = 12; m = 0",
            "m = 0; a = 0.2",
            "m = 35; a = 0",
            "A = 12 cm²; m = 35 g; a = 0.2",
            "k = 3",
        ] {
            let Err(ShapeError::Own(why)) = of(wrong) else { panic!("{wrong}") };
            assert!(why.to_string().contains("m²/kg"), "{wrong}: {why}");
        }
    }
}
