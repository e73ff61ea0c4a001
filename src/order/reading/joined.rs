//! What a part joins or is made for: its finish is none that is asked of the part, nor is its name.

mod made_for;
mod metal;

pub(super) use metal::{around, contact, is_metal, is_thing, thing};

use super::items::Line;
use super::left_out::is_finish;
use super::lexicon;
use crate::quantity::letters::lower;

/// `bolts for HDG structure`, `to suit galvanised beams`: the finish of what the part joins is not asked of it.
pub(super) fn settle(line: &mut Line, text: &str) {
    for at in 0..line.items.len() {
        finish(line, at, text);
        metal::settle(line, at, text);
    }
    made_for::settle(line, text);
}

/// Why the finish of what a part joins is not used.
const OF_WHAT_IT_JOINS: &str = "the finish of what it joins, and none that is asked of the part itself";

fn finish(line: &mut Line, at: usize, text: &str) {
    if !line.items.get(at).is_some_and(|item| item.is_free() && is_finish(&item.what)) {
        return;
    }
    // `for the galvanised beams`, `on galvanised purlins`.
    let mut word = line.before(at);
    while let Some(article) = word.filter(|word| {
        line.items.get(*word).is_some_and(|item| {
            matches!(
                lower(&item.text).as_str(),
                "the" | "a" | "an" | "our" | "your" | "die" | "den" | "das" | "existing" | "new"
            )
        })
    }) {
        word = line.before(article);
    }
    // `connecting galvanised beams`.
    let start = line.start(at);
    let front = start.and_then(|start| text.get(..start)).unwrap_or_default();
    let says_joins = says_joins(front);
    let Some(word) = word else { return };
    let is_onto = line
        .items
        .get(word)
        .is_some_and(|item| matches!(lower(&item.text).as_str(), "on" | "to" | "an" | "auf"));
    let end = line.end(at);
    let rest = end.and_then(|end| text.get(end..)).unwrap_or_default();
    let is_for = line.says_for(word);
    let is_joined = near(rest.split([' ', '-']), |word| {
        lexicon::JOINED.contains(&word) || is_for && matches!(word, "steel" | "stahl" | "steels")
    });
    if (is_for || is_onto || says_joins) && is_joined {
        line.not(at, OF_WHAT_IT_JOINS);
    }
}

/// `connecting galvanised beams`: whether such a word stands in front.
fn says_joins(front: &str) -> bool {
    near(front.rsplit([' ', '-']), |word| lexicon::JOINS.contains(&word))
}

/// Whether one of these words comes first, but for words that nobody knows, which may stand anywhere.
fn near<'a>(words: impl Iterator<Item = &'a str>, is_one: impl Fn(&str) -> bool) -> bool {
    for written in words {
        let word: String = lower(written).chars().take_while(|c| c.is_alphabetic()).collect();
        if is_one(&word) {
            return true;
        }
        let ends = word.chars().count() < written.chars().count();
        if ends || !word.is_empty() && lexicon::knows(&word) {
            return false;
        }
    }
    false
}
