//! ASTM B695, mechanically deposited zinc: Table 1, least thickness on significant surfaces.
//!
//! Class 80 is 80 µm in one listing and 81 µm (0.0032 in) in another; a coat in micrometres is
//! compared with the first, a coat in inches with the second. No average is allowed: every
//! significant surface that is measured reaches the class.

use super::coat_class::{CoatClass, ThicknessLimit};
use crate::process::Process;
use crate::quantity::{Length, Stress};
use crate::source::{Basis, common_practice, document};
use crate::source::{Source, Sourced};

/// The classes, as the document lists them.
pub static CLASSES: &[CoatClass] = &[
    CoatClass {
        document: &document::ASTM_B695,
        place: "Table 1",
        name: "class 110",
        applies: "significant surfaces; called mechanically galvanized",
        process: Process::Mechanical,
        single: Some(ThicknessLimit::um(107.0, Basis::Read)),
        average: None,
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_B695,
        place: "Table 1",
        name: "class 80",
        applies: "significant surfaces; called mechanically galvanized",
        process: Process::Mechanical,
        single: Some(ThicknessLimit::um(80.0, Basis::Read).and_inch(0.0032)),
        average: None,
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_B695,
        place: "Table 1",
        name: "class 70",
        applies: "significant surfaces; called mechanically galvanized",
        process: Process::Mechanical,
        single: Some(ThicknessLimit::um(69.0, Basis::Read).and_inch(0.0027)),
        average: None,
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_B695,
        place: "Table 1",
        name: "class 65",
        applies: "significant surfaces; called mechanically galvanized",
        process: Process::Mechanical,
        single: Some(ThicknessLimit::um(66.0, Basis::Read).and_inch(0.0026)),
        average: None,
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_B695,
        place: "Table 1",
        name: "class 55",
        applies: "significant surfaces; called mechanically galvanized",
        process: Process::Mechanical,
        single: Some(ThicknessLimit::um(53.0, Basis::Read).and_inch(0.0021)),
        average: None,
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_B695,
        place: "Table 1",
        name: "class 50",
        applies: "significant surfaces; called mechanically galvanized",
        process: Process::Mechanical,
        single: Some(ThicknessLimit::um(50.0, Basis::Read).and_inch(0.002)),
        average: None,
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_B695,
        place: "Table 1",
        name: "class 40",
        applies: "significant surfaces; called mechanically galvanized",
        process: Process::Mechanical,
        single: Some(ThicknessLimit::um(40.0, Basis::Read).and_inch(0.0015)),
        average: None,
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_B695,
        place: "Table 1",
        name: "class 25",
        applies: "significant surfaces",
        process: Process::Mechanical,
        single: Some(ThicknessLimit::um(25.0, Basis::Read)),
        average: None,
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_B695,
        place: "Table 1",
        name: "class 12",
        applies: "significant surfaces",
        process: Process::Mechanical,
        single: Some(ThicknessLimit::um(12.0, Basis::Read).and_inch(0.0005)),
        average: None,
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_B695,
        place: "Table 1",
        name: "class 8",
        applies: "significant surfaces",
        process: Process::Mechanical,
        single: Some(ThicknessLimit::um(8.0, Basis::Read).and_inch(0.0003)),
        average: None,
        lot_average: None,
        average_max: None,
    },
    CoatClass {
        document: &document::ASTM_B695,
        place: "Table 1",
        name: "class 5",
        applies: "significant surfaces",
        process: Process::Mechanical,
        single: Some(ThicknessLimit::um(5.0, Basis::Read).and_inch(0.0002)),
        average: None,
        lot_average: None,
        average_max: None,
    },
];

/// Where listings of the classes differ, and the class that they differ in.
pub const DISAGREEMENT: Sourced<&str> = document::ASTM_B695
    .read("Table 1")
    .gives("Class 80 of ASTM B695 is 80 µm in one listing and 81 µm in another.");
/// The class of [`DISAGREEMENT`].
pub const DISPUTED: &str = "class 80";

/// Above this strength machined, ground and cold-formed parts are relieved of stress.
pub const RELIEF_ABOVE: Sourced<Stress> = document::ASTM_B695.memory("6.2.1").gives(Stress::from_mpa(1000.0));
/// Which cleaners keep hydrogen out.
pub const CLEANING: Source = document::ASTM_B695.read("6.2.2");

/// From this class on nuts are tapped over for the coat; thinner ones are given their room on the bolt.
pub const TAPPED_OVER_FROM: Sourced<Length> =
    common_practice("nuts tapped over for mechanical coats from 25 µm").gives(Length::from_um(25.0));
