//! ISO 8752: walls of spring pins. Read up to 10 mm, from memory beyond.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::iso_8752;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_S: &[(f64, f64)] = &[
    (1.0, 0.2),
    (1.5, 0.3),
    (2.0, 0.4),
    (2.5, 0.5),
    (3.0, 0.6),
    (3.5, 0.75),
    (4.0, 0.8),
    (4.5, 1.0),
    (5.0, 1.0),
    (6.0, 1.2),
    (8.0, 1.5),
    (10.0, 2.0),
    (12.0, 2.5),
    (13.0, 2.5),
    (14.0, 3.0),
    (16.0, 3.0),
    (18.0, 3.5),
    (20.0, 4.0),
];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared += columns::compare(&document::ISO_8752, "s", iso_8752::ROWS, |row| row.d, |row| row.s, ROWS_S);
    assert_eq!(compared, 18);
}
