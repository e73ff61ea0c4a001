//! ASTM B695, Table 1, read in two listings. Class 80 is 80 µm in one and 81 µm (0.0032 in) in the
//! other; the project follows the first.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis;
use kettle_barrel::table::astm_b695::CLASSES;

use crate::coat_class::{Compared::*, Row, Unit::*, check};

/// Class, limit, unit, printed value, basis.
const ROWS: &[Row] = &[
    ("class 110", Single, Um, 107.0, Basis::Read),
    ("class 80", Single, Um, 80.0, Basis::Read),
    ("class 80", Single, Inch, 0.0032, Basis::Read),
    ("class 70", Single, Um, 69.0, Basis::Read),
    ("class 70", Single, Inch, 0.0027, Basis::Read),
    ("class 65", Single, Um, 66.0, Basis::Read),
    ("class 65", Single, Inch, 0.0026, Basis::Read),
    ("class 55", Single, Um, 53.0, Basis::Read),
    ("class 55", Single, Inch, 0.0021, Basis::Read),
    ("class 50", Single, Um, 50.0, Basis::Read),
    ("class 50", Single, Inch, 0.002, Basis::Read),
    ("class 40", Single, Um, 40.0, Basis::Read),
    ("class 40", Single, Inch, 0.0015, Basis::Read),
    ("class 25", Single, Um, 25.0, Basis::Read),
    ("class 12", Single, Um, 12.0, Basis::Read),
    ("class 12", Single, Inch, 0.0005, Basis::Read),
    ("class 8", Single, Um, 8.0, Basis::Read),
    ("class 8", Single, Inch, 0.0003, Basis::Read),
    ("class 5", Single, Um, 5.0, Basis::Read),
    ("class 5", Single, Inch, 0.0002, Basis::Read),
    ("class 110", Single, Inch, 0.0042, Basis::Computed),
];

#[test]
fn the_classes_are_the_published_ones() {
    check(CLASSES, ROWS);
}
