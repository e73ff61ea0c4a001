//! Coursework: lessons, and exercises that any calculator sets and marks.
//!
//! A [`Setup`] (a number that fixes the draw, the calculators, how many, the [`Level`]) makes a
//! [`Sheet`]. An [`Exercise`] is drawn from a calculator's own description, and its answer is what
//! `solve` and `explain` found: nothing is computed here a second time. [`mark`] compares an answer;
//! the usual slips are rows of data ([`slip`]) that solve the calculator again with one thing
//! changed. A student hands in a line of text ([`handed_in`]). [`lesson`] holds the lessons, one
//! file each, whose numbers are solved when they are shown.

mod chain;
pub mod draw;
pub mod exercise;
mod fault;
pub mod handed_in;
mod job_sheet;
pub mod lesson;
pub mod mark;
mod random;
mod scene;
mod set;
mod setup;
pub mod slip;
mod text;
pub mod tolerance;
mod walk;
mod written;

use crate::calculator::{Draft, Problems};

pub use exercise::{Exercise, Question, Sought};
pub use handed_in::{HandedIn, State};
pub use mark::{Marked, mark};
pub use random::Random;
pub use set::set;
pub use setup::{ABOUT, Level, Room, SHEET_FIELDS, Setup, Topic};

/// How often an exercise is drawn again that stands on the sheet already.
const REDRAWN: usize = 12;

/// Reads what fixes a sheet.
///
/// # Errors
/// All the problems of its fields.
pub fn read(draft: &Draft) -> Result<Setup, Problems> {
    Setup::read(draft)
}

/// The exercises of a setup: the same for the same setup, everywhere and always.
#[derive(Debug, Clone, PartialEq)]
pub struct Sheet {
    /// What it was drawn by.
    pub setup: Setup,
    /// The exercises, in their order.
    pub exercises: Vec<Exercise>,
}

impl Sheet {
    /// Draws the exercises.
    pub fn of(setup: &Setup) -> Self {
        let mut topics = setup.drawn_topics();
        Random::new(u64::from(setup.number)).shuffle(&mut topics);
        let mut exercises: Vec<Exercise> = Vec::new();
        for place in 0..setup.count {
            // Each exercise has a draw of its own: a longer sheet begins with the shorter one.
            let mut random = Random::new(u64::from(setup.number) << 16 | u64::from(place + 1));
            let Some(own) = topics.get(place as usize % topics.len().max(1)) else { break };
            let mut draw = || {
                set::set(own, setup.level, setup.units, &mut random).or_else(|| {
                    // What has nothing to ask at this level gives way to another: a table read off has no sum
                    // that could be wrong.
                    let mut others = topics.clone();
                    random.shuffle(&mut others);
                    others.iter().find_map(|topic| set::set(topic, setup.level, setup.units, &mut random))
                })
            };
            // What stands on the sheet already is drawn again, while there is something else to ask.
            let is_new = |one: &Exercise| !exercises.iter().any(|other| one.asks_the_same(other));
            let drawn = (0..=REDRAWN).find_map(|_| draw().filter(is_new));
            exercises.extend(drawn);
        }
        Self { setup: setup.clone(), exercises }
    }

    /// Every question, in the order they are answered.
    pub fn questions(&self) -> impl Iterator<Item = &Question> {
        self.exercises.iter().flat_map(|exercise| &exercise.questions)
    }

    /// How many of these answers are right.
    pub fn score<'a>(&self, answers: impl Iterator<Item = &'a str>) -> usize {
        let marked = self.questions().zip(answers).map(|(question, answer)| mark(question, answer));
        marked.filter(|marked| *marked == Marked::Right).count()
    }
}
