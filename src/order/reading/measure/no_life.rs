//! Years and months that are no life of a coat: of a store, of an inspection, of a delivery, of what failed before.

use super::years;
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::token::{Chain, Sort};
use crate::order::reading::what::{Found, What, one};

/// `stored 2 years`, `every 2 years`, `inspection each 5 years`, `lasted 2 years`: no life of a coat.
pub fn no_life(chain: &Chain<'_>, at: usize) -> Option<Found> {
    if let Some(found) = until_found(chain, at) {
        return Some(found);
    }
    chain.word(at).filter(|word| lexicon::RECURS.contains(word))?;
    let mut from = chain.after(at);
    for _ in 0..4 {
        let over = |word| {
            let binds = matches!(word, Word::Filler | Word::Most | Word::Least | Word::Each);
            // `stored outdoors for 2 years`: where it lies, and not where it will stand.
            (binds || matches!(word, Word::Place(_) | Word::Category(_))).then_some(())
        };
        from = match lexicon::find(chain, from, over) {
            Some((end, ())) => end,
            None if chain.word(from).is_some_and(goes_on) => chain.after(from),
            None => chain.over(from, &[":", "=", "("]),
        };
    }
    let end = behind_years(chain, from)?;
    // `supplied for 30 years of life`.
    let of = chain.over(lexicon::over(chain, end, Word::Filler), &["-"]);
    let is_life = |at: usize| {
        chain.tokens().get(at).is_some_and(|token| lexicon::OF_A_LIFE.contains(&token.lower.as_str()))
    };
    if is_life(end) || is_life(of) {
        return None;
    }
    one(end, What::Not(lexicon::NO_LIFE.into()))
}

/// Whether a word stands between that for what recurs and its years: `maintenance interval 2 years`.
fn goes_on(word: &str) -> bool {
    [lexicon::RECURS, lexicon::INTERVALS].iter().any(|words| words.contains(&word))
}

/// The place behind the years at a place.
fn behind_years(chain: &Chain<'_>, at: usize) -> Option<usize> {
    let found = years(chain, at)?;
    let last = found.last().filter(|(_, what)| matches!(what, What::Years(_)));
    last.map(|(end, _)| *end)
}

/// `rust found after 3 years`, `failed after 2 years`: how long it took, and not how long it is to last; `no rust after 15
/// years` is wanted.
fn until_found(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.word(at).filter(|word| lexicon::PAST.contains(word))?;
    let end = behind_years(chain, chain.after(at))?;
    // Words that nobody took are out of the chain.
    let front = chain.tokens().get(at.saturating_sub(5)..at).unwrap_or_default();
    let front = front.rsplit(|token| token.sort == Sort::Break).next().unwrap_or_default();
    let is_of = |words: &[&str]| front.iter().any(|token| words.contains(&token.lower.as_str()));
    let is_found = is_of(lexicon::FOUND) && !is_of(lexicon::NONE_FOUND);
    is_found.then(|| vec![(end, What::Not(lexicon::NO_LIFE.into()))])
}

/// `delivery 3 months`, `12 months warranty`, `stored 6 months`: whether a word beside a time says that it is no life.
pub(super) fn is_of_another_time(chain: &Chain<'_>, at: usize, end: usize) -> bool {
    let lists = [lexicon::DUE, lexicon::SOON, lexicon::CONTRACTS, lexicon::RECURS];
    let is_time = |word: &str| lists.iter().any(|words| words.contains(&word));
    // Words that nobody took are out of the chain.
    let front = chain.tokens().get(at.saturating_sub(3)..at).unwrap_or_default();
    let cell = front.rsplit(|token| token.sort == Sort::Break).next().unwrap_or_default();
    let behind = lexicon::over(chain, chain.over(end, &["-"]), Word::Filler);
    cell.iter().any(|token| is_time(&token.lower))
        || chain.word(behind).is_some_and(is_time)
        || lexicon::find(chain, behind, |word| (word == Word::Not(lexicon::NO_LIFE)).then_some(())).is_some()
}
