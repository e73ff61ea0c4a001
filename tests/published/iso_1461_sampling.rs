//! ISO 1461:2009, Table 1: articles in the control sample (read in a public copy of the table).

use crate::seen::agree;
use kettle_barrel::lot::sample::size;
use kettle_barrel::lot::{Stage, Standard};
use kettle_barrel::source::Basis;
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

/// Least and greatest lot of a row, articles in the sample (none: all).
const ROWS: &[(u32, Option<u32>, Option<u32>)] = &[
    (1, Some(3), None),
    (4, Some(500), Some(3)),
    (501, Some(1200), Some(5)),
    (1201, Some(3200), Some(8)),
    (3201, Some(10_000), Some(13)),
    (10_001, None, Some(20)),
];

#[test]
fn control_sample_at_both_ends_of_each_row() {
    for &(min, max, articles) in ROWS {
        for lot in [min, max.unwrap_or(1_000_000)] {
            let sample = size(Standard::Iso1461, lot, Stage::First).unwrap();
            agree!(ISO_1461, sample.articles(), articles.unwrap_or(lot), "{lot}");
            assert_eq!(sample.source.basis, Basis::Memory, "{lot}");
        }
    }
}

/// From memory: a failed sample is followed by twice the articles, or by all where there are fewer.
#[test]
fn a_failed_sample_is_doubled() {
    agree!(ISO_1461, size(Standard::Iso1461, 300, Stage::Retest).unwrap().articles(), 6);
    agree!(ISO_1461, size(Standard::Iso1461, 5, Stage::Retest).unwrap().articles(), 5);
}
