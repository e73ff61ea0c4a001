//! Own sizes as people write them: `k = 11 mm; s = 25`.

use std::fmt;

use super::{Dimension, Shape, Unsound};
use crate::quantity::number::{self, Unreadable};
use crate::quantity::{Length, Quantity, Unit, unit};

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
}

impl Shape {
    /// The shape with sizes overwritten as `symbol = size` between `;`, in mm unless said otherwise.
    ///
    /// # Errors
    /// [`OwnSizeError`] names the size, and what would do.
    pub fn with_own_sizes(self, text: &str) -> Result<Self, OwnSizeError> {
        let mut shape = self;
        for pair in text.split([';', '\n']).map(str::trim).filter(|pair| !pair.is_empty()) {
            let (symbol, size) = pair
                .split_once(['=', ':'])
                .ok_or_else(|| OwnSizeError::NoPair { text: pair.to_owned(), has: self.dimensions() })?;
            let symbol = symbol.trim();
            let reading = number::read(size, &UNITS)
                .map_err(|why| OwnSizeError::Unreadable { symbol: symbol.to_owned(), why })?;
            let length = Length::of(reading.number, reading.unit.unwrap_or(&unit::MM));
            shape = shape.resized(symbol, length).ok_or_else(|| OwnSizeError::NoSuchSize {
                symbol: symbol.to_owned(),
                has: self.dimensions(),
            })?;
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
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::{Kind, Profile, standard};
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
}
