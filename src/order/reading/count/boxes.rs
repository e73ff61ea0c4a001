//! Pieces in boxes, and how they are packed.

use super::{is_money, unit};
use crate::order::reading::lexicon::{self, WEIGHT_OF_BOX, Word};
use crate::order::reading::nouns::MATES;
use crate::order::reading::number::{self, Number};
use crate::order::reading::token::{Chain, Sort};
use crate::order::reading::what::{Counted, Found, What, one};
use crate::order::reading::{length, size};

/// Why boxes are not counted.
pub(in crate::order::reading) const IN_BOXES: &str = "how many pieces go into one is not said";

/// `100 pcs/box` is how they are packed; `100 pc box x 20` and `100 per box, 20 boxes` are 2000.
pub(super) fn packed(chain: &Chain<'_>, contents: &Number, end: usize) -> Option<Found> {
    // `100 pcs x 12 boxes`.
    let cross = over_cross(chain, end);
    if let Some((behind, boxes)) = counted_behind(chain, cross).filter(|_| cross != end) {
        let each = contents.pieces()?;
        let all = boxes.saturating_mul(each);
        // `100 x 12 boxes`.
        let is_bare = end == contents.end;
        let why = || format!("so many times so many: write {all} pcs if that is all");
        return one(behind, if is_bare { What::Not(why().into()) } else { in_boxes(boxes, each) });
    }
    let per = lexicon::over(chain, chain.over(end, &["/"]), Word::Filler);
    let behind = over_box(chain, per);
    // `500 pcs in boxes of 50`: all of them.
    if behind == per || chain.word(end).is_some_and(|word| lexicon::IN.contains(&word)) {
        return None;
    }
    let end = behind;
    let cross = over_cross(chain, end);
    let boxes = number::decimal(chain, cross).filter(|_| cross != end);
    let boxes = boxes.and_then(|boxes| Some((boxes.end, boxes.pieces()?)));
    match (contents.pieces(), boxes.or_else(|| counted_behind(chain, end))) {
        (Some(each), Some((end, boxes))) => one(end, in_boxes(boxes, each)),
        _ => one(end, What::Not("how they are packed is not judged: write the pieces in all".into())),
    }
}

/// `100 each, 2 boxes`: so many in all, or in each of them.
pub(super) fn each_or_all(chain: &Chain<'_>, at: usize, contents: &Number, end: usize) -> Option<Found> {
    // `nuts 2 each, 4 boxes`: so many to a bolt.
    let is_mate = |word| match word {
        Word::Part(noun) => MATES.iter().any(|mate| noun.ends_with(mate)).then_some(()),
        _ => None,
    };
    let mut front = chain.before(at);
    while let Some(place) = front.filter(|place| chain.sign(*place, &[":", "(", "-", "=", "–"])) {
        front = chain.before(place);
    }
    if front.is_some_and(|front| lexicon::whole(chain, front, is_mate).is_some()) {
        return None;
    }
    // `100 pcs each, 2 boxes`, `100 ea., 2 boxes`.
    let is_each = says_each(chain, end);
    let end = chain.over(if is_each { chain.after(end) } else { end }, &["."]);
    // `100 each in 2 boxes`.
    let is_in = chain.word(end).is_some_and(|word| lexicon::IN.contains(&word));
    let from = if is_in { chain.after(end) } else { end };
    let (behind, boxes) =
        counted_behind(chain, from).filter(|_| is_each || says_each(chain, contents.end))?;
    let each = contents.pieces()?;
    let all = each.saturating_mul(boxes);
    one(behind, What::Not(format!("{each} pieces in all, or {all}? Write the pieces in all").into()))
}

/// `…, 20 boxes`: how many of them there are, where no more is said of them.
fn counted_behind(chain: &Chain<'_>, at: usize) -> Option<(usize, u64)> {
    let boxes = number::decimal(chain, chain.over(at, &[",", ";", "("]))?;
    let end = lexicon::over(chain, boxes.end, Word::Box);
    // `…, 5 boxes per pallet`, `…, 5 boxes of 20`.
    let goes_on = chain.sign(end, &["/", "@", "à", "x", "×", "-"])
        || lexicon::over(chain, end, Word::Filler) != end
        || chain.word(end).is_some_and(|word| lexicon::IN_A_BOX.contains(&word));
    (end != boxes.end && !goes_on && !chain.inside_a_run(end)).then_some((end, boxes.pieces()?))
}

/// `5 boxes of 100 pcs` are 500, `3 pallets of 20 boxes of 50` are 3000; boxes of nobody knows how many are not counted.
pub(super) fn boxes(chain: &Chain<'_>, boxes: &Number) -> Option<Found> {
    let cross = over_cross(chain, boxes.end);
    let end = lexicon::over(chain, cross, Word::Box);
    if end == cross {
        return None;
    }
    // `20 x VPE 50`.
    let has_cross = cross != boxes.end;
    let marked = chain.over(end, &["@", "à", "x", "(", "/", "-"]);
    // `5 Kartons je 100 Stück`, `5 Kartons zu je 200 Stück`, `4 crates each with 250`.
    let is_in_each = |at: usize| chain.word(at).is_some_and(|word| lexicon::IN_A_BOX.contains(&word));
    // `200 in each`, and no inches.
    let is_in_each_box = |at: usize| {
        chain.word(at).is_some_and(|word| lexicon::IN.contains(&word)) && says_each(chain, chain.after(at))
    };
    let in_each = is_in_each(marked);
    let mut each = if in_each { marked } else { lexicon::over(chain, marked, Word::Filler) };
    for _ in 0..MOST_BETWEEN {
        each = if is_in_each(each) { chain.after(each) } else { each };
    }
    let from = lexicon::over(chain, each, Word::Times);
    let contents = in_thousands(chain, from).or_else(|| number::decimal(chain, from)).filter(|contents| {
        // `30 kegs of 5/8-11 nuts`, `2 boxes of 3" bolts`: what is in them, and not how many.
        let is_size = chain.sign(contents.end, &["/", "-", "\"", "×"]) && chain.glued(contents.end)
            || length::unit_of_length(chain, contents).is_some() && !is_in_each_box(contents.end)
            || is_of_a_coat(chain, contents)
            || length::cross(chain, contents.end).is_some();
        (each != end || has_cross) && !is_size
    });
    let is_weighed = contents.as_ref().is_some_and(|each| {
        lexicon::find(chain, each.end, |word| matches!(word, Word::Mass(_)).then_some(())).is_some()
    });
    // `2 boxes of 1.250 bolts`: thousands, or a size in inches; with nothing behind it `1.000` counts.
    let is_counted = |each: &Number| {
        !each.text.contains('.')
            || unit(chain, each.end).is_some()
            || each.grouped.is_some_and(|grouped| grouped % 10.0 == 0.0) && is_last(chain, each.end)
    };
    if let Some(open) = contents.as_ref().filter(|each| each.grouped.is_some() && !is_counted(each)) {
        let why = format!(
            "it could be {} or {} in each: write the pieces in all",
            open.value,
            open.text.replace('.', "")
        );
        return one(open.end, What::Not(why.into()));
    }
    let each = contents.as_ref().filter(|each| is_counted(each));
    match (boxes.pieces(), each.and_then(|each| Some((each.end, each.pieces()?)))) {
        (_, Some((each, _))) if is_weighed => one(
            chain.after(each),
            What::Not("so many of so much: write the weight of all, or the pieces".into()),
        ),
        (Some(boxes), Some((behind, each))) => {
            // `3 pallets of 20 boxes of 50`: what is in the boxes that are in them.
            let holds = lexicon::over(chain, behind, Word::Box) != behind;
            let inner = contents.as_ref().filter(|_| holds);
            if let Some(mut found) = inner.and_then(|inner| self::boxes(chain, inner)) {
                for (_, what) in &mut found {
                    if let What::Count(counted) = what {
                        counted.pieces = counted.pieces.saturating_mul(boxes);
                    }
                }
                return Some(found);
            }
            let (end, times) = unit(chain, behind).map_or((behind, 1), |(end, times, _)| (end, times));
            // `5 boxes with 200 in each`.
            let in_each = chain.word(end).filter(|word| lexicon::IN.contains(word)).map(|_| chain.after(end));
            let end = in_each.filter(|each| is_in_each(*each)).map_or(end, |each| chain.after(each));
            one(end, in_boxes(boxes, each.saturating_mul(u64::from(times))))
        }
        _ => match boxes.pieces().zip(in_each_box(chain, end)) {
            Some((boxes, (end, each))) => one(end, in_boxes(boxes, each)),
            None => one(end, What::Not(IN_BOXES.into())),
        },
    }
}

/// The place behind `x`.
fn over_cross(chain: &Chain<'_>, at: usize) -> usize {
    lexicon::over(chain, chain.over(at, &["×", "*"]), Word::Times)
}

/// The place behind `box`, `per lot`.
fn over_box(chain: &Chain<'_>, at: usize) -> usize {
    // `200 pcs for delivery`.
    let is_per = chain.before(at).is_some_and(|it| {
        chain.sign(it, &["/"]) || chain.word(it).is_some_and(|word| lexicon::PER.contains(&word))
    });
    let is_lot = is_per && chain.word(at).is_some_and(|word| lexicon::LOTS.contains(&word));
    if is_lot { chain.after(at) } else { lexicon::over(chain, at, Word::Box) }
}

/// Whether a word says of a number that so many are in each.
fn says_each(chain: &Chain<'_>, at: usize) -> bool {
    let each = |word| (word == Word::Each).then_some(());
    lexicon::find(chain, at, each).is_some_and(|(end, ())| end == chain.after(at))
}

/// So many words stand between boxes and how many pieces are in each: `zu je`.
const MOST_BETWEEN: usize = 3;

/// Whether nothing stands behind a place before the next comma.
fn is_last(chain: &Chain<'_>, at: usize) -> bool {
    chain.get(at).is_none_or(|token| token.sort == Sort::Break || matches!(token.text, "." | ")"))
}

/// `1 000 pcs`, `1 000`, `1 000 M6x20`: figures grouped by a space, where they are counted or round.
fn in_thousands(chain: &Chain<'_>, at: usize) -> Option<Number> {
    let number = number::spaced(chain, at)?;
    let part = |word| matches!(word, Word::Part(_)).then_some(());
    let is_counted = |at: usize| {
        is_last(chain, at)
            || size::metric(chain, at).is_some()
            || size::begins_a_size(chain, at)
            || lexicon::find(chain, at, part).is_some()
    };
    let is_round = number.grouped.is_some_and(|grouped| grouped % 1000.0 == 0.0) && is_counted(number.end);
    (unit(chain, number.end).is_some() || is_round).then_some(number)
}

/// `…, 50 per box`, `…, 50 pcs/box`, `…, each 50 pcs`: behind a comma, how many go into each of the boxes in front; `100
/// each` without one as well.
fn in_each_box(chain: &Chain<'_>, at: usize) -> Option<(usize, u64)> {
    let comma = chain.over(at, &[","]);
    if let Some(found) = so_many_each(chain, comma) {
        return Some(found);
    }
    let comma = Some(comma).filter(|comma| *comma != at)?;
    let in_each = matches!(chain.word(comma), Some("each" | "je"));
    let from = if in_each { chain.after(comma) } else { comma };
    let contents = in_thousands(chain, from).or_else(|| number::decimal(chain, from))?;
    let counted = unit(chain, contents.end).filter(|(_, times, _)| *times == 1).map(|(end, ..)| end);
    let behind = counted.unwrap_or(contents.end);
    let per = lexicon::over(chain, chain.over(behind, &["/"]), Word::Filler);
    let of_box = over_box(chain, per);
    // `3 pallets, 20 boxes each`.
    let end = match in_each {
        // `5 boxes, each 200`: with nothing behind it.
        true => {
            let is_last = || chain.get(behind).is_none_or(|token| matches!(token.text, "," | ";" | "."));
            counted.or_else(|| is_last().then_some(behind))?
        }
        false => Some(of_box).filter(|end| *end != per && per != behind)?,
    };
    (!chain.inside_a_run(end)).then_some((end, contents.pieces()?))
}

/// `100 each`, `200 pcs each box`.
fn so_many_each(chain: &Chain<'_>, at: usize) -> Option<(usize, u64)> {
    let contents = in_thousands(chain, at).or_else(|| number::decimal(chain, at))?;
    let counted = unit(chain, contents.end).filter(|(_, times, _)| *times == 1).map(|(end, ..)| end);
    let each = counted.filter(|_| !says_each(chain, contents.end)).unwrap_or(contents.end);
    let end = lexicon::over(chain, chain.after(each), Word::Box);
    (says_each(chain, each) && !chain.inside_a_run(end)).then_some((end, contents.pieces()?))
}

/// `box of 100`: how they are packed, and no count.
pub(super) fn box_of(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let from = lexicon::find(chain, at, |word| (word == Word::Box).then_some(())).map(|(end, ())| end)?;
    let each = lexicon::over(chain, chain.over(from, &["@", "à", ":"]), Word::Filler);
    let contents = number::decimal(chain, each)
        .filter(|number| each != from && !is_money(chain, each) && !is_of_a_coat(chain, number))?;
    // `boxes of 25 kg`.
    let weighed = lexicon::whole(chain, contents.end, |word| matches!(word, Word::Mass(_)).then_some(()));
    if let Some((end, ())) = weighed {
        return one(end, What::Not(WEIGHT_OF_BOX.into()));
    }
    let end = unit(chain, contents.end).map_or(contents.end, |(end, ..)| end);
    // `box of 50 x 20`.
    let boxes = length::cross(chain, end).and_then(|cross| number::decimal(chain, cross));
    let all = boxes.and_then(|boxes| Some((boxes.end, boxes.pieces()?, contents.pieces()?)));
    if let Some((end, boxes, each)) = all.filter(|(end, ..)| !chain.inside_a_run(*end)) {
        return one(end, in_boxes(boxes, each));
    }
    one(end, What::Not("how they are packed is not judged: write the pieces in all".into()))
}

/// `in boxes of 2 mil zinc`: the unit of a coat, which fills no box.
fn is_of_a_coat(chain: &Chain<'_>, number: &Number) -> bool {
    lexicon::whole(chain, number.end, |word| matches!(word, Word::OfCoat(_)).then_some(())).is_some()
}

/// So many boxes of so many pieces.
pub(super) fn in_boxes(boxes: u64, each: u64) -> What {
    What::Count(Counted { pieces: boxes.saturating_mul(each), sets: false, spaced: None, negative: false })
}
