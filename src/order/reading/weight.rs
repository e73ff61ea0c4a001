//! Weights: of the lot, from which its pieces follow; of one piece or one box, from which nothing does.

use super::count::unit;
use super::length::{cross, is_thickness};
use super::lexicon::{self, WEIGHT_OF_BOX, WEIGHT_OF_PIECE, Word};
use super::number;
use super::steel;
use super::token::Chain;
use super::what::{Found, What, one};
use crate::quantity::Mass;

/// Why a weight with a number of boxes is not used.
const SO_MANY: &str = "so many of so much: write the weight of all, or the pieces";

/// `250 kg`, `total weight 500 lbs`: the lot, weighed; `0.12 kg each`, `25 kg boxes`, `20 x 25 kg`: no lot.
pub fn weight(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (from, of_one) = named(chain, at);
    let number = number::spaced(chain, from).filter(|number| mass(chain, number.end).is_some());
    let number = number.map_or_else(|| number::number(chain, from), Some)?;
    let Some((end, name)) = mass(chain, number.end) else { return times(chain, at, &number) };
    if chain.inside_a_run(end) || name == "t" && steel::DOTTED.contains(&number.text.as_str()) {
        return None;
    }
    let behind = of_one.map(|why| (end, why)).or_else(|| of_an_area(chain, end));
    let behind = behind.or_else(|| of_one_behind(chain, end));
    if let Some((end, why)) = behind {
        return one(over_times(chain, end).unwrap_or(end), What::Not(why.into()));
    }
    // `25 kg x 20`.
    if let Some(end) = over_times(chain, end) {
        return one(end, What::Not(SO_MANY.into()));
    }
    if let Some((one_way, other)) = number.two_meanings() {
        let why = format!("it could be {one_way} or {other} {name}: write it without the mark");
        return one(end, What::Not(why.into()));
    }
    let mass = match name {
        "lb" => Mass::from_lb(number.value),
        "t" => Mass::from_kg(number.value * 1000.0),
        _ => Mass::from_kg(number.value),
    };
    one(end, What::Weight(format!("{} {name}", number.text), mass))
}

/// `/m2`, `/mm²`, `/sqm`: the place behind it; `124 kg/M` is that of a thousand.
fn of_an_area(chain: &Chain<'_>, at: usize) -> Option<(usize, &'static str)> {
    const AREAS: &[&str] = &["m", "mm", "cm", "sqm", "qm", "ft", "sqft"];
    let area = chain.over(at, &["/"]);
    chain.get(area).filter(|unit| area != at && AREAS.contains(&unit.text))?;
    let end = chain.after(area);
    let is_squared = chain.digits(end) == Some("2") && chain.glued(end);
    let end = if is_squared { chain.after(end) } else { chain.over(end, &["²"]) };
    Some((end, "a weight on an area or a length? Write a coat in µm or g/m², a strength in MPa or ksi"))
}

/// The place behind the words for a weight, and why it is not used where they say that it is of one.
fn named(chain: &Chain<'_>, at: usize) -> (usize, Option<&'static str>) {
    let found = lexicon::find(chain, at, |word| match word {
        Word::Weight | Word::Quantity => Some(None),
        Word::WeightOfOne(why) => Some(Some(why)),
        _ => None,
    });
    let Some((end, why)) = found else {
        // `each 0.12 kg`.
        return each(chain, at).map_or((at, None), |end| (end, Some(WEIGHT_OF_PIECE)));
    };
    // `weight (each): 0.12 kg`, `weight of each 0.12 kg`.
    let of = if chain.word(end) == Some("of") { chain.after(end) } else { end };
    let marked = chain.over(chain.over(chain.over(of, &["("]), &["."]), &[":", "="]);
    let (end, why) = match each(chain, marked).filter(|_| why.is_none()) {
        Some(end) => (chain.over(end, &[")"]), Some(WEIGHT_OF_PIECE)),
        None => (marked, why),
    };
    let filler = lexicon::over(chain, chain.over(end, &[":", "="]), Word::Filler);
    // `approx. 0.12 kg`, but `.12 kg`.
    let dot = chain.after(filler);
    let is_dot = filler != end && chain.sign(filler, &["."]) && !chain.glued(dot);
    (if is_dot { dot } else { filler }, why)
}

/// The place behind `each`.
fn each(chain: &Chain<'_>, at: usize) -> Option<usize> {
    lexicon::whole(chain, at, |word| (word == Word::Each).then_some(())).map(|(end, ())| end)
}

/// `each`, `/pc`, `per 100 pcs`, `a bolt`, `per box`, `boxes` behind a weight: the place behind it, and why the weight
/// is not used.
fn of_one_behind(chain: &Chain<'_>, at: usize) -> Option<(usize, &'static str)> {
    let named = |at| lexicon::whole(chain, at, |word| (word == Word::Box).then_some(())).map(|(end, ())| end);
    if let Some(end) = named(chain.over(at, &["-"])) {
        return Some((end, WEIGHT_OF_BOX));
    }
    if chain.word(at) == Some("apiece") || chain.sign(at, &["‰"]) {
        return Some((chain.after(at), WEIGHT_OF_PIECE));
    }
    let opened = chain.over(at, &["("]);
    let stroke = chain.over(opened, &["/"]);
    let is_per = stroke != opened
        || matches!(chain.word(opened), Some("per" | "pro" | "je" | "a" | "an" | "each" | "in" | "for"));
    let mut of = if stroke == opened { chain.after(opened) } else { stroke };
    // `in each box`.
    of = each(chain, of).filter(|_| is_per).unwrap_or(of);
    if let Some(end) = named(of).filter(|_| is_per) {
        return Some((end, WEIGHT_OF_BOX));
    }
    // `124 kg/M`: for a thousand.
    let is_letter = stroke != opened && chain.get(of).is_some_and(|token| matches!(token.text, "M" | "C"));
    if is_letter && chain.glued(of) && !chain.inside_a_run(chain.after(of)) {
        return Some((chain.after(of), WEIGHT_OF_PIECE));
    }
    // `in 20 pcs` is no weight of one.
    if is_per && !matches!(chain.word(opened), Some("in" | "for" | "each")) {
        let many = number::decimal(chain, of).map_or(of, |number| number.end);
        let noun = |at| lexicon::whole(chain, at, |word| matches!(word, Word::Part(_)).then_some(()));
        let end = unit(chain, many)
            .map(|(end, ..)| end)
            .or_else(|| noun(many).map(|(end, ())| end))
            .or_else(|| (many != of).then_some(many));
        if let Some(end) = end.filter(|end| !chain.inside_a_run(*end)) {
            return Some((chain.over(end, &[")"]), WEIGHT_OF_PIECE));
        }
    }
    each(chain, opened).map(|end| (chain.over(end, &[")"]), WEIGHT_OF_PIECE))
}

/// The place behind a cross and a whole number: so many times.
fn over_times(chain: &Chain<'_>, at: usize) -> Option<usize> {
    let times = cross(chain, at).and_then(|behind| number::decimal(chain, behind))?;
    let is_measure = cross(chain, times.end).is_some() || chain.sign(times.end, &["-", "/", "\"", "″"]);
    (times.whole().is_some() && !is_measure && !chain.inside_a_run(times.end))
        .then(|| unit(chain, times.end).map_or(times.end, |(end, ..)| end))
}

/// `20 x 25 kg`, `20 @ 25 kg`.
fn times(chain: &Chain<'_>, at: usize, number: &number::Number) -> Option<Found> {
    let joint = chain.over(number.end, &["@", "à"]);
    let behind = if joint == number.end { cross(chain, joint)? } else { joint };
    let each = number::decimal(chain, behind)?;
    let (end, _) = mass(chain, each.end)?;
    let is_first = chain.before(at).is_none_or(|before| {
        !matches!(chain.word(before), Some("x" | "by" | "m")) && !chain.sign(before, &["×", "*", "/", "-"])
    });
    (number.whole().is_some() && is_first && !chain.inside_a_run(at) && !chain.inside_a_run(end))
        .then(|| vec![(end, What::Not(SO_MANY.into()))])
}

/// The unit of a mass.
fn mass(chain: &Chain<'_>, at: usize) -> Option<(usize, &'static str)> {
    if lexicon::begins_a_name(chain, at) {
        return None;
    }
    // `250#`: pounds; `2 #8` counts what has a number.
    let behind = chain.after(at);
    if chain.sign(at, &["#"]) && (chain.digits(behind).is_none() || !chain.glued(behind)) {
        return Some((behind, "lb"));
    }
    if is_thickness(chain, at) {
        return None;
    }
    lexicon::find(chain, at, |word| match word {
        Word::Mass(name) => Some(name),
        _ => None,
    })
}
