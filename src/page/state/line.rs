//! The order line as it was written in one line.

use std::rc::Rc;

use crate::calculator::{Draft, Form};
use crate::order;

/// Order lines as people write them, one touch each.
pub const EXAMPLES: [&str; 6] = [
    "M16x60 hex bolt, 8.8, 400 pcs, C3, 15 years",
    "M20 x 90 hex bolt, 10.9, 1200 pcs, C4, 12 years",
    "3/4-10 x 2 1/2 in structural bolt, A325, 250 pcs, C3, 15 years",
    "M10 x 40 socket head cap screw, A574, 400 pcs, C3, 10 years",
    "M12 flat washer, 4.6, qty 20000, C3, 15 years, class 55",
    "M6 x 20 hex screw, 8.8, 5000 pcs, C1, 20 years",
];

/// An order line written in one line.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct WrittenLine {
    /// As typed.
    pub text: String,
    /// The fields it fills.
    pub filled: Draft,
    /// The words that found no field.
    pub unplaced: Vec<String>,
    /// What stood in the fields before the line was begun: the line asks for what it should say and
    /// does not; the rest shows through, and all of it is back when the line is emptied.
    before: Option<Rc<Form>>,
}

/// The fields that a line fills, and the words that it did not use.
fn read(text: &str) -> (Draft, Vec<String>) {
    let reading = order::reading::read(text);
    let unplaced = reading.not_used().map(|(text, _)| text.to_owned()).collect();
    (reading.draft, unplaced)
}

impl WrittenLine {
    /// A line as it is typed, over what stands in the fields; and the fields with it.
    pub(super) fn over(old: Self, form: &Rc<Form>, text: String) -> (Self, Rc<Form>) {
        let before = old.before.unwrap_or_else(|| Rc::clone(form));
        // A line taken back leaves the fields as they were before it.
        if text.trim().is_empty() {
            return (Self { text, ..Self::default() }, before);
        }
        let (filled, unplaced) = read(&text);
        let mut draft = before.draft();
        // What the line does not say is asked for, and never taken from what stood in the fields.
        let facts = order::FIELDS.iter().filter(|field| field.default.is_empty());
        facts.for_each(|field| draft.set(field.key, ""));
        filled.pairs().for_each(|(name, text)| draft.set(name, text));
        let form = Rc::new(Form::new(order::ABOUT.fields, &draft));
        (Self { text, filled, unplaced, before: Some(before) }, form)
    }

    /// A line that comes from a link together with the fields, which may have been changed since.
    pub(super) fn beside(text: String, fields: &Draft) -> Self {
        let (draft, unplaced) = read(&text);
        let filled = draft.pairs().filter(|(name, text)| fields.get(name) == Some(text)).collect();
        Self { text, filled, unplaced, before: None }
    }

    /// The fields were changed by hand: emptying the line takes nothing back any more.
    pub(super) fn settle(&mut self) {
        self.before = None;
    }
}
