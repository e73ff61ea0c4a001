//! ASTM F3125 grades A325 and A490, and ASTM A325 before it.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::rule::{Cleaning, Key};
use kettle_barrel::source::Basis::{Memory, Read};
use kettle_barrel::steel::{Grade, State, Steel};
use kettle_barrel::table::astm_f3125::A325_BEFORE_F3125;
use kettle_barrel::working::Mark;

use crate::seen::{agree, near};
use crate::steel_check::{Row, What::*, check, ruling};

/// Grade, nominal diameter in mm, what, printed value, basis.
#[rustfmt::skip]
const ROWS: &[Row] = &[
    (Grade::A325, 25.4, HrcLeast, 25.0, Memory),
    (Grade::A325, 25.4, HrcGreatest, 34.0, Memory),
    (Grade::A325, 12.7, Ksi, 120.0, Read),
    (Grade::A325, 38.1, Ksi, 120.0, Read),
    (Grade::A325, 25.4, Mpa, 827.0, Read),
    (Grade::A490, 25.4, Ksi, 150.0, Read),
    (Grade::A490, 25.4, Mpa, 1034.0, Read),
    (Grade::A490, 25.4, KsiGreatest, 173.0, Read),
    (Grade::A490, 25.4, HrcLeast, 33.0, Memory),
    (Grade::A490, 25.4, HrcGreatest, 38.0, Memory),
    (Grade::A325, 25.4, TemperFahrenheit, 800.0, Memory),
    (Grade::A490, 25.4, TemperFahrenheit, 800.0, Memory),
    (Grade::F1852, 25.4, HrcLeast, 25.0, Memory),
    (Grade::F1852, 25.4, HrcGreatest, 34.0, Memory),
    (Grade::F1852, 25.4, Ksi, 120.0, Read),
    (Grade::F1852, 25.4, TemperFahrenheit, 800.0, Memory),
    (Grade::F2280, 25.4, HrcLeast, 33.0, Memory),
    (Grade::F2280, 25.4, HrcGreatest, 38.0, Memory),
    (Grade::F2280, 25.4, Ksi, 150.0, Read),
    (Grade::F2280, 25.4, KsiGreatest, 173.0, Read),
    (Grade::A325M, 24.0, HrcGreatest, 34.0, Memory),
    (Grade::A325M, 24.0, Mpa, 830.0, Memory),
    (Grade::A490M, 24.0, HrcGreatest, 38.0, Memory),
    (Grade::A490M, 24.0, Mpa, 1040.0, Memory),
];

#[test]
fn the_properties_are_the_published_ones() {
    check(ROWS);
}

#[test]
fn a325_before_f3125() {
    let [small, large] = &A325_BEFORE_F3125;
    for (row, min, max, ksi) in [(small, 24.0, 35.0, 120.0), (large, 19.0, 31.0, 105.0)] {
        let (hrc, tensile) = (row.hrc.unwrap(), row.tensile_min.unwrap());
        agree!(ASTM_A325, (hrc.min.unwrap().number, hrc.max.unwrap().number), (min, max));
        near!(ASTM_A325, tensile.value.ksi(), ksi, 1e-9);
        assert_eq!((hrc.source.basis, tensile.source.basis), (Read, Read));
    }
}

/// No zinc on grade A490, whatever the process.
#[test]
fn a490_takes_no_zinc() {
    let bases = [(Key::F3125HotDip, Memory), (Key::F3125Mechanical, Memory), (Key::A490Electroplated, Read)];
    for grade in Grade::AS_A490 {
        let state = State::of(Steel::Grade(grade.any_size().unwrap()));
        for (rule, basis) in bases {
            let (ruling, source, _) = ruling(rule, state, Cleaning::Mechanical).unwrap();
            agree!(ASTM_F3125, (ruling.mark, source.basis), (Mark::Bar, basis));
        }
    }
}

/// F3125, Annex A1, lists no electroplating for grade A325: the calculator of hydrogen says what the order
/// says.
#[test]
fn what_the_product_standard_does_not_list_is_ruled_out_beside_hydrogen() {
    let pairs = [("grade", "a325"), ("diameter", "3/4 in"), ("process", "cell")];
    let report = kettle_barrel::calculator::evaluate("hydrogen", pairs).unwrap();
    assert!(report.headline.starts_with("Electroplating: ruled out"), "{}", report.headline);
    assert!(report.headline.contains("Hot-dip: suits"), "{}", report.headline);
    assert!(
        report.findings.iter().any(|one| one.text.contains("does not list this coat")),
        "{:?}",
        report.findings
    );
}
