//! Where every number comes from.
//!
//! Each published document is named once, in [`document`]. A [`Source`] points into one of them
//! and says how the value is known here: nobody has to take a number on trust.

use std::fmt;

use serde::{Serialize, Serializer};

pub mod document;
pub mod ground;

/// A document, a place in it, and how the value there is known to this project.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct Source {
    /// The document.
    pub document: &'static Document,
    /// Clause, table or page; may be empty where the whole document is meant.
    pub place: &'static str,
    /// How the value is known.
    pub basis: Basis,
}

/// A value, and where it is published.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Sourced<T> {
    /// The value.
    pub value: T,
    /// Where it is published, and how it is known here.
    pub source: Source,
}

/// A published document, or a body of practice that has none.
#[derive(Debug, Clone, Copy, Eq)]
pub struct Document {
    /// The designation, as it is written on the cover: `ISO 10684`.
    pub name: &'static str,
    /// What it is about, in a few words of our own.
    pub about: &'static str,
    /// The family it belongs to.
    pub family: Family,
}

/// Which standards name each other: a grade of one family is ordered with the coats and nuts of the same.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Family {
    /// ISO, and the EN, DIN and other national standards beside it.
    Iso,
    /// ASTM, SAE, ASME and the American specifications that build on them.
    Astm,
    /// No standard: the trade, handbooks, articles.
    None,
}

/// How a value is known here.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Basis {
    /// Read in a public copy or listing.
    Read,
    /// Recalled, not read again: check it in the document before relying on it.
    Memory,
    /// Computed from the document's own formula, or plain arithmetic.
    Computed,
    /// A rule of the trade with no published source.
    CommonPractice,
    /// Chosen by this project where nothing was found; replace it with your own value.
    Assumed,
}

impl Basis {
    /// Every basis, the firmest first.
    pub const ALL: [Self; 5] =
        [Self::Read, Self::Memory, Self::Computed, Self::CommonPractice, Self::Assumed];
}

impl PartialEq for Document {
    /// Each is named once, so most are told by where they stand.
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self, other) || self.name == other.name
    }
}

impl Serialize for Document {
    /// As its name.
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.name)
    }
}

impl Document {
    /// A value read in a public copy of this document.
    pub const fn read(&'static self, place: &'static str) -> Source {
        self.known(place, Basis::Read)
    }

    /// A value recalled from this document.
    pub const fn memory(&'static self, place: &'static str) -> Source {
        self.known(place, Basis::Memory)
    }

    /// A value computed by this document's formula.
    pub const fn computed(&'static self, place: &'static str) -> Source {
        self.known(place, Basis::Computed)
    }

    /// A value from this document, on the basis given.
    pub const fn known(&'static self, place: &'static str, basis: Basis) -> Source {
        Source { document: self, place, basis }
    }
}

impl Source {
    /// A value that stands there: `ISO_2081.read("Annex A").gives(Stress::from_mpa(1000.0))`.
    pub const fn gives<T: Copy>(self, value: T) -> Sourced<T> {
        Sourced { value, source: self }
    }
}

/// A rule of the trade with no published source.
pub const fn common_practice(place: &'static str) -> Source {
    document::TRADE.known(place, Basis::CommonPractice)
}

/// A default of this project, to be replaced by the user's own value.
pub const fn assumed(place: &'static str) -> Source {
    document::PROJECT.known(place, Basis::Assumed)
}

impl fmt::Display for Source {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.document.name)?;
        if !self.place.is_empty() {
            write!(f, ", {}", self.place)?;
        }
        write!(f, " ({})", self.basis)
    }
}

impl fmt::Display for Basis {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Read => "read",
            Self::Memory => "from memory",
            Self::Computed => "computed",
            Self::CommonPractice => "common practice",
            Self::Assumed => "assumed",
        })
    }
}
