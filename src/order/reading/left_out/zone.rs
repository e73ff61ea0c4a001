//! A zone that the zinc is kept off: `no zinc on threads`, `threads masked`, `Gewinde zinkfrei`.

use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::token::Chain;
use crate::order::reading::what::{Found, What, one};

/// Why such a zone is not used.
const ONE_COAT: &str = "a zone without zinc? The whole part is judged, its threads with their coat: agree with the plater \
                        what is kept free, and how";

/// So many words that only bind stand between a zone and what is said of it: `threads are to be`.
const MOST_BETWEEN: usize = 4;

/// `no zinc on threads`, `threads free of zinc`, `mask threads`: of a part with zinc, all but that zone.
pub fn kept_bare(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let end = none_on(chain, at).or_else(|| bare_behind(chain, at)).or_else(|| bare_before(chain, at))?;
    (!chain.inside_a_run(end)).then(|| one(end, What::Not(ONE_COAT.into()))).flatten()
}

/// `used bolts`, `used M16 bolts`: in front of what they are.
pub fn second_hand(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.word(at).filter(|word| *word == "used")?;
    let end = chain.after(at);
    let part = |word| matches!(word, Word::Part(_)).then_some(());
    let is_part = lexicon::whole(chain, end, part).is_some();
    let is_thread = || chain.word(end) == Some("m") && chain.digits(chain.after(end)).is_some();
    (is_part || is_thread()).then(|| vec![(end, What::Not(lexicon::USED.into()))])
}

/// `no zinc on the threads`, `keep zinc off the threads`, `kein Zink auf dem Gewinde`.
fn none_on(chain: &Chain<'_>, at: usize) -> Option<usize> {
    let over = |at: usize, one: Word| lexicon::find(chain, at, |word| (word == one).then_some(()));
    let on_a_zone = |at: usize| {
        chain.word(at).filter(|word| lexicon::ON_A_ZONE.contains(word))?;
        zone(chain, chain.after(at))
    };
    if let Some((from, ())) = over(at, Word::Without) {
        let coat = finish(chain, from)?;
        // `no zinc allowed on threads`.
        return on_a_zone(over(coat, Word::Acceptable).map_or(coat, |(end, ())| end));
    }
    // `zinc on threads not allowed`.
    let mut from = on_a_zone(finish(chain, at)?)?;
    for _ in 0..MOST_BETWEEN {
        from = lexicon::over(chain, from, Word::Filler);
    }
    over(from, Word::Excluded).map(|(end, ())| end)
}

/// `threads free of zinc`, `threads to be masked`, `Gewinde unverzinkt`.
fn bare_behind(chain: &Chain<'_>, at: usize) -> Option<usize> {
    let mut from = zone(chain, at)?;
    for _ in 0..MOST_BETWEEN {
        from = lexicon::over(chain, from, Word::Filler);
    }
    let without = || {
        let (behind, ()) = lexicon::find(chain, from, |word| (word == Word::Without).then_some(()))?;
        finish(chain, behind)
    };
    bare(chain, from).or_else(|| free(chain, from)).or_else(without)
}

/// `bare threads`, `zinc-free threads`, `mask the threads`.
fn bare_before(chain: &Chain<'_>, at: usize) -> Option<usize> {
    zone(chain, bare(chain, at).or_else(|| free(chain, at))?)
}

/// `uncoated`, `masked`.
fn bare(chain: &Chain<'_>, at: usize) -> Option<usize> {
    let is_bare = |word| match word {
        Word::Other("bare") => Some(()),
        Word::Not(why) => (why == lexicon::MASKED).then_some(()),
        _ => None,
    };
    lexicon::whole(chain, at, is_bare).map(|(end, ())| end)
}

/// `free of zinc`, `zinc-free`.
fn free(chain: &Chain<'_>, at: usize) -> Option<usize> {
    let is_free = |at: usize| chain.word(at).is_some_and(|word| lexicon::FREE.contains(&word));
    if is_free(at) {
        let of = chain.after(at);
        let is_of = chain.word(of).is_some_and(|word| matches!(word, "of" | "from" | "von" | "van" | "de"));
        return finish(chain, if is_of { chain.after(of) } else { of });
    }
    let behind = chain.over(finish(chain, at)?, &["-", "–"]);
    is_free(behind).then(|| chain.after(behind))
}

/// The place behind a word for a finish.
fn finish(chain: &Chain<'_>, at: usize) -> Option<usize> {
    let is_finish = |word| match word {
        Word::Process(_) | Word::Tinted(_) | Word::Other(_) => Some(()),
        Word::Not(why) => (why == lexicon::ANY_ZINC).then_some(()),
        _ => None,
    };
    let coat = || chain.word(at).filter(|word| lexicon::OF_A_COAT.contains(word)).map(|_| chain.after(at));
    lexicon::find(chain, at, is_finish).map(|(end, ())| end).or_else(coat)
}

/// The place behind a zone of a part, over its article.
fn zone(chain: &Chain<'_>, at: usize) -> Option<usize> {
    let is_article = |at: usize| {
        chain.word(at).is_some_and(|word| {
            matches!(word, "the" | "dem" | "der" | "den" | "das" | "de" | "het" | "le" | "la" | "les")
        })
    };
    let from = if is_article(at) { chain.after(at) } else { at };
    chain.word(from).filter(|word| lexicon::ZONES.contains(word)).map(|_| chain.after(from))
}
