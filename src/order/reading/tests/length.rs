//! Lengths and measures with a cross between.

use super::{assert_finds, assert_refuses, assert_takes, taken, thread};
use crate::order::reading::length::{A_PLATE, across, in_mm, length, pair, several, tapping, triple};
use crate::order::reading::what::What;

fn of_pair(first: &str, second: &str, is_mm: bool) -> What {
    What::Pair { first: first.into(), second: second.into(), is_mm }
}

#[test]
fn three_measures_are_a_washer_whose_hole_is_less_than_its_outside_and_more_than_twice_its_thickness() {
    assert_finds(
        triple,
        &[
            ("17 x 30 x 3", What::Washer("17".into())),
            ("8,4x16x1,6", What::Washer("8.4".into())),
            ("17 x 30 x 3 mm 500 pcs", What::Washer("17".into())),
            ("16 x 30 x 7,9", What::Washer("16".into())),
            ("80 x 80 x 10", What::Not(A_PLATE.into())),
        ],
    );
    assert_takes(
        triple,
        &[
            ("17 x 30 x 3 mm 500 pcs", "17 x 30 x 3 mm"),
            ("30 x 17 x 3", ""),
            ("16 x 30 x 8", ""),
            ("80 x 80 x 40", ""),
            // Pieces, a range, a fraction, inches, a fourth measure, letters.
            ("17 x 30 x 3 pcs", ""),
            ("17 x 30 x 3-4", ""),
            ("17 x 30 x 3/16", ""),
            ("17 x 30 x 3\"", ""),
            ("17 x 30 x 3 x 100", ""),
            ("17 x 30 x 3HDG", ""),
            ("1,700 x 3,000 x 3", ""),
        ],
    );
    assert_eq!(taken(triple, "M17 x 30 x 3", 1), "");
}

#[test]
fn two_measures_are_a_pair_where_nothing_else_follows() {
    assert_finds(
        pair,
        &[
            ("6x30", of_pair("6", "30", false)),
            ("6 x 30 mm", of_pair("6", "30", true)),
            ("6 mm x 30", of_pair("6", "30", true)),
            ("4,8x25", of_pair("4.8", "25", false)),
            ("6x30 St", of_pair("6", "30", false)),
            ("10.9 mm x 100", of_pair("10.9", "100", true)),
            ("6 x 1-1/4", of_pair("6", "1 1/4", false)),
            ("5 x 3/4\"", of_pair("5", "3/4", false)),
            ("24 x 3/4", of_pair("24", "3/4", false)),
        ],
    );
    assert_takes(
        pair,
        &[
            // Numbers of screws go from 5 to 24 where a fraction follows, and are no millimetres.
            ("4 x 3/4", ""),
            ("25 x 3/4", ""),
            ("6 mm x 3/4", ""),
            ("6 x 1-1/4-20", ""),
            ("6 x 1-1/4drywall", ""),
            ("6 x 3/4 x 2", ""),
            ("6 x 3/4\" x 2", ""),
            ("6x30/500", ""),
            ("6 x 30 x 500", ""),
            ("6 x 30 pcs", ""),
            ("6x 30 pcs", ""),
            ("6 x30 pcs", ""),
            ("6 x 30 in", ""),
            ("6x30verz", ""),
            // Classes of bolts with the length behind the cross.
            ("8.8 x 100", ""),
            ("10.9 x 100", ""),
        ],
    );
    assert_eq!(taken(pair, "ST4.2x16", 1), "4.2x16");
    assert_eq!(taken(pair, "B4x16", 1), "");
}

/// ISO 1478: ST4,2 is No. 8.
#[test]
fn the_size_of_a_tapping_screw_is_no_count_and_no_class() {
    for (text, at) in [("ST4.2", 0), ("ST 4,2", 0), ("500 ST4.2", 1), ("st4.2", 0)] {
        assert_eq!(thread(tapping, text, at).as_deref(), Some("#8-32 UNC"), "{text}");
    }
    for (text, at) in
        [("St 4.2", 0), ("500 ST 4.2", 1), ("ST 4.6", 0), ("ST4.3", 0), ("ST4.2C", 0), ("ST x", 0)]
    {
        assert_eq!(taken(tapping, text, at), "", "{text}");
    }
    assert_finds(tapping, &[("ST4.2x16", of_pair("4.2", "16", true))]);
    assert_finds(tapping, &[("ST4.3x16", of_pair("4.3", "16", true))]);
    assert_takes(tapping, &[("ST 4.3 x 16", ""), ("ST 4.2 x 16", "ST 4.2 x 16")]);
}

#[test]
fn a_list_of_lengths_is_named_whole() {
    assert_takes(
        several,
        &[
            ("lengths 50, 60 and 70 mm, 100 pcs", "lengths 50, 60 and 70 mm"),
            ("lengths: 50/60 mm", "lengths: 50/60 mm"),
            ("lengths 2, 2-1/2", "lengths 2, 2-1/2"),
            ("long 60 and 70", "long 60 and 70"),
            ("length 60 oder 70", "length 60 oder 70"),
            ("lengths 50 & 60", "lengths 50 & 60"),
            ("lengths of 50, 60 and 70", "lengths of 50, 60 and 70"),
            ("Längen 50/60/70", "Längen 50/60/70"),
            ("L = 50/60/70", "L = 50/60/70"),
            ("50, 60 and 70 mm long", "50, 60 and 70 mm"),
            ("50, 60 and 70", ""),
            ("60 and 70 mm", ""),
            ("lengths 50 - 70 mm", "lengths 50 - 70 mm"),
            ("lengths from 2 to 4", "lengths from 2 to 4"),
            // One length, and the pieces.
            ("length 60, 500", ""),
            ("lengths 60", ""),
            ("lengths 50, 60 pcs", ""),
            ("lengths 50, 60x", ""),
            ("lengths 50, 60000", ""),
            ("widths 50, 60", ""),
        ],
    );
    assert_refuses(several, &[("lengths 50, 60", "a line for each")]);
}

#[test]
fn a_length_has_its_unit_and_what_it_is_made_of() {
    let of = |text: &str| What::Length(text.into());
    assert_finds(
        length,
        &[
            ("90 mm", of("90 mm")),
            ("9 cm", of("90 mm")),
            ("3 m", of("3 m")),
            ("36\"", of("36 in")),
            ("2-1/2 in", of("2 1/2 in")),
            ("6'", of("6 ft")),
            ("6'-4\"", of("76 in")),
            ("12 ft", of("12 ft")),
            ("1 200 mm", of("1200 mm")),
            ("40'", of("40 ft")),
        ],
    );
    // So many feet or metres are no length of a fastener; a foot's mark touches its figure.
    assert_takes(length, &[("13 ft", ""), ("21 m", ""), ("41'", ""), ("90", ""), ("90 mmHDG", "")]);
    assert_refuses(length, &[("1,200 mm", "1.2 or 1200 mm"), ("4\" pipe", "a width or a bore")]);
}

#[test]
fn behind_a_cross_a_number_is_a_length_in_the_unit_of_its_thread() {
    assert_finds(across, &[("x 1000", What::Length("1000 ?".into())), ("x 2 m", What::Length("2 m".into()))]);
    assert_finds(across, &[("x 1/2/100 pcs", What::Length("1/2 in".into()))]);
    assert_takes(
        across,
        &[
            ("x 1000 pcs", ""),
            ("x 8.8", ""),
            ("by 1000", ""),
            ("x 2-1/2/GR5", "x 2-1/2"),
            ("x 2-1/2/100 pcs", "x 2-1/2"),
            // The size of a thread, with its threads per inch.
            ("x 3/4-10", ""),
        ],
    );
}

#[test]
fn lengths_are_compared_in_millimetres() {
    for (text, mm) in [("90 mm", 90.0), ("2 m", 2000.0), ("2 in", 50.8), ("3 ft", 914.4)] {
        assert!((in_mm(text).unwrap() - mm).abs() < 1e-9, "{text}");
    }
    assert_eq!(in_mm("3 yd"), None);
    assert_eq!(in_mm("2 1/2 in"), None);
}
