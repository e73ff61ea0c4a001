//! ASTM F436 washers: the hardness read, what it leaves blank remembered.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis::{Memory, Read};
use kettle_barrel::steel::Grade;
use kettle_barrel::table::astm_f436::WASHER_HOT_DIP;

use crate::seen::agree;
use crate::steel_check::{Row, What::*, check};

/// Grade, nominal diameter in mm, what, printed value, basis.
#[rustfmt::skip]
const ROWS: &[Row] = &[
    (Grade::F436, 20.0, HrcLeast, 38.0, Read),
    (Grade::F436, 20.0, HrcGreatest, 45.0, Read),
    (Grade::F436, 20.0, NoTemper, 0.0, Memory),
];

#[test]
fn the_properties_are_the_published_ones() {
    check(ROWS);
}

#[test]
fn hot_dip_may_soften_the_washer() {
    let [row] = &WASHER_HOT_DIP;
    let hrc = row.hrc.unwrap();
    agree!(ASTM_F436, (hrc.min.unwrap().number, hrc.max.unwrap().number), (26.0, 45.0));
    assert_eq!(hrc.source.basis, Read);
}
