//! EN 14399-3 (read) and -4 (memory): proof loads of nuts for preloaded bolting.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use crate::seen::seen;
use kettle_barrel::source::Basis::{self, *};
use kettle_barrel::table::en_14399_loads::Class::{self, *};
use kettle_barrel::table::en_14399_loads::proof_load;

#[test]
fn proof_loads_are_the_published_ones() {
    for &(diameter, class, kilonewton, basis) in ROWS {
        let found = proof_load(diameter, class).unwrap();
        assert!((found.value.newton() / 1000.0 - kilonewton).abs() < 1e-9, "M{diameter} {class:?}");
        seen(found.source.document, found.value.newton() / 1000.0, kilonewton);
        assert_eq!(found.source.basis, basis, "M{diameter} {class:?}");
    }
    assert!(proof_load(14.0, Hr10).is_none());
}

/// Nominal diameter in mm, class, value in kN, basis.
const ROWS: &[(f64, Class, f64, Basis)] = &[
    (12.0, Hr8, 84.3, Read),
    (12.0, Hr10, 97.8, Read),
    (12.0, Hv10, 87.7, Memory),
    (16.0, Hr8, 157.0, Read),
    (16.0, Hr10, 182.1, Read),
    (16.0, Hv10, 163.0, Memory),
    (20.0, Hr8, 245.0, Read),
    (20.0, Hr10, 284.2, Read),
    (20.0, Hv10, 255.0, Memory),
    (22.0, Hr8, 303.0, Read),
    (22.0, Hr10, 351.2, Read),
    (22.0, Hv10, 315.0, Memory),
    (24.0, Hr8, 353.0, Read),
    (24.0, Hr10, 409.5, Read),
    (24.0, Hv10, 367.0, Memory),
    (27.0, Hr8, 459.0, Read),
    (27.0, Hr10, 532.4, Read),
    (27.0, Hv10, 477.0, Memory),
    (30.0, Hr8, 561.0, Read),
    (30.0, Hr10, 650.8, Read),
    (30.0, Hv10, 583.0, Memory),
    (36.0, Hr8, 817.0, Read),
    (36.0, Hr10, 947.7, Read),
    (36.0, Hv10, 850.0, Memory),
];
