//! ASTM F1941: bake and cleaning; the newer edition from memory, the earlier ones read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::quantity::{Scale, Temperature};
use kettle_barrel::rule::Key;
use kettle_barrel::source::Basis::{Memory, Read};
use kettle_barrel::steel::Over::{Above, AtLeast};

use crate::steel_check::{LimitRow, check_limits};

/// Rule, when it is passed, value, scale (none for MPa), basis.
const LIMITS: &[LimitRow] = &[
    (Key::F1941Bake, Above, 39.0, Some(Scale::Hrc), Memory),
    (Key::F1941BakeEarlier, AtLeast, 40.0, Some(Scale::Hrc), Read),
    (Key::F1941Cleaning, AtLeast, 40.0, Some(Scale::Hrc), Read),
];

#[test]
fn the_limits_are_the_published_ones() {
    check_limits(LIMITS);
}

/// 350 to 450 °F is printed; the text shows 177 to 232 °C beside it.
#[test]
fn the_bake_temperature() {
    assert_eq!(Temperature::from_fahrenheit(350.0).celsius().round(), 177.0);
    assert_eq!(Temperature::from_fahrenheit(450.0).celsius().round(), 232.0);
}
