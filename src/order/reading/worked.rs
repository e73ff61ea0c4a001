//! What was done to a part after its heat treatment, and left stress in it.

use super::lexicon::{self, Word};
use super::token::Chain;
use super::what::{Found, What, one};
use crate::steel::Worked;

/// `bent after heat treatment`, `nach dem Vergüten geschliffen`.
pub fn after_hardening(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (end, how) = worked(chain, at)
        .and_then(|(end, how)| Some((hardening(chain, end)?, how)))
        .or_else(|| worked(chain, hardening(chain, at)?))?;
    (!chain.inside_a_run(end)).then(|| one(end, What::Worked(how))).flatten()
}

fn worked(chain: &Chain<'_>, at: usize) -> Option<(usize, Worked)> {
    lexicon::find(chain, at, |word| match word {
        Word::Worked(how) => Some(how),
        _ => None,
    })
}

/// The place behind `after the heat treatment`.
fn hardening(chain: &Chain<'_>, at: usize) -> Option<usize> {
    let after = chain.word(at).filter(|word| lexicon::PAST.contains(word)).map(|_| chain.after(at))?;
    let from = match chain.word(after) {
        Some("the" | "its" | "final" | "full" | "dem" | "der" | "den") => chain.after(after),
        _ => after,
    };
    lexicon::find(chain, from, |word| (word == Word::Hardening).then_some(())).map(|(end, ())| end)
}
