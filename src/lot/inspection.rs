//! The record of an inspection: the thickness, and beside it appearance, adhesion, thread and washers.

use super::{Decision, Standard};
use crate::process::Process;
use crate::table::inspection::{self as table, Row};

/// What became of one characteristic.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Result {
    /// It conforms.
    Accept,
    /// It was not inspected.
    NotDone,
    /// It does not conform.
    Reject,
}

/// What is inspected beside the thickness.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Characteristic {
    /// Bare places, blisters, flux, dross.
    Appearance,
    /// Whether the coat holds.
    Adhesion,
    /// Whether the thread passes its gauges.
    Thread,
    /// Washers that stick together.
    Washers,
}

/// How the thickness was measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Method {
    /// A magnetic gauge.
    Magnetic,
    /// The coat stripped, and the article weighed before and after.
    StripAndWeigh,
    /// X-ray fluorescence.
    XRay,
    /// A section under the microscope.
    Section,
}

/// The results beside the thickness, and who found them.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Record {
    /// Each characteristic with its result.
    pub results: [(Characteristic, Result); 4],
    /// How the thickness was measured.
    pub method: Method,
    /// Who inspected; empty where nobody said.
    pub who: String,
    /// When.
    pub when: String,
    /// The gauge, and its check on shims.
    pub gauge: String,
    /// What it read on which shims.
    pub shims: String,
}

impl Record {
    /// What becomes of the lot with everything inspected: a rejected characteristic rejects it,
    /// whatever the thickness.
    pub fn overall(&self, thickness: Decision) -> Decision {
        let rejected = self.results.iter().any(|(_, result)| *result == Result::Reject);
        if rejected { Decision::Reject } else { thickness }
    }

    /// Characteristics of that result.
    pub fn of_result(&self, wanted: Result) -> impl Iterator<Item = Characteristic> {
        self.results.iter().filter(move |(_, result)| *result == wanted).map(|(one, _)| *one)
    }
}

impl Characteristic {
    /// All of them, in the order they are inspected.
    pub const ALL: [Self; 4] = [Self::Appearance, Self::Adhesion, Self::Thread, Self::Washers];

    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::Appearance => "appearance",
            Self::Adhesion => "adhesion",
            Self::Thread => "thread gauge",
            Self::Washers => "washers stuck together",
        }
    }

    /// How it is inspected.
    pub fn how(self, process: Option<Process>) -> &'static Row {
        match (self, process) {
            (Self::Appearance, Some(Process::Mechanical)) => &table::APPEARANCE_MECHANICAL,
            (Self::Appearance, Some(Process::Electroplated)) => &table::APPEARANCE_ELECTROPLATED,
            (Self::Appearance, _) => &table::APPEARANCE_HOT_DIP,
            (Self::Adhesion, Some(Process::Mechanical)) => &table::ADHESION_MECHANICAL,
            (Self::Adhesion, Some(Process::Electroplated)) => &table::ADHESION_ELECTROPLATED,
            (Self::Adhesion, _) => &table::ADHESION_HOT_DIP,
            (Self::Thread, _) => &table::THREAD,
            (Self::Washers, _) => &table::WASHERS,
        }
    }
}

impl Method {
    /// What is published of it.
    pub fn rows(self) -> impl Iterator<Item = &'static Row> {
        let begins = match self {
            Self::Magnetic => "Magnetic",
            Self::StripAndWeigh => "Strip and weigh",
            Self::XRay => "X-ray",
            Self::Section => "Section",
        };
        table::METHODS.iter().filter(move |row| row.name.starts_with(begins))
    }
}

/// Where the coat is measured, by the standard the lot is checked by.
pub fn places(standard: Standard) -> &'static [Row] {
    match standard {
        Standard::Iso10684 => &table::PLACES_ISO_10684,
        Standard::A153 | Standard::F2329Batch | Standard::F2329Lot => &table::PLACES_ASTM,
        Standard::Iso1461 | Standard::Own => &table::PLACES_ARTICLES,
        Standard::B695 | Standard::Iso4042 => &table::PLACES_SIGNIFICANT,
    }
}
