//! ASME B18.5: carriage bolts. Read; where copies differ, what most of them print.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::asme_b18_5;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_A_HEAD_DIA_MAX: &[(f64, f64)] = &[
    (0.19, 0.469),
    (0.25, 0.594),
    (0.3125, 0.719),
    (0.375, 0.844),
    (0.4375, 0.969),
    (0.5, 1.094),
    (0.625, 1.344),
    (0.75, 1.594),
    (0.875, 1.844),
    (1.0, 2.094),
];
const ROWS_A_HEAD_DIA_MIN: &[(f64, f64)] = &[
    (0.19, 0.438),
    (0.25, 0.563),
    (0.3125, 0.688),
    (0.375, 0.782),
    (0.4375, 0.907),
    (0.5, 1.032),
    (0.625, 1.219),
    (0.75, 1.469),
    (0.875, 1.719),
    (1.0, 1.969),
];
const ROWS_H_HEAD_HEIGHT_MAX: &[(f64, f64)] = &[
    (0.19, 0.114),
    (0.25, 0.145),
    (0.3125, 0.176),
    (0.375, 0.208),
    (0.4375, 0.239),
    (0.5, 0.27),
    (0.625, 0.344),
    (0.75, 0.406),
    (0.875, 0.469),
    (1.0, 0.531),
];
const ROWS_H_HEAD_HEIGHT_MIN: &[(f64, f64)] = &[
    (0.19, 0.094),
    (0.25, 0.125),
    (0.3125, 0.156),
    (0.375, 0.188),
    (0.4375, 0.219),
    (0.5, 0.25),
    (0.625, 0.313),
    (0.75, 0.375),
    (0.875, 0.438),
    (1.0, 0.5),
];
const ROWS_O_SQUARE_MAX: &[(f64, f64)] = &[
    (0.19, 0.199),
    (0.25, 0.26),
    (0.3125, 0.324),
    (0.375, 0.388),
    (0.4375, 0.452),
    (0.5, 0.515),
    (0.625, 0.642),
    (0.75, 0.768),
    (0.875, 0.895),
    (1.0, 1.022),
];
const ROWS_O_SQUARE_MIN: &[(f64, f64)] = &[
    (0.19, 0.185),
    (0.25, 0.245),
    (0.3125, 0.307),
    (0.375, 0.368),
    (0.4375, 0.431),
    (0.5, 0.492),
    (0.625, 0.616),
    (0.75, 0.741),
    (0.875, 0.865),
    (1.0, 0.99),
];
const ROWS_P_SQUARE_DEPTH_MAX: &[(f64, f64)] = &[
    (0.19, 0.125),
    (0.25, 0.156),
    (0.3125, 0.187),
    (0.375, 0.219),
    (0.4375, 0.25),
    (0.5, 0.281),
    (0.625, 0.344),
    (0.75, 0.406),
    (0.875, 0.469),
    (1.0, 0.531),
];
const ROWS_P_SQUARE_DEPTH_MIN: &[(f64, f64)] = &[
    (0.19, 0.094),
    (0.25, 0.125),
    (0.3125, 0.156),
    (0.375, 0.188),
    (0.4375, 0.219),
    (0.5, 0.25),
    (0.625, 0.313),
    (0.75, 0.375),
    (0.875, 0.438),
    (1.0, 0.5),
];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared += columns::compare(
        &document::ASME_B18_5,
        "A_head_dia_max",
        asme_b18_5::ROWS,
        |row| row.d,
        |row| row.a.0,
        ROWS_A_HEAD_DIA_MAX,
    );
    compared += columns::compare(
        &document::ASME_B18_5,
        "A_head_dia_min",
        asme_b18_5::ROWS,
        |row| row.d,
        |row| row.a.1,
        ROWS_A_HEAD_DIA_MIN,
    );
    compared += columns::compare(
        &document::ASME_B18_5,
        "H_head_height_max",
        asme_b18_5::ROWS,
        |row| row.d,
        |row| row.h.0,
        ROWS_H_HEAD_HEIGHT_MAX,
    );
    compared += columns::compare(
        &document::ASME_B18_5,
        "H_head_height_min",
        asme_b18_5::ROWS,
        |row| row.d,
        |row| row.h.1,
        ROWS_H_HEAD_HEIGHT_MIN,
    );
    compared += columns::compare(
        &document::ASME_B18_5,
        "O_square_max",
        asme_b18_5::ROWS,
        |row| row.d,
        |row| row.o.0,
        ROWS_O_SQUARE_MAX,
    );
    compared += columns::compare(
        &document::ASME_B18_5,
        "O_square_min",
        asme_b18_5::ROWS,
        |row| row.d,
        |row| row.o.1,
        ROWS_O_SQUARE_MIN,
    );
    compared += columns::compare(
        &document::ASME_B18_5,
        "P_square_depth_max",
        asme_b18_5::ROWS,
        |row| row.d,
        |row| row.p.0,
        ROWS_P_SQUARE_DEPTH_MAX,
    );
    compared += columns::compare(
        &document::ASME_B18_5,
        "P_square_depth_min",
        asme_b18_5::ROWS,
        |row| row.d,
        |row| row.p.1,
        ROWS_P_SQUARE_DEPTH_MIN,
    );
    assert_eq!(compared, 80);
}
