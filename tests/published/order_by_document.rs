//! Orders against what documents say of them: each line, what its answer has to say, and what it must not.

use kettle_barrel::calculator::Draft;
use kettle_barrel::order::{self, reading};

/// The answer to a written line, and what of the line is not used and why.
fn said(text: &str) -> (String, String) {
    let read = reading::read(text);
    let answer = order::assess_written(&read.draft, read.has_open_words())
        .unwrap_or_else(|problems| panic!("{text}: {problems}"))
        .answer
        .text
        .replace('\u{a0}', " ");
    let not_used = read.not_used().map(|(text, why)| format!("{text}: {why}")).collect::<Vec<_>>().join("; ");
    (answer, not_used)
}

/// What each line has to say, and what it must not.
fn hold(rows: &[(&str, &str, &str)]) {
    for (text, says, never) in rows {
        let (answer, _) = said(text);
        assert!(answer.contains(says), "{text}: “{says}” is not in: {answer}");
        assert!(never.is_empty() || !answer.contains(never), "{text}: “{never}” is in: {answer}");
    }
}

/// ASTM A563, Appendix X1, and ASTM A354, 1.3: DH on bolts like A307, A449 and A354 BD, and A194 2H for DH. Proof
/// stress of hex nuts: SAE J995 grade 2 90 ksi, 5 120 ksi, 8 150 ksi; ASTM A563 DH 150 ksi, heavy 175 ksi, as A194 2H.
#[test]
fn a_stronger_nut_is_taken_where_a_document_lists_it() {
    hold(&[
        ("5/8-11 x 2 grade 5 bolt zinc plated with DH nut", "DH nuts", "agree"),
        ("5/8-11 x 2 grade 5 bolt zinc plated with 2H nut", "2H nuts", "agree"),
        ("5/8-11 x 2 grade 8 bolt zinc plated with 2H nut", "2H nuts", "agree grade"),
        ("1/2-13 x 2 grade 2 bolt zinc plated with DH nut", "DH nuts", "agree"),
        // A weaker one, one that no document lists, and those of structural bolts.
        ("5/8-11 x 2 grade 8 bolt zinc plated with grade 5 nut", "agree grade 8 nuts", ""),
        ("5/8-11 x 2 grade 5 bolt zinc plated with A563 A nut", "agree grade 5 nuts", ""),
        ("5/8-11 x 2 grade 5 bolt zinc plated with grade 8 nut", "agree grade 5 nuts", ""),
        ("1/2-13 x 3 A449 bolt zinc plated with grade 8 nut", "agree grade B nuts", ""),
        ("1/2-13 x 3 A449 bolt HDG with C nut", "agree DH nuts", ""),
        ("3/4-10 x 3 A325 bolt HDG with grade 8 nut", "agree DH nuts", ""),
    ]);
}

/// A thread of which little is left strips before the bolt breaks (ISO/TR 16224): the class is then thinner than the
/// years ask for, and the place is asked.
#[test]
fn no_class_is_chosen_that_leaves_little_thread() {
    let says = "find out how harsh the place is";
    hold(&[("7/8-9 x 6 A193 B7M stud mech galv C5 10 years", says, "of the thread left")]);
}

/// ISO 10684 and ISO 4042, Table 2, are for metric threads; screws that form their thread in wood or sheet have none.
#[test]
fn a_document_for_metric_threads_is_agreed_on_others() {
    hold(&[
        ("1/2-13 x 3 hex bolt A449, ISO 10684", "agree “ASTM F2329", ""),
        ("1/2-13 nut grade 5, ISO 10684", "agree “ASTM F2329", ""),
        ("1/2-13 x 3 hex bolt grade 5, ISO 4042 8 µm", "agree “ASTM F1941", ""),
        ("10 x 100 wood screw HDG", "hot-dip to ISO 1461", "10684"),
        ("10 x 100 wood screw ISO 10684", "agree “ISO 1461", ""),
        ("M12 x 40 hex bolt 8.8 ISO 10684", "hot-dip to ISO 10684", "“"),
        ("M12 x 40 hex bolt 8.8 F2329", "hot-dip to F2329", "“"),
    ]);
}

/// ISO 4042:1999, Table 2: P = 2 takes 8, 12 and 15 µm as g, f and e; no class of M16 takes 30 µm. A class that is
/// written is changed by agreement, and one without allowance is given its room by its maker.
#[test]
fn the_class_of_a_plated_bolt_is_changed_by_agreement() {
    let m16 = |rest: &str| format!("M16 x 60 8.8 hex bolt electroplated C3 10 years {rest}");
    let [e30, free30, g12, f12] = ["30 µm 6e", "30 µm", "12 µm 6g", "12 µm 6f"].map(m16);
    hold(&[
        (
            &e30,
            "a smaller thread before the coat. First agree a smaller thread instead of the 6e ordered",
            "To agree",
        ),
        (&free30, "To agree: the thread", "Nothing to prove"),
        (&g12, "bolt 6e before plating. First agree a smaller thread instead of the 6g ordered", ""),
        (&f12, "Take electroplated, ISO 4042, 12 µm.", "agree"),
        ("M12 x 40 8.8 hex bolt electroplated 12 µm, 6g", "nuts 6G", "agree"),
        ("M12 x 40 8.8 hex bolt electroplated 12 µm, 6h", "a smaller thread before the coat", "agree"),
        ("M12 nut class 8 electroplated 20 µm", "the mating bolt made smaller", "agree"),
        ("1/4-20 x 3 grade 5 F1941 Fe/Zn 8, 2A", "a smaller thread before the coat", "agree"),
    ]);
}

/// ISO 10684, 5: baths of 455 to 480 °C, none of 480 to 530 °C, and no high-temperature bath for 10.9 from M27.
#[test]
fn the_usual_bath_is_the_nearest_change() {
    hold(&[
        ("M30 x 100 hex bolt 10.9 HDG bath 545 °C", "a bath at 460 °C would do on conditions", ""),
        ("M16 x 60 hex bolt 8.8 HDG bath 500 °C", "a bath at 460 °C would do.", ""),
    ]);
}

/// ISO 898-5: set screws are pressed, and their mark is a tenth of the least Vickers hardness; ISO 898-1: the first
/// number of a class is a hundredth of the least strength.
#[test]
fn a_set_screw_is_as_hard_as_its_mark_says() {
    hold(&[
        ("M10 x 20 set screw 33H HDG", "hot-dip", "reduced loads"),
        ("M10 x 20 set screw 45H HDG", "Not hot-dip", "reduced loads"),
        ("M10 x 20 set screw 14.9 HDG", "Not hot-dip", "reduced loads"),
    ]);
    let read = |text| reading::read(text).draft;
    let has = |draft: &Draft, field, value| assert_eq!(draft.get(field), Some(value));
    has(&read("M10 x 20 set screw 33H"), "hardness", "330 HV");
    has(&read("M10 x 20 set screw 22H"), "end", "least");
    has(&read("M10 x 20 set screw 14.9"), "tensile", "1400 MPa");
    assert_eq!(read("M10 x 20 hex bolt 33H").get("hardness"), None);
}

/// ASTM A563M, 4.7: bolt, nut and washer by one process. ISO 965-5: a bolt cut under and a nut tapped over never
/// together; for inch threads no undersize is published. DIN 127 is for metric sizes, ASME B18.21.1 for inch ones.
/// ASTM F3125 makes bolts with heads: of a rod another steel is asked.
#[test]
fn what_does_not_go_together_is_asked() {
    for text in
        ["3/4-10 x 3 A325 bolt HDG with DH nut mech galv", "M24 x 90 10.9 HV bolt hot dip, nut electroplated"]
    {
        let (_, not_used) = said(text);
        assert!(not_used.contains("coated by one process"), "{text}: {not_used}");
    }
    let (_, not_used) = said("M16 x 60 8.8 bolt HDG with nut electroplated");
    assert!(not_used.contains("a line of its own"), "{not_used}");
    let (_, not_used) = said("5/8-11 x 6 undersized thread A307 bolt HDG with standard 2B nuts");
    assert!(not_used.contains("agree it with the maker"), "{not_used}");
    for (text, steel) in [
        ("M24 spring washer B18.21.1 HDG", "b18.21.1"),
        ("3/8 split lock washer DIN 127 zinc plated", "din-127"),
        ("M24 spring washer HDG", "din-127"),
        ("3/8 split lock washer zinc plated", "b18.21.1"),
    ] {
        assert_eq!(reading::read(text).draft.get("steel"), Some(steel), "{text}");
    }
    for (text, steel) in [("1/2-13 x 8 A325 threaded rod", "A449"), ("1/2-13 x 8 A490 threaded rod", "A354")]
    {
        let problems = order::assess(&reading::read(text).draft).unwrap_err().to_string();
        assert!(problems.contains(steel), "{problems}");
    }
}

/// ASTM A143: what is bent cold is bent over three times its section. U-bolts and bent anchors are bent by nature.
#[test]
fn what_is_bent_by_nature_has_its_radius() {
    for (text, is_bent) in [
        ("M16 U-bolt 8.8 HDG", true),
        ("3/4-10 x 24 J-bolt A307 HDG", true),
        ("3/4-10 x 24 bent anchor F1554 grade 36 HDG", true),
        ("3/4-10 x 24 anchor rod F1554 grade 36 HDG", false),
    ] {
        let assessment = order::assess(&reading::read(text).draft).unwrap();
        let says = format!("{assessment:?}").contains("three times the section");
        assert_eq!(says, is_bent, "{text}");
    }
}
