//! So many times so many, and several numbers of pieces.

use super::boxes::in_boxes;
use super::{is_joined, pieces, unit};
use crate::order::reading::lexicon::{self, LOTS, Word};
use crate::order::reading::number::{self, Number};
use crate::order::reading::token::{Chain, Sort};
use crate::order::reading::what::{Found, SteelWord, What, one};
use crate::order::reading::{document, size, steel};

/// `50 x stud`: pieces of what is named behind the cross.
pub(super) fn times_part(chain: &Chain<'_>, at: usize, number: &Number) -> Option<Found> {
    let cross = lexicon::over(chain, chain.over(number.end, &["×", "*"]), Word::Times);
    let is_plain = cross != number.end && number.whole().is_some() && !chain.inside_a_run(at);
    let is_first = chain.before(at).is_none_or(|before| !matches!(chain.word(before), Some("x" | "by")));
    let noun = lexicon::whole(chain, cross, |word| matches!(word, Word::Part(_)).then_some(()));
    (is_plain && is_first && noun.is_some()).then(|| vec![(cross, pieces(number, 1.0, false, None))])
}

/// `500x M12x40`, `500 x 1/2-13 x 2`: pieces of what has a thread of its own behind the cross.
pub(super) fn times_thread(chain: &Chain<'_>, at: usize, number: &Number) -> Option<Found> {
    let cross = lexicon::over(chain, chain.over(number.end, &["×", "*"]), Word::Times);
    if cross == number.end || number.whole().is_none() || chain.inside_a_run(at) {
        return None;
    }
    let has_length = |found: &Found| matches!(found.as_slice(), [(_, What::Thread(_)), _, ..]);
    let is_thread = size::metric(chain, cross).is_some()
        || size::unified(chain, cross).is_some_and(|found| has_length(&found) && number.value > 4.0);
    is_thread.then(|| vec![(cross, pieces(number, 1.0, false, None))])
}

/// `2 x 2H`, `2x ISO 7089`: so many of what comes with the part.
pub(super) fn times_mate(chain: &Chain<'_>, number: &Number) -> Option<Found> {
    let cross = lexicon::over(chain, chain.over(number.end, &["×", "*"]), Word::Times);
    let pieces = number.whole().filter(|pieces| *pieces <= 8 && cross != number.end)?;
    let found = steel::steel(chain, cross).or_else(|| document::document(chain, cross))?;
    let is_mate = match &found.first()?.1 {
        What::Steel(SteelWord::Grade(grade)) => grade.is_nut() || grade.is_washer(),
        What::PartStandard(key) => key.ends_with("nut") || key.ends_with("washer"),
        _ => false,
    };
    is_mate.then(|| vec![(cross, What::Bare(Some(pieces)))])
}

/// `5x100 pcs`, `10 x 50 Stk`: so many times so many.
pub(super) fn times_count(chain: &Chain<'_>, at: usize, number: &Number) -> Option<Found> {
    let cross = lexicon::over(chain, chain.over(number.end, &["×", "*"]), Word::Times);
    // `2 x 1 000 pcs`.
    let is_round = |spaced: &Number| spaced.grouped.is_some_and(|grouped| grouped % 1000.0 == 0.0);
    let spaced = number::spaced(chain, cross).filter(|it| is_round(it) && unit(chain, it.end).is_some());
    let other = spaced
        .or_else(|| number::decimal(chain, cross))
        .filter(|_| cross != number.end && !chain.inside_a_run(at))?;
    let is_steel = chain.get(other.end).is_some_and(|token| token.lower == "st");
    let (end, ..) = unit(chain, other.end).filter(|_| !is_steel)?;
    let all = number.whole()?.saturating_mul(other.whole()?);
    let is_first =
        chain.before(at).is_none_or(|before| !matches!(chain.word(before), Some("x" | "by" | "m")));
    (is_first && !chain.inside_a_run(end)).then(|| {
        vec![(end, What::Not(format!("so many times so many: write {all} pcs if that is all").into()))]
    })
}

/// `2 lots of 500 pcs`: so many times so many; without a word between either may be all.
pub(super) fn lots(chain: &Chain<'_>, number: &Number) -> Option<Found> {
    let named = chain.word(number.end).filter(|word| LOTS.contains(word)).map(|_| chain.after(number.end))?;
    let from = lexicon::over(chain, chain.over(named, &["@", "à", "x", "×"]), Word::Filler);
    let each = number::spaced(chain, from).or_else(|| number::decimal(chain, from))?;
    let (end, ..) = unit(chain, each.end).filter(|(end, ..)| !chain.inside_a_run(*end))?;
    let (lots, each) = (number.whole()?, each.grouped.map_or(each.whole(), |grouped| Some(grouped as u64))?);
    let all = lots.saturating_mul(each);
    let why = format!("{each} pieces in all, or {all}? Write the pieces in all");
    one(end, if from == named { What::Not(why.into()) } else { in_boxes(lots, each) })
}

/// `500/1000/5000 pcs`, `qty 500, 1000, 5000`: several numbers of pieces for one part.
pub(super) fn several(chain: &Chain<'_>, at: usize, number: &Number, is_named: bool) -> Option<Found> {
    let fewest = if is_named { 10 } else { 100 };
    let mut end = number.end;
    let mut counts = 1;
    loop {
        let comma = chain.get(end).is_some_and(|token| matches!(token.text, "," | ";")) && is_named;
        let next = if comma { chain.after(end) } else { chain.over(end, &["/"]) };
        let Some(other) = number::decimal(chain, next).filter(|other| {
            next != end
                && other.whole().is_some_and(|pieces| pieces >= fewest)
                && !chain.inside_a_run(other.end)
        }) else {
            break;
        };
        // `qty 500, 20 years`.
        if comma && other.end < chain.tokens().len() && unit(chain, other.end).is_none() {
            let is_break = chain.get(other.end).is_some_and(|token| token.sort == Sort::Break);
            if !is_break {
                break;
            }
        }
        (end, counts) = (other.end, counts + 1);
    }
    number.whole().filter(|pieces| *pieces >= fewest && !chain.inside_a_run(at))?;
    let end = unit(chain, end).map_or(end, |(end, ..)| end);
    (counts > 2 && !is_joined(chain, at))
        .then(|| vec![(end, What::Not("several numbers of pieces: write a line for each".into()))])
}

/// `500-600 pcs`, `500 + 300 pcs`: which of them, or their sum.
pub(super) fn two_counts(chain: &Chain<'_>, at: usize, number: &Number) -> Option<Found> {
    let is_sum = chain.sign(number.end, &["+"]);
    let stroke = chain.over(number.end, &["/"]);
    let is_either = stroke != number.end && number.value >= 10.0;
    let joint = match chain.word(number.end) {
        Some("or" | "oder") => chain.after(number.end),
        _ if is_either => stroke,
        _ => chain.over(number.end, &["-", "–", "+"]),
    };
    let other = number::decimal(chain, joint).filter(|_| joint != number.end && !chain.inside_a_run(at))?;
    let (end, ..) = unit(chain, other.end)?;
    let (one, two) = (number.whole()?, other.whole()?);
    let why = match is_sum {
        true => format!("two numbers of pieces: write {} pcs if it is their sum", one.saturating_add(two)),
        false if two > one => format!("{one} or {two} pieces? Write the one"),
        false => return None,
    };
    (!is_joined(chain, at) && !chain.inside_a_run(end)).then(|| vec![(end, What::Not(why.into()))])
}
