//! What stands behind a word that says what is not wanted.

use std::mem::discriminant;

use super::before::{before, is_said_of_the_stretch_before};
use super::mate::{has_bolt, is_standard_of_the_mate, name_behind};
use super::of_parts::refused_in_front;
use super::same::{is_colour, its_other_words, joined_behind, why_refused};
use super::{
    BY_A_VERB, MATES, NOT_WHAT, OF_A_MATE, OF_SOME_PARTS, UNCLEAR, WHY, can_be_left_out, is_finish, is_grade,
    is_named, with_or_without,
};
use crate::order::reading::items::{Item, Line};
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::nouns::BOLTS;
use crate::order::reading::what::What;
use crate::order::reading::{Piece, token};
use crate::quantity::letters::lower;

/// `no HDG or plating`, `without DH nuts and washers`: the next piece, a name with all its words, and what
/// `or` adds to it; `and` adds parts.
pub(super) fn ahead(line: &mut Line, without: usize, text: &str, speaks_of_unknown: bool) {
    if let Some(size) = refused_size(line, without) {
        size.into_iter().for_each(|at| line.not(at, WHY));
        line.binds(without);
        return;
    }
    if let Some(number) = refused_number(line, without, text) {
        line.not(number, WHY);
        return line.binds(without);
    }
    if let Some((finishes, why)) = refused_in_front(line, without, text) {
        for finish in finishes {
            line.not(finish, why);
            let next = if finish < without { Line::before } else { Line::behind };
            its_other_words(line, finish, text, next, why);
        }
        if why == WHY {
            line.binds(without);
            return;
        }
    }
    let mut reach = Reach::of(line, without);
    let mut open = true;
    let mut last: Option<usize> = None;
    let mut name: Option<usize> = None;
    let mut at = without;
    let is_of_mates = is_said_of_mates(line, without);
    while let Some(next) = line.behind(at).filter(|next| reach.holds(line, *next, text)) {
        at = next;
        let is_part = |at: usize| matches!(line.what(at), Some(What::Part(_)));
        let Some(what) = line.what(at) else { break };
        let (grows, starts, joins) = (
            last.is_some_and(|last| {
                is_part(at) && line.what(last).is_some_and(|what| is_grade(what) || is_part(last))
                    || is_standard_of_the_mate(line, last, at)
            }) || *what != What::Or && name.is_some_and(|name| at <= name),
            open && (can_be_left_out(what) || is_grade(what) && line.behind(at).is_some_and(is_part)),
            last.is_some()
                && (*what == What::Or && !is_otherwise(line, at)
                    || matches!(what, What::With(false))
                        && line
                            .behind(at)
                            .is_some_and(|next| is_part(next) || name_behind(line, next, text).is_some())),
        );
        match what {
            What::Filler => {}
            // `not urgent`.
            What::Polite if last.is_none() => {
                last = Some(at);
                break;
            }
            _ if grows || starts => {
                // `no yellow zinc`.
                let is_colour =
                    is_colour(what) && line.behind(at).and_then(|at| line.what(at)).is_some_and(is_finish);
                (open, last) = (is_colour, Some(at));
                name = name.max(name_behind(line, at, text));
                let why = if is_of_mates && is_finish(what) { OF_A_MATE } else { why_refused(line, at) };
                line.not(at, why);
                if let Some(other) = its_other_words(line, at, text, Line::behind, why) {
                    (at, last) = (other, Some(other));
                }
            }
            _ if joins => {
                open = true;
                line.binds(at);
            }
            _ => break,
        }
    }
    with_mates(line, without, last);
    if let Some(last) = last {
        // `pas de boulons zingués`: how they are coated is refused perhaps.
        let is_coated =
            |at: &usize| line.what(*at).is_some_and(is_finish) && line.between(text, last, *at) == Some(" ");
        if line.what(last).is_some_and(|what| is_named(what, BOLTS))
            && let Some(finish) = line.behind(last).filter(is_coated)
        {
            line.not(finish, OF_SOME_PARTS);
        }
        joined_behind(line, last);
        line.binds(without);
        return;
    }
    // `no. 500` is a number; `nuts: no` speaks of what stands before.
    let number = line.behind(without).filter(|at| matches!(line.what(*at), Some(What::Bare(_))));
    if let Some(number) = number {
        line.not(number, "a number of what? Write 500 pcs if it counts them, #8 if it is a size");
        line.binds(without);
    } else if speaks_of_unknown
        || line.behind(without).is_some_and(|next| Reach::of(line, without).holds(line, next, text))
        || !before(line, without, text)
    {
        line.not(without, NOT_WHAT);
        if line.items.get(without).is_some_and(|item| item.rule == BY_A_VERB) && !speaks_of_unknown {
            is_said_of_the_stretch_before(line, without, text);
        }
        if let Some(before) = line.before(without) {
            with_or_without(line, before, |line, at| line.before(at));
        }
    }
}

/// The brackets between a word and what it speaks of: one that is closed ends what was said in it.
pub(super) struct Reach {
    end: Option<usize>,
    is_in: i32,
}

impl Reach {
    /// That of a word at a place.
    pub fn of(line: &Line, at: usize) -> Self {
        Self { end: line.end(at), is_in: 0 }
    }

    /// Whether it holds the next piece; they come in the order of the line.
    pub fn holds(&mut self, line: &Line, next: usize, text: &str) -> bool {
        let gap = self.end.zip(line.start(next)).and_then(|(end, start)| text.get(end..start));
        self.end = line.end(next);
        for c in gap.unwrap_or_default().chars() {
            self.is_in += match c {
                '(' | '[' => 1,
                ')' | ']' => -1,
                _ => 0,
            };
            if self.is_in < 0 {
                return false;
            }
        }
        true
    }
}

/// `without zork HDG`, `not before May HDG`: behind a word that nobody knows what follows may be wanted or not, so that
/// the line asks; `do not stack nuts` refuses no nuts, nor `no zork C3` the place.
pub(super) fn reaches_over(line: &mut Line, without: usize, unknown: &[Piece]) -> bool {
    let Some(next) = line.said_behind(without) else { return false };
    let is_between = line.start(without).zip(line.start(next)).is_some_and(|(from, to)| {
        let is_word = |piece: &&Piece| piece.text.chars().any(char::is_alphabetic);
        let first = unknown.partition_point(|piece| piece.span.start < from);
        let behind = unknown.get(first..).unwrap_or_default();
        behind.iter().take_while(|piece| piece.span.start < to).any(|piece| is_word(&piece))
    });
    let says_what_is_not_done = || says_what_is_not_done(line, without);
    match line.what(next) {
        Some(what) if is_between && is_finish(what) => line.not(next, UNCLEAR),
        // `do not pack in wood` is of no part.
        Some(What::Part(noun))
            if is_between
                && ["nut", "washer"].iter().any(|mate| noun.ends_with(mate))
                && says_what_is_not_done() => {}
        Some(What::Part(_) | What::Not(_)) => return false,
        Some(what) if is_between && can_be_left_out(what) => {}
        _ => return false,
    }
    line.not(without, NOT_WHAT);
    true
}

/// `not M20x60 but M16x60`: the size behind the word, with its length, where the line has another.
fn refused_size(line: &Line, without: usize) -> Option<Vec<usize>> {
    let first = line.said_behind(without)?;
    let size = |at: usize| match line.items.get(at) {
        Some(Item { what: What::Thread(written), matched, .. }) if !written.weak => {
            let length = line.items.get(at + 1).filter(|next| next.matched == *matched).and_then(|next| {
                match &next.what {
                    What::Length(text) => Some(text.as_str()),
                    _ => None,
                }
            });
            Some((written.text.as_str(), length))
        }
        _ => None,
    };
    let own = size(first)?;
    let mut last = if own.1.is_some() { first + 1 } else { first };
    let mut refused = vec![own];
    let mut places: Vec<usize> = (first..last + 1).collect();
    // `not M16x60 or M16x65 but M16x70`.
    for _ in 0..MOST_PIECES {
        let next =
            line.behind(last).filter(|or| line.what(*or) == Some(&What::Or)).and_then(|or| line.behind(or));
        let Some((next, other)) = next.and_then(|next| Some((next, size(next)?))) else { break };
        last = if other.1.is_some() { next + 1 } else { next };
        refused.push(other);
        places.extend(next..last + 1);
    }
    // `no M16 nuts`; `not M16x60 bolts` is of the size.
    let is_of_a_part = line.behind(last).is_some_and(|next| match line.what(next) {
        Some(What::Class(_)) => true,
        Some(what @ What::Part(_)) => last == first || is_named(what, MATES),
        _ => false,
    });
    let is_other = |at: usize| {
        at != first
            && line.items.get(at).is_some_and(Item::is_free)
            && size(at).is_some_and(|size| !refused.contains(&size))
    };
    (!is_of_a_part && (0..line.items.len()).any(is_other)).then_some(places)
}

/// `not 400 pcs but 600 pcs`, `600 pcs instead of 400 pcs`: the number behind the word, where another of its kind stands near.
/// Of `no 400 pcs` the word may be that of a number.
fn refused_number(line: &Line, without: usize, text: &str) -> Option<usize> {
    let first = line.said_behind(without)?;
    let own = line.what(first).filter(|what| matches!(what, What::Count(_) | What::Years(_)))?;
    let is_other = |at: usize| {
        let item = line.items.get(at).filter(|item| at != first && item.is_free());
        item.is_some_and(|item| item.what != *own && discriminant(&item.what) == discriminant(own))
    };
    let other = (first.saturating_sub(MOST_PIECES)..first + MOST_PIECES).find(|at| is_other(*at))?;
    let is_but = |word: &str| lexicon::BUT.contains(&lower(word).as_str());
    let has_but = || line.between(text, first, other).is_some_and(|gap| token::words(gap).any(is_but));
    let is_no = line.items.get(without).is_some_and(|item| lower(&item.text) == "no");
    (!is_no || has_but()).then_some(first)
}

/// Whether a word refuses a verb: `do not`, `never`.
fn says_what_is_not_done(line: &Line, without: usize) -> bool {
    line.items.get(without).is_some_and(|item| {
        let text = lower(&item.text);
        text.split(' ').next().is_some_and(|word| lexicon::means(word, Word::Modal))
            || lexicon::means(&text, Word::Negation)
    })
}

/// `washers must not be HDG`, `…, nuts not HDG`: of what comes with a bolt the finish is refused.
fn is_said_of_mates(line: &Line, without: usize) -> bool {
    let written = line.items.get(without).map_or(String::new(), |item| lower(&item.text));
    if lexicon::BUT_WITHOUT.contains(&written.as_str()) {
        return false;
    }
    let has_verb = written.split(' ').next().is_some_and(|word| lexicon::means(word, Word::Modal));
    let (mut place, mut has_mate, mut is_list) = (without, false, false);
    for _ in 0..MOST_PIECES {
        let Some(before) = line.before(place) else { break };
        place = before;
        match line.what(before) {
            // `bolts, nuts and washers must not be HDG`, `bolt with nut not HDG`: the bolt is named with them.
            Some(what) if is_named(what, BOLTS) => return false,
            Some(what) if is_named(what, MATES) => has_mate = true,
            Some(What::Filler) => {}
            Some(What::With(_) | What::Or) if has_mate => is_list = true,
            Some(What::Part(_)) if has_mate => {}
            Some(What::Without | What::Excluded) => break,
            _ if has_verb && has_mate => {}
            _ => return false,
        }
    }
    has_mate && has_bolt(line) && !is_listed_with_bolts(line, place, is_list)
}

/// So many pieces in front of a refusal are looked at.
const MOST_PIECES: usize = 16;

/// Whether a bolt stands right in front of the comma in front of a place, in a list or as all that stands there: `bolts, nuts
/// and washers`.
fn is_listed_with_bolts(line: &Line, first: usize, is_list: bool) -> bool {
    let mut place = first;
    while let Some(before) = place.checked_sub(1) {
        place = before;
        match line.what(before) {
            Some(what) if is_named(what, BOLTS) => {
                let opens = |it| matches!(line.what(it), Some(What::Part(_)));
                return is_list || line.before(before).is_none_or(opens);
            }
            Some(what) if is_named(what, MATES) => {}
            Some(What::Part(_)) => {}
            _ => return false,
        }
    }
    false
}

/// `do not ship with nuts`: without them, or apart from them.
fn with_mates(line: &mut Line, without: usize, last: Option<usize>) {
    let is_verb = last.is_none_or(|last| matches!(line.what(last), Some(What::Not(_) | What::Polite)));
    let next = line.said_behind(last.unwrap_or(without));
    let with = next.filter(|next| {
        is_verb && says_what_is_not_done(line, without) && line.what(*next) == Some(&What::With(true))
    });
    if let Some(name) = with.and_then(|with| line.behind(with)) {
        with_or_without(line, name, |line, at| line.behind(at));
    }
}

/// `not allowed: HDG`, `… , verboten feuerverzinkt`: at the head of what it says, or in front of a colon, it speaks of the
/// finish behind it.
pub(super) fn heads(line: &Line, at: usize, text: &str) -> bool {
    let Some((from, to)) = line.start(at).zip(line.end(at)) else { return false };
    let written = line.items.get(at).map_or(String::new(), |item| lower(&item.text));
    let refuses = lexicon::means(&written, Word::Refused)
        || ["not ", "nicht ", "niet ", "pas "].iter().any(|word| written.starts_with(word));
    let front = text.get(..from).unwrap_or_default().trim_end_matches([' ', '(', '-']);
    let is_head = front.is_empty() || front.ends_with(token::is_break);
    let has_a_colon = text.get(to..).is_some_and(|rest| rest.trim_start().starts_with(':'));
    // `HDG not allowed: mech galv`.
    let has_its_own = line.before(at).is_some_and(|before| line.what(before).is_some_and(is_finish));
    refuses
        && (is_head || has_a_colon && !has_its_own)
        && line.behind(at).is_some_and(|next| line.what(next).is_some_and(is_finish))
}

/// `no HDG, otherwise mech galv`: what stands behind the word is wanted.
fn is_otherwise(line: &Line, at: usize) -> bool {
    line.items
        .get(at)
        .is_some_and(|item| lexicon::OTHERWISE.iter().any(|word| lower(&item.text).ends_with(word)))
}
