//! What a class of a standard asks of a coat, and whether a coat meets it.

use super::Process;
use crate::quantity::{ArealMass, Length, Shown, unit};
use crate::source::{Basis, Document, Source};
use crate::table;

/// A class of a standard.
#[derive(Debug, Clone, Copy)]
pub struct Class {
    /// The document.
    pub document: &'static Document,
    /// The table or clause.
    pub place: &'static str,
    /// Its name: `class C`.
    pub name: &'static str,
    /// What it applies to, in our own words.
    pub applies: &'static str,
    /// How the zinc is put on.
    pub process: Process,
    /// Least thickness of a single article or place.
    pub single: Option<Limit>,
    /// Least average of the articles of a batch.
    pub average: Option<Limit>,
    /// Least average over a whole production lot, where the standard asks for one besides.
    pub lot_average: Option<Limit>,
    /// Greatest average, where the standard has one.
    pub average_greatest: Option<Limit>,
}

/// A limit as its document prints it.
#[derive(Debug, Clone, Copy)]
pub struct Limit {
    /// The thickness.
    pub thickness: Length,
    /// The unit it is printed in, with the decimals printed.
    pub printed: Shown,
    /// The mass printed beside it, if any.
    pub mass: Option<ArealMass>,
    /// How it is known here.
    pub basis: Basis,
}

impl Limit {
    /// A limit printed in micrometres.
    pub const fn um(number: f64, basis: Basis) -> Self {
        let printed = Shown { number, unit: &unit::UM, decimals: 0 };
        Self { thickness: Length::from_um(number), printed, mass: None, basis }
    }

    /// A limit printed in inches.
    pub const fn inch(number: f64, basis: Basis) -> Self {
        let printed = Shown { number, unit: &unit::INCH, decimals: 4 };
        Self { thickness: Length::from_inch(number), printed, mass: None, basis }
    }

    /// With the mass printed beside it, in grams per square metre.
    #[must_use]
    pub const fn g_m2(mut self, number: f64) -> Self {
        self.mass = Some(ArealMass::from_g_m2(number));
        self
    }

    /// Whether a thickness reaches the limit, without rounding.
    pub fn is_met_by(&self, thickness: Length) -> bool {
        // One part in 10^12 covers the conversion of units, no more.
        thickness.um() >= self.thickness.um() * (1.0 - 1e-12)
    }

    /// Whether a mass reaches the mass printed beside the thickness; `None` where none is printed.
    pub fn is_met_by_mass(&self, mass: ArealMass) -> Option<bool> {
        self.mass.map(|limit| mass.g_m2() >= limit.g_m2() * (1.0 - 1e-12))
    }
}

impl Class {
    /// Where a limit of this class is published.
    pub fn source(&self, limit: &Limit) -> Source {
        self.document.known(self.place, limit.basis)
    }
}

/// Every class of every standard known here, by standard.
pub fn all() -> impl Iterator<Item = &'static Class> {
    [
        table::astm_a153::CLASSES,
        table::astm_f2329::CLASSES,
        table::iso_10684::CLASSES,
        table::iso_1461::CLASSES,
        table::astm_b695::CLASSES,
        table::astm_b633::CLASSES,
        table::astm_f1941::CLASSES,
        table::iso_4042::CLASSES,
    ]
    .into_iter()
    .flatten()
}
