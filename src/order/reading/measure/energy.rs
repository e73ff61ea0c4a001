//! The energy of an impact test: joules, and no years of German.

use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::number;
use crate::order::reading::token::Chain;
use crate::order::reading::what::{Found, What};

/// Why an energy is not used.
const JOULES: &str = "an energy of an impact test is not judged; if it is a life, write years";

/// `27J`, `charpy min 27 J`: a capital that touches its number, or one behind a word for the test. `25 J.` are years.
pub fn energy(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let from = lexicon::over(chain, at, Word::Least);
    let number = number::decimal(chain, from)?;
    let end = chain.after(number.end);
    chain.get(number.end).filter(|unit| unit.text == "J" && !chain.inside_a_run(end))?;
    let front = chain.tokens().get(at.saturating_sub(REACH)..at).unwrap_or_default();
    let is_behind_a_test = || front.iter().any(|token| lexicon::OF_IMPACT.contains(&token.lower.as_ref()));
    (chain.glued(number.end) && !chain.sign(end, &["."]) || is_behind_a_test())
        .then(|| vec![(end, What::Not(JOULES.into()))])
}

/// So many words stand at most between the test and its energy.
const REACH: usize = 4;
