//! ASTM F2329-05, 7: which steels are hot-dipped, and how hydrogen is kept out; 3.1.3, the hot bath.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::quantity::{Hardness, Length, Scale, Temperature};
use kettle_barrel::rule::{Cleaning, Key};
use kettle_barrel::source::Basis::Read;
use kettle_barrel::steel::Over::AtLeast;
use kettle_barrel::steel::tempering::Bath;
use kettle_barrel::steel::{Grade, State, Steel, Worked};
use kettle_barrel::table::astm_f2329;
use kettle_barrel::working::Mark;

use crate::seen::agree;
use crate::steel_check::{LimitRow, check_limits, ruling};

/// Rule, when it is passed, value, scale (none for MPa), basis.
const LIMITS: &[LimitRow] = &[(Key::F2329Ban, AtLeast, 40.0, Some(Scale::Hrc), Read)];

#[test]
fn the_limits_are_the_published_ones() {
    check_limits(LIMITS);
}

/// 7.2.2 speaks of the least hardness specified: grade 5 ends at 34 HRC, and begins at 25.
#[test]
fn the_risk_begins_with_a_specified_minimum_of_33_hrc() {
    agree!(
        ASTM_F2329,
        (astm_f2329::RISK_FROM.value, astm_f2329::RISK_FROM.source.basis),
        (Hardness::hrc(33.0), Read)
    );
    let mark = |grade: Grade| {
        let state = State::of(Steel::grade(grade, Length::from_mm(20.0)).unwrap());
        ruling(Key::F2329Risk, state, Cleaning::Acid).map(|(ruling, ..)| ruling.mark)
    };
    agree!(ASTM_F2329, mark(Grade::J429Grade5), Some(Mark::Met));
    agree!(ASTM_F2329, mark(Grade::J429Grade8), Some(Mark::Term));
}

#[test]
fn case_hardened_fasteners_are_not_hot_dipped() {
    let steel = Steel::Hardness(Hardness::hrc(25.0));
    let state = State { steel, case_hardened: true, worked: Worked::No };
    let (ruling, source, _) = ruling(Key::F2329CaseHardened, state, Cleaning::Mechanical).unwrap();
    agree!(ASTM_F2329, (ruling.mark, source.basis), (Mark::Bar, Read));
}

/// The bake stands between pickling and the zinc, and the text says so.
#[test]
fn the_bake_comes_before_the_zinc() {
    let state = State::of(Steel::Hardness(Hardness::hrc(36.0)));
    let (.., text) = ruling(Key::F2329Risk, state, Cleaning::Acid).unwrap();
    assert!(text.contains("bake after pickling and before galvanizing"), "{text}");
}

/// 990 to 1040 °F, printed as 532 to 560 °C.
#[test]
fn the_high_temperature_bath() {
    for fahrenheit in [990.0, 1040.0] {
        agree!(ASTM_F2329, Bath::of(Temperature::from_fahrenheit(fahrenheit)), Bath::High);
    }
    assert_eq!(Temperature::from_fahrenheit(990.0).celsius().round(), 532.0);
    assert_eq!(Temperature::from_fahrenheit(1040.0).celsius().round(), 560.0);
}
