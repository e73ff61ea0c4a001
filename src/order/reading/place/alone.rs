//! What surrounds the part, said by a bare noun: `HDG, soil`, `place: water`.

use crate::order::reading::lexicon;
use crate::order::reading::token::{Chain, Sort};
use crate::order::reading::what::{Found, What, one};
use crate::site::Surroundings;

/// A noun that stands by itself between commas or in a cell, or behind a word for the place; beside others it names
/// something else (`concrete screw`, `water tank`).
pub fn alone(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let word = chain.word(at)?;
    let what = [(lexicon::SOIL, Surroundings::Soil), (lexicon::WATER, Surroundings::Water)]
        .into_iter()
        .find(|(words, _)| words.contains(&word))
        .map(|(_, around)| What::Around(around))
        .or_else(|| lexicon::CONCRETE.contains(&word).then(|| What::Not(lexicon::CAST_IN.into())))?;
    let end = chain.after(at);
    let is_break = |place: usize| chain.get(place).is_none_or(|token| token.sort == Sort::Break);
    let before = chain.before(at);
    let is_labelled = before
        .filter(|mark| chain.sign(*mark, &[":", "="]))
        .and_then(|mark| chain.before(mark))
        .is_some_and(|label| chain.word(label).is_some_and(|label| lexicon::PLACE_LABELS.contains(&label)));
    let begins = before.is_none_or(is_break) || is_labelled;
    (begins && is_break(end)).then(|| one(end, what))?
}
