//! A form and where what stands in it came from.

use std::rc::Rc;

use crate::calculator::{About, Draft, Example, FieldAbout, Filled, Form, Kind, find};
use crate::quantity::Units;

/// A form and where it came from.
#[derive(Debug, Clone, PartialEq)]
pub struct Desk {
    /// What stands in the fields.
    pub form: Rc<Form>,
    /// The worked example that fills it, unchanged.
    pub example: Option<usize>,
    /// How it looked when nobody had touched it.
    untouched: Rc<Form>,
}

impl Desk {
    /// A form in which nothing is filled in yet.
    pub fn empty(about: &About, units: Units) -> Self {
        // What an order says starts empty; the defaults of its other fields, and those of a sheet of
        // exercises, are no facts.
        let mut form = if find(about.id).is_none() {
            // A new sheet of exercises is one of the reader's system.
            let asks = about.fields.iter().any(|field| field.key == "units") && units != Units::AsPrinted;
            let system = asks.then_some(("units", units.key()));
            Form::new(about.fields, &system.into_iter().collect())
        } else {
            Form::cleared(about.fields)
        };
        form.prefer(units);
        let form = Rc::new(form);
        Self { untouched: Rc::clone(&form), form, example: None }
    }

    /// A form filled from a link.
    pub fn filled(about: &About, draft: &Draft, units: Units) -> Self {
        let empty = Self::empty(about, units);
        Self { form: Rc::new(Form::new(about.fields, draft)), ..empty }
    }

    /// A form filled with a worked example.
    pub fn example(about: &About, place: usize, example: &Example) -> Self {
        let empty = Self::empty(about, Units::default());
        Self { form: Rc::new(Form::example(about.fields, example)), example: Some(place), ..empty }
    }

    /// Fills the form with what was written.
    pub fn fill(&mut self, form: Rc<Form>) {
        self.form = form;
        self.example = None;
    }

    /// The fields whose readings are taken one after the other.
    pub fn readings(&self) -> impl Iterator<Item = (&'static FieldAbout, &Filled)> {
        let counted = |kind: &Kind| matches!(kind, Kind::Readings { per_article: Some(_), .. });
        self.form.entries().filter(move |(field, _)| counted(&field.kind))
    }

    /// Takes an example's readings away before another field than theirs is changed: they are never judged as
    /// if the user had measured them.
    pub(super) fn empty_readings_but(&mut self, name: &str) {
        let keys: Vec<_> = self.readings().map(|(field, _)| field.key).filter(|key| *key != name).collect();
        let form = Rc::make_mut(&mut self.form);
        keys.into_iter().for_each(|key| form.write(key, ""));
    }

    /// Whether there is something to answer: somebody has filled something in, or there is nothing to fill
    /// in, since every field is a choice that is made in sight.
    pub fn is_asked(&self) -> bool {
        self.is_touched() || self.form.asked().iter().all(|(field, _)| matches!(field.kind, Kind::Choice(_)))
    }

    /// Whether anybody has filled anything in. Nothing is assessed that nobody asked for.
    pub fn is_touched(&self) -> bool {
        self.example.is_some() || !self.form.says_the_same(&self.untouched)
    }
}
