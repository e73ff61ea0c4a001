//! ISO 10684:2004: cleaning from 320 HV (5.2), the baths (5.4, 5.5), and the classes in its scope.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::process::Process;
use kettle_barrel::quantity::{Length, Scale, Temperature, Time};
use kettle_barrel::rule::{self, Case, Cleaning, Key, SteelFacts, Topic};
use kettle_barrel::source::Basis::{Memory, Read};
use kettle_barrel::steel::Over::AtLeast;
use kettle_barrel::steel::tempering::{self, Bath, Dip, Temper};
use kettle_barrel::steel::{Grade, State, Steel, Worked};
use kettle_barrel::working::Mark;

use crate::seen::agree;
use crate::steel_check::{LimitRow, check_limits, ruling};

/// Rule, when it is passed, value, scale (none for MPa), basis.
const LIMITS: &[LimitRow] = &[(Key::Iso10684Cleaning, AtLeast, 320.0, Some(Scale::Hv), Read)];

#[test]
fn the_limits_are_the_published_ones() {
    check_limits(LIMITS);
}

/// Temperature in °C, kind of bath.
const BATHS: &[(f64, Bath)] = &[
    (455.0, Bath::Normal),
    (480.0, Bath::Normal),
    (530.0, Bath::High),
    (560.0, Bath::High),
    (454.0, Bath::Low),
    (481.0, Bath::Avoided),
    (529.0, Bath::Avoided),
    (561.0, Bath::Beyond),
];

#[test]
fn the_baths() {
    for &(celsius, bath) in BATHS {
        agree!(ISO_10684, Bath::of(Temperature::from_celsius(celsius)), bath, "{celsius} °C");
    }
    assert_eq!((Bath::Normal.source().basis, Bath::High.source().basis), (Read, Read));
    assert_eq!(Bath::Avoided.source().basis, Memory);
}

#[test]
fn bolts_to_class_10_9_and_nuts_to_class_12() {
    use Grade::{Class4_6, Class8_8, Class10_9, Class12_9, Class12_9Underlined, J429Grade8, Nut12};
    let scope = [
        (Class4_6, Some(true)),
        (Class8_8, Some(true)),
        (Class10_9, Some(true)),
        (Class12_9, Some(false)),
        (Class12_9Underlined, Some(false)),
        (Nut12, Some(true)),
        (J429Grade8, None),
    ];
    for (grade, covered) in scope {
        agree!(ISO_10684, grade.in_iso_10684(), covered, "{}", grade.name());
    }
}

/// 5.1, after AS/NZS 1214: severe work-hardening may have to be relieved before the acid. Soft bends and ground threads are
/// not spoken of.
#[test]
fn what_was_formed_hard_and_cold_is_settled_with_the_galvanizer() {
    let says = |grade, worked| {
        let steel = Steel::grade(grade, Length::from_mm(16.0)).unwrap();
        let state = State { steel, case_hardened: false, worked };
        ruling(Key::Iso10684Relief, state, Cleaning::Acid)
            .map(|(ruling, source, _)| (ruling.mark, source.basis))
    };
    agree!(ISO_10684, says(Grade::Class10_9, Worked::Formed), Some((Mark::Term, Read)));
    agree!(ISO_10684, says(Grade::Class5_6, Worked::Formed), Some((Mark::Met, Read)));
    for worked in [Worked::No, Worked::Machined] {
        assert_eq!(says(Grade::Class10_9, worked), None);
    }
}

/// Class 10.9 from M27 never goes into the high-temperature bath.
#[test]
fn large_class_10_9_stays_out_of_the_hot_bath() {
    let mark = |mm, celsius| {
        let diameter = Length::from_mm(mm);
        let state = State::of(Steel::grade(Grade::Class10_9, diameter).unwrap());
        let steel = SteelFacts::new(state, Cleaning::Acid);
        let heat = tempering::effect(&Dip {
            grade: state.grade(),
            temper: Some(Temper::actual(Temperature::from_celsius(600.0), Time::from_hour(1.0))),
            bath: Temperature::from_celsius(celsius),
            time: Time::from_minute(2.0),
        });
        let case = Case { heat: Some(&heat), diameter: Some(diameter), ..steel.alone(Process::HotDip) };
        rule::judge_topic(&case, Topic::Heat).map(|ruling| ruling.mark).max().unwrap()
    };
    for mm in [27.0, 30.0, 64.0] {
        for celsius in [530.0, 545.0, 560.0] {
            agree!(ISO_10684, mark(mm, celsius), Mark::Bar);
        }
        assert_ne!(mark(mm, 480.0), Mark::Bar);
    }
    assert_ne!(mark(24.0, 545.0), Mark::Bar);
}
