//! Counts of the nuts and washers that come with one part: `2 nos nuts per bolt`, `1 ea nut, 200 sets`.

use super::items::Line;
use super::length::UNIT_OF_THREAD;
use super::part::Scopes;
use super::what::{Counted, SteelWord, What};
use crate::quantity::letters::lower;

/// The most nuts or washers that one bolt has here.
pub(super) const MOST: u64 = 8;

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
    let stands_behind = of_one.iter().all(|(at, _, is_sure)| *is_sure && before(line, scopes, *at).is_some())
        && of_one.last().is_some_and(|(last, ..)| behind(line, scopes, *last).is_none());
    let mut taken = Vec::new();
    for (at, pieces, is_sure) in of_one {
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
