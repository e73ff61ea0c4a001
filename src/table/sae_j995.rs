//! SAE J995: proof stress of inch hex nuts by grade. It prints none for nuts tapped over.

use crate::quantity::Stress;
use crate::source::{Basis, Source, Sourced, document};

/// A grade.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Grade {
    /// 2.
    Grade2,
    /// 5.
    Grade5,
    /// 8.
    Grade8,
}

use Basis::{Memory, Read};
use Grade::*;

/// Where the grades stand.
pub static SOURCE: Source = document::SAE_J995.read("Table 2");

/// The proof stress of a hex nut of a nominal diameter in sixteenths of an inch; coarse are UNC and 8UN.
pub fn proof_stress(sixteenths: u16, grade: Grade, is_coarse: bool) -> Option<Sourced<Stress>> {
    let row = ROWS
        .iter()
        .find(|row| (row.0, row.1) == (grade, is_coarse) && (row.2..=row.3).contains(&sixteenths))?;
    let place = if is_coarse { "Table 2, UNC and 8UN" } else { "Table 2, UNF, 12UN and finer" };
    Some(document::SAE_J995.known(place, row.5).gives(Stress::from_ksi(row.4)))
}

/// Grade, coarse, from and to a nominal diameter in sixteenths of an inch, proof stress in ksi.
static ROWS: &[(Grade, bool, u16, u16, f64, Basis)] = &[
    (Grade2, true, 4, 24, 90.0, Read),
    (Grade5, true, 4, 16, 120.0, Read),
    (Grade5, true, 18, 24, 105.0, Read),
    (Grade8, true, 4, 24, 150.0, Read),
    (Grade2, false, 4, 24, 80.0, Memory),
    (Grade5, false, 4, 16, 109.0, Memory),
    (Grade5, false, 18, 24, 94.0, Memory),
    (Grade8, false, 4, 24, 150.0, Memory),
];

impl Grade {
    /// As it is written.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Grade2 => "2",
            Self::Grade5 => "5",
            Self::Grade8 => "8",
        }
    }
}
