//! ISO 10642: countersunk heads and thread lengths. Read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::iso_10642;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_DK_ACTUAL_MIN: &[(f64, f64)] = &[
    (3.0, 5.54),
    (4.0, 7.53),
    (5.0, 9.43),
    (6.0, 11.34),
    (8.0, 15.24),
    (10.0, 19.22),
    (12.0, 23.12),
    (14.0, 26.52),
    (16.0, 29.01),
    (20.0, 36.05),
];
const ROWS_K_MAX: &[(f64, f64)] = &[
    (3.0, 1.86),
    (4.0, 2.48),
    (5.0, 3.1),
    (6.0, 3.72),
    (8.0, 4.96),
    (10.0, 6.2),
    (12.0, 7.44),
    (14.0, 8.4),
    (16.0, 8.8),
    (20.0, 10.16),
];
const ROWS_S_NOM: &[(f64, f64)] = &[
    (3.0, 2.0),
    (4.0, 2.5),
    (5.0, 3.0),
    (6.0, 4.0),
    (8.0, 5.0),
    (10.0, 6.0),
    (12.0, 8.0),
    (14.0, 10.0),
    (16.0, 10.0),
    (20.0, 12.0),
];
const ROWS_T_MIN: &[(f64, f64)] = &[
    (3.0, 1.1),
    (4.0, 1.5),
    (5.0, 1.9),
    (6.0, 2.2),
    (8.0, 3.0),
    (10.0, 3.5),
    (12.0, 4.3),
    (14.0, 4.5),
    (16.0, 4.8),
    (20.0, 5.6),
];
const ROWS_B_REF: &[(f64, f64)] = &[
    (3.0, 18.0),
    (4.0, 20.0),
    (5.0, 22.0),
    (6.0, 24.0),
    (8.0, 28.0),
    (10.0, 32.0),
    (12.0, 36.0),
    (14.0, 40.0),
    (16.0, 44.0),
    (20.0, 52.0),
];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared += columns::compare(
        &document::ISO_10642,
        "dk_actual_min",
        iso_10642::ROWS,
        |row| row.d,
        |row| row.dk,
        ROWS_DK_ACTUAL_MIN,
    );
    compared += columns::compare(
        &document::ISO_10642,
        "k_max",
        iso_10642::ROWS,
        |row| row.d,
        |row| row.k,
        ROWS_K_MAX,
    );
    compared += columns::compare(
        &document::ISO_10642,
        "s_nom",
        iso_10642::ROWS,
        |row| row.d,
        |row| row.s,
        ROWS_S_NOM,
    );
    compared += columns::compare(
        &document::ISO_10642,
        "t_min",
        iso_10642::ROWS,
        |row| row.d,
        |row| row.t,
        ROWS_T_MIN,
    );
    compared += columns::compare(
        &document::ISO_10642,
        "b_ref",
        iso_10642::ROWS,
        |row| row.d,
        |row| row.b,
        ROWS_B_REF,
    );
    assert_eq!(compared, 50);
}
