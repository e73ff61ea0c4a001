//! ASTM A563: hardness of nuts by grade; Brinell read, Rockwell and temper from memory.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis::{Memory, Read};
use kettle_barrel::steel::Grade;

use crate::steel_check::{Row, What::*, check};

/// Grade, nominal diameter in mm, what, printed value, basis.
#[rustfmt::skip]
const ROWS: &[Row] = &[
    (Grade::A563Dh, 25.4, HrcLeast, 24.0, Memory),
    (Grade::A563Dh, 25.4, HrcGreatest, 38.0, Memory),
    (Grade::A563Dh, 25.4, HbLeast, 248.0, Read),
    (Grade::A563Dh, 25.4, HbGreatest, 352.0, Read),
    (Grade::A563Dh, 25.4, TemperFahrenheit, 800.0, Memory),
    (Grade::A563Dh, 25.4, TemperCelsius, 427.0, Memory),
    (Grade::A563Dh3, 25.4, HbLeast, 248.0, Read),
    (Grade::A563Dh3, 25.4, HbGreatest, 352.0, Read),
    (Grade::A563Dh3, 25.4, HrcGreatest, 38.0, Memory),
    (Grade::A563Dh3, 25.4, TemperFahrenheit, 800.0, Memory),
    (Grade::A563A, 25.4, HbLeast, 116.0, Read),
    (Grade::A563A, 25.4, HbGreatest, 302.0, Read),
    (Grade::A563A, 25.4, HrcGreatest, 32.0, Memory),
    (Grade::A563A, 25.4, HrbLeast, 68.0, Memory),
    (Grade::A563A, 25.4, NoTemper, 0.0, Read),
    (Grade::A563B, 25.4, HbLeast, 121.0, Read),
    (Grade::A563B, 25.4, HbGreatest, 302.0, Read),
    (Grade::A563B, 25.4, HrcGreatest, 32.0, Memory),
    (Grade::A563B, 25.4, HrbLeast, 69.0, Memory),
    (Grade::A563C, 25.4, HbLeast, 143.0, Read),
    (Grade::A563C, 25.4, HbGreatest, 352.0, Read),
    (Grade::A563C, 25.4, HrcGreatest, 38.0, Memory),
    (Grade::A563C, 25.4, HrbLeast, 78.0, Memory),
    (Grade::A563C, 25.4, NoTemper, 0.0, Read),
    (Grade::A563C3, 25.4, HbLeast, 143.0, Read),
    (Grade::A563C3, 25.4, HbGreatest, 352.0, Read),
    (Grade::A563D, 25.4, HbGreatest, 352.0, Read),
    (Grade::A563D, 25.4, HrcGreatest, 38.0, Memory),
    (Grade::A563D, 25.4, TemperFahrenheit, 800.0, Memory),
];

#[test]
fn the_properties_are_the_published_ones() {
    check(ROWS);
}
