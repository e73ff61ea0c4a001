//! Whose thickness it is: that of the zinc, or of a coat over it, a nut, a gap, a surface.

use std::collections::HashSet;
use std::ops::Range;

use super::{bounds, zone};
use crate::order::reading::items::{Item, Line};
use crate::order::reading::lexicon::{self, ANY_ZINC, COLOUR, EXTRA};
use crate::order::reading::nouns::{BOLTS, MATES, is_named};
use crate::order::reading::token::is_break;
use crate::order::reading::what::What;
use crate::order::reading::{Became, Piece};
use crate::quantity::Length;
use crate::quantity::letters::lower;
use crate::sorting::sort_by_key;

/// Why a thickness that stands beside another thing is not used.
const OF_ANOTHER: &str = "the thickness of something else? If it is that of the zinc, write zinc beside it";

/// No zinc here is so thin: beside a word for a chromate it is the chromate's.
const THINNEST: Length = Length::from_um(2.5);

/// A thickness, with the least of its range, is held only where it is that of the zinc of the part; any other is named
/// whole.
pub(in crate::order::reading) fn settle(line: &mut Line, text: &str, unknown: &[Piece]) {
    let found = line.free(|what| match what {
        What::AtMost(wanted) | What::Thickness(wanted) => Some(wanted.solid() < THINNEST),
        _ => None,
    });
    if found.is_empty() {
        return;
    }
    bounds::settle(line, text, unknown);
    zone::settle(line, text);
    let words = Words::of(line, text, unknown);
    let mut gone = HashSet::new();
    for (last, is_thin) in
        found.into_iter().filter(|(at, _)| line.items.get(*at).is_some_and(Item::is_free)).collect::<Vec<_>>()
    {
        // The least of a range is looked at with its greatest.
        if least_of(line, last + 1) == Some(last) {
            continue;
        }
        let first = least_of(line, last);
        let is_single = matches!(line.what(last), Some(What::Thickness(_)));
        // `zinc flake 8 µm`: that of the coat that is asked for, which is not judged.
        if is_single && words.first_zinc.is_none() {
            continue;
        }
        let meant = |says: Says| match says {
            Says::Colour => is_thin.then_some(Says::Another),
            Says::Unknown => (!is_single).then_some(Says::Another),
            says => Some(says),
        };
        if words.say_zinc(line.span(first.unwrap_or(last)), line.span(last), meant) {
            continue;
        }
        if let Some(least) = first {
            take_in(line, least, last);
            gone.insert(least);
        }
        if let Some(item) = line.item(last) {
            item.text = whole_text(item, text);
            item.what = What::Not(OF_ANOTHER.into());
        }
    }
    let mut place = 0..;
    line.items.retain(|_| place.next().is_none_or(|at| !gone.contains(&at)));
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
    let is_range = matches!(least.what, What::Thickness(..)) && matches!(most.what, What::AtMost(_));
    (is_range && least.matched == most.matched).then_some(first)
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
    /// It is that of a chromate, where it is thin.
    Colour,
    /// Nobody knows: of a range it may be that of something else.
    Unknown,
    /// What stands behind it is of another thing.
    End,
    /// Nothing.
    Nothing,
}

/// The words of a line that say whose thickness stands beside them, each looked at once however many thicknesses there are.
struct Words {
    /// Where they stand, in the order of the line.
    marks: Vec<(Range<usize>, Says)>,
    /// Where nuts and washers stand that come with a bolt.
    mates: Vec<usize>,
    /// Where the first word for zinc stands.
    first_zinc: Option<usize>,
    /// Where commas and the like part the line.
    breaks: Vec<usize>,
}

impl Words {
    fn of(line: &Line, text: &str, unknown: &[Piece]) -> Self {
        // A mate is one where a bolt stands beside it.
        let has_bolt =
            line.items.iter().any(|item| is_named(&item.what, BOLTS) || matches!(item.what, What::Length(_)));
        let says = |item: &Item| match &item.what {
            What::Part(_) if has_bolt && is_named(&item.what, MATES) && !is_named(&item.what, BOLTS) => {
                Says::Mate
            }
            What::Not(why) if why == COLOUR => Says::Colour,
            what => of_a_piece(what, &item.text),
        };
        // `max 10 µm plating on washers`, `zinc max 12 µm on nuts`; `zinc 8 µm on nuts and bolts` is of both.
        let is_on_a_mate = |at: usize| {
            let is_on = |at: usize| {
                line.items.get(at).is_some_and(|item| {
                    item.what == What::Filler && ON_A_MATE.contains(&lower(&item.text).as_str())
                })
            };
            let is_between = |at: usize| match line.what(at) {
                Some(What::Filler) => !is_on(at),
                what => matches!(what, Some(What::Thickness(_) | What::AtMost(_))),
            };
            let on = line.over(at, Line::behind, is_between)?;
            let mate = line.over(on, Line::behind, |at| line.what(at) == Some(&What::Filler))?;
            let is_mate = |what: &What| is_named(what, MATES) && !is_named(what, BOLTS);
            let goes_on = |at| {
                line.what(at).is_some_and(|it| is_mate(it) || matches!(it, What::With(_) | What::Filler))
            };
            let last = line.over(mate, Line::behind, goes_on).and_then(|at| line.what(at));
            line.what(mate).map(|what| {
                is_on(on) && has_bolt && is_mate(what) && !last.is_some_and(|what| is_named(what, BOLTS))
            })
        };
        let items = (0..line.items.len()).filter_map(|at| {
            let says = line.items.get(at).map_or(Says::Nothing, says);
            let is_of_a_mate = says == Says::Zinc && is_on_a_mate(at) == Some(true);
            Some((line.span(at)?, if is_of_a_mate { Says::Mate } else { says }))
        });
        let others = unknown.iter().map(|piece| (piece.span.clone(), of_a_word(&piece.text)));
        let mut marks: Vec<_> = items.chain(others).filter(|(_, says)| *says != Says::Nothing).collect();
        sort_by_key(&mut marks, |(span, _)| span.start);
        let of = |one: Says| marks.iter().filter(move |(_, says)| *says == one).map(|(span, _)| span.start);
        let mates = of(Says::Mate).collect();
        let first_zinc = of(Says::Zinc).next();
        let digit = |byte: Option<&u8>| byte.is_some_and(u8::is_ascii_digit);
        let bytes = text.as_bytes();
        let is_mark = |at: usize| {
            digit(at.checked_sub(1).and_then(|before| bytes.get(before))) && digit(bytes.get(at + 1))
        };
        let breaks =
            text.char_indices().filter(|(at, c)| is_break(*c) && !is_mark(*at)).map(|(at, _)| at).collect();
        Self { marks, mates, first_zinc, breaks }
    }

    /// Whether a thickness, from its first piece to its last, is that of the zinc of the part: a word for it stands nearest,
    /// or nothing else does; `meant` says what a word says of this one.
    fn say_zinc(
        &self,
        first: Option<Range<usize>>,
        last: Option<Range<usize>>,
        meant: impl Fn(Says) -> Option<Says>,
    ) -> bool {
        let Some((start, end)) = first.zip(last).map(|(first, last)| (first.start, last.end)) else {
            return true;
        };
        let at = self.marks.partition_point(|(span, _)| span.start < start);
        let (before, behind) = self.marks.split_at_checked(at).unwrap_or_default();
        let front = before
            .iter()
            .rev()
            .take(REACH)
            .take_while(|(span, _)| self.is_one_stretch(span.end, start))
            .find_map(|(_, says)| meant(*says));
        let behind = || {
            let behind = behind.iter().skip_while(|(span, _)| span.start < end).take(REACH);
            behind
                .take_while(|(span, _)| self.is_one_stretch(end, span.start))
                .find_map(|(_, says)| meant(*says))
        };
        // `HDG, nuts zinc plated 5-8 µm`: the second zinc is the nut's.
        let is_of_a_mate = || {
            let mates = self.mates.partition_point(|mate| *mate < start);
            let mate = mates.checked_sub(1).and_then(|last| self.mates.get(last)).copied();
            mate.filter(|mate| self.is_one_stretch(*mate, start))
                .is_some_and(|mate| self.first_zinc.is_some_and(|zinc| zinc < mate))
        };
        match front.filter(|says| *says != Says::End).or_else(behind) {
            Some(Says::Another | Says::Mate) => false,
            Some(Says::Zinc) => !is_of_a_mate(),
            _ => true,
        }
    }

    fn is_one_stretch(&self, from: usize, to: usize) -> bool {
        let next = self.breaks.partition_point(|at| *at < from);
        self.breaks.get(next).is_none_or(|at| *at >= to)
    }
}

/// Between a finish and the part that it is on.
const ON_A_MATE: &[&str] = &["on", "of", "for", "at", "auf", "der", "für", "an", "am"];

/// So many words on either side are looked at, where they say nothing of a thickness.
const REACH: usize = 16;

/// What a known piece says of a thickness beside it.
fn of_a_piece(what: &What, text: &str) -> Says {
    match what {
        What::Process(..) | What::Coat(_) | What::Class(_) | What::Zinc(..) | What::HighBath => Says::Zinc,
        What::Other(_) | What::Allowance(_) => Says::Another,
        What::With(_) => Says::End,
        What::Not(why) if why == ANY_ZINC => Says::Zinc,
        // What has a number of its own measures something by it.
        What::Not(_) if text.contains(|c: char| c.is_ascii_digit()) => Says::Nothing,
        What::Not(why) if [lexicon::SAYS_NOTHING, lexicon::LEFT_OPEN].contains(&why.as_ref()) => {
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
        lexicon::BUT,
        lexicon::AND,
        lexicon::NOT_UNDER,
        lexicon::ALL,
    ];
    let is_unit = || lexicon::is_of_coat(&word);
    let says_how_thick = || lists.iter().any(|words| words.contains(&word.as_str()));
    if is_word && !says_how_thick() && !is_unit() { Says::Unknown } else { Says::Nothing }
}
