//! A finish that would take the place of another: `no plating in lieu of HDG`, `plating may not be substituted for HDG`.

use super::of_parts::forbids;
use super::{MAY_INSTEAD, WHY, is_finish, is_small, may_be, verb, written};
use crate::order::reading::either::process;
use crate::order::reading::items::Line;
use crate::order::reading::lexicon;
use crate::order::reading::token;
use crate::order::reading::what::What;
use crate::quantity::letters::lower;

/// `plating instead of HDG is not allowed`, `no plating in lieu of HDG`: where the one in front is refused the one behind is
/// not; the places that say neither for sure.
pub(super) fn instead(line: &Line, at: usize, finish: usize) -> Vec<(usize, &'static str)> {
    let over = |place: usize, next: fn(&Line, usize) -> Option<usize>| {
        line.over(place, next, |at| is_small(line, at))
    };
    let is_what = |place: Option<usize>, what: &What| place.filter(|place| line.what(*place) == Some(what));
    let last = over(finish, Line::behind);
    let behind = is_what(last, &What::Excluded);
    let front = over(at, Line::before);
    let between = is_what(front, &What::Excluded);
    let allowed = is_what(last, &What::Acceptable).or_else(|| is_what(front, &What::Acceptable));
    let first = match between.or_else(|| is_what(front, &What::Acceptable)) {
        Some(excluded) => over(excluded, Line::before),
        None => front,
    };
    let first = first.filter(|first| line.what(*first).is_some_and(is_finish));
    let no = first.and_then(|first| is_what(over(first, Line::before), &What::Without));
    match (behind, first) {
        // `mechanical in lieu of HDG is acceptable`: allowed, and not asked.
        (None, Some(first)) if allowed.is_some() && between.is_none() && no.is_none() => {
            vec![(at, MAY_INSTEAD), (first, MAY_INSTEAD)]
        }
        (Some(excluded), Some(first)) => {
            vec![(at, verb::TWICE), (excluded, verb::TWICE), (first, verb::TWICE)]
        }
        _ if between.is_some() || no.is_some() => vec![(at, verb::TWICE)],
        _ => Vec::new(),
    }
}

/// `plating may not replace HDG`, `do not replace HDG with plating`, `no substitution of plating for HDG`, `plating is no
/// substitute for HDG`: the finish that takes no other's place, and the words that refuse it; `mechanical may replace HDG`:
/// allowed, and not asked. What neither refuses nor allows leaves the one out for the other.
pub(super) fn replaces(line: &mut Line, at: usize, behind: usize, text: &str) -> Vec<(usize, &'static str)> {
    let (first, mut refuses, mut is_allowed) = in_front(line, at);
    // `plating is not an acceptable substitute for HDG`.
    if let (Some(front), [refusal]) = (first, refuses.as_slice())
        && *refusal > front
        && (is_allowed || forbids(line, *refusal))
    {
        says_nothing(line, at);
        return Vec::new();
    }
    let second = finish_behind(line, behind);
    let holds =
        |gap: &str, words: &[&str]| token::words(gap).any(|word| words.contains(&lower(word).as_str()));
    let gap = second.map_or("", |second| line.between(text, behind, second).unwrap_or_default());
    // `substitute plating for HDG`, and `substitute HDG with plating`.
    let is_for = holds(gap, lexicon::IN_THE_PLACE);
    let is_by = holds(gap, lexicon::BY_WHICH_OTHER);
    let (wanted, other) = match second {
        Some(second) if is_for => (second, Some(behind)),
        Some(second) if is_by => (behind, Some(second)),
        second => (behind, first.or(second)),
    };
    let is_other = |other: &usize| line.what(*other).and_then(process) != line.what(wanted).and_then(process);
    let other = other.filter(is_other);
    let last = if is_for || is_by { second.unwrap_or(behind) } else { behind };
    // `… by mechanical galvanizing or plating is not permitted`.
    let joins = |at: usize| matches!(line.what(at), Some(What::Or | What::With(false)));
    let is_joined =
        |at: usize| joins(at) || line.what(at).is_some_and(is_finish) && at.checked_sub(1).is_some_and(joins);
    let verdict = line.over(last, Line::behind, |at| is_small(line, at) || is_by && is_joined(at));
    // `substitution of HDG by plating is not permitted`: no plating.
    if let (true, true, true, Some(verdict)) = (is_by, refuses.is_empty(), first.is_none(), verdict)
        && forbids(line, verdict)
    {
        says_nothing(line, at);
        return Vec::new();
    }
    refuses.extend(verdict.filter(|verdict| forbids(line, *verdict)));
    is_allowed |= verdict.is_some_and(|verdict| line.what(verdict) == Some(&What::Acceptable));
    match other {
        _ if !refuses.is_empty() => {
            refuses.into_iter().chain([at]).chain(other).map(|at| (at, verb::TWICE)).collect()
        }
        Some(other) if is_allowed || may_be(line, at, text) => {
            [at, other].map(|at| (at, MAY_INSTEAD)).to_vec()
        }
        // `substitute plating for HDG`.
        Some(_) if is_for => {
            line.not(wanted, WHY);
            says_nothing(line, at);
            Vec::new()
        }
        // `replacement of HDG bolts`: by which finish?
        None if !has_another(line, wanted) => vec![(at, verb::TWICE)],
        _ => Vec::new(),
    }
}

/// The word has said all that it says: what is refused behind it is refused as anywhere.
fn says_nothing(line: &mut Line, at: usize) {
    if let Some(item) = line.item(at) {
        item.what = What::Filler;
    }
    line.binds(at);
}

/// Whether the line has a finish of another process.
fn has_another(line: &Line, finish: usize) -> bool {
    let own = line.what(finish).and_then(process);
    line.items
        .iter()
        .filter(|item| item.is_free())
        .filter_map(|item| process(&item.what))
        .any(|other| Some(other) != own)
}

/// The finish in front of a word that puts it in the place of another, what refuses it between the two or in front of both,
/// and whether it is allowed.
fn in_front(line: &Line, at: usize) -> (Option<usize>, Vec<usize>, bool) {
    let (mut first, mut refuses, mut is_allowed, mut place) = (None, Vec::new(), false, at);
    while let Some(before) = line.before(place) {
        place = before;
        match line.what(before) {
            Some(What::Without | What::Excluded) => {
                refuses.push(before);
                // `no plating as a substitute for HDG`.
                if first.is_some() {
                    break;
                }
            }
            Some(What::Acceptable) if first.is_none() => is_allowed = true,
            Some(what) if is_finish(what) && first.is_none() => first = Some(before),
            Some(What::With(_) | What::Small(1)) => {}
            _ if is_small(line, before) => {}
            _ => break,
        }
    }
    (first, refuses, is_allowed)
}

fn finish_behind(line: &Line, at: usize) -> Option<usize> {
    let is_between = |at: usize| matches!(line.what(at), Some(What::With(_))) || is_small(line, at);
    line.over(at, Line::behind, is_between).filter(|at| line.what(*at).is_some_and(is_finish))
}

/// Whether a word puts the finish behind it, or one of two, in the place of another.
pub(super) fn is_one(line: &Line, at: usize) -> bool {
    lexicon::REPLACE.contains(&written(line, at).as_str())
        || line.items.get(at).is_some_and(|item| item.rule == super::REPLACED)
}
