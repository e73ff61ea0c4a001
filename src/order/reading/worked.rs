//! What was done to a part after its heat treatment, and left stress in it.

use super::lexicon::{self, Word};
use super::token::Chain;
use super::what::{Found, What, one};

/// `bent after heat treatment`, `nach dem Vergüten geschliffen`: formed cold, as the field asks, or machined.
pub fn after_hardening(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (end, is_cold) = worked(chain, at)
        .and_then(|(end, is_cold)| Some((hardening(chain, end)?, is_cold)))
        .or_else(|| worked(chain, hardening(chain, at)?))?;
    let what = if is_cold { What::Yes("cold") } else { What::Machined };
    (!chain.inside_a_run(end)).then(|| one(end, what)).flatten()
}

fn worked(chain: &Chain<'_>, at: usize) -> Option<(usize, bool)> {
    lexicon::find(chain, at, |word| match word {
        Word::Worked(is_cold) => Some(is_cold),
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
