//! How many: of the part, and of what comes with one.

use std::ops::Range;

use super::items::Line;
use super::lexicon::{OWN_A_NUMBER, SAYS_NOTHING};
use super::lone;
use super::part::{Family, Scope, Scopes};
use super::what::{Counted, SteelWord, What};
use crate::part::{self, Kind};
use crate::quantity::letters::lower;
use crate::quantity::{Length, number};
use crate::steel::Grade;
use crate::thread::Designation;

/// The most nuts or washers that one bolt has here.
pub(super) const MOST: u64 = 8;
/// The greatest class of nuts.
const GREATEST_CLASS: u64 = 12;

/// Quantity, sets, and numbers of nuts and washers.
pub(super) fn settle(line: &mut Line, scopes: &Scopes, text: &str, unknown: &[Range<usize>]) {
    let counts = line.free(|what| match what {
        What::Count(counted) => Some(counted.clone()),
        _ => None,
    });
    let counts = per_part(line, scopes, counts);
    let (own, beside): (Vec<_>, Vec<_>) =
        counts.into_iter().partition(|(at, counted)| counted.sets || scopes.beside(*at) == Scope::Part);
    let mut sets = false;
    for (at, counted) in own {
        sets |= counted.sets;
        whole(line, scopes, at, &counted);
    }
    weights(line, scopes);
    lone::owned(line, text, unknown);
    item_number(line, text);
    leading_number(line, scopes);
    for (at, counted) in beside {
        if counted.negative {
            line.not(at, "pieces are counted in whole numbers from 1");
        // `bolts with nuts, 500 pcs`: so many nuts do not go on one bolt.
        } else if line.draft.get("quantity").is_none() && counted.pieces > MOST {
            whole(line, scopes, at, &counted);
        } else {
            of_mate(line, scopes, at, counted.pieces, true);
        }
    }
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
            continue;
        }
        of_mate(line, scopes, at, number, false);
    }
    lone::settle(line, scopes);
    sets |= set_words(line);
    let nothing_named = !(scopes.with.0 || scopes.with.1)
        && line.draft.get("nut").is_none()
        && line.draft.get("washer").is_none();
    if sets && nothing_named && scopes.family == Family::Bolt {
        line.draft.set("nut", "standard");
        line.note("nut", "a set is a bolt with its nut");
    }
}

/// `2 nos nuts per bolt`, and `1 ea nut, 200 sets`: so many of what comes with one part.
fn per_part(line: &mut Line, scopes: &Scopes, counts: Vec<(usize, Counted)>) -> Vec<(usize, Counted)> {
    let counts_the_order = counts.iter().any(|(_, counted)| counted.sets || counted.pieces > MOST);
    let mate = |line: &Line, at: usize| {
        let mut name = at + 1;
        while matches!(line.what(name), Some(What::Steel(_) | What::Part(_)))
            && !scopes.is_of_nut(line, name)
            && !scopes.is_of_washer(line, name)
        {
            name += 1;
        }
        let (is_nut, is_washer) = (scopes.is_of_nut(line, name), scopes.is_of_washer(line, name));
        while scopes.is_of_nut(line, name) || scopes.is_of_washer(line, name) {
            name += 1;
        }
        let per = line.items.get(name).map(|item| lower(&item.text));
        let is_per = per.is_some_and(|per| {
            matches!(per.as_str(), "per" | "pro" | "je" | "each" | "to each" | "for each")
        });
        let of = line.what(name + 1).is_some_and(|what| matches!(what, What::Part(_)));
        match () {
            () if is_nut && (is_per && of || counts_the_order) => Some("nuts"),
            () if is_washer && (is_per && of || counts_the_order) => Some("washers"),
            () => None,
        }
    };
    let mut left = Vec::new();
    for (at, counted) in counts {
        match mate(line, at).filter(|_| !counted.sets && (1..=MOST).contains(&counted.pieces)) {
            Some(field) => line.fill(at, field, &counted.pieces.to_string(), "the number"),
            None => left.push((at, counted)),
        }
    }
    left
}

/// The lot by its mass, where the mass of one piece is known: about so many pieces.
fn weights(line: &mut Line, scopes: &Scopes) {
    let found = line.free(|what| match what {
        What::Weight(text, mass) => Some((text.clone(), *mass)),
        _ => None,
    });
    for (at, (text, lot)) in found {
        if line.draft.get("quantity").is_some() {
            line.not(at, "the pieces are counted: the weight is not used");
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
        line.fill(at, "quantity", &format!("{pieces}"), "the quantity");
        let grams = piece.kg() * 1000.0;
        line.note("quantity", format!("about: {text} at {grams:.1} g a piece, computed"));
    }
}

/// A length as a field of it reads it.
fn length_of(text: &str) -> Option<Length> {
    let (number, name) = text.trim().rsplit_once(' ')?;
    let number = number::read_number(number).ok()?;
    Some(match name {
        "mm" => Length::from_mm(number),
        "in" => Length::from_inch(number),
        "m" => Length::from_mm(number * 1000.0),
        "ft" => Length::from_inch(number * 12.0),
        _ => return None,
    })
}

/// A count of the part; figures with a space in them may be two numbers.
fn whole(line: &mut Line, scopes: &Scopes, at: usize, counted: &Counted) {
    if counted.negative {
        // The field says what is wrong with it.
        line.fill(at, "quantity", &format!("-{}", counted.pieces), "the quantity");
        return;
    }
    if let Some((first, rest)) = counted.spaced.filter(|(_, rest)| *rest >= 100) {
        let before = line.before(at);
        let is_nut = |place: usize| {
            scopes.nut.contains(&place) || scopes.family == Family::Nut && scopes.names.contains(&place)
        };
        let field = if scopes.family == Family::Nut { "steel" } else { "nut" };
        let nut_class =
            Grade::read(&format!("nut class {first}")).ok().filter(|_| line.draft.get(field).is_none());
        let two = |line: &mut Line, other: &str| {
            let why = format!(
                "it could be {} pieces, or {other} and {rest} pieces: write {} pcs or put a comma between",
                counted.pieces, counted.pieces
            );
            line.not(at, why);
        };
        use crate::process::Process;
        match (before.map(|before| (before, line.what(before))), nut_class) {
            (Some((_, Some(What::Process(Process::Mechanical, _)))), _)
                if super::steels::B695.contains(&first) =>
            {
                return two(line, &format!("class {first}"));
            }
            (Some((_, Some(What::Process(Process::Electroplated, _)))), _)
                if matches!(first, 5 | 8 | 12 | 25) =>
            {
                return two(line, &format!("a coat of {first} µm"));
            }
            (Some((_, Some(What::Process(Process::HotDip, _)))), _) if (20..=150).contains(&first) => {
                return two(line, &format!("a coat of {first} µm"));
            }
            (Some((_, Some(What::Steel(SteelWord::Grade(grade))))), _)
                if first <= 3 && HAVE_TYPES.contains(&grade.key()) =>
            {
                return two(line, &format!("type {first}"));
            }
            (
                Some((before, Some(what @ (What::Coat(_) | What::Other(_) | What::Not(_) | What::Filler)))),
                _,
            ) if (3..=150).contains(&first)
                && (*what != What::Filler
                    || line
                        .items
                        .get(before)
                        .is_some_and(|item| OWN_A_NUMBER.contains(&lower(&item.text).as_str()))) =>
            {
                let word = line.items.get(before).map(|item| item.text.clone()).unwrap_or_default();
                return two(line, &format!("“{word} {first}”"));
            }
            (Some((_, Some(What::Category(_) | What::Place(_)))), _) if first <= 100 => {
                return two(line, &format!("{first} years"));
            }
            (Some((before, _)), Some(class)) if is_nut(before) => {
                line.fill(at, field, class.key(), "the nut");
                line.fill(at, "quantity", &rest.to_string(), "the quantity");
                return;
            }
            (Some((_, Some(What::Thread(_)))), Some(_)) if scopes.family == Family::Nut => {
                return two(line, &format!("class {first}"));
            }
            (Some((_, Some(What::Thread(_)))), _)
                if scopes.family == Family::Bolt && line.draft.get("length").is_none() =>
            {
                return two(line, &format!("a length of {first}"));
            }
            (Some((before, _)), _)
                if scopes.names.contains(&before)
                    && line.draft.get("steel").is_none()
                    && matches!(first, 2 | 5 | 8)
                    && scopes.family == Family::Bolt =>
            {
                return two(line, &format!("grade {first}"));
            }
            _ => {}
        }
    }
    line.fill(at, "quantity", &counted.pieces.to_string(), "the quantity");
}

/// Steels whose documents have types: `A325 type 3`.
const HAVE_TYPES: &[&str] = &["a325", "a325m", "a490", "a490m", "f436", "f1852", "f2280"];

/// `1. M20x80`, `2) M20x80`: a number that counts the items of a list, at the head of the line.
fn item_number(line: &mut Line, text: &str) {
    let Some(first) = line.items.first().filter(|item| item.is_free()) else { return };
    let is_head = first
        .spans
        .first()
        .is_some_and(|span| text.get(..span.start).is_some_and(|head| head.trim().is_empty()));
    let behind = first.spans.last().and_then(|span| text.get(span.end..)).unwrap_or_default();
    if is_head
        && matches!(first.what, What::Bare(Some(_)))
        && (behind.starts_with(')') || behind.starts_with(". "))
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
        if !(first && counts && number > 0) || scopes.beside(at) != Scope::Part {
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
    let (field, mate, names) = match scopes.beside(at) {
        Scope::Nut => ("nuts", "nut", &scopes.nut),
        Scope::Washer => ("washers", "washer", &scopes.washer),
        Scope::Part => return,
    };
    if line.draft.get(mate).is_none() {
        return;
    }
    // “with 8 nut” may be a class.
    let is_plural = names
        .iter()
        .any(|name| line.items.get(*name).is_some_and(|item| lower(&item.text).ends_with(['s', 'n'])));
    if !counted && mate == "nut" && number > 3 && !is_plural {
        line.not(at, format!("{number} nuts, or a nut of class {number}: write which"));
        return;
    }
    let pieces =
        line.draft.get("quantity").and_then(|pieces| pieces.parse::<u64>().ok()).filter(|pieces| *pieces > 0);
    let per_set = match pieces {
        _ if (1..=MOST).contains(&number) => Some(number),
        Some(pieces) if number.is_multiple_of(pieces) && (1..=MOST).contains(&(number / pieces)) => {
            Some(number / pieces)
        }
        _ => None,
    };
    match per_set {
        Some(per_set) => line.fill(at, field, &per_set.to_string(), "the number"),
        None => {
            line.not(at, "no whole number to a bolt");
        }
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
