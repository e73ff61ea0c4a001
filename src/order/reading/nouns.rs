//! Nouns of the parts that are ordered, and of those that go with them.

use super::what::What;

/// Nouns of parts that nuts and washers go with.
pub(super) const BOLTS: &[&str] = &["bolt", "screw", "schraube", "rod", "stud", "u-bolt"];
/// Nouns of parts that have no thread.
pub(super) const NO_THREAD: &[&str] = &["ring", "pin"];
/// Nouns of what goes with bolts.
pub(super) const MATES: &[&str] = &["nut", "washer"];

/// Whether a piece is the name of a part with one of these nouns.
pub(super) fn is_named(what: &What, nouns: &[&str]) -> bool {
    matches!(what, What::Part(words) if words.split(' ').any(|word| nouns.contains(&word)))
}
