//! ASME B18.2.4.6M: heavy hex nuts, metric, from memory; from M16 on, but for M20, they are as wide as the
//! nuts of EN 14399-4, which were read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use crate::seen::agree;
use kettle_barrel::table::{asme_b18_2_4_6m, en_14399_4};

#[test]
fn widths_are_those_of_the_european_nuts() {
    let mut compared = 0;
    for row in asme_b18_2_4_6m::ROWS {
        let Some(other) = en_14399_4::ROWS.iter().find(|other| other.d == row.d) else { continue };
        match row.d {
            12.0 | 20.0 => assert!((row.s - other.s).abs() > 0.5),
            _ => agree!(ASME_B18_2_4_6M, row.s, other.s, "M{}", row.d),
        }
        compared += 1;
    }
    assert_eq!(compared, 8);
}
