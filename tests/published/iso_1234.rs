//! ISO 1234: cotter pins. From memory.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::iso_1234;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_D_MAX: &[(f64, f64)] = &[
    (0.6, 0.5),
    (0.8, 0.7),
    (1.0, 0.9),
    (1.2, 1.0),
    (1.6, 1.4),
    (2.0, 1.8),
    (2.5, 2.3),
    (3.2, 2.9),
    (4.0, 3.7),
    (5.0, 4.6),
    (6.3, 5.9),
    (8.0, 7.5),
    (10.0, 9.5),
    (13.0, 12.4),
    (16.0, 15.4),
    (20.0, 19.3),
];
const ROWS_D_MIN: &[(f64, f64)] = &[
    (0.6, 0.4),
    (0.8, 0.6),
    (1.0, 0.8),
    (1.2, 0.9),
    (1.6, 1.3),
    (2.0, 1.7),
    (2.5, 2.1),
    (3.2, 2.7),
    (4.0, 3.5),
    (5.0, 4.4),
    (6.3, 5.7),
    (8.0, 7.3),
    (10.0, 9.3),
    (13.0, 12.1),
    (16.0, 15.1),
    (20.0, 19.0),
];
const ROWS_A_MAX: &[(f64, f64)] = &[
    (0.6, 1.6),
    (0.8, 1.6),
    (1.0, 1.6),
    (1.2, 2.5),
    (1.6, 2.5),
    (2.0, 2.5),
    (2.5, 2.5),
    (3.2, 3.2),
    (4.0, 4.0),
    (5.0, 4.0),
    (6.3, 4.0),
    (8.0, 4.0),
    (10.0, 6.3),
    (13.0, 6.3),
    (16.0, 6.3),
    (20.0, 6.3),
];
const ROWS_A_MIN: &[(f64, f64)] = &[
    (0.6, 0.8),
    (0.8, 0.8),
    (1.0, 0.8),
    (1.2, 1.25),
    (1.6, 1.25),
    (2.0, 1.25),
    (2.5, 1.25),
    (3.2, 1.6),
    (4.0, 2.0),
    (5.0, 2.0),
    (6.3, 2.0),
    (8.0, 2.0),
    (10.0, 3.15),
    (13.0, 3.15),
    (16.0, 3.15),
    (20.0, 3.15),
];
const ROWS_B: &[(f64, f64)] = &[
    (0.6, 2.0),
    (0.8, 2.4),
    (1.0, 3.0),
    (1.2, 3.0),
    (1.6, 3.2),
    (2.0, 4.0),
    (2.5, 5.0),
    (3.2, 6.4),
    (4.0, 8.0),
    (5.0, 10.0),
    (6.3, 12.6),
    (8.0, 16.0),
    (10.0, 20.0),
    (13.0, 26.0),
    (16.0, 32.0),
    (20.0, 40.0),
];
const ROWS_C_MAX: &[(f64, f64)] = &[
    (0.6, 1.0),
    (0.8, 1.4),
    (1.0, 1.8),
    (1.2, 2.0),
    (1.6, 2.8),
    (2.0, 3.6),
    (2.5, 4.6),
    (3.2, 5.8),
    (4.0, 7.4),
    (5.0, 9.2),
    (6.3, 11.8),
    (8.0, 15.0),
    (10.0, 19.0),
    (13.0, 24.8),
    (16.0, 30.8),
    (20.0, 38.5),
];
const ROWS_C_MIN: &[(f64, f64)] = &[
    (0.6, 0.9),
    (0.8, 1.2),
    (1.0, 1.6),
    (1.2, 1.7),
    (1.6, 2.4),
    (2.0, 3.2),
    (2.5, 4.0),
    (3.2, 5.1),
    (4.0, 6.5),
    (5.0, 8.0),
    (6.3, 10.3),
    (8.0, 13.1),
    (10.0, 16.6),
    (13.0, 21.7),
    (16.0, 27.0),
    (20.0, 33.8),
];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared += columns::compare(
        &document::ISO_1234,
        "d_max",
        iso_1234::ROWS,
        |row| row.n,
        |row| row.d.0,
        ROWS_D_MAX,
    );
    compared += columns::compare(
        &document::ISO_1234,
        "d_min",
        iso_1234::ROWS,
        |row| row.n,
        |row| row.d.1,
        ROWS_D_MIN,
    );
    compared += columns::compare(
        &document::ISO_1234,
        "a_max",
        iso_1234::ROWS,
        |row| row.n,
        |row| row.a.0,
        ROWS_A_MAX,
    );
    compared += columns::compare(
        &document::ISO_1234,
        "a_min",
        iso_1234::ROWS,
        |row| row.n,
        |row| row.a.1,
        ROWS_A_MIN,
    );
    compared += columns::compare(&document::ISO_1234, "b", iso_1234::ROWS, |row| row.n, |row| row.b, ROWS_B);
    compared += columns::compare(
        &document::ISO_1234,
        "c_max",
        iso_1234::ROWS,
        |row| row.n,
        |row| row.c.0,
        ROWS_C_MAX,
    );
    compared += columns::compare(
        &document::ISO_1234,
        "c_min",
        iso_1234::ROWS,
        |row| row.n,
        |row| row.c.1,
        ROWS_C_MIN,
    );
    assert_eq!(compared, 112);
}
