//! Years and months that are no life of a coat: of a store, of an inspection, of a delivery.

use super::years;
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::token::{Chain, Sort};
use crate::order::reading::what::{Found, What, one};

/// `stored 2 years`, `every 2 years`, `inspection each 5 years`: no life of a coat.
pub fn no_life(chain: &Chain<'_>, at: usize) -> Option<Found> {
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
            None if chain.word(from).is_some_and(|word| lexicon::RECURS.contains(&word)) => chain.after(from),
            None => chain.over(from, &[":", "=", "("]),
        };
    }
    let found = years(chain, from).filter(|found| matches!(found.as_slice(), [(_, What::Years(_))]));
    let end = found.and_then(|found| found.first().map(|(end, _)| *end))?;
    one(end, What::Not(lexicon::NO_LIFE.into()))
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
