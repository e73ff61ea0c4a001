//! ISO 4026: points, sockets and their depths. Read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::iso_4026;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_DP_MAX: &[(f64, f64)] = &[
    (3.0, 2.0),
    (4.0, 2.5),
    (5.0, 3.5),
    (6.0, 4.0),
    (8.0, 5.5),
    (10.0, 7.0),
    (12.0, 8.5),
    (16.0, 12.0),
    (20.0, 15.0),
    (24.0, 18.0),
];
const ROWS_DP_MIN: &[(f64, f64)] = &[
    (3.0, 1.75),
    (4.0, 2.25),
    (5.0, 3.2),
    (6.0, 3.7),
    (8.0, 5.2),
    (10.0, 6.64),
    (12.0, 8.14),
    (16.0, 11.57),
    (20.0, 14.57),
    (24.0, 17.57),
];
const ROWS_S_NOM: &[(f64, f64)] = &[
    (3.0, 1.5),
    (4.0, 2.0),
    (5.0, 2.5),
    (6.0, 3.0),
    (8.0, 4.0),
    (10.0, 5.0),
    (12.0, 6.0),
    (16.0, 8.0),
    (20.0, 10.0),
    (24.0, 12.0),
];
const ROWS_T_MIN_SHORT: &[(f64, f64)] = &[
    (3.0, 1.2),
    (4.0, 1.5),
    (5.0, 2.0),
    (6.0, 2.0),
    (8.0, 3.0),
    (10.0, 4.0),
    (12.0, 4.8),
    (16.0, 6.4),
    (20.0, 8.0),
    (24.0, 10.0),
];
const ROWS_T_MIN_LONG: &[(f64, f64)] = &[
    (3.0, 2.0),
    (4.0, 2.5),
    (5.0, 3.0),
    (6.0, 3.5),
    (8.0, 5.0),
    (10.0, 6.0),
    (12.0, 8.0),
    (16.0, 10.0),
    (20.0, 12.0),
    (24.0, 15.0),
];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared += columns::compare(
        &document::ISO_4026,
        "dp_max",
        iso_4026::ROWS,
        |row| row.d,
        |row| row.dp_max,
        ROWS_DP_MAX,
    );
    compared += columns::compare(
        &document::ISO_4026,
        "dp_min",
        iso_4026::ROWS,
        |row| row.d,
        |row| row.dp_min,
        ROWS_DP_MIN,
    );
    compared +=
        columns::compare(&document::ISO_4026, "s_nom", iso_4026::ROWS, |row| row.d, |row| row.s, ROWS_S_NOM);
    compared += columns::compare(
        &document::ISO_4026,
        "t_min_short",
        iso_4026::ROWS,
        |row| row.d,
        |row| row.t_short,
        ROWS_T_MIN_SHORT,
    );
    compared += columns::compare(
        &document::ISO_4026,
        "t_min_long",
        iso_4026::ROWS,
        |row| row.d,
        |row| row.t_long,
        ROWS_T_MIN_LONG,
    );
    assert_eq!(compared, 50);
}
