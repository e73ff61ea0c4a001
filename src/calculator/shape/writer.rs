//! Writes typed values back into the texts of a draft.

use std::borrow::Cow;

use super::{Field, FieldValue};

/// Writes an input back, field by field: the counterpart of [`Reader`](super::Reader).
#[derive(Debug)]
pub struct Writer {
    pairs: Vec<(&'static str, Cow<'static, str>)>,
}

impl Default for Writer {
    fn default() -> Self {
        // Most calculators write about as many fields, and an order opens a dozen of them.
        Self { pairs: Vec::with_capacity(16) }
    }
}

impl Writer {
    /// What a field must say to be read as this value.
    pub fn put<T: FieldValue>(&mut self, field: &Field<T>, value: T) {
        self.pairs.push((field.key(), value.write(&field.about)));
    }

    /// The same for a field that may be empty.
    pub fn put_optional<T: FieldValue>(&mut self, field: &Field<T>, value: Option<T>) {
        let text = value.map(|value| value.write(&field.about)).unwrap_or_default();
        self.pairs.push((field.key(), text));
    }

    /// Keys and texts, in the order they were put.
    pub fn pairs(self) -> Vec<(&'static str, Cow<'static, str>)> {
        self.pairs
    }
}
