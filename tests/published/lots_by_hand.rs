//! Lots worked by hand, with every outcome, by the rules of the standards: A153 (average of the specimens
//! and every specimen), F2329 (production and batch), ISO 10684 and AS/NZS 1214 (local 40, batch 50 µm),
//! ISO 1461, B695 (no average allowed), ISO 4042 (batch average between two limits).

use kettle_barrel::calculator::{Picture, Report, evaluate};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

fn check(pairs: &[(&str, &str)]) -> Report {
    evaluate("lot", pairs.iter().copied()).unwrap_or_else(|problems| panic!("{pairs:?}: {problems}"))
}

fn decision(pairs: &[(&str, &str)]) -> String {
    let headline = check(pairs).headline;
    headline.split(':').next().unwrap().to_owned()
}

/// Whether a finding says so.
fn told(report: &Report, text: &str) -> bool {
    report.findings.iter().any(|finding| finding.text.replace('\u{a0}', " ").contains(text))
}

/// Five equal readings on each article, which is what ASTM A153 and F2329 want of a magnetic gauge.
fn five(articles: &[&str], unit: &str) -> String {
    let line = |reading: &&str| [*reading; 5].join(" ");
    format!("{} {unit}", articles.iter().map(line).collect::<Vec<_>>().join("\n"))
}

/// Standard, class, lot, articles agreed, readings, gauge; outcome.
#[test]
fn every_outcome_of_every_standard() {
    let um = |articles: &[&str]| five(articles, "µm");
    let inch = |articles: &[&str]| five(articles, "in");
    for (standard, class, lot, agreed, readings, gauge, expected) in [
        // Class C: average 53, every specimen 43. Sum 53 + 52 + 54 = 159, mean exactly 53.
        ("a153", "class-c", "100", "", um(&["53", "52", "54"]), "", "Accept"),
        ("a153", "class-c", "100", "", um(&["53", "52", "54"]), "0.5", "Not decided"),
        ("a153", "class-c", "100", "", um(&["53", "52", "53.7"]), "", "Measure again"),
        ("a153", "class-c", "100", "", um(&["42.9", "70", "70"]), "", "Measure again"),
        // One specimen is 43 on the mean of its five.
        (
            "a153",
            "class-c",
            "100",
            "",
            "40 46 43 42 44\n60 60 60 60 60\n60 60 60 60 60".to_owned(),
            "",
            "Accept",
        ),
        ("a153", "class-c", "501", "", um(&["60", "60", "60"]), "", "Not decided"),
        ("a153", "class-c", "3", "", um(&["60", "61", "62"]), "", "Accept"),
        ("a153", "class-d", "100", "", um(&["43", "43", "43"]), "", "Accept"),
        // Over 3/8 in: production lot 0.0020 in, batch and specimen 0.0017 in.
        ("f2329-lot", "over-3-8-in", "900", "3", inch(&["0.0020", "0.0019", "0.0021"]), "", "Accept"),
        ("f2329-lot", "over-3-8-in", "900", "3", inch(&["0.0019", "0.0019", "0.0021"]), "", "Reject"),
        ("f2329-lot", "over-3-8-in", "900", "3", inch(&["0.0016", "0.0030", "0.0030"]), "", "Reject"),
        ("f2329-batch", "over-3-8-in", "100", "", inch(&["0.0018", "0.0017"]), "", "Accept"),
        ("f2329-batch", "over-3-8-in", "100", "", inch(&["0.0018"]), "", "Not decided"),
        ("f2329-batch", "3-8-in-and-under", "20", "", inch(&["0.0015"]), "", "Accept"),
        ("f2329-batch", "3-8-in-and-under", "20", "", inch(&["0.0014"]), "", "Reject"),
        ("iso10684", "", "500", "3", um(&["50", "49", "51"]), "", "Accept"),
        ("iso10684", "", "500", "3", um(&["49", "49", "51"]), "", "Reject"),
        ("iso10684", "", "500", "3", um(&["39", "60", "60"]), "", "Reject"),
        (
            "iso10684",
            "",
            "500",
            "3",
            "40 41 40 41 40; 60 60 60 60 60; 60 60 60 60 60".to_owned(),
            "1",
            "Not decided",
        ),
        // Parts too small for five readings: one on each of five.
        ("iso10684", "", "500", "5", "50; 49; 51; 50; 50".to_owned(), "", "Accept"),
        ("iso10684", "", "500", "4", "50; 49; 51; 50".to_owned(), "", "Not decided"),
        ("iso1461", "threads-over-6-mm", "300", "", "40; 55; 55".to_owned(), "", "Accept"),
        ("iso1461", "threads-over-6-mm", "300", "", "39; 60; 60".to_owned(), "", "Measure again"),
        ("iso1461", "steel-over-6-mm", "300", "", "84; 85; 86".to_owned(), "", "Accept"),
        // Class 55 is 53 µm, and a mean above it does not help a thin place.
        ("b695", "class-55", "300", "2", "53 54; 60 70".to_owned(), "", "Accept"),
        ("b695", "class-55", "300", "2", "52 90; 60 70".to_owned(), "", "Reject"),
        ("b695", "class-55", "300", "2", "53.4; 60".to_owned(), "0.5", "Not decided"),
        // Nominal 8: local 8, batch average 7 to 10.
        ("iso4042", "nominal-8", "300", "3", "8.2; 9.6; 8.9".to_owned(), "", "Accept"),
        ("iso4042", "nominal-8", "300", "3", "10.5; 9.9; 10.2".to_owned(), "", "Reject"),
        ("iso4042", "nominal-8", "300", "3", "7.9; 9; 9".to_owned(), "", "Reject"),
        ("iso4042", "nominal-8", "300", "3", "9.8; 9.9; 9.7".to_owned(), "0.5", "Not decided"),
    ] {
        let class_field = standard.split('-').next().unwrap();
        let mut pairs = vec![
            ("standard", standard),
            ("lot", lot),
            ("agreed", agreed),
            ("readings", readings.as_str()),
            ("gauge", gauge),
        ];
        if !class.is_empty() {
            pairs.push((class_field, class));
        }
        assert_eq!(decision(&pairs), expected, "{standard} {class} {readings} ±{gauge}");
    }
}

/// One good reading never accepts a lot whose sample is not known here, nor an article half measured.
#[test]
fn accept_is_never_given_on_too_little() {
    for standard in ["b695", "iso10684", "iso4042", "f2329-lot"] {
        let readings = if standard == "iso4042" { "9" } else { "90" };
        let report = check(&[("standard", standard), ("lot", "100000"), ("readings", readings)]);
        assert!(report.headline.starts_with("Not decided: the number of articles"), "{}", report.headline);
        let agreed = [("standard", standard), ("lot", "100000"), ("readings", readings), ("agreed", "2")];
        assert!(check(&agreed).headline.starts_with("Not decided: 1 article still"), "{standard}");
    }
    for (standard, lot) in [("a153", "100"), ("f2329-batch", "60")] {
        let report = check(&[("standard", standard), ("lot", lot), ("readings", "60 61; 62 60; 61 63")]);
        assert!(report.headline.starts_with("Not decided: 3 articles with too few"), "{}", report.headline);
    }
    // A mean that falls short is no verdict before the sample is whole; a single low article is one.
    assert_eq!(decision(&[("lot", "100"), ("readings", "50 50 50 50 50")]), "Not decided");
    assert_eq!(decision(&[("lot", "100"), ("readings", "40 40 40 40 40")]), "Measure again");
    assert_eq!(decision(&[("lot", "100"), ("readings", "40")]), "Not decided");
    // Every piece measured is enough, whatever a plan would want.
    assert_eq!(decision(&[("standard", "b695"), ("lot", "2"), ("readings", "60; 61")]), "Accept");
}

/// A plan of ASTM B602 as entered: 8 articles of which none may miss, 20 of which 1 may.
#[test]
fn the_acceptance_number_of_a_plan_is_kept() {
    let plan = |allowed, thin: usize| {
        let readings = [vec!["50"; thin], vec!["60"; 20 - thin]].concat().join("\n");
        decision(&[
            ("standard", "b695"),
            ("lot", "90"),
            ("agreed", "20"),
            ("allowed", allowed),
            ("readings", &readings),
        ])
    };
    assert_eq!((plan("", 0), plan("", 1)), ("Accept".to_owned(), "Reject".to_owned()));
    assert_eq!((plan("1", 1), plan("1", 2)), ("Accept".to_owned(), "Reject".to_owned()));
    let alone = evaluate("lot", [("standard", "b695"), ("allowed", "1"), ("readings", "60")]);
    assert!(alone.unwrap_err().to_string().contains("enter the number of articles of the plan"));
    let all = evaluate("lot", [("standard", "b695"), ("allowed", "3"), ("agreed", "3"), ("readings", "60")]);
    assert!(all.unwrap_err().to_string().contains("fewer than 3"));
}

/// A153: two more sets of three, each on its own. ISO 1461: twice the articles, together.
#[test]
fn the_retest_decides() {
    let a153 = |articles: &[&str]| {
        decision(&[("lot", "100"), ("stage", "retest"), ("readings", &five(articles, "µm"))])
    };
    assert_eq!(a153(&["53", "52", "54", "60", "61", "62"]), "Accept");
    // The mean of all six is 56.8, but the first set alone has 52.
    assert_eq!(a153(&["52", "51", "53", "60", "61", "64"]), "Reject");
    assert_eq!(a153(&["60", "61", "62", "63"]), "Not decided");
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
    let pairs = |rounding, readings| {
        [
            ("standard", "iso1461"),
            ("iso1461", "spun-3-mm-and-over"),
            ("lot", "100"),
            ("rounding", rounding),
            ("readings", readings),
        ]
    };
    // Spun articles: mean 55 µm.
    let rounded = |readings| decision(&pairs("limit", readings));
    assert_eq!(rounded("54.6; 54.6; 54.6"), "Accept");
    assert_eq!(rounded("54.4; 54.4; 54.4"), "Measure again");
    assert_eq!(decision(&pairs("absolute", "54.6; 54.6; 54.6")), "Measure again");
    let report = check(&pairs("limit", "54.6; 54.6; 54.6"));
    let said = report.findings[0].text.replace('\u{a0}', " ");
    assert!(
        said.starts_with(
            "Lot mean 54.6 µm rounds to 55 µm, which meets 55 µm; as it is, it is 0.4 µm short."
        ),
        "{said}"
    );
    let own = |limit, readings| {
        decision(&[
            ("standard", "own"),
            ("lot", "2"),
            ("own_mean", limit),
            ("own_article", ""),
            ("rounding", "limit"),
            ("readings", readings),
        ])
    };
    assert_eq!(own("54 µm", "53.5; 53.5"), "Accept");
    assert_eq!(own("54 µm", "53.4; 53.4"), "Reject");
    assert_eq!(own("52 µm", "51.5; 51.5"), "Accept");
    assert_eq!(own("53 µm", "52.5; 52.5"), "Reject");
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

/// Nothing is said of an unknown mean where every piece was measured, nor a bound below zero.
#[test]
fn a_bound_is_given_only_where_it_says_something() {
    let bound = |lot, readings| {
        let report =
            check(&[("standard", "own"), ("own_mean", "50 µm"), ("lot", lot), ("readings", readings)]);
        let figure = report.figures.iter().any(|figure| figure.symbol == "L");
        let note = report.notes.iter().map(|note| note.text.to_string()).collect::<Vec<_>>().join(" ");
        (figure, note)
    };
    let (figure, note) = bound("3", "50; 52; 54");
    assert!(!figure && note.contains("The whole lot was measured"), "{note}");
    let (figure, note) = bound("900", "5; 90");
    // 47.5 − 6.3138 × 60.10 / sqrt 2.
    assert!(!figure && note.contains("comes out at −220.8\u{a0}µm"), "{note}");
    assert!(note.contains("say nothing of the lot's mean"), "{note}");
    assert!(bound("900", "50; 52; 54").0);
}

/// A sample as the order agrees it takes the place of the table.
#[test]
fn an_agreed_sample_replaces_the_table() {
    let readings = five(&["60", "61", "62", "60"], "µm");
    let pairs = [("lot", "20000"), ("readings", readings.as_str())];
    assert_eq!(decision(&pairs), "Not decided");
    let agreed = [pairs[0], pairs[1], ("agreed", "4")];
    assert_eq!(decision(&agreed), "Accept");
}

/// 2.7 mil is 0.0027 in, which is what class 70 prints beside 69 µm; 1.4 mil is what class D prints.
#[test]
fn readings_are_compared_in_the_unit_that_is_printed() {
    let b695 = |readings| {
        decision(&[("standard", "b695"), ("b695", "class-70"), ("lot", "1"), ("readings", readings)])
    };
    assert_eq!(b695("2.7 mil"), "Accept");
    assert_eq!(b695("0.0027 in"), "Accept");
    assert_eq!(b695("2.69 mil"), "Reject");
    assert_eq!(b695("68.6 µm"), "Reject");
    let own = |limit, readings| {
        decision(&[
            ("standard", "own"),
            ("own_mean", ""),
            ("own_article", limit),
            ("lot", "1"),
            ("readings", readings),
        ])
    };
    assert_eq!(own("1.4 mil", "1.4 mil"), "Accept");
    assert_eq!(own("1.4 mil", "1.39 mil"), "Reject");
    // Stripped and weighed: 360 g/m² is printed by ISO 1461 beside 50 µm.
    let mass = |readings| {
        decision(&[("standard", "iso1461"), ("lot", "3"), ("method", "strip"), ("readings", readings)])
    };
    assert_eq!(mass("360; 362; 358 g/m²"), "Accept");
    assert_eq!(mass("360; 361; 358 g/m²"), "Measure again");
    let report = check(&[
        ("standard", "own"),
        ("own_mean", "2 mil"),
        ("own_article", ""),
        ("lot", "1"),
        ("readings", "2.1 mil"),
    ]);
    assert!(report.headline.contains("lot mean 2.10\u{a0}mil (least 2\u{a0}mil)"), "{}", report.headline);
}

/// ASTM A153, Table 1: average and individual of every class, in both columns of mass. What weighs as much
/// as the limit keeps it.
#[test]
fn a_mass_that_is_the_limit_keeps_it() {
    for (class, ounces, grams) in [
        ("class-a", ["2.00", "1.80"], ["610", "550"]),
        ("class-b-1", ["2.00", "1.80"], ["610", "550"]),
        ("class-b-2", ["1.50", "1.25"], ["458", "381"]),
        ("class-b-3", ["1.30", "1.10"], ["397", "336"]),
        ("class-c", ["1.25", "1.00"], ["381", "305"]),
        ("class-d", ["1.00", "0.85"], ["305", "259"]),
    ] {
        for ([average, individual], more, unit) in [(ounces, "5", "oz/ft²"), (grams, "900", "g/m²")] {
            let lot = |readings: &[&str]| {
                let readings = five(readings, unit);
                decision(&[("standard", "a153"), ("a153", class), ("lot", "100"), ("readings", &readings)])
            };
            assert_eq!(lot(&[average; 3]), "Accept", "{class}, average of {average} {unit}");
            assert_eq!(lot(&[individual, more, more]), "Accept", "{class}, one of {individual} {unit}");
        }
    }
}

/// ASTM A153, class D: an average of 43 µm, 1.7 mil, 1.00 oz/ft² or 305 g/m². A lot mean that is the limit
/// in its own column is as likely above it as below.
#[test]
fn the_confidence_is_that_of_the_limit_in_its_column() {
    for (readings, unit) in [
        (["42", "43", "44"], "µm"),
        (["1.6", "1.7", "1.8"], "mil"),
        (["0.90", "1.00", "1.10"], "oz/ft²"),
        (["290", "305", "320"], "g/m²"),
    ] {
        let readings = five(&readings, unit);
        let report = check(&[("a153", "class-d"), ("lot", "100"), ("readings", &readings)]);
        let reached = report.figures.iter().find(|figure| figure.name.contains("reaches its limit")).unwrap();
        assert_eq!(reached.value.to_string(), "50.0\u{a0}%", "{unit}");
    }
}

/// One reading of 9 µm among 58: the article passes on its mean, and the reading is pointed out.
#[test]
fn a_reading_far_off_its_article_is_pointed_out() {
    let report = check(&[("lot", "3"), ("readings", "70 71 69 72 9\n60 61 62 60 61\n60 61 62 60 61")]);
    let far = report.findings.iter().find(|finding| finding.text.contains("article 1, reading 5")).unwrap();
    assert!(far.text.contains("9.0\u{a0}µm lies far from the 70.5\u{a0}µm"), "{}", far.text);
    assert!(report.findings.iter().all(|finding| !finding.text.contains("article 2, reading")));
}

/// One slip of 190 µm among four readings of 45 lifts a mean that falls short (45.0 and 45.4 and 50.2 make
/// 46.9): with it 56.5. Nothing is decided on a reading that was pointed out, or on lines pasted twice.
#[test]
fn nothing_is_decided_on_what_is_in_doubt() {
    let own = |readings: &str, agreed: &str| {
        let limits = [("standard", "own"), ("own_mean", "50 µm"), ("own_article", "40 µm"), ("lot", "300")];
        let told = [("agreed", agreed), ("readings", readings)];
        check(&[limits.as_slice(), &told].concat())
    };
    for (readings, agreed) in [
        ("45 46 44 45 190\n45 46 44 45 47\n50 51 52 50 48", "3"),
        ("45; 46; 44; 45; 190", "5"),
        // Passes only because of a slip downwards that is measured again.
        ("57 58 56 57 9\n50 51 50 51 50\n50 52 51 49 52", "3"),
        ("60 61 62\n45 44 46\n60 61 62", "3"),
    ] {
        let report = own(readings, agreed);
        assert!(report.headline.starts_with("Not decided: it hangs on"), "{readings}: {}", report.headline);
        assert!(report.findings.iter().any(|finding| finding.text.starts_with("The outcome hangs on")));
    }
    // Where it changes nothing, the lot is decided, and the reading is still pointed out.
    let report = own("60 61 62 60 90\n60 61 62 61 60\n60 61 60 62 61", "3");
    assert!(report.headline.starts_with("Accept"), "{}", report.headline);
    assert!(report.findings.iter().any(|finding| finding.text.contains("article 1, reading 5")));
    let report = own("60; 61; 62; 60", "3");
    assert!(report.findings.iter().any(|finding| finding.text.contains("more than the 3 of the sample")));
}

/// 50.79 µm is 1.9996 mil: shown as 2.00 mil it would miss 0.0020 in by nothing.
#[test]
fn a_miss_is_shown_with_the_digits_that_tell_it() {
    let readings = five(&["1.9996", "1.9996", "1.9996"], "mil");
    let pairs = [("standard", "f2329-lot"), ("lot", "900"), ("agreed", "3"), ("readings", readings.as_str())];
    let report = check(&pairs);
    assert!(report.headline.contains("lot mean 1.9996\u{a0}mil"), "{}", report.headline);
    let miss = report.findings.iter().find(|finding| finding.text.contains("misses the least")).unwrap();
    assert!(miss.text.contains("by 0.0004\u{a0}mil"), "{}", miss.text);
}

/// A mass that stands exactly at the printed limit meets it: 1.25 oz/ft², 610, 397, 381, 395, 575 g/m² once
/// fell short by the last bit of a division (A153-16 Table 1, ISO 1461:2009 Tables 3 and 4).
#[test]
fn a_mass_at_its_printed_limit_meets_it() {
    use kettle_barrel::coat::class;
    use kettle_barrel::quantity::{Quantity, unit};
    use kettle_barrel::source::document;
    for (standard, field, classes) in [
        ("a153", "a153", class::of(&document::ASTM_A153)),
        ("iso1461", "iso1461", class::of(&document::ISO_1461)),
    ] {
        for class in classes {
            let limit = class.average.unwrap();
            let grams = limit.mass.map(|mass| mass.show(&unit::G_M2, 0));
            for at in [grams, limit.mass_oz].into_iter().flatten() {
                let words =
                    class.name.split(|c: char| !c.is_ascii_alphanumeric()).filter(|word| !word.is_empty());
                let key = words.map(str::to_ascii_lowercase).collect::<Vec<_>>().join("-");
                let readings = format!("{0}; {0}; {0} {1}", at.number, at.unit.symbol);
                let decision = decision(&[
                    ("standard", standard),
                    (field, &key),
                    ("lot", "100"),
                    ("agreed", "3"),
                    ("method", "strip"),
                    ("readings", &readings),
                ]);
                assert_eq!(decision, "Accept", "{standard} {key} {readings}");
            }
        }
    }
}

/// One record: what is seen and tried beside the thickness rejects a lot of good thickness.
#[test]
fn one_record_holds_everything_inspected() {
    let readings = five(&["60", "61", "62"], "µm");
    let with = |name, found| check(&[("lot", "100"), ("readings", readings.as_str()), (name, found)]);
    let report = with("adhesion", "reject");
    assert!(report.headline.starts_with("Reject: adhesion rejected"), "{}", report.headline);
    assert!(with("adhesion", "accept").headline.starts_with("Accept: lot mean"));
    let open = with("appearance", "accept").findings;
    assert!(open.iter().any(|finding| finding.text.starts_with("Adhesion: not done. Push the point")));
    let places = |standard, part: &str| {
        let report = check(&[("standard", standard), ("readings", "60")]);
        let section =
            report.sections.into_iter().find(|section| section.title == "Where to measure").unwrap();
        section.figures.iter().any(|figure| figure.value.to_string().contains(part))
    };
    assert!(places("iso10684", "top of the head"));
    assert!(places("a153", "plain shank"));
    assert!(places("b695", "bleed rust"));
}

/// The lot of a delivery from start to end, for anybody to redo: 400 bolts of 1/2 in, hot-dip, class C of
/// ASTM A153. A lot of 4 to 500 wants 3 articles, five readings on each:
/// 55 57 54 58 56: sum 280, mean 56.0
/// 53 56 57 55 54: sum 275, mean 55.0
/// 58 54 56 57 60: sum 285, mean 57.0
/// Lot mean (56 + 55 + 57) / 3 = 56.0, above its least of 53 by 3.0; least article 55.0, above its 43 by
/// 12.0. Squares: 0 + 1 + 1 = 2, s = sqrt(2 / 2) = 1.00; t at 95 % and 2 degrees of freedom is 2.920, so
/// the mean of the whole lot is at least 56.0 − 2.920 · 1.00 / 1.732 = 54.3 µm.
#[test]
fn a_lot_from_start_to_end() {
    let about = kettle_barrel::calculator::find("lot").unwrap().about;
    let example = about.examples.iter().find(|one| one.title.contains("summary")).unwrap();
    let report = check(example.pairs);
    let shown = |symbol: &str| {
        let figure = report.figures.iter().find(|figure| figure.symbol == symbol).unwrap();
        figure.value.to_string().replace('\u{a0}', " ")
    };
    assert!(report.headline.starts_with("Accept"), "{}", report.headline);
    for (symbol, expected) in [
        ("n", "3 pcs"),
        ("m", "56.0 µm"),
        ("s", "1.00 µm"),
        ("L", "54.3 µm"),
        ("d_m", "3.0 µm"),
        ("d_a", "12.0 µm"),
    ] {
        assert_eq!(shown(symbol), expected, "{symbol}");
    }
    let read = report
        .sections
        .iter()
        .find(|section| section.title.starts_with("Pasted as read: the columns"))
        .unwrap();
    let columns: Vec<String> = read.figures.iter().map(|figure| figure.value.to_string()).collect();
    assert!(
        columns[0].starts_with("left out: it numbers") && columns[1].starts_with("left out: dates"),
        "{columns:?}"
    );
    assert!(columns[2..].iter().all(|column| column.starts_with("readings in µm")), "{columns:?}");
}

/// Stripping and weighing gives a mass: bare numbers once were micrometres, and 205 g/m², 28 µm, was accepted.
#[test]
fn a_stripped_coat_without_a_unit_is_asked() {
    let of = |readings| {
        let pairs = [("standard", "iso10684"), ("lot", "100"), ("agreed", "3"), ("method", "strip")];
        evaluate("lot", pairs.into_iter().chain([("readings", readings)]))
    };
    let asked = of("200\n205\n210").unwrap_err().to_string();
    assert!(asked.contains("g/m² or oz/ft²"), "{asked}");
    assert!(of("200 g/m²\n205\n210").unwrap().headline.starts_with("Reject"));
    assert!(of("52 µm\n53\n54").unwrap().headline.starts_with("Accept"));
}

/// Where the document's rule for a second go is not known here, it accepts nothing.
#[test]
fn a_retest_without_a_known_rule_accepts_nothing() {
    for (standard, readings) in [
        ("b695", "54\n55\n56"),
        ("iso10684", "54 54 54 54 54\n55 55 55 55 55\n56 56 56 56 56"),
        ("iso4042", "8.2\n9\n9"),
        ("f2329-lot", "54 54 54 54 54\n55 55 55 55 55\n56 56 56 56 56"),
    ] {
        let of = |stage| {
            check(&[
                ("standard", standard),
                ("lot", "100"),
                ("agreed", "3"),
                ("stage", stage),
                ("readings", readings),
            ])
        };
        assert!(of("first").headline.starts_with("Accept"), "{standard}");
        let second = of("retest");
        let says = "Not decided: the retest rule of the document is not known here";
        assert!(second.headline.starts_with(says), "{standard}: {}", second.headline);
    }
    let thin = check(&[("standard", "b695"), ("agreed", "1"), ("stage", "retest"), ("readings", "40")]);
    assert!(thin.headline.starts_with("Reject"), "{}", thin.headline);
}

/// ASTM A153 6.2, ISO 1461 Table 1, ASTM F2329 Table 1 and ASTM F1470: every article measured conforms.
#[test]
fn no_acceptance_number_where_the_document_has_none() {
    let with = |standard, allowed| {
        let readings = "60 60 60 60 60\n60 60 60 60 60\n60 60 60 60 60";
        evaluate(
            "lot",
            [
                ("standard", standard),
                ("lot", "100"),
                ("agreed", "3"),
                ("allowed", allowed),
                ("readings", readings),
            ],
        )
    };
    for standard in ["a153", "iso1461", "f2329-batch", "f2329-lot"] {
        let refused = with(standard, "1").unwrap_err().to_string();
        assert!(refused.contains("every article has to keep its limits"), "{standard}: {refused}");
        assert!(with(standard, "0").is_ok() && with(standard, "").is_ok());
    }
    for standard in ["b695", "iso10684", "iso4042"] {
        assert!(with(standard, "1").is_ok(), "{standard}");
    }
}

/// Fewer articles than the document's table wants are agreed only where it gives way to an agreement.
#[test]
fn the_documents_own_number_stands_or_is_told() {
    let of = |standard, lot, readings: &str| {
        check(&[("standard", standard), ("lot", lot), ("agreed", "1"), ("readings", readings)])
    };
    let report = of("iso1461", "5000", "60");
    assert!(report.headline.starts_with("Not decided: 12 articles still to measure"), "{}", report.headline);
    let report = of("f2329-batch", "500", "60 60 60 60 60");
    assert!(report.headline.starts_with("Not decided: 1 article still to measure"), "{}", report.headline);
    assert!(told(&report, "The document wants 2 pcs of this lot"), "{:?}", report.findings);
    let report = of("a153", "5000", "60 60 60 60 60");
    assert!(report.headline.starts_with("Accept"), "{}", report.headline);
    assert!(told(&report, "Where nothing else is agreed the sample of this lot is 13 pcs."));
}

/// Limit, percent and picture stand in the column that decides: B695 class 70 is 69 µm and 0.0027 in, A153
/// class C 1.25 oz/ft² as printed.
#[test]
fn the_picture_and_the_percent_are_of_the_column_that_decides() {
    let limit = |pairs: &[(&str, &str)]| match check(pairs).picture {
        Some(Picture::Dots { limits, .. }) => limits.iter().map(|mark| mark.at.number).next_back().unwrap(),
        other => panic!("{other:?}"),
    };
    let mils = [("standard", "b695"), ("b695", "class-70"), ("agreed", "1"), ("readings", "2.70 mil")];
    assert!((limit(&mils) - 2.7).abs() < 1e-9);
    let readings = "1.200 oz/ft² 1.2 1.2 1.2 1.2\n1.2 1.2 1.2 1.2 1.2\n1.2 1.2 1.2 1.2 1.2";
    let ounces = [("lot", "100"), ("readings", readings)];
    assert!((limit(&ounces) - 1.25).abs() < 1e-9);
    assert!(told(&check(&ounces), "1.00 oz/ft² by 0.200 oz/ft² (20.0 %)"));
}

/// What cannot be kept together is no pair of limits, and an example's limit is none of the order's.
#[test]
fn limits_of_the_order_that_contradict_each_other_are_refused() {
    let of = |pairs: &[(&'static str, &'static str)]| {
        let own = [("standard", "own"), ("agreed", "3"), ("readings", "41\n52\n53")];
        evaluate("lot", own.into_iter().chain(pairs.iter().copied()))
    };
    for pairs in [
        [("own_mean", "50"), ("own_greatest", "45")],
        [("own_article", "55"), ("own_mean", "50")],
        [("own_reading", "45"), ("own_article", "40")],
        [("own_reading", "45"), ("own_greatest", "40")],
    ] {
        let refused = of(&pairs).unwrap_err().to_string();
        assert!(refused.contains("correct one of the two"), "{refused}");
    }
    assert!(of(&[]).unwrap_err().to_string().contains("give at least one limit"));
    let alone = of(&[("own_article", "40")]).unwrap().headline;
    assert!(alone.starts_with("Accept: least article 41.0"), "{alone}");
}

/// A value that rounds to its limit is told with as many digits as show by how much it misses: 0.0017 in is
/// 43.18 µm.
#[test]
fn rounding_shows_by_how_much() {
    let readings = "43.17 43.17 43.17 43.17 43.17\n43.17 43.17 43.17 43.17 43.17";
    let report =
        check(&[("standard", "f2329-batch"), ("lot", "100"), ("rounding", "limit"), ("readings", readings)]);
    assert!(told(&report, "it is 0.01 µm short"), "{:?}", report.findings);
}

/// Listings of ASTM B695 differ in class 80.
#[test]
fn class_80_says_that_its_listings_differ() {
    let of = |class| check(&[("standard", "b695"), ("b695", class), ("agreed", "1"), ("readings", "90.2")]);
    let told = |report: Report| report.notes.iter().any(|note| note.text.contains("81 µm in another"));
    assert!(told(of("class-80")) && !told(of("class-55")));
}

/// Numbers on one line are one article, one on each line are articles: the headline says which was read.
#[test]
fn the_headline_says_how_many_were_read() {
    for (readings, said) in [
        ("52 48 51", "1 article with 3 readings"),
        ("52\n48\n51", "3 articles with 1 reading each"),
        ("52 48; 51 50", "2 articles with 2 readings each"),
        ("52 48 50; 51 50", "2 articles with 5 readings in all"),
    ] {
        let headline = check(&[("readings", readings), ("quantity", "300")]).headline;
        assert!(headline.ends_with(said), "{headline}");
    }
}
