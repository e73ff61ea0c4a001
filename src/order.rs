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
pub mod standing;
mod threads;
mod told;
mod units;

pub use answer::Answer;
pub use arrange::weight;
pub use asked::Asked;
pub use judge::{Item, Judged, Judgement, judge};
pub use line::{ABOUT, FIELDS, Hole, Mate, OrderLine, read, write};
pub use reading::Reading;
pub use standing::{Aside, Standing};
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
    assess_written(draft, false)
}

/// The same where a written line filled the fields: with words left of which nobody knows whether they ask for
/// something ([`Reading::has_open_words`]), it is not said that there is nothing to prove.
///
/// # Errors
/// All the problems of its fields at once.
pub fn assess_written(draft: &Draft, has_open_words: bool) -> Result<Assessment, Problems> {
    Ok(assessed_written(draft, has_open_words)?.assessment)
}

/// The same, with what it was made from.
///
/// # Errors
/// All the problems of its fields at once.
pub fn assessed(draft: &Draft) -> Result<Assessed, Problems> {
    assessed_written(draft, false)
}

/// The same as [`assess_written`], with what it was made from.
///
/// # Errors
/// All the problems of its fields at once.
pub fn assessed_written(draft: &Draft, has_open_words: bool) -> Result<Assessed, Problems> {
    let line = OrderLine { has_open_words, ..read(draft)? };
    let judgement = judge(&line);
    let assessment = arrange::arrange(&line, &judgement);
    Ok(Assessed { draft: draft.clone(), line, judgement, assessment })
}

/// An order line with what was judged and said of it.
#[derive(Debug, Clone)]
pub struct Assessed {
    /// The fields as they were written.
    pub draft: Draft,
    /// The order line.
    pub line: OrderLine,
    /// What was judged.
    pub judgement: Judgement,
    /// What is said of it.
    pub assessment: Assessment,
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
    /// Why it is not ordered, though it is not ruled out.
    pub aside: Option<Aside>,
    /// The coat it would get and by which standard, then what follows from it.
    pub figures: Vec<Figure>,
    /// The nearest change that would make it suit, where it is ruled out and there is one.
    pub change: Option<String>,
    /// What counts, the worst first: what rules out, or else what is to be done and what goes on the order.
    /// Each has its source and opens the calculator behind it, filled in.
    pub findings: Vec<Finding>,
    /// What is told in a fold: why each thing is asked for, what is good to know, and what would be asked of
    /// a process that is ruled out.
    pub folded: Vec<Finding>,
}

/// What the nearest change is called, on the screen as in the terminal.
pub const NEAREST: &str = "Nearest change";

/// What stands in the fold of a process, on the screen as in the terminal.
pub const BEHIND: &str = "reasons and notes";

impl Assessed {
    /// The process to take as it was judged, where there is one.
    pub fn taken(&self) -> Option<&Judged> {
        let processes = self.judgement.processes.iter();
        processes.into_iter().find(|judged| Some(judged.process) == self.assessment.answer.recommended)
    }
}

impl Assessment {
    /// The process to take, where there is one.
    pub fn taken(&self) -> Option<&ProcessAssessment> {
        self.processes.iter().find(|process| Some(process.process) == self.answer.recommended)
    }

    /// Every document the assessment rests on, each once, in the order met.
    pub fn sources(&self) -> Vec<Source> {
        let figures = self.figures.iter().chain(self.processes.iter().flat_map(|one| &one.figures));
        let findings = self.processes.iter().flat_map(|one| one.findings.iter().chain(&one.folded));
        let findings = findings.map(|finding| finding.source);
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

impl ProcessAssessment {
    /// What it is to the order.
    pub fn standing(&self) -> Standing {
        Standing { verdict: self.verdict, aside: self.aside }
    }
}

impl std::fmt::Display for Assessment {
    /// As plain text, for the terminal and for a letter: each process as the page shows it, and then what
    /// stands there in folds.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        writeln!(f, "{}\n", self.answer.text)?;
        writeln!(f, "{}", self.headline)?;
        self.figures.iter().try_for_each(|figure| writeln!(f, "  {figure}"))?;
        for process in &self.processes {
            // In this form programs read it.
            let standing = lower(&process.standing().words());
            writeln!(f, "\n{}: {standing}", process.process.name())?;
            process
                .figures
                .iter()
                .try_for_each(|figure| writeln!(f, "  {}: {}", figure.name, figure.value))?;
            process.change.iter().try_for_each(|change| writeln!(f, "  {NEAREST}: {change}"))?;
            // What further rules ask for the same is told with their reasons.
            let mut before = None;
            for Finding { mark, text, source, .. } in &process.findings {
                if before.replace(mark) != Some(mark) {
                    writeln!(f, "  {}:", mark.words())?;
                }
                writeln!(f, "    {text} [{source}]")?;
            }
        }
        for process in &self.processes {
            writeln!(f, "\n{}, {BEHIND}", process.process.name())?;
            for figure in &process.figures {
                if let Some(source) = figure.source {
                    writeln!(f, "  {}: {source}", figure.name)?;
                }
            }
            process.folded.iter().try_for_each(|finding| writeln!(f, "  {finding}"))?;
        }
        writeln!(f)?;
        self.notes.iter().try_for_each(|note| writeln!(f, "{}", note.text))?;
        self.cautions.iter().try_for_each(|caution| writeln!(f, "{}", caution.words()))
    }
}
