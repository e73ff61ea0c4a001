//! What the line says is not there: `no HDG`, `without nuts`, `hot-dip not allowed`.

use super::items::Line;
use super::lexicon;
use super::nouns::{BOLTS, MATES, is_named};
use super::what::What;
use super::{Became, Piece};
use crate::quantity::letters::lower;
use condition::on_a_condition;
use stock::{IN_STOCK, in_stock, is_in_stock};
pub(super) use words::{free_of_zinc, not_that, refused};
pub(super) use zone::{kept_bare, second_hand};

mod condition;
mod stock;
mod words;
mod zone;

/// Why a piece that is not wanted is not used.
pub(super) const WHY: &str = "the line says that it is not there";

/// Whether what became of a piece is that it is not ordered.
pub(super) fn is_gone(became: &Option<Became>) -> bool {
    matches!(became, Some(Became::NotUsed(why)) if why == WHY || why == IN_STOCK)
}

/// Why a finish behind a word that nobody knows is not used.
const UNCLEAR: &str = "wanted, or not? A word between is not known: leave that word out, and what stands before it if \
                       this is wanted";

/// Why a finish that somebody else puts on is not used.
const BY_OTHERS: &str =
    "put on by others, and not part of this order? Write it without them to have the part judged with it";

/// Takes what is not wanted away from those who look for it; `unknown` are the words that nobody knows.
pub(super) fn settle(line: &mut Line, text: &str, unknown: &[Piece]) {
    for at in 0..line.items.len() {
        // `is not an acceptable finish`, `not, as was said, permitted`: what stands before is not wanted.
        if let Some(next) = acceptable_behind(line, at)
            && let Some(item) = line.item(at)
        {
            item.what = What::Excluded;
            if let Some(item) = line.item(next) {
                item.became = Some(Became::Binds);
            }
        }
        if on_a_condition(line, at, text, unknown) {
            continue;
        }
        match line.what(at).cloned() {
            Some(What::Without) => {
                let speaks_of_unknown = unknown_behind(line, at, text, unknown);
                if !reaches_over(line, at, unknown) {
                    ahead(line, at, speaks_of_unknown);
                }
            }
            Some(What::Was) if stands_behind_a_finish(line, at) => {
                before(line, at);
            }
            Some(What::Was) => ahead(line, at, false),
            Some(What::Instead) => until_now(line, at),
            Some(What::Polite) if says_now(line, at) => until_now(line, at),
            Some(What::Filler) => from_one_to_another(line, at),
            Some(What::Excluded) if is_in_stock(line, at) => in_stock(line, at),
            Some(What::Excluded) if is_of_unknown(line, at, unknown) => line.not(at, "what is not wanted?"),
            Some(What::Excluded) if !before(line, at) && is_put_on_by_others(line, at) => {}
            Some(What::Excluded) if line.items.get(at).is_some_and(super::items::Item::is_free) => {
                line.not(at, "what is not wanted?")
            }
            _ => {}
        }
    }
    let start = |at: usize| line.items.get(at).and_then(|item| item.spans.first()).map(|span| span.start);
    let beside: Vec<usize> = unknown
        .iter()
        .filter(|piece| lower(&piece.text) == "out")
        .filter_map(|piece| {
            let next =
                (0..line.items.len()).find(|at| start(*at).is_some_and(|start| start >= piece.span.end))?;
            // Words that nobody knows may stand between, as they may anywhere.
            let is_near = |c: char| c == ' ' || c.is_alphabetic();
            text.get(piece.span.end..start(next)?)?.chars().all(is_near).then_some(next)
        })
        .collect();
    for at in beside {
        with_or_without(line, at, |line, at| line.behind(at));
    }
}

/// The word for what will do, right behind a word that says that something is not wanted.
fn acceptable_behind(line: &Line, without: usize) -> Option<usize> {
    (line.what(without) == Some(&What::Without)).then_some(())?;
    let mut next = line.behind(without)?;
    while line.what(next) == Some(&What::Filler) {
        next = line.behind(next)?;
    }
    (line.what(next) == Some(&What::Acceptable)).then_some(next)
}

/// `nuts not …`, where nobody knows what follows: a nut or a washer beside it is not taken to come with the bolt.
fn with_or_without(line: &mut Line, from: usize, next: fn(&Line, usize) -> Option<usize>) {
    let is_mate = |what: Option<&What>| match what {
        Some(What::Part(noun)) => ["nut", "washer"].iter().any(|mate| noun.ends_with(mate)),
        _ => false,
    };
    let mut name = Vec::new();
    let mut place = Some(from);
    while let Some(at) = place {
        match line.what(at) {
            Some(What::Filler) if name.is_empty() => {}
            Some(What::Part(_)) => name.push(at),
            _ => break,
        }
        place = next(line, at);
    }
    let has_a_bolt = (0..line.items.len()).any(|at| {
        !name.contains(&at)
            && match line.what(at) {
                Some(What::Part(_)) => !is_mate(line.what(at)),
                what => matches!(what, Some(What::Length(_) | What::PartStandard(_))),
            }
    });
    if has_a_bolt && name.iter().any(|at| is_mate(line.what(*at))) {
        for at in name {
            line.not(at, "with it, or without? Write “with nuts” or “without nuts”, “washers” likewise");
        }
    }
}

/// Whether what stands right behind a piece, before the next comma and with nothing known behind it, is a word
/// that nobody knows: `HDG no salt`.
fn unknown_behind(line: &Line, at: usize, text: &str, unknown: &[Piece]) -> bool {
    let end = |at: usize| line.items.get(at).and_then(|item| item.spans.last()).map(|span| span.end);
    let Some(end) = end(at).filter(|_| line.behind(at).is_none()) else { return false };
    let next = unknown.iter().map(|piece| piece.span.start).filter(|start| *start >= end).min();
    let gap = next.and_then(|start| text.get(end..start));
    gap.is_some_and(|gap| gap.chars().all(|c| c == ' '))
}

/// `without zork HDG`, `not before May HDG`: behind a word that nobody knows what follows may be wanted or not, so that
/// the line asks.
fn reaches_over(line: &mut Line, without: usize, unknown: &[Piece]) -> bool {
    let mut next = line.behind(without);
    while let Some(at) = next.filter(|at| line.what(*at) == Some(&What::Filler)) {
        next = line.behind(at);
    }
    let Some(next) = next else { return false };
    let place = |at: usize| line.items.get(at).and_then(|item| item.spans.first()).map(|span| span.start);
    let is_between = place(without).zip(place(next)).is_some_and(|(from, to)| {
        let is_word = |piece: &Piece| piece.text.chars().any(char::is_alphabetic);
        unknown.iter().any(|piece| (from..to).contains(&piece.span.start) && is_word(piece))
    });
    let is_open = is_between && line.what(next).is_some_and(is_finish);
    if is_open {
        line.not(next, UNCLEAR);
        line.not(without, "what is not wanted?");
    }
    is_open
}

/// `specified HDG, now zinc plated`.
fn says_now(line: &Line, at: usize) -> bool {
    line.items.get(at).is_some_and(|item| matches!(lower(&item.text).as_str(), "now" | "jetzt"))
}

/// What asks for a finish.
pub(super) fn is_finish(what: &What) -> bool {
    matches!(what, What::Process(..) | What::Coat(_) | What::Other(_) | What::Zinc(..))
}

/// `HDG was quoted`.
fn stands_behind_a_finish(line: &Line, at: usize) -> bool {
    line.before(at).and_then(|before| line.what(before)).is_some_and(is_finish)
}

/// `changed from zinc plated to HDG`: the first of the two is not wanted.
fn from_one_to_another(line: &mut Line, from: usize) {
    let is_word = |at: usize, words: &[&str]| {
        line.what(at) == Some(&What::Filler)
            && line.items.get(at).is_some_and(|item| words.contains(&lower(&item.text).as_str()))
    };
    let is_finish = |at: usize| line.what(at).is_some_and(is_finish);
    if is_word(from, &["from", "von"])
        && is_finish(from + 1)
        && is_word(from + 2, &["to", "auf", "zu", "nach"])
        && is_finish(from + 3)
    {
        line.not(from + 1, WHY);
    }
}

/// `zinc plated, change to HDG`: what was asked before the word is not wanted, where a finish follows it.
fn until_now(line: &mut Line, instead: usize) {
    if !line.behind(instead).and_then(|next| line.what(next)).is_some_and(is_finish) {
        return;
    }
    for at in 0..instead {
        if line.items.get(at).is_some_and(|item| item.is_free() && is_finish(&item.what)) {
            line.not(at, WHY);
        }
    }
    if let Some(item) = line.item(instead) {
        item.became = Some(Became::Binds);
    }
}

/// Whether a line can say of it that it is not wanted; numbers and sizes are not left out.
fn can_be_left_out(what: &What) -> bool {
    matches!(
        what,
        What::Part(_)
            | What::PartStandard(_)
            | What::PartDocument(_)
            | What::Steel(_)
            | What::Hardness(..)
            | What::Process(..)
            | What::Coat(_)
            | What::Other(_)
            | What::Class(_)
            | What::Zinc(..)
            | What::Category(_)
            | What::Around(_)
            | What::Place(_)
            | What::Yes(_)
            | What::ThreadClass(_)
            | What::HighBath
            | What::Worked(_)
            | What::Bake(_)
            | What::Not(_)
            | What::Set
    )
}

/// `no HDG, otherwise mech galv`: what stands behind the word is wanted.
fn is_otherwise(line: &Line, at: usize) -> bool {
    line.items
        .get(at)
        .is_some_and(|item| lexicon::OTHERWISE.iter().any(|word| lower(&item.text).ends_with(word)))
}

/// What stands between a grade and the name of the part that it is of.
fn is_grade(what: &What) -> bool {
    matches!(what, What::Steel(_) | What::Class(_) | What::Small(_) | What::Count(_))
}

/// `no HDG or plating`, `without DH nuts and washers`: the next piece, a name with all its words, and what
/// `or` adds to it; `and` adds parts.
fn ahead(line: &mut Line, without: usize, speaks_of_unknown: bool) {
    let mut open = true;
    let mut last: Option<usize> = None;
    let mut at = without;
    while let Some(next) = line.behind(at) {
        at = next;
        let is_part = |at: usize| matches!(line.what(at), Some(What::Part(_)));
        let Some(what) = line.what(at) else { break };
        let (grows, starts, joins) = (
            last.is_some_and(|last| {
                is_part(at) && line.what(last).is_some_and(|what| is_grade(what) || is_part(last))
            }),
            open && (can_be_left_out(what) || is_grade(what) && line.behind(at).is_some_and(is_part)),
            last.is_some()
                && (*what == What::Or && !is_otherwise(line, at)
                    || matches!(what, What::With(false)) && line.behind(at).is_some_and(is_part)),
        );
        match what {
            What::Filler => {}
            // `not urgent`.
            What::Polite if last.is_none() => {
                last = Some(at);
                break;
            }
            _ if grows || starts => {
                (open, last) = (false, Some(at));
                line.not(at, WHY);
            }
            _ if joins => {
                open = true;
                if let Some(item) = line.item(at) {
                    item.became = Some(Became::Binds);
                }
            }
            _ => break,
        }
    }
    if last.is_some() {
        if let Some(item) = line.item(without) {
            item.became = Some(Became::Binds);
        }
        return;
    }
    // `no. 500` is a number; `nuts: no` speaks of what stands before.
    let number = line.behind(without).filter(|at| matches!(line.what(*at), Some(What::Bare(_))));
    if let Some(number) = number {
        line.not(number, "a number of what? Write 500 pcs if it counts them, #8 if it is a size");
        if let Some(item) = line.item(without) {
            item.became = Some(Became::Binds);
        }
    } else if speaks_of_unknown || line.behind(without).is_some() || !before(line, without) {
        line.not(without, "what is not wanted?");
        if let Some(before) = line.before(without) {
            with_or_without(line, before, |line, at| line.before(at));
        }
    }
}

/// `bauseits feuerverzinkt`: the finish behind, where nothing in front of it comes from others.
fn is_put_on_by_others(line: &mut Line, at: usize) -> bool {
    let is_by_others =
        line.items.get(at).is_some_and(|item| lexicon::means(&lower(&item.text), lexicon::Word::ByOthers));
    let finish = line.behind(at).filter(|next| is_by_others && line.what(*next).is_some_and(is_finish));
    let Some(finish) = finish else { return false };
    line.not(finish, BY_OTHERS);
    if let Some(item) = line.item(at) {
        item.became = Some(Became::Binds);
    }
    true
}

/// `8.8 cracked surfaces not allowed`: a word that nobody knows stands between, and is what is not wanted rather than the
/// steel in front of it.
fn is_of_unknown(line: &Line, at: usize, unknown: &[Piece]) -> bool {
    let Some(before) = line.before(at) else { return false };
    let is_steel = matches!(line.what(before), Some(What::Steel(_) | What::Class(_) | What::Hardness(..)));
    let end = line.items.get(before).and_then(|item| item.spans.last()).map(|span| span.end);
    let start = line.items.get(at).and_then(|item| item.spans.first()).map(|span| span.start);
    is_steel
        && end.zip(start).is_some_and(|(end, start)| {
            unknown.iter().any(|word| end <= word.span.start && word.span.end <= start)
        })
}

/// `HDG not allowed`, `nuts: none`: the piece before, a name with all its words.
fn before(line: &mut Line, excluded: usize) -> bool {
    let mut at = excluded;
    let mut found = false;
    // `hex bolts (nuts by others)`: a second noun is another part.
    let has_noun = |what: &What| [BOLTS, MATES, &["ring", "pin"]].iter().any(|nouns| is_named(what, nouns));
    let mut noun = false;
    let is_by_others = line
        .items
        .get(excluded)
        .is_some_and(|item| lexicon::means(&lower(&item.text), lexicon::Word::ByOthers));
    while let Some(place) = line.before(at) {
        at = place;
        let Some(what) = line.what(at) else { break };
        match what {
            What::Filler | What::Polite if !found => {}
            // `nuts and washers by others`.
            What::With(false)
                if found
                    && line.before(at).is_some_and(|part| matches!(line.what(part), Some(What::Part(_)))) =>
            {
                noun = false;
            }
            part @ What::Part(_) if !(noun && has_noun(part)) => {
                (found, noun) = (true, noun || has_noun(part));
                line.not(at, WHY);
            }
            _ if !found && can_be_left_out(what) => {
                found = true;
                // `black, for later HDG by others`: the coat comes all the same.
                line.not(at, if is_finish(what) && is_by_others { BY_OTHERS } else { WHY });
                break;
            }
            _ => break,
        }
    }
    if found && let Some(item) = line.item(excluded) {
        item.became = Some(Became::Binds);
    }
    found
}
