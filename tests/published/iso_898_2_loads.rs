//! ISO 898-2:1992: proof loads of coarse nuts of style 1; classes 5 and 6 read in EN 20898-2.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis;
use kettle_barrel::table::iso_898_2_loads::{SOURCE, proof_load};

#[test]
fn proof_loads_are_the_published_ones() {
    for &(diameter, class, newton, basis) in LOADS {
        let ours = proof_load(diameter, class).unwrap();
        assert_eq!((ours.newton(), SOURCE.basis), (newton, basis), "M{diameter} class {class}");
    }
}

/// Diameter in mm, class, value in N, basis.
const LOADS: &[(u16, u8, f64, Basis)] = &[
    (6, 8, 17200.0, Basis::Read),
    (6, 10, 20900.0, Basis::Read),
    (6, 12, 23100.0, Basis::Read),
    (6, 5, 11700.0, Basis::Read),
    (6, 6, 13500.0, Basis::Read),
    (8, 8, 31800.0, Basis::Read),
    (8, 10, 38100.0, Basis::Read),
    (8, 12, 42500.0, Basis::Read),
    (8, 5, 21600.0, Basis::Read),
    (8, 6, 24900.0, Basis::Read),
    (12, 8, 74200.0, Basis::Read),
    (12, 10, 88500.0, Basis::Read),
    (12, 12, 100300.0, Basis::Read),
    (12, 5, 51400.0, Basis::Read),
    (12, 6, 59000.0, Basis::Read),
    (16, 8, 138200.0, Basis::Read),
    (16, 10, 164900.0, Basis::Read),
    (16, 12, 186800.0, Basis::Read),
    (16, 5, 95800.0, Basis::Read),
    (16, 6, 109900.0, Basis::Read),
    (18, 8, 176600.0, Basis::Read),
    (18, 10, 203500.0, Basis::Read),
    (18, 12, 230400.0, Basis::Read),
    (18, 5, 121000.0, Basis::Read),
    (18, 6, 138200.0, Basis::Read),
    (22, 8, 278800.0, Basis::Read),
    (22, 10, 321200.0, Basis::Read),
    (22, 12, 363600.0, Basis::Read),
    (22, 5, 190900.0, Basis::Read),
    (22, 6, 218200.0, Basis::Read),
    (24, 8, 324800.0, Basis::Read),
    (24, 10, 374200.0, Basis::Read),
    (24, 12, 423600.0, Basis::Read),
    (24, 5, 222400.0, Basis::Read),
    (24, 6, 254200.0, Basis::Read),
    (30, 8, 516100.0, Basis::Read),
    (30, 10, 594700.0, Basis::Read),
    (30, 12, 673200.0, Basis::Read),
    (30, 5, 353400.0, Basis::Read),
    (30, 6, 403900.0, Basis::Read),
    (33, 8, 638500.0, Basis::Read),
    (33, 10, 735600.0, Basis::Read),
    (33, 12, 832800.0, Basis::Read),
    (33, 5, 437200.0, Basis::Read),
    (33, 6, 499700.0, Basis::Read),
];
