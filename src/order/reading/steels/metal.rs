//! A steel that zinc goes on beside one that it does not: `8.8 A4-70`, `A574 stainless`.

use std::ops::Range;

use super::super::Became;
use super::super::items::Line;
use super::super::joined;
use super::super::lexicon;
use super::super::part::{Scope, Scopes};
use super::super::token;
use super::super::what::{SteelWord, What};
use crate::quantity::letters::lower;
use crate::steel::Grade;

/// `8.8 A4-70`, `8.8 stainless`: of the two none is taken, and the line asks which; what the part only touches, and what
/// words that nobody knows stand beside, is none of them. Says whether it asks.
pub(super) fn or_another_metal(line: &mut Line, scopes: &Scopes, text: &str) -> bool {
    if line.draft.get("steel").and_then(Grade::of_key).is_none() {
        return false;
    }
    let metal = (0..line.items.len()).find(|at| {
        line.what(*at) == Some(&What::Steel(SteelWord::OtherMetal))
            && scopes.beside(*at) == Scope::Part
            && is_of_the_part(line, scopes, *at, text)
    });
    let Some(metal) = metal else { return false };
    let is_steel = |at: &usize| {
        let became = line.items.get(*at).and_then(|item| item.became.as_ref());
        matches!(line.what(*at), Some(What::Steel(_) | What::Class(_) | What::Bare(_)))
            && matches!(became, Some(Became::Used(fields, _)) if fields.contains(&"steel"))
    };
    let steels: Vec<usize> = (0..line.items.len()).filter(is_steel).collect();
    let name = |at: usize| line.items.get(at).map_or("", |item| item.text.as_str());
    let Some(steel) = steels.first().map(|at| name(*at)) else { return false };
    let why =
        format!("one of two: {steel} or {}? Write the one; no zinc goes on the other metal", name(metal));
    for at in steels.into_iter().chain([metal]) {
        line.not(at, why.clone());
    }
    line.take_back(&["steel"]);
    true
}

/// Whether a metal is that of the part: it stands between pieces of the order, with no word in front that says on what or
/// for what the part is, and no other thing behind.
fn is_of_the_part(line: &Line, scopes: &Scopes, at: usize, text: &str) -> bool {
    let Some(item) = line.items.get(at).filter(|item| item.is_free()) else { return false };
    let first = item.text.split([' ', '-']).next().map(lower).unwrap_or_default();
    let Some(Range { start, end }) = line.span(at).filter(|_| joined::is_metal(&first)) else { return false };
    // `in contact with C3 stainless`: a piece may stand between.
    let front: String = text.get(..start).unwrap_or_default().chars().rev().take(REACH).collect();
    let front = lower(&front.chars().rev().collect::<String>());
    if lexicon::NO_STEELS.contains(&first.as_str())
        || lexicon::TOUCHES.iter().any(|word| front.contains(word))
    {
        return false;
    }
    let (before, behind) = (line.before(at), line.behind(at));
    let from = at.checked_sub(1).and_then(|before| line.end(before)).unwrap_or_default();
    let until = line.start(at + 1).unwrap_or(text.len());
    // A class of strength is of no sheet and no hopper.
    let has_strength = item.text.split([' ', '-']).nth(1).is_some_and(|class| class.parse::<u16>().is_ok());
    // A word that nobody knows stands on the same side of a comma.
    let has_words = |gap: Option<&str>| gap.is_some_and(|gap| gap.chars().any(char::is_alphanumeric));
    let gap = text.get(from..start).map(|gap| gap.rsplit(token::is_break).next().unwrap_or(gap));
    let is_led = !has_strength && has_words(gap)
        || before.and_then(|before| Some((before, line.what(before)?))).is_some_and(|(before, what)| {
            match what {
                What::Filler | What::With(true) | What::Without | What::Not(_) | What::Around(_) => true,
                What::Part(_) => !scopes.names.contains(&before),
                _ => false,
            }
        });
    let gap = text.get(end..until).map(|gap| gap.split(token::is_break).next().unwrap_or(gap));
    // `brass plated`, `aluminium finish`: a coat.
    let is_coat = text.get(end..).is_some_and(|rest| {
        let rest: String = rest.trim_start_matches([' ', '-']).chars().take(LONGEST_BEGIN).collect();
        let rest = lower(&rest);
        lexicon::OF_A_FINISH.iter().any(|word| rest.starts_with(word))
    });
    let is_followed = has_words(gap)
        || is_coat
        || behind.and_then(|behind| Some((behind, line.what(behind)?))).is_some_and(|(behind, what)| {
            match what {
                What::Part(_) => !scopes.names.contains(&behind),
                what => matches!(what, What::Not(_) | What::Around(_) | What::Place(_)),
            }
        });
    !is_led && (has_strength || !is_followed)
}

/// How far in front of a metal a word says that the part touches it, in letters.
const REACH: usize = 40;

/// The letters that are looked at behind a metal.
const LONGEST_BEGIN: usize = 8;
