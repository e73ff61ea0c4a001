//! How the steps of a working hang together: what rests on what.

use crate::quantity::letters::lower;
use crate::quantity::{Shown, number, unit};
use crate::source::{Basis, Source};
use crate::working::{Step, Term, tree};

/// The steps that a step rests on, the last first.
pub fn rests_on<'a>(steps: &'a [Step], at: usize, step: &'a Step) -> impl Iterator<Item = usize> + 'a {
    step.terms.iter().filter_map(move |term| {
        let before = steps.iter().take(at);
        // The same name may be used again: the number tells which.
        before
            .enumerate()
            .rev()
            .find(|(_, earlier)| gives(earlier, term.symbol, term.value))
            .map(|(at, _)| at)
    })
}

/// Whether a step gives this value under this symbol; a share may be named where it is used.
pub fn gives(step: &Step, symbol: &str, value: Shown) -> bool {
    step.symbol == symbol && same(value, step.result)
}

/// A step with all that it rests on, in the order they are done.
pub fn needed(steps: &[Step], at: usize) -> Vec<Step> {
    needed_places(steps, at).filter_map(|at| steps.get(at)).cloned().collect()
}

/// The places of a step and of all that it rests on.
pub fn needed_places(steps: &[Step], at: usize) -> impl Iterator<Item = usize> {
    let mut wanted = vec![false; steps.len()];
    let mut open = vec![at];
    while let Some(at) = open.pop() {
        if let (Some(wanted @ false), Some(step)) = (wanted.get_mut(at), steps.get(at)) {
            *wanted = true;
            open.extend(rests_on(steps, at, step));
        }
    }
    wanted.into_iter().enumerate().filter(|(_, wanted)| *wanted).map(|(at, _)| at)
}

/// Whether two values are the same number, however many digits are shown of them.
pub fn same(one: Shown, other: Shown) -> bool {
    let number =
        other.unit.convert(other.number, one.unit).or((one.unit == other.unit).then_some(other.number));
    number.is_some_and(|number| (number - one.number).abs() <= 1e-9 * one.number.abs())
}

/// A value in the unit of another one of its quantity.
pub fn in_unit_of(right: Shown, other: Shown) -> Option<f64> {
    other.unit.convert(other.number, right.unit).or((other.unit == right.unit).then_some(other.number))
}

/// The steps of a working with some of them changed, by their places, and each sum that rests on these done again
/// from the numbers it then shows; up to the first that cannot be done again.
pub fn carried(steps: &[Step], change: impl Fn(usize, Option<Step>) -> Option<Step>) -> Vec<Step> {
    let mut carried: Vec<Step> = Vec::with_capacity(steps.len());
    for (at, right) in steps.iter().enumerate() {
        let mut step = right.clone();
        let mut rests = false;
        for term in &mut step.terms {
            let earlier = steps.iter().take(at).rposition(|step| gives(step, term.symbol, term.value));
            let now = earlier.and_then(|at| carried.get(at)).map(|step| step.result);
            let changed = now.filter(|now| !same(term.value, *now));
            if let Some(number) = changed.and_then(|now| in_unit_of(term.value, now)) {
                term.value.number = number;
                rests = true;
            }
        }
        let again = if rests {
            redone(right, &step).map(|number| {
                step.result.number = number;
                step
            })
        } else {
            Some(step)
        };
        match change(at, again) {
            Some(step) => carried.push(step),
            None => break,
        }
    }
    carried
}

/// What a step with other numbers comes to; nothing where its sum is not what the right one shows.
pub fn redone(right: &Step, changed: &Step) -> Option<f64> {
    let shown = right.result.displayed();
    let half = 0.5 * 10f64.powi(-i32::from(right.result.decimals));
    let comes_out = (sum(right)? - shown).abs() <= half * (1.0 + 1e-6) + 1e-12 * shown.abs();
    comes_out.then(|| sum(changed))?
}

/// What the sum of a step comes to from the numbers it shows.
fn sum(step: &Step) -> Option<f64> {
    let pieces = step.segments();
    let put_in = |symbol: &str| {
        step.terms.iter().find(|term| term.symbol == symbol).map(|term| term.value.displayed())
    };
    tree(&pieces).filter(|_| !step.formula.is_empty())?.value(&put_in)
}

/// Whether a given text is this value, in whatever unit of its quantity.
pub fn is_given(text: &str, value: Shown) -> bool {
    let (digits, written) = number::split_unit(text);
    let units = unit::ALL.iter().copied().chain([value.unit]);
    let mut units = units.filter(|unit| unit.dimension == value.unit.dimension && unit.is_written(written));
    let (Ok(number), Some(unit)) = (number::read_number(digits), units.next()) else { return false };
    same(value, Shown { number, unit, decimals: value.decimals })
}

/// What this project or the trade chose where a solution rests on it and nobody can look it up: each with its
/// name and basis, but for the symbol that is asked.
pub fn assumed(steps: &[Step], asked: &str) -> Vec<(String, String)> {
    let chosen = |source: Source| matches!(source.basis, Basis::Assumed | Basis::CommonPractice);
    let mut given: Vec<(String, String)> = Vec::new();
    for step in steps {
        let table = step.formula.is_empty() && chosen(step.source);
        let own = table
            .then(|| (format!("{}, {} ({})", step.name(), step.meaning, step.source.basis), step.result));
        let terms = step.terms.iter().filter_map(|term| {
            let source = term.source.filter(|&source| chosen(source))?;
            Some((format!("{}, {source}", term.name()), term.value))
        });
        for (name, value) in own.into_iter().chain(terms) {
            let symbol = name.split(',').next().unwrap_or_default().to_owned();
            if symbol != asked && !given.iter().any(|(other, _)| other.starts_with(&format!("{symbol},"))) {
                given.push((name, value.to_string()));
            }
        }
    }
    given
}

/// What is put into a step, each value with what it is: an earlier result, a published value, or what the form asks.
pub fn put_in(steps: &[Step], at: usize, step: &Step, asked: &[(String, String)]) -> Vec<(String, String)> {
    let named = |term: &Term| {
        let earlier = steps.iter().take(at).rev().find(|earlier| gives(earlier, term.symbol, term.value));
        let what = match (earlier, term.source) {
            (Some(earlier), _) => format!("{}, {}", term.name(), earlier.meaning),
            (None, Some(source)) => format!("{}, {}", term.name(), source),
            (None, None) => {
                let mut same = asked.iter().filter(|(_, text)| is_given(text, term.value));
                match (same.next(), same.next()) {
                    (Some((label, _)), None) => format!("{}, {}", term.name(), lower(label)),
                    _ => term.name().into_owned(),
                }
            }
        };
        (what, term.value.to_string())
    };
    step.terms.iter().map(named).collect()
}
