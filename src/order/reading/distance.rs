//! How far from the sea a place is: what lies so far away is not at the sea.

use super::lexicon::{self, AWAY, Word};
use super::number;
use super::token::Chain;
use super::what::{Found, What, one};
use crate::site::Category::{self, C2, C3, C4, C5, Cx};

/// The rule's name.
pub(super) const RULE: &str = "distance from the sea";

/// What is concluded from it.
pub(super) const NOTE: &str = "by common practice: salt reaches far for 5 km and little for 50; ISO 9223 goes by the salt in the air and names no distance: measure it, or write the category";

/// Up to how many metres from the sea what is likely: common practice of corrosion maps, which see most of the salt
/// fall within the first kilometres; cautious between, for a coast with surf carries it farther than a bay. Beyond
/// the last it is what the place would be without the sea, in the country or in a town.
const REACHES: &[(f64, &[Category])] =
    &[(500.0, &[C4, C5]), (5_000.0, &[C3, C4, C5]), (50_000.0, &[C2, C3, C4]), (f64::INFINITY, INLAND_AIR)];
/// Out of reach of the sea.
const INLAND_AIR: &[Category] = &[C2, C3];
/// In the sea.
const OFFSHORE: &[Category] = &[C5, Cx];
/// The most words between a distance and the sea.
const MOST_BETWEEN: usize = 6;

/// `30 km from the sea`, `sea: 5 km`, `10 km landeinwärts`, `far from the coast`.
pub fn of_the_sea(chain: &Chain<'_>, at: usize) -> Option<Found> {
    // `1200 m above sea level`.
    if let Some(number) = number::decimal(chain, at)
        && let Some((end, ())) = lexicon::whole(chain, number.end, |word| {
            matches!(word, Word::Not(why) if why == lexicon::HEIGHT).then_some(())
        })
    {
        return one(end, What::Not(lexicon::HEIGHT.into()));
    }
    if let Some((end, metres)) = far(chain, at) {
        let (behind, is_away) = between(chain, end);
        let is_offshore = chain.word(end) == Some("off");
        if let Some(sea) = sea(chain, behind) {
            // `5 km by the sea` is no distance from it.
            let (last, _) = between_inland(chain, sea);
            return one(last, What::Place(if is_offshore { OFFSHORE } else { places(metres) }));
        }
        let is_inland =
            is_away && (end..behind).any(|at| lexicon::INLAND.contains(&chain.word(at).unwrap_or("")));
        return if is_inland { one(behind, What::Place(places(metres))) } else { None };
    }
    // `distance to the coast 5 km`, `far from the sea`.
    let (behind, is_away) = match sea(chain, at) {
        Some(_) => (at, false),
        None => between(chain, at),
    };
    let end = sea(chain, behind)?;
    let is_from = (at..behind).any(|at| matches!(chain.word(at), Some("away" | "far" | "weit" | "inland")));
    let marked = chain.over(chain.over(end, &[":", "=", "("]), &["~", "≈"]);
    let (from, _) = between(chain, marked);
    match far(chain, from) {
        Some((last, metres)) => {
            let (last, _) = between_inland(chain, last);
            one(chain.over(last, &[")"]), What::Place(places(metres)))
        }
        None => (is_away && is_from).then(|| vec![(end, What::Place(INLAND_AIR))]),
    }
}

fn places(metres: f64) -> &'static [Category] {
    REACHES.iter().find(|(most, _)| metres <= *most).map_or(INLAND_AIR, |(_, places)| *places)
}

/// A distance on the map, in metres.
fn far(chain: &Chain<'_>, at: usize) -> Option<(usize, f64)> {
    let is_some = |at: usize| chain.word(at).is_some_and(|word| lexicon::SOME.contains(&word));
    let half = matches!(chain.word(at), Some("half" | "halbe" | "halben" | "halber"));
    let past_article = |at: usize| if chain.word(at) == Some("a") { chain.after(at) } else { at };
    let vague = match () {
        () if half => Some((past_article(chain.after(at)), 0.5)),
        () if is_some(past_article(at)) => {
            let end = chain.after(past_article(at));
            Some((if chain.word(end) == Some("of") { chain.after(end) } else { end }, 3.0))
        }
        () => None,
    };
    let first = vague
        .or_else(|| number::number(chain, at).map(|number| (number.end, number.value)))
        .or_else(|| lexicon::small(chain, at).map(|(end, number)| (end, f64::from(number))));
    let (mut end, mut value) = first.filter(|_| !chain.inside_a_run(at))?;
    // Of `5-10 km` the nearer counts.
    let joint = chain.over(end, &["-", "–"]);
    if let Some(other) = number::decimal(chain, joint).filter(|_| joint != end) {
        (end, value) = (other.end, value.min(other.value));
    }
    let (end, metres) = lexicon::find(chain, chain.over(end, &["-"]), |word| match word {
        Word::Far(metres) => Some(metres),
        _ => None,
    })?;
    (!chain.inside_a_run(end)).then_some((end, value * metres))
}

fn sea(chain: &Chain<'_>, at: usize) -> Option<usize> {
    let (end, ()) = lexicon::whole(chain, at, |word| (word == Word::Sea).then_some(()))?;
    Some(end)
}

/// The place behind what stands between a distance and what it is from, and whether a word of it says away.
fn between(chain: &Chain<'_>, at: usize) -> (usize, bool) {
    let (mut end, mut is_away) = (at, false);
    for _ in 0..MOST_BETWEEN {
        let is_one = chain.word(end).is_some_and(|word| AWAY.contains(&word));
        let behind = if is_one { chain.after(end) } else { lexicon::over(chain, end, Word::Filler) };
        if behind == end {
            break;
        }
        (end, is_away) = (behind, is_away || is_one);
    }
    (end, is_away)
}

/// `30 km from the sea inland`, `coast 5 km away`.
fn between_inland(chain: &Chain<'_>, at: usize) -> (usize, bool) {
    match chain.word(at).is_some_and(|word| AWAY.contains(&word)) {
        true => (chain.after(at), true),
        false => (at, false),
    }
}
