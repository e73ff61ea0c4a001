//! The thickness of one zone of a part, beside that of the part: `zinc 8 µm, under head 5 µm`.

use crate::order::reading::items::Line;
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::token;
use crate::order::reading::what::What;
use crate::quantity::letters::lower;

/// Why it is not used.
const OF_A_ZONE: &str = "the thickness of a zone? The whole part is judged with the other one";

/// So many letters on either side are looked at.
const FARTHEST: usize = 40;

/// So many words stand between a zone and its thickness: `on the threads: min`.
const MOST_BETWEEN: usize = 3;

/// Where a line has several thicknesses, those of its zones are named.
pub(super) fn settle(line: &mut Line, text: &str) {
    let all = line.free(|what| matches!(what, What::AtMost(_) | What::Thickness(_)).then_some(()));
    let matched = |at: usize| line.items.get(at).map(|item| item.matched.clone());
    // The least of a range stands with its greatest.
    let found: Vec<usize> = all
        .into_iter()
        .map(|(at, ())| at)
        .filter(|at| at.checked_sub(1).is_none_or(|last| matched(last) != matched(*at)))
        .collect();
    if found.len() < 2 {
        return;
    }
    // `8 µm on the shank, threads max 12 µm`: the greatest on the thread decides whether it fits.
    let thickest = found
        .iter()
        .filter_map(|at| match line.what(*at) {
            Some(What::Thickness(wanted)) => Some(wanted.solid()),
            _ => None,
        })
        .reduce(|one, other| if one.exceeds(other) { one } else { other });
    let is_other = |at: usize| match line.what(at) {
        // `zinc plated 12 µm, threads max 6 µm`: as much as fits.
        Some(What::AtMost(_)) if is_of_threads(line, text, at) => false,
        Some(What::AtMost(wanted)) => thickest.is_some_and(|thickest| thickest.exceeds(wanted.solid())),
        _ => true,
    };
    let in_front: Vec<bool> = found.iter().map(|at| is_beside(line, text, *at, false)).collect();
    let zones: Vec<usize> = found
        .iter()
        .enumerate()
        .filter(|(place, at)| {
            // What stands between two is of the second.
            let is_of_next = in_front.get(place + 1) == Some(&true);
            let is_range = matched(**at) == matched(**at + 1);
            !is_range
                && is_other(**at)
                && (in_front.get(*place) == Some(&true) || !is_of_next && is_beside(line, text, **at, true))
        })
        .map(|(_, at)| *at)
        .collect();
    // `min 8 µm on the head, max 12 µm`: the only class that is asked for.
    let is_class = |at: &&usize| matches!(line.what(**at), Some(What::Thickness(_)));
    let others = found.iter().filter(|at| !zones.contains(at));
    if others.clone().any(|at| is_class(&at)) || others.count() > 0 && !zones.iter().any(|at| is_class(&at)) {
        zones.into_iter().for_each(|at| line.not(at, OF_A_ZONE));
    }
}

/// Whether a zone of the part stands beside a thickness, in front of it or behind it, with the word that says where.
fn is_beside(line: &Line, text: &str, at: usize, is_behind: bool) -> bool {
    let near = words_beside(line, text, at, is_behind);
    let is_zone =
        |word: &String| lexicon::ZONES.contains(&word.as_str()) || word == "shank" || word == "schaft";
    let is_where =
        |word: &String| lexicon::ON_A_ZONE.contains(&word.as_str()) || lexicon::LESS.contains(&word.as_str());
    let zone = near.iter().take(MOST_BETWEEN + 1).position(is_zone);
    zone.is_some_and(|zone| {
        // `threads max 6 µm`: nothing but the word for an end between.
        let is_bound = |word: &String| [Word::Least, Word::Most].iter().any(|end| lexicon::means(word, *end));
        let is_next = near.iter().take(zone).all(is_bound);
        let from = zone.saturating_sub(MOST_BETWEEN);
        let words = near.get(from..zone + MOST_BETWEEN).or_else(|| near.get(from..)).unwrap_or_default();
        !is_behind && is_next || words.iter().any(is_where)
    })
}

/// Whether a word for a thread stands beside a thickness.
fn is_of_threads(line: &Line, text: &str, at: usize) -> bool {
    [true, false].into_iter().any(|is_behind| {
        let near = words_beside(line, text, at, is_behind);
        near.iter().take(MOST_BETWEEN + 1).any(|word| lexicon::OF_THREADS.contains(&word.as_str()))
    })
}

/// The words beside a thickness up to the next figure or mark, those next to it first.
fn words_beside(line: &Line, text: &str, at: usize, is_behind: bool) -> Vec<String> {
    let Some(span) = line.span(at) else { return Vec::new() };
    let (front, behind) = token::beside(text, span, FARTHEST);
    let is_end = |c: char| token::is_break(c) || c.is_ascii_digit() || matches!(c, '(' | ')');
    let words = |part: &str| -> Vec<String> { token::words(part).map(lower).collect() };
    match is_behind {
        true => words(behind.split(is_end).next().unwrap_or_default()),
        false => {
            let mut near = words(front.rsplit(is_end).next().unwrap_or_default());
            near.reverse();
            near
        }
    }
}
