//! DIN 444: eye bolts of form B. Read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::din_444;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_D3_EYE_DIA_NOM: &[(f64, f64)] = &[
    (5.0, 12.0),
    (6.0, 14.0),
    (8.0, 18.0),
    (10.0, 20.0),
    (12.0, 25.0),
    (16.0, 32.0),
    (20.0, 40.0),
    (24.0, 45.0),
    (27.0, 50.0),
    (30.0, 55.0),
    (33.0, 60.0),
    (36.0, 65.0),
    (39.0, 70.0),
];
const ROWS_D2_EYE_HOLE_MIN: &[(f64, f64)] = &[
    (5.0, 5.0),
    (6.0, 6.0),
    (8.0, 8.0),
    (10.0, 10.0),
    (12.0, 12.0),
    (16.0, 16.0),
    (20.0, 18.0),
    (24.0, 22.0),
    (27.0, 24.0),
    (30.0, 27.0),
    (33.0, 30.0),
    (36.0, 32.0),
    (39.0, 35.0),
];
const ROWS_S_EYE_THICKNESS_FORM_B_C_MAX: &[(f64, f64)] = &[
    (5.0, 6.0),
    (6.0, 7.0),
    (8.0, 9.0),
    (10.0, 12.0),
    (12.0, 14.0),
    (16.0, 17.0),
    (20.0, 22.0),
    (24.0, 25.0),
    (27.0, 27.0),
    (30.0, 30.0),
    (33.0, 34.0),
    (36.0, 38.0),
    (39.0, 41.0),
];
const ROWS_B_UPTO_125: &[(f64, f64)] = &[
    (5.0, 16.0),
    (6.0, 18.0),
    (8.0, 22.0),
    (10.0, 26.0),
    (12.0, 30.0),
    (16.0, 38.0),
    (20.0, 46.0),
    (24.0, 54.0),
    (27.0, 60.0),
    (30.0, 66.0),
];
const ROWS_B_125_TO_200: &[(f64, f64)] = &[
    (8.0, 28.0),
    (10.0, 32.0),
    (12.0, 36.0),
    (16.0, 44.0),
    (20.0, 52.0),
    (24.0, 60.0),
    (27.0, 66.0),
    (30.0, 72.0),
    (33.0, 78.0),
    (36.0, 84.0),
    (39.0, 90.0),
];
const ROWS_B_OVER_200: &[(f64, f64)] = &[
    (12.0, 49.0),
    (16.0, 57.0),
    (20.0, 65.0),
    (24.0, 73.0),
    (27.0, 79.0),
    (30.0, 85.0),
    (33.0, 91.0),
    (36.0, 97.0),
    (39.0, 103.0),
];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared += columns::compare(
        &document::DIN_444,
        "d3_eye_dia_nom",
        din_444::ROWS,
        |row| row.d,
        |row| row.eye,
        ROWS_D3_EYE_DIA_NOM,
    );
    compared += columns::compare(
        &document::DIN_444,
        "d2_eye_hole_min",
        din_444::ROWS,
        |row| row.d,
        |row| row.hole,
        ROWS_D2_EYE_HOLE_MIN,
    );
    compared += columns::compare(
        &document::DIN_444,
        "s_eye_thickness_form_B_C_max",
        din_444::ROWS,
        |row| row.d,
        |row| row.thickness,
        ROWS_S_EYE_THICKNESS_FORM_B_C_MAX,
    );
    compared += columns::compare(
        &document::DIN_444,
        "b_upto_125",
        din_444::ROWS,
        |row| row.d,
        |row| row.b[0].unwrap_or(f64::NAN),
        ROWS_B_UPTO_125,
    );
    compared += columns::compare(
        &document::DIN_444,
        "b_125_to_200",
        din_444::ROWS,
        |row| row.d,
        |row| row.b[1].unwrap_or(f64::NAN),
        ROWS_B_125_TO_200,
    );
    compared += columns::compare(
        &document::DIN_444,
        "b_over_200",
        din_444::ROWS,
        |row| row.d,
        |row| row.b[2].unwrap_or(f64::NAN),
        ROWS_B_OVER_200,
    );
    assert_eq!(compared, 69);
}
