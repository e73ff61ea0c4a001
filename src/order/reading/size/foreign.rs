//! Threads of another series than M and the unified one, by a word or a letter beside their size.

use crate::order::reading::length::{DASHES, cross, over_inch};
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::nouns::{BOLTS, MATES};
use crate::order::reading::number::{self, Number};
use crate::order::reading::token::{Chain, Sort};
use crate::order::reading::what::{Found, What, one};
use crate::thread::Designation;

/// Why a thread of another series is not used.
pub const FOREIGN: &str = "only M and unified threads are known here";

/// `3/4 BSW`, `1/2-14 NPT`, `1/2 W x 2`: a thread of another series is not the unified one of its size.
pub fn foreign(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let size = number::number(chain, at)?;
    let end = behind_the_pitch(chain, &size);
    let named = lexicon::whole(chain, end, |word| (word == Word::Foreign).then_some(())).map(|(end, ())| end);
    let end = named.or_else(|| letter_behind(chain, at, &size, end))?;
    one(end, What::Not(FOREIGN.into()))
}

/// `BSW 1/2 x 2`, `W 5/8 x 50`, `W3/4`: the same, where the word or the letter stands in front of the size.
pub fn foreign_in_front(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.word(at)?;
    let named = lexicon::whole(chain, at, |word| (word == Word::Foreign).then_some(()));
    let from = named.map_or_else(|| chain.after(at), |(end, ())| end);
    let from = chain.over(from, &[":", "-"]);
    let size = number::number(chain, from)?;
    let end = behind_the_pitch(chain, &size);
    let has_length = cross(chain, end).is_some_and(|length| chain.digits(length).is_some());
    let is_size = is_of_inches(chain, &size) || named.is_some() && has_length && size.value <= LARGEST;
    if !is_size || chain.inside_a_run(end) && !has_length {
        return None;
    }
    let is_it = named.is_some() || is_letter_in_front(chain, at, &size, end, has_length);
    is_it.then(|| vec![(end, What::Not(FOREIGN.into()))])
}

/// No whole number beyond it is a size in inches.
const LARGEST: f64 = 4.0;

/// How many tokens in front of a letter are asked for another size.
const NEAR: usize = 24;

/// The place behind a size and the threads per inch that are joined to it.
fn behind_the_pitch(chain: &Chain<'_>, size: &Number) -> usize {
    let end = chain.over(over_inch(chain, size.end), DASHES);
    number::decimal(chain, end).filter(|_| end != size.end).map_or(end, |per_inch| per_inch.end)
}

/// Whether a number can be nothing but a measure in inches.
fn is_of_inches(chain: &Chain<'_>, size: &Number) -> bool {
    size.is_fraction || over_inch(chain, size.end) != size.end
}

/// The place behind the W of Whitworth behind a size; in front of a nut, a washer or a number it says `with`.
fn letter_behind(chain: &Chain<'_>, at: usize, size: &Number, letter: usize) -> Option<usize> {
    chain.word(letter).filter(|word| *word == "w")?;
    let end = chain.after(letter);
    let is_length = chain.before(at).is_some_and(|before| cross(chain, before) == Some(at));
    let ends = chain.get(end).is_none_or(|next| next.sort == Sort::Break);
    let is_it = chain.glued(letter) && !names(chain, end, MATES)
        || ends
        || cross(chain, end).is_some()
        || names(chain, end, BOLTS);
    (is_it && !is_length && is_of_inches(chain, size) && !chain.inside_a_run(end)).then_some(end)
}

/// Whether the letter in front of a size is the W of Whitworth, and says not `with`: it touches the size, or no other
/// size stands in front, and no nut or washer behind.
fn is_letter_in_front(chain: &Chain<'_>, at: usize, size: &Number, end: usize, has_length: bool) -> bool {
    let Some(letter) = chain.get(at).filter(|token| token.lower == "w") else { return false };
    // `W 1/2-13 nuts`: a unified thread.
    let written = (size.end != end)
        .then(|| chain.tokens().get(size.end..end))
        .flatten()
        .map(|pitch| pitch.iter().map(|token| token.text).collect::<String>());
    if written.is_some_and(|pitch| Designation::read(&format!("{}{pitch}", size.text)).is_ok()) {
        return false;
    }
    let is_glued = chain.glued(chain.after(at));
    let says_with = || names(chain, end, MATES) || has_size_in_front(chain, at);
    (letter.text == "W" || is_glued || has_length) && !says_with()
}

/// Whether a size stands a few words in front.
fn has_size_in_front(chain: &Chain<'_>, at: usize) -> bool {
    let mut place = chain.before(at);
    for _ in 0..NEAR {
        let Some(before) = place else { return false };
        let figures = chain.after(before);
        let is_metric =
            chain.word(before) == Some("m") && chain.glued(figures) && chain.digits(figures).is_some();
        if is_metric || number::fraction(chain, before).is_some() || cross(chain, before).is_some() {
            return true;
        }
        place = chain.before(before);
    }
    false
}

/// Whether the name of a part with one of these nouns stands at a place.
fn names(chain: &Chain<'_>, at: usize, nouns: &[&str]) -> bool {
    let mut from = at;
    // `hex nuts` may stand in two words.
    for _ in 0..3 {
        let Some((end, words)) = lexicon::whole(chain, from, |word| match word {
            Word::Part(words) => Some(words),
            _ => None,
        }) else {
            return false;
        };
        if words.split(' ').any(|word| nouns.contains(&word)) {
            return true;
        }
        from = end;
    }
    false
}
