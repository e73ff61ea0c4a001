//! ISO 2081, earlier edition, as quoted: bake by strength and section, and the limit of strength.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::quantity::{Hardness, Length, Scale, Stress};
use kettle_barrel::rule::{Cleaning, Key};
use kettle_barrel::source::Basis::Read;
use kettle_barrel::steel::hardness::from_tensile;
use kettle_barrel::steel::{State, Steel, Worked, bake};
use kettle_barrel::table::iso_2081;
use kettle_barrel::working::Mark;

use crate::seen::agree;
use crate::steel_check::ruling;

/// 1500 MPa, printed beside 45 HRC and 440 HV: each steel is held against the column it is known by.
#[test]
fn the_limit_is_read_in_its_own_column() {
    agree!(ISO_2081, (iso_2081::NOT_ABOVE.value.mpa(), iso_2081::NOT_ABOVE.source.basis), (1500.0, Read));
    let mark = |steel, case_hardened| {
        let state = State { steel, case_hardened, worked: Worked::No };
        ruling(Key::Iso2081Strength, state, Cleaning::Acid).map(|(ruling, ..)| ruling.mark)
    };
    for (at, above) in [
        (Steel::Hardness(Hardness::hrc(45.0)), Steel::Hardness(Hardness::hrc(46.0))),
        (Steel::Hardness(Hardness::hv(440.0)), Steel::Hardness(Hardness::hv(441.0))),
        (Steel::Tensile(Stress::from_mpa(1500.0)), Steel::Tensile(Stress::from_mpa(1501.0))),
    ] {
        agree!(ISO_2081, (mark(at, false), mark(above, false)), (Some(Mark::Met), Some(Mark::Bar)), "{at:?}");
        // The limit is that of the core; of a hard case the core is not known.
        assert_eq!(mark(above, true), None);
    }
}

/// MPa, section in mm, hours; all read.
const BAKE: &[(f64, f64, f64)] = &[
    (1000.0, 12.0, 2.0),
    (1149.0, 12.0, 2.0),
    (1100.0, 12.1, 4.0),
    (1100.0, 25.0, 4.0),
    (1100.0, 30.0, 8.0),
    (1150.0, 12.0, 4.0),
    (1400.0, 12.0, 4.0),
    (1300.0, 20.0, 12.0),
    (1300.0, 40.0, 24.0),
];

#[test]
fn the_bake_by_section() {
    for &(mpa, mm, hours) in BAKE {
        let row = bake::by_section(Stress::from_mpa(mpa), Length::from_mm(mm));
        agree!(ISO_2081, row.map(|row| row.hours.hour()), Some(hours), "{mpa} MPa, {mm} mm");
    }
    // Thicker sections are left to experiment.
    assert!(bake::by_section(Stress::from_mpa(1300.0), Length::from_mm(40.5)).is_none());
    agree!(ISO_2081, (iso_2081::TEMPERATURE.0.celsius(), iso_2081::TEMPERATURE.1.celsius()), (190.0, 210.0));
}

/// 1500 MPa is printed beside 45 HRC, 440 HV and 415 HB; ISO 18265 stands 1.4 HRC, 25 HV, 27 HB off.
#[test]
fn the_limit_on_other_scales() {
    let at = |scale| from_tensile(Stress::from_mpa(1500.0), scale).unwrap().to.number();
    assert!((at(Scale::Hrc) - 45.0).abs() < 1.6 && (at(Scale::Hv) - 440.0).abs() < 26.0);
    assert!((at(Scale::Hb) - 415.0).abs() < 28.0);
}

/// The six rows of the bake table, as they are quoted, and what other documents say, stand beside.
#[test]
fn the_bakes_of_other_documents_are_shown() {
    use kettle_barrel::calculator::evaluate;
    let pairs = [("known", "hardness"), ("hardness", "386 HV"), ("process", "cell")];
    let report = evaluate("hydrogen", pairs).unwrap();
    let bakes = report.sections.iter().find(|section| section.title.starts_with("Bakes of other")).unwrap();
    let hours: Vec<String> = bakes.figures.iter().take(6).map(|figure| figure.value.to_string()).collect();
    assert_eq!(hours, ["2", "4", "8", "4", "12", "24"].map(|hours| format!("{hours}\u{a0}h")));
    for name in ["ISO 9588", "Begun", "Above 390 HV"] {
        assert!(bakes.figures.iter().any(|figure| figure.name == name), "{name}");
    }
}
