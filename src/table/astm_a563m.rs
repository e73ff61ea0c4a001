//! ASTM A563M: proof stress of metric nuts, plain and zinc-coated, and hardness of the structural ones. The table was cut off in every
//! public copy, so all of it is from memory; blanks are blanks.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::quantity::Stress;
use crate::source::{Source, Sourced, document};

/// A property class.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PropertyClass {
    /// 5.
    Class5,
    /// 9.
    Class9,
    /// 10.
    Class10,
    /// 12.
    Class12,
    /// 8S, and 8S3 of weathering steel, for structural bolts.
    Class8S,
    /// 10S, and 10S3 of weathering steel, for structural bolts.
    Class10S,
}

use PropertyClass::*;

/// The proof stress of a coarse nut of a nominal diameter in mm, if it is known.
pub fn proof_stress(diameter_mm: f64, class: PropertyClass, is_zinc_coated: bool) -> Option<Sourced<Stress>> {
    let row = ROWS.iter().find(|row| row.0 == class && (row.1..=row.2).contains(&diameter_mm))?;
    let mpa = if is_zinc_coated { row.4? } else { row.3 };
    Some(SOURCE.gives(Stress::from_mpa(mpa)))
}

/// Where the stresses come from.
pub static SOURCE: Source = document::ASTM_A563M.memory("Table 3");

/// Class, from and to a nominal diameter in mm; proof stress in MPa, plain and zinc-coated.
#[rustfmt::skip]
static ROWS: &[(PropertyClass, f64, f64, f64, Option<f64>)] = &[
    (Class5, 1.6, 4.0, 520.0, None), (Class5, 5.0, 6.0, 580.0, Some(465.0)), (Class5, 8.0, 10.0, 590.0, Some(470.0)),
    (Class5, 12.0, 16.0, 610.0, Some(490.0)), (Class5, 20.0, 36.0, 630.0, Some(500.0)), (Class5, 42.0, 100.0, 630.0, Some(500.0)),
    (Class9, 3.0, 4.0, 900.0, None), (Class9, 5.0, 6.0, 915.0, None), (Class9, 8.0, 10.0, 940.0, None),
    (Class9, 12.0, 16.0, 950.0, None), (Class9, 20.0, 36.0, 920.0, None), (Class9, 42.0, 100.0, 920.0, None),
    (Class10, 6.0, 10.0, 1040.0, None), (Class10, 12.0, 16.0, 1050.0, None), (Class10, 20.0, 36.0, 1060.0, None),
    (Class12, 3.0, 6.0, 1150.0, None), (Class12, 8.0, 10.0, 1160.0, None), (Class12, 12.0, 16.0, 1190.0, None),
    (Class12, 20.0, 36.0, 1200.0, None), (Class12, 42.0, 100.0, 1200.0, None),
    (Class8S, 12.0, 36.0, 1075.0, Some(1075.0)),
    (Class10S, 12.0, 36.0, 1245.0, Some(1165.0)),
];

const HARDNESS: Source = document::ASTM_A563M.memory("Table 3, hardness");

/// Classes 8S and 8S3.
pub static CLASS_8S: [SteelRow; 1] = [SteelRow::new(STRUCTURAL, Treatment::NotKnown, HARDNESS)
    .hrc_to(38.0, HARDNESS)
    .hrb_from(89.0, HARDNESS)];

/// Classes 10S and 10S3.
pub static CLASS_10S: [SteelRow; 1] =
    [SteelRow::new(STRUCTURAL, Treatment::QuenchedTempered, HARDNESS).hrc(26.0, 38.0, HARDNESS)];

/// The nuts of structural bolts.
const STRUCTURAL: Sizes = Sizes::from_to_mm(12.0, 36.0);

impl PropertyClass {
    /// As it is written.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Class5 => "5",
            Self::Class9 => "9",
            Self::Class10 => "10",
            Self::Class12 => "12",
            Self::Class8S => "8S",
            Self::Class10S => "10S",
        }
    }
}
