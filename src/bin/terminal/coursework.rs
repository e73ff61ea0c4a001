//! Coursework as JSON for programs: a sheet with or without its answers, lessons, the marks of a class.

use kettle_barrel::calculator::Link;
use kettle_barrel::course::handed_in::{HandedIn, State};
use kettle_barrel::course::lesson::{LESSONS, Lesson};
use kettle_barrel::course::{Exercise, Question, Sheet, Sought};
use kettle_barrel::quantity::Shown;
use kettle_barrel::working::Step;
use serde::Serialize;

/// What was asked of the course.
#[derive(Debug, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Coursework {
    /// A sheet of exercises.
    Sheet {
        /// What it is.
        title: String,
        /// The exercises, in their order.
        exercises: Vec<Task>,
    },
    /// The lessons, in the order they are read.
    Lessons(Vec<Named>),
    /// A lesson.
    Lesson {
        /// Its key and its title.
        #[serde(flatten)]
        name: Named,
        /// As it is read.
        text: String,
        /// The calculators with the numbers it speaks of.
        opens: Vec<Link>,
        /// The exercise at its end.
        exercise: Option<Task>,
    },
    /// The lines of a class, marked anew.
    Marks(Vec<Marks>),
}

/// A key and what it stands for.
#[derive(Debug, Serialize)]
pub struct Named {
    key: &'static str,
    title: &'static str,
}

/// An exercise.
#[derive(Debug, Serialize)]
pub struct Task {
    topic: Named,
    scene: String,
    given: Vec<Pair>,
    /// A working in which to find the fault.
    steps: Vec<Step>,
    /// A sheet of paper in which to find the fault.
    lines: Vec<Pair>,
    questions: Vec<Answerable>,
}

/// A name and what is said of it.
#[derive(Debug, Serialize)]
pub struct Pair {
    name: String,
    text: String,
}

/// A question.
#[derive(Debug, Serialize)]
pub struct Answerable {
    /// Its number on the sheet.
    number: usize,
    text: String,
    /// What to choose from, by its number from 1; empty where a figure is asked.
    options: Vec<String>,
    /// The answer, where answers are asked for.
    answer: Option<Solution>,
}

/// The answer to a question.
#[derive(Debug, Serialize)]
pub struct Solution {
    right: String,
    /// The figure; null where one of several is asked.
    figure: Option<Shown>,
    because: String,
    hint: String,
    working: Vec<Step>,
    slips: Vec<Slip>,
}

/// What a usual slip gives.
#[derive(Debug, Serialize)]
pub struct Slip {
    name: &'static str,
    value: Shown,
}

/// A result line, marked anew.
#[derive(Debug, Serialize)]
pub struct Marks {
    name: String,
    sheet: String,
    stated: String,
    /// How many are right, and of how many; null where the sheet cannot be made.
    score: Option<(usize, usize)>,
    line: &'static str,
}

impl Coursework {
    /// A sheet, with its answers where they are asked for.
    pub fn sheet(sheet: &Sheet, answers: bool) -> Self {
        let mut number = 0;
        let exercises = sheet.exercises.iter().map(|exercise| Task::of(exercise, &mut number, answers));
        Self::Sheet { title: sheet.title(), exercises: exercises.collect() }
    }

    /// The names of the lessons.
    pub fn lessons() -> Self {
        Self::Lessons(LESSONS.iter().map(Named::of).collect())
    }

    /// A lesson.
    pub fn lesson(lesson: &Lesson) -> Self {
        let page = lesson.page();
        Self::Lesson {
            name: Named::of(lesson),
            text: page.to_string(),
            exercise: page.exercise.as_ref().map(|exercise| Task::of(exercise, &mut 0, true)),
            opens: page.opens,
        }
    }

    /// The lines of a class.
    pub fn marks(lines: &[HandedIn]) -> Self {
        let of = |line: &HandedIn| Marks {
            name: line.name.clone(),
            sheet: line.sheet.clone(),
            stated: line.stated.clone(),
            score: line.score,
            line: match line.state {
                State::Intact => "intact",
                State::Changed => "changed",
                State::Unread => "unread",
            },
        };
        Self::Marks(lines.iter().map(of).collect())
    }
}

impl Named {
    fn of(lesson: &Lesson) -> Self {
        Self { key: lesson.key, title: lesson.title() }
    }
}

impl Task {
    fn of(exercise: &Exercise, number: &mut usize, answers: bool) -> Self {
        let pairs = |pairs: &[(String, String)]| {
            pairs.iter().map(|(name, text)| Pair { name: name.clone(), text: text.clone() }).collect()
        };
        let mut questions = Vec::with_capacity(exercise.questions.len());
        for question in &exercise.questions {
            *number += 1;
            questions.push(Answerable::of(question, *number, answers));
        }
        Self {
            topic: Named { key: exercise.topic.key(), title: exercise.topic.title() },
            scene: exercise.scene.clone(),
            given: pairs(&exercise.givens),
            steps: exercise.shown.clone(),
            lines: pairs(&exercise.paper),
            questions,
        }
    }
}

impl Answerable {
    fn of(question: &Question, number: usize, answers: bool) -> Self {
        let options = match &question.sought {
            Sought::Figure(..) => Vec::new(),
            Sought::OneOf(options, _) => options.clone(),
        };
        Self { number, text: question.text.clone(), options, answer: answers.then(|| Solution::of(question)) }
    }
}

impl Solution {
    fn of(question: &Question) -> Self {
        let (figure, slips) = match &question.sought {
            Sought::Figure(right, slips) => (Some(*right), slips.as_slice()),
            Sought::OneOf(..) => (None, &[][..]),
        };
        Self {
            right: question.right(),
            figure,
            because: question.because.clone(),
            hint: question.hint.clone(),
            working: question.working.clone(),
            slips: slips.iter().map(|slip| Slip { name: slip.name, value: slip.value }).collect(),
        }
    }
}
