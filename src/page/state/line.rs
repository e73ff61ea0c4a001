//! The order line as it was written in one line.

use std::rc::Rc;

use crate::calculator::{Draft, Form};
use crate::order;
use crate::order::reading::{Segment, not_said, said};

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
    /// What was understood of it, and what was not.
    pub sentence: Vec<Segment>,
    /// Whether words stand unused of which nobody knows whether they ask for something.
    pub has_open_words: bool,
    /// What stood in the fields before the line was begun: the line asks for what it should say and
    /// does not; the rest shows through, and all of it is back when the line is emptied.
    before: Option<Rc<Form>>,
}

/// The fields that a line fills, how it was understood, and whether its unused words leave something open.
fn read(text: &str) -> (Draft, Vec<Segment>, bool) {
    let reading = order::reading::read(text);
    let (sentence, has_open_words) = (reading.sentence(), reading.has_open_words());
    (reading.draft, sentence, has_open_words)
}

impl WrittenLine {
    /// A line as it is typed, over what stands in the fields; and the fields with it.
    pub(super) fn over(old: Self, form: &Rc<Form>, text: String) -> (Self, Rc<Form>) {
        let before = old.before.unwrap_or_else(|| Rc::clone(form));
        // A line taken back leaves the fields as they were before it.
        if text.trim().is_empty() {
            return (Self { text, ..Self::default() }, before);
        }
        let (filled, sentence, has_open_words) = read(&text);
        let mut draft = before.draft();
        // What the line does not say is asked for, and never taken from what stood in the fields.
        let facts = order::FIELDS.iter().filter(|field| field.default.is_empty());
        facts.for_each(|field| draft.set(field.key, ""));
        filled.pairs().for_each(|(name, text)| draft.set(name, text));
        let form = Rc::new(Form::new(order::ABOUT.fields, &draft));
        (Self { text, filled, sentence, has_open_words, before: Some(before) }, form)
    }

    /// A line of a link, before it is read: until then its words leave everything open.
    pub(super) fn unread(text: String) -> Self {
        let has_open_words = !text.trim().is_empty();
        Self { text, has_open_words, ..Self::default() }
    }

    /// Whether it was not read yet: a line that was read says at least what it does not say.
    pub fn is_unread(&self) -> bool {
        !self.text.trim().is_empty() && self.sentence.is_empty()
    }

    /// A line that comes from a link together with the fields, which may have been changed since.
    pub(super) fn beside(text: String, fields: &Draft) -> Self {
        let (draft, sentence, has_open_words) = read(&text);
        let filled = draft.pairs().filter(|(name, text)| fields.get(name) == Some(text)).collect();
        Self { text, filled, sentence, has_open_words, before: None }
    }

    /// The line as it was understood, with what the fields say by now: first what was not used, then
    /// what is asked, then each piece in its place, then what an order usually says and this one not.
    pub fn as_read(&self, form: &Form) -> Vec<Segment> {
        let draft = form.draft();
        let is_empty = |field: &str| draft.get(field).is_none_or(str::is_empty);
        let left = self.sentence.iter().filter(|segment| match segment {
            Segment::NotUsed { .. } => true,
            // Until somebody chooses, the field says all that it may be.
            Segment::Which { field, .. } => is_empty(field) || draft.get(field) == self.filled.get(field),
            _ => false,
        });
        let asked = |field: &str| {
            self.sentence
                .iter()
                .any(|segment| matches!(segment, Segment::Which { field: of, .. } if *of == field))
        };
        // What stands in a field because it always does is no part of the order.
        let is_default = |field: &str| {
            let about = order::FIELDS.iter().find(|about| about.key == field);
            about.is_some_and(|about| draft.get(field) == Some(about.default))
        };
        let mut segments: Vec<Segment> = left.cloned().collect();
        segments.extend(said(&draft).into_iter().filter_map(|segment| match segment {
            Segment::Used { field, .. } if is_default(field) => None,
            now => Some(self.sentence.iter().find(|then| is_same(then, &now)).cloned().unwrap_or(now)),
        }));
        let silent = not_said(&draft).filter(|field| !asked(field.key));
        segments.extend(silent.map(|field| Segment::NotSaid { field: field.key, label: field.label }));
        segments
    }

    /// The fields were changed by hand: emptying the line takes nothing back any more.
    pub(super) fn settle(&mut self) {
        self.before = None;
    }
}

/// Whether two pieces say the same of the same field.
fn is_same(one: &Segment, other: &Segment) -> bool {
    match (one, other) {
        (Segment::Used { field, text, .. }, Segment::Used { field: of, text: other, .. }) => {
            field == of && text == other
        }
        _ => false,
    }
}
