//! Whether a coat meets a class of a standard.

use crate::quantity::{ArealMass, Length};
use crate::source::Document;
use crate::table;
use crate::table::coat_class::{CoatClass, ThicknessLimit};

/// The tables of classes, one a document.
static TABLES: [&[CoatClass]; 8] = [
    table::astm_a153::CLASSES,
    table::astm_f2329::CLASSES,
    table::iso_10684::CLASSES,
    table::iso_1461::CLASSES,
    table::astm_b695::CLASSES,
    table::astm_b633::CLASSES,
    table::astm_f1941::CLASSES,
    table::iso_4042::CLASSES,
];

/// Every class of every standard known here, by standard.
pub fn all() -> impl Iterator<Item = &'static CoatClass> {
    TABLES.into_iter().flatten()
}

/// The classes of one document; none where it is not one of classes.
pub fn of(document: &Document) -> &'static [CoatClass] {
    let is_its = |table: &&[CoatClass]| table.first().is_some_and(|class| class.document == document);
    TABLES.into_iter().find(is_its).unwrap_or_default()
}

impl ThicknessLimit {
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
