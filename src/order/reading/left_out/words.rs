//! Words that say that something is not wanted by what stands beside them.

use super::super::lexicon::{self, Word};
use super::super::token::{Chain, Sort};
use super::super::what::{Found, What, one};
use super::super::{number, steel};
use crate::process::Process;

/// So many words stand in the name of a finish: `galvanisé à chaud`.
const MOST_OF_A_FINISH: usize = 4;

/// `bouten niet verzinkt`, `pas galvanisé`, `pas d'écrous`: in front of what can be left out. A rivet and the pitch of a
/// thread are written with the same letters, so that at the head of a line, or in front of anything else, they say
/// nothing here. `niet (thermisch) verzinkt`: what stands in brackets is of the finish.
pub fn not_that(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let is_short = matches!(chain.word(at), Some("niet" | "pas" | "ni"));
    let end = match is_short {
        true => chain.after(at),
        false => lexicon::whole(chain, at, |word| (word == Word::Without).then_some(()))?.0,
    };
    let open = chain.over(end, &["("]);
    if open != end {
        let close = chain.after(open);
        let process = match chain.word(open)? {
            "thermisch" => Process::HotDip,
            "elektrolytisch" | "galvanisch" => Process::Electroplated,
            "mechanisch" => Process::Mechanical,
            _ => return None,
        };
        let finish = chain.over(close, &[")"]);
        let (last, ()) = lexicon::whole(chain, finish, |word| is_finish(word).then_some(()))?;
        // The brackets are of the finish: what is refused is zinc put on in that way alone.
        return (finish != close).then(|| vec![(end, What::Without), (last, What::Process(process, false))]);
    }
    let before = chain.before(at).filter(|_| is_short)?;
    let article = over_articles(chain, end);
    // `Ni plated` is of nickel.
    if chain.word(at) == Some("ni") && chain.word(end).is_some_and(|word| word.starts_with("plat")) {
        return None;
    }
    let is_small = chain.get(at).is_some_and(|token| token.text == token.lower);
    let can_be_left_out = |word| {
        (is_finish(word)
            || matches!(word, Word::Part(_) | Word::Overtapped)
            || is_small && word == Word::OtherMetal)
            .then_some(())
    };
    // `niet 8.8 maar 10.9`.
    let is_class = is_small
        && number::decimal(chain, article)
            .is_some_and(|number| steel::DOTTED.contains(&number.text.as_str()));
    if lexicon::find(chain, article, can_be_left_out).is_none() && !is_class {
        return None;
    }
    (chain.word(before) != Some("blind")).then(|| one(article, What::Without)).flatten()
}

/// `galvanized (not mechanically)`, `galvanisé, pas à chaud`: by which process not, with nothing behind it.
pub fn not_so(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let not = |word| matches!(word, Word::Without | Word::Negation).then_some(());
    let (not, ()) = lexicon::whole(chain, at, not)?;
    let how = over_articles(chain, not);
    let process = chain.word(how).and_then(|word| {
        lexicon::BY_WHICH.iter().find(|(how, _)| *how == word).map(|(_, process)| *process)
    })?;
    let end = chain.after(how);
    let is_last = chain.get(end).is_none_or(|next| matches!(next.sort, Sort::Break | Sort::Sign));
    is_last.then(|| vec![(how, What::Without), (end, What::Process(process, false))])
}

/// `customer refuses mechanical plating`, `interdit la galvanisation`: a finish and nothing else; `refuses 10.9` says nothing of
/// the part, and `galvanisé interdit` speaks of what stands before.
pub fn refused(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.word(at).filter(|word| lexicon::REFUSE.contains(word))?;
    let end = over_articles(chain, lexicon::over(chain, chain.after(at), Word::Filler));
    let finish = |word| is_finish(word).then_some(());
    lexicon::whole(chain, end, finish)?;
    let is_of_before = lexicon::means(chain.word(at).unwrap_or_default(), Word::Refused)
        && (1..=MOST_OF_A_FINISH).try_fold(at, |place, _| {
            let before = chain.before(place).filter(|before| chain.word(*before).is_some());
            match before {
                Some(before) if lexicon::until(chain, before, at, finish).is_some() => Err(true),
                Some(before) => Ok(before),
                None => Err(false),
            }
        }) == Err(true);
    if is_of_before { None } else { one(end, What::Without) }
}

/// `substitute for HDG`, `substituted for HDG`, `substitution of HDG`, `Ersatz für Feuerverzinkung`: a finish, and nothing else,
/// whose place another takes.
pub fn in_the_place(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let word = chain.word(at).filter(|word| lexicon::SUBSTITUTES.contains(word))?;
    let of = chain.after(at);
    let has_of = chain.word(of).is_some_and(|word| lexicon::OF_A_SUBSTITUTE.contains(&word));
    let end = match has_of {
        true => over_articles(chain, chain.after(of)),
        false if lexicon::SUBSTITUTE.contains(&word) => over_articles(chain, of),
        false => return None,
    };
    lexicon::find(chain, end, |word| is_finish(word).then_some(()))?;
    one(end, What::Without)
}

/// The place behind `de`, `l'`, `die`.
pub(super) fn over_articles(chain: &Chain<'_>, mut at: usize) -> usize {
    for _ in 0..2 {
        let is_one = chain.word(at).is_some_and(|word| lexicon::OBJECTS.contains(&word));
        if !is_one {
            break;
        }
        at = chain.over(chain.after(at), &["'", "’"]);
    }
    at
}

pub(super) fn is_finish(word: Word) -> bool {
    matches!(word, Word::Process(_) | Word::Tinted(_) | Word::Other(_))
}

/// `zinc free`, `zinc-free coating`: no zinc.
pub fn free_of_zinc(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.word(at).filter(|word| matches!(*word, "zinc" | "zink" | "zn"))?;
    let zinc = chain.after(at);
    let from = chain.over(zinc, &["-", "–"]);
    let end = chain.word(from).filter(|word| matches!(*word, "free" | "frei")).map(|_| chain.after(from))?;
    (!chain.inside_a_run(end))
        .then(|| vec![(zinc, What::Process(Process::Electroplated, false)), (end, What::Excluded)])
}
