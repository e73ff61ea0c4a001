//! Whose thickness it is: that of the zinc, or of a coat over it, a nut, a gap, a surface.

use std::ops::Range;

use crate::order::reading::items::{Item, Line};
use crate::order::reading::lexicon::{self, ANY_ZINC, COLOUR, EXTRA, Word};
use crate::order::reading::nouns::{BOLTS, MATES, is_named};
use crate::order::reading::token::is_break;
use crate::order::reading::what::What;
use crate::order::reading::{Became, Piece};
use crate::quantity::Length;
use crate::quantity::letters::lower;

/// Why a thickness that stands beside another thing is not used.
const OF_ANOTHER: &str = "the thickness of something else? If it is that of the zinc, write zinc beside it";

/// No zinc here is so thin: beside a word for a chromate it is the chromate's.
const THINNEST: Length = Length::from_um(2.5);

/// A greatest thickness, with the least of its range, is held only where it is that of the zinc of the part; any other is
/// named whole.
pub(in crate::order::reading) fn settle(line: &mut Line, text: &str, unknown: &[Piece]) {
    for last in (0..line.items.len()).rev() {
        let Some(What::AtMost(most)) = line.what(last) else { continue };
        let most = most.clone();
        let first = least_of(line, last);
        if is_of_the_zinc(line, first.unwrap_or(last)..last + 1, text, unknown, &most) {
            continue;
        }
        if let Some(least) = first {
            take_in(line, least, last);
            line.items.remove(least);
        }
        let at = first.unwrap_or(last);
        if let Some(item) = line.item(at) {
            item.text = whole_text(item, text);
            item.what = What::Not(OF_ANOTHER.into());
        }
    }
}

/// A range of which one end is not used is named as one piece.
pub(in crate::order::reading) fn named_whole(line: &mut Line, last: usize) {
    let became = |at: usize| line.items.get(at).and_then(|item| item.became.clone());
    let Some(first) = least_of(line, last) else { return };
    let whole = match (became(first), became(last)) {
        (_, Some(Became::NotUsed(why))) => Became::NotUsed(why),
        // The greatest is held all the same.
        (Some(Became::NotUsed(why)), _) => Became::Used(vec!["most"], Some(why)),
        _ => return,
    };
    take_in(line, first, last);
    if let Some(item) = line.item(last) {
        item.became = Some(whole);
    }
}

/// The least of the range whose greatest stands at a place.
fn least_of(line: &Line, last: usize) -> Option<usize> {
    let first = last.checked_sub(1)?;
    let (least, most) = (line.items.get(first)?, line.items.get(last)?);
    (matches!(least.what, What::Thickness(..)) && least.matched == most.matched).then_some(first)
}

/// The greater end of a range stands where both ends do.
fn take_in(line: &mut Line, first: usize, last: usize) {
    let mut spans = line.item(first).map(|item| std::mem::take(&mut item.spans)).unwrap_or_default();
    let Some(item) = line.item(last) else { return };
    for span in item.spans.drain(..) {
        match spans.last_mut() {
            Some(before) if span.start <= before.end + 1 => before.end = span.end,
            _ => spans.push(span),
        }
    }
    item.spans = spans;
}

fn whole_text(item: &Item, text: &str) -> String {
    let parts = item.spans.iter().filter_map(|span| text.get(span.clone()));
    parts.collect::<Vec<_>>().join(" ")
}

/// What a word beside a thickness says of it.
#[derive(Clone, Copy, PartialEq)]
enum Says {
    /// It is that of the zinc.
    Zinc,
    /// It is that of something else.
    Another,
    /// It is that of a nut or a washer.
    Mate,
    /// What stands behind it is of another thing.
    End,
    /// Nothing.
    Nothing,
}

/// Whether a thickness is that of the zinc of the part: a word for it stands nearest, or nothing else does.
fn is_of_the_zinc(line: &Line, at: Range<usize>, text: &str, unknown: &[Piece], most: &str) -> bool {
    let stretch = line.items.get(at.start).map(|item| item.stretch);
    let span = |at: usize| {
        let spans = line.items.get(at).map(|item| item.spans.as_slice()).unwrap_or_default();
        spans.first().zip(spans.last()).map(|(first, last)| first.start..last.end)
    };
    let Some((start, end)) = span(at.start).zip(span(at.end - 1)).map(|(one, two)| (one.start, two.end))
    else {
        return true;
    };
    // A mate is one where a bolt stands beside it.
    let has_bolt = line.items.iter().any(|item| is_named(&item.what, BOLTS))
        || line.items.iter().any(|item| matches!(item.what, What::Length(_)));
    let is_thin = is_thin(most);
    let says = |item: &Item| match &item.what {
        What::Part(_) if is_named(&item.what, MATES) && has_bolt && !is_named(&item.what, BOLTS) => {
            Says::Mate
        }
        What::Not(why) if why == COLOUR && is_thin => Says::Another,
        what => of_a_piece(what, &item.text),
    };
    let items = || {
        let items = line.items.iter().enumerate().filter(|(_, item)| Some(item.stretch) == stretch);
        items.filter_map(|(at, item)| Some((span(at)?, says(item), at)))
    };
    let is_one_stretch = |from: usize, to: usize| {
        let gap = text.get(from..to).unwrap_or_default();
        let is_mark = |place: usize| {
            let digit = |c: Option<char>| c.is_some_and(|c| c.is_ascii_digit());
            digit(gap.get(..place).and_then(|gap| gap.chars().last()))
                && digit(gap.get(place + 1..).and_then(|gap| gap.chars().next()))
        };
        gap.char_indices().all(|(place, c)| !is_break(c) || is_mark(place))
    };
    let words = || unknown.iter().map(|piece| (piece.span.clone(), of_a_word(&piece.text)));
    let front = {
        let items = items().filter(|(_, _, other)| *other < at.start).map(|(span, says, _)| (span, says));
        let words = words().filter(|(span, _)| span.end <= start && is_one_stretch(span.end, start));
        items.chain(words).filter(|(_, says)| *says != Says::Nothing).max_by_key(|(span, _)| span.end)
    };
    let behind = || {
        let items = items().filter(|(_, _, other)| *other >= at.end).map(|(span, says, _)| (span, says));
        let words = words().filter(|(span, _)| span.start >= end && is_one_stretch(end, span.start));
        items.chain(words).filter(|(_, says)| *says != Says::Nothing).min_by_key(|(span, _)| span.start)
    };
    let nearest = match front.map(|(_, says)| says) {
        None | Some(Says::End) => behind().map(|(_, says)| says),
        front => front,
    };
    // `HDG, nuts zinc plated 5-8 µm`: the second zinc is the nut's.
    let is_of_a_mate = || {
        let mate = items().filter(|(_, says, other)| *says == Says::Mate && *other < at.start);
        let is_zinc = |item: &Item| says(item) == Says::Zinc;
        mate.map(|(.., mate)| mate).next_back().is_some_and(|mate| line.items.iter().take(mate).any(is_zinc))
    };
    match nearest {
        Some(Says::Another | Says::Mate) => false,
        Some(Says::Zinc) => !is_of_a_mate(),
        _ => true,
    }
}

/// Whether a greatest thickness is less than any zinc has.
fn is_thin(most: &str) -> bool {
    let Some((number, unit)) = most.split_once(' ') else { return false };
    number.parse().is_ok_and(|number| {
        let length = if unit == "in" { Length::from_inch(number) } else { Length::from_um(number) };
        length < THINNEST
    })
}

/// What a known piece says of a thickness beside it.
fn of_a_piece(what: &What, text: &str) -> Says {
    match what {
        What::Process(..) | What::Coat(_) | What::Class(_) | What::Zinc(..) | What::HighBath => Says::Zinc,
        What::Other(_) | What::Allowance(_) => Says::Another,
        What::With(_) => Says::End,
        What::Not(why) if why == ANY_ZINC => Says::Zinc,
        // What has a number of its own measures something by it.
        What::Not(_) if text.contains(|c: char| c.is_ascii_digit()) => Says::Nothing,
        What::Not(why) if [COLOUR, lexicon::SAYS_NOTHING, lexicon::LEFT_OPEN].contains(&why.as_ref()) => {
            Says::Nothing
        }
        // `zinc plated RoHS 8-12 µm`.
        What::Not(why) if why == EXTRA && !lexicon::THICK.contains(&lower(text).as_str()) => Says::Nothing,
        What::Not(_) => Says::Another,
        _ => Says::Nothing,
    }
}

/// What a word that nobody knows says of a thickness beside it.
fn of_a_word(text: &str) -> Says {
    let word = lower(text);
    let is_word = word.chars().all(char::is_alphabetic) && word.chars().count() > 1;
    let lists = [
        lexicon::SAYS_HOW_THICK,
        lexicon::OF_A_COAT,
        lexicon::ON,
        lexicon::ABOVE,
        lexicon::UP_TO,
        lexicon::BETWEEN,
    ];
    let is_unit = || [Word::Micrometre, Word::Mil].iter().any(|unit| lexicon::means(&word, *unit));
    let says_how_thick = || lists.iter().any(|words| words.contains(&word.as_str()));
    if is_word && !says_how_thick() && !is_unit() { Says::Another } else { Says::Nothing }
}
