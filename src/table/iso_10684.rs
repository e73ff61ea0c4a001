//! ISO 10684:2004, hot-dip galvanized fasteners: 8.3, the coat.

use super::coat_class::{CoatClass, ThicknessLimit};
use crate::process::Process;
use crate::source::{Basis, document};

/// The classes, as the document lists them.
pub static CLASSES: &[CoatClass] = &[CoatClass {
    document: &document::ISO_10684,
    place: "8.3",
    name: "M8 to M64",
    applies: "spun fasteners with coarse thread",
    process: Process::HotDip,
    single: Some(ThicknessLimit::um(40.0, Basis::Read)),
    average: Some(ThicknessLimit::um(50.0, Basis::Read)),
    lot_average: None,
    average_max: None,
}];
