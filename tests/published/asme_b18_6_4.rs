//! ASME B18.6.4: pan heads of tapping screws, by number. Read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::asme_b18_6_4;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_A_HEAD_DIA_MAX: &[(f64, f64)] = &[
    (2.0, 0.167),
    (3.0, 0.193),
    (4.0, 0.219),
    (5.0, 0.245),
    (6.0, 0.27),
    (7.0, 0.296),
    (8.0, 0.322),
    (10.0, 0.373),
    (12.0, 0.425),
    (14.0, 0.476),
];
const ROWS_A_HEAD_DIA_MIN: &[(f64, f64)] = &[
    (2.0, 0.155),
    (3.0, 0.18),
    (4.0, 0.205),
    (5.0, 0.231),
    (6.0, 0.256),
    (7.0, 0.281),
    (8.0, 0.306),
    (10.0, 0.357),
    (12.0, 0.407),
    (14.0, 0.457),
];
const ROWS_H_HEAD_HEIGHT_RECESSED_MAX: &[(f64, f64)] = &[
    (2.0, 0.062),
    (3.0, 0.071),
    (4.0, 0.08),
    (5.0, 0.089),
    (6.0, 0.097),
    (7.0, 0.106),
    (8.0, 0.115),
    (10.0, 0.133),
    (12.0, 0.151),
    (14.0, 0.169),
];
const ROWS_H_HEAD_HEIGHT_RECESSED_MIN: &[(f64, f64)] = &[
    (2.0, 0.053),
    (3.0, 0.062),
    (4.0, 0.07),
    (5.0, 0.079),
    (6.0, 0.087),
    (7.0, 0.096),
    (8.0, 0.105),
    (10.0, 0.122),
    (12.0, 0.139),
    (14.0, 0.156),
];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared += columns::compare(
        &document::ASME_B18_6_4,
        "A_head_dia_max",
        asme_b18_6_4::ROWS,
        |row| f64::from(row.number),
        |row| row.a.0,
        ROWS_A_HEAD_DIA_MAX,
    );
    compared += columns::compare(
        &document::ASME_B18_6_4,
        "A_head_dia_min",
        asme_b18_6_4::ROWS,
        |row| f64::from(row.number),
        |row| row.a.1,
        ROWS_A_HEAD_DIA_MIN,
    );
    compared += columns::compare(
        &document::ASME_B18_6_4,
        "H_head_height_recessed_max",
        asme_b18_6_4::ROWS,
        |row| f64::from(row.number),
        |row| row.h.0,
        ROWS_H_HEAD_HEIGHT_RECESSED_MAX,
    );
    compared += columns::compare(
        &document::ASME_B18_6_4,
        "H_head_height_recessed_min",
        asme_b18_6_4::ROWS,
        |row| f64::from(row.number),
        |row| row.h.1,
        ROWS_H_HEAD_HEIGHT_RECESSED_MIN,
    );
    assert_eq!(compared, 40);
}
