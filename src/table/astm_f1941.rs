//! ASTM F1941/F1941M, electrodeposited coatings on threaded fasteners: Table 1, from memory.

use super::coat_class::{CoatClass, ThicknessLimit};
use crate::process::Process;
use crate::quantity::Hardness;
use crate::source::Sourced;
use crate::source::{Basis, document};

/// The classes, as the document lists them.
pub static CLASSES: &[CoatClass] = &[
    CoatClass {
        document: &document::ASTM_F1941,
        place: "Table 1",
        name: "Fe/Zn 3",
        applies: "threaded fasteners",
        process: Process::Electroplated,
        single: Some(ThicknessLimit::um(3.0, Basis::Memory)),
        average: None,
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_F1941,
        place: "Table 1",
        name: "Fe/Zn 5",
        applies: "threaded fasteners",
        process: Process::Electroplated,
        single: Some(ThicknessLimit::um(5.0, Basis::Memory)),
        average: None,
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_F1941,
        place: "Table 1",
        name: "Fe/Zn 8",
        applies: "threaded fasteners",
        process: Process::Electroplated,
        single: Some(ThicknessLimit::um(8.0, Basis::Memory)),
        average: None,
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_F1941,
        place: "Table 1",
        name: "Fe/Zn 12",
        applies: "threaded fasteners",
        process: Process::Electroplated,
        single: Some(ThicknessLimit::um(12.0, Basis::Memory)),
        average: None,
        lot_average: None,
        average_max: None,
    },
];

/// From this hardness on, and for case-hardened parts, the way to clean is laid down.
pub const CLEANING_FROM: Sourced<Hardness> = document::ASTM_F1941.read("6").gives(Hardness::hrc(40.0));
/// Above this hardness parts are baked.
pub const BAKE_ABOVE: Sourced<Hardness> = document::ASTM_F1941.memory("2015, 6.4").gives(Hardness::hrc(39.0));
/// From this hardness on earlier editions had parts baked.
pub const BAKE_FROM_EARLIER: Sourced<Hardness> =
    document::ASTM_F1941.read("earlier editions").gives(Hardness::hrc(40.0));
