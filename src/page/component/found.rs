//! What was found: by a calculator, for an order line, or why nothing was.

use std::rc::Rc;

use crate::calculator::{Problems, Report};
use crate::order::{self, Assessment};
use crate::page::state::{Desk, View};
use crate::quantity::Units;

/// What was found.
#[derive(Debug, Clone)]
pub enum Found {
    /// Nobody has asked yet.
    Nothing,
    /// By a calculator.
    Report(Rc<Report>),
    /// For an order line.
    Assessment(Rc<Assessment>),
    /// Nothing, and why.
    Problems(Rc<Problems>),
}

impl PartialEq for Found {
    /// What was found once stays what it is: it need not be compared figure by figure.
    fn eq(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::Nothing, Self::Nothing) => true,
            (Self::Report(one), Self::Report(other)) => Rc::ptr_eq(one, other),
            (Self::Assessment(one), Self::Assessment(other)) => Rc::ptr_eq(one, other),
            (Self::Problems(one), Self::Problems(other)) => Rc::ptr_eq(one, other),
            _ => false,
        }
    }
}

impl Found {
    /// What the form of a view says; nothing as long as nobody has asked.
    pub fn by(view: View, desk: &Desk, has_open_words: bool, units: Units) -> Self {
        if !desk.is_asked() {
            return Self::Nothing;
        }
        let draft = desk.form.draft();
        let found = match view.calculator() {
            Some(entry) => entry.evaluate(&draft).map(|report| Self::Report(Rc::new(report.in_units(units)))),
            None => order::assess_written(&draft, has_open_words)
                .map(|found| Self::Assessment(Rc::new(found.in_units(units)))),
        };
        found.unwrap_or_else(|problems| Self::Problems(Rc::new(problems)))
    }
}
