//! ASTM A574: tensile loads and proof loads of coarse socket head cap screws, as printed.
//!
//! Up to 2-1/2 in two copies agree; the larger sizes stand in one.

use crate::quantity::Force;
use crate::source::{Source, document};
use crate::table::iso_898_1_loads::Loads;

/// Where the loads stand.
pub static SOURCE: Source = document::ASTM_A574.read("tensile requirements, coarse thread");

/// The printed loads of a coarse screw of a nominal diameter in inches.
pub fn loads(diameter_inch: f64, threads_per_inch: f64) -> Option<Loads> {
    let &(_, _, ultimate, proof) = ROWS
        .iter()
        .find(|row| (row.0 - diameter_inch).abs() < 1e-6 && (row.1 - threads_per_inch).abs() < 1e-6)?;
    let known = |pounds: u32| SOURCE.gives(Force::from_lbf(f64::from(pounds)));
    Some(Loads { ultimate: known(ultimate), proof: known(proof) })
}

/// Nominal diameter in inches, threads per inch; least tensile load and proof load in lbf.
#[rustfmt::skip]
pub static ROWS: &[(f64, f64, u32, u32)] = &[
    (0.073, 64.0, 473, 368),
    (0.086, 56.0, 666, 518),
    (0.099, 48.0, 877, 682),
    (0.112, 40.0, 1_090, 846),
    (0.125, 40.0, 1_430, 1_110),
    (0.138, 32.0, 1_640, 1_270),
    (0.164, 32.0, 2_520, 1_960),
    (0.19, 24.0, 3_150, 2_450),
    (0.25, 20.0, 5_730, 4_450),
    (0.3125, 18.0, 9_440, 7_340),
    (0.375, 16.0, 13_900, 10_800),
    (0.4375, 14.0, 19_100, 14_900),
    (0.5, 13.0, 25_500, 19_900),
    (0.625, 11.0, 38_400, 30_500),
    (0.75, 10.0, 56_800, 45_100),
    (0.875, 9.0, 78_500, 62_400),
    (1.0, 8.0, 103_000, 81_800),
    (1.125, 7.0, 129_000, 103_000),
    (1.25, 7.0, 165_000, 131_000),
    (1.375, 6.0, 196_000, 156_000),
    (1.5, 6.0, 239_000, 190_000),
    (1.75, 5.0, 323_000, 256_000),
    (2.0, 4.5, 425_000, 338_000),
    (2.25, 4.5, 552_000, 439_000),
    (2.5, 4.0, 680_000, 540_000),
    (2.75, 4.0, 838_000, 666_000),
    (3.0, 4.0, 1_010_000, 806_000),
    (3.25, 4.0, 1_210_000, 958_000),
    (3.5, 4.0, 1_420_000, 1_120_000),
    (3.75, 4.0, 1_640_000, 1_300_000),
    (4.0, 4.0, 1_880_000, 1_500_000),
];
