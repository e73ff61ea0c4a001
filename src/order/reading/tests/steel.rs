//! Steels, and the marks of preloaded assemblies.

use super::{assert_finds, assert_refuses, assert_takes, pieces, taken};
use crate::order::reading::steel::{analysis, mark, steel};
use crate::order::reading::what::{SteelWord, What};

#[test]
fn an_analysis_is_named_with_its_words() {
    assert_takes(
        analysis,
        &[
            ("AISI 4140", "AISI 4140"),
            ("SAE 1234", "SAE 1234"),
            ("4140 steel", "4140 steel"),
            ("4140 alloy steel bolts", "4140 alloy steel"),
            ("AISI 4140 alloy steel", "AISI 4140 alloy steel"),
            ("AISI 4140 alloy bolts", "AISI 4140"),
            // Four figures like any others.
            ("4140", ""),
            ("4140 alloy", ""),
            ("1234 steel", ""),
            ("AISI 41400", ""),
            ("AISI 4140x", ""),
        ],
    );
    assert_refuses(analysis, &[("4140 steel", "says no strength")]);
}

#[test]
fn the_marks_of_preloaded_assemblies_stand_beside_a_class() {
    assert_takes(
        mark,
        &[
            ("HV 10.9", "HV | 10.9"),
            ("HV 10", "HV | 10"),
            ("HV", "HV"),
            // A hardness.
            ("HV 300", ""),
            ("HV5a", ""),
            ("HR 10.9", "HR"),
            ("HR 8.8", "HR"),
            ("HR 12.9", ""),
            ("HR 10", ""),
            ("HR10.9", ""),
        ],
    );
    for (text, at, expected) in [("10.9 HR", 3, "HR"), ("10 9 HR", 2, ""), ("10.7 HR", 3, "")] {
        assert_eq!(taken(mark, text, at), expected, "{text}");
    }
    assert_takes(
        steel,
        &[
            ("10 HV", "10 | HV"),
            ("8 HV", ""),
            ("10 HR nuts", "10 | HR"),
            ("8 HR nuts", "8 | HR"),
            ("10 HR", ""),
        ],
    );
}

#[test]
fn a_letter_or_a_figure_in_front_of_a_nut_is_its_grade() {
    let half = What::Steel(SteelWord::Half("a".into()));
    assert_eq!(pieces(steel, "with A nut", 1), [("A".to_owned(), half)]);
    for (text, at) in
        [("A nut", 0), ("with A NUT", 1), ("with a nut", 1), ("with A bolt", 1), ("with E nut", 1)]
    {
        assert_eq!(taken(steel, text, at), "", "{text}");
    }
    assert_takes(steel, &[("7M nut", "7M"), ("7 M nut", ""), ("7M rods", ""), ("6M nut", "")]);
}

#[test]
fn a_class_or_a_grade_stands_behind_its_word() {
    let steel_of = |text: &str| What::Steel(super::super::steel::read(text));
    let number = |text: &str| What::Steel(SteelWord::Number(text.into()));
    let half = |text: &str| What::Steel(SteelWord::Half(text.into()));
    let unknown = |text: &str| What::Steel(SteelWord::Unknown(text.into()));
    assert_finds(
        steel,
        &[
            ("8.8", steel_of("8.8")),
            ("8,8", steel_of("8.8")),
            ("08.8", unknown("08.8")),
            ("class 10.9", steel_of("10.9")),
            ("grade/class 8.8", steel_of("8.8")),
            ("grade 5", number("5")),
            ("gr. 5", number("5")),
            ("SAE 5", number("5")),
            ("SAE grade 8", number("8")),
            ("grade 5.2", number("5.2")),
            ("class 5.2", unknown("5.2")),
            ("grade 8.1", unknown("8.1")),
            ("class 8", What::Class(8)),
            ("class 55", What::Class(55)),
            ("grade class 8", number("8")),
            ("class/grade 8", number("8")),
            ("class/grade 10", What::Class(10)),
            ("class 05", steel_of("nut class 05")),
            ("grade 55", half("55")),
            ("grade C", half("c")),
            ("grade 2H", steel_of("2h")),
            ("grade A325", steel_of("a325")),
        ],
    );
    assert_takes(
        steel,
        &[
            ("grade Z", ""),
            ("grade", ""),
            ("SAE C", ""),
            ("grade 1234", ""),
            ("class 8x", ""),
            ("8.88", ""),
            ("10.9/10", "10.9 | /10"),
            ("10.9 /10", "10.9"),
            ("10.9/10x", "10.9"),
            ("8.8HDG", "8.8"),
        ],
    );
}

#[test]
fn a_document_takes_its_grade_and_no_count_place_or_nut() {
    assert_takes(
        steel,
        &[
            ("A193 B7", "A193 B7"),
            ("A194-2H", "A194-2H"),
            ("A194-7", "A194-7"),
            ("A194 7 nuts", "A194 7"),
            ("A194 7 heavy hex nuts", "A194 7"),
            ("A194 7 pcs", "A194"),
            ("A194 gr 7", "A194 gr 7"),
            ("A307 B", "A307 B"),
            ("A307 C3", "A307"),
            ("A563 C3", "A563 C3"),
            ("A563 DH", "A563 DH"),
            ("F1554 36", "F1554 36"),
            ("F1554 gr 105", "F1554 gr 105"),
            ("F1554 500", "F1554"),
            ("A325 DH", "A325"),
            ("F3125 grade A325", "F3125 grade A325"),
            ("L7/7", "L7 | /7"),
            ("L7/77", "L7"),
            ("L7 /7", "L7"),
            ("B7/2H", "B7"),
        ],
    );
}

#[test]
fn letters_behind_a_structural_bolt_say_its_type_its_thread_or_its_joint() {
    assert_takes(
        steel,
        &[
            ("A325T", "A325 | T"),
            ("A325TC", "A325TC"),
            ("A490TC", "A490TC"),
            ("A325T1", "A325 | T1"),
            ("A325TY3", "A325 | TY3"),
            ("A325-N", "A325 | -N"),
            ("A325X", "A325 | X"),
            ("A325 SC", "A325 | SC"),
            ("A325 N", "A325"),
            ("A325-1", "A325 | -1"),
            ("A325-3", "A325 | -3"),
            ("A325-12x", "A325"),
            ("A307-N", "A307"),
        ],
    );
    let steels = |text: &str| pieces(steel, text, 0).into_iter().map(|(_, what)| what).next();
    assert_eq!(steels("A325TC"), Some(What::Steel(super::super::steel::read("f1852"))));
    assert_eq!(steels("A490TC"), Some(What::Steel(super::super::steel::read("f2280"))));
    let second = |text: &str| pieces(steel, text, 0).into_iter().map(|(_, what)| what).nth(1);
    for text in ["A325T1", "A325TY1", "A325-1"] {
        assert_eq!(second(text), Some(What::Filler), "{text}");
    }
    for text in ["A325T", "A325T3", "A325-3", "A325-N", "A325 SC"] {
        assert!(matches!(second(text), Some(What::Not(_))), "{text}");
    }
}
