//! ISO 10684:2004, Annex A: the reduced loads of M8 and M10 nuts tapped over size.
//!
//! From M12 up the loads of ISO 898-1 and ISO 898-2 hold unreduced (clause 7). The rows of M10 and
//! the table of bolts cut under were not seen.

use crate::quantity::{Force, Stress};
use crate::source::{Source, document};
use crate::table::Refusal;

/// The proof load of an M8 nut of class 6AZ or 6AX.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Property class of the nut.
    pub class: u8,
    /// Table A.1.
    pub proof_load: Force,
    /// Table A.2.
    pub proof_stress: Stress,
}

/// Where the rows stand.
pub static SOURCE: Source = document::ISO_10684.read("Annex A, Tables A.1 and A.2");

/// The reduced loads of M8, by property class of the nut.
pub static M8: &[Row] = &[
    row(5, 17_300.0, 473.0),
    row(6, 20_000.0, 546.0),
    row(8, 25_500.0, 698.0),
    row(9, 27_600.0, 754.0),
    row(10, 30_600.0, 835.0),
];

/// The reduced load of a nut; `None` where the document does not reduce it.
///
/// # Errors
/// A blank for M10, and for a class that the rows of M8 do not have.
pub fn nut(diameter_mm: u16, class: u8) -> Result<Option<Row>, Refusal> {
    let blank = || {
        Refusal::blank(&format!("the reduced proof load of an M{diameter_mm} nut of class {class}"), SOURCE)
    };
    match diameter_mm {
        8 => M8.iter().find(|row| row.class == class).copied().map(Some).ok_or_else(blank),
        10 => Err(blank()),
        _ => Ok(None),
    }
}

const fn row(class: u8, newton: f64, mpa: f64) -> Row {
    Row { class, proof_load: Force::from_newton(newton), proof_stress: Stress::from_mpa(mpa) }
}
