//! ASTM A193: the nuts of studs for high temperature service, from memory.

use super::astm_a194_loads::Grade::*;
use super::nut_grade::NutGrade;
use super::nut_style::Style::HeavyHex;
use super::pairing::Bolt::{self, *};
use super::pairing::{Finish, Nut, Pairing};
use super::steel_row::Sizes;
use crate::source::{Source, document};

const MEMORY: Source = document::ASTM_A193.memory("nuts of ASTM A194");

/// The rows: B7 with 2H by custom; B7M with soft nuts for wet hydrogen sulphide.
pub static ROWS: &[Pairing] = &[
    row(A193B7, nut(Grade2H), &[nut(Grade4), nut(Grade7)]),
    row(A193B7M, nut(Grade2HM), &[nut(Grade7M)]),
    row(A193B16, nut(Grade4), &[nut(Grade7)]),
];

const fn nut(grade: super::astm_a194_loads::Grade) -> Nut {
    Nut { grade: NutGrade::A194(grade), style: HeavyHex }
}

const fn row(bolt: Bolt, nut: Nut, also: &'static [Nut]) -> Pairing {
    Pairing { bolt, finish: Finish::Any, sizes: Sizes::ALL_INCH, nut, also, washer: None, source: MEMORY }
}
