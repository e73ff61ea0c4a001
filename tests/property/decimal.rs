//! Our few lines for decimal digits against the standard library's.

use kettle_barrel::quantity::decimal::{fixed, parse, shortest};
use proptest::prelude::*;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(4000))]

    /// Up to 15 digits, with a point anywhere in or around them, are read to the last bit.
    #[test]
    fn up_to_fifteen_digits_are_read_exactly(mantissa in 0..1_000_000_000_000_000_u64, places in 0..=22_usize) {
        let text = format!("{mantissa}e-{places}");
        prop_assert_eq!(parse(&text), text.parse().ok(), "{}", text);
        let digits = format!("{mantissa:0>width$}", width = places + 1);
        let (whole, fraction) = digits.split_at(digits.len() - places);
        let text = format!("{whole}.{fraction}");
        prop_assert_eq!(parse(&text), text.parse().ok(), "{}", text);
    }

    /// Any other number is read to its last place.
    #[test]
    fn any_number_is_read_to_its_last_place(number in any::<f64>().prop_filter("finite", |n| n.is_finite())) {
        let text = format!("{number:e}");
        let read = parse(&text).unwrap();
        prop_assert!((read - number).abs() <= number.abs() * 1e-14 || number.abs() < 1e-300, "{} {}", text, read);
    }

    /// What is no number to the standard library is none here, but for its words.
    #[test]
    fn the_same_texts_are_numbers(text in "[-+0-9.eE]{0,12}") {
        prop_assert_eq!(parse(&text).is_some(), text.parse::<f64>().is_ok(), "{}", text);
    }

    /// Written as the standard library writes it, unless it lies between two decimals.
    #[test]
    fn numbers_are_written_alike(number in -1e9..1e9_f64, decimals in 0..=6_u8) {
        let tie = (number.abs() * 10f64.powi(i32::from(decimals))).fract();
        prop_assume!((tie - 0.5).abs() > 1e-6);
        prop_assert_eq!(fixed(number, decimals), format!("{number:.*}", usize::from(decimals)));
    }

    /// What is written in short reads back as the same number.
    #[test]
    fn short_texts_read_back(mantissa in 0..1_000_000_000_000_u64, places in 0..=8_u8) {
        let number = parse(&format!("{mantissa}e-{places}")).unwrap();
        prop_assert_eq!(shortest(number), format!("{number}"));
    }
}
