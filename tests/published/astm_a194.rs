//! ASTM A194 grade 2H. Read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis::Read;
use kettle_barrel::steel::Grade;

use crate::steel_check::{Row, What::*, check};

/// Grade, nominal diameter in mm, what, printed value, basis.
#[rustfmt::skip]
const ROWS: &[Row] = &[
    (Grade::A194Grade2H, 25.4, HrcLeast, 24.0, Read),
    (Grade::A194Grade2H, 25.4, HrcGreatest, 35.0, Read),
    (Grade::A194Grade2H, 25.4, HbLeast, 248.0, Read),
    (Grade::A194Grade2H, 25.4, HbGreatest, 327.0, Read),
    (Grade::A194Grade2H, 25.4, TemperFahrenheit, 850.0, Read),
    (Grade::A194Grade2H, 25.4, TemperCelsius, 455.0, Read),
    (Grade::A194Grade2H, 50.8, HrcGreatest, 35.0, Read),
    (Grade::A194Grade2H, 50.8, HrbLeast, 95.0, Read),
    (Grade::A194Grade2H, 50.8, HbLeast, 212.0, Read),
    (Grade::A194Grade2H, 50.8, HbGreatest, 327.0, Read),
];

#[test]
fn the_properties_are_the_published_ones() {
    check(ROWS);
}
