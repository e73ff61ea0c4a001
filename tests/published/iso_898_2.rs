//! ISO 898-2:2012: hardness of nuts, from memory; their heat treatment read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::quantity::Length;
use kettle_barrel::source::Basis::{Memory, Read};
use kettle_barrel::steel::Grade;
use kettle_barrel::table::steel_row::Treatment;

use crate::seen::agree;
use crate::steel_check::{Row, What::*, check};

/// Grade, nominal diameter in mm, what, printed value, basis.
#[rustfmt::skip]
const ROWS: &[Row] = &[
    (Grade::Nut5, 5.0, HvLeast, 130.0, Memory),
    (Grade::Nut5, 5.0, HvGreatest, 302.0, Memory),
    (Grade::Nut5, 16.0, HvLeast, 130.0, Memory),
    (Grade::Nut5, 16.0, HvGreatest, 302.0, Memory),
    (Grade::Nut5, 18.0, HvLeast, 146.0, Memory),
    (Grade::Nut5, 18.0, HvGreatest, 302.0, Memory),
    (Grade::Nut5, 39.0, HvLeast, 146.0, Memory),
    (Grade::Nut5, 39.0, HvGreatest, 302.0, Memory),
    (Grade::Nut6, 5.0, HvLeast, 150.0, Memory),
    (Grade::Nut6, 5.0, HvGreatest, 302.0, Memory),
    (Grade::Nut6, 16.0, HvLeast, 150.0, Memory),
    (Grade::Nut6, 16.0, HvGreatest, 302.0, Memory),
    (Grade::Nut6, 18.0, HvLeast, 170.0, Memory),
    (Grade::Nut6, 18.0, HvGreatest, 302.0, Memory),
    (Grade::Nut6, 39.0, HvLeast, 170.0, Memory),
    (Grade::Nut6, 39.0, HvGreatest, 302.0, Memory),
    (Grade::Nut8, 5.0, HvLeast, 200.0, Memory),
    (Grade::Nut8, 5.0, HvGreatest, 302.0, Memory),
    (Grade::Nut8, 16.0, HvLeast, 200.0, Memory),
    (Grade::Nut8, 16.0, HvGreatest, 302.0, Memory),
    (Grade::Nut8, 18.0, HvLeast, 233.0, Memory),
    (Grade::Nut8, 18.0, HvGreatest, 353.0, Memory),
    (Grade::Nut8, 39.0, HvLeast, 233.0, Memory),
    (Grade::Nut8, 39.0, HvGreatest, 353.0, Memory),
    (Grade::Nut10, 5.0, HvLeast, 272.0, Memory),
    (Grade::Nut10, 5.0, HvGreatest, 353.0, Memory),
    (Grade::Nut10, 39.0, HvLeast, 272.0, Memory),
    (Grade::Nut10, 39.0, HvGreatest, 353.0, Memory),
    (Grade::Nut12, 5.0, HvLeast, 295.0, Memory),
    (Grade::Nut12, 5.0, HvGreatest, 353.0, Memory),
    (Grade::Nut12, 16.0, HvLeast, 295.0, Memory),
    (Grade::Nut12, 16.0, HvGreatest, 353.0, Memory),
    (Grade::Nut12, 18.0, HvLeast, 272.0, Memory),
    (Grade::Nut12, 18.0, HvGreatest, 353.0, Memory),
    (Grade::Nut12, 39.0, HvLeast, 272.0, Memory),
    (Grade::Nut12, 39.0, HvGreatest, 353.0, Memory),
    (Grade::Nut04, 12.0, HvLeast, 188.0, Memory),
    (Grade::Nut04, 39.0, HvGreatest, 302.0, Memory),
    (Grade::Nut05, 12.0, HvLeast, 272.0, Memory),
    (Grade::Nut05, 39.0, HvGreatest, 353.0, Memory),
    (Grade::Nut05, 12.0, NoTemper, 0.0, Memory),
    (Grade::Nut9, 12.0, HvLeast, 188.0, Memory),
    (Grade::Nut9, 39.0, HvGreatest, 302.0, Memory),
    (Grade::Nut10, 39.0, NoTemper, 0.0, Memory),
];

/// Table 3, read: which classes are quenched and tempered, coarse threads, style 1.
const TREATED: &[(Grade, f64, bool)] = &[
    (Grade::Nut04, 12.0, false),
    (Grade::Nut05, 12.0, true),
    (Grade::Nut5, 12.0, false),
    (Grade::Nut6, 24.0, false),
    (Grade::Nut8, 16.0, false),
    (Grade::Nut8, 18.0, true),
    (Grade::Nut9, 24.0, false),
    (Grade::Nut10, 12.0, true),
    (Grade::Nut12, 12.0, true),
];

#[test]
fn the_heat_treatment_is_the_published_one() {
    for &(grade, mm, tempered) in TREATED {
        let properties = grade.properties(Length::from_mm(mm)).unwrap();
        let expected = if tempered { Treatment::QuenchedTempered } else { Treatment::NotHeatTreated };
        agree!(ISO_898_2, properties.treatment(), expected, "{} M{mm}", grade.name());
        assert_eq!(properties.row.document.basis, Read);
    }
}

#[test]
fn the_properties_are_the_published_ones() {
    check(ROWS);
}
