//! ISO 4042:1999: plated coats on threads, read for pitches up to 1.75 mm, computed beyond.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use crate::seen::agree;
use kettle_barrel::quantity::Length;
use kettle_barrel::source::Basis;
use kettle_barrel::table::iso_965_1::Position::{self, BoltE, BoltF, BoltG, BoltH};
use kettle_barrel::table::iso_4042_threads::Column;
use kettle_barrel::thread::coat_room::{iso_4042_deviation, iso_4042_max as max};

type Row = (f64, [u8; 4], [u8; 4], [u8; 4]);

fn check(rows: &[Row], basis: Basis) {
    for &(pitch, g, f, e) in rows {
        for (position, cells) in [(BoltG, g), (BoltF, f), (BoltE, e)] {
            for (column, printed) in Column::ALL.into_iter().zip(cells) {
                let ours = max(Length::from_mm(pitch), position, column).unwrap().unwrap();
                let ours = (ours.value.um().round(), ours.source.basis);
                agree!(ISO_4042_1999, ours, (f64::from(printed), basis), "{pitch} {position:?} {column:?}");
            }
        }
    }
}

#[test]
fn the_thickest_coats_are_the_published_ones() {
    check(TABLE_2, Basis::Read);
    check(BY_THE_RULE, Basis::Computed);
}

/// The rule gives every cell read but one: pitch 1 mm, position g, five to ten diameters. There the
/// rule gives 5 µm (26 / 5 = 5.2) and the table prints 3 µm, which counts.
#[test]
fn the_rule_gives_the_table_but_for_one_cell() {
    let nominal = [3.0, 5.0, 8.0, 10.0, 12.0, 15.0, 20.0, 25.0, 30.0];
    let mut differ = Vec::new();
    for (&(pitch, g, f, e), &(_, deviations)) in TABLE_2.iter().zip(DEVIATIONS) {
        for ((position, cells), deviation) in [(BoltG, g), (BoltF, f), (BoltE, e)].into_iter().zip(deviations)
        {
            let ours: f64 = kettle_barrel::table::iso_965_1::deviation(position, Length::from_mm(pitch))
                .unwrap()
                .value
                .um()
                .round();
            assert_eq!(ours, -deviation, "{pitch} {position:?}");
            for (column, printed) in Column::ALL.into_iter().zip(cells) {
                let rule = nominal.iter().rev().find(|t| **t * column.factor() <= deviation).unwrap();
                if *rule != f64::from(printed) {
                    differ.push((pitch, position, column, *rule, printed));
                }
            }
        }
    }
    assert_eq!(differ, [(1.0, BoltG, Column::UpTo10, 5.0, 3)]);
}

#[test]
fn least_deviations_are_the_published_ones() {
    for &(thickness, printed) in LEAST_DEVIATIONS {
        for (column, printed) in Column::ALL.into_iter().zip(printed) {
            let ours = iso_4042_deviation(Length::from_um(thickness), column).um().round();
            agree!(ISO_4042_1999, ours, printed, "{thickness} {column:?}");
        }
    }
}

#[test]
fn a_thread_without_allowance_takes_no_coat() {
    assert!(max(Length::from_mm(2.0), BoltH, Column::Local).is_err());
    assert!(max(Length::from_mm(2.2), Position::BoltG, Column::Local).is_err());
}

/// Table 2 (read): pitch in mm; positions g, f, e; for each the local thickness, and the average with
/// a length up to 5, 10 and 15 diameters, in µm.
const TABLE_2: &[Row] = &[
    (0.5, [5, 5, 3, 3], [8, 8, 5, 5], [12, 12, 10, 8]),
    (0.6, [5, 5, 3, 3], [8, 8, 5, 5], [12, 12, 10, 8]),
    (0.7, [5, 5, 3, 3], [8, 8, 5, 5], [12, 12, 10, 8]),
    (0.75, [5, 5, 3, 3], [8, 8, 5, 5], [12, 12, 10, 8]),
    (0.8, [5, 5, 3, 3], [8, 8, 5, 5], [15, 15, 12, 10]),
    (1.0, [5, 5, 3, 3], [10, 10, 8, 5], [15, 15, 12, 10]),
    (1.25, [5, 5, 5, 3], [10, 10, 8, 5], [15, 15, 12, 10]),
    (1.5, [8, 8, 5, 5], [10, 10, 8, 5], [15, 15, 12, 10]),
    (1.75, [8, 8, 5, 5], [12, 12, 8, 8], [15, 15, 12, 10]),
];

/// The deviations printed beside them (read), without their sign, in µm: g, f, e.
const DEVIATIONS: &[(f64, [f64; 3])] = &[
    (0.5, [20.0, 36.0, 50.0]),
    (0.6, [21.0, 36.0, 53.0]),
    (0.7, [22.0, 38.0, 56.0]),
    (0.75, [22.0, 38.0, 56.0]),
    (0.8, [24.0, 38.0, 60.0]),
    (1.0, [26.0, 40.0, 60.0]),
    (1.25, [28.0, 42.0, 63.0]),
    (1.5, [32.0, 45.0, 67.0]),
    (1.75, [34.0, 48.0, 71.0]),
];

/// By the rule, not seen in print.
const BY_THE_RULE: &[Row] = &[
    (2.0, [8, 8, 5, 5], [12, 12, 10, 8], [15, 15, 12, 10]),
    (2.5, [10, 10, 8, 5], [12, 12, 10, 8], [20, 20, 15, 12]),
    (3.0, [12, 12, 8, 8], [15, 15, 12, 10], [20, 20, 15, 12]),
    (3.5, [12, 12, 10, 8], [15, 15, 12, 10], [20, 20, 15, 15]),
    (4.0, [15, 15, 12, 10], [15, 15, 15, 12], [20, 20, 15, 15]),
    (4.5, [15, 15, 12, 10], [20, 20, 15, 12], [25, 25, 20, 15]),
    (5.0, [15, 15, 12, 10], [20, 20, 15, 12], [25, 25, 20, 15]),
    (5.5, [15, 15, 15, 12], [20, 20, 15, 15], [25, 25, 20, 15]),
    (6.0, [20, 20, 15, 12], [20, 20, 15, 15], [25, 25, 20, 15]),
];

/// Nominal thickness, and the least deviation in each column (read), in µm.
const LEAST_DEVIATIONS: &[(f64, [f64; 4])] = &[
    (3.0, [12.0, 12.0, 15.0, 18.0]),
    (5.0, [20.0, 20.0, 25.0, 30.0]),
    (8.0, [32.0, 32.0, 40.0, 48.0]),
    (10.0, [40.0, 40.0, 50.0, 60.0]),
    (12.0, [48.0, 48.0, 60.0, 72.0]),
    (15.0, [60.0, 60.0, 75.0, 90.0]),
    (20.0, [80.0, 80.0, 100.0, 120.0]),
    (25.0, [100.0, 100.0, 125.0, 150.0]),
    (30.0, [120.0, 120.0, 150.0, 180.0]),
];
