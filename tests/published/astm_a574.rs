//! ASTM A574: hardness and strength read in a public listing, the temper in 5.4 of the 2017 edition.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis::Read;
use kettle_barrel::source::{Basis, Sourced};
use kettle_barrel::steel::Grade;
use kettle_barrel::table::astm_a574;

use crate::seen::near;
use crate::steel_check::{Row, What::*, check};

/// Grade, nominal diameter in mm, what, printed value, basis.
#[rustfmt::skip]
const ROWS: &[Row] = &[
    (Grade::A574, 10.0, TemperFahrenheit, 700.0, Read),
    (Grade::A574, 10.0, TemperCelsius, 371.0, Read),
    (Grade::A574, 20.0, TemperFahrenheit, 700.0, Read),
    (Grade::A574, 20.0, TemperCelsius, 371.0, Read),
    (Grade::A574, 6.35, HrcLeast, 39.0, Read),
    (Grade::A574, 6.35, HrcGreatest, 45.0, Read),
    (Grade::A574, 6.35, Ksi, 180.0, Read),
    (Grade::A574, 6.35, Mpa, 1241.0, Read),
    (Grade::A574, 12.7, HrcLeast, 39.0, Read),
    (Grade::A574, 12.7, HrcGreatest, 45.0, Read),
    (Grade::A574, 12.7, Ksi, 180.0, Read),
    (Grade::A574, 12.7, Mpa, 1241.0, Read),
    (Grade::A574, 15.875, HrcLeast, 37.0, Read),
    (Grade::A574, 15.875, HrcGreatest, 45.0, Read),
    (Grade::A574, 15.875, Ksi, 170.0, Read),
    (Grade::A574, 15.875, Mpa, 1172.0, Read),
];

#[test]
fn the_properties_are_the_published_ones() {
    check(ROWS);
}

#[test]
fn the_temper_of_earlier_editions_and_its_check() {
    let Sourced { value: earlier, source } = astm_a574::TEMPER_EARLIER;
    near!(ASTM_A574_OLD, earlier.fahrenheit(), 650.0, 1e-9);
    assert_eq!(source.basis, Basis::Memory);
    let Sourced { value: (heat, time), source } = astm_a574::VERIFICATION;
    near!(ASTM_A574, heat.fahrenheit(), 680.0, 1e-9);
    assert!(time.minute() == 30.0 && source.basis == Read);
}
