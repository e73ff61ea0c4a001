//! The lists of nuts and washers, made when the program runs as they are when it is compiled.

use super::{
    BY_HARDNESS, BY_LEAST_HARDNESS, Choice, HOLE, HOLE_AS_IT_STANDS, NUTS, STANDARD, WASHERS, WIDTHS,
    WITH_NUT, WITH_WASHER, WITHOUT,
};
use super::{count, keys, mates};
use crate::steel::Grade;

const NUT_COUNT: usize = count(true) + 6;
const WASHER_COUNT: usize = count(false) + 4 + WIDTHS.len();

#[test]
fn the_mates_of_a_bolt_are_none_the_standard_one_each_grade_and_one_of_a_hardness() {
    for (nuts, list) in [(true, &NUTS[..]), (false, &WASHERS[..])] {
        let of = |grade: &&Grade| if nuts { grade.is_nut() } else { grade.is_washer() };
        let grades: Vec<&str> = Grade::ALL.iter().filter(of).map(|grade| grade.key()).collect();
        assert_eq!(count(nuts), grades.len());
        let widths = WIDTHS.iter().filter(|_| !nuts).map(|kind| kind.key());
        let holes = [HOLE, HOLE_AS_IT_STANDS].into_iter().filter(|_| nuts);
        let expected: Vec<&str> = [WITHOUT, STANDARD]
            .into_iter()
            .chain(grades)
            .chain([BY_HARDNESS, BY_LEAST_HARDNESS])
            .chain(widths)
            .chain(holes)
            .collect();
        assert_eq!(list.iter().map(|choice| choice.key).collect::<Vec<_>>(), expected);
    }
    let nuts: [Choice; NUT_COUNT] = mates(true, NUTS[0].label, NUTS[1].label);
    assert_eq!(nuts, NUTS);
    let washers: [Choice; WASHER_COUNT] = mates(false, WASHERS[0].label, WASHERS[1].label);
    assert_eq!(washers, WASHERS);
}

#[test]
fn what_comes_with_a_bolt_is_every_choice_but_the_first() {
    assert_eq!(keys::<{ NUT_COUNT - 3 }>(&NUTS), WITH_NUT);
    assert_eq!(keys::<{ WASHER_COUNT - 1 }>(&WASHERS), WITH_WASHER);
    assert!(!WITH_NUT.contains(&WITHOUT) && WITH_NUT.contains(&STANDARD) && WITH_NUT.contains(&BY_HARDNESS));
    assert!(WITH_WASHER.iter().zip(&WASHERS[1..]).all(|(key, choice)| *key == choice.key));
}
