//! Hardness of spring washers, rings and pins by their own standards.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis::{Memory, Read};
use kettle_barrel::steel::Grade;

use crate::steel_check::{Row, What::*, check};

/// Grade, nominal diameter in mm, what, printed value, basis.
#[rustfmt::skip]
const ROWS: &[Row] = &[
    (Grade::Din471, 48.0, HrcLeast, 47.0, Read),
    (Grade::Din471, 48.0, HrcGreatest, 54.0, Read),
    (Grade::Din471, 50.0, HrcLeast, 44.0, Read),
    (Grade::Din471, 50.0, HrcGreatest, 51.0, Read),
    (Grade::Din6796, 12.0, HrcLeast, 43.0, Read),
    (Grade::Din6796, 12.0, HrcGreatest, 48.0, Read),
    (Grade::Din127, 12.0, HvLeast, 430.0, Memory),
    (Grade::Din127, 12.0, HvGreatest, 530.0, Memory),
    (Grade::B18_21_1, 12.7, HrcLeast, 38.0, Read),
    (Grade::B18_21_1, 12.7, HrcGreatest, 46.0, Read),
    (Grade::Iso8752, 6.0, HvLeast, 420.0, Memory),
    (Grade::Iso8752, 6.0, HvGreatest, 520.0, Memory),
];

#[test]
fn the_properties_are_the_published_ones() {
    check(ROWS);
}
