//! Lots: the order of readings changes nothing, thicker readings never make the outcome worse, and any
//! text gives readings or a problem.

use kettle_barrel::calculator::evaluate;
use kettle_barrel::lot::{Comma, Reading, Readings, Statistics, student_t, student_t_share};
use kettle_barrel::quantity::{Density, Length, Unit, unit};
use proptest::prelude::*;

static UNITS: [&Unit; 2] = [&unit::UM, &unit::MIL];

/// Articles of one to four readings in tenths of a micrometre, near the limits of the standards.
fn articles() -> impl Strategy<Value = Vec<Vec<u32>>> {
    proptest::collection::vec(proptest::collection::vec(380..640u32, 1..5), 1..9)
}

fn written(articles: &[Vec<u32>]) -> String {
    let article = |readings: &Vec<u32>| {
        let readings = readings.iter().map(|tenths| format!("{}.{}", tenths / 10, tenths % 10));
        readings.collect::<Vec<_>>().join(" ")
    };
    articles.iter().map(article).collect::<Vec<_>>().join("\n")
}

fn standard() -> impl Strategy<Value = &'static str> {
    prop_oneof![
        Just("a153"),
        Just("f2329-batch"),
        Just("f2329-lot"),
        Just("iso10684"),
        Just("iso1461"),
        Just("b695"),
        Just("own"),
    ]
}

fn headline(standard: &str, articles: &[Vec<u32>], gauge: &str, rounding: &str) -> String {
    let text = written(articles);
    // A column that counts, or lies apart, by chance would be asked.
    let widest = articles.iter().map(Vec::len).max().unwrap();
    let columns: Vec<String> = (1..=widest).map(|column| column.to_string()).collect();
    let columns = columns.join(", ");
    let pairs = [
        ("standard", standard),
        ("own_mean", "50 µm"),
        ("own_article", "40 µm"),
        ("lot", "600"),
        // Where the standard's number is not known here, or readings on each: as agreed, and by section.
        ("agreed", if standard == "a153" { "" } else { "5" }),
        ("method", "section"),
        ("readings", text.as_str()),
        ("columns", columns.as_str()),
        ("gauge", gauge),
        ("rounding", rounding),
    ];
    evaluate("lot", pairs).unwrap_or_else(|problems| panic!("{text}: {problems}")).headline
}

/// From best to worst.
fn rank(headline: &str) -> usize {
    let words = ["Accept", "Not decided", "Measure again", "Reject"];
    words.iter().position(|word| headline.starts_with(word)).unwrap()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    /// Means at the very edge of a limit are as likely as others: the last digit counts.
    #[test]
    fn permuting_readings_changes_nothing(
        (articles, shuffled) in articles().prop_flat_map(|articles| {
            let inner: Vec<_> = articles.iter().map(|readings| Just(readings.clone()).prop_shuffle()).collect();
            (Just(articles), inner.prop_flat_map(|inner| Just(inner).prop_shuffle()))
        }),
        standard in standard(),
        gauge in prop_oneof![Just(""), Just("0.5 µm")],
        rounding in prop_oneof![Just("absolute"), Just("limit")],
    ) {
        prop_assert_eq!(
            headline(standard, &articles, gauge, rounding),
            headline(standard, &shuffled, gauge, rounding)
        );
        let statistics = |articles: &[Vec<u32>]| {
            let lengths: Vec<Vec<Length>> = articles
                .iter()
                .map(|readings| readings.iter().map(|&t| Length::from_um(f64::from(t) / 10.0)).collect())
                .collect();
            Statistics::of(lengths.iter().map(Vec::as_slice)).unwrap()
        };
        prop_assert_eq!(statistics(&articles), statistics(&shuffled));
    }

    #[test]
    fn thicker_readings_never_make_it_worse(
        articles in articles(), standard in standard(), more in 0..100u32,
    ) {
        let thicker: Vec<Vec<u32>> =
            articles.iter().map(|readings| readings.iter().map(|&tenths| tenths + more).collect()).collect();
        prop_assert!(
            rank(&headline(standard, &thicker, "0.5 µm", "absolute"))
                <= rank(&headline(standard, &articles, "0.5 µm", "absolute"))
        );
    }

    #[test]
    fn a_worse_gauge_never_makes_it_better(articles in articles(), standard in standard()) {
        let of = |gauge| rank(&headline(standard, &articles, gauge, "absolute"));
        prop_assert!(of("") <= of("0.5 µm") && of("0.5 µm") <= of("2 µm"));
    }

    /// However readings are written, they come out as they went in.
    #[test]
    fn written_readings_are_read_back(
        articles in articles(),
        between in prop_oneof![Just(" "), Just("\t"), Just("  "), Just(" µm ")],
        comma in any::<bool>(),
    ) {
        let mut text = written(&articles).replace(' ', between);
        // A lone decimal comma on each line is what may be refused; here the comma is told.
        let told = if comma { Comma::Decimal } else { Comma::Decide };
        if comma {
            text = text.replace('.', ",");
        }
        // Columns that count by chance would be asked.
        let columns: Vec<usize> = (1..=8).take(articles.iter().map(Vec::len).max().unwrap()).collect();
        let columns = (between != " µm ").then_some(columns.as_slice());
        let how = Reading { units: &UNITS, comma: told, columns, per_article: None };
        let Ok(readings) = Readings::read(&text, &how, Density::from_g_cm3(7.2)) else {
            prop_assert!(between == " µm ");
            return Ok(());
        };
        let back: Vec<Vec<u32>> = readings
            .articles()
            .map(|readings| readings.iter().map(|reading| (reading.um() * 10.0).round() as u32).collect())
            .collect();
        prop_assert_eq!(back, articles);
    }

    #[test]
    fn any_text_gives_readings_or_a_problem(
        text in prop_oneof![any::<String>(), "[0-9,.;: \t\nµmilA#-]{0,40}"],
        comma in prop_oneof![Just(Comma::Decide), Just(Comma::Decimal), Just(Comma::Separator)],
        per_article in proptest::option::of(0..6u32),
    ) {
        let how = Reading { units: &UNITS, comma, columns: None, per_article };
        match Readings::read(&text, &how, Density::from_g_cm3(7.2)) {
            Ok(readings) => {
                let all: usize = readings.articles().map(<[Length]>::len).sum();
                prop_assert_eq!(all, readings.values().len());
                prop_assert!(readings.articles().all(|article| !article.is_empty()) && all > 0);
                prop_assert!(readings.values().iter().all(|value| value.um() > 0.0));
            }
            Err(problem) => prop_assert!(!problem.to_string().is_empty()),
        }
    }

    #[test]
    fn t_and_its_share_undo_each_other(share in 0.5..0.999f64, freedom in 1..200u32) {
        let t = student_t(share, freedom).unwrap();
        prop_assert!((student_t_share(t, freedom).unwrap() - share).abs() < 1e-10);
        prop_assert!(student_t(share, freedom + 1).unwrap() <= t + 1e-9);
    }
}

/// Readings in mil or inches without their unit once were rejected as micrometres.
#[test]
fn readings_far_below_every_coat_are_asked_for_their_unit() {
    let check = |standard: &str, readings: &str| {
        evaluate("lot", [("standard", standard), ("lot", "3"), ("readings", readings)])
            .map(|report| report.headline)
            .map_err(|problems| problems.to_string().replace('\u{a0}', " "))
    };
    for (standard, readings, example) in [
        ("a153", "2.1\n2.2\n2.3", "for example 2.1 mil"),
        ("a153", "0.0021 0.0022\n0.0021 0.0022", "for example 0.0021 in"),
        ("iso4042", "0.3\n0.35\n0.32", "for example 0.3 mil"),
    ] {
        let problem = check(standard, readings).unwrap_err();
        assert!(problem.contains("no unit is written") && problem.contains(example), "{problem}");
    }
    // A bare place among sound ones is a reading, and so is a thin coat of which somebody wrote the unit.
    assert!(check("a153", "2.1 55 54\n56 54 55").is_ok());
    let thin = "2.1 µm 2.2 2.3 2.2 2.1\n2.2 2.1 2.3 2.2 2.2\n2.1 2.3 2.2 2.2 2.3";
    assert!(check("a153", thin).unwrap().starts_with("Measure again"));
    assert!(check("iso4042", "7.9\n8.2\n8.1").is_ok());
}

/// A slipped decimal point, or mils taken for micrometres, once were accepted without a word.
#[test]
fn readings_many_times_their_limit_are_looked_at_before_they_count() {
    let check = |standard: &str, readings: &str| {
        let pairs = [("standard", standard), ("lot", "3"), ("method", "section"), ("readings", readings)];
        evaluate("lot", pairs).unwrap_or_else(|problems| panic!("{problems}"))
    };
    let look = |readings: &str, standard: &str| {
        let report = check(standard, readings);
        let said = report.findings.iter().find(|finding| finding.text.starts_with("Look at the readings"));
        (report.headline, said.map(|finding| finding.text.replace('\u{a0}', " ")))
    };
    for (standard, readings, times) in [
        ("a153", "560\n570\n580", "times"),
        ("a153", "12.0 mil\n11.8\n11.9", "times"),
        ("b695", "400\n410\n405", "times"),
        ("iso1461", "530 µm\n70 µm\n72 µm", "times"),
        ("a153", "400 g/m²\n3500\n410", "times"),
    ] {
        let (headline, said) = look(readings, standard);
        assert!(
            headline.starts_with("Not decided: it hangs on readings out of all proportion"),
            "{headline}"
        );
        assert!(said.is_some_and(|said| said.contains(times)), "{readings}");
    }
    // Far below, the standard rejects it as it stands; that the unit may be another one is said all the same.
    let (headline, said) = look("5.5 µm\n5.6\n5.4", "a153");
    assert!(headline.starts_with("Measure again"), "{headline}");
    assert!(said.is_some_and(|said| said.contains("one part in")));
    // Thick, and as coats are; and one bare place.
    assert_eq!(look("160\n150\n155", "a153").1, None);
    assert!(check("a153", "160\n150\n155").headline.starts_with("Accept"));
    assert_eq!(look("4\n55\n54", "a153").1, None);
}

#[test]
fn one_article_is_said_in_the_singular() {
    let problems = evaluate(
        "lot",
        [("standard", "a153"), ("lot", "600"), ("stage", "retest"), ("readings", "52 54 50 53 51")],
    )
    .unwrap_err()
    .to_string();
    assert!(problems.contains("and 1 article cannot be cut into them"), "{problems}");
}

/// What a lot check is told, or the problem it has with it.
fn asked(pairs: &[(&str, &str)]) -> Result<String, String> {
    let readings = [("readings", "52 48 51\n50 49 55\n51 52 53"), ("lot", "100")];
    let pairs: Vec<_> = readings
        .into_iter()
        .filter(|(key, _)| !pairs.iter().any(|(other, _)| other == key))
        .chain(pairs.iter().copied())
        .collect();
    kettle_barrel::calculator::evaluate("lot", pairs)
        .map(|report| {
            report.findings.iter().map(|finding| finding.text.to_string()).collect::<Vec<_>>().join("\n")
        })
        .map_err(|problems| problems.to_string())
}

/// Limits of one's own may be equal; a least above what it is part of is none.
#[test]
fn limits_that_contradict_each_other_are_refused() {
    let own = |pairs: &[(&'static str, &'static str)]| {
        asked(&[&[("standard", "own"), ("agreed", "3")], pairs].concat()).map(drop)
    };
    for pairs in [
        &[
            ("own_mean", "50 µm"),
            ("own_article", "50 µm"),
            ("own_reading", "50 µm"),
            ("own_greatest", "50 µm"),
        ][..],
        &[("own_mean", "50 µm"), ("own_reading", "40 µm")],
        &[("own_greatest", "80 µm"), ("own_reading", "40 µm")],
        &[("own_reading", "40 µm")],
    ] {
        assert_eq!(own(pairs), Ok(()), "{pairs:?}");
    }
    for (pairs, told) in [
        (&[("own_mean", "50 µm"), ("own_article", "51 µm")][..], "below the"),
        (&[("own_mean", "50 µm"), ("own_reading", "51 µm")], "below the"),
        (&[("own_article", "50 µm"), ("own_reading", "51 µm")], "below the"),
        (&[("own_greatest", "49 µm"), ("own_mean", "50 µm")], "below a least of"),
        (&[("own_greatest", "49 µm"), ("own_article", "50 µm")], "below a least of"),
        (&[("own_greatest", "49 µm"), ("own_reading", "50 µm")], "below a least of"),
        (&[], "give at least one limit"),
    ] {
        let problem = own(pairs).unwrap_err();
        assert!(problem.contains(told), "{pairs:?}: {problem}");
    }
    let below = own(&[("own_greatest", "49 µm"), ("own_mean", "50 µm")]).unwrap_err();
    assert!(!below.contains("every part"), "{below}");
}

/// An acceptance number needs a plan, and is smaller than the sample.
#[test]
fn an_acceptance_number_belongs_to_a_plan() {
    let plan = |agreed, allowed| {
        asked(&[("standard", "own"), ("own_article", "40 µm"), ("agreed", agreed), ("allowed", allowed)])
    };
    assert!(plan("3", "0").is_ok() && plan("3", "2").is_ok() && plan("3", "").is_ok());
    for (agreed, allowed, told) in [
        ("3", "3", "fewer than 3 can be let miss"),
        ("3", "4", "fewer than 3 can be let miss"),
        ("", "1", "number of articles of the plan"),
    ] {
        let problem = plan(agreed, allowed).unwrap_err();
        assert!(problem.contains(told), "{agreed}, {allowed}: {problem}");
    }
    assert!(plan("", "0").is_ok());
    // What misses is laid beside what may.
    let missing = |allowed, readings| {
        asked(&[
            ("standard", "own"),
            ("own_article", "50 µm"),
            ("agreed", "3"),
            ("allowed", allowed),
            ("readings", readings),
        ])
        .unwrap()
    };
    let one = missing("1", "52 48 53\n44 45 46\n51 52 53");
    assert!(one.contains("1 article misses its limit; the plan lets 1 miss."), "{one}");
    let two = missing("1", "42 48 43\n44 45 46\n51 52 53");
    assert!(two.contains("2 articles miss their limits; the plan lets 1 miss."), "{two}");
    let none = missing("1", "52 58 53\n54 55 56\n51 52 53");
    assert!(none.contains("0 articles miss their limits; the plan lets 1 miss."), "{none}");
    assert!(!missing("0", "52 58 53\n54 55 56\n51 52 53").contains("the plan lets"));
}

/// As many articles as the lot has may be measured, and no more; too few are asked for, and too many looked at.
#[test]
fn the_articles_measured_are_laid_beside_the_lot_and_the_sample() {
    let of = |lot, agreed| {
        asked(&[("standard", "own"), ("own_article", "40 µm"), ("lot", lot), ("agreed", agreed)])
    };
    assert!(of("3", "3").is_ok());
    assert!(of("2", "2").unwrap_err().contains("3 articles were measured from a lot of 2"));
    for (agreed, told) in [
        ("2", "3 articles were read, more than the 2 of the sample"),
        ("3", "Enough articles were measured."),
        ("4", "Measure 1 article more"),
        ("5", "Measure 2 articles more"),
    ] {
        let found = of("100", agreed).unwrap();
        assert!(found.contains(told), "{agreed}: {found}");
    }
    let whole = of("3", "").unwrap();
    assert!(whole.contains("Every piece of the lot was measured."), "{whole}");
    let open = of("4", "").unwrap();
    assert!(open.contains("Enter how many articles the order or its sampling plan wants"), "{open}");
}
