//! What a rule says of a case.

use crate::source::Source;
use crate::working::Mark;

/// What a rule says of a case.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Says {
    /// What it means for the verdict.
    pub mark: Mark,
    /// Where this is published, if it is not where the rule is.
    pub source: Option<Source>,
}

impl Says {
    /// The rule is met.
    pub const MET: Self = Self::only(Mark::Met);

    /// A mark, published where the rule is.
    pub const fn only(mark: Mark) -> Self {
        Self { mark, source: None }
    }

    /// It is ruled out.
    pub const fn bar() -> Self {
        Self::only(Mark::Bar)
    }

    /// Somebody has to prove or agree something.
    pub const fn condition() -> Self {
        Self::only(Mark::Condition)
    }

    /// It is good to know.
    pub const fn note() -> Self {
        Self::only(Mark::Note)
    }

    /// A mark that is published elsewhere than the rule.
    pub const fn from(mark: Mark, source: Source) -> Self {
        Self { mark, source: Some(source) }
    }
}
