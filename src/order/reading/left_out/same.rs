//! The words beside a finish that is not wanted: those that say the same one, and those that are joined to it.

use super::{WHY, is_finish};
use crate::order::reading::either::process;
use crate::order::reading::items::{Item, Line};
use crate::order::reading::lexicon;
use crate::order::reading::what::What;
use crate::order::reading::{Became, token};
use crate::process::Process;
use crate::quantity::letters::lower;

/// Why a finish that is joined to one that is refused is not used.
const JOINED: &str =
    "refused with the one beside it, or wanted? Write “no” in front of each that is not wanted";

/// Why a finish that is refused in one colour is not used.
const IN_THAT_COLOUR: &str = "refused in that colour, or altogether? Write what is wanted";

/// Whether a piece is the colour of a chromate.
pub(super) fn is_colour(what: &What) -> bool {
    matches!(what, What::Not(why) if why == lexicon::COLOUR)
}

/// `no yellow zinc`, `black zinc is not accepted`: why a piece that is refused is not used; where the line wants no finish
/// besides, another colour of it may be wanted.
pub(super) fn why_refused(line: &Line, at: usize) -> &'static str {
    let is_of_colour = match line.what(at) {
        Some(What::Process(_, true)) => true,
        Some(what) if is_finish(what) => {
            let beside = [line.before(at), line.behind(at)];
            beside.into_iter().flatten().any(|beside| line.what(beside).is_some_and(is_colour))
        }
        _ => false,
    };
    let wants = |(other, item): (usize, &Item)| other != at && item.is_free() && is_finish(&item.what);
    if is_of_colour && !line.items.iter().enumerate().any(wants) { IN_THAT_COLOUR } else { WHY }
}

/// `galvanisch verzinken verboten`, `no HDG per ISO 10684`, `no mech galv class 55`: the words beside a finish that say
/// the same one are not wanted either; the last of them.
pub(super) fn its_other_words(
    line: &mut Line,
    at: usize,
    text: &str,
    next: fn(&Line, usize) -> Option<usize>,
    why: &'static str,
) -> Option<usize> {
    let mut own = of(line.what(at)?)?;
    let (mut place, mut last) = (at, None);
    // `not hot dip: galvanized`, `not to F2329 but A153`.
    let is_apart = |line: &Line, one: usize, other: usize| {
        let gap = line.between(text, one.min(other), one.max(other));
        // `HDG. Galvanizing not for …`: another sentence.
        let mut next =
            line.start(one.max(other)).and_then(|start| text.get(start..)).unwrap_or_default().chars();
        let begins =
            next.next().is_some_and(char::is_uppercase) && next.next().is_some_and(char::is_lowercase);
        let is_sentence = begins && gap.is_some_and(|gap| gap.contains('.'));
        let is_but = |word: &str| lexicon::BUT.contains(&lower(word).as_str());
        is_sentence || gap.is_none_or(|gap| gap.contains([':', '(', ')']) || token::words(gap).any(is_but))
    };
    while let Some(other) = next(line, place).filter(|other| !is_apart(line, place, *other)) {
        place = other;
        let what = line.what(other)?;
        if *what == What::Filler {
            continue;
        }
        let is_its_class = matches!(what, What::Class(_)) && own == Some(Process::Mechanical);
        match of(what) {
            Some(other) if own.is_none() || other.is_none() || own == other => own = own.or(other),
            None if is_its_class => {}
            _ => break,
        }
        line.not(other, why);
        last = Some(other);
    }
    // Beside a process the word for zinc says nothing more.
    if let (Some(_), Some(last)) = (own, last) {
        for item in line.items.iter_mut().skip(at.min(last)).take(at.abs_diff(last) + 1) {
            if item.what == What::Not(lexicon::ANY_ZINC.into()) {
                item.became = Some(Became::Binds);
            }
        }
    }
    last
}

/// The process that a piece names, `Some(None)` where it is zinc and no more; `None` for what is no zinc.
#[expect(clippy::option_option, reason = "zinc of no process is another answer than no zinc")]
fn of(what: &What) -> Option<Option<Process>> {
    match what {
        What::Zinc(..) => Some(Some(Process::Electroplated)),
        What::Not(why) if why == lexicon::ANY_ZINC => Some(None),
        what => process(what).map(Some),
    }
}

/// `HDG and plating are not allowed`, `HDG or plating not wanted`: what a word joins to a finish that is refused behind it;
/// with `is` the verb may be of the last alone.
pub(super) fn joined_before(line: &mut Line, first: usize, excluded: usize, text: &str) {
    if !line.what(first).is_some_and(is_finish) {
        return;
    }
    let is_of_one = (first..excluded).any(|at| {
        line.items.get(at).is_some_and(|item| {
            item.what == What::Filler && matches!(lower(&item.text).as_str(), "is" | "ist")
        })
    });
    let mut at = first;
    while let Some(joint) = line.before(at)
        && matches!(line.what(joint), Some(What::Or | What::With(false)))
        && let Some(finish) = line.before(joint)
        && line.items.get(finish).is_some_and(|item| item.is_free() && is_finish(&item.what))
    {
        let is_open = is_of_one && line.what(joint) == Some(&What::With(false));
        let why = if is_open { JOINED } else { WHY };
        line.not(finish, why);
        line.binds(joint);
        at = its_other_words(line, finish, text, Line::before, why).unwrap_or(finish);
    }
}

/// `we don't want HDG and plating`: the second may be refused with the first, or wanted instead of it.
pub(super) fn joined_behind(line: &mut Line, last: usize) {
    let joint = line.behind(last).filter(|joint| line.what(*joint) == Some(&What::With(false)));
    let finish =
        joint.and_then(|joint| line.behind(joint)).filter(|_| line.what(last).is_some_and(is_finish));
    if let Some(finish) = finish.filter(|finish| line.what(*finish).is_some_and(is_finish)) {
        line.not(finish, JOINED);
    }
}
