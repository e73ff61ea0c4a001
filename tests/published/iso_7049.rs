//! ISO 7049: pan heads of tapping screws. Read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::iso_7049;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_DK_MAX: &[(f64, f64)] = &[
    (2.2, 4.0),
    (2.9, 5.6),
    (3.5, 7.0),
    (4.2, 8.0),
    (4.8, 9.5),
    (5.5, 11.0),
    (6.3, 12.0),
    (8.0, 16.0),
    (9.5, 20.0),
];
const ROWS_DK_MIN: &[(f64, f64)] = &[
    (2.2, 3.7),
    (2.9, 5.3),
    (3.5, 6.64),
    (4.2, 7.64),
    (4.8, 9.14),
    (5.5, 10.57),
    (6.3, 11.57),
    (8.0, 15.57),
    (9.5, 19.48),
];
const ROWS_K_MAX: &[(f64, f64)] = &[
    (2.2, 1.6),
    (2.9, 2.4),
    (3.5, 2.6),
    (4.2, 3.1),
    (4.8, 3.7),
    (5.5, 4.0),
    (6.3, 4.6),
    (8.0, 6.0),
    (9.5, 7.5),
];
const ROWS_K_MIN: &[(f64, f64)] = &[
    (2.2, 1.4),
    (2.9, 2.15),
    (3.5, 2.35),
    (4.2, 2.8),
    (4.8, 3.4),
    (5.5, 3.7),
    (6.3, 4.3),
    (8.0, 5.6),
    (9.5, 7.1),
];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared += columns::compare(
        &document::ISO_7049,
        "dk_max",
        iso_7049::ROWS,
        |row| row.st,
        |row| row.dk.0,
        ROWS_DK_MAX,
    );
    compared += columns::compare(
        &document::ISO_7049,
        "dk_min",
        iso_7049::ROWS,
        |row| row.st,
        |row| row.dk.1,
        ROWS_DK_MIN,
    );
    compared += columns::compare(
        &document::ISO_7049,
        "k_max",
        iso_7049::ROWS,
        |row| row.st,
        |row| row.k.0,
        ROWS_K_MAX,
    );
    compared += columns::compare(
        &document::ISO_7049,
        "k_min",
        iso_7049::ROWS,
        |row| row.st,
        |row| row.k.1,
        ROWS_K_MIN,
    );
    assert_eq!(compared, 36);
}
