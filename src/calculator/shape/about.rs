//! The description of a calculator: from it come the form, the link, the terminal and the tests.

use crate::quantity::{Shown, Unit};
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
    pub fields: &'static [Field],
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

/// One question of a calculator.
#[derive(Debug, Clone, Copy)]
pub struct Field {
    /// Stable key for links and CSV columns.
    pub name: &'static str,
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
    },
}

/// An admissible range, inclusive.
#[derive(Debug, Clone, Copy)]
pub enum Bound {
    /// From one value to another, and why.
    Between(Shown, Shown, &'static str),
    /// Above zero; the greatest value, and why.
    PositiveTo(Shown, &'static str),
    /// Zero or more, up to the greatest value, and why.
    ZeroTo(Shown, &'static str),
}

/// One possible answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Choice {
    /// Stable key for links.
    pub key: &'static str,
    /// What the user sees.
    pub label: &'static str,
}

/// When a field is asked.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum When {
    /// Always.
    Always,
    /// Only if another field has one of these keys.
    Is(&'static str, &'static [&'static str]),
}

impl Field {
    /// A number with a unit.
    pub const fn quantity(
        name: &'static str,
        label: &'static str,
        units: &'static [&'static Unit],
        bounds: Bound,
        default: &'static str,
    ) -> Self {
        Self::new(name, label, Kind::Quantity { units, bounds }, default)
    }

    /// One of several.
    pub const fn choice(
        name: &'static str,
        label: &'static str,
        choices: &'static [Choice],
        default: &'static str,
    ) -> Self {
        Self::new(name, label, Kind::Choice(choices), default)
    }

    /// A whole number.
    pub const fn count(
        name: &'static str,
        label: &'static str,
        min: u32,
        max: u32,
        default: &'static str,
    ) -> Self {
        Self::new(name, label, Kind::Count { min, max }, default)
    }

    /// A written designation.
    pub const fn text(name: &'static str, label: &'static str, default: &'static str) -> Self {
        Self::new(name, label, Kind::Text, default)
    }

    /// Many readings.
    pub const fn readings(
        name: &'static str,
        label: &'static str,
        units: &'static [&'static Unit],
        default: &'static str,
    ) -> Self {
        Self::new(name, label, Kind::Readings { units }, default)
    }

    const fn new(name: &'static str, label: &'static str, kind: Kind, default: &'static str) -> Self {
        Self { name, label, kind, default, hint: "", source: None, when: When::Always, optional: false }
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

    /// Asked only if `name` has one of `keys`.
    #[must_use]
    pub const fn when(mut self, name: &'static str, keys: &'static [&'static str]) -> Self {
        self.when = When::Is(name, keys);
        self
    }

    /// May be left empty.
    #[must_use]
    pub const fn optional(mut self) -> Self {
        self.optional = true;
        self
    }

    /// What stands in it as one reads it: a choice by its label, a number with its unit.
    pub fn shown(&self, entry: &super::Filled) -> String {
        let chosen = match self.kind {
            Kind::Choice(choices) => choices.iter().find(|choice| choice.key == entry.text),
            _ => None,
        };
        chosen.map_or_else(|| entry.with_unit(), |choice| choice.label.to_owned())
    }

    /// The units it offers; none for what has no unit.
    pub fn units(&self) -> &'static [&'static Unit] {
        match self.kind {
            Kind::Quantity { units, .. } | Kind::Readings { units } => units,
            _ => &[],
        }
    }
}

impl Choice {
    /// A choice.
    pub const fn new(key: &'static str, label: &'static str) -> Self {
        Self { key, label }
    }
}

impl Bound {
    /// Why the range is what it is.
    pub fn why(&self) -> &'static str {
        match self {
            Self::Between(_, _, why) | Self::PositiveTo(_, why) | Self::ZeroTo(_, why) => why,
        }
    }
}
