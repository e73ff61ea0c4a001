//! The shape of a row in a standard's table of coat classes.
//!
//! A limit keeps the unit and the decimals its document prints; nothing is compared here.

use crate::process::Process;
use crate::quantity::{ArealMass, Length, Shown, unit};
use crate::source::{Basis, Document, Source};

/// A class of a standard.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CoatClass {
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
    pub single: Option<ThicknessLimit>,
    /// Least average of the articles of a batch.
    pub average: Option<ThicknessLimit>,
    /// Least average over a whole production lot, where the standard asks for one besides.
    pub lot_average: Option<ThicknessLimit>,
    /// Greatest average, where the standard has one.
    pub average_max: Option<ThicknessLimit>,
}

/// A limit as its document prints it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ThicknessLimit {
    /// The thickness.
    pub thickness: Length,
    /// The unit it is printed in, with the decimals printed.
    pub printed: Shown,
    /// The same limit as the document prints it in inches or mils beside it, if it does.
    pub printed_inch: Option<Shown>,
    /// The mass printed beside it, if any.
    pub mass: Option<ArealMass>,
    /// That mass as it is printed in ounces, if it is.
    pub mass_oz: Option<Shown>,
    /// How it is known here.
    pub basis: Basis,
}

impl ThicknessLimit {
    /// A limit printed in micrometres.
    pub const fn um(number: f64, basis: Basis) -> Self {
        let printed = Shown { number, unit: &unit::UM, decimals: 0 };
        Self {
            thickness: Length::from_um(number),
            printed,
            printed_inch: None,
            mass: None,
            mass_oz: None,
            basis,
        }
    }

    /// A limit printed in inches.
    pub const fn inch(number: f64, basis: Basis) -> Self {
        let printed = Shown { number, unit: &unit::INCH, decimals: 4 };
        Self {
            thickness: Length::from_inch(number),
            printed,
            printed_inch: None,
            mass: None,
            mass_oz: None,
            basis,
        }
    }

    /// With the same limit as it is printed beside it in thousandths of an inch.
    #[must_use]
    pub const fn mil(mut self, number: f64) -> Self {
        self.printed_inch = Some(Shown { number, unit: &unit::MIL, decimals: 1 });
        self
    }

    /// With the same limit as it is printed beside it in inches.
    #[must_use]
    pub const fn and_inch(mut self, number: f64) -> Self {
        self.printed_inch = Some(Shown { number, unit: &unit::INCH, decimals: 4 });
        self
    }

    /// With the mass printed beside it, in grams per square metre.
    #[must_use]
    pub const fn g_m2(mut self, number: f64) -> Self {
        self.mass = Some(ArealMass::from_g_m2(number));
        self
    }

    /// With the mass printed beside it in ounces per square foot.
    #[must_use]
    pub const fn oz_ft2(mut self, number: f64) -> Self {
        self.mass_oz = Some(Shown { number, unit: &unit::OZ_FT2, decimals: 2 });
        self
    }
}

impl CoatClass {
    /// Where a limit of this class is published.
    pub fn source(&self, limit: &ThicknessLimit) -> Source {
        self.document.known(self.place, limit.basis)
    }
}
