//! Another metal that a part touches: `bolted to stainless frame`, `auf Kupferschiene`, `in contact with aluminium`.

use std::ops::Range;

use super::{near, says_joins};
use crate::order::reading::items::Line;
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::token::Chain;
use crate::order::reading::what::{Found, SteelWord, What, one};
use crate::quantity::letters::lower;
use crate::site::Surroundings;

/// Whether a word is of a thing made of another metal: `Kupferschiene`.
pub(in crate::order::reading) fn is_thing(word: &str) -> bool {
    lexicon::METALS
        .iter()
        .filter_map(|metal| word.strip_prefix(metal))
        .any(|thing| lexicon::METAL_ENDS.contains(&thing))
}

/// `auf Kupferschiene`, `an Edelstahlrahmen`.
pub(in crate::order::reading) fn thing(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let word = chain.word(at).filter(|word| is_thing(word))?;
    one(chain.after(at), What::Around(around(word)))
}

/// `in contact with aluminium`, `touching brass`: whatever the metal is.
pub(in crate::order::reading) fn contact(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let touching = |word| (word == Word::Touching).then_some(());
    let (place, ()) = lexicon::find(chain, at, touching)?;
    let metal = |word| (word == Word::OtherMetal).then_some(());
    let (end, ()) = lexicon::whole(chain, place, metal)?;
    let metal = chain.word(place).filter(|word| is_metal(word))?;
    one(end, What::Around(around(metal)))
}

/// Of what zinc touches, a plastic is no metal.
pub(in crate::order::reading) fn is_metal(word: &str) -> bool {
    !["nylon", "plastic", "kunststoff", "polyamid", "pa"].contains(&word)
}

/// What surrounds a part that touches a metal of this name.
pub(in crate::order::reading) fn around(name: &str) -> Surroundings {
    let name = lower(name);
    let is_one = |names: &[&str]| names.iter().any(|start| name.starts_with(start));
    match () {
        () if is_one(lexicon::COPPER) => Surroundings::Copper,
        () if is_one(lexicon::ALUMINIUM) => Surroundings::Aluminium,
        () if is_one(lexicon::STAINLESS) => Surroundings::Stainless,
        () => Surroundings::OtherMetal,
    }
}

/// `bolted to stainless frame`, `for copper earth bar`: what the part is put on, and no steel of its own.
pub(super) fn settle(line: &mut Line, at: usize, text: &str) {
    let is_one = line.items.get(at).is_some_and(|item| {
        item.is_free()
            && item.what == What::Steel(SteelWord::OtherMetal)
            && item.text.split(' ').next().is_some_and(|word| is_metal(&lower(word)))
    });
    let Some(Range { start, end }) = line.span(at).filter(|_| is_one) else { return };
    let is_thing = text.get(end..).is_some_and(|rest| {
        near(rest.split([' ', '-']), |word| {
            lexicon::JOINED.contains(&word) || lexicon::OF_METAL.contains(&word)
        })
    });
    let front = text.get(..start).unwrap_or_default();
    let is_on = line
        .before(at)
        .and_then(|before| line.items.get(before))
        .is_some_and(|item| lexicon::PUT_ON.contains(&lower(&item.text).as_str()));
    if is_thing
        && (is_on || says_joins(front))
        && let Some(item) = line.item(at)
    {
        item.what = What::Around(around(&item.text));
        // `for brass flange`: no bolt has that one.
        let is_noun = matches!(line.what(at + 2), Some(What::Part(noun)) if lexicon::NOUNS.contains(noun));
        if line.what(at + 1) == Some(&What::Part("flange"))
            && !is_noun
            && let Some(item) = line.item(at + 1)
        {
            item.what = What::Not(lexicon::JOINT.into());
        }
    }
}
