//! ASTM A153/A153M: sample sizes of 6.2 (the first row read, the others from memory), the retest and the
//! magnetic gauge (from memory).

use crate::seen::agree;
use kettle_barrel::lot::sample::size;
use kettle_barrel::lot::{Retest, Stage, Standard};
use kettle_barrel::source::Basis;
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

/// Least and greatest lot of a row, articles in the sample (none: all), basis.
const ROWS: &[(u32, Option<u32>, Option<u32>, Basis)] = &[
    (1, Some(3), None, Basis::Read),
    (4, Some(500), Some(3), Basis::Memory),
    (501, Some(1200), Some(5), Basis::Memory),
    (1201, Some(3200), Some(8), Basis::Memory),
    (3201, Some(10_000), Some(13), Basis::Memory),
    (10_001, None, Some(20), Basis::Memory),
];

#[test]
fn sample_sizes_at_both_ends_of_each_row() {
    for &(min, max, articles, basis) in ROWS {
        for lot in [min, max.unwrap_or(1_000_000)] {
            let sample = size(Standard::A153, lot, Stage::First).unwrap();
            agree!(ASTM_A153, (sample.set, sample.sets), (articles.unwrap_or(lot), 1), "{lot}");
            assert_eq!(sample.source.basis, basis, "{lot}");
        }
    }
}

/// Two more sets, and both have to conform; five readings or more make an article.
#[test]
fn retest_and_readings() {
    let retest = size(Standard::A153, 800, Stage::Retest).unwrap();
    agree!(ASTM_A153, (retest.set, retest.sets, retest.articles()), (5, 2, 10));
    agree!(ASTM_A153, Standard::A153.retest(), Retest::TwoSets);
    agree!(ASTM_A153, Standard::A153.readings_per_article().map(|rule| rule.fewest), Some(5));
}
