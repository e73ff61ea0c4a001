//! SAE J417: the strength column, and how far it stands from ISO 18265.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use crate::seen::agree;
use kettle_barrel::quantity::Hardness;
use kettle_barrel::source::Basis::{self, Memory, Read};
use kettle_barrel::steel::hardness::to_tensile;
use kettle_barrel::table::sae_j417::TABLE;

/// HRC, MPa, basis.
#[rustfmt::skip]
const ROWS: &[(f64, f64, Basis)] = &[
    (55.0, 2075.0, Read),
    (54.0, 2015.0, Read),
    (53.0, 1950.0, Read),
    (52.0, 1880.0, Read),
    (51.0, 1820.0, Read),
    (50.0, 1760.0, Read),
    (49.0, 1695.0, Read),
    (48.0, 1635.0, Read),
    (47.0, 1580.0, Read),
    (46.0, 1530.0, Read),
    (45.0, 1480.0, Read),
    (44.0, 1435.0, Read),
    (43.0, 1385.0, Memory),
    (42.0, 1340.0, Memory),
    (41.0, 1295.0, Memory),
    (40.0, 1250.0, Memory),
    (39.0, 1215.0, Memory),
    (38.0, 1180.0, Memory),
    (37.0, 1160.0, Memory),
    (36.0, 1115.0, Memory),
    (35.0, 1080.0, Memory),
    (34.0, 1055.0, Memory),
    (33.0, 1025.0, Memory),
    (32.0, 1000.0, Memory),
    (31.0, 980.0, Memory),
    (30.0, 950.0, Memory),
    (29.0, 930.0, Memory),
    (28.0, 910.0, Memory),
    (27.0, 880.0, Memory),
    (26.0, 860.0, Memory),
    (25.0, 840.0, Memory),
    (24.0, 825.0, Memory),
    (23.0, 805.0, Memory),
    (22.0, 785.0, Memory),
    (21.0, 770.0, Memory),
    (20.0, 760.0, Memory),
];

#[test]
fn every_row_is_the_published_one() {
    assert_eq!(ROWS.len(), TABLE.len());
    for &(hrc, mpa, basis) in ROWS {
        let row = TABLE.iter().find(|row| row.hrc == hrc).unwrap();
        agree!(SAE_J417, (row.tensile, row.basis), (mpa, basis), "{hrc} HRC");
    }
    assert!(TABLE.windows(2).all(|rows| rows[0].hrc < rows[1].hrc && rows[0].tensile < rows[1].tensile));
}

#[test]
fn iso_18265_stands_within_six_per_cent() {
    let mut widest = (0.0_f64, 0.0);
    for &(hrc, mpa, _) in ROWS.iter().filter(|row| row.0 >= 21.0) {
        let gap = to_tensile(Hardness::hrc(hrc)).unwrap().to.number() / mpa - 1.0;
        if gap.abs() > widest.0.abs() {
            widest = (gap, hrc);
        }
    }
    assert!(widest.0.abs() < 0.06, "{} at {} HRC", widest.0, widest.1);
}
