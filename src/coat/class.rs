//! The classes of every standard, and whether a coat meets one, in the column printed for its unit.

use crate::quantity::{Dimension, Length, Quantity, Shown, Unit, unit};
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

/// Up to this diameter ASTM A153 and F2329 have the thinner class.
const SMALL: Length = Length::from_inch(0.375);

/// Washers thinner than this have the thinner class.
const THIN_WASHER: Length = Length::from_inch(0.1875);

/// The class of a hot-dip document for a thread of this diameter, or for a washer of this thickness: washers
/// go by their own thickness, everything else by the size of the thread.
pub fn of_size(
    classes: &'static [CoatClass],
    diameter: Length,
    washer: Option<Length>,
) -> Option<&'static CoatClass> {
    // A thousandth of a millimetre covers the rounding of inches.
    let rounding = Length::from_mm(0.001);
    let small = match washer {
        Some(thickness) => thickness < THIN_WASHER - rounding,
        None => diameter <= SMALL + rounding,
    };
    let names: [&str; 5] = if small {
        ["3/8 in and under", "class D", "M8 to M64", "threads over 6 mm", "threads of 6 mm and under"]
    } else {
        ["over 3/8 in", "class C", "M8 to M64", "threads over 6 mm", ""]
    };
    names.into_iter().find_map(|name| classes.iter().find(|class| class.name == name))
}

impl ThicknessLimit {
    /// The limit in the column that the document prints for values in that unit.
    ///
    /// A coat in mils is compared with what is printed in inches, a mass with the mass; where there
    /// is no such column, a thickness with the thickness as printed, and a mass with nothing.
    pub fn column(&self, unit: &Unit) -> Option<Shown> {
        if unit.dimension == Dimension::ArealMass {
            let grams = self.mass.map(|mass| mass.show(&unit::G_M2, 0));
            return if *unit == unit::OZ_FT2 { self.mass_oz.or(grams) } else { grams };
        }
        let in_inches = *unit == unit::INCH || *unit == unit::MIL;
        Some(self.printed_inch.filter(|_| in_inches).unwrap_or(self.printed))
    }
}

/// Whether a value reaches a limit as printed, without rounding; both are of one dimension.
pub fn reaches(value: Shown, limit: Shown) -> bool {
    digits(value, limit) >= digits(limit, limit)
}

/// Into how many parts, as a power of ten, the last digit of a limit is cut.
pub const PARTS: i32 = 4;

/// A value in ten-thousandths of the last digit that the limit prints: the residue of binary
/// arithmetic, of the conversion of units and of a mean in picometres must not decide.
pub fn digits(value: Shown, limit: Shown) -> f64 {
    // No unit of a thickness or of a mass on an area has a zero of its own.
    let number = value.number * value.unit.factor / limit.unit.factor;
    (number * 10f64.powi(i32::from(limit.decimals) + PARTS)).round()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::unit::{MIL, OZ_FT2, UM};

    fn meets(class: &str, standard: &'static [CoatClass], number: f64, unit: &'static Unit) -> bool {
        let class = standard.iter().find(|one| one.name == class).unwrap();
        let limit = class.single.unwrap().column(unit).unwrap();
        reaches(Shown { number, unit, decimals: 4 }, limit)
    }

    /// 2.7 mil is 68.58 µm and class 70 is 69 µm, or 0.0027 in: each in its own column.
    #[test]
    fn a_coat_is_compared_in_the_unit_that_is_printed_for_it() {
        assert!(meets("class 70", table::astm_b695::CLASSES, 2.7, &MIL));
        assert!(!meets("class 70", table::astm_b695::CLASSES, 2.69, &MIL));
        assert!(!meets("class 70", table::astm_b695::CLASSES, 68.58, &UM));
        assert!(meets("class D", table::astm_a153::CLASSES, 1.4, &MIL));
        assert!(!meets("class D", table::astm_a153::CLASSES, 35.9, &UM));
        assert!(meets("class A", table::astm_a153::CLASSES, 1.8, &OZ_FT2));
        assert!(meets("over 3/8 in", table::astm_f2329::CLASSES, 43.18, &UM));
        assert!(!meets("over 3/8 in", table::astm_f2329::CLASSES, 43.17, &UM));
    }

    /// ASTM F2329 divides at 3/8 in, which belongs to the small ones; a washer is one of its thickness.
    #[test]
    fn a_size_at_the_division_is_small() {
        use crate::source::document;
        let of =
            |inch| of_size(of(&document::ASTM_F2329), Length::from_inch(inch), None).map(|class| class.name);
        assert_eq!(of(0.25), Some("3/8 in and under"));
        assert_eq!(of(0.375), Some("3/8 in and under"));
        assert_eq!(of(0.4375), Some("over 3/8 in"));
    }
}
