//! A finish that is refused with the name of the parts that it is of: `HDG of the bolts is not permitted`.

use super::mate::{has_bolt, is_named_elsewhere};
use super::{OF_A_MATE, WHY, is_finish, verb, written};
use crate::order::reading::either::process;
use crate::order::reading::items::Line;
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::nouns::{BOLTS, MATES, is_named};
use crate::order::reading::what::What;
use crate::quantity::letters::lower;

/// `plated bolts are refused`, `HDG of the bolts, nuts and washers is not allowed`: how bolts are coated is refused, and no
/// bolts; `HDG bolts not required` is of the bolts. Of `HDG washers are not accepted` it is the finish of what comes with
/// them.
pub(super) fn refused_behind(line: &Line, excluded: usize) -> Option<(Vec<usize>, &'static str)> {
    forbids(line, excluded).then_some(())?;
    let (mut at, mut finishes) = (excluded, Vec::new());
    let (mut has_bolts, mut mate, mut of, mut is_list, mut is_bound) = (false, None, false, false, false);
    // Behind a finish only a word that joins another goes on.
    let mut is_whole = false;
    while let Some(before) = line.before(at).or_else(|| listed_before(line, at, is_list)) {
        at = before;
        let is_small = || lexicon::BINDS_A_PART.contains(&written(line, at).as_str());
        match line.what(at)? {
            What::With(_) | What::Or if of => (is_list, is_whole) = (true, false),
            _ if is_whole => break,
            What::Filler if !of && finishes.is_empty() => {}
            What::Filler if finishes.is_empty() && is_small() => is_bound = true,
            what if is_named(what, BOLTS) && (mate.is_none() || is_list) => (has_bolts, of) = (true, true),
            what if is_named(what, MATES) => (mate, of) = (mate.or(Some(at)), true),
            What::Part(_) if of => {}
            // `electroplating of 12.9 bolts`; `HDG bolts of class 4.6` refuses the class.
            What::Steel(_) | What::Class(_) if finishes.is_empty() && !has_another_steel(line, at) => {
                of = true
            }
            finish if is_finish(finish) && line.items.get(at)?.is_free() && of => {
                let is_of_parts = has_bolts || mate.is_some();
                if !is_of_parts && !is_bound {
                    return None;
                }
                finishes.push(at);
                is_whole = true;
            }
            _ => break,
        }
    }
    let of = |finish: usize| line.what(finish).and_then(process);
    let is_one = finishes.iter().all(|finish| of(*finish) == finishes.first().and_then(|first| of(*first)));
    let why = match mate {
        // `HDG bolts with plated nuts`: either, or one beside the other.
        Some(_) if !is_one => verb::TWICE,
        Some(mate) if !has_bolts && has_bolt(line) => is_named_elsewhere(line, mate).then_some(OF_A_MATE)?,
        _ => WHY,
    };
    (!finishes.is_empty()).then_some((finishes, why))
}

/// Whether the line has another steel than the one at a place.
fn has_another_steel(line: &Line, at: usize) -> bool {
    let own = line.what(at);
    line.items.iter().any(|item| {
        item.is_free() && matches!(item.what, What::Steel(_) | What::Class(_)) && Some(&item.what) != own
    })
}

/// `HDG bolts, nuts and washers`: a part in front of the comma in front of a list.
fn listed_before(line: &Line, at: usize, is_list: bool) -> Option<usize> {
    at.checked_sub(1).filter(|before| is_list && matches!(line.what(*before), Some(What::Part(_))))
}

/// `no bolts in HDG`, `HDG not for bolts and nuts`: the finish that is refused, and no bolts.
pub(super) fn refused_in_front(line: &Line, without: usize) -> Option<usize> {
    let binds = |at: &usize| lexicon::BOUND_TO.contains(&written(line, *at).as_str());
    let is_one = |at: &usize| line.items.get(*at).is_some_and(|item| item.is_free() && is_finish(&item.what));
    let first = line.behind(without)?;
    if binds(&first) {
        let part = line.said_behind(first)?;
        return line.before(without).filter(is_one).filter(|_| is_named_at(line, part));
    }
    let mut has_bolts = false;
    let last = line.over(without, Line::behind, |at| {
        has_bolts |= is_named_at(line, at);
        matches!(line.what(at), Some(What::Part(_) | What::With(false) | What::Or))
    })?;
    Some(last).filter(|_| has_bolts).filter(binds).and_then(|last| line.said_behind(last)).filter(is_one)
}

fn is_named_at(line: &Line, at: usize) -> bool {
    line.what(at).is_some_and(|what| is_named(what, BOLTS))
}

/// Whether a word forbids what it speaks of: `not accepted`, `will be rejected`; `not required` says only that it is not
/// ordered, and `not possible` that nobody can make it.
pub(super) fn forbids(line: &Line, at: usize) -> bool {
    let is_one = line.items.get(at).filter(|item| item.what == What::Excluded).map(|item| lower(&item.text));
    is_one.is_some_and(|written| forbids_so(&written))
}

/// Whether these words forbid.
pub(in crate::order::reading) fn forbids_so(written: &str) -> bool {
    let last = written.rsplit(' ').next().unwrap_or_default();
    let is_out = matches!(last, "excluded" | "ausgeschlossen" | "possible" | "möglich");
    let refuses = |words: &str| lexicon::means(words, Word::Refused);
    let takes = || lexicon::means(last, Word::Acceptable) || lexicon::TAKES.contains(&last);
    !is_out && (refuses(written) || refuses(last) || takes())
}
