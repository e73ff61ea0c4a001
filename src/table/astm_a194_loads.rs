//! ASTM A194: proof stress and proof loads of inch nuts by grade, heavy hex and hex; UNC to 1 in,
//! 8UN above. It gives none for nuts tapped over.

use crate::quantity::{Force, Stress};
use crate::source::{Basis, Source, Sourced, document};
use crate::table::nut_style::Style;

/// A grade.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Grade {
    /// 1.
    Grade1,
    /// 2.
    Grade2,
    /// 2H.
    Grade2H,
    /// 2HM.
    Grade2HM,
    /// 4.
    Grade4,
    /// 7.
    Grade7,
    /// 7M.
    Grade7M,
}

use Grade::*;

/// Where loads and stresses stand.
pub static SOURCE: Source = document::ASTM_A194.read("Tables 3 and 4, proof load");

/// The printed proof load of a nut, by sixteenths of an inch and threads in two inches.
///
/// Grades 2H and 7 share one column, 7M has another; for the others only the stress is known.
pub fn proof_load(
    sixteenths: u16,
    per_two_inches: u16,
    grade: Grade,
    style: Style,
) -> Option<Sourced<Force>> {
    let &(_, _, hard, soft) = ROWS.iter().find(|row| (row.0, row.1) == (sixteenths, per_two_inches))?;
    let [heavy, hex] = match grade {
        Grade2H | Grade7 => hard,
        Grade7M => soft,
        _ => return None,
    };
    let pounds = match style {
        Style::HeavyHex => heavy,
        Style::Hex => hex,
        _ => return None,
    };
    Some(SOURCE.gives(Force::from_lbf(f64::from(pounds))))
}

/// The proof stress of a nut of 1/4 to 4 in.
pub fn proof_stress(grade: Grade, style: Style) -> Option<Sourced<Stress>> {
    let (heavy, hex, basis) = match grade {
        Grade2H | Grade7 => (175.0, 150.0, Basis::Read),
        Grade7M => (150.0, 135.0, Basis::Read),
        Grade4 => (175.0, 150.0, Basis::Memory),
        Grade2 | Grade2HM => (150.0, 135.0, Basis::Memory),
        Grade1 => (130.0, 120.0, Basis::Memory),
    };
    let ksi = match style {
        Style::HeavyHex => heavy,
        Style::Hex => hex,
        _ => return None,
    };
    Some(document::ASTM_A194.known("Tables 3 and 4, proof stress", basis).gives(Stress::from_ksi(ksi)))
}

/// Sixteenths of an inch, threads in two inches; proof load in lbf of 2H and 7, then of 7M: heavy hex
/// and hex.
#[rustfmt::skip]
pub static ROWS: &[(u16, u16, [u32; 2], [u32; 2])] = &[
    (4, 40, [5_570, 4_770], [4_770, 4_300]),
    (5, 36, [9_170, 7_860], [7_860, 7_070]),
    (6, 32, [13_560, 11_620], [11_620, 10_460]),
    (7, 28, [18_600, 15_940], [15_940, 14_350]),
    (8, 26, [24_830, 21_280], [21_280, 19_160]),
    (9, 24, [31_850, 27_300], [27_300, 24_570]),
    (10, 22, [39_550, 33_900], [33_900, 30_510]),
    (12, 20, [58_450, 50_100], [50_100, 45_090]),
    (14, 18, [80_850, 69_300], [69_300, 62_370]),
    (16, 16, [106_000, 90_900], [90_900, 81_810]),
    (18, 16, [138_200, 118_500], [118_500, 106_700]),
    (20, 16, [175_000, 150_000], [150_000, 135_000]),
    (22, 16, [215_800, 185_000], [185_000, 166_500]),
    (24, 16, [261_100, 223_800], [223_800, 201_400]),
];

impl Grade {
    /// As it is written.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Grade1 => "1",
            Self::Grade2 => "2",
            Self::Grade2H => "2H",
            Self::Grade2HM => "2HM",
            Self::Grade4 => "4",
            Self::Grade7 => "7",
            Self::Grade7M => "7M",
        }
    }
}
