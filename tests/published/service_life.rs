//! The service life as its user sees it: 43, 50 and 85 µm by ISO 14713-1 and ISO 9224 (computed by their
//! formulas), and where years are not given.

use kettle_barrel::calculator::{Report, Value, Verdict, evaluate};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

fn life(pairs: &[(&str, &str)]) -> Report {
    evaluate("life", pairs.iter().copied()).unwrap_or_else(|problems| panic!("{pairs:?}: {problems}"))
}

/// Thickness, category; years by ISO 14713-1, by ISO 9224 with 0.873, with 0.813.
#[test]
fn years_by_category() {
    for (thickness, category, ranges) in [
        ("43 µm", "C3", ["20.5 to 61.4", "31.4 to 100", "39.5 to 128"]),
        ("50 µm", "C4", ["11.9 to 23.8", "17.1 to 37.0", "21.0 to 46.7"]),
        ("85 µm", "C5", ["10.1 to 20.2", "14.2 to 31.0", "17.2 to 39.0"]),
    ] {
        let report = life(&[("thickness", thickness), ("category", category)]);
        for (section, range) in report.sections.iter().zip(ranges) {
            let years = section.figures[0].value.to_string().replace('\u{a0}', " ");
            assert_eq!(years, format!("{range} years"), "{thickness} {category} {}", section.title);
        }
    }
}

/// 4.2 µm a year for 15 years are 63 µm.
#[test]
fn thickness_for_the_years_wanted_and_the_verdict() {
    let verdict = |thickness: &str| life(&[("thickness", thickness), ("years", "15")]).verdict;
    assert_eq!(verdict("63 µm"), Some(Verdict::Suits));
    assert_eq!(verdict("62 µm"), Some(Verdict::OnConditions));
    assert_eq!(verdict("31 µm"), Some(Verdict::RuledOut));
    let report = life(&[("thickness", "31 µm"), ("years", "15")]);
    let needed = report.figures.iter().find(|figure| figure.symbol == "D").unwrap();
    assert!(matches!(needed.value, Value::One(shown) if shown.digits() == "63.0"));
}

#[test]
fn outside_open_air_the_document_to_read_is_named() {
    for (surroundings, document) in [
        ("indoors", "ISO 11844-1"),
        ("soil", "EN 12501"),
        ("water", "EN 12502-3"),
        ("concrete", "ISO 14657"),
        ("other-metal", "PD 6484"),
        ("acid-wood", "EN 1995-1-1"),
    ] {
        let problems = evaluate("life", [("surroundings", surroundings)]).unwrap_err().to_string();
        assert!(problems.contains("does not cover") && problems.contains(document), "{problems}");
    }
}
