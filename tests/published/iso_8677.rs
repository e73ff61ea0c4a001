//! ISO 8677: carriage bolts. Read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::iso_8677;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_DK_MAX: &[(f64, f64)] =
    &[(5.0, 13.55), (6.0, 16.55), (8.0, 20.65), (10.0, 24.65), (12.0, 30.65), (16.0, 38.8), (20.0, 46.8)];
const ROWS_DK_MIN: &[(f64, f64)] =
    &[(5.0, 12.45), (6.0, 15.45), (8.0, 19.35), (10.0, 23.35), (12.0, 29.35), (16.0, 37.2), (20.0, 45.2)];
const ROWS_K_MAX: &[(f64, f64)] =
    &[(5.0, 3.3), (6.0, 3.88), (8.0, 4.88), (10.0, 5.38), (12.0, 6.95), (16.0, 8.95), (20.0, 11.05)];
const ROWS_K_MIN: &[(f64, f64)] =
    &[(5.0, 2.7), (6.0, 3.12), (8.0, 4.12), (10.0, 4.62), (12.0, 6.05), (16.0, 8.05), (20.0, 9.95)];
const ROWS_V_MAX: &[(f64, f64)] =
    &[(5.0, 5.48), (6.0, 6.48), (8.0, 8.58), (10.0, 10.58), (12.0, 12.7), (16.0, 16.7), (20.0, 20.84)];
const ROWS_V_MIN: &[(f64, f64)] =
    &[(5.0, 4.52), (6.0, 5.52), (8.0, 7.42), (10.0, 9.42), (12.0, 11.3), (16.0, 15.3), (20.0, 19.16)];
const ROWS_F_MAX: &[(f64, f64)] =
    &[(5.0, 4.1), (6.0, 4.6), (8.0, 5.6), (10.0, 6.6), (12.0, 8.75), (16.0, 12.9), (20.0, 15.9)];
const ROWS_F_MIN: &[(f64, f64)] =
    &[(5.0, 2.9), (6.0, 3.4), (8.0, 4.4), (10.0, 5.4), (12.0, 7.25), (16.0, 11.1), (20.0, 14.1)];
const ROWS_B_UPTO_125: &[(f64, f64)] =
    &[(5.0, 16.0), (6.0, 18.0), (8.0, 22.0), (10.0, 26.0), (12.0, 30.0), (16.0, 38.0), (20.0, 46.0)];
const ROWS_B_125_TO_200: &[(f64, f64)] =
    &[(5.0, 22.0), (6.0, 24.0), (8.0, 28.0), (10.0, 32.0), (12.0, 36.0), (16.0, 44.0), (20.0, 52.0)];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared += columns::compare(
        &document::ISO_8677,
        "dk_max",
        iso_8677::ROWS,
        |row| row.d,
        |row| row.dk.0,
        ROWS_DK_MAX,
    );
    compared += columns::compare(
        &document::ISO_8677,
        "dk_min",
        iso_8677::ROWS,
        |row| row.d,
        |row| row.dk.1,
        ROWS_DK_MIN,
    );
    compared += columns::compare(
        &document::ISO_8677,
        "k_max",
        iso_8677::ROWS,
        |row| row.d,
        |row| row.k.0,
        ROWS_K_MAX,
    );
    compared += columns::compare(
        &document::ISO_8677,
        "k_min",
        iso_8677::ROWS,
        |row| row.d,
        |row| row.k.1,
        ROWS_K_MIN,
    );
    compared += columns::compare(
        &document::ISO_8677,
        "v_max",
        iso_8677::ROWS,
        |row| row.d,
        |row| row.v.0,
        ROWS_V_MAX,
    );
    compared += columns::compare(
        &document::ISO_8677,
        "v_min",
        iso_8677::ROWS,
        |row| row.d,
        |row| row.v.1,
        ROWS_V_MIN,
    );
    compared += columns::compare(
        &document::ISO_8677,
        "f_max",
        iso_8677::ROWS,
        |row| row.d,
        |row| row.f.0,
        ROWS_F_MAX,
    );
    compared += columns::compare(
        &document::ISO_8677,
        "f_min",
        iso_8677::ROWS,
        |row| row.d,
        |row| row.f.1,
        ROWS_F_MIN,
    );
    compared += columns::compare(
        &document::ISO_8677,
        "b_upto_125",
        iso_8677::ROWS,
        |row| row.d,
        |row| row.b.0,
        ROWS_B_UPTO_125,
    );
    compared += columns::compare(
        &document::ISO_8677,
        "b_125_to_200",
        iso_8677::ROWS,
        |row| row.d,
        |row| row.b.1,
        ROWS_B_125_TO_200,
    );
    assert_eq!(compared, 70);
}
