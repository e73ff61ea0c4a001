//! ISO 898-1: least ultimate loads and proof loads of coarse bolts, M3 to M39, as printed.
//!
//! A load is the strength times the stress area, but not always rounded the same way: the printed
//! loads are the ones that are tested to. Three copies have slips that are not taken over (M4 10.9
//! as 91 130 N, M12 9.8 as 75 200 N, M20 10.9 as 250 000 N); where a load stands in one table only,
//! it is as that prints it (M39 12.9).

use crate::quantity::{Area, Force};
use crate::source::{Basis, Sourced, document};

/// A property class of bolts, in the order of the columns.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PropertyClass {
    /// 4.6.
    Class4_6,
    /// 4.8.
    Class4_8,
    /// 5.6.
    Class5_6,
    /// 5.8.
    Class5_8,
    /// 6.8.
    Class6_8,
    /// 8.8.
    Class8_8,
    /// 9.8, which ends at M16.
    Class9_8,
    /// 10.9.
    Class10_9,
    /// 12.9.
    Class12_9,
}

/// The loads of a bolt.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Loads {
    /// Least ultimate load.
    pub ultimate: Sourced<Force>,
    /// Proof load.
    pub proof: Sourced<Force>,
}

/// The printed loads of a coarse bolt of a nominal diameter in mm.
pub fn loads(diameter_mm: f64, class: PropertyClass) -> Option<Loads> {
    let row = row_of(diameter_mm)?;
    let of = |columns: &[Option<u32>; 9]| columns.get(class as usize).copied().flatten().map(newton);
    Some(Loads {
        ultimate: document::ISO_898_1
            .read("2013, Table 4, minimum ultimate tensile loads")
            .gives(of(&row.ultimate)?),
        proof: document::ISO_898_1
            .known("2013, Table 5, proof loads", row.proof_basis)
            .gives(of(&row.proof)?),
    })
}

/// The loads of a coarse 8.8 bolt for structural bolting, M12 to M16: 830 and 600 MPa from M12 up.
pub fn structural_8_8(diameter_mm: f64) -> Option<Loads> {
    let &(_, ultimate, proof) = STRUCTURAL_8_8.iter().find(|row| same(row.0, diameter_mm))?;
    Some(Loads {
        ultimate: document::ISO_898_1
            .read("2013, Table 4, footnote on structural bolting")
            .gives(newton(ultimate)),
        proof: document::ISO_898_1
            .memory("2013, Table 5, footnote on structural bolting")
            .gives(newton(proof)),
    })
}

/// The printed stress area of a coarse thread.
pub fn stress_area(diameter_mm: f64) -> Option<Sourced<Area>> {
    row_of(diameter_mm).map(|row| {
        document::ISO_898_1.read("2013, Table 4, nominal stress area").gives(Area::from_mm2(row.stress_area))
    })
}

/// A size.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal diameter in mm.
    pub diameter: f64,
    /// Nominal stress area in mm².
    pub stress_area: f64,
    /// Least ultimate load in N, by class.
    pub ultimate: [Option<u32>; 9],
    /// Proof load in N, by class.
    pub proof: [Option<u32>; 9],
    /// How the proof loads are known.
    pub proof_basis: Basis,
}

fn row_of(diameter_mm: f64) -> Option<&'static Row> {
    ROWS.iter().find(|row| same(row.diameter, diameter_mm))
}

fn same(printed: f64, asked: f64) -> bool {
    (printed - asked).abs() < 1e-6
}

fn newton(whole: u32) -> Force {
    Force::from_newton(f64::from(whole))
}

/// The sizes; classes 4.6, 4.8, 5.6, 5.8, 6.8, 8.8, 9.8, 10.9 and 12.9.
#[rustfmt::skip]
pub static ROWS: &[Row] = &[
    row(3.0, 5.03, [2_010, 2_110, 2_510, 2_620, 3_020, 4_020, 4_530, 5_230, 6_140], [1_130, 1_560, 1_410, 1_910, 2_210, 2_920, 3_270, 4_180, 4_880], Basis::Read),
    row(3.5, 6.78, [2_710, 2_850, 3_390, 3_530, 4_070, 5_420, 6_100, 7_050, 8_270], [1_530, 2_100, 1_900, 2_580, 2_980, 3_940, 4_410, 5_630, 6_580], Basis::Read),
    row(4.0, 8.78, [3_510, 3_690, 4_390, 4_570, 5_270, 7_020, 7_900, 9_130, 10_700], [1_980, 2_720, 2_460, 3_340, 3_860, 5_100, 5_710, 7_290, 8_520], Basis::Read),
    row(5.0, 14.2, [5_680, 5_960, 7_100, 7_380, 8_520, 11_350, 12_800, 14_800, 17_300], [3_200, 4_400, 3_980, 5_400, 6_250, 8_230, 9_230, 11_800, 13_800], Basis::Read),
    row(6.0, 20.1, [8_040, 8_440, 10_000, 10_400, 12_100, 16_100, 18_100, 20_900, 24_500], [4_520, 6_230, 5_630, 7_640, 8_840, 11_600, 13_100, 16_700, 19_500], Basis::Read),
    row(7.0, 28.9, [11_600, 12_100, 14_400, 15_000, 17_300, 23_100, 26_000, 30_100, 35_300], [6_500, 8_960, 8_090, 11_000, 12_700, 16_800, 18_800, 24_000, 28_000], Basis::Read),
    row(8.0, 36.6, [14_600, 15_400, 18_300, 19_000, 22_000, 29_200, 32_900, 38_100, 44_600], [8_240, 11_400, 10_200, 13_900, 16_100, 21_200, 23_800, 30_400, 35_500], Basis::Read),
    row(10.0, 58.0, [23_200, 24_400, 29_000, 30_200, 34_800, 46_400, 52_200, 60_300, 70_800], [13_000, 18_000, 16_200, 22_000, 25_500, 33_700, 37_700, 48_100, 56_300], Basis::Read),
    row(12.0, 84.3, [33_700, 35_400, 42_200, 43_800, 50_600, 67_400, 75_900, 87_700, 103_000], [19_000, 26_100, 23_600, 32_000, 37_100, 48_900, 54_800, 70_000, 81_800], Basis::Read),
    row(14.0, 115.0, [46_000, 48_300, 57_500, 59_800, 69_000, 92_000, 104_000, 120_000, 140_000], [25_900, 35_600, 32_200, 43_700, 50_600, 66_700, 74_800, 95_500, 112_000], Basis::Read),
    row(16.0, 157.0, [62_800, 65_900, 78_500, 81_600, 94_000, 125_000, 141_000, 163_000, 192_000], [35_300, 48_700, 44_000, 59_700, 69_100, 91_000, 102_000, 130_000, 152_000], Basis::Read),
    large(18.0, 192.0, [76_800, 80_600, 96_000, 99_800, 115_000, 159_000, 200_000, 234_000], [43_200, 59_500, 53_800, 73_000, 84_500, 115_000, 159_000, 186_000], Basis::Read),
    large(20.0, 245.0, [98_000, 103_000, 122_000, 127_000, 147_000, 203_000, 255_000, 299_000], [55_100, 76_000, 68_600, 93_100, 108_000, 147_000, 203_000, 238_000], Basis::Read),
    large(22.0, 303.0, [121_000, 127_000, 152_000, 158_000, 182_000, 252_000, 315_000, 370_000], [68_200, 93_900, 84_800, 115_000, 133_000, 182_000, 252_000, 294_000], Basis::Read),
    large(24.0, 353.0, [141_000, 148_000, 176_000, 184_000, 212_000, 293_000, 367_000, 431_000], [79_400, 109_000, 98_800, 134_000, 155_000, 212_000, 293_000, 342_000], Basis::Read),
    large(27.0, 459.0, [184_000, 193_000, 230_000, 239_000, 275_000, 381_000, 477_000, 560_000], [103_000, 142_000, 128_000, 174_000, 202_000, 275_000, 381_000, 445_000], Basis::Read),
    large(30.0, 561.0, [224_000, 236_000, 280_000, 292_000, 337_000, 466_000, 583_000, 684_000], [126_000, 174_000, 157_000, 213_000, 247_000, 337_000, 466_000, 544_000], Basis::Memory),
    large(33.0, 694.0, [278_000, 292_000, 347_000, 361_000, 416_000, 576_000, 722_000, 847_000], [156_000, 215_000, 194_000, 264_000, 305_000, 416_000, 576_000, 673_000], Basis::Memory),
    large(36.0, 817.0, [327_000, 343_000, 408_000, 425_000, 490_000, 678_000, 850_000, 997_000], [184_000, 253_000, 229_000, 310_000, 359_000, 490_000, 678_000, 792_000], Basis::Memory),
    large(39.0, 976.0, [390_000, 410_000, 488_000, 508_000, 586_000, 810_000, 1_020_000, 1_200_000], [220_000, 303_000, 273_000, 371_000, 429_000, 586_000, 810_000, 947_000], Basis::Memory),
];

/// Nominal diameter in mm, least ultimate load and proof load in N.
static STRUCTURAL_8_8: &[(f64, u32, u32)] =
    &[(12.0, 70_000, 50_700), (14.0, 95_500, 68_800), (16.0, 130_000, 94_500)];

const fn row(
    diameter: f64,
    stress_area: f64,
    ultimate: [u32; 9],
    proof: [u32; 9],
    proof_basis: Basis,
) -> Row {
    Row { diameter, stress_area, ultimate: all(ultimate), proof: all(proof), proof_basis }
}

/// A size above M16, which has no class 9.8.
const fn large(
    diameter: f64,
    stress_area: f64,
    ultimate: [u32; 8],
    proof: [u32; 8],
    proof_basis: Basis,
) -> Row {
    Row { diameter, stress_area, ultimate: without_9_8(ultimate), proof: without_9_8(proof), proof_basis }
}

const fn all([a, b, c, d, e, f, g, h, i]: [u32; 9]) -> [Option<u32>; 9] {
    [Some(a), Some(b), Some(c), Some(d), Some(e), Some(f), Some(g), Some(h), Some(i)]
}

const fn without_9_8([a, b, c, d, e, f, h, i]: [u32; 8]) -> [Option<u32>; 9] {
    [Some(a), Some(b), Some(c), Some(d), Some(e), Some(f), None, Some(h), Some(i)]
}
