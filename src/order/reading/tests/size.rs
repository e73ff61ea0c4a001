//! Threads by their names and sizes.

use super::{assert_refuses, assert_takes, taken, thread};
use crate::order::reading::size::{
    begins_a_size, foreign, foreign_in_front, inches, length_before, metric, numbered_in_words, thread_class,
    unified,
};
use crate::order::reading::token::Chain;

#[test]
fn a_metric_thread_takes_its_pitch_its_class_and_its_length() {
    assert_takes(
        metric,
        &[
            ("M20 HDG", "M20"),
            ("M16x1.5-6g x 60", "M16x1.5-6g | x 60"),
            ("M24-3.0", "M24-3.0"),
            ("M20-8", "M20 | -8"),
            ("M20-7", "M20"),
            ("M20-8-tZn", "M20"),
            ("M20-8 t", "M20"),
            ("M20-8 x 60", "M20"),
            ("M20-8Z", "M20"),
            ("M20x150/60", "M20 | x150 | /60"),
            ("M20x150/60 pcs", "M20 | x150"),
            ("M20x50/60/70", "M20 | x50/60/70"),
            ("M20 x 50, 60 and 70 8.8", "M20 | x 50, 60 and 70"),
            ("M20 x 50, 60 and 70 nuts", "M20 | x 50"),
            ("M20 x 50, 60, 70", "M20 | x 50"),
            ("M20 x 60 or 70 8.8", "M20 | x 60 | or | 70"),
            ("M20 x 60 mm or 70", "M20 | x 60 mm | or | 70"),
            ("M20x60/80 8.8", "M20 | x60 | / | 80"),
            ("M20x60-80", "M20 | x60 | - | 80"),
            ("M20x60 - 80", "M20 | x60"),
            ("M20x60/500", "M20 | x60"),
            ("M20x60-8.8", "M20 | x60"),
            ("M20 x 60 or 200 pcs", "M20 | x 60"),
            ("M20 x 60 or 70 nuts", "M20 | x 60"),
            ("M20 x 60 or 5/8", "M20 | x 60"),
            ("M20 x 60 or 70 mm", "M20 | x 60 | or | 70 mm"),
            ("M20 x 60 and 70 8.8", "M20 | x 60 | and | 70"),
            ("M20 x 60 to 70 8.8", "M20 | x 60 | to | 70"),
            ("M20 x 60/ 70", "M20 | x 60 | / | 70"),
            ("M20 x 60 and 50 8.8", "M20 | x 60"),
            ("M20 x 60 and 70 heavy hex nuts", "M20 | x 60"),
            ("M20 x 60 or 3 in", "M20 | x 60"),
            ("M20 x 2.5 m", "M20 | x 2.5 m"),
            ("M12 x 1.75 mm x 50", "M12 x 1.75 | mm x 50"),
            ("M16 x 60,500 pcs", "M16 | x 60"),
            ("M16*60*8.8", "M16 | *60"),
        ],
    );
    for (text, expected) in [
        ("M16x1.5-6g x 60", "M16x1.5-6g"),
        ("M24-3.0", "M24"),
        ("M24-2", "M24x2"),
        ("M20 6g", "M20-6g"),
        ("M20 2A", "M20"),
        ("M2.5", "M2.5"),
    ] {
        assert_eq!(thread(metric, text, 0).as_deref(), Some(expected), "{text}");
    }
    // Behind a number a small m with a space behind it is a metre.
    for (text, at, expected) in [
        ("3 m 20", 1, ""),
        ("3 M 20", 1, "M 20"),
        ("m20", 0, "m20"),
        ("m 20", 0, "m 20"),
        ("3 m20", 1, "m20"),
    ] {
        assert_eq!(taken(metric, text, at), expected, "{text}");
    }
}

#[test]
fn an_inch_thread_takes_its_series_its_class_and_its_length() {
    for (text, expected, pieces) in [
        ("5/8-11 UNC-2A x 2 1/2", "5/8-11 UNC-2A", "5/8-11 UNC-2A | x 2 1/2"),
        ("1-1/4-7", "1-1/4-7 UNC", "1-1/4-7"),
        ("1/2 UNC", "1/2-13 UNC", "1/2 UNC"),
        ("1/2 fine", "1/2-20 UNF", "1/2 fine"),
        ("7/8 x 3-1/2", "7/8-9 UNC", "7/8 | x 3-1/2"),
        ("1/2 x 13 x 2", "1/2-13 UNC", "1/2 x 13 | x 2"),
        ("1\"-14 x 4", "1-14", "1\"-14 | x 4"),
        ("#10-24", "#10-24 UNC", "#10-24"),
        ("#10-32 UNF-2A x 1", "#10-32 UNF-2A", "#10-32 UNF-2A | x 1"),
        ("#10 UNF x 3/4", "#10-32 UNF", "#10 UNF | x 3/4"),
        ("#10 fine x 3/4", "#10-32 UNF", "#10 fine | x 3/4"),
        ("8-32 x 1", "#8-32 UNC", "8-32 | x 1"),
    ] {
        assert!(thread(unified, text, 0).is_some_and(|it| it.starts_with(expected)), "{text}");
        assert_eq!(taken(unified, text, 0), pieces, "{text}");
    }
    // 4 1/2 threads to the inch, as 2 in and 2-1/4 in have them; no other size has such a pitch, and behind it a
    // length may stand.
    for (text, expected, taken_as) in [
        ("2-4 1/2 x 10 in", "2-4.5 UNC", "2-4 1/2 | x 10 in"),
        ("2-4½", "2-4.5 UNC", "2-4½"),
        ("2\"-4 1/2 x 10", "2-4.5 UNC", "2\"-4 1/2 | x 10"),
        ("2-1/4-4 1/2 UNC-2A x 10", "2-1/4-4.5 UNC-2A", "2-1/4-4 1/2 UNC-2A | x 10"),
        ("2 1/4-4-1/2 x 10", "2-1/4-4.5 UNC", "2 1/4-4-1/2 | x 10"),
        ("3/8-16 1 1/2 hex", "3/8-16 UNC", "3/8-16"),
    ] {
        assert_eq!(thread(unified, text, 0).as_deref(), Some(expected), "{text}");
        assert_eq!(taken(unified, text, 0), taken_as, "{text}");
    }
    assert_takes(
        unified,
        &[("8-32 pcs", ""), ("8-31 x 1", ""), ("5 x 40", ""), ("4 x 40 mm", ""), ("0 x 4", "")],
    );
    assert_takes(
        numbered_in_words,
        &[
            ("No. 8 x 1", "No. 8 | x 1"),
            ("No. 10-24", "No. 10-24"),
            ("No. 8", ""),
            ("no. 500", ""),
            ("8 x 1", ""),
        ],
    );
}

#[test]
fn in_front_of_a_thread_with_its_pitch_and_a_cross_stands_a_length() {
    assert_takes(
        length_before,
        &[
            ("3 in x 1/2-13 hex", "3 in x"),
            ("3\" x 1/2-13 UNC", "3\" x"),
            ("1-1/2 x 3/8-16", "1-1/2 x"),
            ("1 1/2 in x 3/8-16", "1 1/2 in x"),
            // Pieces; a size and a length; a thread that is larger than that would be long.
            ("3 x 1/2-13", ""),
            ("3/4 x 2-1/2", ""),
            ("1/2 x 1-8", ""),
        ],
    );
    assert_takes(unified, &[("3 in x 1/2-13", ""), ("1/2 x 3 in", "1/2 | x 3 in")]);
    // Six times as thick as long: the length stands in front.
    assert_refuses(
        unified,
        &[
            ("3\" x 1/2\"", "Write the size first"),
            ("4 in x 1/2", "or a length of 4 in"),
            ("12\" x 3/4\"", "of 12 in"),
        ],
    );
    assert_takes(unified, &[("1/2 x 1/4", "1/2 | x 1/4")]);
}

#[test]
fn a_size_in_inches_has_its_mark_or_is_a_fraction() {
    assert_takes(
        inches,
        &[
            ("3/4", "3/4"),
            ("1 1/4\"", "1 1/4\""),
            ("4\"", "4\""),
            ("4", ""),
            ("3/4x", ""),
            // Two of a thread of 1/2 in.
            ("2 1/2-13", ""),
            ("50 3/4 x 3", ""),
            ("2-1/2-13", "2-1/2"),
        ],
    );
    assert_takes(
        foreign,
        &[
            ("3/4 BSW", "3/4 BSW"),
            ("1/2-14 NPT", "1/2-14 NPT"),
            ("3/4 UNC", ""),
            ("1/2 W x 2", "1/2 W"),
            ("1/2\" W hex bolt", "1/2\" W"),
            ("1/2-12 W", "1/2-12 W"),
            ("5/8W HDG", "5/8W"),
            ("5/8W nuts", ""),
            ("1/2 W HDG", ""),
            ("1/2 W nuts", ""),
            ("1/2 W/ nuts", ""),
            ("8 W x 2", ""),
        ],
    );
    assert_takes(
        foreign_in_front,
        &[
            ("BSW 1/2 x 2", "BSW 1/2"),
            ("BSW 1 x 4", "BSW 1"),
            ("BSW 1 pc", ""),
            ("BSW 8 x 4", ""),
            ("Whitworth 1/2-12", "Whitworth 1/2-12"),
            ("W 5/8 x 50", "W 5/8"),
            ("W3/4 HDG", "W3/4"),
            ("w3/4 HDG", "w3/4"),
            ("W1\" x 100", "W1\""),
            ("w 5/8 HDG", ""),
            ("w 5/8 x 50", "w 5/8"),
            ("W 5/8 hex nuts", ""),
            ("W 1/2-13 x 2", ""),
            ("W 1/2-12 x 2", "W 1/2-12"),
            ("W 8 x 50", ""),
            ("W 3/4ksi", ""),
            ("V3/4 x 60", ""),
        ],
    );
    for text in ["1/2 x 2 bolt W 5/8 x 50", "M16 bolt W 5/8", "bolt x 2 W 5/8"] {
        let at = Chain::of(text).tokens().iter().position(|token| token.text == "W").unwrap();
        assert_eq!(taken(foreign_in_front, text, at), "", "{text}");
    }
}

/// What is behind a word for pieces, and counts none.
#[test]
fn a_size_begins_with_a_fraction_or_with_what_has_its_pitch() {
    for (text, at, is_one) in [
        ("1/2-13", 0, true),
        ("1/2", 0, true),
        ("1-1/2 x 6", 0, true),
        ("1 1/2-6", 0, true),
        ("2 1/2-13", 0, false),
        ("1-8 x 6", 0, true),
        ("1-8", 0, true),
        ("10-24", 0, true),
        ("10-25", 0, false),
        (".500-13", 1, true),
        ("a.500-13", 2, false),
        ("#8 x 1", 1, true),
        ("#8", 1, false),
        ("8 x 1", 0, false),
        ("500 pcs", 0, false),
        ("12-20 pcs", 0, false),
    ] {
        assert_eq!(begins_a_size(&Chain::of(text), at), is_one, "{text}");
    }
}

#[test]
fn a_class_of_a_thread_is_read_whole() {
    assert_takes(
        thread_class,
        &[
            ("6g", "6g"),
            ("5g6g", "5g6g"),
            ("6AZ", "6AZ"),
            ("2A", "2A"),
            ("6 g", ""),
            ("66g", ""),
            ("6g8", ""),
            ("6q", ""),
        ],
    );
}
