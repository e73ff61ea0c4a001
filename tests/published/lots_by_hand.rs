//! Lots worked by hand, with every outcome, by the rules of the standards: A153 (average of the specimens
//! and every specimen), F2329 (production and batch), ISO 10684 and AS/NZS 1214 (local 40, batch 50 µm),
//! ISO 1461, B695 (no average allowed), ISO 4042 (batch average between two limits).

use kettle_barrel::calculator::{Report, evaluate};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

fn check(pairs: &[(&str, &str)]) -> Report {
    evaluate("lot", pairs.iter().copied()).unwrap_or_else(|problems| panic!("{pairs:?}: {problems}"))
}

fn decision(pairs: &[(&str, &str)]) -> String {
    let headline = check(pairs).headline;
    headline.split(':').next().unwrap().to_owned()
}

/// Standard, class, lot, readings, gauge; outcome.
#[test]
fn every_outcome_of_every_standard() {
    for (standard, class, lot, readings, gauge, expected) in [
        // Class C: average 53, every specimen 43. Sum 53 + 52 + 54 = 159, mean exactly 53.
        ("a153", "class-c", "100", "53; 52; 54", "", "Accept"),
        ("a153", "class-c", "100", "53; 52; 54", "0.5", "Not decided"),
        ("a153", "class-c", "100", "53; 52; 53.7", "", "Measure again"),
        ("a153", "class-c", "100", "42.9; 70; 70", "", "Measure again"),
        // One specimen reads 43 on the mean of 40 and 46.
        ("a153", "class-c", "100", "40 46; 60; 60", "", "Accept"),
        ("a153", "class-c", "501", "60; 60; 60", "", "Not decided"),
        ("a153", "class-c", "3", "60; 61; 62", "", "Accept"),
        ("a153", "class-d", "100", "43; 43; 43", "", "Accept"),
        // Over 3/8 in: production lot 0.0020 in, batch and specimen 0.0017 in.
        ("f2329-lot", "over-3-8-in", "900", "0.0020; 0.0019; 0.0021 in", "", "Accept"),
        ("f2329-lot", "over-3-8-in", "900", "0.0019; 0.0019; 0.0021 in", "", "Reject"),
        ("f2329-lot", "over-3-8-in", "900", "0.0016; 0.0030; 0.0030 in", "", "Reject"),
        ("f2329-batch", "over-3-8-in", "100", "0.0018; 0.0017 in", "", "Accept"),
        ("f2329-batch", "over-3-8-in", "100", "0.0018 in", "", "Not decided"),
        ("f2329-batch", "3-8-in-and-under", "20", "0.0015 in", "", "Accept"),
        ("f2329-batch", "3-8-in-and-under", "20", "0.0014 in", "", "Reject"),
        ("iso10684", "", "500", "50; 49; 51", "", "Accept"),
        ("iso10684", "", "500", "49; 49; 51", "", "Reject"),
        ("iso10684", "", "500", "39; 60; 60", "", "Reject"),
        ("iso10684", "", "500", "40 41; 60; 60", "1", "Not decided"),
        ("iso1461", "threads-over-6-mm", "300", "40; 55; 55", "", "Accept"),
        ("iso1461", "threads-over-6-mm", "300", "39; 60; 60", "", "Measure again"),
        ("iso1461", "steel-over-6-mm", "300", "84; 85; 86", "", "Accept"),
        // Class 55 is 53 µm, and a mean above it does not help a thin place.
        ("b695", "class-55", "300", "53 54; 60 70", "", "Accept"),
        ("b695", "class-55", "300", "52 90; 60 70", "", "Reject"),
        ("b695", "class-55", "300", "53.4; 60", "0.5", "Not decided"),
        // Nominal 8: local 8, batch average 7 to 10.
        ("iso4042", "nominal-8", "300", "8.2; 9.6; 8.9", "", "Accept"),
        ("iso4042", "nominal-8", "300", "10.5; 9.9; 10.2", "", "Reject"),
        ("iso4042", "nominal-8", "300", "7.9; 9; 9", "", "Reject"),
        ("iso4042", "nominal-8", "300", "9.8; 9.9; 9.7", "0.5", "Not decided"),
    ] {
        let class_field = standard.split('-').next().unwrap();
        let mut pairs = vec![("standard", standard), ("lot", lot), ("readings", readings), ("gauge", gauge)];
        if !class.is_empty() {
            pairs.push((class_field, class));
        }
        assert_eq!(decision(&pairs), expected, "{standard} {class} {readings} ±{gauge}");
    }
}

/// A153: two more sets of three, each on its own. ISO 1461: twice the articles, together.
#[test]
fn the_retest_decides() {
    let a153 = |readings| decision(&[("lot", "100"), ("stage", "retest"), ("readings", readings)]);
    assert_eq!(a153("53; 52; 54; 60; 61; 62"), "Accept");
    // The mean of all six is 56.8, but the first set alone has 52.
    assert_eq!(a153("52; 51; 53; 60; 61; 64"), "Reject");
    assert_eq!(a153("60; 61; 62; 63"), "Not decided");
    let iso1461 = |readings| {
        decision(&[("standard", "iso1461"), ("lot", "300"), ("stage", "retest"), ("readings", readings)])
    };
    assert_eq!(iso1461("49; 49; 49; 51; 51; 51"), "Accept");
    assert_eq!(iso1461("49; 49; 49; 49; 51; 51"), "Reject");
    let uneven = evaluate("lot", [("lot", "100"), ("stage", "retest"), ("readings", "60; 61; 62")]);
    assert!(uneven.unwrap_err().to_string().contains("cannot be cut into them"));
}

/// ASTM E29: 52.5 rounds to the even 52, 53.5 to 54; as they are, 52.6 misses 53.
#[test]
fn rounding_to_the_digits_of_the_limit() {
    let rounded = |readings| decision(&[("lot", "100"), ("rounding", "limit"), ("readings", readings)]);
    assert_eq!(rounded("52.6; 52.6; 52.6"), "Accept");
    assert_eq!(rounded("52.5; 52.5; 52.5"), "Measure again");
    assert_eq!(decision(&[("lot", "100"), ("readings", "52.6; 52.6; 52.6")]), "Measure again");
    let own = |readings| {
        decision(&[
            ("standard", "own"),
            ("own_mean", "54 µm"),
            ("own_article", ""),
            ("rounding", "limit"),
            ("readings", readings),
        ])
    };
    assert_eq!(own("53.5; 53.5"), "Accept");
    assert_eq!(own("53.4; 53.4"), "Reject");
}

/// Articles 50, 52, 54, 56, 58: mean 54, sum of squares 40, s = sqrt(10) = 3.162; with t = 2.132 the
/// bound is 54 − 2.132 · 3.162 / 2.236 = 50.985.
#[test]
fn the_bound_on_the_mean_by_hand() {
    let report = check(&[("standard", "iso10684"), ("readings", "50; 52; 54; 56; 58")]);
    let shown = |symbol: &str| {
        let figure = report.figures.iter().find(|figure| figure.symbol == symbol).unwrap();
        figure.value.to_string().replace('\u{a0}', " ")
    };
    assert_eq!(shown("m"), "54.0 µm");
    assert_eq!(shown("s"), "3.16 µm");
    assert_eq!(shown("L"), "51.0 µm");
    assert_eq!(shown("d_m"), "4.0 µm");
    assert_eq!(shown("d_a"), "10.0 µm");
}

/// A sample as the order agrees it takes the place of the table.
#[test]
fn an_agreed_sample_replaces_the_table() {
    let pairs = [("lot", "20000"), ("readings", "60; 61; 62; 60")];
    assert_eq!(decision(&pairs), "Not decided");
    let agreed = [pairs[0], pairs[1], ("agreed", "4")];
    assert_eq!(decision(&agreed), "Accept");
}
