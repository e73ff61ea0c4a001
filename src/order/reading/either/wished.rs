//! Which of two finishes is wanted first, where another word than `or` says so: `mechanical preferred, hot dip acceptable`.

use super::{any_of, process};
use crate::order::reading::Piece;
use crate::order::reading::items::{Item, Line};
use crate::order::reading::lexicon;
use crate::order::reading::what::What;
use crate::quantity::letters::lower;

/// Finishes of which one is wanted first, or that are set against each other.
pub(super) fn settle(line: &mut Line, text: &str, unknown: &[Piece]) {
    for word in unknown {
        against(line, word, text);
    }
    for at in 0..line.items.len() {
        match line.what(at) {
            Some(What::Preferred { in_front }) => preferred(line, at, *in_front),
            Some(What::Acceptable) => acceptable(line, at),
            _ => {}
        }
    }
}

fn is_free(line: &Line, at: usize) -> bool {
    line.items.get(at).is_some_and(|item| item.is_free() && process(&item.what).is_some())
}

/// The finish beside a piece, over words that only bind and the colours of a chromate.
fn beside(line: &Line, at: usize, forward: bool) -> Option<usize> {
    let mut place = at;
    loop {
        place = if forward { line.behind(place)? } else { line.before(place)? };
        match line.what(place)? {
            What::Filler => {}
            What::Not(why) if why == lexicon::COLOUR => {}
            _ => return Some(place).filter(|place| is_free(line, *place)),
        }
    }
}

/// The finishes of another process than this one, in the order of the line.
fn others(line: &Line, at: usize) -> Vec<usize> {
    let own = line.what(at).and_then(process);
    let is_other = |place: &usize| is_free(line, *place) && line.what(*place).and_then(process) != own;
    (0..line.items.len()).filter(is_other).collect()
}

/// `HDG preferred`, `preferably HDG`, `zinc, galvanized if possible`: that finish first.
fn preferred(line: &mut Line, at: usize, in_front: bool) {
    let Some(first) = beside(line, at, in_front).or_else(|| beside(line, at, !in_front)) else {
        return;
    };
    let mut places = vec![first];
    places.extend(others(line, first));
    any_of(line, places, true, &[]);
    line.binds(at);
}

/// `HDG, zinc also acceptable`: that finish where the others do not suit.
fn acceptable(line: &mut Line, at: usize) {
    if let Some(second) = beside(line, at, false) {
        let mut places = others(line, second);
        places.push(second);
        any_of(line, places, true, &[]);
        line.binds(at);
    } else if line.before(at).and_then(|before| line.items.get(before)).is_some_and(is_of_a_choice) {
        line.binds(at);
    }
}

/// Whether a finish is one of several already.
fn is_of_a_choice(item: &Item) -> bool {
    !item.is_free() && process(&item.what).is_some()
}

/// `zinc, if HDG too thick`, `zinc then galvanised`, `zinc unless HDG is available`: which of the two is wanted hangs on
/// what is not known here, and either may be.
fn against(line: &mut Line, word: &Piece, text: &str) {
    let written = lower(&word.text);
    let (is_condition, is_between) =
        (lexicon::ON_A_CONDITION.contains(&written.as_str()), lexicon::VERSUS.contains(&written.as_str()));
    if !is_condition && !is_between {
        return;
    }
    let (start, end) = (|at: usize| line.start(at), |at: usize| line.end(at));
    let Some(second) =
        (0..line.items.len()).find(|at| start(*at).is_some_and(|start| start >= word.span.end))
    else {
        return;
    };
    // Words that nobody knows change nothing.
    let touches = |from: usize, to: usize, has_comma: bool| {
        text.get(from..to).is_some_and(|gap| {
            // `zinc (vs HDG)`, `zinc - if HDG too thick`.
            gap.chars()
                .all(|c| matches!(c, ' ' | '(' | '-' | '–') || c.is_alphabetic() || has_comma && c == ',')
        })
    };
    let is_behind = start(second).is_some_and(|start| touches(word.span.end, start, is_between));
    let first = second.checked_sub(1).filter(|first| is_free(line, *first) && is_free(line, second));
    let Some(first) = first.filter(|_| is_behind) else { return };
    if end(first).is_some_and(|end| touches(end, word.span.start, true)) {
        any_of(line, vec![first, second], false, &[]);
    }
}
