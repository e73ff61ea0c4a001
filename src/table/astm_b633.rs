//! ASTM B633, electrodeposited zinc on iron and steel: Table 2, least thickness.

use super::coat_class::{CoatClass, ThicknessLimit};
use crate::process::Process;
use crate::quantity::Stress;
use crate::source::Sourced;
use crate::source::{Basis, document};

/// The classes, as the document lists them.
pub static CLASSES: &[CoatClass] = &[
    CoatClass {
        document: &document::ASTM_B633,
        place: "Table 2",
        name: "Fe/Zn 5 (SC 1, mild)",
        applies: "significant surfaces",
        process: Process::Electroplated,
        single: Some(ThicknessLimit::um(5.0, Basis::Read)),
        average: None,
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_B633,
        place: "Table 2",
        name: "Fe/Zn 8 (SC 2, moderate)",
        applies: "significant surfaces",
        process: Process::Electroplated,
        single: Some(ThicknessLimit::um(8.0, Basis::Read)),
        average: None,
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_B633,
        place: "Table 2",
        name: "Fe/Zn 12 (SC 3, severe)",
        applies: "significant surfaces",
        process: Process::Electroplated,
        single: Some(ThicknessLimit::um(12.0, Basis::Read)),
        average: None,
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_B633,
        place: "Table 2",
        name: "Fe/Zn 25 (SC 4, very severe)",
        applies: "significant surfaces",
        process: Process::Electroplated,
        single: Some(ThicknessLimit::um(25.0, Basis::Read)),
        average: None,
        lot_average: None,
        average_max: None,
    },
];

/// Above this strength machined, ground and cold-formed parts are relieved of stress.
pub const RELIEF_ABOVE: Sourced<Stress> =
    document::ASTM_B633.memory("2007, 6.4").gives(Stress::from_mpa(1000.0));
/// From this strength on parts are baked.
pub const BAKE_FROM: Sourced<Stress> = document::ASTM_B633.read("2007, 6.5").gives(Stress::from_mpa(1200.0));
