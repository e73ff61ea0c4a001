//! ASTM F1554: strengths of anchor rods. Read; no hardness and no temper was found.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis::Read;
use kettle_barrel::steel::Grade;

use crate::steel_check::{Row, What::*, check};

/// Grade, nominal diameter in mm, what, printed value, basis.
#[rustfmt::skip]
const ROWS: &[Row] = &[
    (Grade::F1554Grade36, 25.4, Ksi, 58.0, Read),
    (Grade::F1554Grade36, 25.4, Mpa, 400.0, Read),
    (Grade::F1554Grade36, 101.6, KsiGreatest, 80.0, Read),
    (Grade::F1554Grade55, 25.4, Ksi, 75.0, Read),
    (Grade::F1554Grade55, 25.4, Mpa, 517.0, Read),
    (Grade::F1554Grade55, 25.4, KsiGreatest, 95.0, Read),
    (Grade::F1554Grade55, 25.4, NoTemper, 0.0, Read),
    (Grade::F1554Grade105, 25.4, Ksi, 125.0, Read),
    (Grade::F1554Grade105, 76.2, Mpa, 862.0, Read),
    (Grade::F1554Grade105, 76.2, KsiGreatest, 150.0, Read),
    (Grade::F1554Grade105, 25.4, NoTemper, 0.0, Read),
];

#[test]
fn the_properties_are_the_published_ones() {
    check(ROWS);
}
