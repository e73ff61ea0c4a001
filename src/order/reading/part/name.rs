//! The names of parts in a line, word by word, and the one that the line is about.

use super::Family;
use crate::order::reading::items::Line;
use crate::order::reading::lexicon::KINDS;
use crate::order::reading::what::What;

/// A name of a part in the line.
#[derive(Debug, Clone, Default)]
pub(super) struct Name {
    pub words: Vec<&'static str>,
    pub items: Vec<usize>,
    pub noun: Option<Family>,
    /// `Some(true)` behind `with`, `Some(false)` behind `and`.
    pub with: Option<bool>,
    pub stretch: usize,
}

/// Words that need not be there, and need not fit: they are named where they do not.
pub(super) const SOFT: &[&str] =
    &["uss", "sae", "plain", "round", "flat", "threaded", "full-thread", "part-thread", "heavy"];
/// Nouns of one word that say no more than what the part is for.
pub(super) const BARE: &[&str] = &["bolt", "screw", "schraube", "nut", "washer", "ring", "pin"];

/// The names of parts, one after the other.
pub(super) fn names(line: &Line) -> Vec<Name> {
    let noun = |words: &str| {
        words.split(' ').find_map(|word| match word {
            "bolt" | "screw" | "schraube" | "rod" | "stud" | "u-bolt" | "ring" | "pin" => Some(Family::Bolt),
            "nut" => Some(Family::Nut),
            "washer" => Some(Family::Washer),
            _ => None,
        })
    };
    // Whether a noun follows before the stretch ends or another part begins.
    let mut ahead = vec![false; line.items.len() + 1];
    for (at, item) in line.items.iter().enumerate().rev() {
        let next = line.items.get(at + 1).is_some_and(|next| next.stretch == item.stretch)
            && ahead.get(at + 1) == Some(&true);
        let is = match &item.what {
            What::Part(words) if item.is_free() => noun(words).is_some() || next,
            What::With(_) => false,
            // `nuts hex to suit bolts`: what follows is what it is for.
            _ => next && !line.says_for(at),
        };
        if let Some(ahead) = ahead.get_mut(at) {
            *ahead = is;
        }
    }
    let mut names: Vec<Name> = Vec::new();
    let mut open = false;
    let (mut with, mut stretch, mut brings) = (None, 0, false);
    for (at, item) in line.items.iter().enumerate() {
        if item.stretch != stretch {
            (with, stretch, open, brings) = (None, item.stretch, false, false);
        }
        match &item.what {
            What::With(strong) => {
                // Behind `with`, `and` goes on with what comes with the part.
                brings |= *strong;
                (with, open) = (Some(brings), false);
            }
            What::Part(words) if item.is_free() => {
                let own = noun(words);
                let follows = ahead.get(at + 1) == Some(&true)
                    && line.items.get(at + 1).is_some_and(|next| next.stretch == stretch);
                let touches = names.last().is_some_and(|last| {
                    last.items.last() == at.checked_sub(1).as_ref() && last.stretch == stretch
                });
                let trails = own.is_none()
                    && !follows
                    && touches
                    && names.last().is_some_and(|last| last.noun.is_some());
                let goes_on = open && names.last().is_some_and(|last| last.noun.is_none());
                if !trails && !goes_on {
                    names.push(Name { with: with.take(), stretch, ..Name::default() });
                }
                if let Some(last) = names.last_mut() {
                    add(&mut last.words, words.split(' '));
                    last.items.push(at);
                    last.noun = last.noun.or(own);
                }
                open = true;
            }
            _ => {}
        }
    }
    names
}

/// Each word once: a name does not grow with the line.
fn add(words: &mut Vec<&'static str>, more: impl Iterator<Item = &'static str>) {
    for word in more {
        if !words.contains(&word) {
            words.push(word);
        }
    }
}

/// The name that the line is about: a bolt before a nut or a washer; a name with more than its noun first.
pub(super) fn main_of(names: &[Name]) -> Option<usize> {
    let find = |is: &dyn Fn(&Name) -> bool| {
        (0..names.len()).find(|at| !is_its_pin(names, *at) && names.get(*at).is_some_and(is))
    };
    let says_more =
        |name: &Name| !(name.words.len() == 1 && name.words.iter().all(|word| BARE.contains(word)));
    // `nuts … heavy hex`: such words may belong to a nut or washer that is named.
    let joins_other = |loose: &Name| {
        names.iter().any(|name| {
            let mut words = name.words.clone();
            add(&mut words, loose.words.iter().copied());
            matches!(name.noun, Some(Family::Nut | Family::Washer))
                && name.with != Some(true)
                // The marks HV and HR are those of a bolt by itself.
                && !loose.words.iter().any(|word| matches!(*word, "HV" | "HR"))
                && kind_of(&words).is_some()
        })
    };
    let loose_part =
        |name: &Name| name.noun.is_none() && kind_of(&name.words).is_some() && !joins_other(name);
    let unknown = |name: &Name| {
        name.noun.is_none() && (name.words.contains(&"?") || name.words == ["anchor"]) && name.with.is_none()
    };
    find(&|name| name.noun == Some(Family::Bolt) && says_more(name))
        .or_else(|| find(&|name| name.noun == Some(Family::Bolt)))
        .or_else(|| find(&loose_part))
        .or_else(|| find(&|name| name.noun.is_some() && name.with != Some(true) && says_more(name)))
        .or_else(|| find(&|name| name.noun.is_some() && name.with != Some(true)))
        .or_else(|| find(&unknown))
}

/// `castle nuts with split pins`, `bolts drilled for cotter pins`: a pin that secures the part named before it.
pub(super) fn is_its_pin(names: &[Name], at: usize) -> bool {
    let is_pin = |name: &Name| matches!(name.words.as_slice(), ["cotter" | "spring", "pin"]);
    // `pins, cotter`: a pin without more is the same one.
    let is_other = |name: &Name| name.noun.is_some() && !is_pin(name) && name.words != ["pin"];
    names.get(at).is_some_and(|name| {
        is_pin(name)
            && (name.with == Some(true) || names.get(..at).is_some_and(|before| before.iter().any(is_other)))
    })
}

/// Words without a noun belong to the part that the line is about, if there is a part of that name.
pub(super) fn join_loose(line: &mut Line, names: &mut [Name], main: usize) {
    for at in 0..names.len() {
        let Some(loose) = names.get(at).filter(|name| at != main && name.noun.is_none()).cloned() else {
            continue;
        };
        let Some(about) = names.get_mut(main) else { return };
        let mut words = about.words.clone();
        add(&mut words, loose.words.iter().copied());
        // What a part goes into is not what it is.
        let is_into = loose.words.iter().all(|word| matches!(*word, "wood" | "chipboard" | "concrete"));
        let is_soft =
            is_into || loose.words.iter().all(|word| SOFT.contains(word) || matches!(*word, "?" | "head"));
        // `screws for wood`, but no other part for it; `bolts for a flange` are no flange bolts.
        let is_bare = matches!(about.words.as_slice(), ["screw" | "schraube"]);
        let is_for = loose.items.first().and_then(|at| line.before(*at)).is_some_and(|at| line.says_for(at));
        let joins = kind_of(&words).is_some() && if is_into { is_bare } else { !is_for };
        let is_soft = is_soft || is_for;
        if joins || !is_soft {
            about.words = words;
            about.items.extend(&loose.items);
        } else {
            let why = if is_for { "what it is for is not judged" } else { "" };
            loose.items.iter().for_each(|at| line.not(*at, why));
        }
        if let Some(name) = names.get_mut(at) {
            name.items.clear();
        }
    }
}

/// The key of the kind of that name.
pub(super) fn kind_of(words: &[&'static str]) -> Option<&'static str> {
    let fits = |needed: &str, may: &str, words: &[&str]| {
        needed.split(' ').all(|word| words.contains(&word))
            && words.iter().all(|word| needed.split(' ').chain(may.split(' ')).any(|own| own == *word))
    };
    let best = |words: &[&str]| {
        let rows = KINDS.iter().filter(|(_, needed, may)| fits(needed, may, words));
        rows.max_by_key(|(_, needed, _)| needed.split(' ').count()).map(|(key, ..)| *key)
    };
    best(words)
}
