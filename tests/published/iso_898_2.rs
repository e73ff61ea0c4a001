//! ISO 898-2:2012: hardness of nuts, from memory.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis::Memory;
use kettle_barrel::steel::Grade;

use crate::steel_check::{Row, What::*, check};

/// Grade, nominal diameter in mm, what, printed value, basis.
#[rustfmt::skip]
const ROWS: &[Row] = &[
    (Grade::Nut5, 5.0, HvLeast, 130.0, Memory),
    (Grade::Nut5, 5.0, HvGreatest, 302.0, Memory),
    (Grade::Nut5, 16.0, HvLeast, 130.0, Memory),
    (Grade::Nut5, 16.0, HvGreatest, 302.0, Memory),
    (Grade::Nut5, 18.0, HvLeast, 146.0, Memory),
    (Grade::Nut5, 18.0, HvGreatest, 302.0, Memory),
    (Grade::Nut5, 39.0, HvLeast, 146.0, Memory),
    (Grade::Nut5, 39.0, HvGreatest, 302.0, Memory),
    (Grade::Nut6, 5.0, HvLeast, 150.0, Memory),
    (Grade::Nut6, 5.0, HvGreatest, 302.0, Memory),
    (Grade::Nut6, 16.0, HvLeast, 150.0, Memory),
    (Grade::Nut6, 16.0, HvGreatest, 302.0, Memory),
    (Grade::Nut6, 18.0, HvLeast, 170.0, Memory),
    (Grade::Nut6, 18.0, HvGreatest, 302.0, Memory),
    (Grade::Nut6, 39.0, HvLeast, 170.0, Memory),
    (Grade::Nut6, 39.0, HvGreatest, 302.0, Memory),
    (Grade::Nut8, 5.0, HvLeast, 200.0, Memory),
    (Grade::Nut8, 5.0, HvGreatest, 302.0, Memory),
    (Grade::Nut8, 16.0, HvLeast, 200.0, Memory),
    (Grade::Nut8, 16.0, HvGreatest, 302.0, Memory),
    (Grade::Nut8, 18.0, HvLeast, 233.0, Memory),
    (Grade::Nut8, 18.0, HvGreatest, 353.0, Memory),
    (Grade::Nut8, 39.0, HvLeast, 233.0, Memory),
    (Grade::Nut8, 39.0, HvGreatest, 353.0, Memory),
    (Grade::Nut10, 5.0, HvLeast, 272.0, Memory),
    (Grade::Nut10, 5.0, HvGreatest, 353.0, Memory),
    (Grade::Nut10, 39.0, HvLeast, 272.0, Memory),
    (Grade::Nut10, 39.0, HvGreatest, 353.0, Memory),
    (Grade::Nut12, 5.0, HvLeast, 295.0, Memory),
    (Grade::Nut12, 5.0, HvGreatest, 353.0, Memory),
    (Grade::Nut12, 16.0, HvLeast, 295.0, Memory),
    (Grade::Nut12, 16.0, HvGreatest, 353.0, Memory),
    (Grade::Nut12, 18.0, HvLeast, 272.0, Memory),
    (Grade::Nut12, 18.0, HvGreatest, 353.0, Memory),
    (Grade::Nut12, 39.0, HvLeast, 272.0, Memory),
    (Grade::Nut12, 39.0, HvGreatest, 353.0, Memory),
];

#[test]
fn the_properties_are_the_published_ones() {
    check(ROWS);
}
