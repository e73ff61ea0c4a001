//! The service life as its user sees it: 43, 50 and 85 µm by ISO 14713-1 and ISO 9224 (computed by their
//! formulas), and where years are not given.

use kettle_barrel::calculator::{Report, Value, Verdict, evaluate};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

fn life(pairs: &[(&str, &str)]) -> Report {
    evaluate("life", pairs.iter().copied()).unwrap_or_else(|problems| panic!("{pairs:?}: {problems}"))
}

/// Thickness, category; years by ISO 14713-1, by ISO 9224 with 0.873, with 0.813: shown as the order line shows
/// them, the least cut to tenths below twenty and to whole years above, the most rounded, and none beyond a
/// hundred. 43 / 2.1 = 20.48, 50 / 4.2 = 11.90, 85 / 8.4 = 10.12.
#[test]
fn years_by_category() {
    for (thickness, category, ranges) in [
        ("43 µm", "C3", ["20 to 61", "31 to over 100", "39 to over 100"]),
        ("50 µm", "C4", ["11.9 to 24", "17 to 37", "21 to 47"]),
        ("85 µm", "C5", ["10.1 to 20", "14.1 to 31", "17.2 to 39"]),
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
    let needed = report.figures.iter().find(|figure| figure.symbol == "D_w").unwrap();
    assert!(matches!(needed.value, Value::One(shown) if shown.digits() == "63.0"));
}

#[test]
fn outside_air_the_document_to_read_is_named() {
    for (surroundings, document) in [
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

/// ISO 9223, Table C.1 (read) describes rooms by the same categories: years are given indoors as well, and in
/// the mildest they are over a hundred, in every place where they stand.
#[test]
fn rooms_have_categories_and_the_mildest_over_a_hundred_years() {
    let report = life(&[("surroundings", "indoors"), ("category", "C1"), ("thickness", "50 µm")]);
    assert_eq!(report.headline.replace('\u{a0}', " "), "50.0 µm of zinc in C1: over 100 years");
    let years = report.figures.iter().find(|figure| figure.name.starts_with("Years of")).unwrap();
    assert_eq!(years.value.to_string(), "over 100 years");
    let places = report.sections.iter().find(|section| section.title == "Places of C1").unwrap();
    assert!(places.figures[0].value.to_string().contains("offices"));
    // The weather says nothing of a room.
    let weather = evaluate("life", [("surroundings", "indoors"), ("place", "climate")]).unwrap_err();
    assert!(weather.of("surroundings").is_some(), "{weather}");
}

/// Only who enters a least thickness is told of the thinnest place.
#[test]
fn the_thinnest_place_is_spoken_of_only_where_it_is_known() {
    let said = |pairs: &[(&str, &str)]| life(pairs).findings[0].text.to_string();
    let average = said(&[("thickness", "70 µm"), ("years", "15")]);
    assert!(average.contains("at its average thickness") && !average.contains("even where"), "{average}");
    let least = said(&[("thickness", "70 µm"), ("least", "64 µm"), ("years", "15")]);
    assert!(least.contains("even where it is thinnest"), "{least}");
}

/// A measured loss is known to ±5 % (ISO 9223, Table A.1, memory): 1.4 µm a year is 1.33 to 1.47, and
/// 84 µm last 84 / 1.47 = 57.1 to 84 / 1.33 = 63.2 years.
#[test]
fn a_measured_loss_has_its_uncertainty() {
    let report = life(&[("place", "rate"), ("rate", "1.4 µm/year"), ("thickness", "84 µm")]);
    assert_eq!(report.headline.replace('\u{a0}', " "), "84.0 µm of zinc in C3: 57 to 63 years");
}

/// The zinc in a porous deposit, 5.406 to 5.712 of 7.14 g/m² per µm: 53 µm are 40.1 to 42.4 µm of solid zinc,
/// which at C4 last 40.1 / 4.2 = 9.5 to 42.4 / 2.1 = 20.2 years.
#[test]
fn a_porous_deposit_is_counted_by_its_zinc_as_well() {
    let report = life(&[("category", "C4"), ("thickness", "53 µm")]);
    let way = report.sections.iter().find(|section| section.title.contains("by the zinc in it")).unwrap();
    let values: Vec<String> =
        way.figures.iter().map(|figure| figure.value.to_string().replace('\u{a0}', " ")).collect();
    assert_eq!(values, ["40.1 to 42.4 µm", "9.5 to 20 years"]);
}

/// 50 µm at the mean loss of 20 years in old heavy industry, 6.823 µm a year (computed), last 7.3 years.
#[test]
fn losses_of_many_years_stand_beside() {
    let report = life(&[("category", "C4"), ("thickness", "50 µm")]);
    let long = report.sections.iter().find(|section| section.title.contains("over many years")).unwrap();
    assert_eq!(long.figures[0].value.to_string().replace('\u{a0}', " "), "7.3 years");
    assert_eq!(long.figures.last().unwrap().value.to_string(), "over 100 years");
}

/// A trade association, read: one category harsher under cover near the coast; a building code, memory: coats of
/// bolts in treated wood, whose copper uses zinc up.
#[test]
fn cover_at_the_coast_and_treated_wood_are_told() {
    let report = kettle_barrel::calculator::evaluate("life", [("category", "C4")]).unwrap();
    let told = |words: &str| {
        let note =
            report.notes.iter().find(|note| note.text.contains(words)).unwrap_or_else(|| panic!("{words}"));
        note.source.unwrap().basis
    };
    use kettle_barrel::source::Basis::{Memory, Read};
    assert_eq!(told("no rain washes the salt off"), Read);
    assert_eq!(told("ASTM A153 class C, or ASTM B695 class 55"), Memory);
    let wood = kettle_barrel::calculator::evaluate("life", [("surroundings", "acid-wood")]);
    let said = wood.unwrap_err().to_string();
    assert!(said.contains("B695 class 55") && said.contains("EN 1995-1-1"), "{said}");
}
