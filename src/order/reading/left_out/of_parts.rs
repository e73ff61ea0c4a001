//! A finish that is refused with the name of the parts that it is of: `HDG of the bolts is not permitted`.

use super::mate::{has_bolt, is_named_elsewhere};
use super::{OF_A_MATE, OF_SOME_PARTS, WHY, is_finish, says_how, written};
use crate::order::reading::either::process;
use crate::order::reading::items::Line;
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::nouns::{BOLTS, MATES, is_named};
use crate::order::reading::token;
use crate::order::reading::what::What;
use crate::quantity::letters::lower;

/// What is said of finishes: their places, and why they are not used.
pub(super) type Refused = (Vec<usize>, &'static str);

/// `plated bolts are refused`, `HDG of the bolts, nuts and washers is not allowed`: how bolts are coated is refused, and no
/// bolts; `HDG bolts not required` is of the bolts. Of `HDG washers are not accepted` it is the finish of what comes with
/// them; of what says more of the parts, `HDG of the M16 bolts`, `HDG bolts with missing nuts`, the line asks.
pub(super) fn refused_behind(line: &Line, excluded: usize, text: &str) -> Option<Refused> {
    let mut walk = Walk { at: excluded, depth: 0, is_list: false, is_crossed: false, is_open: false };
    let (mut finishes, mut has_bolts, mut mate, mut has_parts) = (Vec::new(), false, None, false);
    // What binds a finish to its parts (`of the bolts`), and whether another is joined to it.
    let (mut is_bound, mut is_of, mut goes_on) = (false, false, false);
    let (mut are_any, mut is_open, mut has_several) = (true, false, None);
    while let Some(at) = walk.next(line, text, excluded) {
        let binds = || lexicon::BINDS_A_PART.contains(&written(line, at).as_str());
        match line.what(at)? {
            What::With(_) | What::Or if has_parts => (walk.is_list, goes_on) = (true, true),
            // Behind a finish only a word that joins another goes on.
            _ if !finishes.is_empty() && !goes_on => break,
            What::Filler if !has_parts => {}
            What::Not(why) if has_parts && finishes.is_empty() && why == lexicon::SAYS_NOTHING => {}
            What::Filler if finishes.is_empty() && binds() => {
                is_bound = true;
                is_of |= lexicon::OF_A_SUBSTITUTE.contains(&written(line, at).as_str());
            }
            what if is_named(what, BOLTS) && (mate.is_none() || walk.is_list) => {
                // `HDG bolts and studs`: one of the two may be ordered.
                walk.is_open |= walk.is_list && !(are_any && is_bolt(what));
                are_any = is_bolt(what);
                (has_bolts, has_parts, is_of) = (true, true, false);
            }
            what if is_named(what, MATES) => (mate, has_parts, is_of) = (mate.or(Some(at)), true, false),
            What::Part(_) if has_parts => is_of = false,
            // `electroplating of 12.9 bolts`; `HDG bolts of class 4.6` refuses the class.
            What::Steel(_) | What::Class(_) if finishes.is_empty() => {
                let has_several = *has_several.get_or_insert_with(|| has_several_steels(line));
                if has_several && !has_parts {
                    return None;
                }
                walk.is_open |= has_several;
                (has_parts, is_of) = (true, false);
            }
            finish if is_finish(finish) && has_parts && line.items.get(at)?.is_free() => {
                let is_other = |last: &usize| line.what(*last).and_then(process) != process(finish);
                let is_joined = matches!(line.what(at + 1), Some(What::With(_) | What::Or));
                // `HDG bolts with plated nuts`: the one beside the other.
                let is_beside = mate.is_some() && !is_joined && finishes.last().is_some_and(is_other);
                let is_ordered = walk.is_crossed && line.before(at).is_some();
                if !(has_bolts || mate.is_some() || is_bound) || is_beside || is_ordered {
                    return None;
                }
                finishes.push(at);
                (goes_on, is_open) = (false, walk.is_open);
            }
            _ if has_parts && finishes.is_empty() => walk.is_open = true,
            _ => break,
        }
    }
    // `HDG of the bolts is not necessary`; `HDG bolts not required` is of the bolts.
    if finishes.is_empty() || !forbids(line, excluded) && !is_of {
        return None;
    }
    let why = match mate {
        Some(mate) if !has_bolts && has_bolt(line) => is_named_elsewhere(line, mate).then_some(OF_A_MATE)?,
        _ if is_open => OF_SOME_PARTS,
        _ => WHY,
    };
    Some((finishes, why))
}

/// The way from a refusal towards the head of its clause.
struct Walk {
    at: usize,
    /// How many brackets it is in.
    depth: usize,
    /// Whether several are joined.
    is_list: bool,
    /// Whether a comma of a list was passed.
    is_crossed: bool,
    /// Whether something stood between that may say what of the parts is meant.
    is_open: bool,
}

impl Walk {
    fn next(&mut self, line: &Line, text: &str, excluded: usize) -> Option<usize> {
        let before = line.before(self.at).or_else(|| {
            // `HDG bolts, nuts and washers`.
            let part = self.at.checked_sub(1).filter(|it| matches!(line.what(*it), Some(What::Part(_))));
            self.is_crossed |= self.is_list && part.is_some();
            part.filter(|_| self.is_list)
        })?;
        let gap = line.between(text, before, self.at)?;
        let is_next = self.at == excluded;
        for c in gap.chars().rev() {
            match c {
                ')' => self.depth += 1,
                '(' => self.depth = self.depth.checked_sub(1)?,
                '/' | '&' | '+' => self.is_list = true,
                // `HDG of the bolts: not allowed`; `HDG-bolts`.
                ':' if is_next => {}
                '-' if gap == "-" => {}
                // Another sentence.
                '.' | ';' | ':' | '-' | '–' => return None,
                _ => {}
            }
        }
        let says_more = |word: String| !says_how(&word) && !lexicon::BINDS_A_PART.contains(&word.as_str());
        self.is_open |= token::words(gap).map(lower).any(says_more);
        self.at = before;
        Some(before)
    }
}

/// So many letters in front of a refusal are looked at.
const FARTHEST: usize = 40;

/// Whether a name says no more than that it is a bolt.
fn is_bolt(what: &What) -> bool {
    matches!(what, What::Part("bolt" | "screw" | "schraube"))
}

/// Whether the line has steels that are not the same.
fn has_several_steels(line: &Line) -> bool {
    let is_steel = |what: &&What| matches!(what, What::Steel(_) | What::Class(_));
    let mut steels = line.items.iter().filter(|item| item.is_free()).map(|item| &item.what).filter(is_steel);
    steels.next().is_some_and(|first| steels.any(|other| other != first))
}

/// `no bolts in HDG`, `HDG or plating not for bolts and nuts`: the finishes that are refused, and no bolts; of what says more
/// of the bolts the line asks.
pub(super) fn refused_in_front(line: &Line, without: usize, text: &str) -> Option<Refused> {
    let first = line.behind(without)?;
    let says_for = line.what(first) == Some(&What::Filler)
        && lexicon::IN_THE_PLACE.contains(&written(line, first).as_str());
    let (mut last, mut has_bolts, mut is_open) = (without, false, false);
    let binder = line.over(without, Line::behind, |at| {
        let passes = match line.what(at) {
            Some(what) if is_bolt(what) => {
                has_bolts = true;
                true
            }
            Some(what) if is_named(what, BOLTS) => {
                (has_bolts, is_open) = (true, true);
                true
            }
            Some(what) if is_named(what, MATES) => true,
            Some(What::With(false) | What::Or) => true,
            Some(What::Not(why)) => why == lexicon::SAYS_NOTHING,
            // `no nuts for bolts in HDG`.
            Some(What::Filler) => {
                let word = written(line, at);
                says_for || ![lexicon::IN, lexicon::IN_THE_PLACE].iter().any(|it| it.contains(&word.as_str()))
            }
            Some(What::Part(_) | What::Thread(_) | What::Length(_) | What::Steel(_) | What::Class(_)) => {
                is_open = true;
                true
            }
            _ => false,
        };
        last = if passes { at } else { last };
        passes
    });
    let finishes = match (has_bolts, says_for) {
        (false, _) => return None,
        (true, true) => joined(line, without, Line::before),
        (true, false) => {
            let binds = |at: &usize| match line.what(*at) {
                Some(What::With(_)) => true,
                what => what == Some(&What::Filler) && lexicon::IN.contains(&written(line, *at).as_str()),
            };
            joined(line, binder.filter(binds)?, Line::behind)
        }
    };
    let rest = text.get(line.end(last)?..)?.split(token::is_break).next()?.split(['.', ')']).next()?;
    // `HDG not for bolts in stainless plates`, `no mixed bolts in HDG`.
    let says_more = match says_for {
        true => rest,
        false => line.between(text, without, *finishes.first()?)?,
    };
    if !says_for {
        // `if no bolts in HDG then plating`: on a condition alone.
        let (front, _) = token::near(text, line.start(without)?..line.end(without)?, FARTHEST);
        if token::words(front).any(|word| lexicon::CONDITIONS.contains(&lower(word).as_str())) {
            return None;
        }
        // `no bolts in HDG in stock`, `no bolts in HDG; nuts M16 HDG`: of those alone, or of another part.
        let end = line.end(*finishes.last()?)?;
        let behind = text.get(end..)?.split(token::is_break).next()?;
        let is_polite = |word: &str| lexicon::means(&lower(word), Word::Polite);
        is_open |= token::words(behind).any(|word| !is_polite(word));
        is_open |= line.items.iter().enumerate().any(|(at, item)| {
            !(without..=last).contains(&at) && item.is_free() && matches!(item.what, What::Part(_))
        });
    }
    let known = |word: &&str| {
        let word = lower(word);
        lexicon::knows(&word) || says_how(&word)
    };
    is_open |= !token::words(says_more).all(|word| known(&word));
    is_open |= says_for && binder.is_some_and(|next| line.what(next) != Some(&What::Polite));
    // `no bolts with HDG nuts`.
    let is_of_another = !says_for
        && line
            .said_behind(*finishes.last()?)
            .is_some_and(|next| matches!(line.what(next), Some(What::Part(_))));
    (!finishes.is_empty() && !is_of_another).then_some((finishes, if is_open { OF_SOME_PARTS } else { WHY }))
}

/// The finishes on one side of a place, over words that only bind, and what is joined to them.
fn joined(line: &Line, from: usize, next: fn(&Line, usize) -> Option<usize>) -> Vec<usize> {
    let is_one = |at: &usize| line.items.get(*at).is_some_and(|item| item.is_free() && is_finish(&item.what));
    let mut finishes = Vec::new();
    let mut found = line.over(from, next, |at| line.what(at) == Some(&What::Filler)).filter(is_one);
    while let Some(finish) = found {
        finishes.push(finish);
        let joint =
            next(line, finish).filter(|it| matches!(line.what(*it), Some(What::Or | What::With(false))));
        found = joint.and_then(|joint| next(line, joint)).filter(is_one);
    }
    finishes
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
