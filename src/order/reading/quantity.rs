//! How many: of the part, and of what comes with one.

use std::ops::Range;

use super::count::IN_BOXES;
use super::grouped::{self, Grouped};
use super::items::Line;
use super::length::length_of;
use super::lexicon::{self, SAYS_NOTHING, WEIGHT_OF_BOX, WEIGHT_OF_PIECE, Word};
use super::lone;
use super::part::{Family, Scope, Scopes};
use super::per_part::{self, MOST};
use super::steels::STANDARD;
use super::token;
use super::what::{Counted, SteelWord, What};
use crate::part::{self, Kind};
use crate::quantity::letters::lower;
use crate::steel::Grade;
use crate::thread::Designation;

/// The greatest class of nuts.
const GREATEST_CLASS: u64 = 12;

const NO_WHOLE_NUMBER: &str = "no whole number to a bolt";

/// Quantity, sets, and numbers of nuts and washers.
pub(super) fn settle(line: &mut Line, scopes: &Scopes, text: &str, unknown: &[Range<usize>]) {
    let counts = line.free(|what| match what {
        What::Count(counted) => Some(counted.clone()),
        _ => None,
    });
    let counts = per_part::settle(line, scopes, counts);
    let (own, beside): (Vec<_>, Vec<_>) =
        counts.into_iter().partition(|(at, counted)| counted.sets || scopes.beside(*at) == Scope::Part);
    let has_boxes = line.items.iter().any(|item| item.what == What::Not(IN_BOXES.into()));
    let mut sets = false;
    for (at, counted) in own {
        sets |= counted.sets;
        if line.draft.get("quantity") == Some(&counted.pieces.to_string()) && is_added(line, at) {
            line.not(at, "as many again, or the same? Write the pieces of all");
            continue;
        }
        if has_boxes && is_in_each(line, at) {
            line.not(at, "in each of the boxes, or in all? Write the pieces in all");
            continue;
        }
        whole(line, scopes, (at, &counted), lone::word_in_front(line, at, text, unknown));
    }
    weights(line, scopes, text, unknown);
    lone::owned(line, text, unknown);
    item_number(line, text);
    leading_number(line, scopes);
    lone::beside_a_coat(line);
    lone::class_of_nut(line, scopes);
    for (at, counted) in beside {
        if counted.negative {
            line.not(at, "pieces are counted in whole numbers from 1");
        // `bolts with nuts, 500 pcs`: so many nuts do not go on one bolt.
        } else if line.draft.get("quantity").is_none() && counted.pieces > MOST {
            whole(line, scopes, (at, &counted), lone::word_in_front(line, at, text, unknown));
        } else {
            of_mate(line, scopes, at, counted.pieces, true);
        }
    }
    numbers_of_mates(line, scopes, false);
    lone::settle(line, scopes);
    // `bolts 500, nuts 1000`: what counts the order was only found now.
    numbers_of_mates(line, scopes, true);
    sets |= set_words(line);
    let nothing_named = !(scopes.with.0 || scopes.with.1)
        && line.draft.get("nut").is_none()
        && line.draft.get("washer").is_none();
    if sets && nothing_named && scopes.family == Family::Bolt {
        line.draft.set("nut", STANDARD);
        line.note("nut", "a set is a bolt with its nut");
    }
}

/// `10 sacks M16x60, 100 pcs each`, `…, je 100 Stück`: whether a count says that so many are in each.
fn is_in_each(line: &Line, at: usize) -> bool {
    let says_each = |at: usize| {
        let text = line.items.get(at).map_or(String::new(), |item| lower(&item.text));
        text.split(' ').any(|word| lexicon::means(word, Word::Each))
    };
    let beside = [line.before(at), line.behind(at)].into_iter().flatten();
    says_each(at) || beside.filter(|it| line.what(*it) == Some(&What::Filler)).any(says_each)
}

/// More nuts or washers than this seldom come with one part.
const FEW: u64 = 4;

/// Numbers without a unit that count nuts or washers; `is_last` where nothing is left that can count the order.
fn numbers_of_mates(line: &mut Line, scopes: &Scopes, is_last: bool) {
    let small = line.free(|what| match what {
        What::Small(number) => Some(u64::from(*number)),
        What::Bare(Some(number)) => Some(*number),
        _ => None,
    });
    for (at, number) in small {
        // `one each end`.
        if line.behind(at).is_some_and(|behind| line.what(behind) == Some(&What::Ends)) {
            continue;
        }
        // Neither do so many go on one bolt nor is there such a class of nut: it counts the order, or
        // all nuts of the order.
        let pieces = line.draft.get("quantity").and_then(|pieces| pieces.parse::<u64>().ok());
        if number > GREATEST_CLASS && pieces.is_none_or(|pieces| pieces == 0 || number % pieces != 0) {
            // `500 bolts, 400 nuts`.
            if pieces.is_some_and(|pieces| pieces > 0) && per_part::counts_all(line, scopes, at) {
                line.not(at, NO_WHOLE_NUMBER);
            }
            continue;
        }
        // `bolts 8, nuts 8`: first what counts the order.
        if pieces.is_none() && number > FEW && !is_last {
            continue;
        }
        of_mate(line, scopes, at, number, false);
    }
}

/// Fewer pieces than this are seldom weighed together.
const FEWEST: f64 = 3.0;

/// The lot by its mass, where the mass of one piece is known: about so many pieces.
fn weights(line: &mut Line, scopes: &Scopes, text: &str, unknown: &[Range<usize>]) {
    // `Stückgewicht verzinkt 0,25 kg`: the word stands elsewhere, and says it all the same.
    let is_of_one = unknown.iter().filter_map(|word| text.get(word.clone())).any(|word| {
        lexicon::means(&lower(word), Word::WeightOfOne(WEIGHT_OF_PIECE))
            || lexicon::means(&lower(word), Word::WeightOfOne(WEIGHT_OF_BOX))
    });
    let found = line.free(|what| match what {
        What::Weight(text, mass) => Some((text.clone(), *mass)),
        _ => None,
    });
    for (at, (written, lot)) in found {
        if line.draft.get("quantity").is_some() {
            line.not(at, "the pieces are counted: the weight is not used");
            continue;
        }
        if is_of_one {
            line.not(at, WEIGHT_OF_PIECE);
            continue;
        }
        if line.span(at).is_some_and(|span| is_of_a_thing(text, span)) {
            line.not(at, "a weight of what? Write the weight of the pieces, or their number");
            continue;
        }
        // `20 boxes 25 kg`.
        let behind_boxes = line.before(at).and_then(|before| line.what(before));
        if behind_boxes == Some(&What::Not(IN_BOXES.into())) {
            line.not(at, "of one box, or of all? Write the weight of all, or the pieces");
            continue;
        }
        if scopes.with.0 || scopes.with.1 {
            line.not(at, "a weight of sets is no count: write the sets");
            continue;
        }
        let kind = line.draft.get("part").and_then(Kind::from_key);
        let thread = line.draft.get("thread").and_then(|text| Designation::read(text).ok());
        let length = line.draft.get("length").and_then(length_of);
        let piece = kind
            .zip(thread)
            .and_then(|(kind, written)| part::standard(kind, written.thread, length).ok())
            .map(|shape| shape.mass());
        let Some(piece) = piece.filter(|piece| piece.kg() > 0.0) else {
            line.not(at, "the mass of a piece is not known here: write the pieces");
            continue;
        };
        let pieces = (lot.kg() / piece.kg()).round();
        if pieces < 1.0 {
            line.not(at, "less than a piece weighs: write the pieces");
            continue;
        }
        // `weight 0.12 kg`: of so few the word rather says what one weighs.
        let is_named = line.items.get(at).is_some_and(|item| item.text.starts_with(char::is_alphabetic));
        if is_named && pieces < FEWEST {
            line.not(at, "of one piece, or of all? Write the pieces");
            continue;
        }
        line.fill(at, "quantity", &format!("{pieces}"), "the quantity");
        let grams = piece.kg() * 1000.0;
        line.note("quantity", format!("about: {written} at {grams:.1} g a piece, computed"));
    }
}

/// `300 kg beads`, `12 kg zinc powder`, `zinc pickup 6 kg`: the weight of a thing that is no part; `400 kg rack bolts` and
/// `in baskets 400 kg` are of the parts.
fn is_of_a_thing(text: &str, weight: Range<usize>) -> bool {
    /// So many letters beside a weight are looked at.
    const NEAR: usize = 32;
    let (front, behind) = token::near(text, weight, NEAR);
    let (front, behind) = (lower(front), lower(behind));
    let ends = |c: char| c != ' ' && !c.is_alphabetic();
    let is_one = |word: &str| lexicon::NO_PARTS.contains(&word);
    let next = said(behind.split(ends).next().unwrap_or_default());
    let of_it = match next.as_slice() {
        [metal, thing, rest @ ..] if lexicon::WHAT_THINGS_ARE_OF.contains(metal) => {
            Some((thing, rest.first()))
        }
        [thing, rest @ ..] => Some((thing, rest.first())),
        [] => None,
    };
    let is_name = |noun: &&str| lexicon::is_noun(noun) || noun.starts_with("galv");
    of_it.is_some_and(|(thing, noun)| is_one(thing) && !noun.is_some_and(is_name))
        || match said(front.rsplit(ends).next().unwrap_or_default()).as_slice() {
            [.., within, thing] => is_one(thing) && !lexicon::WITHIN.contains(within),
            [thing] => is_one(thing),
            [] => false,
        }
}

/// The words that somebody knows: the others say nothing of what is weighed.
fn said(text: &str) -> Vec<&str> {
    let is_known = |word: &&str| {
        lexicon::NO_PARTS.contains(word) || lexicon::WITHIN.contains(word) || lexicon::knows(word)
    };
    token::words(text).filter(is_known).collect()
}

/// A count of the part; figures with a space in them may be two numbers. `word` is one that nobody knows, in front.
fn whole(line: &mut Line, scopes: &Scopes, (at, counted): (usize, &Counted), word: Option<&str>) {
    if counted.negative {
        // The field says what is wrong with it.
        line.fill(at, "quantity", &format!("-{}", counted.pieces), "the quantity");
        return;
    }
    match grouped::read(line, scopes, (at, counted), word) {
        Grouped::One => line.fill(at, "quantity", &counted.pieces.to_string(), "the quantity"),
        Grouped::Either(why) => line.not(at, why),
        Grouped::NutClass(class, pieces) => {
            let field = if scopes.family == Family::Nut { "steel" } else { "nut" };
            if line.draft.get(field) == Some(STANDARD) {
                line.draft.set(field, class);
            }
            line.fill(at, field, class, "the nut");
            line.fill(at, "quantity", &pieces.to_string(), "the quantity");
        }
    }
}

/// `300 pcs + 300 pcs`, `300 pcs for site A, 300 pcs for site B`: a count that something joins to another.
fn is_added(line: &Line, at: usize) -> bool {
    let is_joined = at.checked_sub(1).and_then(|before| line.what(before)) == Some(&What::With(false));
    let for_whom = |at: usize| line.says_for(at + 1);
    let others = || (0..at).filter(|other| matches!(line.what(*other), Some(What::Count(_))));
    is_joined || for_whom(at) && others().any(for_whom)
}

/// `1. M20x80`, `2) M20x80`: a number that counts the items of a list, at the head of the line.
fn item_number(line: &mut Line, text: &str) {
    let Some(first) = line.items.first().filter(|item| item.is_free()) else { return };
    let is_head = first
        .spans
        .first()
        .is_some_and(|span| text.get(..span.start).is_some_and(|head| head.trim().is_empty()));
    let behind = first.spans.last().and_then(|span| text.get(span.end..)).unwrap_or_default();
    let numbers = line.free(|what| matches!(what, What::Bare(Some(_))).then_some(()));
    // `10|HEX BOLT|M20x100|HDG|100`: in a cell of its own, where the pieces stand elsewhere.
    let is_cell = behind.starts_with([';', '|', '\t'])
        && (line.draft.get("quantity").is_some() || numbers.len() > 1)
        && line.items.last().is_some_and(|last| last.stretch > 1);
    if is_head
        && matches!(first.what, What::Bare(Some(_)))
        && (behind.starts_with(')') || behind.starts_with(". ") || is_cell)
    {
        line.not(0, "it numbers the item");
    }
}

/// `500 hex bolts`: a number in front of what it counts, where nothing else is counted.
fn leading_number(line: &mut Line, scopes: &Scopes) {
    if line.draft.get("quantity").is_some() {
        return;
    }
    let numbers = line.free(|what| match what {
        What::Bare(Some(number)) => Some(*number),
        _ => None,
    });
    for (at, number) in numbers {
        let stretch = line.items.get(at).map(|item| item.stretch);
        let first = at
            .checked_sub(1)
            .and_then(|before| line.items.get(before))
            .is_none_or(|before| Some(before.stretch) != stretch);
        // `100 new hex bolts`.
        let mut place = at + 1;
        while line.what(place) == Some(&What::Not(SAYS_NOTHING.into())) {
            place += 1;
        }
        let next = line.items.get(place).filter(|next| Some(next.stretch) == stretch);
        // `1 plate washer` counts none of the part.
        let is_other = matches!(next.map(|next| &next.what), Some(What::Part(_)))
            && !scopes.names.contains(&place)
            && (!scopes.names.is_empty() || next.is_some_and(|next| !next.is_free()));
        let counts = !is_other
            && next.is_some_and(|next| {
                matches!(
                    next.what,
                    What::Part(_)
                        | What::Thread(_)
                        | What::Steel(SteelWord::Grade(_))
                        | What::PartStandard(_)
                )
            });
        // `HDG 200 bolts, 200 nuts`: right in front of the part's own noun.
        // Behind a size or inside a name it may be a length.
        let before = line.before(at);
        let is_sized = line.draft.get("thread").is_some()
            && (line.draft.get("length").is_some() || scopes.family != Family::Bolt)
            && before.is_none_or(|before| {
                !scopes.names.contains(&before) && !matches!(line.what(before), Some(What::Thread(_)))
            });
        let is_of_name = is_sized
            && scopes.names.contains(&(at + 1))
            && number > GREATEST_CLASS
            && !lone::may_be_of_the_coat(line, at, number);
        if !((first || is_of_name) && counts && number > 0) || scopes.beside(at) != Scope::Part {
            continue;
        }
        if lone::is_analysis(line, at, number) {
            continue;
        }
        let class = Grade::read(&format!("nut class {number}")).is_ok();
        if class && scopes.family == Family::Nut && line.draft.get("steel").is_none() {
            line.not(
                at,
                format!("{number} nuts, or nuts of class {number}: write {number} pcs or class {number}"),
            );
            continue;
        }
        line.fill(at, "quantity", &number.to_string(), "the quantity");
        return;
    }
}

/// How many nuts or washers: for one bolt, or in all.
fn of_mate(line: &mut Line, scopes: &Scopes, at: usize, number: u64, counted: bool) {
    // `bolts 80 M20 nuts 80 M20 washers`: that of the noun behind it.
    let is_of_nuts = per_part::is_counted_as_washers(line, scopes, at, number);
    let beside = is_of_nuts.then_some("nuts").or(per_part::field_behind(line, scopes, at)).or(
        match scopes.beside(at) {
            Scope::Nut => Some("nuts"),
            Scope::Washer => Some("washers"),
            Scope::Part => None,
        },
    );
    let (field, mate, names) = match beside {
        Some("nuts") => ("nuts", "nut", &scopes.nut),
        Some(_) => ("washers", "washer", &scopes.washer),
        None => return,
    };
    if line.draft.get(mate).is_none() {
        return;
    }
    // “with 8 nut” may be a class.
    let is_plural = names
        .iter()
        .any(|name| line.items.get(*name).is_some_and(|item| per_part::is_plural(&lower(&item.text))));
    if !counted && mate == "nut" && number > 3 && !is_plural {
        line.not(at, format!("{number} nuts, or a nut of class {number}: write which"));
        return;
    }
    let pieces =
        line.draft.get("quantity").and_then(|pieces| pieces.parse::<u64>().ok()).filter(|pieces| *pieces > 0);
    // `8.8 bolts 8 nuts`: as many as a nut has classes, and so many go on no bolt.
    let is_word = matches!(line.what(at), Some(What::Small(_)));
    let is_named = line.draft.get(mate).is_some_and(|grade| grade != STANDARD);
    let counts_all = per_part::counts_all(line, scopes, at);
    let in_all = pieces.filter(|pieces| counts_all && number >= *pieces);
    let each = per_part::says_each(line, scopes, at);
    let may_be_class = mate == "nut"
        && !counted
        && !each
        && !is_word
        && !is_named
        && (5..=GREATEST_CLASS).contains(&number)
        && Grade::read(&format!("nut class {number}")).is_ok();
    let washers_are_counted =
        scopes.washer.first().and_then(|washer| washer.checked_sub(1)).is_some_and(|place| {
            matches!(line.what(place), Some(What::Bare(_) | What::Small(_) | What::Count(_)))
        });
    let is_few =
        in_all.is_some_and(|pieces| pieces > 1 && number.is_multiple_of(pieces) && number / pieces <= 3);
    let is_open = match pieces {
        Some(_) => counts_all,
        None => !washers_are_counted,
    };
    if may_be_class && is_open && !is_few {
        line.not(at, format!("{number} nuts, or nuts of class {number}: write which"));
        return;
    }
    // `with nut 8 pcs`: behind the noun of one nut, where nothing else counts the order.
    let is_behind_one = counted
        && mate == "nut"
        && !is_plural
        && pieces.is_none()
        && line.before(at).is_some_and(|before| names.contains(&before))
        && Grade::read(&format!("nut class {number}")).is_ok();
    if is_behind_one {
        let why = format!(
            "a nut of class {number}, or {number} pieces? Write “nut class {number}”, or {number} pcs behind a comma"
        );
        line.not(at, why);
        return;
    }
    // `8 bolts with 16 nuts each`, `4 U-bolts c/w 8 nuts`: so many go on no bolt, or on all of them.
    let is_whole = || {
        (is_plural || counted)
            && pieces.is_some_and(|pieces| pieces > 1 && number >= pieces && number.is_multiple_of(pieces))
            && number <= MOST
            && per_part::comes_whole(line, scopes, at)
    };
    let is_unsaid = || {
        pieces.is_none()
            && number > FEW
            && is_plural
            && per_part::is_of_one_or_all(line, scopes, at)
            && !counted
    };
    if each && number > MOST || is_whole() || is_unsaid() {
        line.not(at, format!("{number} to each, or {number} in all? Write which"));
        return;
    }
    // `500 bolts, washers 8`: so many go on no bolt, and are not all.
    if mate == "washer"
        && !counted
        && !each
        && number > FEW
        && in_all.is_none()
        && pieces.is_some_and(|pieces| pieces > 0 && !number.is_multiple_of(pieces))
    {
        line.not(at, format!("{number} washers to each, or of size {number}? Write which"));
        return;
    }
    let is_beside =
        [line.before(at), line.behind(at)].into_iter().flatten().any(|beside| names.contains(&beside));
    let per_set = match pieces {
        // Of so many bolts so many nuts are those of all.
        _ if in_all.is_none() && (1..=MOST).contains(&number) => Some(number),
        Some(pieces) if number.is_multiple_of(pieces) && (1..=MOST).contains(&(number / pieces)) => {
            Some(number / pieces)
        }
        _ => None,
    };
    match per_set {
        Some(per_set) => line.fill(at, field, &per_set.to_string(), "the number"),
        None if !counted && !is_beside => {
            line.not(at, format!("a number by itself: write {number} pcs if it counts them"));
        }
        None if mate == "nut" && number <= GREATEST_CLASS => {
            line.not(at, format!("{number} nuts, or nuts of class {number}: write which"));
        }
        None => line.not(at, NO_WHOLE_NUMBER),
    }
}

/// The word `set`.
fn set_words(line: &mut Line) -> bool {
    let words = line.free(|what| matches!(what, What::Set).then_some(()));
    for (at, ()) in &words {
        line.used(*at, "nut");
    }
    !words.is_empty()
}
