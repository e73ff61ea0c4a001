//! ISO 10684:2004, Annex A, Tables A.1 and A.2: reduced proof loads of M8 and M10 nuts 6AZ and 6AX, read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::iso_898_2_loads::PropertyClass::{self, *};
use kettle_barrel::table::iso_10684_annex_a::{nut, rows};
use kettle_barrel::thread::undersize;

use crate::limit::{same_digits, thread};
use crate::seen::agree;
use kettle_barrel::source::document;

#[test]
fn reduced_loads_are_the_published_ones() {
    for &(diameter, class, newton, mpa) in ROWS {
        let row = nut(diameter, class).unwrap();
        agree!(
            ISO_10684,
            (row.proof_load.newton(), row.proof_stress.mpa()),
            (newton, mpa),
            "M{diameter} {class:?}"
        );
    }
    same_digits(&document::ISO_10684, thread("M8").stress_area().mm2(), "36.6", "As of M8");
    same_digits(&document::ISO_10684, thread("M10").stress_area().mm2(), "58.0", "As of M10");
    same_digits(
        &document::ISO_10684,
        undersize::bolt(thread("M8")).unwrap().stress_area.mm2(),
        "33.2",
        "As of M8 cut under",
    );
    same_digits(
        &document::ISO_10684,
        undersize::bolt(thread("M10")).unwrap().stress_area.mm2(),
        "53.6",
        "As of M10 cut under",
    );
}

/// The printed loads are stress × area but that of M10 class 5, which is 2 % lower.
#[test]
fn the_one_load_that_is_not_its_product_is_known() {
    for &(diameter, class, newton, mpa) in ROWS {
        let area = if diameter == 8.0 { 36.6 } else { 58.0 };
        let agrees = (mpa * area / newton - 1.0).abs() < 0.002;
        assert_eq!(agrees, (diameter, class) != (10.0, Class5), "M{diameter} {class:?}");
    }
}

#[test]
fn what_the_annex_does_not_have_is_a_blank() {
    assert!(rows(12.0).is_empty());
    assert!(nut(8.0, Class12).is_err() && nut(10.0, Class12).is_err());
}

/// Nominal diameter in mm, class, proof load in N, proof stress in MPa.
const ROWS: &[(f64, PropertyClass, f64, f64)] = &[
    (8.0, Class5, 17300.0, 473.0),
    (8.0, Class6, 20000.0, 546.0),
    (8.0, Class8, 25500.0, 698.0),
    (8.0, Class9, 27600.0, 754.0),
    (8.0, Class10, 30600.0, 835.0),
    (10.0, Class5, 28000.0, 493.0),
    (10.0, Class6, 33000.0, 569.0),
    (10.0, Class8, 42200.0, 728.0),
    (10.0, Class9, 45600.0, 786.0),
    (10.0, Class10, 50400.0, 870.0),
];
