//! The marks of threads that make room for the coat.

use super::taken;
use crate::order::reading::mark::{marked, of_a_unit, tapped_mark, undercut};

/// ISO 10684: U is the mark of a bolt cut under, Z and X of a nut tapped over to 6AZ and 6AX.
#[test]
fn the_marks_of_threads_that_make_room_for_the_kettle() {
    for (text, at, expected) in [
        ("8.8 U", 3, "U"),
        ("8.8U", 3, "U"),
        ("8.8 - U", 4, "U"),
        ("8.8 U bolts", 3, ""),
        ("8.8 u", 3, ""),
        ("feuerverzinkt U", 1, "U"),
        ("HDG U 100", 1, "U"),
        ("HDG U tZn", 1, "U"),
        ("HDG U nuts", 1, ""),
        ("HDG U5", 1, ""),
        ("U", 0, ""),
        ("bolts U", 1, ""),
        ("8 U bolts", 1, ""),
        ("8 U with", 1, "U"),
        // The unit, the price, the weight of one, and a variant.
        ("8.8 U/M", 3, ""),
        ("HDG U/P 0.5", 1, ""),
        ("HDG U.M.", 1, ""),
        ("HDG U/8", 1, "U"),
        ("HDG item U", 2, ""),
    ] {
        assert_eq!(taken(undercut, text, at), expected, "{text}");
    }
    for (text, expected) in [
        ("U/M EA", "U/M"),
        ("U/M: EA", "U/M:"),
        ("u/p 0.50", "u/p 0.50"),
        ("U/P 50", "U/P"),
        ("U.W.", "U.W."),
        ("U/Mutter", ""),
        ("U/M16", ""),
        ("U M", ""),
        ("U/8", ""),
    ] {
        assert_eq!(taken(of_a_unit, text, 0), expected, "{text}");
    }
    for (text, at, expected) in [
        ("8 Z", 0, "8 | Z"),
        ("8X", 0, "8 | X"),
        ("10 AZ", 0, "10 | AZ"),
        ("8 U", 0, ""),
        ("7 Z", 0, ""),
        ("8 Z5", 0, ""),
        ("8.8 Z", 2, ""),
    ] {
        assert_eq!(taken(tapped_mark, text, at), expected, "{text}");
    }
    for (text, at, expected) in [
        ("U marked", 0, "U marked"),
        ("marked Z", 0, "marked Z"),
        ("marked with Z", 0, "marked with Z"),
        ("mark: X", 0, "mark: X"),
        ("AZ", 0, "AZ"),
        ("Z", 0, ""),
        ("class 8 Z", 2, "Z"),
        ("class 8 U", 2, ""),
        ("class 7 Z", 2, ""),
        ("8.8 Z", 3, ""),
    ] {
        assert_eq!(taken(marked, text, at), expected, "{text}");
    }
}
