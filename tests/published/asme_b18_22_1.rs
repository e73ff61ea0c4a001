//! ASME B18.22.1: plain washers of type A, wide. From memory.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::asme_b18_22_1;

use crate::columns;
use kettle_barrel::source::document;

const ROWS_ID_BASIC: &[(f64, f64)] = &[
    (0.25, 0.312),
    (0.3125, 0.375),
    (0.375, 0.438),
    (0.4375, 0.5),
    (0.5, 0.562),
    (0.5625, 0.625),
    (0.625, 0.688),
    (0.75, 0.812),
    (0.875, 0.938),
    (1.0, 1.062),
    (1.125, 1.25),
    (1.25, 1.375),
    (1.375, 1.5),
    (1.5, 1.625),
    (1.625, 1.75),
    (1.75, 1.875),
    (1.875, 2.0),
    (2.0, 2.125),
    (2.25, 2.375),
    (2.5, 2.625),
    (2.75, 2.875),
    (3.0, 3.125),
];
const ROWS_OD_BASIC: &[(f64, f64)] = &[
    (0.25, 0.734),
    (0.3125, 0.875),
    (0.375, 1.0),
    (0.4375, 1.25),
    (0.5, 1.375),
    (0.5625, 1.469),
    (0.625, 1.75),
    (0.75, 2.0),
    (0.875, 2.25),
    (1.0, 2.5),
    (1.125, 2.75),
    (1.25, 3.0),
    (1.375, 3.25),
    (1.5, 3.5),
    (1.625, 3.75),
    (1.75, 4.0),
    (1.875, 4.25),
    (2.0, 4.5),
    (2.25, 4.75),
    (2.5, 5.0),
    (2.75, 5.25),
    (3.0, 5.5),
];
const ROWS_T_BASIC: &[(f64, f64)] = &[
    (0.25, 0.065),
    (0.3125, 0.083),
    (0.375, 0.083),
    (0.4375, 0.083),
    (0.5, 0.109),
    (0.5625, 0.109),
    (0.625, 0.134),
    (0.75, 0.148),
    (0.875, 0.165),
    (1.0, 0.165),
    (1.125, 0.165),
    (1.25, 0.165),
    (1.375, 0.18),
    (1.5, 0.18),
    (1.625, 0.18),
    (1.75, 0.18),
    (1.875, 0.18),
    (2.0, 0.18),
    (2.25, 0.22),
    (2.5, 0.238),
    (2.75, 0.259),
    (3.0, 0.284),
];

#[test]
fn every_size_is_as_it_was_printed() {
    let mut compared = 0;
    compared += columns::compare(
        &document::ASME_B18_22_1,
        "ID_basic",
        asme_b18_22_1::ROWS,
        |row| row.d,
        |row| row.inside,
        ROWS_ID_BASIC,
    );
    compared += columns::compare(
        &document::ASME_B18_22_1,
        "OD_basic",
        asme_b18_22_1::ROWS,
        |row| row.d,
        |row| row.outside,
        ROWS_OD_BASIC,
    );
    compared += columns::compare(
        &document::ASME_B18_22_1,
        "T_basic",
        asme_b18_22_1::ROWS,
        |row| row.d,
        |row| row.thickness,
        ROWS_T_BASIC,
    );
    assert_eq!(compared, 66);
}
