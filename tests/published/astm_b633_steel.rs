//! ASTM B633 (2007): stress relief above 1000 MPa (memory), bake from 1200 MPa (read).

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::rule::Key;
use kettle_barrel::source::Basis::{Memory, Read};
use kettle_barrel::steel::Over::{Above, AtLeast};

use crate::steel_check::{LimitRow, check_limits};

/// Rule, when it is passed, value, scale (none for MPa), basis.
const LIMITS: &[LimitRow] =
    &[(Key::B633Relief, Above, 1000.0, None, Memory), (Key::B633Bake, AtLeast, 1200.0, None, Read)];

#[test]
fn the_limits_are_the_published_ones() {
    check_limits(LIMITS);
}
