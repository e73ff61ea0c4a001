//! The answer that is read aloud: short, never without a condition of what it recommends, never
//! recommending what is ruled out. The sense of the ten orders is common practice.

use std::fs;

use kettle_barrel::calculator::{Address, Draft, Mark, Verdict};
use kettle_barrel::coat::Process::{Electroplated, HotDip, Mechanical};
use kettle_barrel::order::{self, Answer, answer::WORDS, recommend};

fn orders() -> Vec<Draft> {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/property/golden.txt");
    let lines = fs::read_to_string(path).unwrap();
    let addresses = lines.lines().filter_map(|line| Some(line.split_once(" order ")?.1.to_owned()));
    addresses.map(|address| Address::read(&address).0.draft).collect()
}

#[test]
fn the_answers_of_four_hundred_orders() {
    let (mut words, mut instructions) = (Vec::new(), Vec::new());
    for draft in orders() {
        let line = order::read(&draft).unwrap();
        let judgement = order::judge(&line);
        let assessment = order::assess(&draft).unwrap();
        let Answer { text, recommended, .. } = &assessment.answer;
        let count = text.split_whitespace().count();
        assert!(count <= WORDS, "{count} words: {text}");
        words.push(count);
        let taken = judgement.processes.iter().find(|judged| Some(judged.process) == *recommended);
        let Some(taken) = taken else {
            assert!(judgement.processes.iter().all(|judged| judged.verdict() == Verdict::RuledOut), "{text}");
            continue;
        };
        assert_ne!(taken.verdict(), Verdict::RuledOut, "{text}");
        for condition in recommend::conditions(&judgement, taken) {
            let brief = condition.brief(&judgement, taken);
            assert!(!brief.is_empty() && text.contains(&brief), "“{brief}” is not in: {text}");
        }
        instructions.push(recommend::conditions(&judgement, taken).count());
    }
    let median = |numbers: &mut Vec<usize>| {
        numbers.sort_unstable();
        numbers[numbers.len() / 2]
    };
    println!(
        "median of 400 answers: {} words, {} conditions of what is recommended",
        median(&mut words),
        median(&mut instructions)
    );
}

/// The most words of a process before anything is unfolded.
const WORDS_OF_A_PROCESS: usize = 150;

/// Sets, as they are written: the orders of `golden.txt` have bolts alone.
const SETS: [&str; 10] = [
    "3/4-10 x 2-1/2 structural bolt, A325, with DH nut and F436 washer, C3, 15 years",
    "7/8-9 x 4 structural bolt, A325, with DH nut and two F436 washers, 400 sets, C5, 30 years",
    "5/8-11 x 4 stud, B7, two 2H nuts, C3, 15 years",
    "M16 x 60 hex bolt, 8.8, with nut and washer, 1000 sets, C4, 20 years",
    "M20 x 90 hex bolt, 10.9, class 10 nut and two washers, C5, 12 years",
    "M24 x 80 structural bolt, 10.9, with nut and washer, 300 sets, C3, 15 years",
    "M10 x 50 hex bolt, 8.8, with nut and washer, 10000 sets",
    "1-1/4-7 x 12 in hex bolt, A354 BD, with DH nut and F436 washer, 40 sets, C4, 15 years",
    "M12 x 60 hex bolt, 12.9, with nut and washer, C4, 10 years",
    "1/2-13 x 3 hex bolt, grade 8, with nut and washer, C3",
];

/// What the terminal prints of each process before its reasons and notes, without the documents named
/// beside the sentences; the page shows the same, with the name of the vessel and of the fold.
#[test]
fn a_process_has_at_most_150_words_before_anything_is_unfolded() {
    let drafts = orders().into_iter().chain(SETS.map(|line| order::reading::read(line).draft));
    let (mut counts, mut with_sources) = (Vec::new(), Vec::new());
    for draft in drafts {
        let assessment = order::assess(&draft).unwrap();
        let text = assessment.to_string();
        for process in &assessment.processes {
            let head = format!("\n{}: ", process.process.name());
            let from = text.find(&head).unwrap();
            let mut shown = text[from..].trim_start().split("\n\n").next().unwrap().to_owned();
            with_sources.push(words(&shown));
            for finding in &process.findings {
                let source = format!("{} [{}]", finding.text, finding.source);
                assert!(shown.contains(&source), "“{source}” is not in: {shown}");
                shown = shown.replacen(&source, &finding.text, 1);
            }
            let count = words(&shown) + words("the kettle, Reasons and notes, 9");
            assert!(count <= WORDS_OF_A_PROCESS, "{count} words, {}:\n{shown}", Address::new("order", draft));
            counts.push(count);
        }
    }
    for (what, mut counts) in [("", counts), (" and documents", with_sources)] {
        counts.sort_unstable();
        let (median, most) = (counts[counts.len() / 2], counts[counts.len() - 1]);
        println!("median of {} processes: {median} words{what}, {most} at most", counts.len());
    }
}

fn words(text: &str) -> usize {
    text.split_whitespace().count()
}

/// Whatever is folded is told: each reason, each note, and what would be asked of what is ruled out.
#[test]
fn what_is_folded_is_printed_behind() {
    for draft in orders() {
        let assessment = order::assess(&draft).unwrap();
        let text = assessment.to_string();
        for process in &assessment.processes {
            let out = process.verdict == Verdict::RuledOut;
            assert!(process.findings.iter().all(|finding| if out {
                finding.mark == Mark::Bar
            } else {
                finding.mark > Mark::Note
            }));
            for finding in &process.folded {
                assert!(text.contains(&finding.to_string()), "{finding} is not in: {text}");
            }
        }
    }
}

/// What nobody said is said once, and first.
#[test]
fn what_is_missing_is_said_once_and_first() {
    let draft = order::reading::read("M16 x 60 hex bolt, C3, 15 years").draft;
    let text = order::assess(&draft).unwrap().answer.text;
    assert!(text.starts_with("First say the steel. Take "), "{text}");
    assert_eq!(text.matches("say the steel").count(), 1, "{text}");
    assert!(!text.contains("Nothing to prove"), "{text}");
}

/// Order, process to take, what must be said.
#[test]
fn ten_orders_as_they_are_answered_on_a_call() {
    let ten = [
        (
            "M16 x 60 hex bolt, 8.8, C3, 15 years",
            Some(HotDip),
            &["6AZ marked Z", "Nothing to prove", "19 years", "8.6 years"][..],
        ),
        (
            "M20 x 90 hex bolt, 10.9, C4, 12 years",
            Some(Mechanical),
            &["class 55", "tapped over", "12.6 years", "4.8 years"],
        ),
        (
            "M10 x 40 socket screw, A574, C3, 10 years",
            Some(Mechanical),
            &["class 25", "room in the tapped hole", "takes the temper"],
        ),
        (
            "3/4-10 x 2-1/2 structural bolt, A325, with DH nut and F436 washer, C3, 15 years",
            Some(HotDip),
            &["F2329", "DH nuts", "lubricated", "rotational-capacity", "does not list it"],
        ),
        ("M12 washers, 4.6, 20,000, C3, 15 years", Some(Mechanical), &["class 40", "Hot-dip", "also suit"]),
        ("M6 x 20 hex screw, 8.8, C1", Some(Electroplated), &["ISO 4042", "5 µm", "Mechanical", "below M8"]),
        ("3/4-10 structural bolt, A490", None, &["None of the three", "zinc flake", "A325"]),
        (
            "5/8-11 x 4 stud, B7, two 2H nuts, C3, 15 years",
            Some(HotDip),
            &["2H nuts", "0.020", "after dipping", "Nothing to prove", "also suits", "above 200 °C"],
        ),
        (
            "Retaining rings, 50 HRC, C2",
            Some(Mechanical),
            &["test for embrittlement with the plater", "Not hot-dip", "45 HRC"],
        ),
        (
            "Drywall screws, case-hardened, C2",
            Some(Mechanical),
            &["class 12", "Electroplated", "Not hot-dip", "case-hardened"],
        ),
    ];
    for (text, process, said) in ten {
        let draft = order::reading::read(text).draft;
        let assessment = order::assess(&draft).unwrap_or_else(|problems| panic!("{text}: {problems}"));
        assert_eq!(assessment.answer.recommended, process, "{text}: {}", assessment.answer.text);
        let answer = assessment.answer.text.replace('\u{a0}', " ");
        for words in said {
            assert!(answer.contains(words), "“{words}” is not in: {answer}");
        }
    }
}

/// A screw that forms its own thread is shown by its size, and what an order leaves out is told as that.
#[test]
fn a_size_is_no_machine_thread_and_what_is_left_out_is_told_so() {
    let text = |line: &str| order::assess(&order::reading::read(line).draft).unwrap().to_string();
    let screw = text("ST4.2 x 16 tapping screws, C2");
    assert!(screw.contains("Size: #8, ST4.2 of ISO 1478") && !screw.contains("UNC"), "{screw}");
    let bolt = text("M16 x 60 hex bolt, 8.8, C3, B695-55, no HDG");
    assert!(bolt.contains("Suits, left out by the order: Hot-dip."), "{bolt}");
}

/// Of each order what must be said, and what must not.
#[test]
fn what_is_asked_is_answered_and_what_is_left_out_is_not_offered() {
    let lines: [(&str, &[&str], &[&str]); 60] = [
        ("M16 x 60 hex bolt, 8.8, C3, 15 years, no HDG", &["Take mechanical"], &["ot-dip"]),
        ("M16 x 60 hex bolt, 8.8, C3, 15 years, HDG, no mech galv", &["Take hot-dip"], &["echanical"]),
        ("M6 x 20 hex bolt, 8.8, C3, no mech galv, no plating", &["Not hot-dip, as asked"], &["Take"]),
        // A coat that is not judged is told so before zinc is advised.
        (
            "M16 x 60 hex bolt, 8.8, C3, cadmium plated",
            &["Cadmium is asked for, and is not judged here. Of zinc, take"],
            &[],
        ),
        (
            "M16 x 60 hex bolt, 8.8, C3, zinc flake",
            &["Zinc flake is asked for, and is not judged here. Of zinc, take"],
            &[],
        ),
        (
            "M16 x 60 hex bolt, 8.8, C3, plain",
            &["A part without zinc is asked for, and is not judged here."],
            &[],
        ),
        ("M16 x 60 hex bolt, 8.8, C3, zinc flake or HDG", &["Take hot-dip"], &["not judged here"]),
        // A class that does not last or does not fit names the nearest of its document.
        ("M16 x 60 hex bolt, 8.8, B695 class 8, C4, 15 years", &["as asked", "class 25 would do"], &[]),
        ("M8 x 30 hex bolt, 8.8, B695 class 80, C3", &["as asked", "class 50 would do"], &[]),
        // Whoever has to agree is named.
        ("3/8-16 x 2 hex bolt, grade 8, HDG, C3", &["have the maker agree in writing"], &[]),
        // The part of a set that a process is not for is named.
        ("M16 x 60 bolt, 8.8, HDG, C3, with spring washer", &["as asked: spring lock washer, harder"], &[]),
        ("M16 x 60 bolt, 8.8, C3, with washer 46 HRC", &["Not hot-dip: plain washer, harder"], &[]),
        ("1/2-13 lock nut, grade B, HDG", &["the insert goes in after the bath"], &["Nothing to prove"]),
        // What is left out is not offered beside a class either.
        ("M16 x 60 hex bolt, 8.8, C3, B695-55, no HDG", &["Take mechanical, B695 class 55"], &["ot-dip"]),
        ("M16 x 60 hex bolt, 8.8, C3, zinc 50 µm", &["Take hot-dip"], &["lectroplated"]),
        // What forms its own thread takes no nut; of another part the fit is asked first.
        ("1/2 x 4 lag screws, A307, HDG, C3", &["Take hot-dip to F2329.", "into wood: no nut"], &["tapped"]),
        ("ST4.2 x 16 tapping screws, C2", &["It forms its own thread: no nut."], &["UNC"]),
        ("3/4-10 turnbuckles, A307, HDG, C3", &["First agree the room for the coat"], &["Nothing to prove"]),
        // What is not in air has no years, and no place is asked of it; plate is too thin where it is wet.
        (
            "M16 x 60 hex bolt, 8.8, HDG, C5, immersed, 10 years",
            &[
                "First have its life in water judged by EN 12502-3",
                "Not electroplated: far too thin in water",
            ],
            &["place", "Sure for", "Nothing to prove"],
        ),
        (
            "M16 x 60 hex bolt, 8.8, zinc plated, buried",
            &["as asked: far too thin in soil"],
            &["say the place"],
        ),
        ("1/2-13 x 6 hex bolt, A307, HDG, preserved timber", &["judged by EN 1995-1-1"], &["Sure for"]),
        // Zinc bears 200 °C for good, and bolts of ISO 898-1 are used up to 150 °C.
        ("M16 x 60 hex bolt, 8.8, HDG, C3, service temperature 150 °C", &["Nothing to prove"], &["chosen"]),
        (
            "M16 x 60 hex bolt, 8.8, HDG, C3, service temperature 200 °C",
            &["First have the steel chosen for 200 °C. Take hot-dip"],
            &["Nothing to prove", "hotter"],
        ),
        ("M16 x 60 stud, B7, HDG, C3, service temperature 200 °C", &["Nothing to prove"], &["chosen"]),
        (
            "M16 x 60 hex bolt, 8.8, HDG, C3, service temperature 250 °C",
            &["hotter than 200 °C at times only"],
            &[],
        ),
        (
            "M16 x 60 hex bolt, 8.8, HDG, C3, service temperature 300 °C",
            &["None of the three: zinc"],
            &["Take"],
        ),
        // A structural bolt is turned on a hardened washer, and not every nut of a grade is a heavy hex.
        ("3/4-10 x 3 A325, HDG, C3, with F844 washer", &["First agree F436 washers"], &["Nothing to prove"]),
        ("3/4-10 x 3 A325, HDG, C3, with SAE washers", &["First agree F436 washers"], &["Nothing to prove"]),
        ("3/4-10 x 12 anchor rod, F1554 55, HDG, C3, A563 A nut", &["grade A nuts as heavy hex"], &[]),
        ("3/4-10 hex nut, A563 C, HDG, C3", &["grade C nuts as heavy hex"], &[]),
        ("2-4.5 hex nut, A563 DH, HDG, C3", &["DH nuts as heavy hex"], &[]),
        ("1-8 hex nut, A563 DH, HDG, C3", &["Nothing to prove"], &["as heavy hex"]),
        // Of two steels none is judged, and of two finishes the one that is wanted first.
        ("M16 x 60 hex bolt, 8.8/10.9, HDG, C3", &["First say the steel"], &["Nothing to prove"]),
        ("M16 x 60 hex bolt, 10.9 or 8.8, HDG, C3", &["First say the steel"], &["Nothing to prove"]),
        (
            "M16 x 60 hex bolt, 12.9, HDG, if not possible zinc plated, C3",
            &["Not hot-dip, as asked", "Take electroplated", "Mechanical, B695 class 12, also suits"],
            &["leaves out"],
        ),
        (
            "M16 x 60 hex bolt, 10.9, HDG or zinc plated, C3",
            &["Take hot-dip", "Mechanical, B695 class 50, also suits"],
            &["leaves out"],
        ),
        (
            "M16 x 60 hex bolt, 8.8, without zinc, C3",
            &["A part without zinc is asked for, and is not judged here."],
            &[],
        ),
        (
            "M16 x 60 hex bolt, 8.8, not galvanized, C3",
            &["A part without zinc is asked for, and is not judged here."],
            &[],
        ),
        // Of a steel of which the least hardness is known no softer one is judged.
        ("M16 x 60 hex bolt, over 40 HRC, HDG, C3", &["Not hot-dip, as asked: harder than 39 HRC"], &[]),
        (
            "M16 x 60 hex bolt, min 38 HRC, HDG, C3",
            &["First say the greatest hardness", "Then get the maker's"],
            &["Nothing to prove"],
        ),
        // Hydrogen goes by the greatest: it is asked where it can still rule out, or ask for a bake or a test.
        (
            "M12 x 50 hex bolt, min 38 HRC, zinc plated, C2",
            &["First say the greatest"],
            &["Nothing to prove"],
        ),
        (
            "M12 x 50 hex bolt, at least 1200 MPa, zinc, C2",
            &["First say the greatest"],
            &["Nothing to prove"],
        ),
        ("M12 x 50 hex bolt, at least 42 HRC, mech zinc, C2", &["First say the greatest"], &["Nothing"]),
        ("M12 x 50 hex bolt, min 46 HRC, mech zinc, C2", &["First agree a test"], &["say the greatest"]),
        ("M12 x 50 hex bolt, min 30 HRC, max 38 HRC, zinc, C2", &["Nothing to prove"], &["the greatest"]),
        ("M16 washers, min 200 HV, HDG, C3, 900 pcs", &["Nothing to prove"], &["say the greatest"]),
        // Stress is relieved before any plate: by B633, else by common practice; the kettle asks for none.
        ("M10 x 40 hex bolt, 10.9, ground after hardening, zinc plated, C1", &["relieve stress"], &[]),
        ("1/2-13 x 2 hex bolt, grade 8, ground after hardening, F1941, C1", &["relieve stress"], &[]),
        ("M16 x 60 hex bolt, 10.9, ground after hardening, HDG, C3", &["Take hot-dip"], &["relieve"]),
        // A washer that is proposed here asks for no bake and no test; one that is named does.
        (
            "1/2-13 x 2 hex bolts, grade 5, with washers, zinc plated, C2",
            &["Nothing to prove"],
            &["bake", "washers"],
        ),
        (
            "1/2-13 x 2 hex bolts, grade 8, with washers, zinc plated, C2",
            &["Nothing to prove", "washers no harder than 39 HRC"],
            &["bake", "embrittlement"],
        ),
        (
            "1/2-13 x 2 hex bolts, grade 8, with F436 washers, zinc plated, C2",
            &["agree a test for embrittlement", "bake within 4 h"],
            &["no harder"],
        ),
        // Another metal uses zinc up where it is wet; the years of the air hold for what is kept apart from it.
        (
            "M16 x 60 hex bolt, 8.8, HDG, C3, in contact with stainless, 15 years",
            &["First insulate it from the stainless steel. Take hot-dip", "Insulated, sure for 19 years"],
            &["Nothing to prove", "far too thin", "judged by"],
        ),
        (
            "M16 x 60 hex bolt, 8.8, HDG, C3, in contact with titanium, 15 years",
            &["First insulate it from the other metal. Take hot-dip", "Insulated, sure for 19 years"],
            &["Nothing to prove"],
        ),
        (
            "M16 x 60 hex bolt, 8.8, HDG, C3, in contact with aluminium, 15 years",
            &["Take hot-dip", "Nothing to prove"],
            &["insulate", "Insulated"],
        ),
        (
            "M16 x 60 hex bolt, 8.8, C1, in contact with copper",
            &["Nothing to prove"],
            &["insulate", "Insulated"],
        ),
        (
            "M16 x 60 hex bolt, 10.9, ground after hardening, mech galv, C2",
            &["relieve stress before cleaning"],
            &[],
        ),
        // Of a nut or a bolt of its own shape the thread is like any other.
        ("3/4-10 wing nuts, A563 A, HDG, C3", &["tapped over by 0.020 in"], &["agree the room"]),
        // What needs no size is said without it.
        ("hex bolt, 8.8, C3, 15 years", &["First say the thread. Take hot-dip"], &["Nothing to prove"]),
        ("cotter pins, C2", &["First say the steel. Take mechanical", "say the size"], &["say the thread"]),
    ];
    for (line, said, unsaid) in lines {
        let answer = order::assess(&order::reading::read(line).draft).unwrap().answer.text;
        let answer = answer.replace('\u{a0}', " ");
        assert!(said.iter().all(|words| answer.contains(words)), "{line}: {answer}");
        assert!(!unsaid.iter().any(|words| answer.contains(words)), "{line}: {answer}");
        assert!(answer.matches("First ").count() <= 1, "{line}: {answer}");
    }
}

/// An allowance that the customer writes is ordered as well where only an even coat goes together in it: 0.25 mm
/// takes 0.25 / 4 mm of an even coat, 62 µm, less what the thread of the nut begins with.
#[test]
fn an_allowance_that_is_barely_enough_is_on_the_order() {
    for (line, by) in [
        ("M20 x 80 hex bolt, 8.8, HDG, nut tapped over by 0.25 mm, C3", "0.25"),
        ("3/4-10 x 3 hex bolt, grade 5, HDG, nut tapped over by 0.010 in, C3", "0.010"),
    ] {
        let assessment = order::assess(&order::reading::read(line).draft).unwrap();
        let Answer { text, order, .. } = &assessment.answer;
        let order = order.replace('\u{a0}', " ");
        assert!(order.contains(&format!("tapped over by {by}")), "{order}");
        assert!(text.contains("First prove the fit of a trial lot with its nuts"), "{text}");
        let [hot_dip, ..] = &assessment.processes[..] else { panic!() };
        let asked: Vec<&str> = hot_dip.findings.iter().map(|finding| finding.text.as_ref()).collect();
        let holds = |text: &&str| {
            text.replace('\u{a0}', " ").contains(by) && text.contains("old the coat to at most")
        };
        assert!(asked.iter().any(holds), "{asked:?}");
    }
}
