//! ASTM A193 grades B7 and B7M, Table 2.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis::Read;
use kettle_barrel::steel::Grade;

use crate::steel_check::{Row, What::*, check};

/// Grade, nominal diameter in mm, what, printed value, basis.
#[rustfmt::skip]
const ROWS: &[Row] = &[
    (Grade::A193B7, 12.7, HrcGreatest, 35.0, Read),
    (Grade::A193B7, 12.7, Ksi, 125.0, Read),
    (Grade::A193B7, 12.7, Mpa, 860.0, Read),
    (Grade::A193B7, 12.7, TemperFahrenheit, 1100.0, Read),
    (Grade::A193B7, 12.7, TemperCelsius, 593.0, Read),
    (Grade::A193B7, 64.0, HrcGreatest, 35.0, Read),
    (Grade::A193B7, 64.0, Ksi, 125.0, Read),
    (Grade::A193B7, 64.0, Mpa, 860.0, Read),
    (Grade::A193B7, 64.0, TemperFahrenheit, 1100.0, Read),
    (Grade::A193B7, 64.0, TemperCelsius, 593.0, Read),
    (Grade::A193B7, 72.0, HrcGreatest, 35.0, Read),
    (Grade::A193B7, 72.0, Ksi, 115.0, Read),
    (Grade::A193B7, 72.0, Mpa, 795.0, Read),
    (Grade::A193B7, 72.0, TemperFahrenheit, 1100.0, Read),
    (Grade::A193B7, 72.0, TemperCelsius, 593.0, Read),
    (Grade::A193B7, 100.0, HrcGreatest, 35.0, Read),
    (Grade::A193B7, 100.0, Ksi, 115.0, Read),
    (Grade::A193B7, 100.0, Mpa, 795.0, Read),
    (Grade::A193B7, 100.0, TemperFahrenheit, 1100.0, Read),
    (Grade::A193B7, 100.0, TemperCelsius, 593.0, Read),
    (Grade::A193B7, 101.6, HrcGreatest, 35.0, Read),
    (Grade::A193B7, 101.6, Ksi, 115.0, Read),
    (Grade::A193B7, 101.6, Mpa, 795.0, Read),
    (Grade::A193B7, 101.6, TemperFahrenheit, 1100.0, Read),
    (Grade::A193B7, 101.6, TemperCelsius, 593.0, Read),
    (Grade::A193B7, 114.3, HrcGreatest, 25.0, Read),
    (Grade::A193B7, 114.3, Ksi, 100.0, Read),
    (Grade::A193B7, 114.3, Mpa, 690.0, Read),
    (Grade::A193B7, 114.3, TemperFahrenheit, 1100.0, Read),
    (Grade::A193B7, 114.3, TemperCelsius, 593.0, Read),
    (Grade::A193B7, 177.8, HrcGreatest, 25.0, Read),
    (Grade::A193B7, 177.8, Ksi, 100.0, Read),
    (Grade::A193B7, 177.8, Mpa, 690.0, Read),
    (Grade::A193B7, 177.8, TemperFahrenheit, 1100.0, Read),
    (Grade::A193B7, 177.8, TemperCelsius, 593.0, Read),
    (Grade::A193B7M, 25.4, HbGreatest, 235.0, Read),
    (Grade::A193B7M, 25.4, HrbGreatest, 99.0, Read),
    (Grade::A193B7M, 25.4, Ksi, 100.0, Read),
    (Grade::A193B7M, 25.4, Mpa, 690.0, Read),
    (Grade::A193B7M, 25.4, TemperFahrenheit, 1150.0, Read),
    (Grade::A193B7M, 177.8, TemperCelsius, 621.0, Read),
];

#[test]
fn the_properties_are_the_published_ones() {
    check(ROWS);
}
