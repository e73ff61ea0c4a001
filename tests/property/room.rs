//! The room for a coat as it is told: by classes, by a nut tapped over, by gauges.

use kettle_barrel::calculator::{Mark, Report, evaluate};

fn of(id: &str, pairs: &[(&str, &str)]) -> Report {
    evaluate(id, pairs.iter().copied()).unwrap_or_else(|problems| panic!("{pairs:?}: {problems}"))
}

fn mark(report: &Report, text: &str) -> Option<Mark> {
    report.findings.iter().find(|finding| finding.text.contains(text)).map(|finding| finding.mark)
}

/// Where no class takes a coat the nut can be tapped by what it needs; by the rules of ISO 4042 and of a quarter of
/// the allowance it cannot.
#[test]
fn what_no_class_takes_is_told_with_its_remedy() {
    let thick = [("thread", "M12"), ("coat", "120 µm")];
    let by = |rule| of("coat-room", &[&thick[..], &[("rule", rule)]].concat());
    let corner = by("corner");
    assert!(
        corner.headline.contains("tap the nut over by an allowance of your own, at least 0.566"),
        "{}",
        corner.headline
    );
    // Tapped by what it needs it goes together.
    assert!(corner.findings.iter().all(|finding| finding.mark != Mark::Bar), "{:?}", corner.findings);
    let quarter = by("quarter");
    assert!(quarter.headline.contains("No bolt class takes 120.0"), "{}", quarter.headline);
}

/// A bolt of a class from the shelf in a nut of 6G is room in the nut, a bolt 6e room on the bolt.
#[test]
fn the_pair_says_where_its_room_is() {
    let of = |coat| of("coat-room", &[("thread", "M20"), ("coat", coat), ("spread", "0 %")]);
    for (coat, room) in [
        ("5 µm", "go together as ordered"),
        ("14 µm", "rder the bolt of class 6f"),
        ("20.5 µm", "rder the nut of class 6G"),
        ("60 µm", "6AZ"),
    ] {
        let report = of(coat);
        assert!(
            report.findings.iter().any(|finding| finding.text.contains(room)),
            "{coat}: {:?}",
            report.findings
        );
    }
}

/// ISO 10684, 6.2: nuts of 6AZ and 6AX are for bolts of g or h and bear Z or X; a bolt cut under bears U.
#[test]
fn marks_follow_what_is_cut_for_zinc() {
    let of = |class, allowance| {
        of("oversize-tap", &[("thread", "M16"), ("bolt_class", class), ("allowance", allowance)])
    };
    const MEANT: &str = "6AZ and 6AX nuts are meant for bolts of position g or h";
    for (class, allowance, meant, nut, bolt) in [
        ("6g", "az", None, true, false),
        ("6h", "ax", None, true, false),
        ("6e", "az", Some(Mark::Condition), true, false),
        ("6f", "ax", Some(Mark::Condition), true, false),
        ("6e", "own", None, false, false),
        ("6az", "standard", None, false, true),
        ("6g", "standard", None, false, false),
    ] {
        let report = of(class, allowance);
        assert_eq!(mark(&report, MEANT), meant, "{class}, {allowance}");
        assert_eq!(mark(&report, "Mark the nut with").is_some(), nut, "{class}, {allowance}");
        assert_eq!(mark(&report, "Mark the bolt with U").is_some(), bolt, "{class}, {allowance}");
    }
}

/// ISO 10684, Annex A, lowers the loads of M8 and M10 coarse.
#[test]
fn reduced_loads_stand_beside_m8_and_m10() {
    for (thread, reduced) in
        [("M8", true), ("M10", true), ("M10x1.25", false), ("M12", false), ("M16", false)]
    {
        let report = of("oversize-tap", &[("thread", thread)]);
        let told =
            report.sections.iter().any(|section| section.title.starts_with("Reduced loads of ISO 10684"));
        assert_eq!(told, reduced, "{thread}");
    }
}

/// A temper that is to be known is asked for.
#[test]
fn a_temper_that_is_known_is_entered() {
    let missing = evaluate("tempering", [("known", "temper"), ("temper", "")]).unwrap_err();
    assert!(missing.only_missing(), "{missing}");
}

/// A class is written once, and it is that of the bolt; the nut is chosen by itself.
#[test]
fn the_class_of_a_bolt_is_written_in_one_place() {
    let told = |thread, class| {
        let found = evaluate("oversize-tap", [("thread", thread), ("bolt_class", class)]);
        found.err().map(|problems| problems.to_string())
    };
    for (thread, class) in
        [("M16", ""), ("M16-6g", ""), ("M16", "6e"), ("M16-6e", "6e"), ("5/8-11 UNC-2A", "2A")]
    {
        assert_eq!(told(thread, class), None, "{thread}, {class}");
    }
    for (thread, class, why) in [
        ("M16-6g", "6e", "the thread is written with class 6g"),
        ("M16", "6H", "6H is the class of a nut; write the bolt's, as 6g"),
        ("M16-6H", "", "6H is the class of a nut; write the bolt's, and choose the nut below"),
    ] {
        let told = told(thread, class).unwrap_or_else(|| panic!("{thread}, {class}"));
        assert!(told.contains(why), "{thread}, {class}: {told}");
    }
    // The class in the thread counts as much as one in its own field.
    let marks = |thread, class| {
        let pairs = [("thread", thread), ("bolt_class", class), ("allowance", "az")];
        mark(&of("oversize-tap", &pairs), "are meant for bolts of position g or h")
    };
    assert_eq!(marks("M16-6e", ""), Some(Mark::Condition));
    assert_eq!(marks("M16", "6e"), Some(Mark::Condition));
}

/// The bath beside the temper: below it, above it, or as hot.
#[test]
fn the_bath_is_told_beside_the_temper() {
    for (temper, side) in [
        ("480 °C", "the bath is 25 °C below the temper"),
        ("440 °C", "the bath is 15 °C above the temper"),
        ("455 °C", "the bath is as hot as the temper"),
    ] {
        let report = of("tempering", &[("known", "temper"), ("temper", temper), ("bath", "455 °C")]);
        assert!(report.headline.replace('\u{a0}', " ").contains(side), "{temper}: {}", report.headline);
    }
}
