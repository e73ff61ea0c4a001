//! Whether a coat meets a class of a standard.

use crate::quantity::{ArealMass, Length};
use crate::table;
use crate::table::coat_class::{CoatClass, ThicknessLimit};

/// Every class of every standard known here, by standard.
pub fn all() -> impl Iterator<Item = &'static CoatClass> {
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
