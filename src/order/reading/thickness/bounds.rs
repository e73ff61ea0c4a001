//! A thickness behind a word that says on which side of it the coat is: `below 8 µm`, `over 60 µm not accepted`.

use super::{range, thickness};
use crate::order::reading::lexicon;
use crate::order::reading::token::Chain;
use crate::order::reading::what::{Found, What, one};

/// On which side of a thickness.
#[derive(Clone, Copy, PartialEq)]
enum Side {
    Less,
    More,
}

/// A thickness with the word in front of it, which nobody knows by itself.
pub fn bounded(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (from, _) = side(chain, at)?;
    let mut found = thickness(chain, from)?;
    let (end, what) = found.pop().filter(|_| found.is_empty())?;
    matches!(what, What::AtMost(_) | What::Thickness(_)).then(|| one(end, what)).flatten()
}

/// The place behind `below`, `above`, `more than`, `dünner als`, and the side that it says.
fn side(chain: &Chain<'_>, at: usize) -> Option<(usize, Side)> {
    let word = chain.word(at)?;
    let end = chain.after(at);
    let of = |less: &[&str], more: &[&str]| match word {
        _ if less.contains(&word) => Some(Side::Less),
        _ if more.contains(&word) => Some(Side::More),
        _ => None,
    };
    if let Some(side) = of(lexicon::LESS, lexicon::MORE_THAN) {
        return Some((end, side));
    }
    let is_than = chain.word(end).is_some_and(|than| lexicon::THAN.contains(&than));
    let side = of(lexicon::COMPARED_LESS, lexicon::COMPARED).filter(|_| is_than)?;
    Some((chain.after(end), side))
}

/// The first word of those that end at a place and say a side.
fn said(chain: &Chain<'_>, last: usize) -> Option<(usize, Side)> {
    let behind = chain.after(last);
    [chain.before(last), Some(last)]
        .into_iter()
        .flatten()
        .find_map(|first| side(chain, first).filter(|(end, _)| *end == behind).map(|(_, side)| (first, side)))
}

/// Whether the words that end at a place make a greatest of the thickness behind them, and whether it is said to be refused
/// behind that: `below`, or a refused `over`; `None` where they say no side.
pub(super) fn is_greatest(chain: &Chain<'_>, last: usize, is_refused_behind: bool) -> Option<bool> {
    let (first, side) = said(chain, last)?;
    let is_refused = is_refused_behind || range::is_refused(chain, first);
    Some(is_refused == (side == Side::More))
}

/// Whether words that say a side end at a place.
pub(super) fn says(chain: &Chain<'_>, last: usize) -> bool {
    said(chain, last).is_some()
}
