//! The order line: what is asked, assessed for the three processes side by side.
//!
//! It asks the calculators and the rooms below; it has no rule of its own but how their answers
//! make a verdict.

use crate::calculator::{Caution, Figure, Finding, Note, Verdict};
use crate::coat::Process;

/// The assessment of an order line, as data.
#[derive(Debug, Clone, PartialEq)]
pub struct Assessment {
    /// The answer in one sentence.
    pub headline: String,
    /// The order line as it was understood: thread, steel, part, mass of a piece and of the lot.
    pub figures: Vec<Figure>,
    /// Hot-dip, mechanical, electroplating.
    pub processes: [ProcessAssessment; 3],
    /// Cautions that go with the work.
    pub cautions: Vec<Caution>,
    /// What the reader should know besides.
    pub notes: Vec<Note>,
}

/// What one process is to the order line.
#[derive(Debug, Clone, PartialEq)]
pub struct ProcessAssessment {
    /// The process.
    pub process: Process,
    /// Its verdict.
    pub verdict: Verdict,
    /// The coat it would get and by which standard, then what follows from it.
    pub figures: Vec<Figure>,
    /// Each reason with its source, the worst first; most of them open a calculator, filled in.
    pub findings: Vec<Finding>,
}
