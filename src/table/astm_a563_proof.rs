//! ASTM A563: proof stress of nuts by grade, style and thread series, plain and zinc-coated.
//!
//! A zinc-coated nut is tapped over by Table 5 and loses strength by it: DH falls from 175 to
//! 150 ksi in heavy hex, and keeps 150 ksi in hex. Hex nuts of most grades and all fine threads are
//! from memory.

use crate::quantity::Stress;
use crate::source::{Basis, Sourced, document};
use crate::table::nut_style::Style;

/// A grade.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Grade {
    /// O.
    O,
    /// A.
    A,
    /// B.
    B,
    /// C, and C3 of weathering steel.
    C,
    /// D.
    D,
    /// DH.
    Dh,
    /// DH3, of weathering steel.
    Dh3,
}

use Basis::{Memory, Read};
use Grade::*;
use Style::{HeavyHex, Hex, Square};

/// The proof stress of a nut of a nominal diameter in sixteenths of an inch.
///
/// Coarse are UNC, 8UN and 6UN; fine are UNF, 12UN and finer.
pub fn proof_stress(
    sixteenths: u16,
    grade: Grade,
    style: Style,
    is_coarse: bool,
    is_zinc_coated: bool,
) -> Option<Sourced<Stress>> {
    let rows = if is_coarse { COARSE } else { FINE };
    let row = rows
        .iter()
        .find(|row| row.grade == grade && row.style == style && (row.from..=row.to).contains(&sixteenths))?;
    let place = if is_coarse { "Table 3, UNC, 8UN and 6UN" } else { "Table 3, UNF, 12UN and finer" };
    let ksi = if is_zinc_coated { row.zinc_coated } else { row.plain };
    Some(document::ASTM_A563.known(place, row.basis).gives(Stress::from_ksi(ksi)))
}

struct Row {
    grade: Grade,
    style: Style,
    /// Sixteenths of an inch.
    from: u16,
    to: u16,
    /// ksi.
    plain: f64,
    zinc_coated: f64,
    basis: Basis,
}

const fn row(
    grade: Grade,
    style: Style,
    (from, to): (u16, u16),
    plain: f64,
    zinc_coated: f64,
    basis: Basis,
) -> Row {
    Row { grade, style, from, to, plain, zinc_coated, basis }
}

const TO_1: (u16, u16) = (4, 16);
const OVER_1: (u16, u16) = (18, 24);
const TO_1_1_2: (u16, u16) = (4, 24);
const TO_4: (u16, u16) = (4, 64);

static COARSE: &[Row] = &[
    row(O, Square, TO_1_1_2, 69.0, 52.0, Memory),
    row(O, Hex, TO_1_1_2, 69.0, 52.0, Memory),
    row(A, Square, TO_1_1_2, 90.0, 68.0, Memory),
    row(A, Hex, TO_1_1_2, 90.0, 68.0, Read),
    row(A, HeavyHex, TO_4, 100.0, 75.0, Read),
    row(B, Hex, TO_1, 120.0, 90.0, Memory),
    row(B, Hex, OVER_1, 105.0, 79.0, Memory),
    row(B, HeavyHex, TO_1, 133.0, 100.0, Read),
    row(B, HeavyHex, OVER_1, 116.0, 87.0, Read),
    row(C, HeavyHex, TO_4, 144.0, 144.0, Read),
    row(D, Hex, TO_1_1_2, 135.0, 135.0, Memory),
    row(D, HeavyHex, TO_4, 150.0, 150.0, Read),
    row(Dh, Hex, TO_1_1_2, 150.0, 150.0, Memory),
    row(Dh, HeavyHex, TO_4, 175.0, 150.0, Read),
    row(Dh3, Hex, (8, 16), 150.0, 150.0, Memory),
    row(Dh3, HeavyHex, TO_4, 175.0, 150.0, Read),
];

static FINE: &[Row] = &[
    row(O, Hex, TO_1_1_2, 65.0, 49.0, Memory),
    row(A, Hex, TO_1_1_2, 80.0, 60.0, Memory),
    row(A, HeavyHex, TO_4, 90.0, 68.0, Memory),
    row(B, Hex, TO_1, 109.0, 82.0, Memory),
    row(B, Hex, OVER_1, 94.0, 70.0, Memory),
    row(B, HeavyHex, TO_1, 120.0, 90.0, Memory),
    row(B, HeavyHex, OVER_1, 105.0, 79.0, Memory),
    row(D, Hex, TO_1_1_2, 135.0, 135.0, Memory),
    row(D, HeavyHex, TO_4, 150.0, 150.0, Memory),
    row(Dh, Hex, TO_1_1_2, 150.0, 150.0, Memory),
    row(Dh, HeavyHex, TO_4, 175.0, 150.0, Memory),
];

impl Grade {
    /// As it is written.
    pub const fn name(self) -> &'static str {
        match self {
            Self::O => "O",
            Self::A => "A",
            Self::B => "B",
            Self::C => "C",
            Self::D => "D",
            Self::Dh => "DH",
            Self::Dh3 => "DH3",
        }
    }
}
