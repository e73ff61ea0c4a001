//! ASTM F3125: the nuts and washers of structural bolts; type 1. Zinc on A490 is not allowed, so its
//! rows are for the plain bolt.

use super::astm_a194_loads::Grade::Grade2H;
use super::astm_a563_proof::Grade::{C, D, Dh, Dh3};
use super::astm_a563m::PropertyClass::{Class8S, Class10S};
use super::nut_grade::NutGrade;
use super::nut_style::Style::HeavyHex;
use super::pairing::Bolt::{self, *};
use super::pairing::Finish::{self, *};
use super::pairing::{Nut, Pairing, Washer};
use super::steel_row::Sizes;
use crate::source::{Source, document};

const A325_14: Source = document::ASTM_A325.read("A325-14, 3.2");
const F3125: Source = document::ASTM_F3125.memory("nuts and washers");

const INCH: Sizes = Sizes::from_to_inch(0.5, 1.5);
const METRIC: Sizes = Sizes::from_to_mm(12.0, 36.0);

/// The rows.
pub static ROWS: &[Pairing] = &[
    row(A325, Plain, INCH, a563(C), &[a563(D), a563(Dh), a563(Dh3), A194_2H], A325_14),
    row(A325, ZincCoated, INCH, a563(Dh), &[A194_2H], A325_14),
    row(A490, Plain, INCH, a563(Dh), &[a563(Dh3), A194_2H], F3125),
    row(A325M, Plain, METRIC, S8, &[S10], F3125),
    row(A325M, ZincCoated, METRIC, S10, &[], document::ASTM_A563M.read("A563M-01, nuts for coated A325M")),
    row(A490M, Plain, METRIC, S10, &[], F3125),
];

const A194_2H: Nut = Nut { grade: NutGrade::A194(Grade2H), style: HeavyHex };
const S8: Nut = Nut { grade: NutGrade::A563M(Class8S), style: HeavyHex };
const S10: Nut = Nut { grade: NutGrade::A563M(Class10S), style: HeavyHex };

const fn a563(grade: super::astm_a563_proof::Grade) -> Nut {
    Nut { grade: NutGrade::A563(grade), style: HeavyHex }
}

const fn row(
    bolt: Bolt,
    finish: Finish,
    sizes: Sizes,
    nut: Nut,
    also: &'static [Nut],
    source: Source,
) -> Pairing {
    Pairing { bolt, finish, sizes, nut, also, washer: Some(Washer::F436), source }
}
