//! A finish that is refused with the name of the parts that it is of: `HDG of the bolts is not permitted`.

use super::mate::{has_bolt, is_named_elsewhere};
use super::{OF_A_MATE, UNCLEAR, WHY, is_finish, says_how, written};
use crate::order::reading::either::process;
use crate::order::reading::items::Line;
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::nouns::{BOLTS, MATES, is_named};
use crate::order::reading::token;
use crate::order::reading::what::What;
use crate::quantity::letters::lower;

/// `plated bolts are refused`, `HDG of the bolts, nuts and washers is not allowed`: how bolts are coated is refused, and no
/// bolts; `HDG bolts not required` is of the bolts. Of `HDG washers are not accepted` it is the finish of what comes with
/// them; `HDG bolts with missing nuts are not accepted` asks.
pub(super) fn refused_behind(line: &Line, excluded: usize, text: &str) -> Option<(Vec<usize>, &'static str)> {
    let mut walk = Walk { at: excluded, is_list: false, is_crossed: false, is_open: false };
    let (mut finishes, mut has_bolts, mut mate, mut of) = (Vec::new(), false, None, false);
    // What binds a finish to its parts, and whether another is joined to it.
    let (mut is_bound, mut is_of, mut goes_on) = (false, false, false);
    let (mut is_any_bolt, mut is_open) = (true, false);
    while let Some(at) = walk.next(line, text) {
        let word = || written(line, at);
        match line.what(at)? {
            What::With(_) | What::Or if of => {
                (walk.is_list, goes_on) = (true, true);
            }
            // Behind a finish only a word that joins another goes on.
            _ if !finishes.is_empty() && !goes_on => break,
            What::Filler if !of => {}
            What::Not(why) if of && finishes.is_empty() && why == lexicon::SAYS_NOTHING => {}
            What::Filler if finishes.is_empty() && lexicon::BINDS_A_PART.contains(&word().as_str()) => {
                (is_bound, is_of) = (true, is_of || lexicon::OF_A_SUBSTITUTE.contains(&word().as_str()));
            }
            what if is_named(what, BOLTS) && (mate.is_none() || walk.is_list) => {
                // `HDG bolts and studs`: one of the two may be ordered.
                if walk.is_list && !(is_any_bolt && is_bolt(what)) {
                    return None;
                }
                is_any_bolt = is_bolt(what);
                (has_bolts, of, is_of) = (true, true, false);
            }
            what if is_named(what, MATES) => (mate, of, is_of) = (mate.or(Some(at)), true, false),
            What::Part(_) if of => is_of = false,
            // `electroplating of 12.9 bolts`; `HDG bolts of class 4.6` refuses the class.
            What::Steel(_) | What::Class(_) if finishes.is_empty() && !has_another_steel(line, at) => {
                (of, is_of) = (true, false);
            }
            finish if is_finish(finish) && line.items.get(at)?.is_free() && of => {
                let other =
                    finishes.last().is_some_and(|last| line.what(*last).and_then(process) != process(finish));
                let is_apart = walk.is_crossed && line.before(at).is_some();
                // `HDG bolts with plated nuts`: the one beside the other.
                let is_joined = matches!(line.what(at + 1), Some(What::With(_) | What::Or));
                if !(has_bolts || mate.is_some() || is_bound) || other && !is_joined || is_apart {
                    return None;
                }
                finishes.push(at);
                (goes_on, is_open) = (false, walk.is_open);
            }
            _ => break,
        }
    }
    // `HDG of the bolts is not necessary`; `HDG bolts not required` is of the bolts.
    if finishes.is_empty() || !forbids(line, excluded) && !is_of {
        return None;
    }
    let why = match mate {
        Some(mate) if !has_bolts && has_bolt(line) => is_named_elsewhere(line, mate).then_some(OF_A_MATE)?,
        _ if is_open => UNCLEAR,
        _ => WHY,
    };
    Some((finishes, why))
}

/// The way from a refusal towards the head of its clause.
struct Walk {
    at: usize,
    /// Whether several are joined.
    is_list: bool,
    /// Whether a comma of a list was passed.
    is_crossed: bool,
    /// Whether words stood between that nobody knows.
    is_open: bool,
}

impl Walk {
    fn next(&mut self, line: &Line, text: &str) -> Option<usize> {
        let before = line.before(self.at).or_else(|| {
            // `HDG bolts, nuts and washers`.
            let part =
                self.at.checked_sub(1).filter(|before| matches!(line.what(*before), Some(What::Part(_))));
            self.is_crossed |= self.is_list && part.is_some();
            part.filter(|_| self.is_list)
        })?;
        let gap = text.get(line.end(before)?..line.start(self.at)?)?;
        // Another sentence.
        if gap.contains(['.', ';', ':', '(', ')', '-', '–']) {
            return None;
        }
        self.is_open |= token::words(gap)
            .map(lower)
            .any(|word| !says_how(&word) && !lexicon::BINDS_A_PART.contains(&word.as_str()));
        self.at = before;
        Some(before)
    }
}

/// Whether a name says no more than that it is a bolt.
fn is_bolt(what: &What) -> bool {
    matches!(what, What::Part("bolt" | "screw" | "schraube"))
}

/// Whether the line has another steel than the one at a place.
fn has_another_steel(line: &Line, at: usize) -> bool {
    let own = line.what(at);
    line.items.iter().any(|item| {
        item.is_free() && matches!(item.what, What::Steel(_) | What::Class(_)) && Some(&item.what) != own
    })
}

/// `no bolts in HDG`, `HDG not for bolts and nuts`: the finish that is refused, and no bolts.
pub(super) fn refused_in_front(line: &Line, without: usize, text: &str) -> Option<usize> {
    let is_one = |at: &usize| line.items.get(*at).is_some_and(|item| item.is_free() && is_finish(&item.what));
    let says_for = |at: usize| {
        line.what(at) == Some(&What::Filler) && lexicon::IN_THE_PLACE.contains(&written(line, at).as_str())
    };
    let first = line.behind(without)?;
    let (mut has_bolts, mut last) = (false, without);
    let next = line.over(if says_for(first) { first } else { without }, Line::behind, |at| {
        let is_bolt = line.what(at).is_some_and(is_bolt);
        let is_mate = line.what(at).is_some_and(|what| is_named(what, MATES));
        let passes = is_bolt || is_mate || matches!(line.what(at), Some(What::With(false) | What::Or));
        if passes {
            (has_bolts, last) = (has_bolts || is_bolt, at);
        }
        passes
    });
    let is_gap = |from: Option<usize>, to: Option<usize>| {
        let gap = from.zip(to).and_then(|(from, to)| text.get(from..to));
        gap.is_some_and(|gap| gap.chars().all(|c| c == ' '))
    };
    if !has_bolts {
        None
    } else if says_for(first) {
        let finish = line.before(without).filter(is_one)?;
        let is_next = is_gap(line.end(finish), line.start(without));
        // `not for bolts in stainless plates`.
        let rest = text.get(line.end(last)?..).unwrap_or_default().trim_start();
        let is_last = next.is_none() && (rest.is_empty() || rest.starts_with([',', ';', '.', '\n']));
        (is_next && is_last).then_some(finish)
    } else {
        let finish =
            line.said_behind(next.filter(|next| line.what(*next) == Some(&What::Filler))?).filter(is_one)?;
        let is_in = next.is_some_and(|next| lexicon::IN.contains(&written(line, next).as_str()));
        is_in.then_some(finish)
    }
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
