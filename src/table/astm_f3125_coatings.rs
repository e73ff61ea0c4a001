//! ASTM F3125, Annex A1: zinc coatings of structural bolts. The table itself was not read; what
//! follows is from memory, but for the ban on A490.
//!
//! Whether F1852 and F2280 may carry zinc flake differs between editions; grade 144 was not found.

use super::structural::Allowed::{self, *};
use super::structural::Bolt::{self, *};
use super::structural::Coating;
use crate::process::Process::{self, *};
use crate::source::{Source, document};

const ANNEX: Source = document::ASTM_F3125.memory("Annex A1, coatings");
const BAN: Source = document::ASTM_F3125.read("coatings of grade A490, after a listing");

/// The rows: A325 with hot-dip and mechanical zinc, none on A490, no electroplating at all.
pub static ROWS: &[Coating] = &[
    row(&[A325, A325M], HotDip, Yes, "ASTM F2329", None, ANNEX),
    row(&[A325, A325M], Mechanical, Yes, "ASTM B695, class 55", Some(55), ANNEX),
    row(&[A325, A325M], Electroplated, NotListed, "", None, ANNEX),
    row(&[F1852], HotDip, No, "", None, ANNEX),
    row(&[F1852], Mechanical, Yes, "ASTM B695, class 55", Some(55), ANNEX),
    row(&[F1852], Electroplated, NotListed, "", None, ANNEX),
    row(&[A490, A490M], HotDip, No, "", None, BAN),
    row(&[A490, A490M], Mechanical, No, "", None, BAN),
    row(&[A490, A490M], Electroplated, No, "", None, BAN),
    row(&[F2280], HotDip, No, "", None, ANNEX),
    row(&[F2280], Mechanical, No, "", None, ANNEX),
    row(&[F2280], Electroplated, NotListed, "", None, ANNEX),
];

const fn row(
    bolts: &'static [Bolt],
    process: Process,
    allowed: Allowed,
    order: &'static str,
    class: Option<u8>,
    source: Source,
) -> Coating {
    Coating { bolts, process, allowed, order, class, source }
}
