//! The international yard and pound: factors that are exact by definition.

use crate::seen::agree;
use kettle_barrel::quantity::{ArealMass, Density, Length};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

/// Computed from 1 ft = 0.3048 m and 1 lb = 0.45359237 kg (16 oz), both exact by definition.
#[test]
fn an_ounce_on_a_square_foot() {
    let coat = ArealMass::from_oz_ft2(1.25);
    agree!(ARITHMETIC, format!("{:.1}", coat.g_m2()), "381.4");
    agree!(ARITHMETIC, format!("{:.1}", (coat / Density::from_g_m2_um(7.14)).um()), "53.4");
}

/// Computed from 1 in = 25.4 mm, exact by definition.
#[test]
fn a_thousandth_of_an_inch() {
    agree!(ARITHMETIC, format!("{:.3}", Length::from_um(50.0).mil()), "1.969");
}
