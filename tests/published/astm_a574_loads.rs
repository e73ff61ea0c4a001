//! ASTM A574: tensile and proof loads of coarse socket head cap screws, read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::steel::{self, Grade};
use kettle_barrel::table::astm_a574_loads::loads;
use kettle_barrel::thread::load::{self, Way};

use crate::limit::thread;
use crate::seen::agree;

#[test]
fn loads_are_the_published_ones() {
    for &(diameter, threads, ultimate, proof) in ROWS {
        let found = loads(diameter, threads).unwrap();
        let ours = (found.ultimate.value.lbf().round(), found.proof.value.lbf().round());
        agree!(ASTM_A574, ours, (ultimate, proof), "{diameter}-{threads}");
    }
}

#[test]
fn the_printed_load_comes_before_the_product() {
    let thread = thread("5/8-11 UNC");
    let strength = steel::load::bolt(Grade::A574, thread.diameter()).unwrap();
    let loads = load::bolt(thread, &strength, false);
    assert_eq!(loads.ultimate.unwrap().way, Way::Printed);
    agree!(ASTM_A574, loads.proof.unwrap().force.lbf().round(), 30_500.0);
}

/// Nominal diameter in inches, threads per inch; tensile load and proof load in lbf.
#[rustfmt::skip]
const ROWS: &[(f64, f64, f64, f64)] = &[
    (0.073, 64.0, 473.0, 368.0),
    (0.086, 56.0, 666.0, 518.0),
    (0.099, 48.0, 877.0, 682.0),
    (0.112, 40.0, 1090.0, 846.0),
    (0.125, 40.0, 1430.0, 1110.0),
    (0.138, 32.0, 1640.0, 1270.0),
    (0.164, 32.0, 2520.0, 1960.0),
    (0.19, 24.0, 3150.0, 2450.0),
    (0.25, 20.0, 5730.0, 4450.0),
    (0.3125, 18.0, 9440.0, 7340.0),
    (0.375, 16.0, 13900.0, 10800.0),
    (0.4375, 14.0, 19100.0, 14900.0),
    (0.5, 13.0, 25500.0, 19900.0),
    (0.625, 11.0, 38400.0, 30500.0),
    (0.75, 10.0, 56800.0, 45100.0),
    (0.875, 9.0, 78500.0, 62400.0),
    (1.0, 8.0, 103000.0, 81800.0),
    (1.125, 7.0, 129000.0, 103000.0),
    (1.25, 7.0, 165000.0, 131000.0),
    (1.375, 6.0, 196000.0, 156000.0),
    (1.5, 6.0, 239000.0, 190000.0),
    (1.75, 5.0, 323000.0, 256000.0),
    (2.0, 4.5, 425000.0, 338000.0),
    (2.25, 4.5, 552000.0, 439000.0),
    (2.5, 4.0, 680000.0, 540000.0),
    (2.75, 4.0, 838000.0, 666000.0),
    (3.0, 4.0, 1010000.0, 806000.0),
    (3.25, 4.0, 1210000.0, 958000.0),
    (3.5, 4.0, 1420000.0, 1120000.0),
    (3.75, 4.0, 1640000.0, 1300000.0),
    (4.0, 4.0, 1880000.0, 1500000.0),
];
