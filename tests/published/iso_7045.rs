//! ISO 7045: pan heads of machine screws, from memory; they are those that ISO 7049, read, gives the
//! tapping screws of the size next to them.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use crate::seen::agree;
use kettle_barrel::table::{iso_7045, iso_7049};

/// Machine screw, tapping screw with the same head.
const PAIRS: [(f64, f64); 6] = [(3.0, 2.9), (4.0, 4.2), (5.0, 4.8), (6.0, 6.3), (8.0, 8.0), (10.0, 9.5)];

#[test]
fn heads_are_those_of_tapping_screws() {
    for (machine, tapping) in PAIRS {
        let machine = iso_7045::ROWS.iter().find(|row| row.d == machine).unwrap();
        let tapping = iso_7049::ROWS.iter().find(|row| row.st == tapping).unwrap();
        agree!(ISO_7045, (machine.dk, machine.k), (tapping.dk.0, tapping.k.0));
    }
}
