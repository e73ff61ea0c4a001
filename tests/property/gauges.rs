//! The tap, the hole before it and its gauges.

use kettle_barrel::calculator::{Mark, Report, Verdict, evaluate};
use kettle_barrel::thread::Thread;

fn gauges(pairs: &[(&str, &str)]) -> Report {
    evaluate("gauges", pairs.iter().copied()).unwrap_or_else(|why| panic!("{pairs:?}: {why}"))
}

/// The hole of every thread lies between the plain plugs, tapped over or not, coated inside or not; the listed
/// drills that do not are said.
#[test]
fn the_hole_is_judged_by_the_plain_plugs() {
    let mut outside = Vec::new();
    for thread in Thread::all() {
        for (allowance, inside) in [("standard", "0 %"), ("usual", "0 %"), ("standard", "100 %")] {
            let name = thread.to_string();
            let pairs = [("thread", &*name), ("allowance", allowance), ("inside", inside)];
            let coat = [("coat_least", "30"), ("coat_greatest", "31")];
            let Ok(report) = evaluate("gauges", pairs.into_iter().chain(coat)) else { continue };
            let Some(found) = report.findings.iter().find(|found| found.text.starts_with("The hole of"))
            else {
                continue;
            };
            if found.mark == Mark::Condition {
                assert!(found.text.contains("lies above the plain NOT-GO plug"), "{pairs:?}: {}", found.text);
                outside.push(name);
            }
        }
    }
    outside.dedup();
    // 33/64 and 37/64 in are listed, and ASME B1.1 prints .515 and .578 in at most.
    assert_eq!(outside, ["9/16-18 UNF", "5/8-18 UNF"]);
}

/// A coat inside the nut takes 2 t of its minor diameter, and not the 4 t of its pitch diameter.
#[test]
fn a_coated_nut_is_drilled_for_its_crests() {
    let pairs = [("thread", "M16"), ("allowance", "standard"), ("coat_least", "50"), ("coat_greatest", "55")];
    let pairs: Vec<_> = pairs.into_iter().chain([("inside", "100 %")]).collect();
    let report = gauges(&pairs);
    // 14 mm and 2 × 55 µm; 13.835 + .110 and 14.210 + .100.
    let hole = report.figures.iter().find(|figure| figure.name.contains("Hole before the tap")).unwrap();
    assert_eq!(hole.value.to_string(), "14.110\u{a0}mm");
    let found = report.findings.iter().find(|found| found.text.starts_with("The hole of")).unwrap();
    let (mark, text) = (found.mark, &found.text);
    assert_eq!(mark, Mark::Met);
    assert!(text.contains("13.945 to 14.310"), "{text}");
}

/// A pair that is ruled out gets no advice to tap it in the headline.
#[test]
fn a_headline_does_not_advise_what_is_ruled_out() {
    for pairs in [
        &[("thread", "M8x1")][..],
        &[("thread", "M16"), ("way", "under"), ("allowance", "az")],
        &[("thread", "M10"), ("coat_greatest", "200")],
    ] {
        let report = evaluate("oversize-tap", pairs.iter().copied()).unwrap();
        let bar = report.findings.iter().find(|found| found.mark == Mark::Bar).unwrap();
        assert!(report.headline.starts_with("Not like this: "), "{}", report.headline);
        assert!(report.headline.contains(bar.text.trim_end_matches('.')), "{}", report.headline);
    }
    let report = evaluate("oversize-tap", [("thread", "M16")]).unwrap();
    assert!(report.headline.starts_with("Tap the M16 nut to"), "{}", report.headline);
}

/// ASME B1.1 (memory): 1.5 diameters, for UNEF 15 pitches.
#[test]
fn the_length_of_engagement_is_said() {
    for (thread, words) in
        [("3/4-10 UNC", "1.5 diameters, 1.1250"), ("1/2-28 UNEF", "15 pitches, 0.5357"), ("M16", "group N")]
    {
        for id in ["gauges", "oversize-tap"] {
            let report = evaluate(id, [("thread", thread), ("allowance", "standard")]).unwrap();
            assert!(report.notes.iter().any(|note| note.text.contains(words)), "{id} {thread}");
        }
    }
}

/// What an order gets is what `coat-room` says of the same coat: the same row of the fit bars it, and what
/// goes on every order is no condition.
#[test]
fn the_class_for_a_coat_is_judged_like_the_order() {
    for (thread, coat, verdict) in [
        ("M16", "500 um", Verdict::RuledOut),
        ("M16", "200 um", Verdict::RuledOut),
        ("M5", "70 um", Verdict::RuledOut),
        ("M6", "60 um", Verdict::RuledOut),
        ("#4-40", "53 um", Verdict::RuledOut),
        ("M16x1.5", "60 um", Verdict::OnConditions),
        ("M16", "53 um", Verdict::Suits),
        ("M8", "12 um", Verdict::Suits),
        ("M16", "5 um", Verdict::Suits),
        ("3/4-10", "53 um", Verdict::Suits),
    ] {
        let report = evaluate("coat-room", [("thread", thread), ("coat", coat)]).unwrap();
        assert_eq!(report.verdict, Some(verdict), "{thread}, {coat}: {}", report.headline);
        let barred = report.headline.starts_with("Not like this");
        assert_eq!(barred, verdict == Verdict::RuledOut, "{thread}, {coat}: {}", report.headline);
    }
}

/// The drill of a standard nut is too small for the hole of one tapped over, and is not named as its drill.
#[test]
fn a_drill_is_named_where_it_makes_the_hole() {
    let hole = |allowance| {
        let report = evaluate("gauges", [("thread", "3/4-10"), ("allowance", allowance)]).unwrap();
        let figure = report
            .figures
            .iter()
            .find(|figure| figure.name.contains("Drill") || figure.name.contains("drill"));
        figure.map(|figure| figure.name.replace('\u{a0}', " ")).unwrap()
    };
    assert!(hole("standard").starts_with("Drill, 21/32"), "{}", hole("standard"));
    let over = hole("a563");
    assert!(over.contains("larger than drill 21/32 (0.6562 in) by the allowance"), "{over}");
}

/// The limits of a left-hand thread are those of a right-hand one: LH is answered, and is no class.
#[test]
fn a_left_hand_thread_is_told_what_to_order() {
    for thread in ["M16 LH", "M16-LH", "M16x2-6g-LH", "5/8-11 UNC-2A-LH"] {
        let problems = evaluate("gauges", [("thread", thread)]).unwrap_err().to_string();
        assert!(problems.contains("leave LH out") && problems.contains("left-hand"), "{thread}: {problems}");
    }
}
