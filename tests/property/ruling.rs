//! What single rules say of an order: what it means for the verdict, all of the words, and the few that are read
//! aloud.

use kettle_barrel::calculator::Mark;
use kettle_barrel::order::{self, Judgement, judge};
use kettle_barrel::process::Process::{self, Electroplated, HotDip, Mechanical};
use kettle_barrel::rule::{Key, Ruling};

fn judged(text: &str) -> Judgement {
    let read = order::reading::read(text);
    judge(&order::read(&read.draft).unwrap_or_else(|why| panic!("{text}: {why}")))
}

/// The ruling of a rule on the part that is ordered, or else on the first of its mates that it speaks of.
fn ruling(of: &Judgement, process: Process, key: Key) -> Option<(usize, Ruling)> {
    let judged = &of.processes[process as usize];
    judged.rulings.iter().find(|(_, ruling)| ruling.rule.key == key).copied()
}

/// A mark, and all of the words.
fn said(text: &str, process: Process, key: Key) -> Option<(Mark, String)> {
    let of = judged(text);
    let (place, ruling) = ruling(&of, process, key)?;
    let case = of.case(&of.processes[process as usize], place)?;
    Some((ruling.mark, ruling.text(&case).replace('\u{a0}', " ")))
}

fn brief(text: &str, process: Process, key: Key) -> String {
    let of = judged(text);
    let (place, ruling) = ruling(&of, process, key).unwrap_or_else(|| panic!("{text}: {}", key.key()));
    ruling.brief(&of.case(&of.processes[process as usize], place).unwrap()).replace('\u{a0}', " ")
}

fn holds(rows: &[(&str, Process, Key, Mark, &str)]) {
    for &(text, process, key, mark, words) in rows {
        let (says, told) = said(text, process, key).unwrap_or_else(|| panic!("{text}: {}", key.key()));
        assert_eq!(says, mark, "{text}: {told}");
        assert!(told.contains(words), "{text}: {told}");
    }
}

/// ASTM F3125, Annex A1, lists hot-dip and class 55 for A325, class 55 alone for the twist-off bolts of its
/// strength, and no plating; EN 14399 lists hot-dip and leaves the rest to an agreement.
#[test]
fn a_structural_bolt_takes_the_coats_of_its_document() {
    let a325 = "3/4-10 x 3 structural bolt A325";
    let with = |coat: &str| format!("{a325}, {coat}, C3");
    let (class_40, class_55, hot_dip, plated) =
        (with("mechanical class 40"), with("mechanical class 55"), with("hot-dip"), with("zinc plated"));
    let twist_off = "3/4-10 x 3 twist-off bolt F1852, C3";
    let key = Key::StructuralCoating;
    holds(&[
        (
            &class_40,
            Mechanical,
            key,
            Mark::Condition,
            "ASTM F3125 lists ASTM B695, class 55 for the bolt: agree another class with the purchaser",
        ),
        (&class_55, Mechanical, key, Mark::Met, "ASTM F3125 lists ASTM B695, class 55 for the bolt"),
        (&hot_dip, HotDip, key, Mark::Met, "ASTM F3125 lists ASTM F2329 for the bolt"),
        (&plated, Electroplated, key, Mark::Bar, "ASTM F3125 does not list this coat for the bolt"),
        (twist_off, HotDip, key, Mark::Bar, "ASTM F3125 forbids this coat on the bolt"),
        (twist_off, Electroplated, key, Mark::Bar, "does not list this coat"),
        (twist_off, Mechanical, key, Mark::Met, "class 55"),
        ("M20 x 60 HV bolt 10.9, C3", Mechanical, key, Mark::Condition, "gree this coat with the maker"),
        ("M20 x 60 HR bolt 8.8, C3", Electroplated, key, Mark::Condition, "gree this coat with the maker"),
        (
            "M20 x 60 structural bolt 8.8, C3",
            Mechanical,
            key,
            Mark::Note,
            "lists hot-dip; what else goes on such a bolt is agreed",
        ),
    ]);
    assert_eq!(
        brief(&class_40, Mechanical, key),
        "agree the class with the purchaser, for another is listed"
    );
    assert_eq!(brief(&plated, Electroplated, key), "F3125 does not list it");
    for text in ["M20 x 60 hex bolt 8.8, C3", "M20 x 60 hex bolt 10.9, C3"] {
        assert_eq!(said(text, Mechanical, key), None, "{text}");
    }
    // Each bolt of EN 14399 has the nuts of its own system.
    holds(&[
        ("M20 x 60 HV bolt 10.9, C3", HotDip, Key::NutByName, Mark::Term, "rder HV 10 nuts"),
        ("M20 x 60 HR bolt 10.9, C3", HotDip, Key::NutByName, Mark::Term, "rder HR 10 nuts"),
        ("M20 x 60 HR bolt 8.8, C3", HotDip, Key::NutByName, Mark::Term, "rder HR 8 nuts"),
    ]);
    // The nuts of its document go on a twist-off bolt; how another part goes together is not known.
    assert_eq!(said(twist_off, Mechanical, Key::OtherFit), None);
}

/// ISO 10684, Annex A: M8 and M10 carry reduced loads with 6AZ nuts and as 6az bolts; from M12 the full ones.
#[test]
fn reduced_loads_follow_the_thread_that_is_cut_for_zinc() {
    let key = Key::ReducedLoads;
    let cut = "M10-6az x 60 hex bolt 8.8, C3";
    holds(&[
        (cut, HotDip, key, Mark::Condition, "for M10: a proof load of 31.1 kN for the bolt"),
        (cut, Mechanical, key, Mark::Condition, "reduced loads of ISO 10684"),
        (cut, Electroplated, key, Mark::Condition, "reduced loads of ISO 10684"),
        ("M10 x 60 hex bolt 8.8, C3", HotDip, key, Mark::Condition, "a proof load of 42.2 kN for the nut"),
        (
            "M10 x 60 hex bolt 8.8, mechanical class 40, C3",
            Mechanical,
            key,
            Mark::Term,
            "a proof load of 42.2 kN for the nut",
        ),
        ("M12 x 60 hex bolt 8.8, C3", HotDip, key, Mark::Met, "o reduced loads from M12 on"),
        ("M12-6az x 60 hex bolt 8.8, C3", Mechanical, key, Mark::Met, "o reduced loads from M12 on"),
        ("M12-6az x 60 hex bolt 8.8, C3", Electroplated, key, Mark::Met, "o reduced loads from M12 on"),
    ]);
    for (text, process) in [
        ("M12 x 60 hex bolt 8.8, C3", Mechanical),
        ("M10 x 60 hex bolt 8.8, C1", Electroplated),
        ("M10 x 60 hex bolt 8.8, C1", Mechanical),
        ("1/2-13 x 2 hex bolt grade 5, C3", HotDip),
    ] {
        assert_eq!(said(text, process, key), None, "{text}");
    }
}

/// What is not said is asked for by its name.
#[test]
fn what_is_missing_is_asked_for() {
    let steel = Key::SteelNotSaid;
    let asked = Mark::NotJudged;
    for (text, key, words, aloud) in [
        ("M16 x 60 hex bolt, C3", steel, "Say the steel: without its grade", "say the steel"),
        ("M12 washer, C3", steel, "Say the steel: without its grade", "say the steel"),
        (
            "M20 x 100 hex bolt 9.8, C2",
            steel,
            "Name another steel: the one that is named is not made in this size",
            "name a steel that is made in this size",
        ),
        (
            "M16 x 60 hex bolt 35 HRC, with nut, C3",
            steel,
            "Name the grade of the nut: which one goes on the bolt follows from a grade alone",
            "name the grade of the nut",
        ),
        (
            "M10 x 40 socket screw A574 with nut, C2",
            steel,
            "Name the grade of the nut: no document known here puts one on this bolt in this size",
            "name the grade of the nut",
        ),
        (
            "M12 x 60 hex bolt 35 HRC, with washer, C3",
            steel,
            "Name the steel of the washer",
            "name the steel of the washer",
        ),
        ("hex bolt 8.8, C3", Key::SizeNotSaid, "Say the thread: the room for the coat", "say the thread"),
        (
            "washers 100 HV, C3",
            Key::SizeNotSaid,
            "Say the size: hot-dip has its coats by size",
            "say the size",
        ),
        ("M42 hex nut class 8, C3", Key::HardnessUnknown, "ive the hardness", "give the hardness"),
    ] {
        let (mark, told) = said(text, HotDip, key).unwrap_or_else(|| panic!("{text}"));
        assert_eq!(mark, asked, "{text}: {told}");
        assert!(told.contains(words), "{text}: {told}");
        assert_eq!(brief(text, HotDip, key), aloud, "{text}");
    }
    // Without a thread nothing has to take a coat but in the kettle.
    holds(&[(
        "washers 100 HV, C3",
        Mechanical,
        Key::SizeNotSaid,
        Mark::Met,
        "o thread has to take the coat",
    )]);
}

/// Table 2 of ISO 4042 gives a thread a coat that is even; at the worst corner one that is not may bind.
#[test]
fn the_room_that_was_made_is_told() {
    let key = Key::Assembles;
    holds(&[
        (
            "M12 x 60 hex bolt 8.8, Fe/Zn 8, C1",
            Electroplated,
            key,
            Mark::Note,
            "ISO 4042, Table 2, is for an even coat",
        ),
        (
            "M16 x 60 hex bolt 8.8, C3",
            HotDip,
            key,
            Mark::Term,
            "rder nuts tapped over to 6AZ, marked Z, tapped after dipping",
        ),
    ]);
    assert_eq!(brief("M16 x 60 hex bolt 8.8, C3", HotDip, key), "");
    let own = "M10 x 60 hex bolt 8.8, mechanical class 8, C1";
    holds(&[(own, Mechanical, key, Mark::Term, "on the diameter, before they are coated")]);
    assert_eq!(brief(own, Mechanical, key), "agree the nuts");
    let screw = "M10 x 60 socket screw 8.8, mechanical class 8, C1";
    assert_eq!(brief(screw, Mechanical, key), "agree the hole");
}

/// A greatest thickness is kept by a class that ends at it: the usual coat of ISO 10684 is 40 to 60 µm.
#[test]
fn a_greatest_thickness_is_held_against_both_ends_of_the_class() {
    for (most, mark) in
        [(61, Mark::Met), (60, Mark::Met), (59, Mark::Condition), (40, Mark::Condition), (39, Mark::Bar)]
    {
        let text = format!("M16 x 60 hex bolt 8.8, hot-dip, C3, max {most} µm");
        let (said, words) = said(&text, HotDip, Key::AtMost).unwrap();
        assert_eq!(said, mark, "{most}: {words}");
    }
}

/// A nut that does not go on the bolt is changed for one that does, and what the first would carry is good to know;
/// where it goes, what it carries counts.
#[test]
fn what_a_wrong_nut_carries_is_asked_once() {
    let wrong = "M20 x 90 hex bolt 10.9, nut class 8, C3";
    holds(&[
        (wrong, HotDip, Key::NutForBolt, Mark::Condition, "rder class 10 nuts instead of nut class 8"),
        (wrong, HotDip, Key::Carries, Mark::Note, "the bolt's thread strips first"),
        (
            "M20 x 90 hex bolt 10.9, nut class 10, C3",
            HotDip,
            Key::NutForBolt,
            Mark::Met,
            "goes with the bolt",
        ),
        (
            "M20 x 90 hex bolt 10.9, nut class 10, C3",
            HotDip,
            Key::Carries,
            Mark::Met,
            "full loads of ISO 898",
        ),
    ]);
}

/// One end of a hanger bolt goes into wood, a wood screw all of it; a tapping screw forms its thread in sheet.
#[test]
fn a_thread_that_is_formed_has_no_nut() {
    for (text, words, aloud) in [
        ("M8 x 60 hanger bolt 4.6, C1", "One end goes into wood", "Its other end goes into wood."),
        ("#8 x 1 in wood screw, C1", "ts thread goes into wood: no nut", "It goes into wood: no nut."),
        ("#8 x 1 in tapping screw, C1", "t forms its own thread: no nut", "It forms its own thread: no nut."),
    ] {
        let (mark, told) = said(text, HotDip, Key::OwnThread).unwrap_or_else(|| panic!("{text}"));
        assert_eq!(mark, Mark::Note);
        assert!(told.contains(words), "{text}: {told}");
        assert_eq!(brief(text, HotDip, Key::OwnThread), aloud, "{text}");
    }
    assert_eq!(said("M8 x 60 hex bolt 4.6, C1", HotDip, Key::OwnThread), None);
}

/// Of an inch thread ASTM A563 has no allowance for, of a metric one ISO 10684 no fine pitch.
#[test]
fn a_thread_without_a_published_nut_names_who_is_silent() {
    let source = |text: &str| {
        let of = judged(text);
        let (place, ruling) = ruling(&of, HotDip, Key::FinePitch).unwrap_or_else(|| panic!("{text}"));
        assert_eq!(ruling.mark, Mark::Condition, "{text}");
        ruling.source(&of.case(&of.processes[0], place).unwrap()).document.name
    };
    assert_eq!(source("1/2-20 x 2 hex bolt grade 5, C3, nut tapped over 0.020 in"), "ASTM A563");
    assert!(source("M16x1.5 x 60 hex bolt 8.8, C3").starts_with("ISO 10684"));
}

/// The document that the order does not stand under is told and moves nothing, whoever asks for what it says.
#[test]
fn a_rule_that_does_not_count_bars_nothing() {
    use kettle_barrel::rule::{Case, InForce, Under, rule};
    let of = judged("M16 x 60 hex bolt 12.9, C3");
    let case = of.case(&of.processes[HotDip as usize], 0).unwrap();
    let ban = [Key::F2329Ban, Key::Iso10684Scope].map(rule);
    for rule in ban {
        let other = Case { in_force: InForce::NONE, ..of.case(&of.processes[HotDip as usize], 0).unwrap() };
        let (counts, told) = (rule.judge(&case), rule.judge(&other).unwrap());
        assert_eq!((told.mark, told.says(&other).mark), (Mark::Note, Mark::Note), "{}", rule.key.key());
        let under = InForce::NONE.and(rule.under);
        let under = Case { in_force: under.and(rule.under), ..other };
        let barred = rule.judge(&under).unwrap();
        assert_eq!((barred.mark, barred.says(&under).mark), (Mark::Bar, Mark::Bar), "{}", rule.key.key());
        assert_eq!(counts.unwrap().counts, case.in_force.holds(rule.under));
    }
    assert!(InForce::NONE.holds(Under::Any) && !InForce::NONE.holds(Under::B695));
}
