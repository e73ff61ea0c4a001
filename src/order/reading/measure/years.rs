//! Years that a coat is to last.

use crate::order::reading::length::{self, is_measured};
use crate::order::reading::lexicon::{self, CONTRACTS, Word};
use crate::order::reading::number::{self, Number};
use crate::order::reading::token::Chain;
use crate::order::reading::what::{Found, What, one};

/// `25 years`, `12,5 Jahre`, `10-year`; of `10 or 15 years` each is a life of its own.
pub fn years(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let from = lexicon::over(chain, at, Word::Least);
    let number = number::decimal(chain, from).or_else(|| in_words(chain, from))?;
    // `240 months`: of a life; fewer are the time of a delivery.
    let months = |word| (word == Word::Measure(lexicon::MONTHS)).then_some(());
    if let Some((end, ())) = lexicon::find(chain, number.end, months)
        && let Some(all) = number.whole().filter(|all| *all >= 24 && all.is_multiple_of(12))
    {
        return (!chain.inside_a_run(end)).then(|| vec![(end, What::Years(format!("{} years", all / 12)))]);
    }
    // `two decades`.
    let decades = lexicon::over(chain, number.end, Word::Decades);
    if decades != number.end
        && let Some(tens) = number.whole().filter(|tens| *tens <= 10)
    {
        let all = What::Years(format!("{} years", 10 * tens));
        return (!chain.inside_a_run(decades)).then(|| vec![(decades, all)]);
    }
    let found = match two_lives(chain, at, from, &number, MOST_LIVES) {
        Some(two) => two,
        None => vec![(over_unit(chain, number.end)?, What::Years(format!("{} years", number.text)))],
    };
    let end = found.last().map(|(end, _)| *end)?;
    // `3 year contract`, `10 years warranty`.
    let of = lexicon::over(chain, end, Word::Filler);
    if chain.word(of).is_some_and(|word| CONTRACTS.contains(&word)) {
        return one(chain.after(of), What::Not("years of a contract, and no life of a coat".into()));
    }
    let mut last = chain.over(of, &["-"]);
    let is_interval = |at: usize| chain.word(at).is_some_and(|word| lexicon::INTERVALS.contains(&word));
    // `life 50 years maintenance after 25 years`: of the life that stands in front.
    let is_of_a_life =
        chain.before(at).and_then(|it| chain.word(it)).is_some_and(|word| lexicon::OF_A_LIFE.contains(&word));
    if is_interval(last) && !is_of_a_life {
        while is_interval(last) {
            last = chain.after(last);
        }
        return one(last, What::Not(lexicon::NO_LIFE.into()));
    }
    match number.two_meanings().filter(|_| found.len() == 1) {
        Some((one_way, other)) => one(
            end,
            What::Not(format!("it could be {one_way} or {other} years: write it without the mark").into()),
        ),
        None => Some(found),
    }
}

/// The place behind the word for years at a place.
fn over_unit(chain: &Chain<'_>, at: usize) -> Option<usize> {
    lexicon::over_years(chain, chain.over(at, &["-", "+"])).filter(|end| !chain.inside_a_run(*end))
}

/// So many lives stand in one list.
const MOST_LIVES: usize = 24;

/// `10 or 15 years`, `15/20 years`, `10 years or 15`, `15-25 years`, `min 15 max 25 years`, `15, 20 or 25 years`: each of
/// them, and what joins them; at most so many.
fn two_lives(chain: &Chain<'_>, at: usize, from: usize, number: &Number, most: usize) -> Option<Found> {
    /// More is no life of a coat, and rather counts pieces.
    const MOST: f64 = 100.0;
    let is_life = |number: &Number| number.grouped.is_none() && (1.0..=MOST).contains(&number.value);
    let unit = over_unit(chain, number.end);
    let joint = unit.unwrap_or(number.end);
    let (to, rises, is_or) = match lexicon::find(chain, joint, |word| {
        matches!(word, Word::Or | Word::Most).then_some(word == Word::Most)
    }) {
        // `bzw.`, `max.`.
        Some((to, rises)) => (chain.over(to, &["."]), rises, !rises),
        None => match chain.word(joint) {
            Some("and" | "und") => (chain.after(joint), true, false),
            Some(word) if lexicon::UP_TO.contains(&word) => (chain.after(joint), false, false),
            _ if chain.sign(joint, &["-", "–"]) => (chain.after(joint), false, false),
            _ => (chain.over(joint, &["/", "+", "&", ","]), true, false),
        },
    };
    let other = number::decimal(chain, to).or_else(|| in_words(chain, to)).filter(|_| to != joint)?;
    // `8.8/15 years`, `DIN 931-8 or 15 years`: no number of years by itself.
    let is_whole = number.whole().is_some()
        && !chain.inside_a_run(at)
        && !(from == at
            && chain.glued(at)
            && chain.before(at).is_some_and(|it| chain.sign(it, length::DASHES)));
    // `20/15 years`, `15/15 years`: a stroke that touches both joins them in any order.
    let is_joined = chain.sign(joint, &["/"]) && chain.glued(joint) && chain.glued(to);
    let fits = !rises || is_joined || number.value < other.value;
    let is_one = is_whole && is_life(number) && is_life(&other) && fits;
    let years = |number: &Number| What::Years(format!("{} years", number.text));
    if !is_one {
        return None;
    }
    // `15/20/25 years`.
    let is_list = unit.is_none() && (rises || is_or) && most > 2;
    if let Some(rest) = is_list.then(|| two_lives(chain, to, to, &other, most - 1)).flatten() {
        let first = [(joint, years(number)), (to, What::Filler)];
        return Some(first.into_iter().chain(rest).collect());
    }
    // `15, 20 years`: two that stand apart.
    if chain.sign(joint, &[","]) {
        return None;
    }
    let last = match (over_unit(chain, other.end), unit) {
        (Some(end), _) => end,
        // `10 years or 15`: no word for a number of years that is said already.
        (None, Some(_)) if is_or && other.whole().is_some() && !goes_on(chain, &other) => other.end,
        _ => return None,
    };
    Some(vec![(joint, years(number)), (to, What::Filler), (last, years(&other))])
}

/// Whether something behind a number says that it is of another thing.
fn goes_on(chain: &Chain<'_>, number: &Number) -> bool {
    let noun = |word| matches!(word, Word::Part(_)).then_some(());
    is_measured(chain, number.end)
        || chain.inside_a_run(number.end)
        || length::unit_of_length(chain, number).is_some()
        || length::cross(chain, number.end).is_some()
        || chain.sign(number.end, &["/", "-", "–"])
        || lexicon::find(chain, number.end, noun).is_some()
        || chain.word(number.end) == Some("m")
}

/// `twelve`, `twenty-five`; `a` and `one` are articles.
fn in_words(chain: &Chain<'_>, at: usize) -> Option<Number> {
    let (end, number) = lexicon::small(chain, at).filter(|(_, number)| *number > 1)?;
    let (value, text) = (f64::from(number), number.to_string());
    Some(Number { value, text, grouped: None, is_fraction: false, end })
}
