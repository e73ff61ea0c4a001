//! ISO 4042: the limits of both editions, which differ.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::quantity::Scale;
use kettle_barrel::rule::Key;
use kettle_barrel::source::Basis::{Memory, Read};
use kettle_barrel::steel::Over::{Above, AtLeast};

use crate::steel_check::{LimitRow, check_limits};

/// Rule, when it is passed, value, scale (none for MPa), basis.
const LIMITS: &[LimitRow] = &[
    (Key::Iso4042Investigate, Above, 320.0, Some(Scale::Hv), Read),
    (Key::Iso4042Agree, Above, 365.0, Some(Scale::Hv), Read),
    (Key::Iso4042Bake, AtLeast, 390.0, Some(Scale::Hv), Memory),
];

#[test]
fn the_limits_are_the_published_ones() {
    check_limits(LIMITS);
}
