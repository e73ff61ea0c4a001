//! ISO 1461:2009: Table 3 (not centrifuged) read, Table 4 (centrifuged) from memory.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis;
use kettle_barrel::table::iso_1461::CLASSES;

use crate::coat_class::{Compared::*, Row, Unit::*, check};

/// Class, limit, unit, printed value, basis.
const ROWS: &[Row] = &[
    ("threads over 6 mm", Single, Um, 40.0, Basis::Memory),
    ("threads over 6 mm", Single, GramsM2, 285.0, Basis::Memory),
    ("threads over 6 mm", Average, Um, 50.0, Basis::Memory),
    ("threads over 6 mm", Average, GramsM2, 360.0, Basis::Memory),
    ("threads of 6 mm and under", Single, Um, 20.0, Basis::Memory),
    ("threads of 6 mm and under", Single, GramsM2, 145.0, Basis::Memory),
    ("threads of 6 mm and under", Average, Um, 25.0, Basis::Memory),
    ("threads of 6 mm and under", Average, GramsM2, 180.0, Basis::Memory),
    ("spun, 3 mm and over", Single, Um, 45.0, Basis::Memory),
    ("spun, 3 mm and over", Single, GramsM2, 325.0, Basis::Memory),
    ("spun, 3 mm and over", Average, Um, 55.0, Basis::Memory),
    ("spun, 3 mm and over", Average, GramsM2, 395.0, Basis::Memory),
    ("spun, under 3 mm", Single, Um, 35.0, Basis::Memory),
    ("spun, under 3 mm", Single, GramsM2, 250.0, Basis::Memory),
    ("spun, under 3 mm", Average, Um, 45.0, Basis::Memory),
    ("spun, under 3 mm", Average, GramsM2, 325.0, Basis::Memory),
    ("steel over 6 mm", Single, Um, 70.0, Basis::Read),
    ("steel over 6 mm", Single, GramsM2, 505.0, Basis::Read),
    ("steel over 6 mm", Average, Um, 85.0, Basis::Read),
    ("steel over 6 mm", Average, GramsM2, 610.0, Basis::Read),
    ("steel over 3 to 6 mm", Single, Um, 55.0, Basis::Read),
    ("steel over 3 to 6 mm", Single, GramsM2, 395.0, Basis::Read),
    ("steel over 3 to 6 mm", Average, Um, 70.0, Basis::Read),
    ("steel over 3 to 6 mm", Average, GramsM2, 505.0, Basis::Read),
    ("steel 1.5 to 3 mm", Single, Um, 45.0, Basis::Read),
    ("steel 1.5 to 3 mm", Single, GramsM2, 325.0, Basis::Read),
    ("steel 1.5 to 3 mm", Average, Um, 55.0, Basis::Read),
    ("steel 1.5 to 3 mm", Average, GramsM2, 395.0, Basis::Read),
    ("steel under 1.5 mm", Single, Um, 35.0, Basis::Read),
    ("steel under 1.5 mm", Single, GramsM2, 250.0, Basis::Read),
    ("steel under 1.5 mm", Average, Um, 45.0, Basis::Read),
    ("steel under 1.5 mm", Average, GramsM2, 325.0, Basis::Read),
    ("castings 6 mm and over", Single, Um, 70.0, Basis::Read),
    ("castings 6 mm and over", Single, GramsM2, 505.0, Basis::Read),
    ("castings 6 mm and over", Average, Um, 80.0, Basis::Read),
    ("castings 6 mm and over", Average, GramsM2, 575.0, Basis::Read),
    ("castings under 6 mm", Single, Um, 60.0, Basis::Read),
    ("castings under 6 mm", Single, GramsM2, 430.0, Basis::Read),
    ("castings under 6 mm", Average, Um, 70.0, Basis::Read),
    ("castings under 6 mm", Average, GramsM2, 505.0, Basis::Read),
];

#[test]
fn the_classes_are_the_published_ones() {
    check(CLASSES, ROWS);
}
