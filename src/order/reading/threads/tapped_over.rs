//! How the nut is tapped, where the words for it stand around its name.

use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::token::Chain;
use crate::order::reading::what::{Found, What};

/// `tap the nuts over`, `tapping nuts oversize`: the two words, and the name between.
pub fn around_the_nut(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.word(at).filter(|word| lexicon::TAP.contains(word))?;
    let tap = chain.after(at);
    let name = if chain
        .word(tap)
        .is_some_and(|word| lexicon::OBJECTS.contains(&word) || lexicon::ALL.contains(&word))
    {
        chain.after(tap)
    } else {
        tap
    };
    let (nut, noun) = lexicon::whole(chain, name, |word| match word {
        Word::Part(noun) if noun.ends_with("nut") => Some(noun),
        _ => None,
    })?;
    let over =
        chain.word(nut).filter(|word| lexicon::TAPPED_OVER.contains(word)).map(|_| chain.after(nut))?;
    (!chain.inside_a_run(over)).then(|| {
        let mut found: Found = vec![(tap, What::Not(lexicon::TAPPED.into()))];
        if name != tap {
            found.push((name, What::Filler));
        }
        found.extend([(nut, What::Part(noun)), (over, What::Filler)]);
        found
    })
}
