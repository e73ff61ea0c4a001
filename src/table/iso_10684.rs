//! ISO 10684:2004, hot-dip galvanized fasteners: 8.3, the coat.

use crate::coat::{Class, Limit, Process};
use crate::source::{Basis, document};

/// The classes, as the document lists them.
pub static CLASSES: &[Class] = &[Class {
    document: &document::ISO_10684,
    place: "8.3",
    name: "M8 to M64",
    applies: "spun fasteners with coarse thread",
    process: Process::HotDip,
    single: Some(Limit::um(40.0, Basis::Read)),
    average: Some(Limit::um(50.0, Basis::Read)),
    lot_average: None,
    average_greatest: None,
}];
