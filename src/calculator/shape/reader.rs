//! Reads a draft field by field and keeps every problem it meets.

use super::{Draft, Fault, Field, FieldAbout, FieldValue, Problem, Problems, When};

/// Reads fields into typed values.
///
/// What is wrong is kept, so that all of it is reported at once: read every field first, then use
/// `?` on what was read.
///
/// ```text
/// let (coat, factor) = (reader.get(&COAT), reader.get(&FACTOR));
/// Ok(Input { coat: coat?, factor: factor? })
/// ```
#[derive(Debug)]
pub struct Reader<'a> {
    pub(super) fields: &'static [FieldAbout],
    draft: &'a Draft,
    pub(super) problems: Option<Problems>,
}

/// A value that is not there because its field has a problem, which the reader keeps.
///
/// Only a reader makes one, in keeping a problem.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Missed {
    key: &'static str,
    label: &'static str,
}

/// What a field says that is asked only on a condition.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum IfAsked<T> {
    /// The condition does not hold: whatever stands there is not meant.
    Not,
    /// It is asked, may be empty, and is.
    LeftEmpty,
    /// It is asked, and says this.
    Says(T),
}

impl<T> IfAsked<T> {
    /// What it says, for whom it is the same that it is not asked and that it was left empty.
    pub fn said(self) -> Option<T> {
        match self {
            Self::Says(value) => Some(value),
            Self::Not | Self::LeftEmpty => None,
        }
    }
}

impl<'a> Reader<'a> {
    /// A reader of these fields.
    pub fn new(fields: &'static [FieldAbout], draft: &'a Draft) -> Self {
        Self { fields, draft, problems: None }
    }

    /// What a field says.
    ///
    /// Where the field is asked only on a condition, ask for it where the condition holds.
    ///
    /// # Errors
    /// [`Missed`] where it is empty or its text is no answer; the problem is kept.
    pub fn get<T: FieldValue>(&mut self, field: &Field<T>) -> Result<T, Missed> {
        match self.optional(field)? {
            Some(value) => Ok(value),
            None => Err(self.wrong(field, Fault::Missing)),
        }
    }

    /// What a field says that may be empty; `None` if it is.
    ///
    /// # Errors
    /// [`Missed`] where its text is no answer; the problem is kept.
    pub fn optional<T: FieldValue>(&mut self, field: &Field<T>) -> Result<Option<T>, Missed> {
        match self.entered(&field.about)? {
            Some(text) => T::read(text, &field.about).map(Some).map_err(|fault| self.wrong(field, fault)),
            None => Ok(None),
        }
    }

    /// The text of a field, where it is not empty and no longer than it may be: the same for a value of any kind.
    fn entered(&mut self, about: &FieldAbout) -> Result<Option<&'a str>, Missed> {
        let text = self.text(about);
        let (characters, longest) = (text.chars().count(), about.longest());
        if characters > longest {
            return Err(self.keep(about, Fault::TooLong { characters, longest }));
        }
        Ok(Some(text).filter(|text| !text.is_empty()))
    }

    /// What a field says that is asked only on a condition.
    ///
    /// # Errors
    /// [`Missed`] where it is empty and must not be, or its text is no answer; the problem is kept.
    pub fn if_asked<T: FieldValue>(&mut self, field: &Field<T>) -> Result<IfAsked<T>, Missed> {
        let listed = self.fields.iter().find(|listed| listed.key == field.key());
        match listed.unwrap_or(&field.about) {
            about if !self.asked(about) => Ok(IfAsked::Not),
            about if about.optional => {
                self.optional(field).map(|said| said.map_or(IfAsked::LeftEmpty, IfAsked::Says))
            }
            _ => self.get(field).map(IfAsked::Says),
        }
    }

    /// Keeps a problem of a field that only the calculator can see.
    pub fn wrong<T>(&mut self, field: &Field<T>, fault: Fault) -> Missed {
        self.keep(&field.about, fault)
    }

    /// Ends the reading: the input, or all the problems.
    ///
    /// # Errors
    /// All the problems met.
    pub fn end<I>(self, read: Result<I, Missed>) -> Result<I, Problems> {
        match (self.problems, read) {
            (None, Ok(input)) => Ok(input),
            (Some(problems), _) => Err(problems),
            // What is missed was kept by this reader, unless the calculator brought it from another.
            (None, Err(Missed { key, label })) => {
                Err(Problems::one(Problem::new(key, label, Fault::Missing)))
            }
        }
    }

    /// Whether a field is asked, given the others.
    pub fn asked(&self, about: &FieldAbout) -> bool {
        match about.when {
            When::Always => true,
            When::Is(key, keys) => self
                .fields
                .iter()
                .find(|other| other.key == key)
                .is_some_and(|other| self.asked(other) && keys.contains(&self.text(other))),
        }
    }

    pub(super) fn text(&self, about: &FieldAbout) -> &'a str {
        about.text_in(self.draft).unwrap_or(about.default).trim()
    }

    pub(super) fn keep(&mut self, about: &FieldAbout, fault: Fault) -> Missed {
        let problem = Problem::new(about.key, about.label, fault);
        match &mut self.problems {
            Some(problems) => problems.push(problem),
            None => self.problems = Some(Problems::one(problem)),
        }
        Missed::of(about)
    }
}

impl Missed {
    pub(super) fn of(about: &FieldAbout) -> Self {
        Self { key: about.key, label: about.label }
    }
}
