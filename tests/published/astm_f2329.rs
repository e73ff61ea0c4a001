//! ASTM F2329-05, thickness table, read in a public copy; micrometres are the inch value times 25,400.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis;
use kettle_barrel::table::astm_f2329::CLASSES;

use crate::coat_class::{Compared::*, Row, Unit::*, check};

/// Class, limit, unit, printed value, basis.
const ROWS: &[Row] = &[
    ("over 3/8 in", LotAverage, Inch, 0.002, Basis::Read),
    ("over 3/8 in", LotAverage, Um, 50.8, Basis::Computed),
    ("over 3/8 in", Average, Inch, 0.0017, Basis::Read),
    ("over 3/8 in", Average, Um, 43.2, Basis::Computed),
    ("over 3/8 in", Single, Inch, 0.0017, Basis::Read),
    ("over 3/8 in", Single, Um, 43.2, Basis::Computed),
    ("3/8 in and under", LotAverage, Inch, 0.0017, Basis::Read),
    ("3/8 in and under", LotAverage, Um, 43.2, Basis::Computed),
    ("3/8 in and under", Average, Inch, 0.0015, Basis::Read),
    ("3/8 in and under", Average, Um, 38.1, Basis::Computed),
    ("3/8 in and under", Single, Inch, 0.0015, Basis::Read),
    ("3/8 in and under", Single, Um, 38.1, Basis::Computed),
];

#[test]
fn the_classes_are_the_published_ones() {
    check(CLASSES, ROWS);
}
