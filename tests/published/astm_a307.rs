//! ASTM A307 grades A and B, Table 2 and the note under Table 3, read in public listings of the standard.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis::Read;
use kettle_barrel::steel::Grade;

use crate::steel_check::{Row, What::*, check};

/// Grade, nominal diameter in mm, what, printed value, basis.
#[rustfmt::skip]
const ROWS: &[Row] = &[
    (Grade::A307, 6.35, HrbLeast, 69.0, Read),
    (Grade::A307, 6.35, HrbGreatest, 100.0, Read),
    (Grade::A307, 6.35, HbLeast, 121.0, Read),
    (Grade::A307, 6.35, HbGreatest, 241.0, Read),
    (Grade::A307, 6.35, Ksi, 60.0, Read),
    (Grade::A307, 6.35, Mpa, 414.0, Read),
    (Grade::A307, 101.6, HrbLeast, 69.0, Read),
    (Grade::A307, 101.6, HrbGreatest, 100.0, Read),
    (Grade::A307, 101.6, HbLeast, 121.0, Read),
    (Grade::A307, 101.6, HbGreatest, 241.0, Read),
    (Grade::A307, 101.6, Ksi, 60.0, Read),
    (Grade::A307, 101.6, Mpa, 414.0, Read),
    (Grade::A307B, 6.35, HrbLeast, 69.0, Read),
    (Grade::A307B, 6.35, HrbGreatest, 95.0, Read),
    (Grade::A307B, 6.35, Ksi, 60.0, Read),
    (Grade::A307B, 101.6, HrbGreatest, 95.0, Read),
    (Grade::A307B, 101.6, Mpa, 414.0, Read),
];

#[test]
fn the_properties_are_the_published_ones() {
    check(ROWS);
}
