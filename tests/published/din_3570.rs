//! DIN 3570: U-bolts of form A, by their inside width. From memory.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::din_3570;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_THREAD: &[(f64, f64)] = &[
    (30.0, 10.0),
    (38.0, 10.0),
    (46.0, 10.0),
    (52.0, 10.0),
    (64.0, 12.0),
    (82.0, 12.0),
    (94.0, 12.0),
    (120.0, 16.0),
    (148.0, 16.0),
    (176.0, 16.0),
    (228.0, 16.0),
    (282.0, 20.0),
    (332.0, 20.0),
    (378.0, 20.0),
    (428.0, 20.0),
    (530.0, 24.0),
];
const ROWS_LEG_HEIGHT: &[(f64, f64)] = &[
    (30.0, 70.0),
    (38.0, 76.0),
    (46.0, 86.0),
    (52.0, 92.0),
    (64.0, 109.0),
    (82.0, 125.0),
    (94.0, 138.0),
    (120.0, 171.0),
    (148.0, 191.0),
    (176.0, 217.0),
    (228.0, 283.0),
    (282.0, 334.0),
    (332.0, 385.0),
    (378.0, 435.0),
    (428.0, 487.0),
    (530.0, 589.0),
];
const ROWS_THREAD_LENGTH: &[(f64, f64)] = &[
    (30.0, 40.0),
    (38.0, 40.0),
    (46.0, 50.0),
    (52.0, 50.0),
    (64.0, 50.0),
    (82.0, 50.0),
    (94.0, 50.0),
    (120.0, 60.0),
    (148.0, 60.0),
    (176.0, 60.0),
    (228.0, 70.0),
    (282.0, 70.0),
    (332.0, 70.0),
    (378.0, 70.0),
    (428.0, 70.0),
    (530.0, 70.0),
];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared += columns::compare(
        &document::DIN_3570,
        "thread",
        din_3570::ROWS,
        |row| row.width,
        |row| row.d,
        ROWS_THREAD,
    );
    compared += columns::compare(
        &document::DIN_3570,
        "leg_height",
        din_3570::ROWS,
        |row| row.width,
        |row| row.height,
        ROWS_LEG_HEIGHT,
    );
    compared += columns::compare(
        &document::DIN_3570,
        "thread_length",
        din_3570::ROWS,
        |row| row.width,
        |row| row.b,
        ROWS_THREAD_LENGTH,
    );
    assert_eq!(compared, 48);
}
