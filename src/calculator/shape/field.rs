//! A question with the type of its answer.

use std::marker::PhantomData;

use super::{Bound, Choice, Fault, FieldAbout, FieldValue, Kind, Problem, RawText};
use crate::quantity::Unit;
use crate::source::Source;
use crate::table::Refusal;

/// One question of a calculator, named once: a constant, from which its text is read and written.
///
/// ```text
/// const COAT: Field<Length> = Field::quantity("coat", "Coat", &THICKNESSES, BOUND, "50 µm")
///     .hint("As your document states it.");
/// static FIELDS: [FieldAbout; 1] = [COAT.about];
/// ```
#[derive(Debug)]
pub struct Field<T> {
    /// The description without the type.
    pub about: FieldAbout,
    value: PhantomData<fn() -> T>,
}

impl<T: FieldValue> Field<T> {
    /// A number with a unit.
    pub const fn quantity(
        key: &'static str,
        label: &'static str,
        units: &'static [&'static Unit],
        bounds: Bound,
        default: &'static str,
    ) -> Self {
        Self::of(FieldAbout::quantity(key, label, units, bounds, default))
    }

    /// One of several; `default` is a key.
    pub const fn choice(
        key: &'static str,
        label: &'static str,
        choices: &'static [Choice],
        default: &'static str,
    ) -> Self {
        Self::of(FieldAbout::choice(key, label, choices, default))
    }

    /// A written designation.
    pub const fn text(key: &'static str, label: &'static str, default: &'static str) -> Self {
        Self::of(FieldAbout::text(key, label, default))
    }
}

impl Field<u32> {
    /// A whole number.
    pub const fn count(
        key: &'static str,
        label: &'static str,
        min: u32,
        max: u32,
        default: &'static str,
    ) -> Self {
        Self::of(FieldAbout::count(key, label, min, max, default))
    }
}

impl Field<bool> {
    /// Yes or no; at first no.
    pub const fn yes_no(key: &'static str, label: &'static str) -> Self {
        Self::of(FieldAbout::choice(key, label, YES_NO, "no"))
    }
}

impl Field<RawText> {
    /// Many readings.
    pub const fn readings(
        key: &'static str,
        label: &'static str,
        units: &'static [&'static Unit],
        default: &'static str,
    ) -> Self {
        Self::of(FieldAbout::readings(key, label, units, default))
    }

    /// Taken one after the other, so many on each article.
    #[must_use]
    pub const fn counted_by(mut self, per_article: &Field<u32>) -> Self {
        if let Kind::Readings { units, .. } = self.about.kind {
            self.about.kind = Kind::Readings { units, per_article: Some(per_article.key()) };
        }
        self
    }
}

const YES_NO: &[Choice] = &[Choice::new("no", "No"), Choice::new("yes", "Yes")];

impl<T> Field<T> {
    const fn of(about: FieldAbout) -> Self {
        Self { about, value: PhantomData }
    }

    /// Its key in a draft.
    pub const fn key(&self) -> &'static str {
        self.about.key
    }

    /// With help in one sentence.
    #[must_use]
    pub const fn hint(mut self, hint: &'static str) -> Self {
        self.about = self.about.hint(hint);
        self
    }

    /// With the place where its default or range is published.
    #[must_use]
    pub const fn source(mut self, source: Source) -> Self {
        self.about = self.about.source(source);
        self
    }

    /// Asked only if another field has one of these keys.
    #[must_use]
    pub const fn when<C>(mut self, other: &Field<C>, keys: &'static [&'static str]) -> Self {
        self.about = self.about.when(other.key(), keys);
        self
    }

    /// Answers to these earlier keys as well, so that old links go on opening.
    #[must_use]
    pub const fn aliases(mut self, aliases: &'static [&'static str]) -> Self {
        self.about = self.about.aliases(aliases);
        self
    }

    /// May be left empty.
    #[must_use]
    pub const fn optional(mut self) -> Self {
        self.about = self.about.optional();
        self
    }

    /// What is wrong with it.
    pub fn problem(&self, fault: Fault) -> Problem {
        Problem::new(self.about.key, self.about.label, fault)
    }

    /// A table or formula has no answer for what it asks:
    /// `overtap::nut(thread, allowance).map_err(|refusal| ALLOWANCE.refused(refusal))`.
    pub fn refused(&self, refusal: Refusal) -> Problem {
        self.problem(Fault::Refused(refusal))
    }
}
