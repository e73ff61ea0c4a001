//! What a part joins: its finish is none that is asked of the part.

mod metal;

pub(super) use metal::{around, contact, is_metal, is_thing, thing};

use super::items::Line;
use super::left_out::is_finish;
use super::lexicon;
use super::what::What;
use crate::quantity::letters::lower;

/// `bolts for HDG structure`, `to suit galvanised beams`: the finish of what the part joins is not asked of it.
pub(super) fn settle(line: &mut Line, text: &str) {
    for at in 0..line.items.len() {
        finish(line, at, text);
        metal::settle(line, at, text);
        made_for(line, at, text);
    }
}

/// `for timber`, `for solar panel frames`: what it goes into or joins, and no name of a part, where none follows.
fn made_for(line: &mut Line, at: usize, text: &str) {
    let is_thing = |at: usize| {
        line.what(at) == Some(&What::Part("?"))
            && line
                .items
                .get(at)
                .is_some_and(|item| lexicon::SURROUNDINGS.contains(&lower(&item.text).as_str()))
    };
    let end = line.items.get(at).and_then(|item| item.spans.last()).map(|span| span.end);
    let is_named = matches!(line.what(at + 1), Some(What::Part(_)))
        && end.zip(line.items.get(at + 1).and_then(|next| next.spans.first())).is_some_and(|(end, next)| {
            text.get(end..next.start).is_some_and(|gap| gap.chars().all(|c| matches!(c, ' ' | '-')))
        });
    if !is_thing(at) || is_named {
        return;
    }
    // A word that names nothing by itself may stand between: `for solar panel`.
    let mut word = line.before(at);
    while let Some(other) = word.filter(|word| line.what(*word) == Some(&What::Not("".into()))) {
        word = line.before(other);
    }
    let is_into = |at: usize| {
        line.items.get(at).is_some_and(|item| lexicon::PUT_ON.contains(&lower(&item.text).as_str()))
    };
    if word.is_some_and(|word| line.says_for(word) || is_into(word))
        && let Some(item) = line.item(at)
    {
        item.what = What::Not(lexicon::JOINT.into());
    }
}

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
    let start = line.items.get(at).and_then(|item| item.spans.first()).map(|span| span.start);
    let front = start.and_then(|start| text.get(..start)).unwrap_or_default();
    let says_joins = says_joins(front);
    let Some(word) = word else { return };
    let is_onto = line
        .items
        .get(word)
        .is_some_and(|item| matches!(lower(&item.text).as_str(), "on" | "to" | "an" | "auf"));
    let end = line.items.get(at).and_then(|item| item.spans.last()).map(|span| span.end);
    let rest = end.and_then(|end| text.get(end..)).unwrap_or_default();
    let is_for = line.says_for(word);
    let is_joined = near(rest.split([' ', '-']), |word| {
        lexicon::JOINED.contains(&word) || is_for && matches!(word, "steel" | "stahl" | "steels")
    });
    if (is_for || is_onto || says_joins) && is_joined {
        line.not(at, "the finish of what it joins, and none that is asked of the part itself");
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
