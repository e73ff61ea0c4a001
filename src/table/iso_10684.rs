//! ISO 10684:2004, hot-dip galvanized fasteners: 8.3, the coat.

use super::coat_class::{CoatClass, ThicknessLimit};
use crate::process::Process;
use crate::quantity::Hardness;
use crate::source::{Basis, document};
use crate::source::{Source, Sourced};

/// The classes, as the document lists them: one.
pub static CLASSES: &[CoatClass] = &[CLASS];

/// The coat that it asks for.
pub const CLASS: CoatClass = CoatClass {
    document: &document::ISO_10684,
    place: "8.3",
    name: "M8 to M64",
    applies: "spun fasteners with coarse thread",
    process: Process::HotDip,
    single: Some(ThicknessLimit::um(40.0, Basis::Read)),
    average: Some(ThicknessLimit::um(50.0, Basis::Read)),
    lot_average: None,
    average_max: None,
};

/// From this hardness on the way to clean is laid down.
pub const CLEANING_FROM: Sourced<Hardness> = document::ISO_10684.read("5.2").gives(Hardness::hv(320.0));
/// Bolts up to class 10.9 and nuts up to class 12.
pub const SCOPE: Source = document::ISO_10684.read("scope");
/// The high-temperature bath.
pub const HIGH_BATH: Source = document::ISO_10684.read("5.5");
/// Stress relief of what was severely work-hardened, before acid and zinc; as the Australian edition has it.
pub const RELIEF: Source = document::AS_NZS_1214.read("5.1, stress relief");
