//! SAE J995: hardness of nuts read, temper of grade 8 from memory.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis::{Memory, Read};
use kettle_barrel::steel::Grade;

use crate::steel_check::{Row, What::*, check};

/// Grade, nominal diameter in mm, what, printed value, basis.
#[rustfmt::skip]
const ROWS: &[Row] = &[
    (Grade::J995Grade2, 25.4, HrcGreatest, 32.0, Read),
    (Grade::J995Grade5, 25.4, HrcGreatest, 32.0, Read),
    (Grade::J995Grade8, 12.7, HrcLeast, 24.0, Read),
    (Grade::J995Grade8, 12.7, HrcGreatest, 32.0, Read),
    (Grade::J995Grade8, 25.4, HrcLeast, 26.0, Read),
    (Grade::J995Grade8, 25.4, HrcGreatest, 34.0, Read),
    (Grade::J995Grade8, 38.1, HrcLeast, 26.0, Read),
    (Grade::J995Grade8, 38.1, HrcGreatest, 36.0, Read),
    (Grade::J995Grade8, 12.7, TemperFahrenheit, 800.0, Memory),
];

#[test]
fn the_properties_are_the_published_ones() {
    check(ROWS);
}
