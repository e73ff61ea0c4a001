//! ISO 2702:2011: the core of case-hardened tapping screws. Read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis::Read;
use kettle_barrel::steel::Grade;

use crate::steel_check::{Row, What::*, check};

/// Grade, nominal diameter in mm, what, printed value, basis.
#[rustfmt::skip]
const ROWS: &[Row] = &[
    (Grade::Iso2702, 3.9, HvLeast, 270.0, Read),
    (Grade::Iso2702, 3.9, HvGreatest, 370.0, Read),
    (Grade::Iso2702, 9.5, HvLeast, 270.0, Read),
    (Grade::Iso2702, 9.5, HvGreatest, 370.0, Read),
    (Grade::Iso2702, 4.2, NoTemper, 0.0, Read),
];

#[test]
fn the_properties_are_the_published_ones() {
    check(ROWS);
}
