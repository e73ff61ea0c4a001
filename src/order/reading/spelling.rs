//! The words that say which process is meant, a letter or two off: beside `galvanised` they decide, and what nobody knows
//! there must not leave another coat standing. German and Dutch words for zinc, with the endings that they have in front of
//! a name.

use super::items::Line;
use super::lexicon::{self, Word};
use super::token::{self, Chain, Sort};
use super::what::What;
use super::{Piece, either};
use crate::quantity::letters::lower;

/// `mechancal galvanised`, `electo zinc plated`: the token is read as the word it is nearest to.
pub(super) fn mend(chain: &mut Chain<'_>) {
    let meant: Vec<(usize, String)> = (0..)
        .zip(chain.tokens())
        .filter(|(_, token)| token.sort == Sort::Word)
        .filter_map(|(at, token)| {
            let whole = meant(&token.lower)
                .or_else(|| lexicon::without_ending(&token.lower).filter(|_| is_of_the_part(chain, at)));
            Some((at, whole?.to_owned()))
        })
        .collect();
    for (at, word) in meant {
        chain.respell(at, &word);
    }
    for at in 0..chain.tokens().len() {
        if let Some(word) = chain.word(at).and_then(whole_screw) {
            chain.respell(at, &word);
        }
    }
}

/// `Zylinderschr.`, `Leitplankenschr.`: the noun that is cut short; `Unterschr.` and `Beschr.` are no screws.
fn whole_screw(word: &str) -> Option<String> {
    const SHORTEST_NAME: usize = "Unterschr".len() + 1;
    let whole = word.ends_with("schr").then(|| format!("{word}aube"))?;
    (lexicon::knows(&whole) || word.len() >= SHORTEST_NAME).then_some(whole).filter(|_| !lexicon::knows(word))
}

/// Whether a word in front of a name is said of the part: `für verzinkte Gitterroste` and `schwarze Kappen` are of other
/// things, and of `keine verzinkten Muttern` nobody knows whether there are others. Words that nobody knows may stand between.
fn is_of_the_part(chain: &Chain<'_>, at: usize) -> bool {
    let behind = std::iter::successors(Some(chain.after(at)), |at| Some(chain.after(*at)));
    let mut words = behind.map_while(|at| chain.word(at)).take(FARTHEST);
    let next = words.find(|word| lexicon::is_a_name(word) || lexicon::knows(word));
    let front = chain.before(at).and_then(|before| chain.word(before));
    next.is_some_and(lexicon::is_a_name) && !front.is_some_and(|word| lexicon::means(word, Word::Without))
}

/// So many words behind a finish are looked at for the name of its part.
const FARTHEST: usize = 4;

/// The word for a process that a word is taken for: one letter in six may be wrong, too many, missing, or change places with
/// its neighbour. The ends stand, for `mechanics` and `electroplater` are words of their own.
fn meant(word: &str) -> Option<&'static str> {
    let ends = |word: &str| (word.bytes().next(), word.bytes().last());
    let mut near = lexicon::OF_A_PROCESS
        .iter()
        .filter(|known| ends(word) == ends(known) && strsim::osa_distance(word, known) <= letters_off(known));
    near.next().copied().filter(|_| !lexicon::knows(word))
}

fn letters_off(word: &str) -> usize {
    if word.len() < 10 { 1 } else { 2 }
}

/// `mechanizd galvanised`: behind a word that begins as that for a process does and that nobody knows, `galvanised`,
/// `zinc` and `plated` say no process of their own.
pub(super) fn settle(line: &mut Line, text: &str, unknown: &[Piece]) {
    let mut beginnings = unknown.iter().filter(|piece| begins_as_one(&lower(&piece.text))).peekable();
    // Both stand in the order of the text: of each item the last beginning in front of it, and what stands between.
    let (mut last, mut ended) = (None, 0);
    for item in &mut line.items {
        let (Some(first), Some(end)) = (item.spans.first(), item.spans.last()) else { continue };
        while let Some(piece) = beginnings.next_if(|piece| piece.span.end <= first.start) {
            last = Some(piece.span.end);
        }
        // Other words that nobody knows may stand between, and no piece of the order.
        let is_behind = last.filter(|from| *from >= ended).is_some_and(|from| {
            text.get(from..first.start).is_some_and(|gap| !gap.contains(token::is_break))
        });
        let is_open = matches!(item.what, What::Process(..))
            && item.text.split(' ').next().is_some_and(|first| !either::may_be(first).is_empty());
        ended = ended.max(end.end);
        if is_open && is_behind {
            item.what = What::Not(lexicon::ANY_ZINC.into());
        }
    }
}

fn begins_as_one(word: &str) -> bool {
    lexicon::BEGINS_OF_A_PROCESS.iter().any(|begin| word.starts_with(begin))
}

#[cfg(test)]
mod tests {
    use super::meant;

    #[test]
    fn a_word_for_a_process_is_known_a_letter_or_two_off_and_another_word_is_left() {
        for word in ["mechancal", "mechancial", "mecanical", "mechnical", "mehcanical"] {
            assert_eq!(meant(word), Some("mechanical"), "{word}");
        }
        for word in ["mechanicaly", "mechanicallly", "mechancially", "mecanically"] {
            assert_eq!(meant(word), Some("mechanically"), "{word}");
        }
        for word in ["electo", "eletro", "elctro", "elecrto"] {
            assert_eq!(meant(word), Some("electro"), "{word}");
        }
        assert_eq!(meant("electroplatd"), Some("electroplated"));
        // Two of ten letters may be off, and one of nine.
        assert_eq!(meant("elctroplatd"), Some("electroplated"));
        assert_eq!(meant("mecancal"), Some("mechanical"));
        assert_eq!(meant("elcto"), None);
        for word in [
            "mechanical",
            "mechanic",
            "mechanics",
            "mechanism",
            "electron",
            "electroplater",
            "fully",
            "menial",
        ] {
            assert_eq!(meant(word), None, "{word}");
        }
    }
}
