//! ISO 2081, earlier edition, as quoted: bake by strength and section, and the limit of strength.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::quantity::{Length, Scale, Stress};
use kettle_barrel::rule::Key;
use kettle_barrel::source::Basis::Read;
use kettle_barrel::steel::Over::Above;
use kettle_barrel::steel::bake;
use kettle_barrel::steel::hardness::from_tensile;
use kettle_barrel::table::iso_2081;

use crate::steel_check::{LimitRow, check_limits};

/// Rule, when it is passed, value, scale (none for MPa), basis.
const LIMITS: &[LimitRow] = &[(Key::Iso2081Strength, Above, 1500.0, None, Read)];

#[test]
fn the_limits_are_the_published_ones() {
    check_limits(LIMITS);
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
        assert_eq!(row.map(|row| row.hours.hour()), Some(hours), "{mpa} MPa, {mm} mm");
    }
    // Thicker sections are left to experiment.
    assert!(bake::by_section(Stress::from_mpa(1300.0), Length::from_mm(40.5)).is_none());
    assert_eq!((iso_2081::TEMPERATURE.0.celsius(), iso_2081::TEMPERATURE.1.celsius()), (190.0, 210.0));
}

/// 1500 MPa is printed beside 45 HRC, 440 HV and 415 HB; ISO 18265 stands 1.4 HRC, 25 HV, 27 HB off.
#[test]
fn the_limit_on_other_scales() {
    let at = |scale| from_tensile(Stress::from_mpa(1500.0), scale).unwrap().to.number();
    assert!((at(Scale::Hrc) - 45.0).abs() < 1.6 && (at(Scale::Hv) - 440.0).abs() < 26.0);
    assert!((at(Scale::Hb) - 415.0).abs() < 28.0);
}
