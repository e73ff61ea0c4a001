//! Words that say that something is not wanted by what stands beside them.

use super::super::lexicon::{self, Word};
use super::super::token::Chain;
use super::super::what::{Found, What, one};
use super::super::{number, steel};
use crate::process::Process;

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
        return (finish != close)
            .then(|| vec![(finish, What::Without), (last, What::Process(process, false))]);
    }
    let before = chain.before(at).filter(|_| is_short)?;
    let article = match chain.word(end) {
        Some("de" | "d") => chain.over(chain.after(end), &["'", "’"]),
        _ => end,
    };
    // `Ni plated` is of nickel.
    if chain.word(at) == Some("ni") && chain.word(end).is_some_and(|word| word.starts_with("plat")) {
        return None;
    }
    let is_small = chain.get(at).is_some_and(|token| token.text == token.lower);
    let can_be_left_out = |word| {
        (is_finish(word) || matches!(word, Word::Part(_)) || is_small && word == Word::OtherMetal)
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

/// `customer refuses mechanical plating`: a finish and nothing else; `refuses 10.9` says nothing of the part.
pub fn refused(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.word(at).filter(|word| lexicon::REFUSE.contains(word))?;
    let end = lexicon::over(chain, chain.after(at), Word::Filler);
    lexicon::whole(chain, end, |word| is_finish(word).then_some(()))?;
    one(end, What::Without)
}

fn is_finish(word: Word) -> bool {
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
