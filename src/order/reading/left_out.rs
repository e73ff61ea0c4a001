//! What the line says is not there: `no HDG`, `without nuts`, `hot-dip not allowed`.

use super::items::Line;
use super::lexicon;
use super::nouns::{BOLTS, MATES, is_named};
use super::token;
use super::what::What;
use super::{Became, Piece};
use crate::part::Kind;
use crate::quantity::letters::lower;
use ahead::{ahead, heads, reaches_over};
use before::{before, begs, is_of_unknown, is_said_of_the_stretch_before, not_tapped_over};
use condition::on_a_condition;
use doubt::in_doubt;
use formerly::formerly;
pub(super) use lubricant::not_lubricated;
pub(super) use of_parts::forbids_so;
use stock::{IN_STOCK, in_stock, is_in_stock};
pub(super) use verb::{all_but, by_a_verb, not_fit_for};
pub(super) use words::{free_of_zinc, in_the_place, not_so, not_that, refused};
pub(super) use zone::{kept_bare, second_hand};

mod ahead;
mod before;
mod clause;
mod condition;
mod doubt;
mod formerly;
mod lubricant;
mod mate;
mod of_parts;
mod replaced;
mod same;
mod stock;
mod verb;
mod words;
mod zone;

/// Why a piece that is not wanted is not used.
pub(super) const WHY: &str = "the line says that it is not there";

/// Whether what became of a piece is that it is not ordered.
pub(super) fn is_gone(became: &Option<Became>) -> bool {
    matches!(became, Some(Became::NotUsed(why)) if why == WHY || why == IN_STOCK)
}

/// Whether what became of a piece is that nobody knows whether it is ordered with the part.
pub(super) fn is_open(became: &Option<Became>) -> bool {
    matches!(became, Some(Became::NotUsed(why)) if why == WITH_OR_WITHOUT)
}

/// Why a word that refuses what nobody finds is not used.
const NOT_WHAT: &str = "what is not wanted?";

/// Why a finish behind a word that nobody knows is not used.
const UNCLEAR: &str = "wanted, or not? A word between is not known: leave that word out, and what stands before it if \
                       this is wanted";

/// Why a finish that is refused of some parts is not used.
const OF_SOME_PARTS: &str = "wanted, or not? It is refused of some parts: write “no” right in front of it if it is not wanted at all, \
                             and leave the refusal out if this part has it";

/// Why a finish that somebody else puts on is not used.
const BY_OTHERS: &str =
    "put on by others, and not part of this order? Write it without them to have the part judged with it";

/// Why a finish that must not take the place of another is not used.
const UNCLEAR_INSTEAD: &str = "must it not take the place of the other? Write what is wanted alone";

/// Why a finish that may take the place of another is not used.
const MAY_INSTEAD: &str =
    "may it take the place of the other? Each is judged: write it alone where it is wanted";

/// Why the finish of the nut or the washer alone is not used.
pub(super) const OF_A_MATE: &str = "the finish of what comes with the part: all of them are judged with one finish; write what has another as a line of its own";

/// The same of a structural bolt, whose parts are coated alike.
const OF_AN_ASSEMBLY: &str = "bolt, nut and washer of a structural set are coated by one process (ASTM A563M, 4.7; EN 14399 \
                              has one maker for all): write one finish, or agree the other with who makes the set";

/// Of structural sets it is said that one process coats all of them.
pub(super) fn of_an_assembly(line: &mut Line) {
    let is_structural = line.draft.get("part").and_then(Kind::from_key).is_some_and(Kind::is_structural);
    for item in line.items.iter_mut().filter(|_| is_structural) {
        if item.became == Some(Became::NotUsed(OF_A_MATE.into())) {
            item.not(OF_AN_ASSEMBLY);
        }
    }
}

/// Why what a word refuses that stands between a finish and a place is not used.
const FINISH_OR_PLACE: &str = "is the finish not wanted, or is it not that place? Write “no” in front of what is not wanted, \
                               and a comma behind it";

/// Why a nut or a washer that may be ordered or not is not used.
const WITH_OR_WITHOUT: &str = "with it, or without? Write “with nuts” or “without nuts”, “washers” likewise";

/// The rule of what a verb refuses.
pub(super) const BY_A_VERB: &str = "refused by a verb";

/// The rule of a word that puts one finish in the place of another.
pub(super) const REPLACED: &str = "put in the place of a finish";

/// The rule of all but one finish.
pub(super) const ALL_BUT: &str = "all but a finish";

/// Takes what is not wanted away from those who look for it; `unknown` are the words that nobody knows.
pub(super) fn settle(line: &mut Line, text: &str, unknown: &[Piece]) {
    let places = line.items.iter().filter(|item| is_place(&item.what)).count();
    let says_neither =
        line.items.iter().any(|item| item.what == What::Without && lower(&item.text) == "weder");
    let doubted = in_doubt(line, text, unknown);
    for at in (0..line.items.len()).filter(|at| !doubted.contains(at)) {
        // `is not an acceptable finish`, `not, as was said, permitted`: what stands before is not wanted.
        if let Some(next) = acceptable_behind(line, at)
            && let Some(item) = line.item(at)
        {
            item.what = What::Excluded;
            line.binds(next);
        }
        if on_a_condition(line, at, text, unknown) {
            continue;
        }
        match line.what(at).cloned() {
            // `HDG: no C3`: of the only place of the line nothing is refused.
            Some(What::Without) if places == 1 && is_in_front_of_the_place(line, at, text) => {
                let _is_said = is_of_unknown(line, at, unknown) || before(line, at, text);
            }
            Some(What::Without)
                if places == 1
                    && let Some(of) = finish_or_place(line, at, unknown) =>
            {
                of.into_iter().for_each(|at| line.not(at, FINISH_OR_PLACE));
            }
            Some(What::Without) => {
                let speaks_of_unknown = unknown_behind(line, at, text, unknown);
                if !reaches_over(line, at, unknown) {
                    ahead(line, at, text, speaks_of_unknown);
                }
            }
            // `8.8, not plated, nor HDG`.
            Some(What::Or) if is_nor(line, at, says_neither) => ahead(line, at, text, false),
            Some(What::Was) => formerly(line, at, text),
            Some(What::Instead) if may_be(line, at, text) => instead_of_none(line, at, MAY_INSTEAD),
            Some(What::Instead) => until_now(line, at),
            Some(What::Polite) if says_now(line, at) => until_now(line, at),
            Some(What::Filler) => from_one_to_another(line, at),
            Some(What::Excluded) if is_in_stock(line, at) => in_stock(line, at),
            Some(What::Excluded) if is_of_unknown(line, at, unknown) => {}
            Some(What::Excluded) if heads(line, at, text) => ahead(line, at, text, false),
            Some(What::Excluded) if before(line, at, text) || is_put_on_by_others(line, at) => {}
            Some(What::Excluded) if line.items.get(at).is_some_and(super::items::Item::is_free) => {
                line.not(at, NOT_WHAT);
                if !unknown_behind(line, at, text, unknown) {
                    is_said_of_the_stretch_before(line, at, text);
                }
            }
            _ => {}
        }
    }
    not_tapped_over(line);
    let beside: Vec<usize> = unknown
        .iter()
        .filter(|piece| lower(&piece.text) == "out")
        .filter_map(|piece| {
            let next = (0..line.items.len())
                .find(|at| line.start(*at).is_some_and(|start| start >= piece.span.end))?;
            // Words that nobody knows may stand between, as they may anywhere.
            let is_near = |c: char| c == ' ' || c.is_alphabetic();
            text.get(piece.span.end..line.start(next)?)?.chars().all(is_near).then_some(next)
        })
        .collect();
    for at in beside {
        with_or_without(line, at, |line, at| line.behind(at));
    }
}

fn is_place(what: &What) -> bool {
    matches!(what, What::Category(_) | What::Place(_) | What::Around(_))
}

/// `HDG not C3`: the finish in front of the word, the word, and the only place of the line, right behind it.
fn finish_or_place(line: &Line, without: usize, unknown: &[Piece]) -> Option<[usize; 3]> {
    let (finish, place) = (line.said_before(without)?, line.said_behind(without)?);
    // `HDG do not stack C3`: the word refuses what nobody knows.
    let (from, to) = (line.end(finish)?, line.start(place)?);
    let first = unknown.partition_point(|piece| piece.span.start < from);
    let is_between = unknown.get(first).is_some_and(|piece| piece.span.start < to);
    let is_one = line.items.get(finish).is_some_and(|item| item.is_free() && is_finish(&item.what))
        && matches!(line.what(place), Some(What::Category(_)));
    (is_one && !is_between).then_some([finish, without, place])
}

/// Whether a word stands between a finish, with a verb or a mark behind it, and a category: `HDG brauchen wir nicht C3`,
/// `HDG: no C3`.
fn is_in_front_of_the_place(line: &Line, without: usize, text: &str) -> bool {
    let front = line.start(without).and_then(|start| text.get(..start)).unwrap_or_default();
    let mut is_apart = front.trim_end().ends_with([':', '-', '–', '?']);
    let is_category =
        line.behind(without).is_some_and(|next| matches!(line.what(next), Some(What::Category(_))));
    let mut at = without;
    let finish = loop {
        let Some(before) = line.before(at).filter(|_| is_category) else { return false };
        at = before;
        match line.items.get(at) {
            Some(item) if item.what == What::Filler => {}
            Some(item) if item.what == What::Polite && begs(item) => is_apart = true,
            item => break item,
        }
    };
    is_apart && finish.is_some_and(|item| item.is_free() && is_finish(&item.what))
}

/// The word for what will do, right behind a word that says that something is not wanted.
fn acceptable_behind(line: &Line, without: usize) -> Option<usize> {
    (line.what(without) == Some(&What::Without)).then_some(())?;
    let next = line.said_behind(without)?;
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
            line.not(at, WITH_OR_WITHOUT);
        }
    }
}

/// Whether what stands right behind a piece, before the next comma and with nothing known behind it, is a word
/// that nobody knows: `HDG no salt`.
fn unknown_behind(line: &Line, at: usize, text: &str, unknown: &[Piece]) -> bool {
    let Some(end) = line.end(at).filter(|_| line.behind(at).is_none()) else { return false };
    let next = unknown.get(unknown.partition_point(|piece| piece.span.start < end));
    let gap = next.and_then(|piece| text.get(end..piece.span.start));
    gap.is_some_and(|gap| gap.chars().all(|c| c == ' '))
}

/// `nor`, or `noch` behind `weder`, which nothing in front of it has taken: what follows is not wanted.
fn is_nor(line: &Line, at: usize, says_neither: bool) -> bool {
    let is_one = line.items.get(at).is_some_and(|item| {
        let text = lower(&item.text);
        item.is_free() && (text == "nor" || text == "noch" && says_neither)
    });
    is_one && line.behind(at).and_then(|next| line.what(next)).is_some_and(is_finish)
}

/// `specified HDG, now zinc plated`.
fn says_now(line: &Line, at: usize) -> bool {
    line.items.get(at).is_some_and(|item| matches!(lower(&item.text).as_str(), "now" | "jetzt"))
}

/// What asks for a finish.
pub(super) fn is_finish(what: &What) -> bool {
    matches!(what, What::Process(..) | What::Coat(_) | What::Other(_) | What::Zinc(..))
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
    // `HDG cannot be replaced by plating`.
    let refuses =
        line.before(instead).filter(|no| matches!(line.what(*no), Some(What::Without | What::Excluded)));
    if refuses.is_some() {
        return instead_of_none(line, instead, UNCLEAR_INSTEAD);
    }
    for at in 0..instead {
        if line.items.get(at).is_some_and(|item| item.is_free() && is_finish(&item.what)) {
            line.not(at, WHY);
        }
    }
    line.binds(instead);
}

/// So many letters in front of it are looked at: the verb stands near.
const FARTHEST: usize = 40;

/// `HDG, may be replaced by plating`, `kann durch … ersetzt werden`: allowed, and not asked.
fn may_be(line: &Line, instead: usize, text: &str) -> bool {
    let follows = line.behind(instead).and_then(|next| line.what(next)).is_some_and(is_finish);
    let Some(start) = line.start(instead) else { return false };
    let (clause, _) = token::near(text, start..start, FARTHEST);
    follows && clause.split(' ').any(|word| lexicon::MAY.contains(&lower(word).as_str()))
}

/// The finish behind the word takes no other's place.
fn instead_of_none(line: &mut Line, instead: usize, why: &'static str) {
    if let Some(next) = line.behind(instead) {
        line.not(next, why);
    }
    line.not(instead, why);
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

/// What stands between a grade and the name of the part that it is of.
fn is_grade(what: &What) -> bool {
    matches!(what, What::Steel(_) | What::Class(_) | What::Small(_) | What::Count(_))
}

/// `bauseits feuerverzinkt`: the finish behind, where nothing in front of it comes from others.
fn is_put_on_by_others(line: &mut Line, at: usize) -> bool {
    let is_by_others =
        line.items.get(at).is_some_and(|item| lexicon::means(&lower(&item.text), lexicon::Word::ByOthers));
    let finish = line.behind(at).filter(|next| is_by_others && line.what(*next).is_some_and(is_finish));
    let Some(finish) = finish else { return false };
    line.not(finish, BY_OTHERS);
    line.binds(at);
    true
}

/// A piece in small letters.
fn written(line: &Line, at: usize) -> String {
    line.items.get(at).map_or(String::new(), |item| lower(&item.text))
}

/// Words that only bind, and the names of bolts: `plated bolts in lieu of HDG bolts`.
fn is_small(line: &Line, at: usize) -> bool {
    matches!(line.what(at), Some(What::Filler | What::Part(_)))
        && !line.what(at).is_some_and(|what| is_named(what, MATES))
}

/// Whether a word that nobody knows says only how surely something is refused.
fn says_how(word: &str) -> bool {
    word.ends_with("ly")
        || lexicon::means(word, lexicon::Word::Modal)
        || lexicon::RELATIVES.contains(&word)
        || lexicon::HOW.contains(&word)
}
