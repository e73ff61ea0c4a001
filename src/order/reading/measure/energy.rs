//! The energy of an impact test: joules, and no years of German.

use super::degrees;
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::number;
use crate::order::reading::token::{Chain, Sort};
use crate::order::reading::what::{Found, What};

/// Why an energy is not used.
const JOULES: &str = "an energy of an impact test is not judged; if it is a life, write years";

/// `27J`, `charpy min 27 J`, `27 J at -20 °C`, `40 J impact`: beside a word for the test or a temperature, or of a number that
/// is no life that people write. `25 J.` and `25J` are years.
pub fn energy(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let from = lexicon::over(chain, at, Word::Least);
    let number = number::decimal(chain, from)?;
    let end = chain.after(number.end);
    chain.get(number.end).filter(|unit| unit.text == "J" && !chain.inside_a_run(end))?;
    let is_test = |word: &str| lexicon::OF_IMPACT.contains(&word);
    let front = chain.tokens().get(at.saturating_sub(REACH)..at).unwrap_or_default();
    // Words that nobody knows are out of the chain.
    let behind = chain.tokens().iter().skip(number.end + 1).take(NEAR).take_while(|it| it.sort == Sort::Word);
    let mut beside = front.iter().chain(behind);
    let mut is_beside_a_test = || beside.any(|token| is_test(&token.lower));
    let is_at_a_temperature = || {
        let from = chain.over(lexicon::over(chain, end, Word::Filler), &["/", "@"]);
        from != end && (number::is_minus(chain, from) || degrees::temperature(chain, from).is_some())
    };
    let is_life = number.whole().is_some_and(|years| years.is_multiple_of(5));
    (is_beside_a_test() || is_at_a_temperature() || !is_life && chain.glued(number.end))
        .then(|| vec![(end, What::Not(JOULES.into()))])
}

/// So many words stand at most between the test and its energy.
const REACH: usize = 4;

/// And so many behind it.
const NEAR: usize = 3;
