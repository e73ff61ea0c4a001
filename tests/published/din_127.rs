//! DIN 127: spring lock washers. Read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::din_127;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_D1_MIN: &[(f64, f64)] = &[
    (3.0, 3.1),
    (4.0, 4.1),
    (5.0, 5.1),
    (6.0, 6.1),
    (7.0, 7.1),
    (8.0, 8.1),
    (10.0, 10.2),
    (12.0, 12.2),
    (14.0, 14.2),
    (16.0, 16.2),
    (18.0, 18.2),
    (20.0, 20.2),
    (22.0, 22.5),
    (24.0, 24.5),
    (27.0, 27.5),
    (30.0, 30.5),
    (36.0, 36.5),
    (39.0, 39.5),
    (42.0, 42.5),
    (45.0, 45.5),
    (48.0, 49.0),
    (52.0, 53.0),
    (56.0, 57.0),
];
const ROWS_B_NOM: &[(f64, f64)] = &[
    (3.0, 1.3),
    (4.0, 1.5),
    (5.0, 1.8),
    (6.0, 2.5),
    (7.0, 2.5),
    (8.0, 3.0),
    (10.0, 3.5),
    (12.0, 4.0),
    (14.0, 4.5),
    (16.0, 5.0),
    (18.0, 5.0),
    (20.0, 6.0),
    (22.0, 6.0),
    (24.0, 7.0),
    (27.0, 7.0),
    (30.0, 8.0),
    (36.0, 10.0),
    (39.0, 10.0),
    (42.0, 12.0),
    (45.0, 12.0),
    (48.0, 12.0),
    (52.0, 14.0),
    (56.0, 14.0),
];
const ROWS_S_NOM: &[(f64, f64)] = &[
    (3.0, 0.8),
    (4.0, 0.9),
    (5.0, 1.2),
    (6.0, 1.6),
    (7.0, 1.6),
    (8.0, 2.0),
    (10.0, 2.2),
    (12.0, 2.5),
    (14.0, 3.0),
    (16.0, 3.5),
    (18.0, 3.5),
    (20.0, 4.0),
    (22.0, 4.0),
    (24.0, 5.0),
    (27.0, 5.0),
    (30.0, 6.0),
    (36.0, 6.0),
    (39.0, 6.0),
    (42.0, 7.0),
    (45.0, 7.0),
    (48.0, 7.0),
    (52.0, 8.0),
    (56.0, 8.0),
];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared +=
        columns::compare(&document::DIN_127, "d1_min", din_127::ROWS, |row| row.d, |row| row.d1, ROWS_D1_MIN);
    compared +=
        columns::compare(&document::DIN_127, "b_nom", din_127::ROWS, |row| row.d, |row| row.b, ROWS_B_NOM);
    compared +=
        columns::compare(&document::DIN_127, "s_nom", din_127::ROWS, |row| row.d, |row| row.s, ROWS_S_NOM);
    assert_eq!(compared, 69);
}
