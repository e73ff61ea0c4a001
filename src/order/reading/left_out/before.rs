//! What stands in front of a word that says that it is not wanted.

use super::mate::{has_another, name_behind, standard_of};
use super::of_parts::{forbids, refused_behind};
use super::same::{its_other_words, joined_before, why_refused};
use super::{
    BY_OTHERS, NOT_WHAT, OF_A_MATE, OF_SOME_PARTS, UNCLEAR, WHY, can_be_left_out, is_finish, is_gone,
    says_how,
};
use crate::order::reading::items::{Item, Line};
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::nouns::{BOLTS, MATES, is_named};
use crate::order::reading::what::What;
use crate::order::reading::{Became, Piece, token};
use crate::quantity::letters::lower;

/// Why a finish in front of a comma is not used, with nothing but a refusal behind it.
pub(super) const WANTED: &str = "wanted, or not? Write “no” in front of it if it is not";

/// Why the finish of parts that are not there is not used.
const OF_THOSE: &str = "the finish of what the line says is not there";

/// `HDG not allowed`, `nuts: none`: the piece before, a name with all its words.
pub(super) fn before(line: &mut Line, excluded: usize, text: &str) -> bool {
    let mut at = excluded;
    let mut found = false;
    // `hex bolts (nuts by others)`: a second noun is another part.
    let has_noun = |what: &What| [BOLTS, MATES, &["ring", "pin"]].iter().any(|nouns| is_named(what, nouns));
    let (mut noun, mut is_of_mates, mut name) = (false, false, None);
    let is_by_others = line
        .items
        .get(excluded)
        .is_some_and(|item| lexicon::means(&lower(&item.text), lexicon::Word::ByOthers));
    if let Some(done) = done_to_nuts(line, excluded) {
        line.not(done, WHY);
        found = true;
    }
    if let Some((finishes, why)) = refused_behind(line, excluded, text) {
        for finish in finishes {
            line.not(finish, why);
            its_other_words(line, finish, text, Line::before, why);
        }
        // What is asked of the finish leaves the parts to be refused.
        if why != OF_SOME_PARTS {
            line.binds(excluded);
            return true;
        }
    }
    let is_of_nuts = found;
    while let Some(place) = line.before(at).filter(|_| !is_of_nuts) {
        at = place;
        let Some(what) = line.what(at) else { break };
        match what {
            What::Filler if !found => {}
            What::Polite if !found && line.items.get(at).is_some_and(begs) => {}
            // `delays must be avoided`: nothing of the part.
            What::Polite if !found => {
                found = true;
                break;
            }
            // `nuts and washers by others`.
            What::With(false)
                if found
                    && line.before(at).is_some_and(|part| matches!(line.what(part), Some(What::Part(_)))) =>
            {
                noun = false;
            }
            part @ What::Part(_) if !(noun && has_noun(part)) => {
                is_of_mates |= is_named(part, MATES);
                (found, noun, name) = (true, noun || has_noun(part), Some(at));
                line.not(at, WHY);
            }
            // `plated bolts, HDG nuts must not be used`: of the nuts, where the bolts have their own.
            finish if is_of_mates && is_finish(finish) => {
                let begins = line.before(at).is_none_or(|it| matches!(line.what(it), Some(What::With(_))));
                let has_own = line
                    .items
                    .iter()
                    .enumerate()
                    .any(|(other, item)| other < at && item.is_free() && is_finish(&item.what));
                if begins && has_own {
                    line.not(at, OF_THOSE);
                } else if forbids(line, excluded) {
                    line.not(at, OF_A_MATE);
                }
                break;
            }
            // `DIN 934 class 8 nuts not required`.
            _ if found && let Some(standard) = standard_before(line, at, name, text) => {
                for place in standard..=at {
                    line.not(place, WHY);
                }
                at = standard;
            }
            _ if !found && let Some(part) = name_before(line, at) => {
                found = true;
                line.not(at, WHY);
                at = part + 1;
            }
            _ if !found && can_be_left_out(what) => {
                found = true;
                // `black, for later HDG by others`: the coat comes all the same.
                let why = if is_finish(what) && is_by_others { BY_OTHERS } else { why_refused(line, at) };
                line.not(at, why);
                let first = its_other_words(line, at, text, Line::before, why).unwrap_or(at);
                joined_before(line, first, excluded, text);
                break;
            }
            _ => break,
        }
    }
    if found && let Some(item) = line.item(excluded) {
        item.became = Some(Became::Binds);
    }
    found
}

/// Where the standard in front of the name of a nut or a washer begins; up to its name nothing else stands.
fn standard_before(line: &Line, at: usize, name: Option<usize>, text: &str) -> Option<usize> {
    let is_one = |standard: &usize| {
        let mate = line.what(*standard).and_then(standard_of);
        mate.is_some_and(|mate| has_another(line, mate)) && name_behind(line, *standard, text) == name
    };
    name.and_then(|_| (at.saturating_sub(2)..=at).rev().find(is_one))
}

/// `nuts DIN 934 not included`: the name in front of its standard.
fn name_before(line: &Line, standard: usize) -> Option<usize> {
    let mate = line.what(standard).and_then(standard_of).filter(|mate| has_another(line, mate))?;
    let name = line.said_before(standard)?;
    matches!(line.what(name), Some(What::Part(noun)) if noun.ends_with(mate)).then_some(name)
}

/// Whether words to people are none that something can be said of.
pub(super) fn begs(item: &Item) -> bool {
    lower(&item.text).split(' ').any(|word| lexicon::BEGS.contains(&word))
}

/// `8.8 cracked surfaces not allowed`, `HDG partial delivery not allowed`: a word that nobody knows stands between, and is what
/// is not wanted rather than the steel in front of it; of a finish the line asks.
pub(super) fn is_of_unknown(line: &mut Line, at: usize, unknown: &[Piece]) -> bool {
    let Some(first) = line.before(at) else { return false };
    let mut before = first;
    while line.what(before) == Some(&What::Filler)
        && let Some(other) = line.before(before)
    {
        before = other;
    }
    let is_steel =
        |at: usize| matches!(line.what(at), Some(What::Steel(_) | What::Class(_) | What::Hardness(..)));
    let is_zinc = |what: &What| is_finish(what) && !matches!(what, What::Other(_));
    let is_finish = line.items.get(before).is_some_and(|item| item.is_free() && is_zinc(&item.what));
    // `HDG on this job must not be used`.
    let is_how = line.items.get(before + 1).is_some_and(|item| {
        item.what == What::Filler && lexicon::BOUND_TO.contains(&lower(&item.text).as_str())
    });
    let of = if is_steel(first) {
        first
    } else if is_finish && !is_how {
        before
    } else {
        return false;
    };
    let is_between = line.end(of).zip(line.start(at)).is_some_and(|(end, start)| {
        let next = unknown.partition_point(|word| word.span.start < end);
        let mut between = unknown.iter().skip(next).take_while(|word| word.span.end <= start);
        // `HDG absolutely not allowed`.
        between.any(|word| !is_finish || !says_how(&lower(&word.text)))
    });
    if is_between {
        line.not(at, NOT_WHAT);
        if is_finish {
            line.not(of, UNCLEAR);
        }
    }
    is_between
}

/// `HDG, which must not be used`: nothing else stands between commas, and the finish in front is wanted or not.
pub(super) fn is_said_of_the_stretch_before(line: &mut Line, at: usize, text: &str) {
    if line.behind(at).is_some()
        || line.before(at).is_some_and(|before| line.what(before) != Some(&What::Filler))
    {
        return;
    }
    let mut before = at;
    let finish = loop {
        let Some(place) = before.checked_sub(1) else { return };
        before = place;
        match line.items.get(place) {
            Some(item) if item.what == What::Filler => {}
            Some(item) if item.is_free() && is_finish(&item.what) => break place,
            _ => return,
        }
    };
    let Some(gap) = line.between(text, finish, at) else {
        return;
    };
    // `bolts, which are HDG, are rejected`: whatever the clause says of it besides.
    let is_in_a_clause =
        line.start(finish).is_some_and(|start| holds_a_relative(token::near(text, start..start, FARTHEST).0));
    let said = if is_in_a_clause { gap.rsplit(token::is_break).next().unwrap_or(gap) } else { gap };
    let says_nothing_else = gap.chars().filter(|c| token::is_break(*c)).count() == 1
        && token::words(said).all(|word| {
            let word = lower(word);
            let is_small =
                [lexicon::RELATIVES, lexicon::LINKS].iter().any(|words| words.contains(&word.as_str()));
            is_small || [Word::Filler, Word::Modal].iter().any(|means| lexicon::means(&word, *means))
        });
    if !says_nothing_else {
        return;
    }
    // `HDG, which is not allowed`; without such a word a refusal may be of something else.
    let is_relative = holds_a_relative(gap) && !is_in_a_clause;
    line.not(finish, if is_relative { WHY } else { WANTED });
    if is_relative && let Some(item) = line.item(at) {
        item.became = Some(Became::Binds);
    }
}

/// So many letters in front of a finish are looked at.
const FARTHEST: usize = 40;

/// Whether a stretch of text holds a word that goes on with what stands in front of it: `which`.
pub(super) fn holds_a_relative(text: &str) -> bool {
    token::words(text).any(|word| lexicon::RELATIVES.contains(&lower(word).as_str()))
}

/// `tapping over of the nuts is not allowed`: what is refused is how they are tapped, or lubricated, and no nuts.
pub(super) fn done_to_nuts(line: &Line, excluded: usize) -> Option<usize> {
    let mut at = line.before(excluded)?;
    let mut has_nuts = false;
    loop {
        match line.what(at)? {
            What::Filler => {}
            What::Part(noun) if noun.ends_with("nut") => has_nuts = true,
            What::Not(why) if has_nuts && (why == lexicon::TAPPED || why == lexicon::TOP) => return Some(at),
            _ => return None,
        }
        at = line.before(at)?;
    }
}

/// `nuts must not be tapped over`: of the thread that nuts have from the shelf.
pub(super) fn not_tapped_over(line: &mut Line) {
    for item in &mut line.items {
        let is_one = item.what == What::Not(lexicon::TAPPED.into())
            && is_gone(&item.became)
            && !lower(&item.text).contains("allowance");
        if is_one {
            item.what = What::StandardNut;
            item.became = None;
        }
    }
}
