//! ISO 4042:1999, Table 1, read in a public copy.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis;
use kettle_barrel::table::iso_4042::CLASSES;

use crate::coat_class::{Compared::*, Row, Unit::*, check};

/// Class, limit, unit, printed value, basis.
const ROWS: &[Row] = &[
    ("nominal 3", Single, Um, 3.0, Basis::Read),
    ("nominal 3", Average, Um, 3.0, Basis::Read),
    ("nominal 3", AverageMax, Um, 5.0, Basis::Read),
    ("nominal 5", Single, Um, 5.0, Basis::Read),
    ("nominal 5", Average, Um, 4.0, Basis::Read),
    ("nominal 5", AverageMax, Um, 6.0, Basis::Read),
    ("nominal 8", Single, Um, 8.0, Basis::Read),
    ("nominal 8", Average, Um, 7.0, Basis::Read),
    ("nominal 8", AverageMax, Um, 10.0, Basis::Read),
    ("nominal 10", Single, Um, 10.0, Basis::Read),
    ("nominal 10", Average, Um, 9.0, Basis::Read),
    ("nominal 10", AverageMax, Um, 12.0, Basis::Read),
    ("nominal 12", Single, Um, 12.0, Basis::Read),
    ("nominal 12", Average, Um, 11.0, Basis::Read),
    ("nominal 12", AverageMax, Um, 15.0, Basis::Read),
    ("nominal 15", Single, Um, 15.0, Basis::Read),
    ("nominal 15", Average, Um, 14.0, Basis::Read),
    ("nominal 15", AverageMax, Um, 18.0, Basis::Read),
    ("nominal 20", Single, Um, 20.0, Basis::Read),
    ("nominal 20", Average, Um, 18.0, Basis::Read),
    ("nominal 20", AverageMax, Um, 23.0, Basis::Read),
    ("nominal 25", Single, Um, 25.0, Basis::Read),
    ("nominal 25", Average, Um, 23.0, Basis::Read),
    ("nominal 25", AverageMax, Um, 28.0, Basis::Read),
    ("nominal 30", Single, Um, 30.0, Basis::Read),
    ("nominal 30", Average, Um, 27.0, Basis::Read),
    ("nominal 30", AverageMax, Um, 35.0, Basis::Read),
];

#[test]
fn the_classes_are_the_published_ones() {
    check(CLASSES, ROWS);
}
