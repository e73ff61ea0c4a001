//! Zinc pick-up of the kettle against the sums made with plain bars, and the bath rules of ISO 10684.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use crate::seen::agree;
use kettle_barrel::calculator::{Mark, Value, evaluate};
use kettle_barrel::coat::kettle::pick_up;
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
    let of = |grade: &str, thread: &str, si_p: &str| {
        let pairs = [("grade", grade), ("thread", thread), ("length", "160 mm"), ("si_p", si_p)];
        let report = evaluate("kettle", pairs).unwrap_or_else(|problems| panic!("{problems}"));
        let bath = report.sections.iter().find(|section| section.title.starts_with("Bath")).unwrap();
        bath.title.to_string()
    };
    agree!(ISO_10684, of("8.8", "M30", "0.029 %"), "Bath: normal");
    agree!(ISO_10684, of("8.8", "M30", "0.03 %"), "Bath: high temperature");
    agree!(ISO_10684, of("8.8", "M30", "0.13 %"), "Bath: high temperature");
    agree!(ISO_10684, of("8.8", "M30", "0.131 %"), "Bath: normal");
    agree!(ISO_10684, of("10.9", "M24", "0.08 %"), "Bath: high temperature");
    agree!(ISO_10684, of("10.9", "M27", "0.08 %"), "Bath: normal only, on a steel that wants another");
    agree!(ISO_10684, of("10.9", "M27", ""), "Bath: normal only");
    agree!(ISO_10684, of("", "M27", ""), "Bath: normal");
    assert!(forbids_high_bath(Some(Grade::Class10_9), Some(Length::from_mm(27.0))));
    assert!(!forbids_high_bath(Some(Grade::Class10_9), Some(Length::from_mm(24.0))));
}

fn findings(pairs: &[(&str, &str)]) -> Vec<(Mark, String)> {
    let report = evaluate("kettle", pairs.iter().copied()).unwrap_or_else(|problems| panic!("{problems}"));
    report.findings.iter().map(|finding| (finding.mark, finding.text.to_string())).collect()
}

fn says(pairs: &[(&str, &str)], mark: Mark, part: &str) -> bool {
    findings(pairs).iter().any(|(own, text)| *own == mark && text.contains(part))
}

/// Silicon beyond the range is reactive as well: ASTM A385 above 0.22 %, ISO 14713-2 above 0.25 % (read).
#[test]
fn much_silicon_is_reactive_as_well() {
    let with = |si_p, si| [("si_p", si_p), ("si", si)];
    assert!(says(&with("0.20 %", ""), Mark::Condition, "Say how much of it is silicon"));
    assert!(says(&with("0.20 %", "0.18 %"), Mark::Met, "The normal bath does"));
    assert!(says(&with("", "0.24 %"), Mark::Condition, "Dip a trial"));
    assert!(says(&with("0.30 %", "0.28 %"), Mark::Condition, "no document was found"));
    let wrong = evaluate("kettle", with("0.10 %", "0.12 %")).unwrap_err();
    assert!(wrong.to_string().contains("no more than silicon and phosphorus together"), "{wrong}");
}

/// Between 480 and 530 °C no standard has a bath (memory), whatever the steel.
#[test]
fn a_bath_that_no_standard_has_is_barred_without_a_steel() {
    for bath in ["485 °C", "500 °C", "970 °F"] {
        let found = says(&[("bath", bath)], Mark::Bar, "no standard has a bath");
        assert!(found, "{bath}: {:?}", findings(&[("bath", bath)]));
    }
    assert!(!says(&[("bath", "460 °C")], Mark::Bar, ""));
}

/// Steels that a document bars from the kettle are barred here too, by the same rules.
#[test]
fn barred_steels_are_barred_from_the_run() {
    for (grade, thread) in [("12.9", "M16"), ("A490", "3/4-10 UNC"), ("A574", "M16")] {
        let pairs = [("grade", grade), ("thread", thread), ("length", "100 mm")];
        assert!(findings(&pairs).iter().any(|(mark, _)| *mark == Mark::Bar), "{grade}");
        let report = evaluate("kettle", pairs).unwrap();
        assert!(report.headline.starts_with("Not into the kettle"), "{}", report.headline);
    }
    assert!(!findings(&[("grade", "8.8"), ("thread", "M16")]).iter().any(|(mark, _)| *mark == Mark::Bar));
}

/// A short stud goes into the basket like any other part; a long bolt does not by itself.
#[test]
fn the_length_decides_between_basket_and_ring() {
    let of = |part, length, basket| {
        findings(&[("part", part), ("thread", "M24"), ("length", length), ("basket_length", basket)])
    };
    let told = |part, length, basket, words: &str| {
        of(part, length, basket).iter().any(|(_, text)| text.starts_with(words))
    };
    assert!(told("rod", "100 mm", "", "Spin"));
    assert!(told("hex-bolt", "900 mm", "", "Air ring"));
    assert!(told("hex-bolt", "480 mm", "", "Ask how long the basket is"));
    assert!(told("hex-bolt", "480 mm", "0.6 m", "Spin"));
}

/// The run of 500 kg of M16 x 60 bolts of class 8.8, for anybody to redo. A temper of one hour at 425 °C
/// (the least of ISO 898-1) is worth 698.15 K · (20 + 0) = 13963; in a bath of 460 °C, 733.15 K, that is
/// 60 · 10^(13963 / 733.15 − 20) = 6.7 min. Zinc: 7.2 · 50 = 360 g/m² on the area, and 500 kg in baskets of
/// 80 kg are 6.25, so 7.
#[test]
fn a_load_of_the_kettle_from_start_to_end() {
    let pairs = [
        ("load", "weight"),
        ("thread", "M16"),
        ("length", "60 mm"),
        ("weight", "500 kg"),
        ("grade", "8.8"),
        ("si_p", "0.02 %"),
        ("basket", "80 kg"),
    ];
    let report = evaluate("kettle", pairs).unwrap();
    let figure = |symbol: &str| {
        let figure = report.figures.iter().find(|figure| figure.symbol == symbol).unwrap();
        let Value::One(shown) = figure.value else { panic!("{figure:?}") };
        shown
    };
    let (area, zinc) = (figure("A").number, figure("Z").number);
    assert!((zinc - 0.360 * area).abs() < 1e-9, "{zinc} on {area}");
    let longest = 60.0 * 10f64.powf(698.15 * 20.0 / 733.15 - 20.0);
    assert!((longest - 6.7).abs() < 0.1);
    assert!((figure("t_T").number - longest).abs() < 0.05, "{}", figure("t_T"));
    let run = report.sections.iter().find(|section| section.title.starts_with("Run sheet")).unwrap();
    assert_eq!(run.title, "Run sheet for 7 baskets");
    let steps: Vec<String> = run.figures.iter().map(|figure| figure.name.to_string()).collect();
    let at = |part: &str| steps.iter().position(|step| step.starts_with('☐') && step.contains(part));
    let order = [
        "Degrease",
        "Clean this hard steel",
        "Rinse",
        "Flux",
        "Dry",
        "Dip until",
        "spin at once",
        "Quench",
        "Inspect",
    ];
    let places: Vec<usize> = order.iter().map(|step| at(step).unwrap_or_else(|| panic!("{step}"))).collect();
    assert!(places.is_sorted(), "{places:?}");
    assert!(run.figures.iter().any(|figure| figure.value.to_string() == "not found: the plant's own"));
}
