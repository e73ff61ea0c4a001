//! ISO 898-2: proof loads and proof stresses of nuts by property class and style.
//!
//! The printed loads are those of the 1992 edition, coarse thread, M3 to M39. The stresses behind
//! them, the thin nuts, class 9 and the fine threads are those of memory; what follows from them is
//! a product and says so. Class 12 is printed twice: style 1 ends at M16 and is lower.

use crate::quantity::{Force, Stress};
use crate::source::{Source, Sourced, document};
use crate::table::nut_style::Style;

/// A property class of nuts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PropertyClass {
    /// 04, thin.
    Class04,
    /// 05, thin.
    Class05,
    /// 4, in the 1992 edition only, above M16.
    Class4,
    /// 5.
    Class5,
    /// 6.
    Class6,
    /// 8.
    Class8,
    /// 9.
    Class9,
    /// 10.
    Class10,
    /// 12.
    Class12,
}

use PropertyClass::*;
use Style::{High, Regular, Thin};

/// The printed proof load of a coarse nut of a nominal diameter in mm.
pub fn proof_load(diameter_mm: f64, class: PropertyClass, style: Style) -> Option<Sourced<Force>> {
    let (_, loads) = ROWS.iter().find(|row| (row.0 - diameter_mm).abs() < 1e-6)?;
    let column = COLUMNS.iter().position(|column| *column == (class, style))?;
    let newton = loads.get(column).copied().flatten()?;
    Some(LOADS.gives(Force::from_newton(f64::from(newton))))
}

/// The proof stress of a nut: by class, style, coarse or fine thread, and nominal diameter in mm.
pub fn proof_stress(
    diameter_mm: f64,
    class: PropertyClass,
    style: Style,
    is_coarse: bool,
) -> Option<Sourced<Stress>> {
    let stresses = if is_coarse { COARSE } else { FINE };
    let source = if is_coarse { COARSE_STRESSES } else { FINE_STRESSES };
    stresses
        .iter()
        .find(|row| (row.0, row.1) == (class, style) && (row.2..=row.3).contains(&diameter_mm))
        .map(|row| source.gives(Stress::from_mpa(row.4)))
}

/// Where the loads were read.
pub static LOADS: Source = document::ISO_898_2_1992.read("proof loads, coarse thread");
/// Where the stresses of coarse nuts come from. The printed loads divide back to those of classes 4
/// to 8, 10 and 12.
pub static COARSE_STRESSES: Source =
    document::ISO_898_2.memory("Table 4, stress under proof load, coarse thread");
/// Where the stresses of fine nuts come from; not read in any copy.
pub static FINE_STRESSES: Source =
    document::ISO_898_2.memory("Table 5, stress under proof load, fine thread");

/// Class and style of each column of [`ROWS`].
pub static COLUMNS: [(PropertyClass, Style); 8] = [
    (Class4, Regular),
    (Class5, Regular),
    (Class6, Regular),
    (Class8, Regular),
    (Class8, High),
    (Class10, Regular),
    (Class12, Regular),
    (Class12, High),
];

/// Nominal diameter in mm; proof load in N by column.
#[rustfmt::skip]
pub static ROWS: &[(f64, [Option<u32>; 8])] = &[
    (3.0, [None, Some(2_600), Some(3_000), Some(4_000), None, Some(5_200), Some(5_700), Some(5_800)]),
    (3.5, [None, Some(3_550), Some(4_050), Some(5_400), None, Some(7_050), Some(7_700), Some(7_800)]),
    (4.0, [None, Some(4_550), Some(5_250), Some(7_000), None, Some(9_150), Some(10_000), Some(10_100)]),
    (5.0, [None, Some(8_250), Some(9_500), Some(12_140), None, Some(14_800), Some(16_200), Some(16_300)]),
    (6.0, [None, Some(11_700), Some(13_500), Some(17_200), None, Some(20_900), Some(22_900), Some(23_100)]),
    (7.0, [None, Some(16_800), Some(19_400), Some(24_700), None, Some(30_100), Some(32_900), Some(33_200)]),
    (8.0, [None, Some(21_600), Some(24_900), Some(31_800), None, Some(38_100), Some(41_700), Some(42_500)]),
    (10.0, [None, Some(34_200), Some(39_400), Some(50_500), None, Some(60_300), Some(66_100), Some(67_300)]),
    (12.0, [None, Some(51_400), Some(59_000), Some(74_200), None, Some(88_500), Some(98_600), Some(100_300)]),
    (14.0, [None, Some(70_200), Some(80_500), Some(101_200), None, Some(120_800), Some(134_600), Some(136_900)]),
    (16.0, [None, Some(95_800), Some(109_900), Some(138_200), None, Some(164_900), Some(183_700), Some(186_800)]),
    (18.0, [Some(97_900), Some(121_000), Some(138_200), Some(176_600), Some(170_900), Some(203_500), None, Some(230_400)]),
    (20.0, [Some(125_000), Some(154_400), Some(176_400), Some(225_400), Some(218_100), Some(259_700), None, Some(294_000)]),
    (22.0, [Some(154_500), Some(190_900), Some(218_200), Some(278_800), Some(269_700), Some(321_200), None, Some(363_600)]),
    (24.0, [Some(180_000), Some(222_400), Some(254_200), Some(324_800), Some(314_200), Some(374_200), None, Some(423_600)]),
    (27.0, [Some(234_100), Some(289_200), Some(330_500), Some(422_300), Some(408_500), Some(486_500), None, Some(550_800)]),
    (30.0, [Some(286_100), Some(353_400), Some(403_900), Some(516_100), Some(499_300), Some(594_700), None, Some(673_200)]),
    (33.0, [Some(353_900), Some(437_200), Some(499_700), Some(638_500), Some(617_700), Some(735_600), None, Some(832_800)]),
    (36.0, [Some(416_700), Some(514_700), Some(588_200), Some(751_600), Some(727_100), Some(866_000), None, Some(980_400)]),
    (39.0, [Some(497_800), Some(614_900), Some(702_700), Some(897_900), Some(868_600), Some(1_035_000), None, Some(1_171_000)]),
];

/// Class, style, from and to a nominal diameter in mm, proof stress in MPa.
type StressRow = (PropertyClass, Style, f64, f64, f64);

#[rustfmt::skip]
static COARSE: &[StressRow] = &[
    (Class04, Thin, 5.0, 39.0, 380.0),
    (Class05, Thin, 5.0, 39.0, 500.0),
    (Class4, Regular, 18.0, 39.0, 510.0),
    (Class5, Regular, 1.6, 4.0, 520.0), (Class5, Regular, 5.0, 7.0, 580.0), (Class5, Regular, 8.0, 10.0, 590.0),
    (Class5, Regular, 12.0, 16.0, 610.0), (Class5, Regular, 18.0, 39.0, 630.0),
    (Class6, Regular, 1.6, 4.0, 600.0), (Class6, Regular, 5.0, 7.0, 670.0), (Class6, Regular, 8.0, 10.0, 680.0),
    (Class6, Regular, 12.0, 16.0, 700.0), (Class6, Regular, 18.0, 39.0, 720.0),
    (Class8, Regular, 1.6, 4.0, 800.0), (Class8, Regular, 5.0, 7.0, 855.0), (Class8, Regular, 8.0, 10.0, 870.0),
    (Class8, Regular, 12.0, 16.0, 880.0), (Class8, Regular, 18.0, 39.0, 920.0),
    (Class8, High, 18.0, 39.0, 890.0),
    (Class9, High, 5.0, 7.0, 915.0), (Class9, High, 8.0, 10.0, 940.0), (Class9, High, 12.0, 16.0, 950.0),
    (Class9, High, 18.0, 39.0, 920.0),
    (Class10, Regular, 1.6, 10.0, 1040.0), (Class10, Regular, 12.0, 16.0, 1050.0), (Class10, Regular, 18.0, 39.0, 1060.0),
    (Class12, Regular, 1.6, 10.0, 1140.0), (Class12, Regular, 12.0, 16.0, 1170.0),
    (Class12, High, 1.6, 7.0, 1150.0), (Class12, High, 8.0, 10.0, 1160.0), (Class12, High, 12.0, 16.0, 1190.0),
    (Class12, High, 18.0, 39.0, 1200.0),
];

#[rustfmt::skip]
static FINE: &[StressRow] = &[
    (Class04, Thin, 8.0, 39.0, 380.0),
    (Class05, Thin, 8.0, 39.0, 500.0),
    (Class5, Regular, 8.0, 16.0, 690.0), (Class5, Regular, 18.0, 39.0, 720.0),
    (Class6, Regular, 8.0, 10.0, 770.0), (Class6, Regular, 12.0, 16.0, 780.0), (Class6, Regular, 18.0, 33.0, 870.0),
    (Class6, Regular, 36.0, 39.0, 930.0),
    (Class8, Regular, 8.0, 16.0, 955.0), (Class8, Regular, 18.0, 33.0, 1030.0), (Class8, Regular, 36.0, 39.0, 1090.0),
    (Class8, High, 8.0, 16.0, 890.0),
    (Class10, Regular, 8.0, 10.0, 1100.0), (Class10, Regular, 12.0, 16.0, 1110.0),
    (Class10, High, 8.0, 16.0, 1055.0), (Class10, High, 18.0, 39.0, 1080.0),
    (Class12, High, 8.0, 16.0, 1200.0),
];

impl PropertyClass {
    /// As it is marked: `8`, `05`.
    pub const fn name(self) -> &'static str {
        match self {
            Class04 => "04",
            Class05 => "05",
            Class4 => "4",
            Class5 => "5",
            Class6 => "6",
            Class8 => "8",
            Class9 => "9",
            Class10 => "10",
            Class12 => "12",
        }
    }
}
