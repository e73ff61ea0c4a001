//! From a written order line to the finish: each decision with the rule behind it.

use crate::calculator::Verdict;
use crate::order::reading;
use crate::order::recommend::recommended;
use crate::order::{self, Judged, Judgement};
use crate::rule::Ruling;
use crate::source::Basis;

use super::exercise::{Exercise, Question, Sought};
use super::random::Random;
use super::setup::Topic;
use super::written::Written;

/// Draws before the exercise is given up: a line that is not understood whole is drawn again.
const TRIES: usize = 40;

/// An order line, and the decisions that lead to its finish.
pub fn walk(random: &mut Random) -> Option<Exercise> {
    (0..TRIES).find_map(|_| {
        let line = Written::draw(random)?.text();
        let reading = reading::read(&line);
        if !reading.is_understood() {
            return None;
        }
        let order = order::read(&reading.draft).ok()?;
        let judgement = order::judge(&order);
        let mut questions: Vec<Question> =
            judgement.processes.iter().map(|judged| verdict(&judgement, judged)).collect();
        let taken = recommended(&order, &judgement);
        let answer = order::answer::answer(&order, &judgement).text;
        questions.push(finish(&judgement, taken, answer));
        Some(Exercise {
            topic: Topic::Order,
            scene: "An order line comes in by mail. Decide, step by step, how it is finished.".to_owned(),
            givens: vec![("The line".to_owned(), line)],
            shown: Vec::new(),
            paper: Vec::new(),
            questions,
            opens: None,
        })
    })
}

/// What a process is to the order.
fn verdict(judgement: &Judgement, judged: &Judged) -> Question {
    const ALL: [Verdict; 3] = [Verdict::Suits, Verdict::OnConditions, Verdict::RuledOut];
    let verdict = judged.verdict();
    // The rule that weighs most says why; among equals the first in the order of the table.
    let mut worst: Option<&(usize, Ruling)> = None;
    for ruling in &judged.rulings {
        if worst.is_none_or(|(_, worst)| worst.mark < ruling.1.mark) {
            worst = Some(ruling);
        }
    }
    let said = worst.and_then(|(place, ruling)| {
        let case = judgement.case(judged, *place)?;
        Some((ruling, ruling.text(&case), ruling.source(&case)))
    });
    let because = said.as_ref().map_or_else(String::new, |(ruling, text, source)| {
        format!(" {text}. Rule {}: {source}.", ruling.rule.key.key())
    });
    let hint = said.map_or_else(
        || "Look at what the documents of the process bar.".to_owned(),
        |(_, _, source)| match source {
            source if matches!(source.basis, Basis::Assumed | Basis::CommonPractice) => {
                format!("No document has it: {source}.")
            }
            source => format!("Open {source}."),
        },
    );
    Question {
        text: format!("What is {} to this order?", judged.process.name()),
        sought: one_of(
            ALL.map(|one| one.words().to_owned()).to_vec(),
            ALL.iter().position(|one| *one == verdict),
        ),
        hint,
        working: Vec::new(),
        because: format!("{}: {}.{because}", judged.process.name(), verdict.words()),
    }
}

/// Which process to take.
fn finish(judgement: &Judgement, taken: Option<usize>, answer: String) -> Question {
    let mut options: Vec<String> =
        judgement.processes.iter().map(|judged| judged.process.name().to_owned()).collect();
    options.push("None of the three".to_owned());
    let right = Some(taken.unwrap_or(options.len() - 1));
    Question {
        text: "Which finish do you order?".to_owned(),
        sought: one_of(options, right),
        hint: "Of what suits, then of what suits on conditions, the one with the least to be proved; \
               then the one that is sure of the years."
            .to_owned(),
        working: Vec::new(),
        because: answer,
    }
}

fn one_of(options: Vec<String>, right: Option<usize>) -> Sought {
    // Numbered from 1, as they are shown.
    Sought::OneOf(options, right.map_or(0, |at| at + 1))
}
