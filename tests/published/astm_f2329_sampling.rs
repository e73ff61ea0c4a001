//! ASTM F2329, Table 1: process control of a batch lot, zero defects, one set for every five batches (read).

use crate::seen::agree;
use kettle_barrel::lot::sample::size;
use kettle_barrel::lot::{Stage, Standard};
use kettle_barrel::source::Basis;
use kettle_barrel::table::astm_f2329_sampling::{BATCH, BATCHES_PER_SET, TABLE};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

/// Least and greatest batch; specimens for thickness, adhesion, appearance.
const ROWS: &[(u32, Option<u32>, u32, u32, u32)] =
    &[(5, Some(25), 1, 1, 1), (26, Some(50), 1, 1, 2), (51, Some(150), 2, 1, 2), (151, None, 2, 2, 2)];

#[test]
fn specimens_of_a_batch() {
    assert_eq!((BATCH.len(), BATCHES_PER_SET, TABLE.basis), (4, 5, Basis::Read));
    for (row, &(min, max, thickness, adhesion, appearance)) in BATCH.iter().zip(ROWS) {
        assert_eq!((row.min, row.max), (min, max));
        agree!(ASTM_F2329, (row.thickness, row.adhesion, row.appearance), (thickness, adhesion, appearance));
        for batch in [min, max.unwrap_or(100_000)] {
            assert_eq!(size(Standard::F2329Batch, batch, Stage::First).unwrap().articles(), thickness);
        }
    }
}

#[test]
fn below_the_table_nothing_is_given() {
    let refusal = size(Standard::F2329Batch, 4, Stage::First).unwrap_err().to_string();
    assert!(refusal.contains("batches from 5"), "{refusal}");
}
