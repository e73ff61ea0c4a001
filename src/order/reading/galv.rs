//! `galv.`: hot-dip in English, electroplated in German; the rest of the line says which.

use std::collections::HashSet;

use super::either::{self, process};
use super::items::{Item, Line};
use super::left_out::is_gone;
use super::lexicon;
use super::nouns::{BOLTS, MATES, is_named};
use super::token;
use super::what::What;
use crate::process::Process;
use crate::quantity::Length;
use crate::quantity::letters::lower;

/// No hot-dip coat of a thread is asked for so thin, nor a plated one so thick: the thickest class of ASTM B633.
const THICKEST: Length = Length::from_um(25.4);

/// Whether a word is hot-dip in one language and electroplated in the other.
pub(super) fn is_short(word: &str) -> bool {
    lexicon::GALV.contains(&lower(word).as_str())
}

/// Takes the word for electroplating where the line is German, or says of the coat what only plate has.
pub(super) fn settle(line: &mut Line, text: &str) {
    let is_one = |item: &Item, words: &[&str]| {
        matches!(item.what, What::Process(Process::HotDip, _)) && words.contains(&lower(&item.text).as_str())
    };
    let is_either = |item: &Item| is_one(item, lexicon::GALV) || is_one(item, lexicon::GALV_IN_FULL);
    let is_hot_dip = |item: &Item| !is_either(item) && process(&item.what) == Some(Process::HotDip);
    let says_hot_dip = line.items.iter().any(is_hot_dip);
    // `galvanized not ISO 4042`: what is refused right in front of it says nothing of the coat.
    let is_refused = |at: usize| {
        let mut place = line.before(at);
        while let Some(before) = place.filter(|before| line.what(*before) == Some(&What::Filler)) {
            place = line.before(before);
        }
        place.is_some_and(|before| line.what(before) == Some(&What::Without))
    };
    let is_plate = line.items.iter().enumerate().any(|(at, item)| says_plate(item) && !is_refused(at));
    let is_german = is_german(text);
    for at in 0..line.items.len() {
        let Some(item) = line.items.get(at).filter(|item| is_either(item)) else { continue };
        let is_short = is_one(item, lexicon::GALV);
        // `feuerverzinkt oder galv.`, `HDG, nicht galv.`: named beside hot-dip it is the other one.
        let near = |place: Option<usize>| place.and_then(|place| line.items.get(place));
        let before = || near(line.before(at));
        let is_joined = |or: Option<&Item>, other: Option<&Item>| {
            or.is_some_and(|or| or.what == What::Or) && other.is_some_and(is_hot_dip)
        };
        let is_other = is_short
            && (before().is_some_and(|item| item.what == What::Without)
                || is_joined(before(), near(at.checked_sub(2)))
                || is_joined(near(Some(at + 1)), near(Some(at + 2))));
        let takes = match says_hot_dip {
            true => is_other,
            false => is_plate || is_short && is_german,
        };
        if let Some(item) = line.item(at).filter(|_| takes) {
            item.what = What::Process(Process::Electroplated, false);
        }
    }
}

/// Why a word that is used of the finish that is refused, and of another, is not used.
const ANOTHER: &str =
    "which zinc, where the line refuses one by name? Write hot-dip, mechanical or electroplated";

/// `galvanized, not hot-dip`, `zinc, but no electroplating`: the word is of another process than the one that the line
/// refuses by its name.
pub(super) fn beside_refused(line: &mut Line, text: &str) {
    let several = |item: &Item| {
        let written = lower(&item.text);
        let meant = either::may_be(written.strip_prefix("zinc ").unwrap_or(&written));
        if meant.is_empty() { either::may_be(&written) } else { meant }
    };
    // In a stretch of nuts or washers alone it is their finish that is refused.
    let of = |nouns: &[&str]| -> HashSet<usize> {
        let named = line.items.iter().filter(|item| is_named(&item.what, nouns));
        named.map(|item| item.stretch).collect()
    };
    let (mates, bolts) = (of(MATES), of(BOLTS));
    let is_of_a_mate = |item: &Item| mates.contains(&item.stretch) && !bolts.contains(&item.stretch);
    let is_by_name = |item: &Item| several(item).is_empty() || lower(&item.text).starts_with("plat");
    let refused: Vec<Process> = line
        .items
        .iter()
        .enumerate()
        .filter(|(_, item)| is_gone(&item.became) && is_by_name(item) && !is_of_a_mate(item))
        // `zinc plated, not to ISO 2081`: a document that is refused refuses no process.
        .filter(|(at, item)| !matches!(item.what, What::Coat(_)) && !is_behind_a_mate(line, *at))
        .filter_map(|(_, item)| process(&item.what))
        .collect();
    if refused.is_empty() {
        return;
    }
    // `was HDG, now galv mech`: what is wanted by its name says which zinc it is.
    let wanted: Vec<Process> = line
        .items
        .iter()
        .filter(|item| item.is_free() && is_by_name(item))
        .filter_map(|item| process(&item.what).filter(|process| !refused.contains(process)))
        .collect();
    let is_plate = line.items.iter().any(says_plate) || is_german(text);
    for item in line.items.iter_mut().filter(|item| item.is_free()) {
        let is_refused = process(&item.what).is_some_and(|own| refused.contains(&own));
        let meant = several(item);
        if !is_refused || meant.is_empty() || meant.iter().any(|process| wanted.contains(process)) {
            continue;
        }
        let is_plated = is_plate
            && lexicon::GALV.contains(&lower(&item.text).as_str())
            && !refused.contains(&Process::Electroplated);
        item.what = match is_plated {
            true => What::Process(Process::Electroplated, false),
            false => What::Not(ANOTHER.into()),
        };
    }
}

/// `galvanized bolts with plain nuts not HDG`: right behind the name of what comes with the part.
fn is_behind_a_mate(line: &Line, at: usize) -> bool {
    let mut place = at;
    while let Some(before) = line.before(place) {
        place = before;
        match line.what(before) {
            Some(What::Filler | What::Without) => {}
            Some(what) => return is_named(what, MATES),
            None => return false,
        }
    }
    false
}

/// What only plated zinc has: a chromate, so thin a coat, a code or a document of plate.
fn says_plate(item: &Item) -> bool {
    match &item.what {
        What::Not(why) => why == lexicon::COLOUR,
        What::Thickness(wanted) => wanted.solid().um() <= THICKEST.um(),
        What::Zinc(um, ..) => f64::from(*um) <= THICKEST.um(),
        What::Coat(_) => process(&item.what) == Some(Process::Electroplated),
        _ => false,
    }
}

/// Words that only German has, by how they begin; those in full are short.
fn is_german(text: &str) -> bool {
    let lowered = lower(text);
    token::words(&lowered).any(|word| {
        lexicon::GERMAN.contains(&word)
            || lexicon::GERMAN_BEGINS.iter().any(|begin| word.starts_with(begin))
            || lexicon::GERMAN_HOLDS.iter().any(|part| word.contains(part))
    })
}
