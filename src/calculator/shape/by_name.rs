//! Reading by names. Goes when the last calculator has typed fields.

use std::fmt;

use super::{Fault, FieldAbout, FieldValue, Missed, Problems, Reader};
use crate::quantity::{Hardness, Quantity, Unit};

impl<'a> Reader<'a> {
    /// Ends the reading by names: the input, or all the problems.
    ///
    /// # Errors
    /// All the problems met.
    pub fn finish<I>(mut self, input: Option<I>) -> Result<I, Problems> {
        let read = self.by_name(|_| input);
        self.end(read)
    }

    /// Reads by names.
    ///
    /// # Errors
    /// [`Missed`] where there is no input; a problem is kept.
    pub fn by_name<I>(&mut self, read: impl FnOnce(&mut Self) -> Option<I>) -> Result<I, Missed> {
        match read(self) {
            Some(input) => Ok(input),
            None => {
                let empty =
                    self.fields.iter().filter(|field| self.text(field).is_empty() && self.asked(field));
                let missing: Vec<&FieldAbout> =
                    if self.problems.is_none() { empty.collect() } else { Vec::new() };
                let first = self.fields.first().map(Missed::of);
                let missed =
                    missing.into_iter().map(|field| self.keep(field, Fault::Missing)).last().or(first);
                Err(missed.unwrap_or_else(|| Missed::of(&FieldAbout::text("", "", ""))))
            }
        }
    }

    /// A quantity.
    pub fn quantity<Q: Quantity>(&mut self, name: &str) -> Option<Q> {
        self.value(name)
    }

    /// The number of a quantity with whichever of the field's units was written.
    pub fn number_and_unit(&mut self, name: &str) -> Option<(f64, &'static Unit)> {
        self.read(name, |text, about| about.measured(text))
    }

    /// A hardness on whichever scale was written.
    pub fn hardness(&mut self, name: &str) -> Option<Hardness> {
        self.value(name)
    }

    /// A whole number.
    pub fn count(&mut self, name: &str) -> Option<u32> {
        self.value(name)
    }

    /// The key of a choice, turned into a type by `from_key`.
    pub fn choice<T>(&mut self, name: &str, from_key: impl Fn(&str) -> Option<T>) -> Option<T> {
        self.read(name, |text, about| about.chosen(text, from_key))
    }

    /// A written designation, read by its room.
    pub fn parsed<T, E: fmt::Display>(
        &mut self,
        name: &str,
        read: impl Fn(&str) -> Result<T, E>,
    ) -> Option<T> {
        self.read(name, |text, _| read(text).map_err(|why| Fault::NotUnderstood(why.to_string())))
    }

    /// The raw text and the units of a field of readings.
    pub fn readings(&mut self, name: &str) -> Option<(&'a str, &'static [&'static Unit])> {
        let field = self.field(name)?;
        Some((self.filled(field)?, field.units()))
    }

    /// Whether an optional field was left empty.
    pub fn is_empty(&self, name: &str) -> bool {
        self.field(name).is_none_or(|field| self.text(field).is_empty())
    }

    /// Keeps a problem of a field that only the calculator can see.
    pub fn problem(&mut self, name: &str, fault: Fault) {
        if let Some(field) = self.field(name) {
            self.keep(field, fault);
        }
    }

    fn value<T: FieldValue>(&mut self, name: &str) -> Option<T> {
        self.read(name, T::read)
    }

    fn read<T>(&mut self, name: &str, read: impl FnOnce(&str, &FieldAbout) -> Result<T, Fault>) -> Option<T> {
        let field = self.field(name)?;
        let text = self.filled(field)?;
        read(text, field).map_err(|fault| self.keep(field, fault)).ok()
    }

    fn field(&self, name: &str) -> Option<&'static FieldAbout> {
        let field = self.fields.iter().find(|field| field.key == name);
        debug_assert!(field.is_some(), "no field {name}");
        field
    }

    /// The text of a field that is asked; an empty one is missing unless it may be empty.
    fn filled(&mut self, field: &'static FieldAbout) -> Option<&'a str> {
        if !self.asked(field) {
            return None;
        }
        let text = self.text(field);
        if text.is_empty() {
            if !field.optional {
                self.keep(field, Fault::Missing);
            }
            return None;
        }
        Some(text)
    }
}
