//! What one rule means for a verdict.

use serde::Serialize;

/// How a case stands to one rule, from best to worst.
///
/// What every ordinary order carries anyway is a [`Mark::Term`]; a [`Mark::Condition`] is for what
/// somebody has to prove or to agree, and that can fail.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Mark {
    /// The rule is met.
    Met,
    /// For information; it does not touch the verdict.
    Note,
    /// It is written on the order, and there is nothing to prove.
    Term,
    /// Somebody has to prove or agree something that can fail.
    Condition,
    /// A fact is missing, or no table reaches the case.
    NotJudged,
    /// A document or a fact rules it out.
    Bar,
}

impl Mark {
    /// Every mark, from best to worst.
    pub const ALL: [Self; 6] =
        [Self::Met, Self::Note, Self::Term, Self::Condition, Self::NotJudged, Self::Bar];

    /// Stable key for programs that read the answer.
    pub fn key(self) -> &'static str {
        match self {
            Self::Met => "met",
            Self::Note => "note",
            Self::Term => "term",
            Self::Condition => "condition",
            Self::NotJudged => "not-judged",
            Self::Bar => "bar",
        }
    }

    /// The mark in a word or two, the same on the screen, on paper and in the terminal.
    pub fn words(self) -> &'static str {
        match self {
            Self::Met => "Met",
            Self::Note => "Note",
            Self::Term => "On the order",
            Self::Condition => "To do",
            Self::NotJudged => "Not judged",
            Self::Bar => "Rules it out",
        }
    }
}
