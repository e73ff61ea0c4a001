//! ISO 2702: tapping screws of heat-treated steel, case-hardened. The core is what these limits are of;
//! the case has at least 450 HV.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::quantity::Hardness;
use crate::source::document::ISO_2702;
use crate::source::{Source, Sourced};

/// Where the hardness was read.
pub const HARDNESS: Source = ISO_2702.read("2011, hardness of the core");

/// The case: at least so hard.
pub const SURFACE: Sourced<Hardness> =
    ISO_2702.read("2011, hardness of the surface").gives(Hardness::hv(450.0));

/// A case-hardened tapping screw; it states no least tempering temperature.
pub static CASE_HARDENED: [SteelRow; 1] =
    [SteelRow::new(Sizes::to_mm(9.5), Treatment::CaseHardened, HARDNESS)
        .hv(270.0, 370.0, HARDNESS)
        .no_proof(HARDNESS)];
