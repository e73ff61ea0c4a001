//! ASME B1.1: tensile stress areas as printed (UNC, read) and as its formula gives them (UNF, 8UN).

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use crate::seen::seen;
use kettle_barrel::source::document;
use kettle_barrel::table::asme_b1_1_areas::ROWS;
use kettle_barrel::thread::{Thread, load};

/// Rounded to the digits printed, the formula gives every printed area: four decimals below 0.16 in², three
/// up to 1.6 in², two above. Three are listed one lower.
#[test]
fn the_printed_areas_follow_from_the_formula() {
    let (mut checked, mut different) = (0, Vec::new());
    for thread in Thread::all() {
        let Some(row) = thread.inch_key().and_then(|key| ROWS.iter().find(|row| (row.0, row.1) == key))
        else {
            continue;
        };
        let decimals = match row.2 {
            area if area < 0.16 => 4,
            area if area < 1.7 => 3,
            _ => 2,
        };
        let formula = format!("{:.decimals$}", thread.stress_area().in2());
        let printed = format!("{:.decimals$}", row.2);
        if formula != printed {
            different.push((thread.to_string(), formula, printed));
        }
        seen(&document::ASME_B1_1, thread.stress_area().in2(), row.2);
        assert!((load::stress_area(thread).value.in2() - row.2).abs() < 1e-12, "{thread}");
        checked += 1;
    }
    assert_eq!(checked, ROWS.len());
    let different: Vec<_> = different
        .iter()
        .map(|(thread, formula, printed)| (thread.as_str(), formula.as_str(), printed.as_str()))
        .collect();
    assert_eq!(different, DIFFERENT);
}

/// Thread, the formula rounded, what is listed: one in the last digit lower.
const DIFFERENT: &[(&str, &str, &str)] = &[
    ("5/16-24 UNF", "0.0581", "0.0580"),
    ("1/2-20 UNF", "0.1600", "0.1599"),
    ("1-3/8-8 UN", "1.234", "1.233"),
];
