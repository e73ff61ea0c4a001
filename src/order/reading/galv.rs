//! `galv.`: hot-dip in English, electroplated in German; the rest of the line says which.

use super::either::process;
use super::items::{Item, Line};
use super::lexicon;
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
    let is_plate = line.items.iter().any(says_plate);
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
    lowered.split(|c: char| !c.is_alphabetic()).filter(|word| !word.is_empty()).any(|word| {
        lexicon::GERMAN.contains(&word)
            || lexicon::GERMAN_BEGINS.iter().any(|begin| word.starts_with(begin))
            || lexicon::GERMAN_HOLDS.iter().any(|part| word.contains(part))
    })
}
