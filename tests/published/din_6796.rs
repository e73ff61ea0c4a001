//! DIN 6796: conical spring washers. Read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::din_6796;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_D1_H14: &[(f64, f64)] = &[
    (3.0, 3.2),
    (4.0, 4.3),
    (5.0, 5.3),
    (6.0, 6.4),
    (7.0, 7.4),
    (8.0, 8.4),
    (10.0, 10.5),
    (12.0, 13.0),
    (14.0, 15.0),
    (16.0, 17.0),
    (18.0, 19.0),
    (20.0, 21.0),
    (22.0, 23.0),
    (24.0, 25.0),
    (27.0, 28.0),
    (30.0, 31.0),
];
const ROWS_D2_H14: &[(f64, f64)] = &[
    (3.0, 7.0),
    (4.0, 9.0),
    (5.0, 11.0),
    (6.0, 14.0),
    (7.0, 17.0),
    (8.0, 18.0),
    (10.0, 23.0),
    (12.0, 29.0),
    (14.0, 35.0),
    (16.0, 39.0),
    (18.0, 42.0),
    (20.0, 45.0),
    (22.0, 49.0),
    (24.0, 56.0),
    (27.0, 60.0),
    (30.0, 70.0),
];
const ROWS_S: &[(f64, f64)] = &[
    (3.0, 0.6),
    (4.0, 1.0),
    (5.0, 1.2),
    (6.0, 1.5),
    (7.0, 1.75),
    (8.0, 2.0),
    (10.0, 2.5),
    (12.0, 3.0),
    (14.0, 3.5),
    (16.0, 4.0),
    (18.0, 4.5),
    (20.0, 5.0),
    (22.0, 5.5),
    (24.0, 6.0),
    (27.0, 6.5),
    (30.0, 7.0),
];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared += columns::compare(
        &document::DIN_6796,
        "d1_H14",
        din_6796::ROWS,
        |row| row.d,
        |row| row.d1,
        ROWS_D1_H14,
    );
    compared += columns::compare(
        &document::DIN_6796,
        "d2_h14",
        din_6796::ROWS,
        |row| row.d,
        |row| row.d2,
        ROWS_D2_H14,
    );
    compared += columns::compare(&document::DIN_6796, "s", din_6796::ROWS, |row| row.d, |row| row.s, ROWS_S);
    assert_eq!(compared, 48);
}
