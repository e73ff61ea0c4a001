//! ISO 10684:2004, Annex A, Tables A.1 and A.2: reduced proof loads of M8 nuts 6AZ and 6AX, read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::iso_10684_annex_a::nut;

use crate::limit::{same_digits, thread};

#[test]
fn reduced_loads_are_the_published_ones() {
    for &(class, newton, mpa) in ROWS {
        let row = nut(8, class).unwrap().unwrap();
        assert_eq!((row.proof_load.newton(), row.proof_stress.mpa()), (newton, mpa), "class {class}");
    }
    same_digits(thread("M8").stress_area().mm2(), "36.6", "As of M8");
}

/// From M12 the loads are not reduced; M10 is, but its row was not seen.
#[test]
fn what_was_not_seen_is_a_blank() {
    assert_eq!(nut(12, 8), Ok(None));
    assert!(nut(10, 8).is_err());
    assert!(nut(8, 12).is_err());
}

/// Class, proof load in N, proof stress in MPa.
const ROWS: &[(u8, f64, f64)] = &[
    (5, 17300.0, 473.0),
    (6, 20000.0, 546.0),
    (8, 25500.0, 698.0),
    (9, 27600.0, 754.0),
    (10, 30600.0, 835.0),
];
