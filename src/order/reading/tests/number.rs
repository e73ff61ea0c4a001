//! Numbers of a line.

use crate::order::reading::number::{Number, decimal, fraction, is_minus, mixed, number, spaced};
use crate::order::reading::token::Chain;

fn at_start(read: fn(&Chain<'_>, usize) -> Option<Number>, text: &str) -> Option<(f64, String)> {
    read(&Chain::of(text), 0).map(|number| (number.value, number.text))
}

#[test]
fn a_fraction_of_an_inch_is_less_than_one_and_of_halves_to_sixty_fourths() {
    for (text, value) in [
        ("5/8", 0.625),
        ("1/64", 0.015_625),
        ("½", 0.5),
        ("¼", 0.25),
        ("¾", 0.75),
        ("⅛", 0.125),
        ("⅜", 0.375),
        ("⅝", 0.625),
        ("⅞", 0.875),
        ("1/2/GR5", 0.5),
    ] {
        assert_eq!(at_start(fraction, text).map(|it| it.0), Some(value), "{text}");
    }
    for text in ["0/2", "2/2", "3/2", "1/3", "1 /2", "1/ 2", "1-2", "1/2/25", "12/15/2026", "1000/2"] {
        assert_eq!(at_start(fraction, text), None, "{text}");
    }
    // The end of a date is no fraction either.
    assert_eq!(fraction(&Chain::of("12/1/2"), 2), None);
}

#[test]
fn a_whole_number_and_a_fraction_stand_side_by_side() {
    for text in ["1 1/4", "1-1/4", "1.1/4", "1¼", "1-1/4/500"] {
        assert_eq!(at_start(mixed, text), Some((1.25, "1 1/4".into())), "{text}");
    }
    for text in ["1 - 1/4", "1- 1/4", "1 -1/4", "123 1/4", "1 x 1/4", "1 5/4"] {
        assert_eq!(at_start(mixed, text), None, "{text}");
    }
}

/// A mark between figures is first of all a decimal mark; what is grouped by three is told beside it.
#[test]
fn figures_may_be_grouped_by_three() {
    for (text, value, grouped) in [
        ("1200", 1200.0, None),
        ("12,5", 12.5, None),
        ("1,200", 1.2, Some(1200.0)),
        ("1.200", 1.2, Some(1200.0)),
        ("0.200", 0.2, None),
        ("1.20", 1.2, None),
        ("1.2000", 1.2, None),
        ("1234.200", 1234.2, None),
        ("1.234.567", 1_234_567.0, Some(1_234_567.0)),
        ("1'200", 1200.0, Some(1200.0)),
        (".75", 0.75, None),
    ] {
        let number = decimal(&Chain::of(text), 0).unwrap();
        assert_eq!((number.value, number.grouped), (value, grouped), "{text}");
    }
    assert_eq!(decimal(&Chain::of("12 .75"), 0).unwrap().text, "12");
    assert_eq!(decimal(&Chain::of("1,7/8"), 0).unwrap().text, "1");
    assert_eq!(at_start(number, "1/2"), Some((0.5, "1/2".into())));
}

#[test]
fn figures_may_be_grouped_by_a_space() {
    for (text, value) in [("1 200", 1200.0), ("1 200 000", 1_200_000.0), ("10 500 pcs", 10_500.0)] {
        assert_eq!(at_start(spaced, text).map(|it| it.0), Some(value), "{text}");
    }
    for text in ["1 20", "1 2000", "0 200", "1200 000", "1-200", "500"] {
        assert_eq!(at_start(spaced, text), None, "{text}");
    }
}

#[test]
fn a_minus_touches_its_number_and_nothing_before_it() {
    for (text, at, expected) in [("-5", 0, true), ("a -5", 1, true), ("a-5", 1, false), ("a - 5", 1, false)] {
        assert_eq!(is_minus(&Chain::of(text), at), expected, "{text}");
    }
}

#[test]
fn the_work_of_a_reading_is_the_tokens_that_were_looked_at() {
    let chain = Chain::of("M20 x 90");
    let looks: Vec<usize> = (0..3)
        .map(|at| {
            let _ = chain.get(at);
            chain.looked_at()
        })
        .collect();
    assert_eq!(looks, [1, 2, 3]);
}

/// A mark between figures that touch it belongs to their run, as letters do.
#[test]
fn a_run_goes_on_over_letters_figures_and_a_mark_between_figures() {
    for (text, at, run) in [
        ("M20x1.5 6g", 0, 0..6),
        ("M20x1.5 6g", 5, 0..6),
        ("10,5", 0, 0..3),
        ("10 ,5", 0, 0..1),
        ("10, 5", 0, 0..1),
        ("8.x", 0, 0..1),
        ("a.5", 0, 0..1),
        ("a-5", 2, 2..3),
        ("a 5", 1, 1..2),
    ] {
        assert_eq!(Chain::of(text).run(at), run, "{text}");
    }
}
