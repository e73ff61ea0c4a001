//! ISO 4042:1999, electroplated fasteners: Table 1, nominal thickness with the least local
//! thickness and both limits of the batch average.

use super::coat_class::{CoatClass, ThicknessLimit};
use crate::process::Process;
use crate::quantity::Hardness;
use crate::source::{Basis, Source, Sourced, document};

/// The classes, as the document lists them.
pub static CLASSES: &[CoatClass] = &[
    CoatClass {
        document: &document::ISO_4042_1999,
        place: "Table 1",
        name: "nominal 3",
        applies: "electroplated fasteners",
        process: Process::Electroplated,
        single: Some(ThicknessLimit::um(3.0, Basis::Read)),
        average: Some(ThicknessLimit::um(3.0, Basis::Read)),
        lot_average: None,
        average_max: Some(ThicknessLimit::um(5.0, Basis::Read)),
    },
    CoatClass {
        document: &document::ISO_4042_1999,
        place: "Table 1",
        name: "nominal 5",
        applies: "electroplated fasteners",
        process: Process::Electroplated,
        single: Some(ThicknessLimit::um(5.0, Basis::Read)),
        average: Some(ThicknessLimit::um(4.0, Basis::Read)),
        lot_average: None,
        average_max: Some(ThicknessLimit::um(6.0, Basis::Read)),
    },
    CoatClass {
        document: &document::ISO_4042_1999,
        place: "Table 1",
        name: "nominal 8",
        applies: "electroplated fasteners",
        process: Process::Electroplated,
        single: Some(ThicknessLimit::um(8.0, Basis::Read)),
        average: Some(ThicknessLimit::um(7.0, Basis::Read)),
        lot_average: None,
        average_max: Some(ThicknessLimit::um(10.0, Basis::Read)),
    },
    CoatClass {
        document: &document::ISO_4042_1999,
        place: "Table 1",
        name: "nominal 10",
        applies: "electroplated fasteners",
        process: Process::Electroplated,
        single: Some(ThicknessLimit::um(10.0, Basis::Read)),
        average: Some(ThicknessLimit::um(9.0, Basis::Read)),
        lot_average: None,
        average_max: Some(ThicknessLimit::um(12.0, Basis::Read)),
    },
    CoatClass {
        document: &document::ISO_4042_1999,
        place: "Table 1",
        name: "nominal 12",
        applies: "electroplated fasteners",
        process: Process::Electroplated,
        single: Some(ThicknessLimit::um(12.0, Basis::Read)),
        average: Some(ThicknessLimit::um(11.0, Basis::Read)),
        lot_average: None,
        average_max: Some(ThicknessLimit::um(15.0, Basis::Read)),
    },
    CoatClass {
        document: &document::ISO_4042_1999,
        place: "Table 1",
        name: "nominal 15",
        applies: "electroplated fasteners",
        process: Process::Electroplated,
        single: Some(ThicknessLimit::um(15.0, Basis::Read)),
        average: Some(ThicknessLimit::um(14.0, Basis::Read)),
        lot_average: None,
        average_max: Some(ThicknessLimit::um(18.0, Basis::Read)),
    },
    CoatClass {
        document: &document::ISO_4042_1999,
        place: "Table 1",
        name: "nominal 20",
        applies: "electroplated fasteners",
        process: Process::Electroplated,
        single: Some(ThicknessLimit::um(20.0, Basis::Read)),
        average: Some(ThicknessLimit::um(18.0, Basis::Read)),
        lot_average: None,
        average_max: Some(ThicknessLimit::um(23.0, Basis::Read)),
    },
    CoatClass {
        document: &document::ISO_4042_1999,
        place: "Table 1",
        name: "nominal 25",
        applies: "electroplated fasteners",
        process: Process::Electroplated,
        single: Some(ThicknessLimit::um(25.0, Basis::Read)),
        average: Some(ThicknessLimit::um(23.0, Basis::Read)),
        lot_average: None,
        average_max: Some(ThicknessLimit::um(28.0, Basis::Read)),
    },
    CoatClass {
        document: &document::ISO_4042_1999,
        place: "Table 1",
        name: "nominal 30",
        applies: "electroplated fasteners",
        process: Process::Electroplated,
        single: Some(ThicknessLimit::um(30.0, Basis::Read)),
        average: Some(ThicknessLimit::um(27.0, Basis::Read)),
        lot_average: None,
        average_max: Some(ThicknessLimit::um(35.0, Basis::Read)),
    },
];

/// The thickness of zinc in µm by the figure in a code of the 1999 edition (`A2K`); 0 asks for none. The
/// figures 2, 3 and 4 were read in a supplier's extract of the document, the others are memory. Known by
/// [`CODE`].
pub const CODE_THICKNESS: [u32; 10] = [0, 3, 5, 8, 12, 15, 20, 25, 30, 10];
/// Where the figures are printed.
pub const CODE: Source = document::ISO_4042_1999.memory("code of a coat: the figure of the thickness");

/// From this hardness on the 2018 edition has the bake settled with the purchaser.
pub const BAKE_FROM: Sourced<Hardness> =
    document::ISO_4042_2018.memory("4.4 and annex B").gives(Hardness::hv(390.0));
/// Above this hardness the 1999 edition asked for a test of the process.
pub const INVESTIGATE_ABOVE: Sourced<Hardness> = document::ISO_4042_1999.read("6").gives(Hardness::hv(320.0));
/// Above this hardness the 1999 edition asked for a written agreement.
pub const AGREE_ABOVE: Sourced<Hardness> = document::ISO_4042_1999.read("6").gives(Hardness::hv(365.0));
