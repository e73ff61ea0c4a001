//! How the steps of a working hang together: what rests on what.

use crate::quantity::Shown;
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
    step.symbol == symbol
        && step
            .result
            .unit
            .convert(step.result.number, value.unit)
            .is_some_and(|number| (number - value.number).abs() <= 1e-9 * value.number.abs())
}

/// A step with all that it rests on, in the order they are done.
pub fn needed(steps: &[Step], at: usize) -> Vec<Step> {
    let mut wanted = vec![false; steps.len()];
    let mut open = vec![at];
    while let Some(at) = open.pop() {
        if let (Some(wanted @ false), Some(step)) = (wanted.get_mut(at), steps.get(at)) {
            *wanted = true;
            open.extend(rests_on(steps, at, step));
        }
    }
    steps.iter().zip(wanted).filter(|(_, wanted)| *wanted).map(|(step, _)| step.clone()).collect()
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
