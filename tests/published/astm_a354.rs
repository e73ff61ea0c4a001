//! ASTM A354, newer edition; the tempering temperature and the earlier edition are from memory.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis::{Memory, Read};
use kettle_barrel::steel::Grade;
use kettle_barrel::table::astm_a354::GRADE_BD_EARLIER;

use crate::seen::{agree, near};
use crate::steel_check::{Row, What::*, check};

/// Grade, nominal diameter in mm, what, printed value, basis.
#[rustfmt::skip]
const ROWS: &[Row] = &[
    (Grade::A354Bc, 6.35, HrcLeast, 26.0, Read),
    (Grade::A354Bc, 6.35, HrcGreatest, 36.0, Read),
    (Grade::A354Bc, 6.35, Ksi, 125.0, Read),
    (Grade::A354Bc, 6.35, Mpa, 862.0, Read),
    (Grade::A354Bc, 63.5, HrcLeast, 26.0, Read),
    (Grade::A354Bc, 63.5, HrcGreatest, 36.0, Read),
    (Grade::A354Bc, 63.5, Ksi, 125.0, Read),
    (Grade::A354Bc, 63.5, Mpa, 862.0, Read),
    (Grade::A354Bc, 69.85, HrcLeast, 22.0, Read),
    (Grade::A354Bc, 69.85, HrcGreatest, 33.0, Read),
    (Grade::A354Bc, 69.85, Ksi, 115.0, Read),
    (Grade::A354Bc, 69.85, Mpa, 793.0, Read),
    (Grade::A354Bd, 6.35, HrcLeast, 33.0, Read),
    (Grade::A354Bd, 6.35, HrcGreatest, 38.0, Read),
    (Grade::A354Bd, 6.35, Ksi, 150.0, Read),
    (Grade::A354Bd, 6.35, Mpa, 1034.0, Read),
    (Grade::A354Bd, 76.2, HrcLeast, 33.0, Read),
    (Grade::A354Bd, 76.2, HrcGreatest, 38.0, Read),
    (Grade::A354Bd, 76.2, Ksi, 150.0, Read),
    (Grade::A354Bd, 76.2, Mpa, 1034.0, Read),
    (Grade::A354Bd, 25.4, KsiGreatest, 173.0, Read),
    (Grade::A354Bc, 25.4, TemperFahrenheit, 800.0, Memory),
    (Grade::A354Bc, 25.4, TemperCelsius, 427.0, Memory),
    (Grade::A354Bd, 25.4, TemperFahrenheit, 800.0, Memory),
    (Grade::A354Bd, 25.4, TemperCelsius, 427.0, Memory),
];

#[test]
fn the_properties_are_the_published_ones() {
    check(ROWS);
}

#[test]
fn the_earlier_edition_of_grade_bd_is_from_memory() {
    let [small, large] = &GRADE_BD_EARLIER;
    for (row, min, ksi) in [(small, 33.0, 150.0), (large, 31.0, 140.0)] {
        let (hrc, tensile) = (row.hrc.unwrap(), row.tensile_min.unwrap());
        agree!(ASTM_A354, (hrc.min.unwrap().number, hrc.max.unwrap().number), (min, 39.0));
        near!(ASTM_A354, tensile.value.ksi(), ksi, 1e-9);
        assert_eq!((hrc.source.basis, tensile.source.basis), (Memory, Memory));
    }
}
