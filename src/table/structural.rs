//! The shape of what is asked of structural assemblies: coatings allowed, and requirements by topic.

use crate::process::Process;
use crate::source::Source;

/// A structural bolt, or one that is ordered like it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Bolt {
    /// ASTM F3125 grade A325.
    A325,
    /// ASTM F3125 grade A325M.
    A325M,
    /// ASTM F3125 grade A490.
    A490,
    /// ASTM F3125 grade A490M.
    A490M,
    /// ASTM F3125 grade F1852, twist-off, of the strength of A325.
    F1852,
    /// ASTM F3125 grade F2280, twist-off, of the strength of A490.
    F2280,
    /// HR of EN 14399-3.
    Hr,
    /// HV of EN 14399-4.
    Hv,
}

/// Whether a document allows a coating.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Allowed {
    /// It does.
    Yes,
    /// It forbids it.
    No,
    /// It lists others, and not this one.
    NotListed,
}

/// A coating of a structural bolt.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Coating {
    /// The bolts it is for.
    pub bolts: &'static [Bolt],
    /// The process.
    pub process: Process,
    /// Whether it is allowed.
    pub allowed: Allowed,
    /// The standard and class to order, where it is: `ASTM B695, class 55`.
    pub order: &'static str,
    /// The class of ASTM B695, in µm.
    pub class: Option<u8>,
    /// Where it is said.
    pub source: Source,
}

/// What a requirement is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Topic {
    /// The galvanized nut is lubricated.
    Lubricant,
    /// Bolt, nut and washer are one matched lot.
    MatchedLot,
    /// Bolt, nut and washer are coated by one process.
    OneProcess,
    /// When the nut is tapped.
    Tapping,
    /// The rotational-capacity test.
    RotationalCapacity,
    /// The washer, and where it goes.
    Washer,
    /// Re-use after tightening.
    Reuse,
}

/// A requirement, as an instruction.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Requirement {
    /// What it is about.
    pub topic: Topic,
    /// The bolts it is for.
    pub bolts: &'static [Bolt],
    /// The processes it is for; empty means with or without zinc.
    pub processes: &'static [Process],
    /// The instruction.
    pub text: &'static str,
    /// Where it is said.
    pub source: Source,
}

impl Requirement {
    /// Whether it holds for a bolt coated by a process.
    pub fn holds(&self, bolt: Bolt, process: Process) -> bool {
        self.bolts.contains(&bolt) && (self.processes.is_empty() || self.processes.contains(&process))
    }
}
