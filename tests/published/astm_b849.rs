//! ASTM B849: stress relief from 1000 MPa.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::rule::Key;
use kettle_barrel::source::Basis::Read;
use kettle_barrel::steel::Over::AtLeast;

use crate::steel_check::{LimitRow, check_limits};

/// Rule, when it is passed, value, scale (none for MPa), basis.
const LIMITS: &[LimitRow] = &[(Key::B849Relief, AtLeast, 1000.0, None, Read)];

#[test]
fn the_limits_are_the_published_ones() {
    check_limits(LIMITS);
}
