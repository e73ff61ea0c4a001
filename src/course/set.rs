//! Setting an exercise: which figure of a case is asked, and with what in hand.

use crate::quantity::{Shown, Units};
use crate::sentence::capital;
use crate::working::{Step, plain};

use super::chain::{assumed, needed, put_in, rests_on};
use super::draw::{self, Case};
use super::exercise::{Exercise, Question, Sought};
use super::random::Random;
use super::setup::{Level, Topic};
use super::slip::{Slip, Within};
use super::tolerance::near;
use super::{fault, job_sheet, scene, slip, walk};

/// Draws again where a case has nothing to ask.
const TRIES: usize = 30;

/// Sets an exercise, its figures in a system of units.
pub fn set(topic: &Topic, level: Level, units: Units, random: &mut Random) -> Option<Exercise> {
    let Topic::Calculator(entry) = topic else {
        return match level {
            Level::Error => job_sheet::find_the_error(units, random),
            Level::OneStep | Level::Whole => walk::walk(random),
        };
    };
    for _ in 0..TRIES {
        let case = draw::case(entry, units, random)?;
        let made = match level {
            Level::Error => fault::find_the_error(&case, random),
            Level::OneStep | Level::Whole => figure(&case, level, units, random),
        };
        if made.is_some() {
            return made;
        }
    }
    None
}

/// Asks for a figure of a case.
fn figure(case: &Case, level: Level, units: Units, random: &mut Random) -> Option<Exercise> {
    let steps = case.report.working.steps();
    let givens = case.givens();
    let whole = level == Level::Whole;
    let may_be_asked: Vec<usize> =
        (0..steps.len()).filter(|&at| can_be_asked(steps, at, units, &givens)).collect();
    let leads = |at: &usize| steps.get(*at).is_some_and(|step| rests_on(steps, *at, step).next().is_some());
    let summed = |at: &usize| steps.get(*at).is_some_and(|step| !step.formula.is_empty());
    // A whole task ends in a sum of sums; where a calculator has none, in a sum; else in a table.
    let mut narrowed: Vec<usize> = may_be_asked.iter().copied().filter(|at| whole && leads(at)).collect();
    if narrowed.is_empty() {
        narrowed = may_be_asked.iter().copied().filter(summed).collect();
    }
    if narrowed.is_empty() {
        narrowed = may_be_asked;
    }
    let at = *random.pick(&narrowed)?;
    let step = steps.get(at)?;
    // One step is given what goes into it; a whole task only what an order says.
    let mut givens = if whole || step.terms.is_empty() { givens } else { put_in(steps, at, step, &givens) };
    let working = if whole { needed(steps, at) } else { vec![step.clone()] };
    if whole {
        givens.extend(assumed(&working, &step.name()));
    }
    let within = if whole { Within::Whole } else { Within::Step };
    let slips = slip::slips(case, &slip::slipped(case), at, within);
    let sought = in_system(units, step.result);
    let because = match sought == step.result {
        true => format!("{} = {}. {}.", step.name(), step.result, step.source),
        false => format!("{} = {}, which is {sought}. {}.", step.name(), step.result, step.source),
    };
    let question = Question {
        text: question(step, sought),
        sought: Sought::Figure(sought, slips_in(sought, step.result, slips)),
        hint: hint(step),
        working,
        because,
    };
    Some(Exercise {
        topic: Topic::Calculator(case.entry),
        scene: scene::scene(case.entry.about.id, random).to_owned(),
        givens,
        shown: Vec::new(),
        paper: Vec::new(),
        questions: vec![question],
        opens: case.entry.link(&case.draft).ok(),
    })
}

/// A figure in the units of a system, no finer than one who takes it from the number shown can say.
fn in_system(units: Units, shown: Shown) -> Shown {
    let mut other = units.show(shown);
    let last = |shown: Shown| 10f64.powi(-i32::from(shown.decimals));
    // An interval, whose zero is none.
    let half = 0.5 * last(shown) * (shown.unit.factor / other.unit.factor).abs();
    while other != shown && other.decimals > 0 && last(other) < half {
        other.decimals -= 1;
    }
    other
}

/// Slips in the unit of what is sought, those that are still told from it and from each other.
fn slips_in(sought: Shown, right: Shown, slips: Vec<Slip>) -> Vec<Slip> {
    if sought.unit == right.unit {
        return slips;
    }
    let mut told: Vec<Slip> = Vec::with_capacity(slips.len());
    for Slip { name, value } in slips {
        let number = value.unit.convert(value.number, sought.unit);
        let value = number.map(|number| Shown { number, ..sought });
        let is_told = |value: &Shown| {
            !near(sought, value.number) && told.iter().all(|other| !near(*value, other.value.number))
        };
        if let Some(value) = value.filter(is_told) {
            told.push(Slip { name, value });
        }
    }
    told
}

/// More digits than this are read off no gauge and no scale.
const MOST_DIGITS: i32 = 7;

/// Whether a value has so many digits that nobody would write it down.
fn is_too_fine(shown: Shown) -> bool {
    let whole = shown.number.abs().max(1.0).log10().floor() as i32 + 1;
    i32::from(shown.decimals) + whole > MOST_DIGITS
}

/// Whether a step has one answer that is not given away: nothing else is called the same, and nothing
/// given is the same number.
fn can_be_asked(steps: &[Step], at: usize, units: Units, givens: &[(String, String)]) -> bool {
    let Some(step) = steps.get(at) else { return false };
    // What is called by its unit, `in ounces on a square foot`, is asked in that unit or not at all.
    if names_its_unit(step) && in_system(units, step.result).unit != step.result.unit {
        return false;
    }
    let alike = |other: &&Step| {
        other.symbol == step.symbol && other.meaning == step.meaning && other.source == step.source
    };
    let shown = step.result;
    let said = shown.to_string().replace('\u{a0}', " ");
    shown.number.is_finite()
        && shown.rounded() != 0.0
        && !is_too_fine(shown)
        && !step.terms.iter().any(|term| is_too_fine(term.value))
        && steps.iter().filter(alike).count() == 1
        && !givens.iter().any(|(_, text)| *text == said)
        && !step.terms.iter().any(|term| term.value == shown)
}

fn names_its_unit(step: &Step) -> bool {
    let symbol = step.result.unit.symbol;
    let ends_so = step.meaning.strip_suffix(symbol).is_some_and(|before| before.ends_with(" in "));
    step.meaning.starts_with("in ") || step.meaning.contains(", in ") || !symbol.is_empty() && ends_so
}

/// `Thickest coat that still assembles: what is t_max? In mm, to 0.0001 mm.`
fn question(step: &Step, sought: Shown) -> String {
    let meaning = capital(&step.meaning);
    let source = if step.formula.is_empty() { format!(" ({})", step.source) } else { String::new() };
    format!("{meaning}{source}: what is {}? {}", step.name(), precision(sought))
}

/// `Give it in mm, to 0.01 mm.`
pub fn precision(shown: Shown) -> String {
    let last = match shown.decimals {
        0 => "1".to_owned(),
        decimals => format!("0.{:0>width$}", 1, width = usize::from(decimals)),
    };
    match shown.unit.symbol {
        "" => format!("Give it to {last}."),
        symbol => format!("Give it in {symbol}, to {last}."),
    }
}

fn hint(step: &Step) -> String {
    if step.formula.is_empty() {
        format!("It stands in a table: {}.", step.source)
    } else {
        format!("{} = {}", step.name(), plain(&step.segments()))
    }
}
