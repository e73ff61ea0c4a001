//! ISO 1478: threads of tapping screws. Read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::iso_1478;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_P: &[(f64, f64)] = &[
    (1.5, 0.5),
    (1.9, 0.6),
    (2.2, 0.8),
    (2.6, 0.9),
    (2.9, 1.1),
    (3.3, 1.3),
    (3.5, 1.3),
    (3.9, 1.3),
    (4.2, 1.4),
    (4.8, 1.6),
    (5.5, 1.8),
    (6.3, 1.8),
    (8.0, 2.1),
    (9.5, 2.1),
];
const ROWS_D1_MAX: &[(f64, f64)] = &[
    (1.5, 1.52),
    (1.9, 1.9),
    (2.2, 2.24),
    (2.6, 2.57),
    (2.9, 2.9),
    (3.3, 3.3),
    (3.5, 3.53),
    (3.9, 3.91),
    (4.2, 4.22),
    (4.8, 4.8),
    (5.5, 5.46),
    (6.3, 6.25),
    (8.0, 8.0),
    (9.5, 9.65),
];
const ROWS_D1_MIN: &[(f64, f64)] = &[
    (1.5, 1.38),
    (1.9, 1.76),
    (2.2, 2.1),
    (2.6, 2.43),
    (2.9, 2.76),
    (3.3, 3.12),
    (3.5, 3.35),
    (3.9, 3.73),
    (4.2, 4.04),
    (4.8, 4.62),
    (5.5, 5.28),
    (6.3, 6.03),
    (8.0, 7.78),
    (9.5, 9.43),
];
const ROWS_D2_MAX: &[(f64, f64)] = &[
    (1.5, 0.91),
    (1.9, 1.24),
    (2.2, 1.63),
    (2.6, 1.9),
    (2.9, 2.18),
    (3.3, 2.39),
    (3.5, 2.64),
    (3.9, 2.92),
    (4.2, 3.1),
    (4.8, 3.58),
    (5.5, 4.17),
    (6.3, 4.88),
    (8.0, 6.2),
    (9.5, 7.85),
];
const ROWS_D2_MIN: &[(f64, f64)] = &[
    (1.5, 0.84),
    (1.9, 1.17),
    (2.2, 1.52),
    (2.6, 1.8),
    (2.9, 2.08),
    (3.3, 2.29),
    (3.5, 2.51),
    (3.9, 2.77),
    (4.2, 2.95),
    (4.8, 3.43),
    (5.5, 3.99),
    (6.3, 4.7),
    (8.0, 5.99),
    (9.5, 7.59),
];
const ROWS_Y_TYPE_C: &[(f64, f64)] = &[
    (1.5, 1.4),
    (1.9, 1.6),
    (2.2, 2.0),
    (2.6, 2.3),
    (2.9, 2.6),
    (3.3, 3.0),
    (3.5, 3.2),
    (3.9, 3.5),
    (4.2, 3.7),
    (4.8, 4.3),
    (5.5, 5.0),
    (6.3, 6.0),
    (8.0, 7.5),
    (9.5, 8.0),
];
const ROWS_NUMBER_SIZE: &[(f64, f64)] = &[
    (1.5, 0.0),
    (1.9, 1.0),
    (2.2, 2.0),
    (2.6, 3.0),
    (2.9, 4.0),
    (3.3, 5.0),
    (3.5, 6.0),
    (3.9, 7.0),
    (4.2, 8.0),
    (4.8, 10.0),
    (5.5, 12.0),
    (6.3, 14.0),
    (8.0, 16.0),
    (9.5, 20.0),
];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared += columns::compare(&document::ISO_1478, "P", iso_1478::ROWS, |row| row.st, |row| row.p, ROWS_P);
    compared += columns::compare(
        &document::ISO_1478,
        "d1_max",
        iso_1478::ROWS,
        |row| row.st,
        |row| row.d1.0,
        ROWS_D1_MAX,
    );
    compared += columns::compare(
        &document::ISO_1478,
        "d1_min",
        iso_1478::ROWS,
        |row| row.st,
        |row| row.d1.1,
        ROWS_D1_MIN,
    );
    compared += columns::compare(
        &document::ISO_1478,
        "d2_max",
        iso_1478::ROWS,
        |row| row.st,
        |row| row.d2.0,
        ROWS_D2_MAX,
    );
    compared += columns::compare(
        &document::ISO_1478,
        "d2_min",
        iso_1478::ROWS,
        |row| row.st,
        |row| row.d2.1,
        ROWS_D2_MIN,
    );
    compared += columns::compare(
        &document::ISO_1478,
        "y_type_C",
        iso_1478::ROWS,
        |row| row.st,
        |row| row.y,
        ROWS_Y_TYPE_C,
    );
    compared += columns::compare(
        &document::ISO_1478,
        "number_size",
        iso_1478::ROWS,
        |row| row.st,
        |row| f64::from(row.number),
        ROWS_NUMBER_SIZE,
    );
    assert_eq!(compared, 98);
}
