//! The order line: what is asked, assessed for the three processes side by side.
//!
//! [`judge`] asks the rules, [`demand`] puts together what they ask for, [`recommend`] chooses, and
//! [`answer`] says it in sixty words. No rule stands here.

pub mod answer;
mod arrange;
pub mod asked;
pub mod demand;
mod judge;
mod line;
pub mod list;
pub mod offer;
mod picture;
pub mod reading;
pub mod recommend;
mod remedy;
pub mod saved;
pub mod set;
mod threads;
mod units;

pub use answer::Answer;
pub use asked::Asked;
pub use judge::{Item, Judged, Judgement, judge};
pub use line::{ABOUT, FIELDS, Mate, OrderLine, read, write};
pub use reading::Reading;
pub use threads::bolt_class;

use serde::Serialize;

use crate::calculator::{Caution, Draft, Figure, Finding, Note, Picture, Problems, Verdict};
use crate::coat::Process;
use crate::quantity::letters::lower;
use crate::source::Source;

/// Assesses an order line from the texts of its fields.
///
/// # Errors
/// All the problems of its fields at once.
pub fn assess(draft: &Draft) -> Result<Assessment, Problems> {
    let line = read(draft)?;
    Ok(arrange::arrange(&line, &judge(&line)))
}

/// The assessment of an order line, as data.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Assessment {
    /// The answer in one sentence.
    pub headline: String,
    /// The answer that is read aloud.
    pub answer: Answer,
    /// The order line as it was understood: thread, steel, part, mass of a piece and of the lot.
    pub figures: Vec<Figure>,
    /// Hot-dip, mechanical, electroplating.
    pub processes: [ProcessAssessment; 3],
    /// Cautions that go with the work.
    pub cautions: Vec<Caution>,
    /// What the reader should know besides.
    pub notes: Vec<Note>,
    /// The finish to take, as pictures. What they show stands in the figures: programs do without them.
    #[serde(skip)]
    pub pictures: Vec<Picture>,
}

/// What one process is to the order line.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ProcessAssessment {
    /// The process.
    pub process: Process,
    /// Its verdict.
    pub verdict: Verdict,
    /// The coat it would get and by which standard, then what follows from it.
    pub figures: Vec<Figure>,
    /// Each reason with its source, the worst first; each opens the calculator behind it, filled in.
    pub findings: Vec<Finding>,
}

impl Assessment {
    /// Every document the assessment rests on, each once, in the order met.
    pub fn sources(&self) -> Vec<Source> {
        let figures = self.figures.iter().chain(self.processes.iter().flat_map(|one| &one.figures));
        let findings = self.processes.iter().flat_map(|one| &one.findings).map(|finding| finding.source);
        let notes = self.notes.iter().filter_map(|note| note.source);
        let mut all = Vec::new();
        for source in figures.filter_map(|figure| figure.source).chain(findings).chain(notes) {
            if !all.contains(&source) {
                all.push(source);
            }
        }
        all
    }
}

impl std::fmt::Display for Assessment {
    /// As plain text, for the terminal and for a letter.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        writeln!(f, "{}\n", self.answer.text)?;
        writeln!(f, "{}", self.headline)?;
        self.figures.iter().try_for_each(|figure| writeln!(f, "  {figure}"))?;
        for process in &self.processes {
            // In this form programs read it.
            let verdict = lower(process.verdict.words());
            writeln!(f, "\n{}: {verdict}", process.process.name())?;
            process.figures.iter().try_for_each(|figure| writeln!(f, "  {figure}"))?;
            process.findings.iter().try_for_each(|finding| writeln!(f, "  {finding}"))?;
        }
        writeln!(f)?;
        self.notes.iter().try_for_each(|note| writeln!(f, "{}", note.text))?;
        self.cautions.iter().try_for_each(|caution| writeln!(f, "{}", caution.words()))
    }
}
