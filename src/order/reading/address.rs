//! Words for places in addresses and in names of firms: they say nothing of where the part stands.

use super::items::Line;
use super::lexicon::{self, NO_PLACE, Word};
use super::token;
use super::what::What;
use crate::quantity::letters::lower;

/// Names such words.
pub(super) fn settle(line: &mut Line, text: &str) {
    for at in 0..line.items.len() {
        let is_process = matches!(line.what(at), Some(What::Process(..)));
        if !is_process && !matches!(line.what(at), Some(What::Place(_) | What::Around(_))) {
            continue;
        }
        let Some(item) = line.items.get(at) else { continue };
        let (Some(first), Some(last)) = (item.spans.first(), item.spans.last()) else { continue };
        let is_comma = |c: char| matches!(c, ',' | ';' | '\n' | '\t' | '|');
        let (before, behind) = token::beside(text, first.start..last.end, FARTHEST);
        let before = before.rsplit(is_comma).next().unwrap_or_default();
        let behind = behind.split(is_comma).next().unwrap_or_default();
        let has_number = has_number(behind);
        let (mut before, behind) =
            (words(before.rsplit(' ').take(MOST_BEFORE)), words(behind.split(' ').take(4)));
        before.reverse();
        if is_process {
            if names_a_firm(&item.text, &before, &behind) {
                line.not(at, "of a name");
            }
            continue;
        }
        let streets = is_address(&item.text, &before, &behind, has_number);
        let Some(taken) = streets else { continue };
        line.not(at, NO_PLACE);
        // `Industrial Park Rd`: nor are those the name of a part.
        for behind in at + 1..=at + taken {
            let is_of_it = line.items.get(behind).is_some_and(|item| {
                let word = lower(&item.text);
                lexicon::OF_A_FIRM.contains(&word.as_str()) || lexicon::STREETS.contains(&word.as_str())
            });
            if is_of_it && line.before(behind).is_some() {
                line.not(behind, NO_PLACE);
            }
        }
    }
}

/// `for Galvan GmbH`, `site Zinc Lane`: a word for a process in the name of a firm or of a street, and no coat. Such a name
/// stands at the head of its stretch or behind a word for whom or where; `Bolts Galv Inc Nut` is a title.
fn names_a_firm(process: &str, before: &[&str], behind: &[&str]) -> bool {
    let is_led = before.last().is_none_or(|word| lexicon::IN_FRONT_OF_NAMES.contains(&lower(word).as_str()));
    is_led
        && is_name(process)
        && behind.first().is_some_and(|next| {
            let lowered = lower(next);
            let is_street =
                || lexicon::STREETS.contains(&lowered.as_str()) && is_name(next) && !lexicon::knows(&lowered);
            lexicon::OF_A_FIRM.contains(&lowered.as_str()) || is_street()
        })
}

/// Whether a street stands here with the number of a house right behind it: `inland access road 20 years` has none.
fn has_number(behind: &str) -> bool {
    let mut words = behind.split_whitespace();
    words.next().is_some_and(|word| lexicon::STREETS.contains(&lower(word).as_str()))
        && words.next().is_some_and(|word| word.bytes().all(|byte| byte.is_ascii_digit()))
        // `coastal road 20 years`: nor has this, and a word that nobody knows changes nothing.
        && !words.take(2).any(|word| lexicon::means(&lower(word), Word::Years))
}

/// The most words between what says that an address follows and the word for a place in it.
const MOST_BEFORE: usize = 8;

/// So many letters on either side are looked at: more than an address has.
const FARTHEST: usize = 240;

/// Words without the marks around them, and without those that mean nothing: they part no name.
fn words<'a>(text: impl Iterator<Item = &'a str>) -> Vec<&'a str> {
    text.map(|word| word.trim_matches(|c: char| !c.is_alphanumeric()))
        .filter(|word| !word.is_empty() && !means_nothing(word))
        .collect()
}

/// Whether a word is none of an address, nor written as a name, and nobody knows it.
fn means_nothing(word: &str) -> bool {
    let mut phrases =
        [lexicon::ADDRESSED, lexicon::FIRMS, lexicon::OF_A_FIRM, lexicon::STREETS].into_iter().flatten();
    let mut is_listed = || phrases.any(|phrase| phrase.split(' ').any(|it| it == word));
    word.chars().all(char::is_lowercase) && !lexicon::knows(word) && !is_listed()
}

/// Whether a word for a place stands in an address or a name, and how many words behind it may be of that.
fn is_address(place: &str, before: &[&str], behind: &[&str], has_number: bool) -> Option<usize> {
    let spoken = format!(" {} ", lower(&before.join(" ")));
    let says = |phrases: &[&str]| phrases.iter().any(|phrase| spoken.contains(&format!(" {phrase} ")));
    if says(lexicon::ADDRESSED) || is_name(place) && says(lexicon::FIRMS) {
        return Some(2);
    }
    let follows =
        |at: usize, words: &[&str]| behind.get(at).is_some_and(|word| words.contains(&lower(word).as_str()));
    let is_name_at = |at: usize| behind.get(at).is_some_and(|word| is_name(word));
    let is_street =
        follows(0, lexicon::STREETS) && is_name(place) && is_name_at(0) || has_number && !is_name_at(0);
    let lowered = lower(place);
    let begins = is_name(place)
        && lexicon::BEGIN_NAMES.contains(&lowered.as_str())
        && is_name_at(0)
        && behind.first().is_some_and(|word| !lexicon::knows(&lower(word)));
    let ends = lexicon::END_NAMES.contains(&lowered.as_str())
        && before.last().is_some_and(|word| {
            let known = lower(word);
            let is_free =
                !lexicon::knows(&known) || matches!(known.as_str(), "long" | "new" | "old" | "gold");
            is_free && is_name(word) && is_name(place)
        });
    let is_firm =
        follows(0, lexicon::OF_A_FIRM) || is_name(place) && is_name_at(0) && follows(1, lexicon::OF_A_FIRM);
    (is_firm || is_street || begins || ends).then_some(2)
}

/// `Harbour`, neither `harbour` nor `HARBOUR`.
fn is_name(word: &str) -> bool {
    let mut letters = word.chars();
    letters.next().is_some_and(char::is_uppercase) && letters.next().is_some_and(char::is_lowercase)
}
