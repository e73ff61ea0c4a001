//! EN 1665: flange bolts, heavy series. Read; the least width across flats of M10 computed from its corners.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::en_1665;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_S_MAX: &[(f64, f64)] = &[
    (5.0, 8.0),
    (6.0, 10.0),
    (8.0, 13.0),
    (10.0, 16.0),
    (12.0, 18.0),
    (14.0, 21.0),
    (16.0, 24.0),
    (20.0, 30.0),
];
const ROWS_S_MIN: &[(f64, f64)] = &[
    (5.0, 7.78),
    (6.0, 9.78),
    (8.0, 12.73),
    (10.0, 15.73),
    (12.0, 17.73),
    (14.0, 20.67),
    (16.0, 23.67),
    (20.0, 29.67),
];
const ROWS_K_MAX: &[(f64, f64)] = &[
    (5.0, 5.8),
    (6.0, 6.6),
    (8.0, 8.1),
    (10.0, 10.4),
    (12.0, 11.8),
    (14.0, 13.7),
    (16.0, 15.4),
    (20.0, 18.9),
];
const ROWS_DC_MAX: &[(f64, f64)] = &[
    (5.0, 11.8),
    (6.0, 14.2),
    (8.0, 18.0),
    (10.0, 22.3),
    (12.0, 26.6),
    (14.0, 30.5),
    (16.0, 35.0),
    (20.0, 43.0),
];
const ROWS_C_MIN: &[(f64, f64)] =
    &[(5.0, 1.0), (6.0, 1.1), (8.0, 1.2), (10.0, 1.5), (12.0, 1.8), (14.0, 2.1), (16.0, 2.4), (20.0, 3.0)];
const ROWS_DS_MIN: &[(f64, f64)] = &[
    (5.0, 4.82),
    (6.0, 5.82),
    (8.0, 7.78),
    (10.0, 9.78),
    (12.0, 11.73),
    (14.0, 13.73),
    (16.0, 15.73),
    (20.0, 19.67),
];
const ROWS_B_UPTO_125: &[(f64, f64)] = &[
    (5.0, 16.0),
    (6.0, 18.0),
    (8.0, 22.0),
    (10.0, 26.0),
    (12.0, 30.0),
    (14.0, 34.0),
    (16.0, 38.0),
    (20.0, 46.0),
];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared += columns::compare(
        &document::EN_1665,
        "s_max",
        en_1665::ROWS,
        |row| row.d,
        |row| row.s_max,
        ROWS_S_MAX,
    );
    compared += columns::compare(
        &document::EN_1665,
        "s_min",
        en_1665::ROWS,
        |row| row.d,
        |row| row.s_min,
        ROWS_S_MIN,
    );
    compared +=
        columns::compare(&document::EN_1665, "k_max", en_1665::ROWS, |row| row.d, |row| row.k, ROWS_K_MAX);
    compared +=
        columns::compare(&document::EN_1665, "dc_max", en_1665::ROWS, |row| row.d, |row| row.dc, ROWS_DC_MAX);
    compared +=
        columns::compare(&document::EN_1665, "c_min", en_1665::ROWS, |row| row.d, |row| row.c, ROWS_C_MIN);
    compared += columns::compare(
        &document::EN_1665,
        "ds_min",
        en_1665::ROWS,
        |row| row.d,
        |row| row.ds_min,
        ROWS_DS_MIN,
    );
    compared += columns::compare(
        &document::EN_1665,
        "b_upto_125",
        en_1665::ROWS,
        |row| row.d,
        |row| row.b,
        ROWS_B_UPTO_125,
    );
    assert_eq!(compared, 56);
}
