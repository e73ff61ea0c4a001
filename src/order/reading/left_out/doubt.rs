//! What a line refuses only perhaps, so that it asks: `any coating but HDG is refused`, `no bolts without HDG`, `we don't want
//! HDG with white rust`.

use std::collections::HashSet;

use super::mate::{name_behind, standard_of};
use super::of_parts::forbids;
use super::{
    ALL_BUT, BY_A_VERB, MATES, OF_A_MATE, WITH_OR_WITHOUT, can_be_left_out, clause, is_finish, is_named,
    is_place, is_small, replaced, says_how, verb, written,
};
use crate::order::reading::items::{Item, Line};
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::what::What;
use crate::order::reading::{Piece, token};
use crate::quantity::letters::lower;

/// The places of what refuses nothing for sure: each is named with its question, and the finish stays.
pub(super) fn in_doubt(line: &mut Line, text: &str, unknown: &[Piece]) -> HashSet<usize> {
    let mut doubted: Vec<(usize, &'static str)> = clause::on_a_clause(line, text, unknown);
    for at in 0..line.items.len() {
        let what = line.what(at);
        if what == Some(&What::Excluded) && is_bound_behind(line, at, text) {
            doubted.push((at, verb::ONLY_THERE));
        }
        if let Some(no) = refused_without_a_mate(line, at, text) {
            doubted.extend([(no, verb::TWICE), (at, verb::TWICE)]);
            continue;
        }
        if let Some(of_mates) = excepted_mates(line, at) {
            doubted.extend(of_mates);
            continue;
        }
        if let Some(refused) = refused_without_it(line, at) {
            doubted.extend([(at, verb::TWICE), (refused, verb::TWICE)]);
            continue;
        }
        let Some(finish) = finish_behind(line, at).filter(|_| what == Some(&What::Without)) else { continue };
        let rule = line.items.get(at).map_or("", |item| item.rule);
        if rule == ALL_BUT {
            let refusing = refusing(line, at, finish, false);
            if !refusing.is_empty()
                || says_more(line, finish, unknown, text)
                || is_refused_in_front(line, at, text)
            {
                doubted.push((at, verb::ALONE));
                doubted.extend(refusing.into_iter().map(|at| (at, verb::TWICE)));
            }
        } else if lexicon::INSTEAD_OF.contains(&written(line, at).as_str()) {
            doubted.extend(replaced::instead(line, at, finish));
        } else if replaced::is_one(line, at) {
            doubted.extend(replaced::replaces(line, at, finish, text));
        } else if takes_out(line, at) {
            // `no plating except mechanical`: none but mechanical plating.
            doubted.push((at, verb::TWICE));
        } else if let Some(refused) = refused_behind(line, finish).filter(|_| rule != BY_A_VERB) {
            // `bolts not HDG are refused`.
            doubted.extend([(at, verb::TWICE), (refused, verb::TWICE)]);
        } else if is_without(line, at) {
            let refusing = refusing(line, at, finish, true);
            if !refusing.is_empty() {
                doubted.push((at, verb::TWICE));
                doubted.extend(refusing.into_iter().map(|at| (at, verb::TWICE)));
            }
        } else if rule == BY_A_VERB && is_bound(line, finish, unknown, text) {
            doubted.push((at, verb::ONLY_THERE));
        }
    }
    for (at, why) in &doubted {
        line.not(*at, *why);
    }
    doubted.into_iter().map(|(at, _)| at).collect()
}

/// So many letters on either side are looked at.
const FARTHEST: usize = 80;

/// `HDG except nuts plated`: the finish of what comes with the part, which is not left out; `HDG except nuts`: with another
/// finish, or without them.
fn excepted_mates(line: &Line, at: usize) -> Option<Vec<(usize, &'static str)>> {
    let is_one =
        line.what(at) == Some(&What::Without) && lexicon::ALL_BUT.contains(&written(line, at).as_str());
    // `HDG, except washers plated`: a comma may stand between.
    let mut front = at.checked_sub(1).filter(|_| is_one)?;
    while is_small(line, front) {
        front = line.before(front)?;
    }
    let is_coated =
        line.what(front).is_some_and(is_finish) && line.items.get(front).is_some_and(Item::is_free);
    let (mut mates, mut place) = (Vec::new(), at);
    let finish = loop {
        let Some(behind) = line.behind(place).filter(|_| is_coated) else { break None };
        place = behind;
        match line.what(behind)? {
            what if is_named(what, MATES) => mates.push(behind),
            what if is_finish(what) => break Some(behind),
            What::Filler | What::With(_) | What::Or => {}
            _ => break None,
        }
    };
    let found = match finish {
        Some(finish) => vec![(at, OF_A_MATE), (finish, OF_A_MATE)],
        None => mates.iter().copied().chain([at]).map(|at| (at, WITH_OR_WITHOUT)).collect(),
    };
    (!mates.is_empty()).then_some(found)
}

/// The finish behind a word, over words that only bind.
fn finish_behind(line: &Line, at: usize) -> Option<usize> {
    let next = line.said_behind(at)?;
    // `ohne Verzinkung`: of no process.
    let is_zinc = |what: &What| is_finish(what) || *what == What::Not(lexicon::ANY_ZINC.into());
    line.what(next).is_some_and(is_zinc).then_some(next)
}

/// Whether a word takes one finish out of another that is refused right in front of it.
fn takes_out(line: &Line, at: usize) -> bool {
    let written = written(line, at);
    let is_one = lexicon::ALL_BUT.contains(&written.as_str())
        || written.ends_with(" from")
        || written.ends_with(" than");
    let refused = line.said_before(at).filter(|refused| is_one && line.what(*refused).is_some_and(is_finish));
    refused
        .and_then(|refused| line.said_before(refused))
        .is_some_and(|no| line.what(no) == Some(&What::Without))
}

/// The word behind a finish, and behind the bolts that have it, that refuses it.
fn refused_behind(line: &Line, finish: usize) -> Option<usize> {
    line.over(finish, Line::behind, |at| is_small(line, at)).filter(|place| forbids(line, *place))
}

/// `nuts not lubricated will be rejected`: of what is no finish and no part the word that refuses to do without it.
fn refused_without_it(line: &Line, at: usize) -> Option<usize> {
    let is_one = line.what(at) == Some(&What::Without);
    let next = line.said_behind(at).filter(|_| is_one)?;
    let is_said =
        matches!(line.what(next), Some(What::Not(_) | What::Yes(_) | What::Worked(_) | What::Bake(_)));
    refused_behind(line, next).filter(|_| is_said)
}

/// `do not supply without nuts`, `bolts without nuts are refused`: the word that refuses to do without them.
fn refused_without_a_mate(line: &Line, at: usize, text: &str) -> Option<usize> {
    let is_one = line.what(at) == Some(&What::Without) && is_without(line, at);
    let first = line.behind(at).filter(|_| is_one)?;
    let mate = line.what(first)?;
    (is_named(mate, MATES) || standard_of(mate).is_some()).then_some(())?;
    if let Some(refused) = refused_behind(line, name_behind(line, first, text).unwrap_or(first)) {
        return Some(refused);
    }
    let mut place = at;
    loop {
        place = line.before(place)?;
        match line.what(place)? {
            What::Without => return Some(place),
            What::Part(_) if line.what(place).is_some_and(|what| is_named(what, MATES)) => return None,
            What::Filler | What::Not(_) | What::Part(_) | What::Around(_) | What::Place(_) => {}
            _ => return None,
        }
    }
}

fn is_without(line: &Line, at: usize) -> bool {
    lexicon::BUT_WITHOUT.contains(&written(line, at).as_str())
}

/// What else refuses between the same two commas: behind the finish, with nothing but the part between, and in front, with its
/// size besides where it may stand there; `no nuts without HDG` refuses nuts, and HDG.
fn refusing(line: &Line, at: usize, finish: usize, over_parts: bool) -> Vec<usize> {
    let mut found = Vec::new();
    let mut place = at;
    while let Some(before) = line.before(place) {
        place = before;
        match line.what(before) {
            Some(What::Without | What::Excluded) => {
                found.push(before);
                break;
            }
            Some(What::Filler) => {}
            Some(what) if is_named(what, MATES) || !over_parts => break,
            Some(
                What::Part(_)
                | What::PartStandard(_)
                | What::Steel(_)
                | What::Class(_)
                | What::Thread(_)
                | What::Length(_)
                | What::Not(_)
                | What::Polite,
            ) => {}
            _ => break,
        }
    }
    place = finish;
    while let Some(behind) = line.behind(place) {
        place = behind;
        match line.what(behind) {
            Some(What::Excluded) if !lexicon::means(&written(line, behind), Word::ByOthers) => {
                found.push(behind);
                break;
            }
            // `ohne Feuerverzinkung nicht liefern`.
            Some(What::Without) if refuses_the_verb(line, behind) => {
                found.push(behind);
                break;
            }
            Some(what) if is_named(what, MATES) => break,
            Some(What::Filler | What::Part(_)) => {}
            _ => break,
        }
    }
    found
}

/// Whether nothing stands behind a word that can be left out, so that it is a verb that it refuses, or all in front.
fn refuses_the_verb(line: &Line, at: usize) -> bool {
    line.said_behind(at).and_then(|next| line.what(next)).is_none_or(|what| !can_be_left_out(what))
}

/// The words that nobody knows behind a place, up to the next piece or break.
fn unknown_behind<'a>(line: &Line, at: usize, unknown: &'a [Piece], text: &str) -> Vec<&'a str> {
    let Some(end) = line.end(at) else { return Vec::new() };
    let until = line.start(at + 1).unwrap_or(text.len());
    let rest = text.get(end..until).unwrap_or_default();
    let until = end + rest.find(token::is_break).unwrap_or(rest.len());
    let first = unknown.partition_point(|piece| piece.span.start < end);
    let behind = unknown.iter().skip(first).take_while(|piece| piece.span.start < until);
    behind.map(|piece| piece.text.as_str()).filter(|word| word.chars().all(char::is_alphabetic)).collect()
}

/// `customer rejects any coating but HDG`.
fn is_refused_in_front(line: &Line, at: usize, text: &str) -> bool {
    let Some((start, end)) = line.start(at).zip(line.end(at)) else { return false };
    let (said, _) = token::near(text, start..end, FARTHEST);
    token::words(said).any(|word| lexicon::REFUSE.contains(&lower(word).as_str()))
}

/// `everything but HDG is rejected`: what nobody knows may refuse; `all but HDG are OK` does not.
fn says_more(line: &Line, finish: usize, unknown: &[Piece], text: &str) -> bool {
    let mut at = finish;
    loop {
        let words = unknown_behind(line, at, unknown, text);
        if words.iter().any(|word| !lexicon::means(&lower(word), Word::Acceptable) && !says_how(&lower(word)))
        {
            return true;
        }
        let next = line.behind(at).filter(|next| line.what(*next) == Some(&What::Filler));
        let Some(next) = next else { return false };
        at = next;
    }
}

/// `we don't want HDG with white rust`, `don't want HDG delivered late`: what stands behind the finish, and its parts, says
/// which of it is refused.
fn is_bound(line: &Line, finish: usize, unknown: &[Piece], text: &str) -> bool {
    let mut last = finish;
    // `we can't accept HDG due to hydrogen`: why, and not which of it.
    let says_why = |word: &str| lexicon::REASONS.contains(&lower(word).as_str());
    let more = |last: usize| {
        let words = unknown_behind(line, last, unknown, text);
        let says_more = words.iter().any(|word| !says_how(&lower(word)));
        says_more.then(|| !words.iter().any(|word| says_why(word)))
    };
    let is_small = |at: usize| {
        let word = written(line, at);
        let binds = [lexicon::BOUNDS, lexicon::BOUND_TO, lexicon::TOGETHER];
        line.what(at) == Some(&What::Filler) && !binds.iter().any(|words| words.contains(&word.as_str()))
    };
    while more(last).is_none()
        && let Some(next) = line
            .behind(last)
            .filter(|next| is_small(*next) || matches!(line.what(*next), Some(What::Part(_))))
    {
        last = next;
    }
    if let Some(is_bound) = more(last) {
        return is_bound;
    }
    let Some(next) = line.behind(last) else { return false };
    let word = written(line, next);
    let is_of_a_place =
        || more(next).is_none() && line.behind(next).and_then(|at| line.what(at)).is_some_and(is_place);
    let is_with = lexicon::TOGETHER.contains(&word.as_str()) && !is_of_a_place();
    let is_on = || {
        lexicon::BOUND_TO.contains(&word.as_str())
            && line.behind(next).is_some_and(|at| {
                line.what(at).is_some_and(|what| is_named(what, MATES))
                    || lexicon::ZONES.contains(&written(line, at).as_str())
            })
    };
    is_with || lexicon::BOUNDS.contains(&word.as_str()) || is_on()
}

/// `HDG not allowed to be repaired with paint`: what is done to it is refused, unless that is to use it.
fn is_bound_behind(line: &Line, at: usize, text: &str) -> bool {
    let is_of_a_finish = line.before(at).and_then(|before| line.what(before)).is_some_and(is_finish);
    let Some((start, end)) = line.start(at).zip(line.end(at)) else { return false };
    let (_, rest) = token::beside(text, start..end, FARTHEST);
    let rest = lower(rest);
    let done = rest
        .trim_start()
        .strip_prefix("to be ")
        .and_then(|rest| token::words(rest).next().map(str::to_owned));
    is_of_a_finish
        && done.is_some_and(|word| {
            !lexicon::means(&word, Word::Taken) && !lexicon::means(&word, Word::Acceptable)
        })
}
