//! ASTM A563M: proof stress of metric nuts, from memory; what was looked for and not found is a blank.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use crate::seen::as_printed;
use kettle_barrel::source::Basis::Memory;
use kettle_barrel::source::document;
use kettle_barrel::table::astm_a563m::PropertyClass::{self, *};
use kettle_barrel::table::astm_a563m::{SOURCE, proof_stress};

#[test]
fn proof_stresses_are_the_remembered_ones() {
    for &(diameter, class, zinc, mpa) in ROWS {
        let found = proof_stress(diameter, class, zinc).map(|found| found.value.mpa());
        assert_eq!(found, mpa, "M{diameter} {class:?}, zinc {zinc}");
        // A blank is no row.
        if mpa.is_some() {
            as_printed(&document::ASTM_A563M);
        }
    }
    assert_eq!(SOURCE.basis, Memory);
}

/// Nominal diameter in mm, class, zinc-coated, proof stress in MPa.
#[rustfmt::skip]
const ROWS: &[(f64, PropertyClass, bool, Option<f64>)] = &[
    (2.0, Class5, false, Some(520.0)),
    (2.0, Class5, true, None),
    (5.0, Class5, false, Some(580.0)),
    (5.0, Class5, true, Some(465.0)),
    (8.0, Class5, false, Some(590.0)),
    (8.0, Class5, true, Some(470.0)),
    (16.0, Class5, false, Some(610.0)),
    (16.0, Class5, true, Some(490.0)),
    (24.0, Class5, false, Some(630.0)),
    (24.0, Class5, true, Some(500.0)),
    (48.0, Class5, false, Some(630.0)),
    (48.0, Class5, true, Some(500.0)),
    (3.0, Class9, false, Some(900.0)),
    (3.0, Class9, true, None),
    (5.0, Class9, false, Some(915.0)),
    (5.0, Class9, true, None),
    (8.0, Class9, false, Some(940.0)),
    (8.0, Class9, true, None),
    (16.0, Class9, false, Some(950.0)),
    (16.0, Class9, true, None),
    (24.0, Class9, false, Some(920.0)),
    (24.0, Class9, true, None),
    (48.0, Class9, false, Some(920.0)),
    (48.0, Class9, true, None),
    (10.0, Class10, false, Some(1040.0)),
    (10.0, Class10, true, None),
    (16.0, Class10, false, Some(1050.0)),
    (16.0, Class10, true, None),
    (24.0, Class10, false, Some(1060.0)),
    (24.0, Class10, true, None),
    (6.0, Class12, false, Some(1150.0)),
    (6.0, Class12, true, None),
    (8.0, Class12, false, Some(1160.0)),
    (8.0, Class12, true, None),
    (16.0, Class12, false, Some(1190.0)),
    (16.0, Class12, true, None),
    (24.0, Class12, false, Some(1200.0)),
    (24.0, Class12, true, None),
    (48.0, Class12, false, Some(1200.0)),
    (48.0, Class12, true, None),
    (20.0, Class8S, false, Some(1075.0)),
    (20.0, Class8S, true, Some(1075.0)),
    (20.0, Class10S, false, Some(1245.0)),
    (20.0, Class10S, true, Some(1165.0)),
];
