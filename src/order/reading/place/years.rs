//! How long the coat is to last.

use crate::order::reading::items::Line;
use crate::order::reading::lexicon::{self, NO_LIFE, Word};
use crate::order::reading::token;
use crate::order::reading::what::What;
use crate::quantity::letters::lower;

/// The years of the line. Of two that differ the longer is judged, so that no verdict rises by the shorter one; but where
/// one of them alone stands beside a word for the life of a coat, or is asked for at least, that one is.
pub(super) fn settle(line: &mut Line, text: &str) {
    let found = line.free(|what| match what {
        What::Years(text) => Some(text.clone()),
        _ => None,
    });
    let of_two = |line: &Line, at: usize, other: usize| {
        let matched = |at: usize| line.items.get(at).map(|item| item.matched.clone());
        matched(at) == matched(other)
    };
    // `2 to 3 years warranty`: what is said of one of them is said of both, which stand side by side.
    let is_none = |line: &Line, at: usize| {
        (at.saturating_sub(REACH)..=at + REACH)
            .filter(|other| matches!(line.what(*other), Some(What::Years(_))) && of_two(line, at, *other))
            .any(|at| is_no_life(line, at) || is_gone(&beside(line, text, at, REACH).0))
    };
    let (no_life, years): (Vec<_>, Vec<_>) = found.iter().cloned().partition(|(at, _)| is_none(line, *at));
    no_life.iter().for_each(|(at, _)| line.not(*at, NO_LIFE));
    let Some(wanted) = wanted(line, text, &years) else { return };
    for (at, years) in &years {
        if *years == wanted.years {
            line.fill(*at, "years", years, "the years");
        } else {
            line.not(*at, wanted.why_not(years));
        }
    }
    if wanted.by == By::Length {
        let all = values(years.iter().filter(|(at, _)| !wanted.of_things.contains(at)));
        let comparison = if all.len() > 2 { "longest" } else { "longer" };
        let all: Vec<String> = all.into_iter().map(number).collect();
        let listed = match all.split_last() {
            Some((last, others)) => format!("{} and {last}", others.join(", ")),
            None => String::new(),
        };
        line.note("years", format!("the {comparison} of {listed} years is judged"));
    }
}

/// The years that are judged.
struct Wanted {
    years: String,
    by: By,
    /// The places of years that another thing has.
    of_things: Vec<usize>,
}

/// Why these years and no others.
#[derive(PartialEq)]
enum By {
    /// No others are left, or they stand beside a word for the life of a coat.
    Word,
    /// They are asked for at least.
    Least,
    /// They are the longest.
    Length,
}

impl Wanted {
    fn why_not(&self, years: &str) -> String {
        let (wanted, years) = (number(&self.years), number(years));
        match self.by {
            By::Word => format!("years of something else? The {wanted} years are taken"),
            By::Least => format!(
                "the {wanted} years that are asked for at least are judged: write {years} years alone if the coat is to last so long"
            ),
            By::Length => format!(
                "the longer is judged, {wanted} years: write {years} years alone if the coat is to last so long"
            ),
        }
    }
}

/// `15` of `15 years`.
fn number(years: &str) -> String {
    years.trim_end_matches(" years").to_owned()
}

/// Years that differ, in the order of the line.
fn values<'a>(years: impl Iterator<Item = &'a (usize, String)>) -> Vec<&'a str> {
    let mut values: Vec<&str> = Vec::new();
    for (_, years) in years {
        if !values.contains(&years.as_str()) {
            values.push(years);
        }
    }
    values
}

/// Which of several years is judged.
fn wanted(line: &Line, text: &str, years: &[(usize, String)]) -> Option<Wanted> {
    let longest = |years: Vec<&str>| {
        let value = |years: &&str| number(years).parse::<f64>().unwrap_or_default();
        years.into_iter().max_by(|one, other| value(one).total_cmp(&value(other))).map(str::to_owned)
    };
    let all = values(years.iter());
    if let [only] = all.as_slice() {
        return Some(Wanted { years: (*only).to_owned(), by: By::Word, of_things: Vec::new() });
    }
    let of_things: Vec<usize> =
        years.iter().map(|(at, _)| *at).filter(|at| is_of_a_thing(line, text, *at)).collect();
    let is_left = |at: usize| of_things.len() == years.len() || !of_things.contains(&at);
    let left = || years.iter().filter(|(at, _)| is_left(*at));
    let of_a_life = values(left().filter(|(at, _)| is_of_a_life(line, text, *at)));
    let least = values(left().filter(|(at, _)| is_least(line, *at)));
    let (years, by) = match (values(left()).as_slice(), of_a_life.as_slice()) {
        ([only], _) | (_, [only]) => ((*only).to_owned(), By::Word),
        _ if !least.is_empty() => (longest(least)?, By::Least),
        (left, _) => (longest(left.to_vec())?, By::Length),
    };
    Some(Wanted { years, by, of_things })
}

/// `at least 15 years`, `15 years min`; in `15 years min 25 years max` the word is that of the years before it.
fn is_least(line: &Line, at: usize) -> bool {
    let text = |at: usize| line.items.get(at).map(|item| lower(&item.text)).unwrap_or_default();
    let says = |place: Option<usize>, word: Word| {
        place.is_some_and(|place| {
            line.what(place) == Some(&What::Filler) && lexicon::means(text(place).trim_end_matches('.'), word)
        })
    };
    let own = text(at);
    let own = own.split(|c: char| c.is_ascii_digit()).next().unwrap_or_default().trim();
    let is_least = lexicon::means(own, Word::Least)
        || says(line.before(at), Word::Least)
        || says(line.behind(at), Word::Least);
    let is_before_most = || {
        let behind = line.behind(at).filter(|_| !lexicon::means(own, Word::Least));
        behind.is_some_and(|behind| {
            matches!(line.what(behind), Some(What::Years(_)))
                && lexicon::means(
                    text(behind).split(|c: char| c.is_ascii_digit()).next().unwrap_or_default().trim(),
                    Word::Least,
                )
                && says(line.behind(behind), Word::Most)
        })
    };
    // `min 15 max 25 years`: the word is that of the years behind it.
    let owns_next =
        || line.behind(at + 1).is_some_and(|next| matches!(line.what(next), Some(What::Years(_))));
    let is_most = says(line.behind(at), Word::Most) && !owns_next() || says(line.before(at), Word::Most);
    !is_most && is_least || is_before_most()
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
    let (front, behind) = beside(line, text, at, REACH);
    let says = |list: &[&str]| front.iter().chain(&behind).any(|word| list.contains(&word.as_str()));
    says(lexicon::OF_A_LIFE) && !says(lexicon::OF_A_BUILDING)
}

/// `paint life 10 years`, `5 years pump life`, `life of old bolts 5 years`, `life so far 5 years`, `extend life by 10 years`:
/// years of another thing, or no whole life.
fn is_of_a_thing(line: &Line, text: &str, at: usize) -> bool {
    /// So many words on either side are looked at.
    const FAR: usize = 6;
    let (mut front, behind) = beside(line, text, at, FAR);
    front.reverse();
    let is_of = |word: Option<&String>, list: &[&str]| word.is_some_and(|word| list.contains(&word.as_str()));
    let is_life = |word: &String| lexicon::LIVES.contains(&word.as_str());
    let has = |words: &[String]| words.last().is_some_and(|word| lexicon::has_a_life(word));
    if let Some(life) = front.iter().rposition(is_life) {
        let (before, between) =
            (front.get(..life).unwrap_or_default(), front.get(life + 1..).unwrap_or_default());
        let is_extended = is_of(before.last(), lexicon::EXTENDS);
        let is_lived = between.iter().any(|word| lexicon::LIVED.contains(&word.as_str()));
        let is_of_that = is_of(between.first(), &["of"]) && has(between);
        return has(before) || is_extended || is_lived || is_of_that;
    }
    let life = behind.iter().position(is_life);
    life.is_some_and(|life| has(behind.get(..life).unwrap_or_default()))
}

/// `for the last 10 years`; `must last 10 years` is wanted.
fn is_gone(front: &[String]) -> bool {
    let is_of = |word: Option<&String>, list: &[&str]| word.is_some_and(|word| list.contains(&word.as_str()));
    is_of(front.first(), lexicon::GONE) && is_of(front.get(1), lexicon::THE)
}

/// So many words on either side of years say of what they are.
const REACH: usize = 3;

/// The words in front of years, the nearest first, and those behind, as far as a comma or other years.
fn beside(line: &Line, text: &str, at: usize, reach: usize) -> (Vec<String>, Vec<String>) {
    let spans = line.items.get(at).map(|item| item.spans.as_slice()).unwrap_or_default();
    let Some((first, last)) = spans.first().zip(spans.last()) else { return Default::default() };
    let is_end = |c: char| matches!(c, ',' | ';' | '|' | '\t' | '\n' | '(' | ')');
    let (front, behind) = token::beside(text, first.start..last.end, FARTHEST);
    let front = front.rsplit(is_end).next().unwrap_or_default();
    let behind = behind.split(is_end).next().unwrap_or_default();
    let words = |part: &str| -> Vec<String> {
        part.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty()).map(lower).collect()
    };
    let near = |words: Vec<String>| -> Vec<String> {
        words.into_iter().take(reach).take_while(|word| !lexicon::means(word, Word::Years)).collect()
    };
    let mut front = words(front);
    front.reverse();
    (near(front), near(words(behind)))
}

/// So many letters on either side are looked at.
const FARTHEST: usize = 120;
