//! What must hold for the zinc of every load.

use kettle_barrel::calculator::evaluate;
use kettle_barrel::coat::kettle::{baskets, pick_up};
use kettle_barrel::quantity::{Area, Density, Length, Mass};
use proptest::prelude::*;

proptest! {
    /// The zinc fed is the sum of what goes on and what is lost; it grows with area, coat and losses.
    #[test]
    fn the_zinc_adds_up(
        area in 0.01..10_000.0f64,
        um in 1.0..500.0f64,
        // Shares of the zinc used: together they leave some for the parts.
        dross in 0.0..0.45f64,
        ash in 0.0..0.45f64,
        more in 1.001..3.0f64,
    ) {
        let at = |area, um, dross| {
            pick_up(Area::from_m2(area), Length::from_um(um), Density::from_g_m2_um(7.2), dross, ash)
        };
        let one = at(area, um, dross);
        let sum = one.on_parts.g() + one.dross.g() + one.ash.g();
        prop_assert!((one.fed.g() / sum - 1.0).abs() < 1e-9);
        prop_assert!(at(area * more, um, dross).fed > one.fed);
        prop_assert!(at(area, um * more, dross).fed > one.fed);
        prop_assert!(at(area, um, dross + 0.01).fed > one.fed);
        prop_assert_eq!(at(area, um, dross * more).on_parts, one.on_parts);
    }

    /// No basket is overfilled, and none is left out.
    #[test]
    fn baskets_hold_the_load(load in 0.1..100_000.0f64, capacity in 1.0..5000.0f64) {
        let number = baskets(Mass::from_kg(load), Mass::from_kg(capacity));
        prop_assert!(number.fract() == 0.0 && number >= 1.0);
        prop_assert!(load / number <= capacity * 1.000_001);
        prop_assert!(number == 1.0 || load / (number - 1.0) > capacity);
    }
}

fn sheet(id: &str, pairs: &[(&str, &str)]) -> String {
    let report =
        evaluate(id, pairs.iter().copied()).unwrap_or_else(|problems| panic!("{pairs:?}: {problems}"));
    let section = report.sections.iter().find(|section| section.title.starts_with("Run sheet")).unwrap();
    let line = |figure: &kettle_barrel::calculator::Figure| format!("{}: {}", figure.name, figure.value);
    section.figures.iter().map(line).collect::<Vec<_>>().join("\n").replace('\u{a0}', " ")
}

/// A sheet follows the steel: what bars it is its only line, and hard steel is not sent into plain acid.
#[test]
fn a_run_sheet_follows_the_steel() {
    let bolt = |grade| [("grade", grade), ("thread", "M16"), ("length", "80 mm")];
    let barred = sheet("kettle", &bolt("12.9"));
    assert!(barred.starts_with("☐ 1. Not into the kettle: ") && barred.lines().count() == 1, "{barred}");
    let structural =
        [("grade", "A490"), ("thread", "1-8 UNC"), ("part", "structural-bolt"), ("length", "4 in")];
    assert!(sheet("powder", &structural).starts_with("☐ 1. Not into the barrel: "));
    let hard = sheet("powder", &bolt("12.9"));
    assert!(hard.starts_with("☐ 1. Clean this hard steel without plain acid"), "{hard}");
    assert!(!hard.contains("acid pickle"), "{hard}");
    assert!(
        sheet("powder", &bolt("4.6")).starts_with("☐ 1. Clean the parts: hot alkaline soak, acid pickle")
    );
}

/// The longest dip belongs to the bath that is advised; where the temper does not bear it that is said.
/// Class 8.8 is tempered from 425 °C (ISO 898-1): P = 698.15 · 20 = 13963 K. In the high-temperature bath
/// at 560 °C 10^(13963 / 833.15 − 20) h = 5.75e-4 h, 2 s, in the normal one at 460 °C
/// 10^(13963 / 733.15 − 20) h = 0.111 h, 6.7 min.
#[test]
fn the_longest_dip_is_that_of_the_bath_advised() {
    let with = |si_p, bath, grade| {
        let bolt = [("grade", grade), ("thread", "M16"), ("length", "80 mm"), ("si_p", si_p), ("bath", bath)];
        sheet("kettle", &bolt)
    };
    let hot = with("0.08 %", "460 °C", "8.8");
    assert!(hot.contains("Bath advised: 530 to 560 °C"), "{hot}");
    assert!(hot.contains("460 °C is not the bath advised"), "{hot}");
    assert!(hot.contains("For the temper of this steel, at 560 °C: no longer than 2 s"), "{hot}");
    assert!(hot.contains("In conflict: the temper bears less than a basket takes"), "{hot}");
    let normal = with("0.2 %", "460 °C", "8.8");
    assert!(normal.contains("at 460 °C: no longer than 6.7 min"), "{normal}");
    assert!(!normal.contains("In conflict"), "{normal}");
    // B7 is tempered from 593 °C (ASTM A193): no dip of minutes in the normal bath touches it.
    let b7 = with("0.2 %", "460 °C", "B7");
    assert!(b7.contains("no limit within an hour"), "{b7}");
}

/// A rod of 1900 mm is drawn through a ring, one by one: no basket takes it.
#[test]
fn what_is_longer_than_a_basket_has_no_baskets() {
    let pairs =
        [("part", "rod"), ("thread", "M20"), ("length", "1900 mm"), ("pieces", "60"), ("basket", "80 kg")];
    let sheet = sheet("kettle", &pairs);
    assert!(!sheet.to_ascii_lowercase().contains("baskets"), "{sheet}");
    assert!(sheet.contains("one by one"), "{sheet}");
}

/// What no bath may take is told first, by the rules of the order.
#[test]
fn banned_steels_stay_out_of_the_kettle() {
    for (grade, thread, part, barred) in [
        ("A490", "1-8 UNC", "hex-bolt", true),
        ("A574", "M16", "socket-screw", true),
        ("12.9", "M16", "hex-bolt", true),
        ("10.9", "M20", "hex-bolt", false),
        ("A325", "3/4-10 UNC", "hex-bolt", false),
    ] {
        let pairs = [("grade", grade), ("thread", thread), ("part", part), ("length", "80 mm")];
        let report = evaluate("kettle", pairs).unwrap();
        assert_eq!(
            report.headline.starts_with("Not into the kettle"),
            barred,
            "{grade}: {}",
            report.headline
        );
    }
}

/// The bath entered is laid beside the one advised: from 445 °C on a bath is usual (a galvanizing text), and the
/// normal one of ISO 10684 is 455 to 480 °C.
#[test]
fn the_bath_entered_is_laid_beside_the_one_advised() {
    let with = |bath, si_p| {
        let bolt = [("grade", "8.8"), ("thread", "M16"), ("length", "80 mm"), ("si_p", si_p), ("bath", bath)];
        sheet("kettle", &bolt).contains(&format!("{bath} is not the bath advised"))
    };
    for (bath, si_p, told) in [
        ("440 °C", "0.2 %", true),
        ("444 °C", "0.2 %", true),
        ("445 °C", "0.2 %", false),
        ("450 °C", "0.2 %", false),
        ("460 °C", "0.2 %", false),
        ("540 °C", "0.2 %", true),
        ("445 °C", "0.08 %", true),
        ("460 °C", "0.08 %", true),
        ("540 °C", "0.08 %", false),
    ] {
        assert_eq!(with(bath, si_p), told, "{bath}, {si_p}");
    }
    // A time that such baskets do not take is told; what is wiped one by one has none.
    let time = |dip| sheet("kettle", &[("thread", "M16"), ("length", "80 mm"), ("dip", dip)]);
    for (dip, told) in [("1 min", true), ("1.5 min", false), ("5 min", false), ("6 min", true)] {
        assert_eq!(time(dip).contains("is not what such baskets take"), told, "{dip}");
    }
}

/// Of all the zinc used some is left for the parts, and silicon is part of silicon and phosphorus.
#[test]
fn shares_that_contradict_each_other_are_refused() {
    let load = [("thread", "M16"), ("length", "80 mm"), ("pieces", "100")];
    let refused = |pairs: &[(&'static str, &'static str)]| {
        evaluate("kettle", load.into_iter().chain(pairs.iter().copied())).err().map(|found| found.to_string())
    };
    for (dross, ash) in [("40 %", "40 %"), ("10 %", "70 %"), ("0 %", "80 %"), ("2 %", "0 %")] {
        assert_eq!(refused(&[("dross", dross), ("ash", ash)]), None, "{dross}, {ash}");
    }
    for (dross, ash) in [("40.1 %", "40 %"), ("20 %", "70 %"), ("70 %", "11 %")] {
        let told = refused(&[("dross", dross), ("ash", ash)]).unwrap();
        assert!(told.contains("leave little for the parts"), "{told}");
    }
    for (sum, si) in [("0.05 %", "0.05 %"), ("0.2 %", "0.1 %")] {
        assert_eq!(refused(&[("si_p", sum), ("si", si)]), None, "{sum}, {si}");
    }
    let told = refused(&[("si_p", "0.05 %"), ("si", "0.06 %")]).unwrap();
    assert!(told.contains("silicon alone is no more"), "{told}");
}

/// A price is of a kilogram, a tonne or a pound: 0.453 592 37 kg, as it is defined.
#[test]
fn the_cost_is_that_of_the_zinc_fed() {
    let cost = |price| {
        let pairs = [("thread", "M16"), ("length", "80 mm"), ("pieces", "10000"), ("dross", "10 %")];
        let report = evaluate("kettle", pairs.into_iter().chain([("price", price)])).unwrap();
        let number = |name: &str| {
            let figure = report.figures.iter().find(|figure| figure.name == name).unwrap();
            match figure.value {
                kettle_barrel::calculator::Value::One(one) => one.number,
                _ => panic!("{name}"),
            }
        };
        number("Cost, in the currency of your price") / number("Zinc fed to the kettle")
    };
    for (price, per_kg) in [("3 per kg", 3.0), ("3000 per t", 3.0), ("3 per lb", 3.0 / 0.453_592_37)] {
        assert!((cost(price) / per_kg - 1.0).abs() < 1e-9, "{price}: {}", cost(price));
    }
}

/// No plant coats more in a day than 1000 t or 100,000 m², however the load is stated; no part is longer than 6 m.
#[test]
fn a_load_is_within_a_plant() {
    let refused = |pairs: &[(&'static str, &'static str)]| {
        evaluate("kettle", pairs.iter().copied()).err().map(|problems| problems.to_string())
    };
    let bolt = [("thread", "M20"), ("length", "100 mm")];
    let with = |more: &[(&'static str, &'static str)]| refused(&[&bolt[..], more].concat());
    for ok in [
        with(&[("load", "weight"), ("weight", "1000 t")]),
        refused(&[("load", "area"), ("area", "100000 m²")]),
        with(&[("load", "count"), ("pieces", "3000000")]),
        refused(&[("part", "rod"), ("thread", "M20"), ("length", "6 m"), ("pieces", "10")]),
        refused(&[("part", "eye-bolt"), ("thread", "M20"), ("length", "6000 mm"), ("pieces", "10")]),
    ] {
        assert_eq!(ok, None);
    }
    for (bad, told) in [
        (with(&[("load", "weight"), ("weight", "1001 t")]), "1000"),
        (refused(&[("load", "area"), ("area", "100001 m²")]), "100"),
        (with(&[("load", "count"), ("pieces", "5000000")]), "more than any plant coats in a day"),
        // Much area on little weight.
        (
            refused(&[("load", "measured"), ("nearest", "flat"), ("plate", "0.5 mm"), ("weight", "900 t")]),
            "more than any plant coats in a day",
        ),
        (refused(&[("part", "rod"), ("thread", "M20"), ("length", "6.1 m"), ("pieces", "10")]), "6"),
        (with(&[("sizes", "k = 6001 mm")]), "longer parts are not coated whole"),
    ] {
        let problem = bad.unwrap_or_else(|| panic!("{told}"));
        assert!(problem.contains(told), "{told}: {problem}");
    }
    // A kilogram of wire of 0.5 mm, all of it threaded, has 4 × 1.5 / (7.85 × 0.5) = 1.53 m².
    let trial = |zinc: &'static str| {
        refused(&[
            ("load", "trial"),
            ("weight", "500 kg"),
            ("trial_parts", "2000 g"),
            ("trial_zinc", zinc),
            ("trial_coat", "50 µm"),
        ])
    };
    assert_eq!(trial("40 g"), None);
    assert!(trial("4 kg").unwrap().starts_with("Zinc on them: "));
    let of_area =
        |weight: &'static str| refused(&[("load", "area"), ("area", "100 m²"), ("area_weight", weight)]);
    assert_eq!(of_area("66 kg"), None);
    assert!(of_area("65 kg").unwrap().contains("must be at most 1.53\u{a0}m²"));
    assert_eq!(with(&[("sizes", "k = 13 mm")]), None);
    let unsound = with(&[("sizes", "q = 13 mm")]).unwrap();
    assert!(unsound.starts_with("Own sizes"), "{unsound}");
}

/// A load stands under the documents whose factor weighs its coat: 7.2 g/m² per µm is that of ISO 10684, 7.067 that
/// of F2329; solid zinc belongs to neither, and each of them is told.
#[test]
fn the_rules_follow_the_factor_of_the_coat() {
    use kettle_barrel::calculator::Mark;
    let mark = |grade, factor, text: &str| {
        let pairs = [("grade", grade), ("thread", "M16"), ("length", "80 mm"), ("factor", factor)];
        let report = evaluate("kettle", pairs).unwrap();
        let found = report.findings.iter().find(|finding| finding.text.contains(text));
        found.map_or(Mark::Met, |finding| finding.mark)
    };
    for (factor, cleaning, ban) in [("iso1461", true, false), ("a123", false, true), ("a653", true, true)] {
        // ISO 10684 cleans with care from 320 HV on, class 10.9 among them; F2329 forbids 40 HRC, A574 among them.
        let asked = mark("10.9", factor, "is above 320\u{a0}HV") == Mark::Term;
        assert_eq!(asked, cleaning, "{factor}");
        let barred = mark("A574", factor, "ASTM F2329 forbids hot-dip") == Mark::Bar;
        assert_eq!(barred, ban, "{factor}");
    }
}

/// ISO 10684 keeps class 10.9 from M27 on out of the high-temperature bath.
#[test]
fn large_bolts_of_10_9_stay_out_of_the_hot_bath() {
    for (thread, bath, barred) in
        [("M30", "540 °C", true), ("M27", "540 °C", true), ("M24", "540 °C", false), ("M30", "460 °C", false)]
    {
        let pairs = [("grade", "10.9"), ("thread", thread), ("length", "120 mm"), ("bath", bath)];
        let report = evaluate("kettle", pairs).unwrap();
        assert_eq!(report.headline.starts_with("Not into the kettle"), barred, "{thread}, {bath}");
    }
}

/// Whoever heats in °F reads the longest dip at his own bath in °F.
#[test]
fn the_longest_dip_is_told_at_the_bath_as_it_was_entered() {
    let name = |bath, si_p| {
        let pairs =
            [("grade", "8.8"), ("thread", "M16"), ("length", "80 mm"), ("bath", bath), ("si_p", si_p)];
        let report = evaluate("kettle", pairs).unwrap();
        let figure = report.figures.iter().find(|figure| figure.name.starts_with("Longest dip")).unwrap();
        figure.name.replace('\u{a0}', " ")
    };
    assert_eq!(name("860 °F", ""), "Longest dip that the temper bears, at 860 °F");
    assert_eq!(name("460 °C", ""), "Longest dip that the temper bears, at 460 °C");
    // In the bath that the steel wants instead.
    assert_eq!(name("860 °F", "0.08 %"), "Longest dip that the temper bears, at 560 °C");
}

/// Where the zinc goes is drawn from nought.
#[test]
fn bars_of_zinc_begin_at_nought() {
    use kettle_barrel::calculator::Picture;
    let pairs = [("load", "area"), ("area", "100 m²"), ("dross", "10 %"), ("ash", "5 %")];
    let Some(Picture::Bars { bars, .. }) = evaluate("kettle", pairs).unwrap().picture else { panic!() };
    let ends: Vec<(f64, f64)> = bars.iter().map(|bar| (bar.from.number, bar.to.number)).collect();
    // 100 m² · 50 µm · 7.2 g/m² per µm = 36 kg, which is 85 % of 42.35 kg.
    for ((from, to), kg) in ends.iter().zip([36.0, 4.235, 2.118]) {
        assert!(*from == 0.0 && (to - kg).abs() < 0.001, "{ends:?}");
    }
}

/// A part that is shorter than its point has a wrong length; with sizes of its own the sizes may be wrong. A bar
/// measured in inches is answered in inches, whatever it was weighed in.
#[test]
fn a_load_is_told_in_its_own_fields_and_units() {
    let problem = |pairs: &[(&'static str, &'static str)]| {
        evaluate("kettle", pairs.iter().copied()).unwrap_err().to_string()
    };
    let short = [("thread", "M20"), ("length", "1 mm"), ("part", "rod")];
    assert!(problem(&short).starts_with("Length: "), "{}", problem(&short));
    let own = [&short[..], &[("sizes", "l = 1 mm")]].concat();
    assert!(problem(&own).starts_with("Own sizes: "), "{}", problem(&own));
    let unit = |bar, weight| {
        let pairs = [("load", "measured"), ("nearest", "round"), ("bar", bar), ("weight", weight)];
        let report = evaluate("kettle", pairs).unwrap();
        let figure = report.figures.iter().find(|figure| figure.name == "Zinc on the parts").unwrap();
        match figure.value {
            kettle_barrel::calculator::Value::One(one) => one.unit.symbol,
            _ => panic!(),
        }
    };
    for (bar, weight, symbol) in [
        ("0.5 in", "100 kg", "lb"),
        ("12 mm", "220 lb", "lb"),
        ("0.5 in", "220 lb", "lb"),
        ("12 mm", "100 kg", "kg"),
    ] {
        assert_eq!(unit(bar, weight), symbol, "{bar}, {weight}");
    }
}
