//! What one rule means for a process, from best to worst.

/// How a steel stands to one rule.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Standing {
    /// The rule asks for nothing here.
    Met,
    /// For information; it does not touch the verdict.
    Told,
    /// The rule asks for something to be done.
    Asked,
    /// The rule forbids the process.
    Forbidden,
}
