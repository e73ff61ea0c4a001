//! ISO 10684:2004, 8.3, read (AS/NZS 1214:2016, 8.3, gives the same).

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis;
use kettle_barrel::table::iso_10684::CLASSES;

use crate::coat_class::{Compared::*, Row, Unit::*, check};

/// Class, limit, unit, printed value, basis.
const ROWS: &[Row] =
    &[("M8 to M64", Single, Um, 40.0, Basis::Read), ("M8 to M64", Average, Um, 50.0, Basis::Read)];

#[test]
fn the_classes_are_the_published_ones() {
    check(CLASSES, ROWS);
}
