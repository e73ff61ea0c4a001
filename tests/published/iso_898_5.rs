//! ISO 898-5: set screws of class 45H. From memory.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis::Memory;
use kettle_barrel::steel::Grade;

use crate::steel_check::{Row, What::*, check};

/// Grade, nominal diameter in mm, what, printed value, basis.
#[rustfmt::skip]
const ROWS: &[Row] = &[
    (Grade::Class45H, 8.0, HvLeast, 450.0, Memory),
    (Grade::Class45H, 8.0, HvGreatest, 560.0, Memory),
    (Grade::Class45H, 8.0, HrcLeast, 45.0, Memory),
    (Grade::Class45H, 8.0, HrcGreatest, 53.0, Memory),
    (Grade::Class45H, 8.0, NoTemper, 0.0, Memory),
];

#[test]
fn the_properties_are_the_published_ones() {
    check(ROWS);
}
