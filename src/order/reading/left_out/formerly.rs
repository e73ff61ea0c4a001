//! A finish in the past: `was HDG, now plated`, `HDG was requested`.

use super::ahead::ahead;
use super::before::{WANTED, before};
use super::is_finish;
use crate::order::reading::either::process;
use crate::order::reading::items::Line;
use crate::order::reading::lexicon;
use crate::order::reading::token;
use crate::order::reading::what::What;
use crate::quantity::letters::lower;

/// `was HDG, now plated`: the finish beside the word is not wanted. With no other finish in the line nobody knows whether
/// it is wanted still, but where somebody wanted it: `HDG was requested`.
pub(super) fn formerly(line: &mut Line, at: usize, text: &str) {
    let is_behind = stands_behind_a_finish(line, at) && !is_of_the_next(line, at, text);
    let old = if is_behind { line.before(at) } else { line.said_behind(at) };
    match old.filter(|old| line.what(*old).is_some_and(is_finish)) {
        Some(old) if is_alone(line, at, old) => {
            if !is_asked(line, at, text) {
                line.not(old, WANTED);
            }
            line.binds(at);
        }
        _ if is_behind => {
            before(line, at, text);
        }
        _ => ahead(line, at, text, false),
    }
}

/// Whether no other finish takes the place of the old one: one of another process, or another class.
fn is_alone(line: &Line, at: usize, old: usize) -> bool {
    let Some(was) = line.what(old) else { return false };
    let is_another = |other: &What| match (was, other) {
        (What::Process(..), What::Coat(_)) | (What::Coat(_), What::Process(..)) => {
            process(was) != process(other)
        }
        _ => was != other,
    };
    let has_another = line.items.iter().enumerate().any(|(other, item)| {
        other != old && item.is_free() && is_finish(&item.what) && is_another(&item.what)
    });
    // `used to be HDG`: it is so no longer.
    let is_over = line.items.get(at).is_some_and(|item| lower(&item.text).starts_with("used"));
    !(has_another || is_over)
}

/// Whether somebody wanted it: `HDG was requested`; of `HDG was requested but is not needed` nobody knows.
fn is_asked(line: &Line, at: usize, text: &str) -> bool {
    let behind = line.end(at).and_then(|end| text.get(end..)).unwrap_or_default();
    let mut behind =
        token::words(behind.split(['.', ';']).next().unwrap_or_default()).take(WORDS_BEHIND).map(lower);
    behind.next().is_some_and(|word| lexicon::ASKED_FOR.contains(&word.as_str()))
        && behind.all(|word| !lexicon::UNDOES.contains(&word.as_str()))
}

/// So many words behind a finish in the past are looked at.
const WORDS_BEHIND: usize = 8;

/// `HDG was quoted`.
fn stands_behind_a_finish(line: &Line, at: usize) -> bool {
    line.before(at).and_then(|before| line.what(before)).is_some_and(is_finish)
}

/// `HDG (was: plated)`: the finish behind the word is the old one.
fn is_of_the_next(line: &Line, at: usize, text: &str) -> bool {
    let next = line.behind(at).filter(|next| line.what(*next).is_some_and(is_finish));
    let Some(behind) = next.and_then(|next| line.between(text, at, next)) else { return false };
    // `HDG (was originally plated)`; `plated was wrong HDG is right`.
    let opens =
        line.before(at).and_then(|before| line.between(text, before, at)).is_some_and(|it| it.ends_with('('));
    behind.chars().all(|c| matches!(c, ' ' | ':') || opens && c.is_alphabetic())
}
