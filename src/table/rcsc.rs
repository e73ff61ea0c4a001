//! RCSC Specification for structural joints: re-use of bolts that were tightened.

use super::structural::Bolt::*;
use super::structural::Requirement;
use super::structural::Topic::Reuse;
use crate::process::Process::{HotDip, Mechanical};
use crate::source::{Source, Sourced, document};

/// Where re-use is ruled.
pub const REUSE: Source = document::RCSC.read("2.3.3");

/// The requirements.
pub static ROWS: &[Requirement] = &[
    Requirement {
        topic: Reuse,
        bolts: &[A490, A490M, F2280],
        processes: &[],
        text: "Do not use a bolt again once it was pretensioned.",
        source: REUSE,
    },
    Requirement {
        topic: Reuse,
        bolts: &[A325, A325M, F1852],
        processes: &[HotDip, Mechanical],
        text: "Do not use a galvanized bolt again once it was pretensioned.",
        source: REUSE,
    },
];

/// What is not re-use.
pub const TOUCHING_UP: Sourced<&str> = Sourced {
    value: "Touching up bolts that their neighbours' tightening has loosened is not re-use.",
    source: REUSE,
};

/// Why the check by hand says nothing on a galvanized bolt.
pub const HAND_CHECK: Sourced<&str> = Sourced {
    value: "Running the nut up by hand proves nothing on a galvanized bolt: its nut is tapped over and runs up a \
            stretched thread as well.",
    source: document::BOLT_MAKERS_TEXT.read("re-use of structural bolts"),
};
