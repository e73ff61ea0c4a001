//! ISO 2702:2011: the core of case-hardened tapping screws. Read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis::Read;
use kettle_barrel::steel::Grade;

use crate::steel_check::{Row, What::*, check};

/// Grade, nominal diameter in mm, what, printed value, basis.
#[rustfmt::skip]
const ROWS: &[Row] = &[
    (Grade::Iso2702, 3.9, HvLeast, 270.0, Read),
    (Grade::Iso2702, 3.9, HvGreatest, 370.0, Read),
    (Grade::Iso2702, 9.5, HvLeast, 270.0, Read),
    (Grade::Iso2702, 9.5, HvGreatest, 370.0, Read),
    (Grade::Iso2702, 4.2, NoTemper, 0.0, Read),
];

/// The surface has at least 450 HV: a case, which ASTM F2329 forbids in the kettle whoever says so.
#[test]
fn the_grade_brings_its_case() {
    use kettle_barrel::calculator::evaluate;
    let report =
        evaluate("hydrogen", [("grade", "iso-2702"), ("diameter", "4.8 mm"), ("process", "kettle")]).unwrap();
    assert!(report.headline.starts_with("Hot-dip: ruled out"), "{}", report.headline);
    assert!(report.headline.contains("Electroplating: suits on conditions"), "{}", report.headline);
    let plain =
        evaluate("hydrogen", [("grade", "iso-2702"), ("diameter", "4.8 mm"), ("process", "cell")]).unwrap();
    let said = [("grade", "iso-2702"), ("diameter", "4.8 mm"), ("process", "cell"), ("case", "yes")];
    let said = evaluate("hydrogen", said).unwrap();
    assert_eq!(plain.findings, said.findings);
}

#[test]
fn the_properties_are_the_published_ones() {
    check(ROWS);
}
