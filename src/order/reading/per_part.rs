//! Counts of the nuts and washers that come with one part: `2 nos nuts per bolt`, `1 ea nut, 200 sets`.

use std::ops::Range;

use super::items::{Item, Line};
use super::length::UNIT_OF_THREAD;
use super::part::{Family, Scopes};
use super::what::{Counted, SteelWord, What};
use crate::quantity::letters::lower;

/// The most nuts or washers that one bolt has here.
pub(super) const MOST: u64 = 8;

/// How many pieces around a number are asked whether it is of one part.
const NEAR: usize = 12;

/// Takes them out of the counts; a plain number between two of them stands with the noun behind it, or, where all
/// stand so, with the one in front.
pub(super) fn settle(
    line: &mut Line,
    scopes: &Scopes,
    counts: Vec<(usize, Counted)>,
) -> Vec<(usize, Counted)> {
    let counts: Vec<(usize, Counted)> = counts
        .into_iter()
        .filter(|(at, counted)| {
            let is_its = counted.pieces <= MOST && !counted.sets && is_of_another(line, scopes, *at);
            if is_its {
                line.not(*at, OF_ANOTHER);
            }
            !is_its
        })
        .collect();
    let is_order = |counted: &Counted| counted.sets || counted.pieces > MOST;
    let counts_the_order = counts.iter().any(|(_, counted)| is_order(counted));
    let of_one = counts.iter().filter(|(_, counted)| !is_order(counted) && counted.pieces > 0);
    let mut of_one: Vec<(usize, u64, bool)> =
        of_one.map(|(at, counted)| (*at, counted.pieces, counts_the_order || is_times(line, *at))).collect();
    of_one.extend(numbers(line, scopes).into_iter().map(|(at, number)| (at, number, true)));
    of_one.sort_unstable();
    // `nuts 2 ea, washers 4 ea`: where each stands behind its noun and none follows the last.
    let bolts = of_bolts(line, scopes, &counts);
    let stands_behind = of_one.iter().all(|(at, _, is_sure)| *is_sure && before(line, scopes, *at).is_some())
        && of_one.last().is_some_and(|(last, ..)| behind(line, scopes, *last).is_none());
    let mut taken = Vec::new();
    for (at, pieces, is_sure) in of_one {
        // `2 bolts 2 nuts`: of all.
        let is_of_all = || counts_all(line, scopes, at) || comes_whole(line, scopes, at);
        if bolts.is_some_and(|bolts| pieces >= bolts) && is_of_all() {
            continue;
        }
        let field = match behind(line, scopes, at) {
            _ if stands_behind => before(line, scopes, at),
            Some((field, is_per)) => (is_per || is_sure).then_some(field),
            None if is_sure && !is_times(line, at) => before(line, scopes, at),
            None => None,
        };
        if let Some(field) = field {
            line.fill(at, field, &pieces.to_string(), "the number");
            taken.push(at);
        }
    }
    counts.into_iter().filter(|(at, _)| !taken.contains(at)).collect()
}

/// Why the number of what is not judged here is not used.
pub(super) const OF_ANOTHER: &str = "so many of what is not judged here";

/// `with H30 plate washer 1 each`: the number behind the name of a nut or a washer that is not known here.
pub(super) fn is_of_another(line: &Line, scopes: &Scopes, at: usize) -> bool {
    line.before(at).is_some_and(|before| {
        line.what(before) == Some(&What::Part("?"))
            && !scopes.names.contains(&before)
            && line.items.get(before).is_some_and(|item| {
                let text = lower(&item.text);
                ["nut", "washer", "mutter", "scheibe"]
                    .iter()
                    .any(|mate| text.trim_end_matches(['s', 'n']).ends_with(mate))
            })
    })
}

/// How many bolts the line counts, where the number stands at its head or has a unit.
fn of_bolts(line: &Line, scopes: &Scopes, counts: &[(usize, Counted)]) -> Option<u64> {
    let is_head =
        |at: usize| at == 0 && field_of(line, scopes, 0).is_none() && behind(line, scopes, 0).is_none();
    let head =
        line.items.first().filter(|item| item.is_free() && is_head(0)).and_then(|item| match item.what {
            What::Bare(Some(number)) => Some(number),
            What::Small(number) => Some(u64::from(number)),
            _ => None,
        });
    let with_unit = counts.iter().find(|(at, counted)| {
        !counted.sets && behind(line, scopes, *at).is_none() && before(line, scopes, *at).is_none()
    });
    let bolts = head.or(with_unit.map(|(_, counted)| counted.pieces))?;
    (bolts > 1 && scopes.family == Family::Bolt && !line.items.iter().any(is_of_sets)).then_some(bolts)
}

/// The numbers of pieces that nobody has taken.
fn counts(line: &Line) -> Vec<(usize, Counted)> {
    line.free(|what| match what {
        What::Count(counted) => Some(counted.clone()),
        _ => None,
    })
}

/// Whether a piece counts sets: what comes with them is that of one.
fn is_of_sets(item: &Item) -> bool {
    matches!(&item.what, What::Set) || matches!(&item.what, What::Count(counted) if counted.sets)
}

/// Whether a number beside `nuts` or `washers` is that of all of them, where the bolts are counted: neither the
/// line nor `each` behind the noun or in front of the number says that it is of one.
pub(super) fn counts_all(line: &Line, scopes: &Scopes, at: usize) -> bool {
    let Some((mates, is_per)) = mates(line, scopes, at) else { return false };
    let is_noun = |place: usize| matches!(line.what(place), Some(What::Part(_)));
    let text = |place: usize| line.items.get(place).map_or(String::new(), |item| lower(&item.text));
    // `6 pcs F436`: pieces, or a grade by itself, are as many as their number says.
    let is_plural = mates.clone().any(|place| is_plural(&text(place)))
        || matches!(line.what(at), Some(What::Count(_)))
        || !mates.clone().any(is_noun);
    is_plural
        && !is_per
        && !says_each(line, scopes, at)
        && !comes_whole(line, scopes, at)
        && !is_times(line, at)
        && !line.items.iter().any(is_of_sets)
}

/// Whether neither `each` nor sets say that a number beside nuts or washers is that of one part.
pub(super) fn is_of_one_or_all(line: &Line, scopes: &Scopes, at: usize) -> bool {
    mates(line, scopes, at).is_some_and(|(_, is_per)| !is_per)
        && !says_each(line, scopes, at)
        && !line.items.iter().any(is_of_sets)
}

/// Whether the line says that a number beside `nuts` or `washers` is that of one part: `2 nuts and 2 washers each`.
pub(super) fn says_each(line: &Line, scopes: &Scopes, at: usize) -> bool {
    let Some((mates, _)) = mates(line, scopes, at) else { return false };
    let says_each = |place: usize| {
        let text = line.items.get(place).map_or(String::new(), |item| lower(&item.text));
        [
            "each", "ea", "per", "pro", "je", "jeweils", "to", "for", "apiece", "pr", "par", "voor", "pièce",
            "elk", "elke", "chacun", "chacune", "ieder", "iedere",
        ]
        .contains(&text.split(' ').next().unwrap_or_default())
            && line.items.get(place).is_some_and(|item| matches!(item.what, What::Filler | What::Not(_)))
    };
    let far = line.items.len().min(at.max(mates.end) + NEAR);
    let near = at.saturating_sub(NEAR);
    // `each 2 nuts`, `2 each nuts`.
    let in_front = at
        .checked_sub(1)
        .is_some_and(|front| says_each(front) || front.checked_sub(1).is_some_and(says_each));
    let is_unit = matches!(line.what(at), Some(What::Count(_)));
    let with = (near..at).rev().find(|place| matches!(line.what(*place), Some(What::With(_))));
    in_front && !is_unit
        || (at.max(mates.end.saturating_sub(1)) + 1..far).any(says_each)
        || with.is_some_and(|with| (near..with).any(says_each))
}

/// `c/w 4 no nuts`: what one comes with, or what all come with.
pub(super) fn comes_whole(line: &Line, scopes: &Scopes, at: usize) -> bool {
    if says_each(line, scopes, at) || behind(line, scopes, at).is_some_and(|(_, is_per)| is_per) {
        return false;
    }
    let near = at.saturating_sub(NEAR);
    (near..at).rev().find(|place| line.what(*place) == Some(&What::With(true))).is_some_and(|with| {
        let text = line.items.get(with).map_or(String::new(), |item| lower(&item.text));
        text != "with" && (text.ends_with(" with") || text.starts_with('c'))
    })
}

/// `nuts 12, washers 24`: a number behind the nuts counts them where one behind the washers, which have no class,
/// counts those.
pub(super) fn is_counted_as_washers(line: &Line, scopes: &Scopes, at: usize, number: u64) -> bool {
    let is_number = |place: &usize| match line.what(*place) {
        Some(What::Bare(Some(_)) | What::Small(_)) => true,
        Some(What::Count(counted)) => !counted.sets,
        _ => false,
    };
    let is_behind = |place: usize, field| before(line, scopes, place) == Some(field);
    is_behind(at, "nuts")
        && (at..line.items.len().min(at + NEAR)).filter(is_number).any(|place| is_behind(place, "washers"))
        // `500 bolts, nuts 8, washers 8`: no such number of all.
        && of_bolts(line, scopes, &counts(line)).is_none_or(|bolts| number.is_multiple_of(bolts))
}

/// `12 bolts, nuts 12`: as many as the bolts, or two to each, and a class of nuts as well.
pub(super) fn may_count(line: &Line, scopes: &Scopes, at: usize, number: u64) -> bool {
    let is_plural = mates(line, scopes, at).is_some_and(|(mut mates, _)| {
        mates.any(|place| line.items.get(place).is_some_and(|item| is_plural(&lower(&item.text))))
    });
    is_plural
        && of_bolts(line, scopes, &counts(line)).is_some_and(|bolts| number == bolts || number == bolts * 2)
        && !line.items.iter().any(is_of_sets)
}

/// The name of the nuts or washers that a number stands beside, in front of it or behind it, and whether it is said to
/// be that of one part.
fn mates(line: &Line, scopes: &Scopes, at: usize) -> Option<(Range<usize>, bool)> {
    let name = |from: usize, field: &'static str| {
        let is_its = |place: &usize| field_of(line, scopes, *place) == Some(field);
        let first = (from.saturating_sub(NEAR)..=from).rev().take_while(is_its).last().unwrap_or(from);
        let far = line.items.len().min(from + NEAR);
        let end = (from..far).take_while(is_its).last().unwrap_or(from) + 1;
        first..end
    };
    if let Some((field, is_per)) = behind(line, scopes, at) {
        let far = line.items.len().min(at + NEAR);
        let first = (at + 1..far).find(|place| field_of(line, scopes, *place) == Some(field))?;
        return Some((name(first, field), is_per));
    }
    let noun = line.before(at)?;
    Some((name(noun, field_of(line, scopes, noun)?), false))
}

/// Whether a noun is of more than one.
pub(super) fn is_plural(noun: &str) -> bool {
    noun.ends_with(['s', 'n'])
}

/// `2x washer`.
fn is_times(line: &Line, at: usize) -> bool {
    line.items.get(at).is_some_and(|item| item.text.trim_end().ends_with(['x', 'X', '×', '*']))
}

/// Small numbers without a unit, in words or where both a nut and a washer come with the part: no class of a nut is
/// so small.
fn numbers(line: &Line, scopes: &Scopes) -> Vec<(usize, u64)> {
    let has = |field| (0..line.items.len()).any(|at| field_of(line, scopes, at) == Some(field));
    let has_both = has("nuts") && has("washers");
    let found = line.free(|what| match what {
        What::Small(number) => Some(u64::from(*number)),
        What::Bare(Some(number)) => Some(*number),
        _ => None,
    });
    let of_ends = |at: usize| line.behind(at).is_some_and(|next| line.what(next) == Some(&What::Ends));
    let is_article = |at: usize| line.items.get(at).is_some_and(|item| item.text.eq_ignore_ascii_case("a"));
    let is_sure = |at: usize| {
        has_both || matches!(line.what(at), Some(What::Small(_))) && behind(line, scopes, at).is_some()
    };
    let fits = |at: usize| is_sure(at) && !of_ends(at) && !is_article(at);
    found.into_iter().filter(|(at, number)| (1..=3).contains(number) && fits(*at)).collect()
}

/// `nut x1, washer x2`, `M16 nuts x 500`: behind a nut or a washer, which have no length, a number.
pub(super) fn behind_a_cross(line: &mut Line) {
    for at in 1..line.items.len() {
        let Some(What::Length(text)) = line.what(at).filter(|_| line.before(at).is_some()) else { continue };
        let number = text.strip_suffix(UNIT_OF_THREAD).and_then(|number| number.trim().parse::<u64>().ok());
        let is_mate = match line.what(at - 1) {
            Some(What::Part(noun)) => ["nut", "washer"].iter().any(|mate| noun.ends_with(mate)),
            Some(What::PartStandard(key)) => ["nut", "washer"].iter().any(|mate| key.ends_with(mate)),
            Some(What::Steel(SteelWord::Grade(grade))) => grade.is_nut() || grade.is_washer(),
            _ => false,
        };
        if let (Some(number), true) = (number, is_mate)
            && let Some(item) = line.item(at)
        {
            item.what = What::Bare(Some(number));
        }
    }
}

/// The field of a noun at a place.
fn field_of(line: &Line, scopes: &Scopes, at: usize) -> Option<&'static str> {
    match () {
        () if scopes.is_of_nut(line, at) => Some("nuts"),
        () if scopes.is_of_washer(line, at) => Some("washers"),
        () => None,
    }
}

/// The noun in front of a count, in its own stretch.
fn before(line: &Line, scopes: &Scopes, at: usize) -> Option<&'static str> {
    field_of(line, scopes, line.before(at)?)
}

/// Nuts or washers, whose noun stands behind a number; right behind another noun only where that one has its number in
/// front of it as well: `80 nuts 80 washers`, and not `nut 1 washer 2`.
pub(super) fn field_behind(line: &Line, scopes: &Scopes, at: usize) -> Option<&'static str> {
    let (field, _) = behind(line, scopes, at)?;
    let other = before(line, scopes, at).filter(|other| *other != field);
    let is_number = |place: &usize| {
        matches!(line.what(*place), Some(What::Bare(Some(_)) | What::Small(_) | What::Count(_)))
    };
    let has_its_own = |other| {
        (at.saturating_sub(NEAR)..at)
            .filter(is_number)
            .any(|place| behind(line, scopes, place).is_some_and(|(of, _)| of == other))
    };
    other.is_none_or(has_its_own).then_some(field)
}

/// The noun behind a count, and whether it is said to be that of one part: `per bolt`.
fn behind(line: &Line, scopes: &Scopes, at: usize) -> Option<(&'static str, bool)> {
    let mut name = line.behind(at)?;
    // `4 M20 nuts`, `4 M20 class 8 HDG nuts`: what is said of them stands between, and no other name.
    let is_between = |name: usize| match line.what(name) {
        Some(What::Part(_)) => !scopes.names.contains(&name),
        Some(What::Thread(written)) => !written.weak,
        Some(What::Steel(_) | What::Class(_) | What::Process(..) | What::Coat(_)) => true,
        _ => false,
    };
    while name <= at + NEAR && field_of(line, scopes, name).is_none() && is_between(name) {
        name = line.behind(name)?;
    }
    let field = field_of(line, scopes, name)?;
    while field_of(line, scopes, name) == Some(field) {
        name += 1;
    }
    let per = line.items.get(name).map(|item| lower(&item.text));
    let is_per =
        per.is_some_and(|per| matches!(per.as_str(), "per" | "pro" | "je" | "each" | "to each" | "for each"));
    let of = line.what(name + 1).is_some_and(|what| matches!(what, What::Part(_)));
    Some((field, is_per && of))
}
