//! Counts of the nuts and washers that come with one part: `2 nos nuts per bolt`, `1 ea nut, 200 sets`.

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
        if !stands_behind && bolts.is_some_and(|bolts| pieces >= bolts) && counts_all(line, scopes, at) {
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

/// Whether a piece counts sets: what comes with them is that of one.
fn is_of_sets(item: &Item) -> bool {
    matches!(&item.what, What::Set) || matches!(&item.what, What::Count(counted) if counted.sets)
}

/// Whether a number in front of `nuts` or `washers` is that of all of them, where the bolts are counted: neither the
/// line nor `each` behind the noun or in front of the number says that it is of one.
pub(super) fn counts_all(line: &Line, scopes: &Scopes, at: usize) -> bool {
    let Some((field, is_per)) = behind(line, scopes, at) else { return false };
    let text = |place: usize| line.items.get(place).map_or(String::new(), |item| lower(&item.text));
    let says_each = |place: usize| {
        let text = text(place);
        ["each", "ea", "per", "pro", "je", "to", "for", "apiece", "pr", "par", "voor", "pièce"]
            .contains(&text.split(' ').next().unwrap_or_default())
            && line.items.get(place).is_some_and(|item| matches!(item.what, What::Filler | What::Not(_)))
    };
    let far = line.items.len().min(at + NEAR);
    let near = at.saturating_sub(NEAR);
    let first = (at + 1..far).find(|place| field_of(line, scopes, *place) == Some(field));
    let Some(first) = first else { return false };
    let end = (first..far).find(|place| field_of(line, scopes, *place) != Some(field)).unwrap_or(far);
    let is_plural = (first..end).any(|place| is_plural(&text(place)));
    let each_in_front = at
        .checked_sub(1)
        .is_some_and(|front| says_each(front) || front.checked_sub(1).is_some_and(says_each));
    // `each with 2 nuts and 2 washers`, `2 nuts and 2 washers each`.
    let each_at_the_end = (end..far).any(says_each);
    let with = (near..at).rev().find(|place| matches!(line.what(*place), Some(What::With(_))));
    let each_before = with.is_some_and(|with| (near..with).any(says_each));
    // `c/w 4 no nuts`: what one comes with.
    let is_whole = with.is_some_and(|with| {
        let text = text(with);
        text != "with" && (text.ends_with(" with") || text.starts_with('c'))
    });
    is_plural
        && !is_per
        && !each_in_front
        && !each_at_the_end
        && !each_before
        && !is_whole
        && !is_times(line, at)
        && !line.items.iter().any(is_of_sets)
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

/// The noun behind a count, and whether it is said to be that of one part: `per bolt`.
fn behind(line: &Line, scopes: &Scopes, at: usize) -> Option<(&'static str, bool)> {
    let mut name = line.behind(at)?;
    while field_of(line, scopes, name).is_none()
        && matches!(line.what(name), Some(What::Steel(_) | What::Part(_)))
    {
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
