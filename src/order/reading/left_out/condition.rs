//! What is not wanted on a condition alone: `if HDG is not possible, mech galv`.

use super::is_finish;
use crate::order::reading::items::Line;
use crate::order::reading::lexicon;
use crate::order::reading::what::{SteelWord, What};
use crate::order::reading::{Piece, either};
use crate::quantity::letters::lower;

/// `if HDG is not possible, mech galv`, `mech galv if HDG is not allowed`, `if no HDG then mech`: on a condition
/// nothing is left out, and another finish is wanted only where that one does not suit.
pub(super) fn on_a_condition(line: &mut Line, at: usize, text: &str, unknown: &[Piece]) -> bool {
    let is_filler = |line: &Line, at: usize| matches!(line.what(at), Some(What::Filler | What::Or));
    let is_finish = |line: &Line, at: usize| {
        line.items.get(at).is_some_and(|item| item.is_free() && is_finish(&item.what))
    };
    // The stretch in which the word for the condition stands: beside the finish, or between it and what excludes it.
    let (finish, first) = match line.what(at) {
        Some(What::Excluded) => {
            let Some(finish) = (0..at).rev().find(|place| !is_filler(line, *place)) else { return false };
            (finish, finish)
        }
        Some(What::Without) => {
            let Some(finish) = (at + 1..line.items.len()).find(|place| !is_filler(line, *place)) else {
                return false;
            };
            (finish, at)
        }
        _ => return false,
    };
    let steel = |line: &Line, at: usize| match &line.items.get(at).filter(|item| item.is_free())?.what {
        What::Steel(SteelWord::Grade(grade)) => Some(*grade),
        _ => None,
    };
    // `if 10.9 is not available, 8.8`: with another grade it is one of two, and the line asks which.
    let is_one_of_two = steel(line, finish).is_some_and(|own| {
        (0..line.items.len()).filter_map(|place| steel(line, place)).any(|other| {
            other != own && other.is_nut() == own.is_nut() && other.is_washer() == own.is_washer()
        })
    });
    let is_sought = is_one_of_two || is_finish(line, finish);
    let Some(excluded) = line.start(at).filter(|_| is_sought) else { return false };
    let mut begin = first;
    while let Some(before) = begin.checked_sub(1).filter(|before| is_filler(line, *before)) {
        begin = before;
    }
    let from = begin.checked_sub(1).and_then(|before| line.end(before)).unwrap_or(0);
    let until = line.start(first).unwrap_or(excluded);
    let is_near = |from: usize, to: usize| {
        text.get(from..to)
            .is_some_and(|gap| gap.chars().all(|c| c.is_alphanumeric() || matches!(c, ' ' | '-' | '/' | '(')))
    };
    let is_conditional = unknown.iter().any(|word| {
        let is_before = from <= word.span.start && word.span.end <= until && is_near(word.span.end, until);
        let is_between =
            until <= word.span.start && word.span.end <= excluded && is_near(word.span.end, excluded);
        (is_before || is_between) && lexicon::CONDITIONS.contains(&lower(&word.text).as_str())
    });
    if !is_conditional {
        return false;
    }
    if is_one_of_two {
        line.binds(at);
        return true;
    }
    // What stands on the condition is wanted first.
    let others = (0..line.items.len()).filter(|place| *place != finish && is_finish(line, *place));
    let named: Vec<usize> = std::iter::once(finish).chain(others).collect();
    if either::any_of(line, named, true, &[]) {
        line.binds(at);
    } else {
        line.not(at, "a condition: which finish is wanted then?");
    }
    true
}
