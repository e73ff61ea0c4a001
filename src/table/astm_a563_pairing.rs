//! ASTM A563, Appendix X1: which of its nuts goes on which bolt, after a chart made from it.
//!
//! F1554 grade 105 plain up to 1-1/2 in stands in the chart's hex column; other listings say heavy
//! hex, which is the stronger and is taken.

use super::astm_a563_proof::Grade::{self, *};
use super::nut_grade::NutGrade;
use super::nut_style::Style;
use super::pairing::Bolt::{self, *};
use super::pairing::Finish::{self, *};
use super::pairing::{Nut, Pairing};
use super::steel_row::Sizes;
use crate::source::{Source, document};

/// Where the rows were read.
pub static SOURCE: Source = CHART;

/// The rows.
#[rustfmt::skip]
pub static ROWS: &[Pairing] = &[
    row(A307A, Any, UP_TO_1_1_2, hex(A), &[hex(B), hex(D), hex(Dh), heavy(A), heavy(B), heavy(C), heavy(D), heavy(Dh), heavy(Dh3)]),
    row(A307A, Any, OVER_1_1_2_TO_4, heavy(A), &[heavy(C), heavy(D), heavy(Dh), heavy(Dh3)]),
    row(A307B, Any, UP_TO_1_1_2, heavy(A), &[hex(B), hex(D), hex(Dh), heavy(B), heavy(C), heavy(D), heavy(Dh), heavy(Dh3)]),
    row(A325, Plain, STRUCTURAL, heavy(C), &[heavy(D), heavy(Dh), heavy(Dh3)]),
    row(A354Bc, Plain, UP_TO_1_1_2, heavy(C), &[hex(D), hex(Dh), heavy(D), heavy(Dh), heavy(Dh3)]),
    row(A354Bc, Plain, OVER_1_1_2_TO_4, heavy(C), &[heavy(D), heavy(Dh), heavy(Dh3)]),
    row(A354Bc, ZincCoated, UP_TO_4, heavy(Dh), &[]),
    row(A354Bd, Plain, UP_TO_1_1_2, heavy(Dh), &[hex(Dh), heavy(D), heavy(Dh3)]),
    row(A354Bd, Plain, OVER_1_1_2_TO_4, heavy(Dh), &[heavy(Dh3)]),
    row(A449, Plain, UP_TO_1_1_2, hex(B), &[hex(D), hex(Dh), heavy(B), heavy(C), heavy(D), heavy(Dh), heavy(Dh3)]),
    row(A449, Plain, OVER_1_1_2_TO_3, heavy(A), &[heavy(C), heavy(D), heavy(Dh), heavy(Dh3)]),
    row(A449, ZincCoated, UP_TO_1_1_2, heavy(Dh), &[hex(D), hex(Dh), heavy(D)]),
    row(A449, ZincCoated, OVER_1_1_2_TO_3, heavy(Dh), &[heavy(D)]),
    row(A490, Plain, STRUCTURAL, heavy(Dh), &[heavy(Dh3)]),
    row(F1554Grade36, Any, UP_TO_1_1_2, hex(A), &[hex(B), hex(D), hex(Dh), heavy(A), heavy(B), heavy(C), heavy(D), heavy(Dh), heavy(Dh3)]),
    row(F1554Grade36, Any, OVER_1_1_2_TO_4, heavy(A), &[heavy(C), heavy(D), heavy(Dh), heavy(Dh3)]),
    row(F1554Grade55, Plain, UP_TO_1_1_2, hex(A), &[hex(B), hex(D), hex(Dh), heavy(A), heavy(B), heavy(C), heavy(D), heavy(Dh), heavy(Dh3)]),
    row(F1554Grade55, Plain, OVER_1_1_2_TO_4, heavy(A), &[heavy(C), heavy(D), heavy(Dh), heavy(Dh3)]),
    row(F1554Grade55, ZincCoated, UP_TO_4, heavy(A), &[heavy(C), heavy(D), heavy(Dh), heavy(Dh3)]),
    row(F1554Grade105, Plain, UP_TO_1_1_2, heavy(D), &[heavy(Dh), heavy(Dh3)]),
    row(F1554Grade105, Plain, OVER_1_1_2_TO_3, heavy(Dh), &[heavy(Dh3)]),
    row(F1554Grade105, ZincCoated, UP_TO_4, heavy(Dh), &[heavy(Dh3)]),
];

const CHART: Source = document::ASTM_A563.read("Appendix X1, chart of nuts for bolts");

const UP_TO_1_1_2: Sizes = Sizes::from_to_inch(0.25, 1.5);
const UP_TO_4: Sizes = Sizes::from_to_inch(0.25, 4.0);
const OVER_1_1_2_TO_3: Sizes = Sizes::over_to_inch(1.5, 3.0);
const OVER_1_1_2_TO_4: Sizes = Sizes::over_to_inch(1.5, 4.0);
const STRUCTURAL: Sizes = Sizes::from_to_inch(0.5, 1.5);

const fn row(bolt: Bolt, finish: Finish, sizes: Sizes, nut: Nut, also: &'static [Nut]) -> Pairing {
    Pairing { bolt, finish, sizes, nut, also, washer: None, source: CHART }
}

const fn hex(grade: Grade) -> Nut {
    Nut { grade: NutGrade::A563(grade), style: Style::Hex }
}

const fn heavy(grade: Grade) -> Nut {
    Nut { grade: NutGrade::A563(grade), style: Style::HeavyHex }
}
