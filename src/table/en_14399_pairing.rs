//! EN 14399: the nuts and washers of preloaded structural bolts, M12 to M36; systems are not mixed.

use super::en_14399_loads::Class::{self, *};
use super::nut_grade::NutGrade;
use super::nut_style::Style::HeavyHex;
use super::pairing::Bolt::{self, *};
use super::pairing::{Finish, Nut, Pairing, Washer};
use super::steel_row::Sizes;
use crate::source::{Source, document};

/// Where the systems stand.
pub static SOURCE: Source = TABLE_1;

const TABLE_1: Source = document::EN_14399_1.read("Table 1, systems of bolt, nut and washer");

/// The rows.
pub static ROWS: &[Pairing] =
    &[row(Hr8_8, nut(Hr8), &[nut(Hr10)]), row(Hr10_9, nut(Hr10), &[]), row(Hv10_9, nut(Hv10), &[])];

/// Both are wide across flats; HR nuts are about 0.9 diameters high, HV nuts 0.8.
const fn nut(class: Class) -> Nut {
    Nut { grade: NutGrade::En14399(class), style: HeavyHex }
}

const fn row(bolt: Bolt, nut: Nut, also: &'static [Nut]) -> Pairing {
    Pairing {
        bolt,
        finish: Finish::Any,
        sizes: Sizes::from_to_mm(12.0, 36.0),
        nut,
        also,
        washer: Some(Washer::En14399),
        source: TABLE_1,
    }
}
