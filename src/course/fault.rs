//! Find the error: a working with one fault, which the student names.

use crate::sentence::capital;
use crate::working::Step;

use super::chain::{gives, needed, same};
use super::draw::Case;
use super::exercise::{Exercise, Question, Sought};
use super::random::Random;
use super::setup::Topic;
use super::slip::{Slipped, Within, slipped, slips};
use super::tolerance::near;

/// The most steps that a working to look through has.
const LONGEST: usize = 10;

/// A fault: the working with it, its place, what was done, and the right step.
struct Fault {
    steps: Vec<Step>,
    place: usize,
    name: &'static str,
    right: Step,
}

/// A working of the case with one fault; `None` where nobody would slip in it.
pub fn find_the_error(case: &Case, random: &mut Random) -> Option<Exercise> {
    let slipped = slipped(case);
    let mut faults = wrong_steps(case, &slipped);
    let whole = carried_on(case, &slipped);
    // Faults that are carried on to the end are rarer and better.
    if !whole.is_empty() && (faults.is_empty() || random.below(2) == 0) {
        faults = whole;
    }
    let at = random.below(faults.len());
    let fault = faults.into_iter().nth(at)?;
    let number = fault.place + 1;
    let options = fault.steps.iter().map(|step| format!("{}: {}", step.name(), capital(&step.meaning)));
    let question = Question {
        text: "One step of this working is wrong. Which?".to_owned(),
        sought: Sought::OneOf(options.collect(), number),
        hint: "Put what is given beside each step, and do each sum again from the numbers it shows."
            .to_owned(),
        because: format!(
            "Step {number}: {}. Rightly {} = {}.",
            fault.name,
            fault.right.name(),
            fault.right.result
        ),
        working: vec![fault.right],
    };
    Some(Exercise {
        topic: Topic::Calculator(case.entry),
        scene: "A colleague hands over this working to be checked before it goes out.".to_owned(),
        givens: case.givens(),
        shown: fault.steps,
        paper: Vec::new(),
        questions: vec![question],
        opens: case.entry.link(&case.draft).ok(),
    })
}

/// Steps whose result a slip has changed, with what leads to them.
fn wrong_steps(case: &Case, slipped: &[Slipped]) -> Vec<Fault> {
    let steps = case.report.working.steps();
    let mut faults = Vec::new();
    for (at, right) in steps.iter().enumerate().filter(|(_, step)| !step.formula.is_empty()) {
        let needed = needed(steps, at);
        if !(2..=LONGEST).contains(&needed.len()) {
            continue;
        }
        for slip in
            slips(case, slipped, at, Within::Step).iter().filter(|slip| slip.value.unit == right.result.unit)
        {
            let mut shown = needed.clone();
            let place = shown.len() - 1;
            if let Some(last) = shown.last_mut() {
                last.result = slip.value;
            }
            faults.push(Fault { steps: shown, place, name: slip.name, right: right.clone() });
        }
    }
    faults
}

/// Workings that begin with a slip and go on with it rightly: the first step that is another one is wrong.
fn carried_on(case: &Case, slipped: &[Slipped]) -> Vec<Fault> {
    let steps = case.report.working.steps();
    let mut faults = Vec::new();
    for (row, report) in slipped.iter().filter(|(row, _)| row.carries_on()) {
        let others = report.working.steps();
        let alike = others.len() == steps.len()
            && steps
                .iter()
                .zip(others)
                .all(|(one, other)| (one.symbol, one.formula) == (other.symbol, other.formula));
        let first = steps.iter().zip(others).position(|(one, other)| differ(one, other));
        let (Some(first), true) = (first, alike) else { continue };
        // It has to be seen, or it is none.
        let seen = steps.get(first).zip(others.get(first)).is_some_and(|(right, wrong)| {
            let number = wrong.result.unit.convert(wrong.result.rounded(), right.result.unit);
            number.is_some_and(|number| !near(right.result, number))
        });
        if !seen || !row.acts_in(steps, first, others) {
            continue;
        }
        let from = first.saturating_sub(LONGEST / 2);
        let to = others.len().min(from + LONGEST);
        let follows = (first + 1..to).all(|at| follows(steps, others, at));
        let shown: Vec<Step> = others.iter().take(to).skip(from).cloned().collect();
        if let (Some(right), 2.., true) = (steps.get(first), shown.len(), follows) {
            faults.push(Fault { steps: shown, place: first - from, name: row.name(), right: right.clone() });
        }
    }
    faults
}

/// Whether a step of the wrong working differs only by what earlier steps of it gave: else it is a
/// second place where the fault could be named.
fn follows(steps: &[Step], others: &[Step], at: usize) -> bool {
    let (Some(right), Some(wrong)) = (steps.get(at), others.get(at)) else { return true };
    if !differ(right, wrong) {
        return true;
    }
    let pairs = right.terms.iter().zip(&wrong.terms);
    let mut differing =
        pairs.filter(|(one, other)| !same(one.value, other.value)).map(|(_, other)| other).peekable();
    differing.peek().is_some()
        && differing.all(|term| others.iter().take(at).any(|step| gives(step, term.symbol, term.value)))
}

/// Whether two steps of one name and formula have other values: digits that are shown of the same value make
/// no other step.
fn differ(one: &Step, other: &Step) -> bool {
    !same(one.result, other.result)
        || one.terms.len() != other.terms.len()
        || one.terms.iter().zip(&other.terms).any(|(one, other)| !same(one.value, other.value))
}
