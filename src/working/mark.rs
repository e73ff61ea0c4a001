//! What one rule means for a verdict.

/// How a case stands to one rule, from best to worst.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Mark {
    /// The rule is met.
    Met,
    /// For information; it does not touch the verdict.
    Told,
    /// The rule asks for something to be done.
    Asked,
    /// The rule forbids it.
    Forbidden,
}

impl Mark {
    /// The mark in one word.
    pub fn words(self) -> &'static str {
        match self {
            Self::Met => "Met",
            Self::Told => "Note",
            Self::Asked => "Do",
            Self::Forbidden => "Against",
        }
    }
}
