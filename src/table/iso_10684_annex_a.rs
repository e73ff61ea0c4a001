//! ISO 10684:2004, Annex A: the reduced loads of M8 and M10 nuts tapped over size.
//!
//! From M12 up the loads of ISO 898-1 and ISO 898-2 hold unreduced (clause 7). The table of bolts cut
//! under was not seen; their loads are stress times the stress area of the undercut thread. The
//! printed load of M10 class 5 is not its stress times the area, 28 594 N; it stays as printed.

use crate::quantity::{Force, Stress};
use crate::source::{Source, document};
use crate::table::Refusal;
use crate::table::iso_898_2_loads::PropertyClass::{self, *};

/// The proof load of a nut of class 6AZ or 6AX.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Property class of the nut.
    pub class: PropertyClass,
    /// Table A.1.
    pub proof_load: Force,
    /// Table A.2.
    pub proof_stress: Stress,
}

/// Where the rows stand.
pub static SOURCE: Source = document::ISO_10684.read("Annex A, Tables A.1 and A.2");

/// The reduced loads of M8, by property class of the nut.
pub static M8: &[Row] = &[
    row(Class5, 17_300.0, 473.0),
    row(Class6, 20_000.0, 546.0),
    row(Class8, 25_500.0, 698.0),
    row(Class9, 27_600.0, 754.0),
    row(Class10, 30_600.0, 835.0),
];

/// The reduced loads of M10, by property class of the nut.
pub static M10: &[Row] = &[
    row(Class5, 28_000.0, 493.0),
    row(Class6, 33_000.0, 569.0),
    row(Class8, 42_200.0, 728.0),
    row(Class9, 45_600.0, 786.0),
    row(Class10, 50_400.0, 870.0),
];

/// The reduced loads of a size; empty where the document does not reduce them.
pub fn rows(diameter_mm: f64) -> &'static [Row] {
    match diameter_mm {
        8.0 => M8,
        10.0 => M10,
        _ => &[],
    }
}

/// The reduced load of an M8 or M10 nut.
///
/// # Errors
/// A blank for a class that the rows do not have.
pub fn nut(diameter_mm: f64, class: PropertyClass) -> Result<Row, Refusal> {
    let row = rows(diameter_mm).iter().find(|row| row.class == class);
    row.copied().ok_or_else(|| {
        let what = format!("the reduced proof load of an M{diameter_mm:.0} nut of class {}", class.name());
        Refusal::blank(&what, SOURCE)
    })
}

const fn row(class: PropertyClass, newton: f64, mpa: f64) -> Row {
    Row { class, proof_load: Force::from_newton(newton), proof_stress: Stress::from_mpa(mpa) }
}
