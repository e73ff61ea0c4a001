//! Measures whose word says what they are.

use super::{assert_finds, assert_refuses, assert_takes, thread};
use crate::order::reading::label::label;
use crate::order::reading::named::{date, diameter, long, of, pitch};
use crate::order::reading::what::What;

#[test]
fn a_diameter_has_its_unit() {
    for text in ["dia 20 mm", "dia. 20 mm", "Ø20mm", "20 mm dia", "20mm Ø"] {
        assert_eq!(thread(diameter, text, 0).as_deref(), Some("M20"), "{text}");
    }
    assert_takes(diameter, &[("dia 20", ""), ("20 dia", ""), ("20 mm", ""), ("dia 20 mmx", "")]);
    assert_refuses(diameter, &[("dia 7.3 mm", "no metric thread")]);
}

#[test]
fn a_date_is_a_month_and_a_day_behind_its_word() {
    assert_takes(
        date,
        &[
            ("by 12/15 A325", "by 12/15"),
            ("by 12/15/2026", "by 12/15/2026"),
            ("delivery by 12/15", "delivery by 12/15"),
            ("due: 1/31", "due: 1/31"),
            // `due` is only said of a day; `by 3/4` may be a size.
            ("due 3/4", "due 3/4"),
            ("by 3/4", ""),
            ("by 12/32", ""),
            ("by 0/15", ""),
            ("by 12/15x", ""),
            ("bolts 12/15", ""),
            ("due 12.9", "due 12.9"),
            ("due 12.9.", "due 12.9."),
            ("bis 10.9.", "bis 10.9."),
            // A class of a bolt, or a month that there is not.
            ("bis 10.9", ""),
            ("due 12.13", ""),
            ("due 32.1", ""),
            ("due 31.12", "due 31.12"),
        ],
    );
}

#[test]
fn a_pitch_is_said_by_its_word() {
    let of = |text: &str| What::Pitch(text.into());
    assert_finds(
        pitch,
        &[
            ("pitch 1.5", of("1.5")),
            ("pitch 1,5 mm", of("1.5")),
            ("1.5 mm pitch", of("1.5")),
            ("16 tpi", of("16")),
            ("16-tpi", of("16")),
            ("4 1/2 tpi", of("4 1/2")),
            ("Feingewinde 1,25", of("1.25")),
        ],
    );
    assert_takes(
        pitch,
        &[
            ("fine 2", ""),
            ("fine 4,5", ""),
            ("fine 1,5 x 60", ""),
            ("fine 1,5 kg", ""),
            ("fine 1,5HDG", ""),
            ("pitch 1.5x", ""),
            ("pitch 1,500", ""),
            ("16", ""),
        ],
    );
}

#[test]
fn a_length_by_its_name_is_not_that_of_something_else() {
    assert_takes(
        long,
        &[
            ("length 100", "length 100"),
            ("900 mm long", "900 mm long"),
            ("60 lg", "60 lg"),
            ("length 100 pcs", ""),
            ("length 8.8", ""),
            // The second measure has its own word.
            ("3/4\" length 36\"", ""),
            ("L7", ""),
        ],
    );
}

#[test]
fn what_no_field_takes_is_named_with_its_measure() {
    assert_takes(
        of,
        &[
            ("s = 24", "s = 24"),
            ("s 24", ""),
            ("AF 24", "AF 24"),
            ("AF 24 mm", "AF 24 mm"),
            ("AF 24 pcs", ""),
            ("AF 24-30", ""),
            ("AF 24 x 3", ""),
            ("114 mm inside", "114 mm inside"),
            ("75 mm AF 24", ""),
        ],
    );
}

/// `item`, `order` stand in front of a count, a size, a class or a steel as often as in front of a number.
#[test]
fn a_label_is_the_number_of_something_else() {
    assert_takes(
        label,
        &[
            ("PO 4711", "PO 4711"),
            ("PO 4711-2/3", "PO 4711-2/3"),
            ("item no. 4", "item no. 4"),
            ("drawing C4-102", "drawing C4-102"),
            ("rev C5", "rev C5"),
            ("rev 8.8", "rev 8.8"),
            ("part no. 4.6", "part no. 4.6"),
            ("drawing 8.8", ""),
            ("PO 10.9", ""),
            ("item 10", "item 10"),
            ("item 2-3/4-10 x 5", "item 2-3/4-10"),
            ("item 10.9", ""),
            ("order 500 pcs", ""),
            ("order 1-1/4-7 x 5", ""),
            ("order 3/4-10 x 5", ""),
            ("net 250 kg", ""),
            ("item A325", ""),
            ("order B7", ""),
            ("annual usage 20,000 pcs", "annual usage 20,000 pcs"),
        ],
    );
}
