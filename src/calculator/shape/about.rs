//! The description of a calculator: from it come the form, the link, the terminal and the tests.

use super::{Bound, Choice, Draft};
use crate::quantity::Unit;
use crate::source::Source;

/// What a calculator is called, what it answers and what it asks.
#[derive(Debug, Clone, Copy)]
pub struct About {
    /// Stable key for links: `coat`.
    pub id: &'static str,
    /// Its name on the page.
    pub title: &'static str,
    /// One sentence on what it answers.
    pub answers: &'static str,
    /// What it asks, in the order it is asked.
    pub fields: &'static [FieldAbout],
    /// Worked examples; the first one fills the form. Tests run them all.
    pub examples: &'static [Example],
}

/// A named set of values, worked as documentation and as a test.
#[derive(Debug, Clone, Copy)]
pub struct Example {
    /// What it shows.
    pub title: &'static str,
    /// Names and texts of the fields that differ from their defaults.
    pub pairs: &'static [(&'static str, &'static str)],
}

/// One question of a calculator, without the type of its answer: what the form, the link, the
/// terminal and the page read. The typed [`Field`](super::Field) holds it.
#[derive(Debug, Clone, Copy)]
pub struct FieldAbout {
    /// Stable key for links and CSV columns.
    pub key: &'static str,
    /// Keys that it had in earlier links; they go on opening.
    pub aliases: &'static [&'static str],
    /// What the user sees in front of it; without the unit, which the form adds.
    pub label: &'static str,
    /// What kind of answer it takes.
    pub kind: Kind,
    /// The text it starts with; empty where there is none.
    pub default: &'static str,
    /// Help in one sentence, or empty.
    pub hint: &'static str,
    /// Where the default or the admissible range is published.
    pub source: Option<Source>,
    /// When it is asked at all.
    pub when: When,
    /// Whether it may be left empty.
    pub optional: bool,
}

/// The kind of answer a field takes.
#[derive(Debug, Clone, Copy)]
pub enum Kind {
    /// A number with a unit: the units offered, the first being the default.
    Quantity {
        /// Units the user may choose from; all of one dimension unless the calculator says more.
        units: &'static [&'static Unit],
        /// The admissible range.
        bounds: Bound,
    },
    /// One of several.
    Choice(&'static [Choice]),
    /// A whole number.
    Count {
        /// Least admissible.
        min: u32,
        /// Greatest admissible.
        max: u32,
    },
    /// A written designation, read by the calculator: `M16-6g`.
    Text,
    /// Many readings: articles on lines (or between `;`), readings of one article between spaces.
    Readings {
        /// Units the user may choose from.
        units: &'static [&'static Unit],
        /// The key of the count that says how many readings belong to an article, where they are taken one
        /// after the other.
        per_article: Option<&'static str>,
    },
}

/// When a field is asked.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum When {
    /// Always.
    Always,
    /// Only if another field has one of these keys.
    Is(&'static str, &'static [&'static str]),
}

impl FieldAbout {
    /// A number with a unit.
    pub const fn quantity(
        key: &'static str,
        label: &'static str,
        units: &'static [&'static Unit],
        bounds: Bound,
        default: &'static str,
    ) -> Self {
        Self::new(key, label, Kind::Quantity { units, bounds }, default)
    }

    /// One of several.
    pub const fn choice(
        key: &'static str,
        label: &'static str,
        choices: &'static [Choice],
        default: &'static str,
    ) -> Self {
        Self::new(key, label, Kind::Choice(choices), default)
    }

    /// A whole number.
    pub const fn count(
        key: &'static str,
        label: &'static str,
        min: u32,
        max: u32,
        default: &'static str,
    ) -> Self {
        Self::new(key, label, Kind::Count { min, max }, default)
    }

    /// A written designation.
    pub const fn text(key: &'static str, label: &'static str, default: &'static str) -> Self {
        Self::new(key, label, Kind::Text, default)
    }

    /// Many readings.
    pub const fn readings(
        key: &'static str,
        label: &'static str,
        units: &'static [&'static Unit],
        default: &'static str,
    ) -> Self {
        Self::new(key, label, Kind::Readings { units, per_article: None }, default)
    }

    const fn new(key: &'static str, label: &'static str, kind: Kind, default: &'static str) -> Self {
        Self {
            key,
            aliases: &[],
            label,
            kind,
            default,
            hint: "",
            source: None,
            when: When::Always,
            optional: false,
        }
    }

    /// With help in one sentence.
    #[must_use]
    pub const fn hint(mut self, hint: &'static str) -> Self {
        self.hint = hint;
        self
    }

    /// With the place where its default or range is published.
    #[must_use]
    pub const fn source(mut self, source: Source) -> Self {
        self.source = Some(source);
        self
    }

    /// Asked only if the field `other` has one of `keys`.
    #[must_use]
    pub const fn when(mut self, other: &'static str, keys: &'static [&'static str]) -> Self {
        self.when = When::Is(other, keys);
        self
    }

    /// Answers to these earlier keys as well.
    #[must_use]
    pub const fn aliases(mut self, aliases: &'static [&'static str]) -> Self {
        self.aliases = aliases;
        self
    }

    /// May be left empty.
    #[must_use]
    pub const fn optional(mut self) -> Self {
        self.optional = true;
        self
    }

    /// What a draft says in it, under its key or an earlier one.
    pub fn text_in<'a>(&self, draft: &'a Draft) -> Option<&'a str> {
        std::iter::once(&self.key).chain(self.aliases).find_map(|key| draft.get(key))
    }

    /// The most characters that its text may have: no designation and no number needs more, and
    /// 10,000 readings of a gauge need no more than a list of them may have.
    pub const fn longest(&self) -> usize {
        match self.kind {
            Kind::Readings { .. } => 200_000,
            _ => 200,
        }
    }

    /// The units it offers; none for what has no unit.
    pub fn units(&self) -> &'static [&'static Unit] {
        match self.kind {
            Kind::Quantity { units, .. } | Kind::Readings { units, .. } => units,
            _ => &[],
        }
    }
}
