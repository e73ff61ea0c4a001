//! ASTM F1941/F1941M, Table 1, from memory.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis;
use kettle_barrel::table::astm_f1941::CLASSES;

use crate::coat_class::{Compared::*, Row, Unit::*, check};

/// Class, limit, unit, printed value, basis.
const ROWS: &[Row] = &[
    ("Fe/Zn 3", Single, Um, 3.0, Basis::Memory),
    ("Fe/Zn 3", Single, Inch, 0.0001, Basis::Memory),
    ("Fe/Zn 5", Single, Um, 5.0, Basis::Memory),
    ("Fe/Zn 5", Single, Inch, 0.0002, Basis::Memory),
    ("Fe/Zn 8", Single, Um, 8.0, Basis::Memory),
    ("Fe/Zn 8", Single, Inch, 0.0003, Basis::Memory),
    ("Fe/Zn 12", Single, Um, 12.0, Basis::Memory),
    ("Fe/Zn 12", Single, Inch, 0.0005, Basis::Memory),
];

#[test]
fn the_classes_are_the_published_ones() {
    check(CLASSES, ROWS);
}
