//! ASTM A563, Table 5, and A563M: nuts tapped over size.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis;
use kettle_barrel::table::astm_a563;
use kettle_barrel::thread::overtap::{self, Allowance};

use crate::limit::{figure, same_digits, thread};
use crate::seen::agree;
use kettle_barrel::source::document;

/// The allowance, and the 2B limits widened by it, are the printed ones; a blank stays a blank.
#[test]
fn the_table_is_the_published_one() {
    for &(designation, allowance, min, max, basis) in ROWS {
        let thread = thread(designation);
        let nut = overtap::nut(thread, Allowance::A563).unwrap();
        same_digits(&document::ASTM_A563, nut.allowance.value.inch(), allowance, designation);
        assert_eq!(nut.allowance.source.basis, basis, "{designation}");
        let (sixteenths, per_two_inches) = thread.inch_key().unwrap();
        let row = astm_a563::row(sixteenths, per_two_inches).unwrap();
        for (printed, in_table, ours) in
            [(min, row.pitch_min, nut.limits.pitch.min), (max, row.pitch_max, nut.limits.pitch.max)]
        {
            if printed.is_empty() {
                assert_eq!(in_table, None, "{designation}");
            } else {
                same_digits(&document::ASTM_A563, ours.inch(), printed, designation);
                same_digits(&document::ASTM_A563, f64::from(in_table.unwrap()) / 1e4, printed, designation);
            }
        }
    }
}

/// ASTM A563M was not read; its allowances are recalled, and equal 220 P − 20.
#[test]
fn the_metric_allowance_is_the_recalled_one() {
    for &(designation, um) in METRIC {
        let nut = overtap::nut(thread(designation), Allowance::A563M).unwrap();
        agree!(ASTM_A563M, nut.allowance.value.um().round(), um, "{designation}");
        assert_eq!(nut.allowance.source.basis, Basis::Memory);
    }
}

#[test]
fn a_thread_outside_the_table_is_refused() {
    assert!(overtap::nut(thread("1/2-20 UNF"), Allowance::A563).is_err());
    assert!(overtap::nut(thread("1-5/8-8 UN"), Allowance::A563).is_err());
    assert!(overtap::nut(thread("M16"), Allowance::A563).is_err());
    assert!(overtap::nut(thread("1/2-13 UNC"), Allowance::Az).is_err());
}

#[test]
fn the_calculator_shows_an_overtapped_half_inch_nut() {
    let pairs = [("thread", "1/2-13 UNC"), ("allowance", "a563")];
    agree!(ASTM_A563, figure("oversize-tap", &pairs, "D2"), "0.4680 to 0.4745\u{a0}in");
}

/// Thread, allowance, least and greatest pitch diameter after tapping in inches, basis.
const ROWS: &[(&str, &str, &str, &str, Basis)] = &[
    ("1/4-20", "0.016", ".2335", ".2384", Basis::Read),
    ("5/16-18", "0.017", ".2934", ".2987", Basis::Read),
    ("3/8-16", "0.017", ".3514", ".3571", Basis::Read),
    ("7/16-14", "0.018", ".4091", ".4152", Basis::Read),
    ("1/2-13", "0.018", ".4680", ".4745", Basis::Read),
    ("9/16-12", "0.02", ".5284", ".5352", Basis::Read),
    ("5/8-11", "0.02", ".5860", ".5932", Basis::Read),
    ("3/4-10", "0.02", ".7050", ".7127", Basis::Read),
    ("7/8-9", "0.022", ".8248", ".8330", Basis::Read),
    ("1-8", "0.024", ".9428", ".9516", Basis::Read),
    ("1-1/8-8", "0.024", "1.0678", "1.0768", Basis::Read),
    ("1-1/8-7", "0.024", "1.0562", "1.0656", Basis::Read),
    ("1-1/4-8", "0.024", "1.1928", "1.2020", Basis::Read),
    ("1-1/4-7", "0.024", "1.1812", "1.1908", Basis::Read),
    ("1-3/8-8", "0.027", "1.3208", "1.3301", Basis::Read),
    ("1-3/8-6", "0.027", "1.2937", "1.3041", Basis::Read),
    ("1-1/2-8", "0.027", "1.4458", "1.4553", Basis::Read),
    ("1-1/2-6", "0.027", "1.4187", "1.4292", Basis::Read),
    ("1-3/4-5", "0.05", "1.6701", "1.6817", Basis::Read),
    ("2-4.5", "0.05", "1.9057", "1.9181", Basis::Read),
    ("2-1/4-4.5", "0.05", "2.1557", "2.1683", Basis::Read),
    ("2-1/2-4", "0.05", "2.3876", "2.4011", Basis::Read),
    ("2-3/4-4", "0.05", "2.6376", "2.6513", Basis::Read),
    ("3-4", "0.05", "2.8876", "2.9015", Basis::Read),
    ("3-1/4-4", "0.05", "3.1376", "3.1517", Basis::Read),
    ("3-1/2-4", "0.05", "3.3876", "3.4019", Basis::Read),
    ("3-3/4-4", "0.05", "3.6376", "", Basis::Read),
    ("4-4", "0.05", "", "", Basis::Memory),
];

/// Thread, allowance in µm, recalled.
const METRIC: &[(&str, f64)] = &[
    ("M5", 156.0),
    ("M6", 200.0),
    ("M8", 255.0),
    ("M10", 310.0),
    ("M12", 365.0),
    ("M14", 420.0),
    ("M16", 420.0),
    ("M20", 530.0),
    ("M22", 530.0),
    ("M24", 640.0),
    ("M27", 640.0),
    ("M30", 750.0),
    ("M36", 860.0),
    ("M42", 970.0),
    ("M48", 1080.0),
    ("M56", 1190.0),
    ("M64", 1300.0),
];
