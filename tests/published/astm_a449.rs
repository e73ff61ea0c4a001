//! ASTM A449 type 1; the tempering temperature is from memory.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis::{Memory, Read};
use kettle_barrel::steel::Grade;

use crate::steel_check::{Row, What::*, check};

/// Grade, nominal diameter in mm, what, printed value, basis.
#[rustfmt::skip]
const ROWS: &[Row] = &[
    (Grade::A449, 6.35, HrcLeast, 25.0, Read),
    (Grade::A449, 6.35, HrcGreatest, 34.0, Read),
    (Grade::A449, 6.35, Ksi, 120.0, Read),
    (Grade::A449, 6.35, Mpa, 827.0, Read),
    (Grade::A449, 25.4, HrcLeast, 25.0, Read),
    (Grade::A449, 25.4, HrcGreatest, 34.0, Read),
    (Grade::A449, 25.4, Ksi, 120.0, Read),
    (Grade::A449, 25.4, Mpa, 827.0, Read),
    (Grade::A449, 28.575, HrcLeast, 19.0, Read),
    (Grade::A449, 28.575, HrcGreatest, 30.0, Read),
    (Grade::A449, 28.575, Ksi, 105.0, Read),
    (Grade::A449, 28.575, Mpa, 724.0, Read),
    (Grade::A449, 38.1, HrcLeast, 19.0, Read),
    (Grade::A449, 38.1, HrcGreatest, 30.0, Read),
    (Grade::A449, 38.1, Ksi, 105.0, Read),
    (Grade::A449, 38.1, Mpa, 724.0, Read),
    (Grade::A449, 44.45, HbLeast, 183.0, Read),
    (Grade::A449, 44.45, HbGreatest, 235.0, Read),
    (Grade::A449, 44.45, Ksi, 90.0, Read),
    (Grade::A449, 44.45, Mpa, 621.0, Read),
    (Grade::A449, 76.2, HbLeast, 183.0, Read),
    (Grade::A449, 76.2, HbGreatest, 235.0, Read),
    (Grade::A449, 76.2, Ksi, 90.0, Read),
    (Grade::A449, 76.2, Mpa, 621.0, Read),
    (Grade::A449, 25.4, TemperFahrenheit, 800.0, Memory),
    (Grade::A449, 25.4, TemperCelsius, 427.0, Memory),
    (Grade::A449, 76.2, TemperFahrenheit, 800.0, Memory),
    (Grade::A449, 76.2, TemperCelsius, 427.0, Memory),
];

#[test]
fn the_properties_are_the_published_ones() {
    check(ROWS);
}
