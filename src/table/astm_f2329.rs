//! ASTM F2329-05, hot-dip zinc on bolts, screws, washers and nuts: thickness in inches.
//!
//! The averages are over a batch lot; the lot average is over a production lot. Later editions
//! reworked the table and added metric rows; they were not read.

use super::coat_class::{CoatClass, ThicknessLimit};
use crate::process::Process;
use crate::quantity::Hardness;
use crate::source::{Basis, document};
use crate::source::{Source, Sourced};

/// The classes, as the document lists them.
pub static CLASSES: &[CoatClass] = &[
    CoatClass {
        document: &document::ASTM_F2329,
        place: "thickness table",
        name: "over 3/8 in",
        applies: "fasteners over 3/8 in; washers 3/16 to 1/4 in thick",
        process: Process::HotDip,
        single: Some(ThicknessLimit::inch(0.0017, Basis::Read)),
        average: Some(ThicknessLimit::inch(0.0017, Basis::Read)),
        lot_average: Some(ThicknessLimit::inch(0.002, Basis::Read)),
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_F2329,
        place: "thickness table",
        name: "3/8 in and under",
        applies: "fasteners of 3/8 in and under; washers under 3/16 in thick",
        process: Process::HotDip,
        single: Some(ThicknessLimit::inch(0.0015, Basis::Read)),
        average: Some(ThicknessLimit::inch(0.0015, Basis::Read)),
        lot_average: Some(ThicknessLimit::inch(0.0017, Basis::Read)),
        average_max: None,
    },
];

/// From this hardness on no fastener is hot-dip coated.
pub const NOT_FROM: Sourced<Hardness> = document::ASTM_F2329.read("7").gives(Hardness::hrc(40.0));
/// Case-hardened fasteners are not hot-dip coated.
pub const CASE_HARDENED: Source = document::ASTM_F2329.read("7");
/// From this hardness on hydrogen is a risk.
pub const RISK_FROM: Sourced<Hardness> = document::ASTM_F2329.read("7.2.2").gives(Hardness::hrc(33.0));
