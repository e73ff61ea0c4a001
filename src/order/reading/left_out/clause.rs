//! What is refused on a condition, or of what lacks something: `nuts will be rejected if not tapped over`, `bolts, which are
//! not HDG, will be rejected`.

use std::ops::Range;

use super::ahead::heads;
use super::before::holds_a_relative;
use super::mate::{has_bolt, is_named_elsewhere};
use super::of_parts::forbids;
use super::verb::{ONLY_THERE, TWICE};
use super::{MATES, WITH_OR_WITHOUT, can_be_left_out, is_finish, is_named, is_place, is_small};
use crate::order::reading::Piece;
use crate::order::reading::items::Line;
use crate::order::reading::lexicon;
use crate::order::reading::nouns::BOLTS;
use crate::order::reading::token;
use crate::order::reading::what::What;
use crate::quantity::letters::lower;

/// So many letters in front of a finish are looked at.
const FARTHEST: usize = 80;

/// The places of what a refusal with such a clause leaves open, each with its question: what the clause denies is wanted. A
/// finish in front of it is refused all the same: `HDG not permitted unless approved`.
pub(super) fn on_a_clause(line: &Line, text: &str, unknown: &[Piece]) -> Vec<(usize, &'static str)> {
    let mut doubted = Vec::new();
    for at in (0..line.items.len()).filter(|at| forbids(line, *at)) {
        if is_of_a_finish(line, at) {
            continue;
        }
        if let Some((clause, is_unless)) = condition_behind(line, at, text, unknown) {
            // `HDG, not accepted if plated`: with nothing in front of it what is behind it is refused.
            if !is_unless && heads(line, at, text) && !denies(line, at, &clause) {
                continue;
            }
            doubted.push((at, ONLY_THERE));
            // `washers are rejected unless hardened`: are there any?
            let mate =
                line.before(at).filter(|before| line.what(*before).is_some_and(|what| is_named(what, MATES)));
            let only = mate.filter(|mate| has_bolt(line) && !is_named_elsewhere(line, *mate));
            doubted.extend(only.map(|mate| (mate, WITH_OR_WITHOUT)));
            doubted.extend(said_in(line, at, &clause, is_unless));
        } else if let Some(not) = denied_in_front(line, at, text) {
            doubted.extend([(not, TWICE), (at, TWICE)]);
        }
    }
    doubted
}

/// Whether a refusal is of a finish in front of it, and not of the nuts or the washers alone.
fn is_of_a_finish(line: &Line, at: usize) -> bool {
    let (mut place, mut has_bolt, mut has_mate) = (at, false, false);
    for _ in 0..MOST_WORDS {
        let Some(before) = line.before(place) else { return false };
        place = before;
        match line.what(before) {
            Some(What::Without | What::Excluded) => return false,
            Some(what) if is_named(what, MATES) => has_mate = true,
            Some(what) if is_named(what, BOLTS) => has_bolt = true,
            Some(what) if is_finish(what) => return has_bolt || !has_mate,
            _ => {}
        }
    }
    false
}

/// Whether a clause denies something.
fn denies(line: &Line, at: usize, clause: &Range<usize>) -> bool {
    (at + 1..line.items.len())
        .take_while(|place| line.start(*place).is_some_and(|start| start < clause.end))
        .any(|place| line.what(place) == Some(&What::Without))
}

/// The clause behind a refusal that says on which condition, with a comma between or none, and whether it says `unless`.
fn condition_behind(line: &Line, at: usize, text: &str, unknown: &[Piece]) -> Option<(Range<usize>, bool)> {
    let end = line.end(at)?;
    let next = line.start(at + 1).unwrap_or(text.len());
    // Words that nobody knows may stand in front of it; `not allowed if possible` has a piece of its own.
    let first = unknown.partition_point(|piece| piece.span.start < end);
    let mut between = unknown.iter().skip(first).take(MOST_WORDS).take_while(|piece| piece.span.start < next);
    let from = between.find(|piece| lexicon::CONDITIONS.contains(&lower(&piece.text).as_str()))?;
    let front = text.get(end..from.span.start)?;
    let is_near =
        front.chars().filter(|c| token::is_break(*c)).count() <= 1 && !front.contains(['.', ':', '(']);
    let start = from.span.start;
    let clause = text.get(start..).and_then(|clause| clause.split(token::is_break).next())?;
    is_near.then(|| (start..start + clause.len(), lower(&from.text) == "unless"))
}

/// So many words that nobody knows stand between a refusal and its condition.
const MOST_WORDS: usize = 8;

/// What a clause says of the part: where it denies a finish, that one is wanted; else nobody knows.
fn said_in(line: &Line, at: usize, clause: &Range<usize>, is_unless: bool) -> Vec<(usize, &'static str)> {
    let mut doubted = Vec::new();
    let mut is_denied = is_unless;
    for place in at + 1..line.items.len() {
        match line.start(place) {
            Some(start) if start < clause.start => continue,
            Some(start) if start < clause.end => {}
            _ => break,
        }
        match line.what(place) {
            Some(What::Without) => {
                doubted.push((place, TWICE));
                is_denied = !is_unless;
            }
            Some(what) if is_finish(what) && is_denied => is_denied = is_unless,
            Some(What::Part(_) | What::Not(_)) => {}
            Some(what) if is_place(what) => {}
            Some(what) if can_be_left_out(what) || *what == What::StandardNut => doubted.push((place, TWICE)),
            _ => {}
        }
    }
    doubted
}

/// `bolts, which are not HDG, will be rejected`, `if not HDG, bolts will be rejected`: the word that denies a finish at the end
/// of the stretch in front of a refusal of parts.
fn denied_in_front(line: &Line, at: usize, text: &str) -> Option<usize> {
    let mut first = at;
    while let Some(before) = line.before(first) {
        if !is_small(line, before) {
            return None;
        }
        first = before;
    }
    let last = first.checked_sub(1)?;
    let finish = if line.what(last) == Some(&What::Filler) { line.said_before(last)? } else { last };
    line.what(finish).filter(|what| is_finish(what))?;
    let not = line.said_before(finish)?;
    let start = line.start(not).filter(|_| line.what(not) == Some(&What::Without))?;
    let (front, _) = token::near(text, start..start, FARTHEST);
    let is_condition = |word: &str| lexicon::CONDITIONS.contains(&lower(word).as_str());
    let opens = holds_a_relative(front) || token::words(front).any(is_condition);
    opens.then_some(not)
}
