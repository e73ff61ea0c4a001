//! Find the error: a working with one fault, which the student names.
//!
//! The fault stands in any step in which one can be made and seen: a usual slip in its sum, a value from
//! another row of its table, a number that was copied wrongly. What rests on it goes on rightly from
//! there ([`carried`]), so that no other step is wrong.

use crate::calculator::{Kind, Reader, Report};
use crate::quantity::{Shown, Units};
use crate::sentence::capital;
use crate::working::{Step, Term};

use super::chain::{self, gives, in_unit_of, is_given, redone, same};
use super::draw::{self, Case};
use super::exercise::{Exercise, Question, Sought};
use super::random::Random;
use super::setup::Topic;
use super::slip::{Slipped, Within, same_step, slipped, slips};
use super::tolerance::near;

/// The most steps that a working to look through has.
const LONGEST: usize = 10;
/// Other texts that are tried in each field for another row of a table.
const OTHERS: usize = 3;

/// A step that is wrong.
struct Fault {
    step: Step,
    /// What was done.
    name: &'static str,
    /// What is right beside the result of the step.
    rightly: Option<Term>,
}

/// A working of the case with one fault; `None` where nobody would slip in it.
pub fn find_the_error(case: &Case, random: &mut Random) -> Option<Exercise> {
    let steps = case.report.working.steps();
    let length = steps.len().min(LONGEST);
    if length < 2 {
        return None;
    }
    let slipped = slipped(case);
    let rows = other_rows(case, random);
    // Each step that can be wrong is as likely as each other, and so is each place of it in what is shown.
    let mut places: Vec<usize> = (0..steps.len()).collect();
    random.shuffle(&mut places);
    places.into_iter().find_map(|place| {
        let first = (place + 1).saturating_sub(length);
        let last = place.min(steps.len() - length);
        let from = first + random.below(last - first + 1);
        let mut faults = faults(case, (&slipped, &rows), (from, place), random);
        random.shuffle(&mut faults);
        let fault =
            faults.into_iter().find_map(|fault| Some((carried(steps, place, &fault.step)?, fault)))?;
        exercise(case, steps.get(place)?, (from, length, place), fault)
    })
}

fn exercise(
    case: &Case,
    right: &Step,
    (from, length, place): (usize, usize, usize),
    (steps, fault): (Vec<Step>, Fault),
) -> Option<Exercise> {
    let shown: Vec<Step> = steps.into_iter().skip(from).take(length).collect();
    let number = place - from + 1;
    let options = shown.iter().map(|step| format!("{}: {}", step.name(), capital(&step.meaning)));
    let of_term =
        fault.rightly.map_or_else(String::new, |term| format!("{} = {}, and ", term.name(), term.value));
    let question = Question {
        text: "One step of this working is wrong. Which?".to_owned(),
        sought: Sought::OneOf(options.collect(), number),
        hint:
            "Put what is given beside each step, look up what a table gives, and do each sum again from the \
               numbers it shows."
                .to_owned(),
        because: format!(
            "Step {number}: {}. Rightly {of_term}{} = {}.",
            fault.name,
            right.name(),
            right.result
        ),
        working: vec![right.clone()],
    };
    Some(Exercise {
        topic: Topic::Calculator(case.entry),
        scene: "A colleague hands over this working to be checked before it goes out.".to_owned(),
        givens: case.givens(),
        shown,
        paper: Vec::new(),
        questions: vec![question],
        opens: case.entry.link(&case.draft).ok(),
    })
}

/// What may be wrong in a step, where only what stands from another one on is shown.
fn faults(
    case: &Case,
    (slipped, rows): (&[Slipped], &[Report]),
    (from, place): (usize, usize),
    random: &mut Random,
) -> Vec<Fault> {
    let steps = case.report.working.steps();
    let Some(right) = steps.get(place) else { return Vec::new() };
    // Of two that are called the same nobody could say which is wrong.
    let alike = |step: &&Step| {
        (step.symbol, &step.meaning, step.source) == (right.symbol, &right.meaning, right.source)
    };
    if steps.iter().filter(alike).count() > 1 && right.formula.is_empty() {
        return Vec::new();
    }
    let with = |result: Shown, name: &'static str| {
        let step = Step { result, ..right.clone() };
        Fault { step, name, rightly: None }
    };
    let usual = slips(case, slipped, place, Within::Step).into_iter();
    let mut faults: Vec<Fault> = usual
        .filter(|slip| slip.value.unit == right.result.unit)
        .map(|slip| with(slip.value, slip.name))
        .collect();
    // What people do is better than what they may do.
    if !faults.is_empty() && random.below(3) > 0 {
        return faults;
    }
    if right.formula.is_empty() {
        let others = rows.iter().filter_map(|report| {
            let others = report.working.steps();
            let other = others.get(same_step(steps, place, others)?)?;
            let number = in_unit_of(right.result, other.result)?;
            let is_seen = other.source == right.source && !near(right.result, number);
            is_seen.then(|| with(Shown { number, ..right.result }, "another row of the table was read"))
        });
        faults.extend(others);
    }
    // Whoever does the sum again sees it.
    let written = swapped(right.result).filter(|_| redone(right, right).is_some());
    let written = written.filter(|number| is_like(right.result, *number));
    faults.extend(written.map(|number| {
        with(Shown { number, ..right.result }, "the result was written with two of its digits swapped")
    }));
    let givens = case.givens();
    for (at, term) in right.terms.iter().enumerate() {
        let before = steps.iter().take(place).skip(from);
        let stands = givens.iter().any(|(_, text)| is_given(text, term.value))
            || before.into_iter().any(|step| gives(step, term.symbol, term.value));
        let copied = swapped(term.value).filter(|_| stands).and_then(|number| {
            let mut step = right.clone();
            step.terms.get_mut(at)?.value.number = number;
            step.result.number = redone(right, &step)?;
            is_like(right.result, step.result.number).then_some(step)
        });
        faults.extend(copied.map(|step| Fault {
            step,
            name: "a number was copied with two of its digits swapped",
            rightly: Some(*term),
        }));
    }
    faults
}

/// The case solved with a few other texts, each by itself: what stands in other rows of the tables.
fn other_rows(case: &Case, random: &mut Random) -> Vec<Report> {
    let fields = case.entry.about.fields;
    let reader = Reader::new(fields, &case.draft);
    let mut rows = Vec::new();
    for field in fields.iter().filter(|field| reader.asked(field)) {
        let own = case.draft.get(field.key).unwrap_or_default();
        for _ in 0..OTHERS {
            let other = match field.kind {
                Kind::Choice(choices) => random.pick(choices).map(|choice| choice.key.to_owned()),
                _ => draw::varied(field, own, Units::AsPrinted, random),
            };
            let Some(other) = other.filter(|other| other != own) else { continue };
            let mut draft = case.draft.clone();
            draft.set(field.key, other);
            rows.extend(case.entry.evaluate(&draft));
        }
    }
    rows
}

/// All steps from a wrong one on. `None` where a sum that rests on it cannot be done again, or nobody would believe
/// what it comes to.
fn carried(steps: &[Step], place: usize, wrong: &Step) -> Option<Vec<Step>> {
    let carried = chain::carried(steps, |at, step| (at == place).then(|| wrong.clone()).or(step));
    let believed = |(right, now): (&Step, &Step)| {
        let result = now.result;
        same(right.result, result)
            || result.number.is_finite()
                && result.rounded() != 0.0
                && result.number.signum() == right.result.number.signum()
    };
    let is_whole = carried.len() == steps.len();
    let behind = || steps.iter().zip(&carried).skip(place + 1);
    (is_whole && behind().all(believed)).then_some(carried)
}

/// Whether a wrong number may stand for a right one: seen, and believed.
fn is_like(right: Shown, number: f64) -> bool {
    let wrong = Shown { number, ..right };
    number.is_finite()
        && number.signum() == right.number.signum()
        && wrong.rounded() != 0.0
        && !near(right, number)
}

/// The number with two neighbouring digits swapped, as a hurried hand copies it.
fn swapped(value: Shown) -> Option<f64> {
    let digits = value.digits();
    let bytes = digits.as_bytes();
    let is_digit = |byte: &u8| byte.is_ascii_digit();
    let at = bytes.windows(2).position(|two| {
        let [one, other] = two else { return false };
        is_digit(one) && is_digit(other) && one != other && *other != b'0'
    })?;
    let mut copied = bytes.to_vec();
    copied.swap(at, at + 1);
    String::from_utf8(copied).ok()?.parse().ok()
}
