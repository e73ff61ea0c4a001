//! Zinc pick-up of the kettle against the sums made with plain bars, and the bath rules of ISO 10684.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::coat::kettle::{Bath, bath, pick_up};
use kettle_barrel::part::{Kind, standard};
use kettle_barrel::quantity::{Density, Length};
use kettle_barrel::rule::heat::forbids_high_bath;
use kettle_barrel::source::Basis;
use kettle_barrel::steel::Grade;
use kettle_barrel::thread::Thread;

/// Zinc in per cent of mass of a coat of 55 µm at 7.14 g/m² per µm on a bar whose area is 1.5 times
/// that of a plain one (computed).
const SHARES: (&[(u16, f64)], Basis) = (&[(8, 3.75), (12, 2.5), (20, 1.5)], Basis::Computed);

#[test]
fn a_threaded_rod_takes_about_what_one_and_a_half_plain_bars_take() {
    for &(d, percent) in SHARES.0 {
        let rod = standard(Kind::Rod, Thread::metric(d, None).unwrap(), Some(Length::from_m(1.0))).unwrap();
        let zinc = pick_up(rod.surface(), Length::from_um(55.0), Density::from_g_m2_um(7.14), 0.0, 0.0);
        let ours = 100.0 * zinc.on_parts.g() / rod.mass().g();
        // The rod has up to 1.6 times the area, and its grooves weigh up to a quarter less.
        let ratio = ours / percent;
        assert!((1.05..1.5).contains(&ratio), "M{d}: {ours} %, the plain sum says {percent} %");
        // The same sum on our own area and mass gives our share exactly.
        let sum = 55.0 * 7.14 * rod.surface().m2() / rod.mass().g() * 100.0;
        assert!((ours / sum - 1.0).abs() < 1e-12);
    }
}

/// High temperature is advised for 0.03 to 0.13 % Si + P and forbidden for class 10.9 from M27 (read).
#[test]
fn the_bath_follows_size_class_and_steel() {
    let of = |grade, mm, si_p| bath(si_p, forbids_high_bath(grade, Some(Length::from_mm(mm))));
    let class_8_8 = Some(Grade::Class8_8);
    let class_10_9 = Some(Grade::Class10_9);
    assert_eq!(of(class_8_8, 30.0, Some(0.029)), Bath::Normal);
    assert_eq!(of(class_8_8, 30.0, Some(0.03)), Bath::High);
    assert_eq!(of(class_8_8, 30.0, Some(0.13)), Bath::High);
    assert_eq!(of(class_8_8, 30.0, Some(0.131)), Bath::Normal);
    assert_eq!(of(class_10_9, 24.0, Some(0.08)), Bath::High);
    assert_eq!(of(class_10_9, 27.0, Some(0.08)), Bath::Neither);
    assert_eq!(of(class_10_9, 27.0, None), Bath::NormalOnly);
    assert_eq!(of(None, 27.0, None), Bath::Unknown);
    assert!(forbids_high_bath(class_10_9, Some(Length::from_mm(27.0))));
    assert!(!forbids_high_bath(class_10_9, Some(Length::from_mm(24.0))));
}
