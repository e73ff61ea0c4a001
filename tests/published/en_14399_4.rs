//! EN 14399-4: bolts and nuts of system HV. Widths across flats read; heights of nuts from memory.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::table::en_14399_4;

use crate::columns;
use kettle_barrel::source::document;

const S_MAX: &[(f64, f64)] = &[
    (12.0, 22.0),
    (16.0, 27.0),
    (20.0, 32.0),
    (22.0, 36.0),
    (24.0, 41.0),
    (27.0, 46.0),
    (30.0, 50.0),
    (36.0, 60.0),
];

const M_NOMINAL: &[(f64, f64)] = &[
    (12.0, 10.0),
    (16.0, 13.0),
    (20.0, 16.0),
    (22.0, 18.0),
    (24.0, 20.0),
    (27.0, 22.0),
    (30.0, 24.0),
    (36.0, 29.0),
];

#[test]
fn every_size_is_as_it_was_printed() {
    let compared =
        columns::compare(&document::EN_14399_4, "s", en_14399_4::ROWS, |row| row.d, |row| row.s, S_MAX)
            + columns::compare(
                &document::EN_14399_4,
                "m",
                en_14399_4::ROWS,
                |row| row.d,
                |row| row.m,
                M_NOMINAL,
            );
    assert_eq!(compared, 16);
}
