//! The pieces of a line while they look for their places.

use std::borrow::Cow;
use std::collections::HashSet;
use std::ops::Range;

use super::Became;
use super::lexicon;
use super::what::What;
use crate::calculator::Draft;
use crate::quantity::letters::lower;

/// A piece while it looks for its place.
#[derive(Debug)]
pub(super) struct Item {
    /// What stands there.
    pub what: What,
    /// As it was written.
    pub text: String,
    /// Which stretch between commas it stands in.
    pub stretch: usize,
    /// What became of it; `None` as long as nobody has taken it.
    pub became: Option<Became>,
    /// The rule that found it.
    pub rule: &'static str,
    /// Where it stands, in bytes.
    pub spans: Vec<Range<usize>>,
    /// Tokens of the match it came from.
    pub matched: Range<usize>,
}

impl Item {
    /// Fills a field, or agrees with what fills it.
    pub fn used(&mut self, field: &'static str) {
        match &mut self.became {
            Some(Became::Used(fields, _)) => fields.push(field),
            other => *other = Some(Became::Used(vec![field], None)),
        }
    }

    /// Is named as not used.
    pub fn not(&mut self, why: impl Into<Cow<'static, str>>) {
        self.became = Some(Became::NotUsed(why.into()));
    }

    /// Whether nobody has taken it yet.
    pub fn is_free(&self) -> bool {
        self.became.is_none()
    }
}

/// The line while its pieces find their places.
pub(super) struct Line {
    /// The pieces.
    pub items: Vec<Item>,
    /// The fields filled so far.
    pub draft: Draft,
    /// What was concluded and not written.
    pub notes: Vec<(&'static str, Cow<'static, str>)>,
    /// What contradicts another piece: its place, and the field that both would fill.
    pub contradictions: HashSet<(usize, &'static str)>,
}

impl Line {
    /// The free items for which `take` finds something, by their places.
    pub fn free<T>(&self, take: impl Fn(&What) -> Option<T>) -> Vec<(usize, T)> {
        let free = self.items.iter().enumerate().filter(|(_, item)| item.is_free());
        free.filter_map(|(at, item)| Some((at, take(&item.what)?))).collect()
    }

    /// Gives a field its text by an item; a second text that differs is a contradiction.
    pub fn fill(&mut self, at: usize, field: &'static str, text: &str, already: &str) {
        let before = self.draft.get(field).map(str::to_owned);
        let Some(item) = self.items.get_mut(at) else { return };
        match before {
            Some(before) if before != text => {
                item.not(format!("contradicts {already} {before}, which stands before it"));
                self.contradictions.insert((at, field));
            }
            _ => {
                item.used(field);
                self.draft.set(field, text);
            }
        }
    }

    /// Empties fields again, and forgets what was noted of them.
    pub fn take_back(&mut self, fields: &[&str]) {
        self.draft = self.draft.pairs().filter(|(field, _)| !fields.contains(field)).collect();
        self.notes.retain(|(field, _)| !fields.contains(field));
    }

    /// The item at a place fills a field, or agrees with what fills it.
    pub fn used(&mut self, at: usize, field: &'static str) {
        if let Some(item) = self.items.get_mut(at) {
            item.used(field);
        }
    }

    /// The item at a place is named as not used.
    pub fn not(&mut self, at: usize, why: impl Into<Cow<'static, str>>) {
        if let Some(item) = self.items.get_mut(at) {
            item.not(why);
        }
    }

    /// The item at a place only binds others.
    pub fn binds(&mut self, at: usize) {
        if let Some(item) = self.items.get_mut(at) {
            item.became = Some(Became::Binds);
        }
    }

    /// What stands in the text between the pieces at two places, the first in front.
    pub fn between<'t>(&self, text: &'t str, one: usize, other: usize) -> Option<&'t str> {
        text.get(self.end(one)?..self.start(other)?)
    }

    /// Tells what was concluded.
    pub fn note(&mut self, field: &'static str, note: impl Into<Cow<'static, str>>) {
        self.notes.push((field, note.into()));
    }

    /// The place before this one, if no comma stands between.
    pub fn before(&self, at: usize) -> Option<usize> {
        at.checked_sub(1).filter(|before| self.stretch(*before) == self.stretch(at))
    }

    /// The place behind this one, if no comma stands between.
    pub fn behind(&self, at: usize) -> Option<usize> {
        Some(at + 1).filter(|behind| *behind < self.items.len() && self.stretch(*behind) == self.stretch(at))
    }

    /// The next place on one side, those passed over for which `passes` holds, if no comma stands between.
    pub fn over(
        &self,
        at: usize,
        next: fn(&Self, usize) -> Option<usize>,
        mut passes: impl FnMut(usize) -> bool,
    ) -> Option<usize> {
        std::iter::successors(next(self, at), |at| next(self, *at)).find(|at| !passes(*at))
    }

    /// The place before this one, words that only bind passed over.
    pub fn said_before(&self, at: usize) -> Option<usize> {
        self.over(at, Self::before, |at| self.what(at) == Some(&What::Filler))
    }

    /// The place behind this one, words that only bind passed over.
    pub fn said_behind(&self, at: usize) -> Option<usize> {
        self.over(at, Self::behind, |at| self.what(at) == Some(&What::Filler))
    }

    fn stretch(&self, at: usize) -> Option<usize> {
        self.items.get(at).map(|item| item.stretch)
    }

    /// Where the piece at a place begins in the text, in bytes.
    pub fn start(&self, at: usize) -> Option<usize> {
        self.items.get(at)?.spans.first().map(|span| span.start)
    }

    /// Where it ends.
    pub fn end(&self, at: usize) -> Option<usize> {
        self.items.get(at)?.spans.last().map(|span| span.end)
    }

    /// Where it stands, from its first word to its last.
    pub fn span(&self, at: usize) -> Option<Range<usize>> {
        Some(self.start(at)?..self.end(at)?)
    }

    /// Whether the piece at a place says for what, or under what, something is.
    pub fn says_for(&self, at: usize) -> bool {
        let text = self.items.get(at).filter(|item| item.what == What::Filler).map(|item| lower(&item.text));
        text.is_some_and(|text| lexicon::FOR.contains(&text.as_str()))
    }

    /// The item at a place.
    pub fn item(&mut self, at: usize) -> Option<&mut Item> {
        self.items.get_mut(at)
    }

    /// What stands at a place.
    pub fn what(&self, at: usize) -> Option<&What> {
        self.items.get(at).map(|item| &item.what)
    }
}
