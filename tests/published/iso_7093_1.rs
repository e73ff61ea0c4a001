//! ISO 7093-1: large plain washers. Read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::iso_7093_1;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_D1_MIN: &[(f64, f64)] = &[
    (3.0, 3.2),
    (4.0, 4.3),
    (5.0, 5.3),
    (6.0, 6.4),
    (8.0, 8.4),
    (10.0, 10.5),
    (12.0, 13.0),
    (14.0, 15.0),
    (16.0, 17.0),
    (18.0, 19.0),
    (20.0, 21.0),
    (22.0, 23.0),
    (24.0, 25.0),
    (27.0, 30.0),
    (30.0, 33.0),
    (33.0, 36.0),
    (36.0, 39.0),
];
const ROWS_D2_MAX: &[(f64, f64)] = &[
    (3.0, 9.0),
    (4.0, 12.0),
    (5.0, 15.0),
    (6.0, 18.0),
    (8.0, 24.0),
    (10.0, 30.0),
    (12.0, 37.0),
    (14.0, 44.0),
    (16.0, 50.0),
    (18.0, 56.0),
    (20.0, 60.0),
    (22.0, 66.0),
    (24.0, 72.0),
    (27.0, 85.0),
    (30.0, 92.0),
    (33.0, 105.0),
    (36.0, 110.0),
];
const ROWS_H_NOM: &[(f64, f64)] = &[
    (3.0, 0.8),
    (4.0, 1.0),
    (5.0, 1.0),
    (6.0, 1.6),
    (8.0, 2.0),
    (10.0, 2.5),
    (12.0, 3.0),
    (14.0, 3.0),
    (16.0, 3.0),
    (18.0, 4.0),
    (20.0, 4.0),
    (22.0, 5.0),
    (24.0, 5.0),
    (27.0, 6.0),
    (30.0, 6.0),
    (33.0, 6.0),
    (36.0, 8.0),
];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared += columns::compare(
        &document::ISO_7093_1,
        "d1_min",
        iso_7093_1::ROWS,
        |row| row.d,
        |row| row.d1,
        ROWS_D1_MIN,
    );
    compared += columns::compare(
        &document::ISO_7093_1,
        "d2_max",
        iso_7093_1::ROWS,
        |row| row.d,
        |row| row.d2,
        ROWS_D2_MAX,
    );
    compared += columns::compare(
        &document::ISO_7093_1,
        "h_nom",
        iso_7093_1::ROWS,
        |row| row.d,
        |row| row.h,
        ROWS_H_NOM,
    );
    assert_eq!(compared, 51);
}
