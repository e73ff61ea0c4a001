//! Numbers of pieces and their price.

use super::{assert_refuses, assert_takes, pieces, taken};
use crate::order::reading::count::count;
use crate::order::reading::money::{money, price};
use crate::order::reading::what::What;

#[test]
fn pieces_are_counted_by_their_unit() {
    for (text, all, are_sets) in [
        ("1200 pcs", 1200, false),
        ("1,200 pcs", 1200, false),
        ("qty: 500", 500, false),
        ("qty 1 200", 1200, false),
        ("12 dozen", 144, false),
        ("2.5K", 2500, false),
        ("500 sets", 500, true),
        ("5 dozen sets", 60, true),
        ("10 hundred pcs", 1000, false),
        ("5 boxes of 100", 500, false),
        ("5 boxes @ 100 pcs", 500, false),
        ("5 boxes of 2 dozen", 120, false),
        ("3 pallets of 20 boxes of 50", 3000, false),
        ("3 pallets x 20 boxes x 50 pcs", 3000, false),
        ("100 pc box x 20", 2000, false),
        ("box of 50 x 20", 1000, false),
        ("half dozen", 6, false),
        ("half a dozen", 6, false),
        ("1/2 gross", 72, false),
        ("1-1/2 gross", 216, false),
        ("2 1/2 dozen", 30, false),
        ("1½ hundred", 150, false),
        ("a dozen", 12, false),
        ("twelve pcs", 12, false),
        ("two hundred pcs", 200, false),
        ("hundred pcs", 100, false),
        ("one thousand two hundred", 1200, false),
        ("one hundred and fifty sets", 150, true),
        ("two hundred and twenty-five bolts", 225, false),
        ("two million five hundred thousand and one pcs", 2_500_001, false),
        ("5 hundred and fifty pcs", 550, false),
        ("one hundred and two nuts", 102, false),
        ("thirty-five pcs", 35, false),
        ("twenty two pcs", 22, false),
        ("one thousand 200 pcs", 1200, false),
        ("10 boxes, 50 per box", 500, false),
        ("10 boxes, 50 pcs/box", 500, false),
        ("10 boxes, each 50 pcs", 500, false),
        ("pcs: 500", 500, false),
        ("Stk.: 500", 500, false),
        ("40 no", 40, false),
    ] {
        match pieces(count, text, 0).as_slice() {
            [(_, What::Count(counted))] => {
                assert_eq!(
                    (counted.pieces, counted.sets, counted.negative),
                    (all, are_sets, false),
                    "{text}"
                );
            }
            other => panic!("{text}: {other:?}"),
        }
    }
    assert_takes(
        count,
        &[
            ("500", ""),
            ("a piece", ""),
            ("pcs 500", ""),
            ("pcs: 500 kg", ""),
            ("pcs: 500/2", ""),
            ("pcs: 500x", ""),
            ("8.8 set screws", ""),
            ("40 each end", ""),
            ("12 no HDG", ""),
            ("25m", ""),
            ("500 pcs2", ""),
            ("1/4 gross", ""),
        ],
    );
}

#[test]
fn a_count_that_means_two_is_not_used() {
    assert_refuses(
        count,
        &[
            ("1.250K", "1250 or 1250000"),
            ("25M", "25000 or 25000000"),
            ("1.5 pcs", "whole numbers"),
            ("1-1/64 dozen", "whole numbers"),
            ("boxes of 25 kg", "the weight of one box"),
            ("13 no HDG", "of this coat"),
            ("100 pcs/box", "how they are packed"),
            ("box of 100", "how they are packed"),
            ("3 boxes", "how many pieces go into one"),
            ("3 pallets of 20 boxes", "how many pieces go into one"),
            ("3 pallets, 20 boxes each", "how many pieces go into one"),
            ("10 boxes, 500 pcs", "how many pieces go into one"),
            ("30 kegs of 5/8-11 nuts", "how many pieces go into one"),
            ("2 boxes of 3\" bolts", "how many pieces go into one"),
            ("5 boxes of 20 kg", "so many of so much"),
        ],
    );
    let first = |text: &str| match pieces(count, text, 0).into_iter().next() {
        Some((_, What::Count(counted))) => counted.spaced,
        other => panic!("{text}: {other:?}"),
    };
    assert_eq!(first("8 500 pcs"), Some((8, 500)));
    assert_eq!(first("55 250 pcs"), Some((55, 250)));
    assert_eq!(first("8500 pcs"), None);
}

#[test]
fn a_number_in_words_is_not_cut_short() {
    for (text, at) in [("two fifty pcs", 1), ("two and a half thousand pcs", 4), ("2 and a half dozen", 3)] {
        match pieces(count, text, at).as_slice() {
            [(_, What::Not(why))] => assert!(why.contains("in figures"), "{text}: {why}"),
            other => panic!("{text}: {other:?}"),
        }
    }
    assert_takes(
        count,
        &[("one hundred two fifty pcs", "one hundred"), ("one thousand 2000 pcs", "one thousand")],
    );
    // Another number, of what comes with the part.
    assert_eq!(taken(count, "bolts one hundred and two nuts", 1), "one hundred");
    assert_eq!(taken(count, "bolts one thousand two nuts", 1), "one thousand");
}

#[test]
fn a_price_counts_no_pieces() {
    assert_takes(
        money,
        &[
            ("$1.20/ea", "$1.20/ea"),
            ("12 EUR", "12 EUR"),
            ("EUR 12", "EUR 12"),
            ("$1200/M bolts", "$1200/M"),
            ("$120/C", "$120/C"),
            ("$120/D", "$120"),
            ("5.00/ea", "5.00/ea"),
            // A number with a unit of its own is none.
            ("EUR 500 Stk", "EUR"),
            ("EUR 200 HV", "EUR"),
            ("12", ""),
            ("12 pcs", ""),
        ],
    );
    assert_takes(
        price,
        &[
            ("price per 100", "price per 100"),
            ("price per 1000 pcs", "price per 1000 pcs"),
            ("price 150 pcs", ""),
            ("price 150 kg", ""),
            ("price 150", "price 150"),
            ("price 150x", ""),
            ("150", ""),
        ],
    );
}

#[test]
fn boxes_hold_so_many_by_any_word_between_and_figures_that_a_space_groups() {
    assert_takes(
        count,
        &[
            ("2 boxes of 1 000 pcs", "2 boxes of 1 000 pcs"),
            ("2 boxes of 1.000", "2 boxes of 1.000"),
            ("4 crates each with 250", "4 crates each with 250"),
            ("5 boxes with 200 in each", "5 boxes with 200 in each"),
            ("2 boxes, each 1 000", "2 boxes, each 1 000"),
            ("5 boxes of 12 500", "5 boxes of 12"),
        ],
    );
    assert_refuses(
        count,
        &[
            ("100 each, 2 boxes", "100 pieces in all, or 200"),
            ("100 ea in 2 boxes", "100 pieces in all, or 200"),
            ("2 boxes of 1.250 bolts", "1.25 or 1250 in each"),
            ("2 x 1 000 pcs", "write 2000 pcs"),
        ],
    );
}
