//! An exercise: a scene, what is given, and what is asked.

use std::borrow::Cow;

use crate::calculator::Link;
use crate::quantity::Shown;
use crate::working::{Segment, Step};

use super::setup::Topic;
use super::slip::Slip;

/// An exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Exercise {
    /// What it is drawn from.
    pub topic: Topic,
    /// What happens, in a sentence or two.
    pub scene: String,
    /// What is given: a name and its value.
    pub givens: Vec<(String, String)>,
    /// Steps that are shown with the task: a working in which to find the fault.
    pub shown: Vec<Step>,
    /// Lines of a sheet of paper that are shown with the task, each with its name: one holds the fault.
    pub paper: Vec<(String, String)>,
    /// What is asked; one figure, or each decision on the way to a finish.
    pub questions: Vec<Question>,
    /// The calculator with the same numbers, for afterwards.
    pub opens: Option<Link>,
}

/// What is asked, and what helps.
#[derive(Debug, Clone, PartialEq)]
pub struct Question {
    /// The question, with the unit and the precision wanted.
    pub text: String,
    /// What is asked for.
    pub sought: Sought,
    /// A hint before the full working.
    pub hint: String,
    /// The full working.
    pub working: Vec<Step>,
    /// The answer in words, with what it rests on.
    pub because: String,
}

/// What is asked for.
#[derive(Debug, Clone, PartialEq)]
pub enum Sought {
    /// A figure, as `solve` found it, with its unit and the decimals asked; and what usual slips give.
    Figure(Shown, Vec<Slip>),
    /// One of several, by its number from 1.
    OneOf(Vec<String>, usize),
}

impl Exercise {
    /// What a step that is shown is: one that is looked up with where it stands, so that it can be found.
    pub fn said_of(step: &Step) -> Cow<'_, str> {
        match step.formula.is_empty() {
            true => format!("{} ({})", step.meaning, step.source).into(),
            false => step.meaning.as_ref().into(),
        }
    }

    /// Whether another asks for the same with the same numbers.
    pub fn asks_the_same(&self, other: &Self) -> bool {
        (&self.givens, &self.shown, &self.paper, &self.questions)
            == (&other.givens, &other.shown, &other.paper, &other.questions)
    }
}

impl Question {
    /// The right answer as it is shown.
    pub fn right(&self) -> String {
        match &self.sought {
            Sought::Figure(shown, _) => shown.to_string(),
            Sought::OneOf(options, right) => {
                let text = right.checked_sub(1).and_then(|at| options.get(at));
                format!("{right}. {}", text.map_or("", String::as_str))
            }
        }
    }

    /// The hint as it is set: a formula where it is one.
    pub fn hint_segments(&self) -> Option<(Cow<'static, str>, Vec<Segment<'_>>)> {
        let step = self.working.last().filter(|step| !step.formula.is_empty())?;
        matches!(self.sought, Sought::Figure(..)).then(|| (step.name(), step.segments()))
    }
}
