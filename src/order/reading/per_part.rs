//! Counts of the nuts and washers that come with one part: `2 nos nuts per bolt`, `1 ea nut, 200 sets`.

use super::items::Line;
use super::length::UNIT_OF_THREAD;
use super::part::Scopes;
use super::what::{Counted, SteelWord, What};
use crate::quantity::letters::lower;

/// The most nuts or washers that one bolt has here.
pub(super) const MOST: u64 = 8;

/// Takes them out of the counts.
pub(super) fn settle(
    line: &mut Line,
    scopes: &Scopes,
    counts: Vec<(usize, Counted)>,
) -> Vec<(usize, Counted)> {
    let is_order = |counted: &Counted| counted.sets || counted.pieces > MOST;
    let counts_the_order = counts.iter().any(|(_, counted)| is_order(counted));
    let of_one: Vec<usize> = counts
        .iter()
        .filter(|(_, counted)| !is_order(counted) && counted.pieces > 0)
        .map(|(at, _)| *at)
        .collect();
    // `nuts 2 ea, washers 4 ea`: where each stands behind its noun and none follows the last.
    let stands_behind = counts_the_order
        && !of_one.is_empty()
        && of_one.iter().all(|at| before(line, scopes, *at).is_some())
        && of_one.last().is_some_and(|last| behind(line, scopes, *last).is_none());
    let mut left = Vec::new();
    for (at, counted) in counts {
        let field = of_one.contains(&at).then(|| match behind(line, scopes, at) {
            _ if stands_behind => before(line, scopes, at),
            Some((field, is_per)) => (is_per || counts_the_order).then_some(field),
            None if counts_the_order => before(line, scopes, at),
            None => None,
        });
        match field.flatten() {
            Some(field) => line.fill(at, field, &counted.pieces.to_string(), "the number"),
            None => left.push((at, counted)),
        }
    }
    left
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
