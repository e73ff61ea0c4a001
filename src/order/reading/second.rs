//! A second order in the same line: it is named, and nothing of it is taken for the first.

use super::items::Line;
use super::left_out::is_gone;
use super::what::What;
use super::{length, lexicon};
use crate::quantity::letters::lower;

/// Why a piece of a second order is not used.
pub(super) const WHY: &str = "a second order: write it as a line of its own";

/// Names everything of a second order, from where it begins.
pub(super) fn settle(line: &mut Line) {
    if two_lengths(line).is_some() {
        return;
    }
    let Some((begin, second)) = begin_by_number(line).or_else(|| begin(line)) else { return };
    // `200 pcs M12x30 and 300 pcs M12x40 8.8 hex bolts HDG`: what the first lacks is said of both.
    let said: Vec<Sort> = (0..begin).filter_map(|at| sort(line.what(at)?)).collect();
    for at in begin..line.items.len() {
        let is_shared = at > second
            && line.what(at).and_then(sort).is_some_and(|sort| said.iter().all(|own| *own != sort));
        if !is_shared {
            line.not(at, WHY);
        }
    }
}

/// `either M16 x 60 or M16 x 65`: of two lengths the longer is judged, and the other is named.
pub(super) fn which_length(line: &mut Line) {
    let Some([(first, _), (second, _)]) = two_lengths(line) else { return };
    for at in [first, second] {
        if let Some(item) = line.item(at) {
            item.became = None;
        }
    }
    line.take_back(&["length"]);
    length::the_longer(line, &[first, second]);
    for at in [first, second] {
        let text = match line.what(at) {
            Some(What::Length(text)) => text.clone(),
            _ => continue,
        };
        if line.items.get(at).is_some_and(super::items::Item::is_free) {
            line.fill(at, "length", &text, "the length");
        }
    }
}

/// Two lengths of one thread with `or` between: the second is no order of its own, and what follows is said of both.
fn two_lengths(line: &Line) -> Option<[(usize, String); 2]> {
    line.items.windows(2).find(
        |two| matches!(two, [or, size] if or.what == What::Or && matches!(size.what, What::Thread(_))),
    )?;
    let (begin, second) = begin(line)?;
    let is_or = second.checked_sub(1).is_some_and(|or| line.what(or) == Some(&What::Or));
    let size = |at: usize| match (line.what(at)?, line.what(at + 1)?) {
        (What::Thread(thread), What::Length(length)) if !thread.weak => {
            Some((thread.text.clone(), length.clone()))
        }
        _ => None,
    };
    let (first, (thread, one)) = (0..second).find_map(|at| Some((at, size(at)?)))?;
    let (same, other) = size(second)?;
    let is_choice = is_or && begin == second && thread == same && one != other;
    is_choice.then(|| [(first + 1, one), (second + 1, other)])
}

/// What two orders of a line may share.
#[derive(Clone, Copy, PartialEq)]
enum Sort {
    Part,
    Steel,
    Coat,
    Place,
    Years,
}

fn sort(what: &What) -> Option<Sort> {
    Some(match what {
        What::Part(_) | What::PartStandard(_) | What::PartDocument(_) => Sort::Part,
        What::Steel(_) | What::Hardness(..) => Sort::Steel,
        What::Process(..) | What::Coat(_) | What::Other(_) | What::Zinc(..) => Sort::Coat,
        What::Thickness(..) | What::AtMost(_) => Sort::Coat,
        What::Category(_) | What::Place(_) => Sort::Place,
        What::Years(_) => Sort::Years,
        _ => return None,
    })
}

/// `Line 1: 100 bolts M20x60 8.8; Line 2: 200 nuts M20`: where the second number of a line of the order stands, with a part or
/// a size on either side; it shares nothing with the first.
fn begin_by_number(line: &Line) -> Option<(usize, usize)> {
    let mut of_lines = line.items.iter().enumerate().filter_map(|(at, item)| {
        let text = lower(&item.text);
        let (word, number) = text.split_once(|c: char| !c.is_alphabetic())?;
        let is_one = item.rule == "label" && lexicon::OF_A_LINE.contains(&word);
        is_one.then(|| (at, word.to_owned(), number.to_owned()))
    });
    let (first, word, number) = of_lines.next()?;
    let (second, ..) = of_lines.find(|(_, other, own)| *other == word && *own != number)?;
    let says = |range: std::ops::Range<usize>| {
        line.items.get(range).is_some_and(|items| {
            items
                .iter()
                .any(|item| matches!(item.what, What::Part(_) | What::PartStandard(_) | What::Thread(_)))
        })
    };
    (says(first..second) && says(second..line.items.len())).then_some((second, line.items.len()))
}

/// Where it begins: at the second size with its length, or at the second size where both are counted; and its size.
fn begin(line: &Line) -> Option<(usize, usize)> {
    let threads: Vec<(usize, &str)> = line
        .items
        .iter()
        .enumerate()
        .filter_map(|(at, item)| match &item.what {
            // `not M20x60 but M16x60`: what is refused is no order.
            What::Thread(written) if !written.weak && !is_gone(&item.became) => {
                Some((at, written.text.as_str()))
            }
            _ => None,
        })
        .collect();
    let length = |at: usize| match (line.items.get(at), line.items.get(at + 1)) {
        (Some(item), Some(next)) if item.matched == next.matched => match &next.what {
            What::Length(text) => Some(text.as_str()),
            _ => None,
        },
        _ => None,
    };
    let (first, text) = *threads.first()?;
    let counts = |range: std::ops::Range<usize>| {
        line.items
            .get(range)
            .is_some_and(|items| items.iter().any(|item| matches!(item.what, What::Count(_))))
    };
    let (second, _) = *threads.iter().find(|(at, other)| {
        let both_long = length(first).zip(length(*at)).is_some_and(|(one, two)| one != two || text != *other);
        let counted = text != *other && counts(0..*at) && counts(*at..line.items.len());
        *at != first && (both_long || counted)
    })?;
    // From its count, where counts stand in front; else from the word or the comma that ends the first.
    let between = first + 1..second;
    let count = between.clone().rfind(|at| matches!(line.what(*at), Some(What::Count(_))));
    if let Some(count) = count.filter(|_| counts(0..first)) {
        return Some((count, second));
    }
    let stretch = line.items.get(second)?.stretch;
    let ends = |at: &usize| {
        matches!(line.what(*at), Some(What::With(_)))
            || line.items.get(*at).is_some_and(|it| it.stretch != stretch)
    };
    let end = between.clone().rfind(ends).filter(|end| count.is_none_or(|count| count < *end));
    let begin = match end {
        Some(end) if matches!(line.what(end), Some(What::With(_))) => end,
        Some(end) => end + 1,
        None => second,
    };
    Some((begin, second))
}
