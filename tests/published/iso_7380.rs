//! ISO 7380-1: button heads. Read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::iso_7380;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_DK_MAX: &[(f64, f64)] =
    &[(3.0, 5.7), (4.0, 7.6), (5.0, 9.5), (6.0, 10.5), (8.0, 14.0), (10.0, 17.5), (12.0, 21.0), (16.0, 28.0)];
const ROWS_K_MAX: &[(f64, f64)] =
    &[(3.0, 1.65), (4.0, 2.2), (5.0, 2.75), (6.0, 3.3), (8.0, 4.4), (10.0, 5.5), (12.0, 6.6), (16.0, 8.8)];
const ROWS_T_MIN: &[(f64, f64)] =
    &[(3.0, 1.04), (4.0, 1.3), (5.0, 1.56), (6.0, 2.08), (8.0, 2.6), (10.0, 3.12), (12.0, 4.16), (16.0, 5.2)];
const ROWS_S_NOM: &[(f64, f64)] =
    &[(3.0, 2.0), (4.0, 2.5), (5.0, 3.0), (6.0, 4.0), (8.0, 5.0), (10.0, 6.0), (12.0, 8.0), (16.0, 10.0)];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared += columns::compare(
        &document::ISO_7380,
        "dk_max",
        iso_7380::ROWS,
        |row| row.d,
        |row| row.dk,
        ROWS_DK_MAX,
    );
    compared +=
        columns::compare(&document::ISO_7380, "k_max", iso_7380::ROWS, |row| row.d, |row| row.k, ROWS_K_MAX);
    compared +=
        columns::compare(&document::ISO_7380, "t_min", iso_7380::ROWS, |row| row.d, |row| row.t, ROWS_T_MIN);
    compared +=
        columns::compare(&document::ISO_7380, "s_nom", iso_7380::ROWS, |row| row.d, |row| row.s, ROWS_S_NOM);
    assert_eq!(compared, 32);
}
