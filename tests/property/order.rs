//! What an order line owes its user: a verdict that follows from its reasons, each of which opens.

use kettle_barrel::calculator::{Draft, Fault, Kind, Mark, Verdict, find};
use kettle_barrel::coat::Process;
use kettle_barrel::order::{self, Asked, Assessment, Judged, judge};
use kettle_barrel::rule::Key;
use kettle_barrel::site::Category;
use proptest::prelude::*;

fn assessed(line: &str) -> Assessment {
    let reading = order::reading::read(line);
    assert!(reading.is_understood(), "{line}: {:?}", reading.not_used().collect::<Vec<_>>());
    order::assess(&reading.draft).unwrap_or_else(|problems| panic!("{line}: {problems}"))
}

fn verdicts(line: &str) -> [Verdict; 3] {
    assessed(line).processes.map(|process| process.verdict)
}

const SUITS: Verdict = Verdict::Suits;
const CONDITIONS: Verdict = Verdict::OnConditions;
const OUT: Verdict = Verdict::RuledOut;

/// The lot of a set is weighed with all its parts: bolts alone are lighter by a nut and a washer each.
#[test]
fn the_lot_of_a_set_weighs_all_its_parts() {
    let lot = |line: &str| {
        let figures = assessed(line).figures;
        let lot = figures.iter().find(|figure| figure.name == "Lot").unwrap().value.to_string();
        let kg =
            lot.split(", ").nth(1).and_then(|weight| weight.split_whitespace().next()?.parse::<f64>().ok());
        kg.unwrap_or_else(|| panic!("{lot}"))
    };
    let [bolts, nuts, washers, sets] = [
        "M16 x 60 hex bolt, 8.8, 1000 pcs",
        "M16 hex nut, class 8, 1000 pcs",
        "M16 washer, 200 HV, 1000 pcs",
        "M16 x 60 hex bolt, 8.8, with nut class 8 and washer 200 HV, 1000 pcs",
    ]
    .map(lot);
    approx::assert_abs_diff_eq!(bolts + nuts + washers, sets, epsilon = 1.5);
}

/// Facts of the trade, with the documents that say them; kettle, barrel, cell.
#[test]
fn verdicts_as_the_trade_knows_them() {
    let cases: &[(&str, [Verdict; 3])] = &[
        // ISO 10684, scope: to class 10.9 and not below M8; F2329: 40 HRC.
        ("M24 x 120 hex bolt, 12.9, 96 pcs, C3, 10 years", [OUT, CONDITIONS, CONDITIONS]),
        // The room of a thin coat is made on the bolt and goes on the order.
        ("M6 x 20 hex screw, 4.6, 5000 pcs, C1", [OUT, SUITS, SUITS]),
        // ASTM A490 and F3125: no zinc by any of the three.
        ("3/4-10 UNC x 3 in heavy hex structural bolt, A490, 500 pcs, C3", [OUT, OUT, OUT]),
        // ASTM A193 B7 is tempered from 593 °C: the bath does not reach it.
        ("rod M16 x 1 m, B7, 200 pcs, C3, 15 years", [SUITS, CONDITIONS, OUT]),
        // ASTM A574-17 is tempered from 371 °C, far below the bath.
        ("M10 x 40 socket screw, A574, 400 pcs, C2", [OUT, SUITS, CONDITIONS]),
        // Common practice: beads keep flat washers apart; soft steel has nothing else against it.
        ("washers M12, 4.6, 20000 pcs, C3, class 55", [SUITS, SUITS, CONDITIONS]),
        // A thin coat in a harsh place does not last.
        ("M20 x 90 hex bolt, 8.8, 1200 pcs, C5, 20 years", [OUT, CONDITIONS, OUT]),
    ];
    for (line, expected) in cases {
        assert_eq!(verdicts(line), *expected, "{line}\n{}", assessed(line));
    }
}

#[test]
fn every_example_is_assessed_and_every_reason_opens_what_it_rests_on() {
    for example in order::ABOUT.examples {
        let draft: Draft = example.pairs.iter().copied().collect();
        let assessment = order::assess(&draft).unwrap_or_else(|why| panic!("“{}”: {why}", example.title));
        every_reason_opens(&assessment, example.title);
    }
    let lines = [
        "washers M12, 4.6, 20000 pcs, C3",
        "washers 1/2-13 UNC, F436, 20000 pcs, C3, class 55",
        "rod M16 x 3 m, B7, 200 pcs, C3, 15 years",
        "hex nut M12, class 8, 100 pcs, C3",
        "hex nut M20, class 12, 100 pcs, C5, 40 years",
        "M6 x 20 hex screw, 4.6, 5000 pcs, C1",
        "M12x1.25 x 60 hex bolt, 8.8, 100 pcs, C3, class 55",
        "M10 x 40 socket screw, 12.9, 400 pcs, C2, 5 years",
        "1/4-20 UNC x 1 in hex bolt, J429 grade 5, 1000 pcs, C2",
        "7/8-9 UNC x 12 in hex bolt, A449, 100 pcs, C4",
    ];
    for line in lines {
        every_reason_opens(&assessed(line), line);
    }
}

fn every_reason_opens(assessment: &Assessment, what: &str) {
    for process in &assessment.processes {
        assert_eq!(process.verdict, Verdict::of(&process.findings), "{what}");
        assert!(!process.figures.is_empty(), "{what}: nothing offered");
        for finding in process.findings.iter().chain(&process.folded) {
            let link = finding.opens.as_deref();
            let link = link.unwrap_or_else(|| panic!("{what}: “{}” opens nothing", finding.text));
            let entry = find(link.calculator).unwrap_or_else(|| panic!("no calculator {}", link.calculator));
            for (name, _) in &link.pairs {
                let known = entry.about.fields.iter().any(|field| field.key == *name);
                assert!(known, "{} has no field {name}", link.calculator);
            }
            // What no table answers for the order line, none answers in the calculator.
            if let Err(problems) = entry.evaluate(&link.into()) {
                let unanswered = problems.iter().all(|one| match one.fault {
                    Fault::Refused(_) => true,
                    // Nothing but the maker's certificate says how a steel was tempered.
                    Fault::Missing => one.field == "temper",
                    _ => false,
                });
                assert!(unanswered, "{what}: {link:?}: {problems}");
            }
        }
    }
}

#[test]
fn an_instruction_says_what_to_do_and_why() {
    let assessment = assessed("M20x2.5 x 90 hex bolt, 10.9, 1200 pcs, C4, 12 years");
    let [kettle, ..] = &assessment.processes;
    let said = |mark: Mark, what: &str| {
        kettle.findings.iter().any(|finding| finding.mark == mark && finding.text.contains(what))
    };
    assert!(said(Mark::Condition, "Get the actual temper from the maker"), "{:#?}", kettle.findings);
    // Why stands in the fold, and opens the same calculator.
    let why = kettle.folded.iter().find(|finding| finding.text.contains("is like one hour at"));
    assert_eq!(why.and_then(|why| why.opens.as_deref()).map(|link| link.calculator), Some("tempering"));
    // The nut goes on every such order and is nothing to prove.
    assert!(said(Mark::Term, "6AZ, marked Z, tapped after dipping"), "{:#?}", kettle.findings);
}

#[test]
fn a_washer_has_no_thread_to_fit() {
    let fits = |line: &str| {
        let draft = order::reading::read(line).draft;
        judge(&order::read(&draft).unwrap()).processes.map(|judged| judged.ruling(Key::Assembles).is_some())
    };
    assert_eq!(fits("washer M12, 4.6, 100 pcs, C3"), [false; 3]);
    assert_eq!(fits("hex nut M12, class 8, 100 pcs, C3"), [true; 3]);
}

#[test]
fn what_a_line_does_not_say_is_asked_and_never_assumed() {
    let problems = order::assess(&order::reading::read("8.8, 100 pcs, C3").draft).unwrap_err();
    let missing: Vec<&str> = problems.iter().filter(|p| p.fault == Fault::Missing).map(|p| p.field).collect();
    assert_eq!(missing, ["part"]);
    // What needs no size is answered without it, and the size is asked for where something hangs on it.
    let asks = |line: &str| {
        let line = order::read(&order::reading::read(line).draft).unwrap();
        judge(&line).processes.map(|judged| {
            judged.ruling(Key::SizeNotSaid).is_some_and(|ruling| ruling.mark == Mark::NotJudged)
        })
    };
    assert_eq!(asks("hex bolt 8.8, C3"), [true; 3]);
    assert_eq!(asks("retaining rings, 50 HRC, C2"), [true, false, false]);
    assert_eq!(asks("M12 hex bolt 8.8, C3"), [false; 3]);
    // What needs no steel, place or quantity is answered without them.
    let line = order::read(&order::reading::read("M16 x 60 hex bolt, 15 years").draft).unwrap();
    assert_eq!((line.quantity, line.steel, line.place), (None, None, None));
    for judged in judge(&line).processes {
        assert!(judged.ruling(Key::SteelNotSaid).is_some(), "{judged:?}");
        assert!(judged.ruling(Key::Lasts).is_none(), "{judged:?}");
        assert!(judged.verdict() >= CONDITIONS, "{judged:?}");
    }
    let told = assessed("M16 x 60 hex bolt").to_string();
    assert!(told.contains("Say the steel") && told.contains("Say the place"), "{told}");
    assert!(Category::ALL.iter().all(|place| told.contains(&format!("Life in {}", place.key()))), "{told}");
    let unknown = order::reading::read("M16 x 60 hex bolt, 8.8, 10 pcs, C3, frobnicated");
    assert_eq!(unknown.not_used().collect::<Vec<_>>(), [("frobnicated", "")]);
}

#[test]
fn one_line_in_many_hands() {
    let same = [
        "M20x2.5 x 90 hex bolt, 10.9, 1200 pcs, C4",
        "M20 x 90 mm hexagon bolts; class 10.9; qty 1200; c4",
        "1 200 off M20×90 hex bolt 10.9 C4",
        "hex bolt M20x90, 10.9, C4, 1200 pieces",
    ];
    let first = order::read(&order::reading::read(same[0]).draft).unwrap();
    for line in same {
        assert_eq!(order::read(&order::reading::read(line).draft).unwrap(), first, "{line}");
    }
}

#[test]
fn what_is_asked_for_is_answered_first() {
    let assessment = assessed("M12 x 50 hex bolt, 8.8, 100 pcs, C3, B695 class 55");
    assert_eq!(assessment.answer.recommended, Some(Process::Mechanical));
    assert!(
        assessment.answer.text.starts_with("Take mechanical, B695 class 55"),
        "{}",
        assessment.answer.text
    );
    let hard = assessed("M12 x 50 hex bolt, 12.9, 100 pcs, C3, ISO 10684").answer;
    assert!(hard.text.starts_with("Not hot-dip, as asked:"), "{}", hard.text);
}

#[test]
fn an_empty_draft_is_filled_from_no_example() {
    let problems = order::read(&Draft::default()).unwrap_err();
    let missing: Vec<&str> = problems.iter().map(|problem| problem.field).collect();
    // Without the thread there is still something to say: it is asked for in the answer.
    assert_eq!(missing, ["part"]);
}

#[test]
fn a_coat_is_asked_for_by_process_document_or_class() {
    let offered = |key: &str, thread: &str| {
        let mut draft = order::reading::read("hex bolt, 8.8, 100 pcs, C3").draft;
        draft.set("thread", thread);
        draft.set("length", "50 mm");
        draft.set("asked", key);
        let line = order::read(&draft).unwrap();
        let process = line.asked.as_ref().and_then(Asked::process).unwrap();
        let judged: Judged =
            judge(&line).processes.into_iter().find(|judged| judged.process == process).unwrap();
        let class = judged.offer.unwrap().class;
        format!("{} {}", class.document.name, class.name)
    };
    assert_eq!(offered("kettle", "M12"), "ISO 10684:2004 M8 to M64");
    assert_eq!(offered("a153", "M12"), "ASTM A153/A153M-16 class C");
    assert_eq!(offered("by-f2329", "1/4-20 UNC"), "ASTM F2329-05 3/8 in and under");
    assert_eq!(offered("by-f2329", "1/2-13 UNC"), "ASTM F2329-05 over 3/8 in");
    assert!(offered("b695", "M12").starts_with("ASTM B695 class "));
    assert!(offered("f1941", "M12").starts_with("ASTM F1941"));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    /// Any line of words is spread without a panic, and no word is lost or judged twice.
    #[test]
    fn any_written_line_is_borne(line in line()) {
        let reading = order::reading::read(&line);
        match order::assess(&reading.draft) {
            Ok(assessment) => prop_assert!(!assessment.headline.is_empty()),
            Err(problems) => prop_assert!(!problems.to_string().is_empty()),
        }
    }

    /// A class asked for by its key is the class offered.
    #[test]
    fn what_is_asked_is_what_is_offered(at in 0..order::asked::ALL.len()) {
        let asked = &order::asked::ALL[at];
        let mut draft = order::reading::read("M12 x 50 hex bolt, 8.8, 100 pcs, C3").draft;
        draft.set("asked", asked.key);
        let line = order::read(&draft).unwrap();
        let class = asked.class().unwrap();
        let judged = judge(&line);
        let offered = judged.processes.iter().find(|p| p.process == class.process).and_then(|p| p.offer).unwrap();
        prop_assert_eq!(offered.class.name, class.name);
    }
}

#[test]
fn the_fields_of_the_line_take_every_choice() {
    for field in &order::FIELDS {
        let Kind::Choice(choices) = field.kind else { continue };
        for choice in choices {
            let draft: Draft = [(field.key, choice.key)].into_iter().collect();
            if let Err(problems) = order::assess(&draft) {
                assert!(problems.iter().all(|p| !matches!(p.fault, Fault::NotAChoice { .. })), "{problems}");
            }
        }
    }
}

fn line() -> impl Strategy<Value = String> {
    let word = prop_oneof![
        Just("M20x2.5".to_owned()),
        Just("M16".to_owned()),
        Just("x".to_owned()),
        Just("90".to_owned()),
        Just("5/8-11 UNC".to_owned()),
        Just("hex bolt".to_owned()),
        Just("washer".to_owned()),
        Just("nut".to_owned()),
        Just("10.9".to_owned()),
        Just("A325".to_owned()),
        Just("1200 pcs".to_owned()),
        Just("C4".to_owned()),
        Just("class 55".to_owned()),
        Just("36 HRC".to_owned()),
        Just("25 years".to_owned()),
        Just(",".to_owned()),
        any::<String>(),
        "[0-9]{1,9}",
    ];
    proptest::collection::vec(word, 0..12).prop_map(|words| words.join(" "))
}

#[test]
fn a_place_in_words_is_judged_for_all_that_it_can_mean() {
    let verdict = |text: &str, process: Process| {
        let assessment = assessed(text);
        assessment.processes.iter().find(|one| one.process == process).map(|one| one.verdict).unwrap()
    };
    // What holds in both is said, whichever of them it is.
    for (line, harsh) in [
        ("M20 x 90 hex bolt, 8.8, zinc plated, offshore, 20 years", "CX"),
        ("M20 x 90 hex bolt, 8.8, zinc plated, coast", "C5"),
        ("M16 x 60 hex bolt, 8.8, town, 30 years", "C4"),
    ] {
        assert_eq!(verdict(line, Process::Electroplated), Verdict::RuledOut, "{line}");
        assert!(
            assessed(line).answer.text.contains(&format!(" in {harsh}")),
            "{}",
            assessed(line).answer.text
        );
    }
    assert_eq!(verdict("M6 x 20 hex screw, 8.8, indoors", Process::Electroplated), Verdict::Suits);
    assert_eq!(verdict("M16 x 60 hex bolt, 8.8, HDG, coast, 60 years", Process::HotDip), Verdict::RuledOut);
    // What differs is asked.
    let town = assessed("M16 x 60 hex bolt, 8.8, town, 15 years").answer.text;
    assert!(town.contains("find out whether C3 or C4"), "{town}");
    // Nineteen years are all that C3 is sure of: neither answer would be enough.
    let town = assessed("M16 x 60 hex bolt, 8.8, town, 30 years").answer.text;
    assert!(town.contains("find out how harsh, C3 at mildest"), "{town}");
}

#[test]
fn a_grade_is_judged_on_the_parts_that_its_document_makes() {
    for line in [
        "3/4-10 x 3 socket head cap screw A325",
        "M16 washer A325 C3",
        "retaining ring A490 20 mm",
        "316 stainless hex bolt 5/8-11 x 3",
        "M12 hex nut brass",
    ] {
        let problems = order::assess(&order::reading::read(line).draft).unwrap_err();
        assert!(problems.iter().any(|problem| problem.field == "steel"), "{line}: {problems}");
    }
    // Classes of bolts are written for nuts and washers every day.
    assessed("M16 hex nut 8.8 C3");
    assessed("M12 flat washer, 4.6, C3");
}
