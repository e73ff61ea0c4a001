//! RCSC Specification for structural joints: re-use of bolts that were tightened.

use super::structural::Bolt::*;
use super::structural::Requirement;
use super::structural::Topic::Reuse;
use crate::process::Process::{HotDip, Mechanical};
use crate::source::{Source, document};

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
        text: "Do not use a galvanized bolt again once it was pretensioned; touching up what its neighbours' tightening \
               has loosened is no second use.",
        source: REUSE,
    },
];
