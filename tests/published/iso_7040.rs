//! ISO 7040: prevailing torque nuts. Read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::iso_7040;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_S_MAX: &[(f64, f64)] = &[
    (3.0, 5.5),
    (4.0, 7.0),
    (5.0, 8.0),
    (6.0, 10.0),
    (8.0, 13.0),
    (10.0, 16.0),
    (12.0, 18.0),
    (14.0, 21.0),
    (16.0, 24.0),
    (20.0, 30.0),
    (24.0, 36.0),
    (30.0, 46.0),
    (36.0, 55.0),
];
const ROWS_H_MAX: &[(f64, f64)] = &[
    (3.0, 4.5),
    (4.0, 6.0),
    (5.0, 6.8),
    (6.0, 8.0),
    (8.0, 9.5),
    (10.0, 11.9),
    (12.0, 14.9),
    (14.0, 17.0),
    (16.0, 19.1),
    (20.0, 22.8),
    (24.0, 27.1),
    (30.0, 32.6),
    (36.0, 38.9),
];
const ROWS_M_MIN: &[(f64, f64)] = &[
    (3.0, 2.15),
    (4.0, 2.9),
    (5.0, 4.4),
    (6.0, 4.9),
    (8.0, 6.44),
    (10.0, 8.04),
    (12.0, 10.37),
    (14.0, 12.1),
    (16.0, 14.1),
    (20.0, 16.9),
    (24.0, 20.2),
    (30.0, 24.3),
    (36.0, 29.4),
];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared +=
        columns::compare(&document::ISO_7040, "s_max", iso_7040::ROWS, |row| row.d, |row| row.s, ROWS_S_MAX);
    compared +=
        columns::compare(&document::ISO_7040, "h_max", iso_7040::ROWS, |row| row.d, |row| row.h, ROWS_H_MAX);
    compared +=
        columns::compare(&document::ISO_7040, "m_min", iso_7040::ROWS, |row| row.d, |row| row.m, ROWS_M_MIN);
    assert_eq!(compared, 39);
}
