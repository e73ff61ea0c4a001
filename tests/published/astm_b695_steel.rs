//! ASTM B695: stress relief above 1000 MPa, from memory, and the practice of the barrel.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::quantity::Scale;
use kettle_barrel::rule::Key;
use kettle_barrel::source::Basis::{CommonPractice, Memory, Read};
use kettle_barrel::steel::Over::Above;

use crate::steel_check::{LimitRow, check_limits};

/// Rule, when it is passed, value, scale (none for MPa), basis.
const LIMITS: &[LimitRow] = &[
    (Key::B695Relief, Above, 1000.0, None, Memory),
    (Key::MechanicalHydrogen, Above, 40.0, Some(Scale::Hrc), Read),
    (Key::PracticeMechanical, Above, 45.0, Some(Scale::Hrc), CommonPractice),
    (Key::PracticeHotDip, Above, 39.0, Some(Scale::Hrc), CommonPractice),
];

#[test]
fn the_limits_are_the_published_ones() {
    check_limits(LIMITS);
}
