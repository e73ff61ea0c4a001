//! A thickness behind a word that says on which side of it the coat is: `below 8 µm`, `over 60 µm not accepted`.

use super::{range, thickness};
use crate::order::reading::Piece;
use crate::order::reading::items::{Item, Line};
use crate::order::reading::left_out::forbids_so;
use crate::order::reading::lexicon;
use crate::order::reading::token::{self, Chain};
use crate::order::reading::what::{Found, What, one};
use crate::quantity::letters::lower;

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

/// The place behind what refuses a thickness: of more than so much only what forbids it, so that `over 8 µm not required` is
/// no greatest.
pub(super) fn over_refused(chain: &Chain<'_>, at: usize, end: usize) -> Option<usize> {
    let is_more =
        chain.before(at).and_then(|last| said(chain, last)).is_some_and(|(_, side)| side == Side::More);
    let refused = range::over_refused(chain, end);
    if !is_more {
        return refused;
    }
    let Some(behind) = refused else {
        let is_rejected = chain.word(end).is_some_and(|word| lexicon::REJECTED.contains(&word));
        return is_rejected.then(|| chain.after(end));
    };
    let words = chain.tokens().get(end..behind).unwrap_or_default().iter().map(|token| token.lower.as_str());
    forbids_so(&words.collect::<Vec<_>>().join(" ")).then_some(behind)
}

/// `12 µm or more is rejected`, `8 µm oder dünner`: the place behind the words and what refuses it, and whether that makes a least
/// of the thickness in front.
pub(super) fn or_so(chain: &Chain<'_>, at: usize) -> Option<(usize, bool)> {
    let or = chain.word(at).filter(|word| lexicon::OR_SO.contains(word)).map(|_| chain.after(at))?;
    let is =
        |lists: [&[&str]; 3]| chain.word(or).is_some_and(|word| lists.iter().any(|it| it.contains(&word)));
    let is_more = is([lexicon::COMPARED, lexicon::MORE_THAN, lexicon::AND_MORE]);
    let end = chain.after(or);
    // `8 µm or more than 12 µm`, `over 8 µm and below 12 µm`.
    let is_than =
        chain.word(end).is_some_and(|than| lexicon::THAN.contains(&than)) || chain.digits(end).is_some();
    let is_one = (is_more || is([lexicon::COMPARED_LESS, lexicon::LESS, lexicon::AND_LESS])) && !is_than;
    let is_rejected =
        || chain.word(end).filter(|word| lexicon::REJECTED.contains(word)).map(|_| chain.after(end));
    let refused = range::over_refused(chain, end).or_else(is_rejected);
    is_one.then(|| (refused.unwrap_or(end), is_more == refused.is_none()))
}

/// Why a thickness behind a word for less is not used, where more is said of it.
const BELOW: &str = "at most so thick, or what is not wanted? Write “max” or “min” in front of it";

/// Why one is not used that may be a tolerance, or how far a thread is cut under.
const OF_A_TOLERANCE: &str =
    "the thickness of the coat, or a tolerance? Write “max” in front of it if it is the coat";

/// `below 45 µm is a fault`, `reject anything below 8 µm`: a greatest only where nothing but facts stands beside it.
pub(super) fn settle(line: &mut Line, text: &str, unknown: &[Piece]) {
    for at in 0..line.items.len() {
        let Some(item) =
            line.items.get(at).filter(|item| matches!(item.what, What::AtMost(_) | What::Thickness(_)))
        else {
            continue;
        };
        let is_most = matches!(item.what, What::AtMost(_));
        let written = lower(&item.text);
        let first = written.split(' ').next().unwrap_or_default();
        let is = |lists: [&[&str]; 2]| lists.iter().any(|words| words.contains(&first));
        if is_most && is([lexicon::LESS, lexicon::COMPARED_LESS]) && !is_alone(line, at, text, unknown) {
            line.not(at, BELOW);
        } else if is([lexicon::MORE_THAN, lexicon::COMPARED]) {
            // `thread undersize over 40 µm`, and no `6AZ`.
            let is_undersize = |item: &Item| {
                matches!(item.what, What::ThreadClass(_)) && !item.text.bytes().any(|it| it.is_ascii_digit())
            };
            let of_thread =
                line.before(at).and_then(|before| line.items.get(before)).is_some_and(is_undersize);
            if of_thread || is_of_a_tolerance(line, at, text) {
                line.not(at, OF_A_TOLERANCE);
            }
        }
    }
}

/// So many letters on either side are looked at.
const FARTHEST: usize = 80;

/// Whether the word for a tolerance stands right in front of a place.
fn is_of_a_tolerance(line: &Line, at: usize, text: &str) -> bool {
    let Some(span) = line.span(at) else { return false };
    let last = token::words(token::near(text, span, FARTHEST).0).next_back().map(lower);
    last.is_some_and(|word| lexicon::TOLERANCES.contains(&word.as_str()))
}

/// Whether only what is known stands between the breaks around a thickness, and behind the next one, and nothing that
/// judges it.
fn is_alone(line: &Line, at: usize, text: &str, unknown: &[Piece]) -> bool {
    let Some(span) = line.span(at) else { return false };
    let (front, behind) = token::beside(text, span.clone(), FARTHEST);
    let front = front.rsplit(token::is_break).next().unwrap_or_default();
    let mut stretches = behind.split(token::is_break);
    let (near, next) = (stretches.next().unwrap_or_default(), stretches.next());
    let reach = span.start - front.len()..span.end + near.len() + next.map_or(0, |next| next.len() + 1);
    let first = unknown.partition_point(|piece| piece.span.end <= reach.start);
    let mut inside =
        unknown.get(first..).unwrap_or_default().iter().take_while(|piece| piece.span.start < reach.end);
    // `above 8 µm but below 15 µm`.
    if inside.any(|piece| !lexicon::BUT.contains(&lower(&piece.text).as_str())) {
        return false;
    }
    let judges = |word: &str| lexicon::JUDGES.contains(&lower(word).as_str());
    if behind.trim_start().starts_with([':', '=']) || token::words(near).any(judges) {
        return false;
    }
    let is_inside = |place: &usize| {
        line.span(*place).is_some_and(|span| span.end > reach.start && span.start < reach.end)
    };
    let refuses = |place: usize| {
        matches!(line.what(place), Some(What::Without | What::Excluded | What::Acceptable | What::Polite))
    };
    let in_front = (0..at).rev().take_while(is_inside).any(refuses);
    !in_front && !(at + 1..line.items.len()).take_while(is_inside).any(refuses)
}

/// Whether words that say a side end at a place.
pub(super) fn says(chain: &Chain<'_>, last: usize) -> bool {
    said(chain, last).is_some()
}
