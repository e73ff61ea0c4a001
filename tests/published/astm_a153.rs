//! ASTM A153/A153M-16, Table 1, read in a public copy.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis;
use kettle_barrel::table::astm_a153::CLASSES;

use crate::coat_class::{Compared::*, Row, Unit::*, check};

/// Class, limit, unit, printed value, basis.
const ROWS: &[Row] = &[
    ("class A", Average, OuncesFt2, 2.0, Basis::Read),
    ("class A", Average, GramsM2, 610.0, Basis::Read),
    ("class A", Average, Mil, 3.4, Basis::Read),
    ("class A", Average, Um, 86.0, Basis::Read),
    ("class A", Single, OuncesFt2, 1.8, Basis::Read),
    ("class A", Single, GramsM2, 550.0, Basis::Read),
    ("class A", Single, Mil, 3.1, Basis::Read),
    ("class A", Single, Um, 79.0, Basis::Read),
    ("class B-1", Average, OuncesFt2, 2.0, Basis::Read),
    ("class B-1", Average, GramsM2, 610.0, Basis::Read),
    ("class B-1", Average, Mil, 3.4, Basis::Read),
    ("class B-1", Average, Um, 86.0, Basis::Read),
    ("class B-1", Single, OuncesFt2, 1.8, Basis::Read),
    ("class B-1", Single, GramsM2, 550.0, Basis::Read),
    ("class B-1", Single, Mil, 3.1, Basis::Read),
    ("class B-1", Single, Um, 79.0, Basis::Read),
    ("class B-2", Average, OuncesFt2, 1.5, Basis::Read),
    ("class B-2", Average, GramsM2, 458.0, Basis::Read),
    ("class B-2", Average, Mil, 2.6, Basis::Read),
    ("class B-2", Average, Um, 66.0, Basis::Read),
    ("class B-2", Single, OuncesFt2, 1.25, Basis::Read),
    ("class B-2", Single, GramsM2, 381.0, Basis::Read),
    ("class B-2", Single, Mil, 2.1, Basis::Read),
    ("class B-2", Single, Um, 53.0, Basis::Read),
    ("class B-3", Average, OuncesFt2, 1.3, Basis::Read),
    ("class B-3", Average, GramsM2, 397.0, Basis::Read),
    ("class B-3", Average, Mil, 2.2, Basis::Read),
    ("class B-3", Average, Um, 56.0, Basis::Read),
    ("class B-3", Single, OuncesFt2, 1.1, Basis::Read),
    ("class B-3", Single, GramsM2, 336.0, Basis::Read),
    ("class B-3", Single, Mil, 1.9, Basis::Read),
    ("class B-3", Single, Um, 48.0, Basis::Read),
    ("class C", Average, OuncesFt2, 1.25, Basis::Read),
    ("class C", Average, GramsM2, 381.0, Basis::Read),
    ("class C", Average, Mil, 2.1, Basis::Read),
    ("class C", Average, Um, 53.0, Basis::Read),
    ("class C", Single, OuncesFt2, 1.0, Basis::Read),
    ("class C", Single, GramsM2, 305.0, Basis::Read),
    ("class C", Single, Mil, 1.7, Basis::Read),
    ("class C", Single, Um, 43.0, Basis::Read),
    ("class D", Average, OuncesFt2, 1.0, Basis::Read),
    ("class D", Average, GramsM2, 305.0, Basis::Read),
    ("class D", Average, Mil, 1.7, Basis::Read),
    ("class D", Average, Um, 43.0, Basis::Read),
    ("class D", Single, OuncesFt2, 0.85, Basis::Read),
    ("class D", Single, GramsM2, 259.0, Basis::Read),
    ("class D", Single, Mil, 1.4, Basis::Read),
    ("class D", Single, Um, 36.0, Basis::Read),
];

#[test]
fn the_classes_are_the_published_ones() {
    check(CLASSES, ROWS);
}
