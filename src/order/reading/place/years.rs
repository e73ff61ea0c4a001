//! How long the coat is to last.

use crate::order::reading::items::Line;
use crate::order::reading::lexicon::{self, NO_LIFE, Word};
use crate::order::reading::what::What;
use crate::quantity::letters::lower;

/// The years of the line. Two that differ are asked, and none is taken, but where one of them alone stands beside a word
/// for the life of a coat.
pub(super) fn settle(line: &mut Line, text: &str) {
    let found = line.free(|what| match what {
        What::Years(text) => Some(text.clone()),
        _ => None,
    });
    let (no_life, years): (Vec<_>, Vec<_>) =
        found.into_iter().partition(|(at, _)| is_no_life(line, *at) || is_gone(&beside(line, text, *at).0));
    no_life.iter().for_each(|(at, _)| line.not(*at, NO_LIFE));
    let mut values: Vec<&str> = Vec::new();
    for (_, years) in &years {
        if !values.contains(&years.as_str()) {
            values.push(years);
        }
    }
    let said = |years: &str| years.trim_end_matches(" years").to_owned();
    let all = values.iter().map(|years| said(years)).collect::<Vec<_>>().join(" or ");
    let of_a_life: Vec<&str> = years
        .iter()
        .filter(|(at, _)| is_of_a_life(line, text, *at))
        .map(|(_, years)| years.as_str())
        .collect();
    let wanted = match (values.as_slice(), of_a_life.as_slice()) {
        ([only], _) => Some(*only),
        (_, [first, others @ ..]) if others.iter().all(|other| other == first) => Some(*first),
        _ => None,
    };
    for (at, years) in &years {
        match wanted {
            Some(wanted) if wanted == years => line.fill(*at, "years", years, "the years"),
            Some(wanted) => {
                let wanted = said(wanted);
                line.not(*at, format!("years of something else? The {wanted} years are taken"));
            }
            None => line.not(*at, format!("{all} years? Write those that the coat is to last")),
        }
    }
}

/// `2 yr warranty, 20 year life`, `5 years old`, `1000 pcs per month for 3 years`.
fn is_no_life(line: &Line, at: usize) -> bool {
    let says = |place: Option<usize>| {
        let item = place.and_then(|place| line.items.get(place));
        item.is_some_and(|item| item.what == What::Not(NO_LIFE.into()))
    };
    let past = line.behind(at).filter(|next| line.what(*next) == Some(&What::Filler));
    let of_a_time = |place: usize| line.what(place) == Some(&What::Not(lexicon::OF_A_TIME.into()));
    let before = line.before(at);
    let over =
        before.filter(|before| line.what(*before) == Some(&What::Filler)).and_then(|it| line.before(it));
    says(line.behind(at))
        || says(past.and_then(|next| line.behind(next)))
        || before.is_some_and(|before| says(Some(before)) && !is_behind_years(line, before))
        || [before, over].into_iter().flatten().any(of_a_time)
}

/// `2 yr warranty 20 yrs`: the word is that of the years before it.
fn is_behind_years(line: &Line, at: usize) -> bool {
    line.before(at).is_some_and(|before| matches!(line.what(before), Some(What::Years(_))))
}

/// Whether a word for the life of a coat stands beside years, and none for what the part stands in.
fn is_of_a_life(line: &Line, text: &str, at: usize) -> bool {
    let (front, behind) = beside(line, text, at);
    let says = |list: &[&str]| front.iter().chain(&behind).any(|word| list.contains(&word.as_str()));
    says(lexicon::OF_A_LIFE) && !says(lexicon::OF_A_BUILDING)
}

/// `for the last 10 years`; `must last 10 years` is wanted.
fn is_gone(front: &[String]) -> bool {
    let is_of = |word: Option<&String>, list: &[&str]| word.is_some_and(|word| list.contains(&word.as_str()));
    is_of(front.first(), lexicon::GONE) && is_of(front.get(1), lexicon::THE)
}

/// The words in front of years, the nearest first, and those behind, as far as a comma or other years.
fn beside(line: &Line, text: &str, at: usize) -> (Vec<String>, Vec<String>) {
    /// So many words on either side are looked at.
    const REACH: usize = 3;
    let spans = line.items.get(at).map(|item| item.spans.as_slice()).unwrap_or_default();
    let Some((first, last)) = spans.first().zip(spans.last()) else { return Default::default() };
    let is_end = |c: char| matches!(c, ',' | ';' | '|' | '\t' | '\n' | '(' | ')');
    let front = text.get(..first.start).unwrap_or_default().rsplit(is_end).next().unwrap_or_default();
    let behind = text.get(last.end..).unwrap_or_default().split(is_end).next().unwrap_or_default();
    let words = |words: &str| -> Vec<String> {
        words.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty()).map(lower).collect()
    };
    let near = |words: Vec<String>| -> Vec<String> {
        words.into_iter().take(REACH).take_while(|word| !lexicon::means(word, Word::Years)).collect()
    };
    let mut front = words(front);
    front.reverse();
    (near(front), near(words(behind)))
}
