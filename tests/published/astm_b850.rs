//! ASTM B850-98: the bake by strength, and its agreement with the hardness printed beside it.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::quantity::{Hardness, Scale, Stress};
use kettle_barrel::rule::Key;
use kettle_barrel::source::Basis::{Memory, Read};
use kettle_barrel::steel::Over::Above;
use kettle_barrel::steel::bake;
use kettle_barrel::steel::hardness::from_tensile;
use kettle_barrel::steel::{State, Steel};
use kettle_barrel::table::astm_b850;

use crate::seen::agree;
use crate::steel_check::{LimitRow, check_limits};

/// Rule, when it is passed, value, scale (none for MPa), basis.
const LIMITS: &[LimitRow] = &[(Key::B850Bake, Above, 1000.0, None, Read)];

#[test]
fn the_limits_are_the_published_ones() {
    check_limits(LIMITS);
}

/// First and last MPa of a row as printed, Rockwell C beside it, hours at 190 to 220 °C; all read.
const TABLE_1: &[(f64, f64, f64, f64, f64)] = &[
    (1001.0, 1100.0, 31.0, 33.0, 8.0),
    (1101.0, 1200.0, 33.0, 36.0, 10.0),
    (1201.0, 1300.0, 36.0, 39.0, 12.0),
    (1301.0, 1400.0, 39.0, 43.0, 14.0),
    (1401.0, 1500.0, 43.0, 45.0, 16.0),
    (1501.0, 1600.0, 45.0, 47.0, 18.0),
    (1601.0, 1700.0, 47.0, 49.0, 20.0),
    (1701.0, 1800.0, 49.0, 51.0, 22.0),
];

fn hours(mpa: f64) -> Option<f64> {
    let bake = bake::by_b850(&State::of(Steel::Tensile(Stress::from_mpa(mpa)))).unwrap();
    bake.map(|bake| bake.row.hours.hour())
}

#[test]
fn the_bake_table() {
    for &(first, last, _, _, printed) in TABLE_1 {
        agree!(ASTM_B850, (hours(first), hours(last)), (Some(printed), Some(printed)), "{first} MPa");
    }
    assert_eq!(hours(1000.0), None);
    let (low, high) = astm_b850::TEMPERATURE;
    agree!(ASTM_B850, (low.celsius(), high.celsius()), (190.0, 220.0));
    agree!(ASTM_B850, (astm_b850::WITHIN.value.hour(), astm_b850::WITHIN.source.basis), (4.0, Memory));
}

/// By ISO 18265 the strengths are 0.9 to 2.2 HRC harder than the Rockwell number printed beside them, so
/// a hardness turned into a strength would be baked too short; it is read by the table's own column.
#[test]
fn the_hardness_beside_the_strength() {
    for &(_, last, _, printed, longest) in TABLE_1 {
        let ours = from_tensile(Stress::from_mpa(last), Scale::Hrc).unwrap().to.number();
        assert!((0.9..2.2).contains(&(ours - printed)), "{last} MPa: {ours} HRC, printed {printed}");
        let bake = bake::by_b850(&State::of(Steel::Hardness(Hardness::hrc(printed)))).unwrap().unwrap();
        assert_eq!(bake.row.hours.hour(), longest, "{printed} HRC");
    }
}
