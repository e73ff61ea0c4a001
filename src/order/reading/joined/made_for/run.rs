//! The words of a part's name that stand side by side, and whether they say what another part is for.

use super::{gap, is_blank};
use crate::order::reading::items::{Item, Line};
use crate::order::reading::lexicon;
use crate::order::reading::nouns::{BOLTS, MATES, NO_THREAD, is_named};
use crate::order::reading::what::What;
use crate::quantity::letters::lower;

/// Nouns that say no more than that it is a bolt or a screw.
pub(super) const BARE_NOUNS: &[&str] = &["bolt", "screw", "schraube"];

/// Nouns of parts that things are called by in front of a bolt.
const IN_FRONT: &[&str] = &["rod", "stud", "ring", "pin"];

/// The noun of a name.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Noun {
    /// Of a bolt, a screw, a rod, a ring, a pin.
    Bolt,
    /// Of what goes on a bolt.
    Mate,
}

/// Words of a part's name, side by side.
pub(super) struct Run {
    /// Each of them.
    pub words: Vec<&'static str>,
    /// Its noun.
    pub noun: Option<Noun>,
    /// The place behind it.
    pub end: usize,
    /// Whether it stands in front of the noun of another thing: `stud wall`, `rod ends`, `U-bolt brackets`.
    pub of_a_thing: bool,
    /// Whether a measure of it follows: `flange width`.
    pub is_measured: bool,
    /// `for shaft`: the word that says for what stands in it.
    pub says_for: bool,
    /// Whether it says no more than what a screw goes into: `drywall`.
    pub is_into: bool,
}

impl Run {
    /// The words of parts from a place on.
    pub fn at(line: &Line, text: &str, at: usize) -> Self {
        let says_for =
            |place: usize| line.items.get(place).is_some_and(|item| lower(&item.text).starts_with("for "));
        let is_word = |place: usize| {
            (place == at || !says_for(place))
                && matches!(line.what(place), Some(What::Part(_)))
                && line.items.get(place).is_some_and(Item::is_free)
                && (place == at || line.before(place).is_some() && is_blank(gap(line, text, place)))
        };
        let end = (at..line.items.len()).find(|place| !is_word(*place)).unwrap_or(line.items.len());
        let items = line.items.get(at..end).unwrap_or_default();
        let is_of = |nouns: &[&str]| items.iter().any(|item| is_named(&item.what, nouns));
        let noun = match () {
            () if is_of(BOLTS) || is_of(NO_THREAD) => Some(Noun::Bolt),
            () if is_of(MATES) => Some(Noun::Mate),
            () => None,
        };
        let words: Vec<&'static str> = items
            .iter()
            .filter_map(|item| match item.what {
                What::Part(words) => Some(words),
                _ => None,
            })
            .flat_map(|words| words.split(' '))
            .collect();
        let written = items.last().map_or(String::new(), |item| lower(&item.text));
        let next = next_word(line, text, end);
        let is_plural = written.ends_with('s') || written.ends_with("en");
        let of_a_thing =
            noun.is_some() && (words.last() == Some(&"?") || !is_plural && is_thing(line, text, end, &next));
        let says_for = says_for(at);
        let is_into = lexicon::GOES_INTO.contains(&written.as_str()) && items.len() == 1;
        let is_measured = lexicon::OF_A_MEASURE.contains(&next.as_str());
        Self { words, noun, end, of_a_thing, is_measured, says_for, is_into }
    }

    /// `for flange: M16x60 bolts`, `for M16 studs: washers`: in front of a colon, behind which parts are named.
    pub fn heads_a_list(&self, line: &Line, text: &str) -> bool {
        let is_part = |at: usize| matches!(line.what(at), Some(What::Part(_)));
        gap(line, text, self.end).trim_start().starts_with(':') && (self.end..line.items.len()).any(is_part)
    }

    /// `stud wall bolts`, `rod end bolts`: of a thing right in front of the bare noun, which is what is ordered.
    pub fn is_in_front_of_a_noun(&self, line: &Line, text: &str) -> bool {
        let is_one = self.of_a_thing && self.words.last().is_some_and(|word| IN_FRONT.contains(word));
        let is_part = |at: usize| matches!(line.what(at), Some(What::Part(_)));
        let noun = if is_part(self.end) { self.end } else { self.end + 1 };
        let is_bare =
            |at: usize| matches!(line.what(at), Some(What::Part(noun)) if BARE_NOUNS.contains(noun));
        let is_joined = |at: usize| {
            line.before(at).is_some()
                && gap(line, text, at).chars().all(|c| c.is_alphabetic() || matches!(c, ' ' | '-'))
        };
        is_one && is_bare(noun) && (self.end..=noun).all(is_joined)
    }
}

/// The word right behind a run, whatever it is.
fn next_word(line: &Line, text: &str, end: usize) -> String {
    let from = end.checked_sub(1).and_then(|last| line.end(last)).unwrap_or_default();
    let rest = text.get(from..).unwrap_or_default().trim_start_matches([' ', '-']);
    lower(rest.chars().take_while(|c| c.is_alphabetic()).take(LONGEST_WORD).collect::<String>().as_str())
}

/// No word that is looked for is so long.
const LONGEST_WORD: usize = 40;

/// Whether the word behind a run is the noun of another thing: one that no rule has read, or a place or a thing that is
/// known.
fn is_thing(line: &Line, text: &str, end: usize, word: &str) -> bool {
    let is_known = match line.what(end).filter(|_| line.before(end).is_some()) {
        Some(What::Not(why)) => {
            ["", lexicon::JOINT, lexicon::IN_SERVICE, lexicon::HARSHER].contains(&why.as_ref())
        }
        Some(What::Place(_)) => true,
        _ => false,
    };
    let is_unread = || !is_blank(gap(line, text, end));
    word.chars().count() > 2 && (is_known || lexicon::OF_A_HOUSE.contains(&word) || is_unread())
}
