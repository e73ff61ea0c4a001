//! SAE J429: the nuts of its bolts. Grades 5.2 and 8.2 were looked for and not found.

use super::astm_a563_proof::Grade::{A, Dh};
use super::nut_grade::NutGrade;
use super::nut_style::Style::{HeavyHex, Hex};
use super::pairing::Bolt::{self, *};
use super::pairing::Finish::{self, *};
use super::pairing::{Nut, Pairing};
use super::sae_j995::Grade::{self, *};
use super::steel_row::Sizes;
use crate::source::{Source, document};

const READ: Source = document::SAE_J995.read("nuts for SAE J429 bolts");
const MEMORY: Source = document::SAE_J995.memory("nuts for SAE J429 bolts");
/// Grade 5 has the strength of A449, so that a tapped-over nut is taken as for that.
const AS_A449: Source = document::ASTM_A449.memory("nuts for zinc-coated bolts of the same strength");

/// Grade 8 has the strength of A354 grade BD.
const AS_A354_BD: Source = document::ASTM_A354.memory("nuts for bolts of the same strength");
/// Of the two nuts of grades 1 and 2, the one whose document gives a load when it is tapped over.
const OVER: Source = document::ASTM_A563.memory("nuts for SAE J429 bolts, proof stress of zinc-coated nuts");

/// The rows; SAE J995 gives no load for nuts tapped over, so that those are of ASTM A563. A grade comes first with the row that says most of its finish.
///
/// A563 DH, and with it A194 2H, proves more than each nut that it stands in for, and ASTM A563 has it on A307 and
/// A449, which grades 2 and 5 are like, and ASTM A354 on BD, which grade 8 is like (Appendix X1; A354, 1.3). That a grade takes what
/// its like takes is ours.
pub static ROWS: &[Pairing] = &[
    row(J429Grade1, ZincCoated, A563_A, &[j995(Grade2), HEX_DH, HEAVY_DH], OVER),
    row(J429Grade1, Any, j995(Grade2), &[A563_A, HEX_DH, HEAVY_DH], MEMORY),
    row(J429Grade2, ZincCoated, A563_A, &[j995(Grade2), HEX_DH, HEAVY_DH], OVER),
    row(J429Grade2, Any, j995(Grade2), &[A563_A, HEX_DH, HEAVY_DH], MEMORY),
    row(J429Grade5, ZincCoated, HEAVY_DH, &[j995(Grade5)], AS_A449),
    row(J429Grade5, Any, j995(Grade5), &[HEX_DH, HEAVY_DH], READ),
    row(J429Grade8, ZincCoated, HEAVY_DH, &[j995(Grade8)], AS_A354_BD),
    row(J429Grade8, Any, j995(Grade8), &[HEAVY_DH], READ),
];

const A563_A: Nut = Nut { grade: NutGrade::A563(A), style: Hex };
const HEX_DH: Nut = Nut { grade: NutGrade::A563(Dh), style: Hex };
const HEAVY_DH: Nut = Nut { grade: NutGrade::A563(Dh), style: HeavyHex };

const fn j995(grade: Grade) -> Nut {
    Nut { grade: NutGrade::J995(grade), style: Hex }
}

const fn row(bolt: Bolt, finish: Finish, nut: Nut, also: &'static [Nut], source: Source) -> Pairing {
    Pairing { bolt, finish, sizes: Sizes::from_to_inch(0.25, 1.5), nut, also, washer: None, source }
}
