//! The nut that goes with the coat: as it was ordered, by its name, and by what it carries.

use kettle_barrel::calculator::{Mark, Verdict, evaluate};
use kettle_barrel::order::{self, answer::answer, judge};
use kettle_barrel::process::Process;
use kettle_barrel::rule::Key;
use kettle_barrel::steel::{Grade, load::known_nut};
use kettle_barrel::table::nut_style::{Style, Tapping};
use kettle_barrel::thread::{Thread, load};

/// What an order says: its answer, the line to put on the order, and what a process says in full.
struct Said {
    answer: String,
    order: String,
    verdicts: [Verdict; 3],
    judgement: order::Judgement,
}

fn said(text: &str) -> Said {
    let line = order::read(&order::reading::read(text).draft).unwrap_or_else(|why| panic!("{text}: {why}"));
    let judgement = judge(&line);
    let answer = answer(&line, &judgement);
    let verdicts = judgement.processes.each_ref().map(|judged| judged.verdict());
    Said { answer: answer.text, order: answer.order, verdicts, judgement }
}

impl Said {
    /// What a rule says of the part that is ordered, in words.
    fn of(&self, process: Process, key: Key) -> Option<(Mark, String)> {
        let judged = &self.judgement.processes[process as usize];
        let ruling = judged.ruling(key)?;
        Some((ruling.mark, ruling.text(&self.judgement.case(judged, 0)?)))
    }
}

/// A plated nut has its room made on the bolt or in the nut; its own thread is never made smaller.
#[test]
fn the_thread_of_a_plated_nut_is_not_made_smaller() {
    for text in [
        "3/4-10 heavy hex nut A563 DH, Fe/Zn 8, C2",
        "1/4-20 hex nut A563 A, Fe/Zn 8, C2",
        "1/4-20 hex nut, grade 5, Fe/Zn 5, C2",
    ] {
        let said = said(text);
        assert!(said.order.contains("mating bolt made smaller"), "{}", said.order);
        let (_, words) = said.of(Process::Electroplated, Key::Assembles).unwrap();
        assert!(words.contains("mating bolt") && words.contains("tapped over"), "{words}");
    }
    // The bolt of such an order is the one that is made smaller.
    let bolt = said("3/4-10 x 3 hex bolt, grade 5, Fe/Zn 8, C2");
    assert!(bolt.order.contains("a smaller thread before the coat"), "{}", bolt.order);
}

/// A nut of an own allowance is the nut of the fit in every process; what leaves no thread is out.
#[test]
fn a_nut_that_was_ordered_is_the_nut_of_the_fit() {
    for text in [
        "M5 x 20 hex bolt, 4.8, zinc plated, C1, nut tapped over 0.5 mm",
        "1/4-28 x 1 hex bolt, grade 5, zinc plated, C1, allowance 0.030 in",
    ] {
        let said = said(text);
        assert_eq!(
            said.of(Process::Electroplated, Key::Overlap).map(|(mark, _)| mark),
            Some(Mark::Bar),
            "{text}"
        );
        assert_eq!(said.verdicts, [Verdict::RuledOut; 3], "{text}");
        assert!(!said.answer.contains("as ordered"), "{}", said.answer);
    }
    let deep = said("1-1/8-12 x 4 hex bolt, grade 5, zinc plated, C1, allowance 0.024 in");
    assert!(deep.of(Process::Electroplated, Key::Assembles).unwrap().1.contains("0.0240"), "{}", deep.answer);
}

/// Too much tapped is not more to tap: the condition says what is left.
#[test]
fn a_deep_allowance_says_what_it_leaves() {
    let said = said("1-1/8-12 x 4 hex bolt, grade 5, allowance 0.024 in, C3");
    let (mark, words) = said.of(Process::HotDip, Key::Assembles).unwrap();
    assert_eq!(mark, Mark::Condition);
    assert!(words.contains("overlap by") && words.contains("40\u{a0}%"), "{words}");
    assert!(!said.answer.contains("or more"), "{}", said.answer);
    assert!(said.answer.contains("of the thread left"), "{}", said.answer);
    let pairs = [
        ("thread", "1-1/8-12"),
        ("allowance", "own"),
        ("own_allowance", "0.024 in"),
        ("coat_least", "43"),
        ("coat_greatest", "60"),
    ];
    let report = evaluate("oversize-tap", pairs).unwrap();
    let to_do = report.findings.iter().find(|finding| finding.mark == Mark::Condition).unwrap();
    assert!(to_do.text.contains("overlap by"), "{}", to_do.text);
}

/// ISO 10684, 6.2, and 965-5: a class of tap that was written keeps its mark and its order of work.
#[test]
fn a_tap_class_that_was_written_keeps_its_mark() {
    for (text, mark) in [
        ("M12 hex nut 6AZ, class 8, hot-dip, C3", "6AZ marked Z, tapped after dipping"),
        ("M12 hex nut, class 8, 6AX, hot-dip, C3", "6AX marked X, tapped after dipping"),
        ("M16 x 60 hex bolt, 8.8, with class 8 nut 6AX, hot-dip, C3", "6AX marked X, tapped after dipping"),
    ] {
        let said = said(text);
        assert!(said.order.contains(mark), "{text}: {}", said.order);
    }
}

/// SAE J995 gives a tapped nut no load: where it is tapped over, the nut is one of ASTM A563.
#[test]
fn a_plated_bolt_takes_the_nut_of_its_own_standard() {
    let said = said("1/2-13 x 2 hex bolt, grade 5, with nut, zinc plated, C1");
    assert!(said.order.contains("grade 5 nuts"), "{}", said.order);
    let (_, words) = said.of(Process::Electroplated, Key::NutByName).unwrap();
    assert!(words.contains("SAE J995 grade 5"), "{words}");
    let (_, words) = said.of(Process::HotDip, Key::NutByName).unwrap();
    assert!(words.contains("ASTM A563 grade DH"), "{words}");
    let nut = |process: Process| {
        let judged = &said.judgement.processes[process as usize];
        said.judgement.case(judged, 1).and_then(|case| case.grade()).map(|grade| grade.key())
    };
    assert_eq!([nut(Process::HotDip), nut(Process::Electroplated)], [Some("a563-dh"), Some("j995-5")]);
}

/// ISO 965-5, clause 1: 6AZ and 6AX nuts are not put on 6az bolts, whichever calculator is asked.
#[test]
fn gauges_for_a_pair_that_must_not_meet_are_refused() {
    let verdict = |pairs: &[(&str, &str)]| evaluate("gauges", pairs.iter().copied()).unwrap().verdict;
    assert_eq!(verdict(&[("thread", "M10"), ("bolt_class", "6az")]), Some(Verdict::RuledOut));
    let pair = [("thread", "M10"), ("bolt_class", "6az"), ("allowance", "standard")];
    assert_ne!(verdict(&pair), Some(Verdict::RuledOut));
}

/// What the rule of the load says in a process.
fn carries(text: &str, process: Process) -> Option<(Mark, String)> {
    said(text).of(process, Key::Carries)
}

/// No document gives these pairs a load; the order and the calculator read the same row, with one severity.
#[test]
fn what_no_document_vouches_for_is_to_be_proved() {
    for (text, pairs) in [
        (
            "3/4-10 x 3 hex bolt, grade 8 with grade 8 nut, B695 class 50, C3",
            &[("thread", "3/4-10 UNC"), ("bolt_grade", "j429-8"), ("nut_grade", "j995-8")][..],
        ),
        (
            "M12x1.5 x 50 hex bolt 8.8 with nut, allowance 0.33 mm, C3",
            &[("thread", "M12x1.5"), ("allowance", "own"), ("own_allowance", "0.33 mm")],
        ),
        (
            "1/2-20 x 2 hex bolt, grade 5 with nut, allowance 0.018 in, C3",
            &[
                ("thread", "1/2-20 UNF"),
                ("bolt_grade", "j429-5"),
                ("nut_grade", "a563-dh"),
                ("allowance", "own"),
                ("own_allowance", "0.018 in"),
            ],
        ),
    ] {
        for process in [Process::HotDip, Process::Mechanical] {
            let (mark, words) = carries(text, process).unwrap();
            assert_eq!(mark, Mark::Condition, "{text}: {words}");
            assert!(
                words.contains("not covered")
                    || words.contains("does not cover")
                    || words.contains("not known")
            );
            let report = evaluate("thread-strength", pairs.iter().copied()).unwrap();
            assert!(
                report
                    .findings
                    .iter()
                    .any(|found| found.mark == mark && found.text.trim_end_matches('.') == words),
                "{words}\n{:?}",
                report.findings
            );
        }
        assert!(!said(text).answer.contains("Nothing to prove"), "{text}");
    }
    // ASTM A563 prints 150 ksi for zinc-coated DH, which is what a bolt of grade 8 breaks at.
    let (_, words) =
        carries("3/4-10 x 3 hex bolt, grade 8 with grade 8 nut, B695 class 50, C3", Process::HotDip).unwrap();
    assert!(words.contains("heavy hex A563 DH"), "{words}");
}

/// ISO 10684, clause 7; ASTM A563, Table 3; ASTM A325-14, 3.2.3: where a document gives the load, there is
/// nothing to prove, and a nut that is no wider than its document makes it is one of its document.
#[test]
fn what_a_document_gives_its_load_is_met() {
    for text in [
        "M16 x 60 hex bolt, 10.9 with nut, mechanical, C3",
        "M16 x 60 hex bolt, 8.8 with nut, allowance 0.10 mm, C3",
        "M24 x 80 structural bolt, A325M, with nut, C3",
        "M24 x 80 structural bolt, 10.9, with nut, C3",
        "3/4-10 x 3 hex bolt, grade 8 with nut, C3",
        "1/2-13 x 2 hex bolt, grade 5 with nut, C3",
        "1/2-13 x 2 hex bolt, grade 2 with nut, C3",
        "1/2-13 x 2 hex bolt, A307 with nut, C3",
        "5/8-11 x 4 stud, B7, with 2H nut, C3",
        "3/4-10 x 3 structural bolt, A325, with DH nut, allowance 0.010 in, C3",
    ] {
        let (mark, words) = carries(text, Process::Mechanical).unwrap_or_else(|| panic!("{text}"));
        assert_eq!(mark, Mark::Met, "{text}: {words}");
    }
}

/// The figures of a section of `thread-strength`, as text.
fn strength(pairs: &[(&str, &str)]) -> (Option<Verdict>, String) {
    let report =
        evaluate("thread-strength", pairs.iter().copied()).unwrap_or_else(|why| panic!("{pairs:?}: {why}"));
    let figures = report.sections.iter().flat_map(|section| &section.figures);
    let mut text: String =
        figures.map(|figure| format!("{}: {:?}\n", figure.name, figure.value.to_string())).collect();
    text.extend(report.findings.iter().map(|finding| format!("{}\n", finding.text)));
    (report.verdict, text)
}

/// Pairs of the standards: ASTM A563, Appendix X1, and SAE J995. Where the model does not reach them, their
/// loads stand; where it would lower them, it is a note.
#[test]
fn a_pair_of_the_standards_stands_by_their_loads() {
    for (thread, bolt, nut) in [
        ("M24", "4.6", "nut-12"),
        ("3/4-10 UNC", "j429-2", "j995-2"),
        ("3/4-10 UNC", "j429-5", "j995-5"),
        ("3/4-10 UNC", "a449", "a563-d"),
        ("3/4-10 UNC", "a307", "a563-a"),
        ("3/4-10 UNC", "f1554-36", "a563-a"),
        ("3/4-10 UNC", "f1554-55", "a563-a"),
        ("3/4-10 UNC", "j429-5", "a563-dh"),
    ] {
        let pairs = [("thread", thread), ("bolt_grade", bolt), ("nut_grade", nut), ("allowance", "standard")];
        let (verdict, text) = strength(&pairs);
        assert!(text.contains("Nut not tapped over, proof load"), "{pairs:?}\n{text}");
        let is_weaker = text.lines().find(|line| line.starts_with("On a bolt"));
        assert!(verdict == Some(Verdict::Suits) || is_weaker.is_some(), "{pairs:?}\n{text}");
    }
}

/// EN 14399-3, nuts, proof load: HR 8 and HR 10 of M20 245 and 284.2 kN, tapped over or not; -4, HV 10: 255 kN
/// (memory).
#[test]
fn nuts_of_structural_bolting_have_their_loads() {
    for (nut, bolt, newton) in [
        ("hr-8", "8.8", "245\u{202f}000"),
        ("hr-10", "10.9", "284\u{202f}200"),
        ("hv-10", "10.9", "255\u{202f}000"),
    ] {
        for allowance in ["standard", "az"] {
            let pairs =
                [("thread", "M20"), ("bolt_grade", bolt), ("nut_grade", nut), ("allowance", allowance)];
            let (verdict, text) = strength(&pairs);
            let digits: String = text.chars().filter(|c| c.is_ascii_digit() || *c == '\n').collect();
            let wanted: String = newton.chars().filter(char::is_ascii_digit).collect();
            assert!(digits.contains(&wanted), "{pairs:?}\n{text}");
            assert_eq!(verdict, Some(Verdict::Suits), "{pairs:?}\n{text}");
        }
    }
}

/// ISO 898-2, styles and sizes (memory); ASME B18.2.2 and B18.2.4.6M: the nut is one that exists.
#[test]
fn the_usual_nut_is_one_that_exists() {
    for (thread, bolt, nut, style) in [
        ("M12", "9.8", "nut-9", "ISO 4033, high"),
        ("M20", "12.9", "nut-12", "ISO 4033, high"),
        ("M20x1.5", "10.9", "nut-10", "ISO 4033, high"),
        ("M16", "8.8", "nut-8", "ISO 4032, regular"),
        ("M16", "4.6", "nut-04", "ISO 4035, thin"),
        ("M24", "a325m", "a563m-10s", "ASME B18.2.4.6M heavy hex"),
        ("3/4-10 UNC", "j429-5", "j995-5", "ASME B18.2.2 hex"),
        ("3/4-10 UNC", "a307", "a563-a", "ASME B18.2.2 hex"),
        ("3/4-10 UNC", "a325", "a563-dh", "ASME B18.2.2 heavy hex"),
    ] {
        let pairs = [("thread", thread), ("bolt_grade", bolt), ("nut_grade", nut), ("allowance", "standard")];
        let (_, text) = strength(&pairs);
        assert!(text.contains(&format!("Style: {style:?}")), "{pairs:?}\n{text}");
    }
}

/// ASTM A563M: nuts 10S of structural bolts get its allowance from whichever side they are ordered.
#[test]
fn metric_structural_nuts_get_the_allowance_of_their_document() {
    let nut = said("M24 heavy hex nut A563M 10S, hot-dip, C3");
    let bolt = said("M24 x 80 structural bolt, A325M, with A563M 10S nut, hot-dip, C3");
    for said in [nut, bolt] {
        let (_, words) = said.of(Process::HotDip, Key::Assembles).unwrap();
        assert!(words.contains("ASTM A563M"), "{words}");
    }
}

/// ISO 898-2 ends at M39: what is known of a larger nut is judged, and the rest is asked.
#[test]
fn a_nut_above_the_table_is_a_question() {
    for (text, verdict) in [
        ("M48 hex nut, nut class 8, hot-dip, C3", Verdict::OnConditions),
        ("M42 hex nut, nut class 10, hot-dip, C3", Verdict::OnConditions),
    ] {
        let said = said(text);
        assert_eq!(said.verdicts[0], verdict, "{text}");
        assert!(said.answer.contains("give the hardness"), "{}", said.answer);
    }
    let bolt = said("M48 x 200 hex bolt 8.8 with nut, C3");
    assert!(bolt.answer.contains("name the grade of the nut"), "{}", bolt.answer);
    assert!(!bolt.answer.contains("say the steel"), "{}", bolt.answer);
    // 920 MPa of class 8 at M39 × 1470 mm² of M48.
    let pairs = [("thread", "M48"), ("bolt_grade", "8.8"), ("nut_grade", "nut-8"), ("allowance", "standard")];
    let (_, text) = strength(&pairs);
    assert!(text.contains("920") && text.contains("1470"), "{text}");
}

/// ISO 898-2, styles (memory): a class that is made high only is ordered so.
#[test]
fn a_nut_that_is_made_high_only_is_ordered_high() {
    for text in ["M12 x 50 hex bolt, 9.8, C3", "M20x1.5 x 60 hex bolt, 10.9, C3"] {
        let (_, words) = said(text).of(Process::Mechanical, Key::NutByName).unwrap();
        assert!(words.contains("style 2"), "{text}: {words}");
        // And is said aloud.
        let answer = said(text).answer;
        assert!(answer.contains("style 2 nuts"), "{answer}");
    }
    assert!(!said("M16 x 60 hex bolt, 8.8, C3").answer.contains("style 2"));
}

/// A nut that is too weak is exchanged, and that is said once.
#[test]
fn another_nut_is_asked_for_once() {
    let answer = said("M20 x 90 hex bolt, 10.9, class 8 nuts, C3, 10 years").answer;
    assert!(!answer.contains("or prove the load of these"), "{answer}");
    assert!(answer.contains("First agree class 10 nuts instead of the class 8 ordered. "), "{answer}");
}

/// A nut that does not go on the bolt is agreed once: where the one in its place carries it, the order is that
/// of the right nut and this one thing more. Where that one has no load of its own, it is still proved.
#[test]
fn the_wrong_nut_is_one_condition() {
    let conditions = |said: &Said, process: Process| {
        let judged = &said.judgement.processes[process as usize];
        order::recommend::conditions(&said.judgement, judged).count()
    };
    for (bolt, wrong, right) in [
        ("M27 x 100 hex bolt, 10.9, C3, 15 years", "nut class 8", "nut class 10"),
        ("M36 x 150 hex bolt, 10.9, C3, 15 years", "nut class 8", "nut class 10"),
        ("M16 x 60 hex bolt, 8.8, C3, 15 years", "nut class 5", "nut class 8"),
    ] {
        let [with_wrong, with_right] = [wrong, right].map(|nut| said(&format!("{bolt}, with {nut}")));
        let taken = |said: &Said| said.answer.split(',').next().unwrap_or_default().to_owned();
        assert_eq!(taken(&with_wrong), taken(&with_right), "{bolt}");
        let counted = [&with_wrong, &with_right].map(|said| conditions(said, Process::HotDip));
        assert_eq!(counted[0], counted[1] + 1, "{bolt}: {}", with_wrong.answer);
        assert!(with_wrong.answer.contains("instead of the"), "{}", with_wrong.answer);
    }
    let deep = said("M12 x 50 hex bolt, 8.8, C3, 20 years, with nut class 5");
    assert!(deep.answer.contains("proof-loaded"), "{}", deep.answer);
}

/// ISO 10684, Annex A: a nut tapped to 6AZ carries the reduced load whatever coat the room was made for; the
/// order and the calculator read one row, with the same load.
#[test]
fn reduced_loads_follow_the_thread_and_not_the_process() {
    let text = "M10 x 40 hex bolt 8.8 with nut, C3, 15 years";
    let said = said(text);
    let report = evaluate("thread-strength", [("thread", "M10")]).unwrap();
    let of = |process| said.of(process, Key::ReducedLoads).unwrap();
    let (hot_dip, mechanical) = (of(Process::HotDip), of(Process::Mechanical));
    assert_eq!((hot_dip.0, mechanical.0), (Mark::Condition, Mark::Term));
    assert_eq!(hot_dip.1, mechanical.1);
    assert!(hot_dip.1.contains("42.2\u{a0}kN for the nut"), "{}", hot_dip.1);
    let finding = report.findings.iter().find(|found| found.mark == Mark::Condition).unwrap();
    assert_eq!(finding.text.trim_end_matches('.').to_lowercase(), hot_dip.1.to_lowercase());
    assert!(said.answer.contains("design with the reduced loads"), "{}", said.answer);
    // From M12 up the full loads hold.
    let full = self::said("M12 x 40 hex bolt 8.8 with nut, C3, 15 years");
    assert_ne!(full.of(Process::Mechanical, Key::ReducedLoads).map(|(mark, _)| mark), Some(Mark::Term));
}

/// A nut of a structural bolt, ordered alone, is coated and lubricated like its assembly: ASTM A563 and F3125
/// (memory). With the bolt the assembly says it, once.
#[test]
fn a_structural_nut_alone_is_coated_like_its_assembly() {
    for text in ["3/4-10 heavy hex nut, A563 DH, 5000 pcs, C3", "M24 heavy hex nut, A563M 10S, 500 pcs, C3"] {
        let said = said(text);
        for process in [Process::HotDip, Process::Mechanical] {
            let (mark, words) = said.of(process, Key::StructuralLubricant).unwrap();
            assert_eq!(mark, Mark::Term, "{text}: {words}");
            assert_eq!(said.of(process, Key::StructuralLot).unwrap().0, Mark::Note, "{text}");
            assert_eq!(said.of(process, Key::StructuralReuse), None, "{text}");
        }
        let offer = said.judgement.processes[Process::Mechanical as usize].offer.unwrap();
        assert_eq!(offer.class.name, "class 55", "{text}");
        assert!(said.answer.contains("nuts lubricated"), "{}", said.answer);
    }
    let set = said("3/4-10 x 2-1/2 structural bolt, A325, with DH nut and F436 washer, C3");
    let judged = &set.judgement.processes[Process::HotDip as usize];
    let told = judged.rulings.iter().filter(|(_, ruling)| ruling.rule.key == Key::StructuralLubricant);
    assert_eq!(told.count(), 1);
    // Others are not touched by it.
    let plain = said("3/4-10 heavy hex nut, A194 2H, 500 pcs, C3");
    assert_eq!(plain.of(Process::HotDip, Key::StructuralLubricant), None);
}

/// F3125, Annex A2 (memory): 240° up to 4 diameters, 360° to 8, 420° to 12; AISC 360: 28 kip for 3/4 in.
#[test]
fn the_turn_of_the_test_follows_the_length() {
    for (length, words) in
        [("2-1/2", "240°"), ("5", "360°"), ("7", "420°"), ("10", "not set for bolts longer than 12")]
    {
        let said = said(&format!("3/4-10 x {length} structural bolt, A325, C3"));
        let judged = &said.judgement.processes[Process::HotDip as usize];
        let ruling = judged.ruling(Key::RotationalCapacity).unwrap();
        let why = ruling.why(&said.judgement.case(judged, 0).unwrap());
        assert!(why.contains(words), "{length}: {why}");
    }
}

/// ISO 4042:1999, Table 2, read: beyond 15 diameters the thickness is agreed.
#[test]
fn a_plated_part_beyond_the_table_is_a_condition() {
    let of = |text| said(text).of(Process::Electroplated, Key::BeyondTable2).map(|(mark, _)| mark);
    assert_eq!(of("M12 x 200 hex bolt 8.8, ISO 4042 5 µm, C2"), Some(Mark::Condition));
    assert_ne!(of("M12 x 180 hex bolt 8.8, ISO 4042 5 µm, C2"), Some(Mark::Condition));
    assert!(said("M12 x 200 hex bolt 8.8, ISO 4042 5 µm, C2").answer.contains("agree the thickness"));
    assert_eq!(of("1/2-13 x 10 hex bolt, grade 5, Fe/Zn 5, C2"), None);
}

/// ISO 10684 takes in bolts up to class 10.9: of 12.9 in a nut tapped over no document says a load. ASTM F3125
/// lists no zinc for A490, and so no nut for it.
#[test]
fn what_lies_beyond_a_document_is_not_vouched_for() {
    let pairs = [("thread", "M12"), ("bolt_grade", "12.9"), ("nut_grade", "nut-12")];
    let (verdict, text) = strength(&pairs);
    assert_eq!(verdict, Some(Verdict::OnConditions), "{text}");
    assert!(!text.contains("full loads of ISO 898"), "{text}");
    let (_, text) = strength(&[("thread", "M12"), ("bolt_grade", "10.9"), ("nut_grade", "nut-10")]);
    assert!(text.contains("full loads of ISO 898"), "{text}");
    let pairs = [("thread", "3/4-10 UNC"), ("bolt_grade", "a490"), ("nut_grade", "a563-dh")];
    let (_, text) = strength(&pairs);
    assert!(text.contains("does not cover zinc on a bolt of ASTM F3125 grade A490"), "{text}");
}

/// So it is not asked for one where a line is judged.
#[test]
fn no_document_gives_a_load_to_a_nut_tapped_by_an_allowance_of_its_own() {
    use Style::{HeavyHex, Hex, High, Regular, Square, Thin};
    for nut in Grade::ALL.iter().filter_map(|grade| known_nut(*grade)) {
        for thread in Thread::all() {
            for style in [Thin, Regular, High, Hex, HeavyHex, Square] {
                let load = load::nut(thread, nut, style, Tapping::Own);
                assert!(load.is_err(), "{thread} {nut} {}", style.name());
            }
        }
    }
}
