//! What a verb refuses: `HDG must not be used`, `we don't want HDG`, `any coating but HDG`.

use super::words::{is_finish, over_articles};
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::nouns::MATES;
use crate::order::reading::token::{Chain, Sort};
use crate::order::reading::what::{Found, What, one};

/// So many small words stand around a verb: `must certainly not be`.
const MOST_SMALL: usize = 5;

/// So many words stand between a finish and the verb that refuses it: `hot dip galvanizing of the bolts is`.
const MOST_BETWEEN: usize = 6;

/// Why a verb that refuses on a condition alone refuses nothing.
pub(super) const ONLY_THERE: &str =
    "refused there alone, or altogether? Write “no”, and what is not wanted, if it is not wanted at all";

/// Why words that refuse all but one finish are not used.
pub(super) const ALONE: &str = "that finish alone? Write “only” in front of it";

/// Why a verb that does not say for sure is not used.
const PERHAPS: &str = "perhaps? Write what is wanted";

/// Why a refusal of a refusal is not used.
pub(super) const TWICE: &str = "refused, or not? Write what is wanted";

/// `must not be used`, `is ruled out` behind what is not wanted; `don't want`, `cannot accept` in front of it.
pub fn by_a_verb(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (from, is_negated) = small(chain, at)?;
    let found = match is_negated {
        true => wished(chain, at, from).or_else(|| taken(chain, at, from)).or_else(|| alone(chain, at, from)),
        false => refused(chain, from),
    };
    found.filter(|found| found.last().is_some_and(|(end, _)| !chain.inside_a_run(*end)))
}

/// The place behind modal verbs and what negates them, and whether something does: at least one of them stands there.
fn small(chain: &Chain<'_>, at: usize) -> Option<(usize, bool)> {
    let is_first = |word| matches!(word, Word::Modal | Word::Negation).then_some(());
    lexicon::whole(chain, at, is_first)?;
    let (mut end, mut is_negated) = (at, false);
    for _ in 0..MOST_SMALL {
        let found = lexicon::whole(chain, end, |word| match word {
            Word::Negation => Some(true),
            Word::Modal => Some(false),
            _ => None,
        });
        end = match found {
            Some((behind, negates)) => {
                is_negated |= negates;
                behind
            }
            None if is_in(chain, end, lexicon::LINKS) => chain.after(end),
            None => break,
        };
    }
    Some((end, is_negated))
}

fn is_modal(chain: &Chain<'_>, at: usize) -> bool {
    lexicon::whole(chain, at, |word| (word == Word::Modal).then_some(())).is_some()
}

fn is_in(chain: &Chain<'_>, at: usize, words: &[&str]) -> bool {
    chain.word(at).is_some_and(|word| words.contains(&word))
}

/// Behind a negation: `want`, `like to have any`.
fn wished(chain: &Chain<'_>, at: usize, from: usize) -> Option<Found> {
    let (mut end, ()) = lexicon::whole(chain, from, |word| (word == Word::Wish).then_some(()))?;
    // `don't use anything but HDG`.
    if let Some(end) =
        Some(end).filter(|end| is_in(chain, *end, lexicon::ALL)).and_then(|end| taken_out(chain, end))
    {
        return one(end, What::Not(ALONE.into()));
    }
    for _ in 0..MOST_SMALL {
        if lexicon::whole(chain, end, is_named).is_some() || !is_in(chain, end, lexicon::OBJECTS) {
            break;
        }
        end = over_articles(chain, end);
    }
    // `HDG do not use C3`: a place is not used.
    let is_of_before = is_place(chain, end) && !has_unknown(chain, at, end);
    one(end, if is_of_before { What::Excluded } else { What::Without })
}

/// Behind a negation: `used`, `an option`.
fn taken(chain: &Chain<'_>, at: usize, from: usize) -> Option<Found> {
    let meaning = |word| match word {
        Word::Taken | Word::Acceptable => Some(false),
        Word::Refused => Some(true),
        _ => None,
    };
    let (end, is_twice) = lexicon::whole(chain, from, meaning)?;
    if is_twice {
        return one(end, What::Not(TWICE.into()));
    }
    let found = said_of(chain, at, end)?;
    // `might not be possible`, `might not be permitted`: not for sure; `may not be used` is.
    let is_open = is_in(chain, at, lexicon::PERHAPS)
        && (is_in(chain, from, lexicon::IS_SO) || !is_in(chain, at, &["may"]));
    Some(if is_open { vec![(from, What::Excluded), (end, What::Not(PERHAPS.into()))] } else { found })
}

/// `thermisch verzinkt mag niet`: a modal verb and no other, behind a finish.
fn alone(chain: &Chain<'_>, at: usize, end: usize) -> Option<Found> {
    let is_last =
        chain.get(end).is_none_or(|token| token.sort == Sort::Break) && !has_unknown(chain, at, end);
    let is_of_a_finish = matches!(before(chain, at), Some(Subject::Finish));
    (is_last && is_modal(chain, at) && is_of_a_finish).then(|| vec![(end, What::Excluded)])
}

/// Behind a verb without a negation: `avoided`, `ruled out`.
fn refused(chain: &Chain<'_>, from: usize) -> Option<Found> {
    let (end, ()) = lexicon::whole(chain, from, |word| (word == Word::Refused).then_some(()))?;
    one(over_links(chain, end), What::Excluded)
}

/// The place behind `werden`, `worden sein`.
fn over_links(chain: &Chain<'_>, mut end: usize) -> usize {
    for _ in 0..2 {
        if is_in(chain, end, lexicon::LINKS) && !is_in(chain, end, &["to"]) {
            end = chain.after(end);
        }
    }
    end
}

/// What stands before is not wanted, or only where the words behind say so.
fn said_of(chain: &Chain<'_>, at: usize, end: usize) -> Option<Found> {
    let end = over_links(chain, end);
    let part = |word| matches!(word, Word::Part(_)).then_some(());
    let is_bound = || {
        let behind = chain.after(end);
        let thing = over_articles(chain, behind);
        let is_thing = lexicon::find(chain, thing, part).is_some() || is_in(chain, thing, lexicon::ZONES);
        is_in(chain, end, lexicon::BOUNDS)
            || is_in(chain, end, lexicon::BOUND_TO)
                && (is_thing || is_in(chain, chain.after(behind), lexicon::BOUNDS))
    };
    let subject = before(chain, at);
    match subject {
        // `must not be supplied HDG`.
        None if is_modal(chain, at) && finish(chain, end) => one(end, What::Without),
        Some(Subject::Finish) if is_bound() => one(end, What::Not(ONLY_THERE.into())),
        // `bolts must not be used wet`: how, and no bolts.
        Some(Subject::Part)
            if chain.word(end).is_some() && !is_place(chain, end) || has_unknown(chain, at, end) =>
        {
            None
        }
        _ => one(end, What::Excluded),
    }
}

/// What stands in front of a verb, over words that only bind.
enum Subject {
    Finish,
    Part,
    /// `acid must not be used`.
    Other,
}

fn before(chain: &Chain<'_>, at: usize) -> Option<Subject> {
    let mut from = at;
    for _ in 0..MOST_BETWEEN {
        from = chain
            .before(from)
            .filter(|from| chain.get(*from).is_some_and(|token| token.sort != Sort::Break))?;
        let found = lexicon::find(chain, from, |word| match word {
            word if is_finish(word) => Some(Subject::Finish),
            Word::Part(_) => Some(Subject::Part),
            Word::Not(_) => Some(Subject::Other),
            _ => None,
        });
        if let Some((_, subject)) = found.filter(|(end, _)| *end <= at) {
            return Some(subject);
        }
    }
    None
}

/// Whether words that nobody knows stand between two places, or right in front of the second.
fn has_unknown(chain: &Chain<'_>, from: usize, to: usize) -> bool {
    (from..to)
        .any(|at| chain.is_out(at) && chain.tokens().get(at).is_some_and(|token| token.sort == Sort::Word))
}

fn finish(chain: &Chain<'_>, at: usize) -> bool {
    lexicon::find(chain, at, |word| is_finish(word).then_some(())).is_some()
}

fn is_named(word: Word) -> Option<()> {
    (is_finish(word) || matches!(word, Word::Part(_))).then_some(())
}

/// A place: what can be refused by no verb of use.
fn is_place(chain: &Chain<'_>, at: usize) -> bool {
    let is_one =
        |word| matches!(word, Word::Category(_) | Word::Place(_) | Word::Around(_) | Word::Sea).then_some(());
    lexicon::find(chain, at, is_one).is_some()
}

/// `any coating but HDG`, `alles außer feuerverzinkt`: all but that finish; `no coating other than HDG`: that one alone.
pub fn all_but(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let is_none = is_in(chain, at, lexicon::NONE);
    (is_none || is_in(chain, at, lexicon::ALL)).then_some(())?;
    let mut end = chain.after(at);
    // `any zinc but electroplate`: of the metal of all three.
    if is_in(chain, end, lexicon::METAL) {
        end = chain.after(end);
    }
    let end = taken_out(chain, end)?;
    let asks = is_none || is_wished(chain, end);
    one(end, if asks { What::Not(ALONE.into()) } else { What::Without })
}

/// `any zinc but HDG preferred`, `any zinc but HDG nuts`: the finish may be wanted, or be that of a nut.
fn is_wished(chain: &Chain<'_>, at: usize) -> bool {
    let finish = lexicon::find(chain, at, |word| is_finish(word).then_some(()));
    finish.is_some_and(|(end, ())| {
        let says_so = |word| match word {
            Word::Preferred { .. } => Some(()),
            Word::Part(noun) if MATES.iter().any(|mate| noun.ends_with(mate)) => Some(()),
            _ => None,
        };
        let behind = lexicon::over(chain, end, Word::Filler);
        lexicon::find(chain, end, says_so).is_some() || is_in(chain, behind, &["best"])
    })
}

/// The place behind `but`, `other than`, a few words on, where a finish stands there.
fn taken_out(chain: &Chain<'_>, from: usize) -> Option<usize> {
    let mut end = from;
    for _ in 0..MOST_SMALL {
        if is_in(chain, end, lexicon::ALL_BUT) || is_in(chain, end, lexicon::THAN) {
            let end = over_articles(chain, chain.after(end));
            return finish(chain, end).then_some(end);
        }
        // `no nuts but HDG bolts`, `no plating but HDG`.
        let is_one = |word| {
            matches!(word, Word::Part(_) | Word::Process(_) | Word::Tinted(_) | Word::Overtapped)
                .then_some(())
        };
        if lexicon::whole(chain, end, is_one).is_some() {
            return None;
        }
        chain.word(end)?;
        end = chain.after(end);
    }
    None
}

/// `not suitable for hot dip`, `ungeeignet zum Feuerverzinken`.
pub fn not_fit_for(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let fit = |word| (word == Word::Taken).then_some(());
    let negated = small(chain, at).filter(|(_, is_negated)| *is_negated);
    let end = match negated {
        Some((from, _)) => lexicon::whole(chain, from, fit)?.0,
        None => lexicon::whole(chain, at, |word| (word == Word::Refused).then_some(()))?.0,
    };
    if !is_in(chain, end, lexicon::FIT_FOR) {
        return None;
    }
    let end = over_articles(chain, chain.after(end));
    let (behind, ()) = lexicon::find(chain, end, |word| is_finish(word).then_some(()))?;
    let part = |word| matches!(word, Word::Part(_)).then_some(());
    // `not suitable for HDG bolts` is said of nuts.
    lexicon::find(chain, behind, part).is_none().then(|| vec![(end, What::Without)])
}
