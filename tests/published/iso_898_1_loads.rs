//! ISO 898-1: stress areas, least ultimate loads and proof loads of coarse bolts.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis;
use kettle_barrel::table::iso_898_1_loads::PropertyClass::{self, Class8_8, Class10_9};
use kettle_barrel::table::iso_898_1_loads::{ROWS, loads};

use crate::limit::thread;

/// Which load.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Load {
    Ultimate,
    Proof,
}
use Load::*;

#[test]
fn stress_areas_are_the_published_ones() {
    for &(designation, printed, _) in AREAS {
        let ours = thread(designation).stress_area().mm2();
        // Printed with three digits.
        let decimals = if ours < 100.0 { 1 } else { 0 };
        assert_eq!(format!("{ours:.decimals$}"), printed, "{designation}");
    }
}

#[test]
fn loads_are_the_published_ones() {
    for &(diameter, class, load, newton, basis) in LOADS {
        let (ultimate, proof) = loads(diameter, class).unwrap();
        let (ours, source) = if load == Ultimate { ultimate } else { proof };
        assert_eq!((ours.newton(), source.basis), (newton, basis), "M{diameter} {class:?} {load:?}");
    }
}

/// Strength times printed stress area, to three digits, gives every printed load but these.
#[test]
fn printed_loads_that_are_not_strength_times_area_are_marked() {
    let mut differ = Vec::new();
    for &(diameter, class, load, newton, _) in LOADS {
        let area = ROWS.iter().find(|row| row.diameter_mm == diameter).unwrap().stress_area;
        let stress = match (class, load, diameter) {
            (Class8_8, Ultimate, ..=16) => 800.0,
            (Class8_8, Ultimate, _) => 830.0,
            (Class8_8, Proof, ..=16) => 580.0,
            (Class8_8, Proof, _) => 600.0,
            (Class10_9, Ultimate, _) => 1040.0,
            (Class10_9, Proof, _) => 830.0,
        };
        let product: f64 = stress * area;
        let digit = 10f64.powf(product.log10().floor() - 2.0);
        let rounded = (product / digit).round() * digit;
        if rounded != newton {
            differ.push((diameter, class, load, rounded, newton));
        }
    }
    assert_eq!(differ, DIFFERENT);
}

/// Diameter, class, load: the product rounded to three digits, and what is printed instead.
const DIFFERENT: &[(u16, PropertyClass, Load, f64, f64)] = &[
    (6, Class8_8, Proof, 11_700.0, 11_600.0),
    (8, Class8_8, Ultimate, 29_300.0, 29_200.0),
    (16, Class8_8, Ultimate, 126_000.0, 125_000.0),
    (16, Class8_8, Proof, 91_100.0, 91_000.0),
    (22, Class8_8, Ultimate, 251_000.0, 252_000.0),
    (22, Class10_9, Proof, 251_000.0, 252_000.0),
];

/// Thread, stress area in mm², basis.
const AREAS: &[(&str, &str, Basis)] = &[
    ("M6", "20.1", Basis::Read),
    ("M7", "28.9", Basis::Read),
    ("M8", "36.6", Basis::Read),
    ("M12", "84.3", Basis::Read),
    ("M16", "157", Basis::Read),
    ("M18", "192", Basis::Read),
    ("M22", "303", Basis::Read),
    ("M24", "353", Basis::Read),
    ("M30", "561", Basis::Read),
    ("M33", "694", Basis::Read),
];

/// Diameter in mm, class, load, value in N, basis.
const LOADS: &[(u16, PropertyClass, Load, f64, Basis)] = &[
    (6, Class8_8, Ultimate, 16100.0, Basis::Read),
    (6, Class10_9, Ultimate, 20900.0, Basis::Read),
    (6, Class8_8, Proof, 11600.0, Basis::Read),
    (6, Class10_9, Proof, 16700.0, Basis::Read),
    (7, Class8_8, Ultimate, 23100.0, Basis::Read),
    (7, Class10_9, Ultimate, 30100.0, Basis::Read),
    (7, Class8_8, Proof, 16800.0, Basis::Read),
    (7, Class10_9, Proof, 24000.0, Basis::Read),
    (8, Class8_8, Ultimate, 29200.0, Basis::Read),
    (8, Class10_9, Ultimate, 38100.0, Basis::Read),
    (8, Class8_8, Proof, 21200.0, Basis::Read),
    (8, Class10_9, Proof, 30400.0, Basis::Read),
    (12, Class8_8, Ultimate, 67400.0, Basis::Read),
    (12, Class10_9, Ultimate, 87700.0, Basis::Read),
    (12, Class8_8, Proof, 48900.0, Basis::Read),
    (12, Class10_9, Proof, 70000.0, Basis::Read),
    (16, Class8_8, Ultimate, 125000.0, Basis::Read),
    (16, Class10_9, Ultimate, 163000.0, Basis::Read),
    (16, Class8_8, Proof, 91000.0, Basis::Read),
    (16, Class10_9, Proof, 130000.0, Basis::Read),
    (18, Class8_8, Ultimate, 159000.0, Basis::Read),
    (18, Class10_9, Ultimate, 200000.0, Basis::Read),
    (18, Class8_8, Proof, 115000.0, Basis::Read),
    (18, Class10_9, Proof, 159000.0, Basis::Read),
    (22, Class8_8, Ultimate, 252000.0, Basis::Read),
    (22, Class10_9, Ultimate, 315000.0, Basis::Read),
    (22, Class8_8, Proof, 182000.0, Basis::Read),
    (22, Class10_9, Proof, 252000.0, Basis::Read),
    (24, Class8_8, Ultimate, 293000.0, Basis::Read),
    (24, Class10_9, Ultimate, 367000.0, Basis::Read),
    (24, Class8_8, Proof, 212000.0, Basis::Read),
    (24, Class10_9, Proof, 293000.0, Basis::Read),
    (30, Class8_8, Ultimate, 466000.0, Basis::Read),
    (30, Class10_9, Ultimate, 583000.0, Basis::Read),
    (30, Class8_8, Proof, 337000.0, Basis::Memory),
    (30, Class10_9, Proof, 466000.0, Basis::Memory),
    (33, Class8_8, Ultimate, 576000.0, Basis::Read),
    (33, Class10_9, Ultimate, 722000.0, Basis::Read),
    (33, Class8_8, Proof, 416000.0, Basis::Memory),
    (33, Class10_9, Proof, 576000.0, Basis::Memory),
];
