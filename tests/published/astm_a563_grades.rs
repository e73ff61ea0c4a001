//! ASTM A563 grade DH, from memory.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis::Memory;
use kettle_barrel::steel::Grade;

use crate::steel_check::{Row, What::*, check};

/// Grade, nominal diameter in mm, what, printed value, basis.
#[rustfmt::skip]
const ROWS: &[Row] = &[
    (Grade::A563Dh, 25.4, HrcLeast, 24.0, Memory),
    (Grade::A563Dh, 25.4, HrcGreatest, 38.0, Memory),
    (Grade::A563Dh, 25.4, HbLeast, 248.0, Memory),
    (Grade::A563Dh, 25.4, HbGreatest, 352.0, Memory),
    (Grade::A563Dh, 25.4, TemperFahrenheit, 800.0, Memory),
    (Grade::A563Dh, 25.4, TemperCelsius, 427.0, Memory),
];

#[test]
fn the_properties_are_the_published_ones() {
    check(ROWS);
}
