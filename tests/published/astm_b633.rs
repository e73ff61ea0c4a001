//! ASTM B633, Table 2, read in a public listing.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis;
use kettle_barrel::table::astm_b633::CLASSES;

use crate::coat_class::{Compared::*, Row, Unit::*, check};

/// Class, limit, unit, printed value, basis.
const ROWS: &[Row] = &[
    ("Fe/Zn 5 (SC 1, mild)", Single, Um, 5.0, Basis::Read),
    ("Fe/Zn 5 (SC 1, mild)", Single, Inch, 0.0002, Basis::Read),
    ("Fe/Zn 8 (SC 2, moderate)", Single, Um, 8.0, Basis::Read),
    ("Fe/Zn 8 (SC 2, moderate)", Single, Inch, 0.0003, Basis::Read),
    ("Fe/Zn 12 (SC 3, severe)", Single, Um, 12.0, Basis::Read),
    ("Fe/Zn 12 (SC 3, severe)", Single, Inch, 0.0005, Basis::Read),
    ("Fe/Zn 25 (SC 4, very severe)", Single, Um, 25.0, Basis::Read),
    ("Fe/Zn 25 (SC 4, very severe)", Single, Inch, 0.001, Basis::Read),
];

#[test]
fn the_classes_are_the_published_ones() {
    check(CLASSES, ROWS);
}
