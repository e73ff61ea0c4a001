//! ISO 4161: flange nuts, and the masses of a list headed DIN 6923. Read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::iso_4161;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_S_MAX: &[(f64, f64)] = &[
    (5.0, 8.0),
    (6.0, 10.0),
    (8.0, 13.0),
    (10.0, 15.0),
    (12.0, 18.0),
    (14.0, 21.0),
    (16.0, 24.0),
    (20.0, 30.0),
];
const ROWS_S_MIN: &[(f64, f64)] = &[
    (5.0, 7.78),
    (6.0, 9.78),
    (8.0, 12.73),
    (10.0, 14.73),
    (12.0, 17.73),
    (14.0, 20.67),
    (16.0, 23.67),
    (20.0, 29.16),
];
const ROWS_M_MAX: &[(f64, f64)] = &[
    (5.0, 5.0),
    (6.0, 6.0),
    (8.0, 8.0),
    (10.0, 10.0),
    (12.0, 12.0),
    (14.0, 14.0),
    (16.0, 16.0),
    (20.0, 20.0),
];
const ROWS_M_MIN: &[(f64, f64)] = &[
    (5.0, 4.7),
    (6.0, 5.7),
    (8.0, 7.64),
    (10.0, 9.64),
    (12.0, 11.57),
    (14.0, 13.3),
    (16.0, 15.3),
    (20.0, 18.7),
];
const ROWS_DC_MAX: &[(f64, f64)] = &[
    (5.0, 11.8),
    (6.0, 14.2),
    (8.0, 17.9),
    (10.0, 21.8),
    (12.0, 26.0),
    (14.0, 29.9),
    (16.0, 34.5),
    (20.0, 42.8),
];
const ROWS_C_MIN: &[(f64, f64)] =
    &[(5.0, 1.0), (6.0, 1.1), (8.0, 1.2), (10.0, 1.5), (12.0, 1.8), (14.0, 2.1), (16.0, 2.4), (20.0, 3.0)];
const ROWS_DA_MAX: &[(f64, f64)] = &[
    (5.0, 5.75),
    (6.0, 6.75),
    (8.0, 8.75),
    (10.0, 10.8),
    (12.0, 13.0),
    (14.0, 15.1),
    (16.0, 17.3),
    (20.0, 21.6),
];
const ROWS_MASS: &[(f64, f64)] =
    &[(6.0, 3.45), (8.0, 7.06), (10.0, 11.08), (12.0, 18.78), (16.0, 43.01), (20.0, 78.4)];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared += columns::compare(
        &document::ISO_4161,
        "s_max",
        iso_4161::ROWS,
        |row| row.d,
        |row| row.s_max,
        ROWS_S_MAX,
    );
    compared += columns::compare(
        &document::ISO_4161,
        "s_min",
        iso_4161::ROWS,
        |row| row.d,
        |row| row.s_min,
        ROWS_S_MIN,
    );
    compared += columns::compare(
        &document::ISO_4161,
        "m_max",
        iso_4161::ROWS,
        |row| row.d,
        |row| row.m_max,
        ROWS_M_MAX,
    );
    compared += columns::compare(
        &document::ISO_4161,
        "m_min",
        iso_4161::ROWS,
        |row| row.d,
        |row| row.m_min,
        ROWS_M_MIN,
    );
    compared += columns::compare(
        &document::ISO_4161,
        "dc_max",
        iso_4161::ROWS,
        |row| row.d,
        |row| row.dc,
        ROWS_DC_MAX,
    );
    compared +=
        columns::compare(&document::ISO_4161, "c_min", iso_4161::ROWS, |row| row.d, |row| row.c, ROWS_C_MIN);
    compared += columns::compare(
        &document::ISO_4161,
        "da_max",
        iso_4161::ROWS,
        |row| row.d,
        |row| row.da,
        ROWS_DA_MAX,
    );
    compared += columns::compare(
        &document::ISO_4161,
        "mass",
        iso_4161::ROWS,
        |row| row.d,
        |row| row.mass.unwrap_or(f64::NAN),
        ROWS_MASS,
    );
    assert_eq!(compared, 62);
}
