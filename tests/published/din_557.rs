//! DIN 557: square nuts from M5. Read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::din_557;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_S_MAX: &[(f64, f64)] =
    &[(5.0, 8.0), (6.0, 10.0), (8.0, 13.0), (10.0, 17.0), (12.0, 19.0), (16.0, 24.0)];
const ROWS_M_MAX: &[(f64, f64)] =
    &[(5.0, 4.0), (6.0, 5.0), (8.0, 6.5), (10.0, 8.0), (12.0, 10.0), (16.0, 13.0)];
const ROWS_DW_MIN: &[(f64, f64)] =
    &[(5.0, 6.7), (6.0, 8.7), (8.0, 11.5), (10.0, 15.5), (12.0, 17.2), (16.0, 22.0)];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared +=
        columns::compare(&document::DIN_557, "s_max", din_557::ROWS, |row| row.d, |row| row.s, ROWS_S_MAX);
    compared +=
        columns::compare(&document::DIN_557, "m_max", din_557::ROWS, |row| row.d, |row| row.m, ROWS_M_MAX);
    compared +=
        columns::compare(&document::DIN_557, "dw_min", din_557::ROWS, |row| row.d, |row| row.dw, ROWS_DW_MIN);
    assert_eq!(compared, 18);
}
