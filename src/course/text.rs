//! A sheet as plain text: for the terminal, for a letter, and to compare two machines.

use std::fmt::{self, Write};

use super::Sheet;
use super::exercise::{Exercise, Question, Sought};

impl Sheet {
    /// What the sheet is.
    pub fn title(&self) -> String {
        let setup = &self.setup;
        let count = self.exercises.len();
        let exercises = if count == 1 { "exercise" } else { "exercises" };
        let fewer = match setup.count as usize > count {
            true => format!(" ({} were asked for, and no more differ from each other)", setup.count),
            false => String::new(),
        };
        format!(
            "Sheet {}: {count} {exercises}{fewer}, {}, from {}, {}",
            setup.number,
            setup.level.label().to_ascii_lowercase(),
            setup.from(),
            setup.units.label().to_ascii_lowercase()
        )
    }

    /// The answers with their workings.
    pub fn answers(&self) -> String {
        let mut text = format!("{}: answers\n", self.title());
        let mut number = 0;
        for (place, exercise) in self.exercises.iter().enumerate() {
            let _ = writeln!(text, "\n{}. {}", place + 1, exercise.topic.title());
            for question in &exercise.questions {
                number += 1;
                let _ = writeln!(text, "  Answer {number}: {}", question.right());
                if let Sought::Figure(_, slips) = &question.sought {
                    for slip in slips {
                        let _ = writeln!(text, "    {}: {}", slip.value, slip.name);
                    }
                }
                if !question.because.is_empty() {
                    let _ = writeln!(text, "    {}", question.because);
                }
                for step in &question.working {
                    let _ = writeln!(text, "    {}: {step}", step.meaning);
                }
            }
        }
        text
    }
}

impl fmt::Display for Sheet {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(f, "{}", self.title())?;
        let mut number = 0;
        for (place, exercise) in self.exercises.iter().enumerate() {
            writeln!(f, "\n{}. {}", place + 1, exercise.topic.title())?;
            write_task(f, exercise)?;
            for question in &exercise.questions {
                number += 1;
                write_question(f, number, question)?;
            }
        }
        Ok(())
    }
}

pub(super) fn write_question(f: &mut fmt::Formatter<'_>, number: usize, question: &Question) -> fmt::Result {
    writeln!(f, "  Question {number}: {}", question.text)?;
    let Sought::OneOf(options, _) = &question.sought else { return Ok(()) };
    options.iter().enumerate().try_for_each(|(place, option)| writeln!(f, "    {}. {option}", place + 1))
}

pub(super) fn write_task(f: &mut fmt::Formatter<'_>, exercise: &Exercise) -> fmt::Result {
    writeln!(f, "  {}", exercise.scene)?;
    for (name, value) in &exercise.givens {
        writeln!(f, "  {name}: {}", value.replace('\n', "; "))?;
    }
    for (place, (name, text)) in exercise.paper.iter().enumerate() {
        writeln!(f, "  Line {}, {name}: {text}", place + 1)?;
    }
    for (place, step) in exercise.shown.iter().enumerate() {
        writeln!(f, "  Step {}, {}: {step}", place + 1, Exercise::said_of(step))?;
    }
    Ok(())
}
