//! Temperatures, with the sign of each end of a range.

use super::plus_minus;
use crate::order::reading::length::DASHES;
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::number;
use crate::order::reading::token::Chain;
use crate::order::reading::what::{Found, What};

/// `500 °C`, `860F`, `150 to 280 °C`, `-20/300 °C`, `-60/+80 °C`, `-40 °C to 250 °C`.
pub fn temperature(chain: &Chain<'_>, at: usize) -> Option<Found> {
    if chain.sign(at, MINUS) && !number::is_minus(chain, at) {
        return None;
    }
    let (end, first) = signed(chain, at)?;
    let (end, coldest, hottest) = match plus_minus(chain, end) {
        Some((end, by)) => (end, Some(first - by), first + by),
        None => match other(chain, end, first) {
            Some((end, other)) => (end, Some(first.min(other)), first.max(other)),
            None => (end, None, first),
        },
    };
    let (last, unit, has_sign) = degrees(chain, end)?;
    let sure = has_sign || hottest >= 100.0;
    let begins_a_name = lexicon::begins_a_name(chain, chain.over(end, DEGREE));
    let shown = |number: f64| format!("{number} {unit}");
    let what = What::Temperature(shown(hottest), coldest.map(shown));
    (sure && !begins_a_name && !chain.inside_a_run(last)).then(|| vec![(last, what)])
}

const DEGREE: &[&str] = &["°", "º"];
const MINUS: &[&str] = &["-", "−", "–"];

/// A number with its sign, if one touches it.
fn signed(chain: &Chain<'_>, at: usize) -> Option<(usize, f64)> {
    let behind = chain.over(at, &["-", "−", "–", "+"]);
    let from = if behind != at && !chain.glued(behind) { at } else { behind };
    let number = number::decimal(chain, from).filter(|number| number.grouped.is_none())?;
    let is_below = from != at && chain.sign(at, MINUS);
    Some((number.end, if is_below { 0.0 - number.value } else { number.value }))
}

/// The unit of a temperature: the place behind it, its name, and whether the sign of a degree stands there.
fn degrees(chain: &Chain<'_>, at: usize) -> Option<(usize, &'static str, bool)> {
    let degree = chain.over(at, DEGREE);
    let unit = lexicon::find(chain, degree, |word| match word {
        Word::Degrees(unit) => Some(unit),
        _ => None,
    });
    unit.map(|(end, unit)| (end, unit, degree != at))
}

/// The other end of a range: the place behind it, and its number.
fn other(chain: &Chain<'_>, at: usize, first: f64) -> Option<(usize, f64)> {
    let unit = degrees(chain, at).filter(|(end, ..)| !chain.inside_a_run(*end));
    let joint = unit.map_or(at, |(end, ..)| end);
    let word = chain.word(joint);
    let is_and = matches!(word, Some("and" | "und"));
    let up_to = if word == Some("up") { chain.after(joint) } else { joint };
    let dots = chain.sign(joint, &["."]) && chain.sign(chain.after(joint), &["."]);
    let from = match chain.word(up_to) {
        Some("to" | "bis") => chain.after(up_to),
        _ if is_and => chain.after(joint),
        // `-40...120`.
        _ if dots => {
            let second = chain.after(chain.after(joint));
            chain.over(second, &["."])
        }
        _ => chain.over(joint, &["-", "–", "~", "/", "…"]),
    };
    let (end, other) = signed(chain, from).filter(|_| from != joint)?;
    // `80 to -20`: the colder end has its sign.
    let is_range = other > first || other < 0.0 && first > other;
    let stroke = chain.sign(joint, &["/"]) || chain.sign(joint, DASHES);
    let is_one = match unit {
        // `tempered 500 °C and 250 °C in service`: two, unless a word or a sign says that they are ends.
        Some((_, unit, _)) => {
            let between = chain.before(at).is_some() && says_between(chain, at);
            degrees(chain, end).is_some_and(|(_, other, _)| other == unit)
                && (first < 0.0 || other < 0.0 || between || !is_and && !stroke)
        }
        None => true,
    };
    (is_range && is_one).then_some((end, other))
}

/// Whether `between` stands in front of the number that ends here.
fn says_between(chain: &Chain<'_>, end: usize) -> bool {
    let mut place = end;
    for _ in 0..5 {
        let Some(before) = chain.before(place) else { return false };
        if matches!(chain.word(before), Some("between" | "zwischen")) {
            return true;
        }
        place = before;
    }
    false
}
