//! ASTM A354: the nut for grade BD, every finish.

use super::astm_a563_proof::Grade::Dh;
use super::nut_grade::NutGrade;
use super::nut_style::Style::HeavyHex;
use super::pairing::{Bolt, Finish, Nut, Pairing};
use super::steel_row::Sizes;
use crate::source::document;

/// The row. Any A563 nut of a higher proof stress would do as well; DH has the highest.
pub static ROWS: &[Pairing] = &[Pairing {
    bolt: Bolt::A354Bd,
    finish: Finish::Any,
    sizes: Sizes::from_to_inch(0.25, 4.0),
    nut: Nut { grade: NutGrade::A563(Dh), style: HeavyHex },
    also: &[],
    washer: None,
    source: document::ASTM_A354.read("A354-03a, 1.3"),
}];
