//! How the steps of a working hang together: what rests on what.

use crate::quantity::Shown;
use crate::source::{Basis, Source};
use crate::working::{Step, Term};

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

/// What is put into a step, each value with what it is.
pub fn put_in(steps: &[Step], at: usize, step: &Step) -> Vec<(String, String)> {
    let named = |term: &Term| {
        let earlier = steps.iter().take(at).rev().find(|earlier| gives(earlier, term.symbol, term.value));
        let what = match (earlier, term.source) {
            (Some(earlier), _) => format!("{}, {}", term.name(), earlier.meaning),
            (None, Some(source)) => format!("{}, {}", term.name(), source),
            (None, None) => term.name().into_owned(),
        };
        (what, term.value.to_string())
    };
    step.terms.iter().map(named).collect()
}
