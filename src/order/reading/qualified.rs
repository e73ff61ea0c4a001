//! A word in front of a part's noun that makes another part of it: `guard rail bolts`.

use super::items::Line;
use super::lexicon::{self, Word};
use super::part::{self, Scopes};
use super::token::{Chain, Sort, Token};
use super::what::{Found, What, one};
use super::{Became, Piece};
use crate::part::Kind;

/// `guard rail bolts`: the words that are known to make another part; `Leitplankenschrauben`, a word that
/// nobody knows and that ends as the name of a part does.
pub fn another(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let is_qualifier = |word| (word == Word::Qualifier).then_some(());
    if let Some((end, ())) = lexicon::whole(chain, at, is_qualifier) {
        let noun = lexicon::whole(chain, chain.over(end, &["-", "–"]), |word| match word {
            Word::Part(noun) => lexicon::NOUNS.contains(&noun).then_some(()),
            _ => None,
        });
        let what = if noun.is_some() { What::Part("?") } else { What::Not("".into()) };
        return one(end, what);
    }
    let is_name = chain.word(at).is_some_and(lexicon::names_a_part) || is_compound(chain.tokens(), at);
    let end = chain.after(at);
    (is_name && !chain.inside_a_run(at) && !chain.inside_a_run(end)).then(|| vec![(end, What::Part("?"))])
}

/// `Flach-Schrauben`: a word that nobody knows, joined by a dash to the noun of a part.
pub(super) fn is_compound(tokens: &[Token<'_>], at: usize) -> bool {
    let [Some(word), Some(dash), Some(noun)] = [at, at + 1, at + 2].map(|at| tokens.get(at)) else {
        return false;
    };
    let touch = word.end() == dash.start && dash.end() == noun.start;
    word.sort == Sort::Word
        && noun.sort == Sort::Word
        && touch
        && matches!(dash.text, "-" | "–" | "‑")
        && !lexicon::knows(&word.lower)
        && lexicon::is_noun(&noun.lower)
}

/// Words that nobody knows right in front of a bare noun: the part is taken for what the noun alone is, and that
/// is said.
pub(super) fn settle(line: &mut Line, scopes: &Scopes, text: &str, unknown: &mut [Piece]) {
    let Some(kind) = line.draft.get("part").and_then(Kind::from_key).filter(|kind| *kind != Kind::Other)
    else {
        return;
    };
    let bare = |at: &usize| matches!(line.what(*at), Some(What::Part(noun)) if lexicon::NOUNS.contains(noun));
    let names: Vec<usize> = scopes.names.iter().copied().collect();
    let [only] = names.as_slice() else { return };
    let Some(mut begin) =
        line.items.get(*only).filter(|_| bare(only)).and_then(|item| Some(item.spans.first()?.start))
    else {
        return;
    };
    let end = begin;
    let is_gap = |from: usize, to: usize| {
        text.get(from..to).is_some_and(|gap| !gap.is_empty() && gap.chars().all(|c| c == ' ' || c == '-'))
    };
    let mut first = unknown.len();
    for (place, piece) in unknown.iter().enumerate().rev() {
        let is_word = piece.text.chars().all(|c| c.is_alphabetic() || c == '-');
        if piece.span.end <= begin && is_word && is_gap(piece.span.end, begin) {
            (begin, first) = (piece.span.start, place);
        }
    }
    let words = text.get(begin..end).unwrap_or_default().trim();
    if words.is_empty() {
        return;
    }
    line.notes.retain(|(field, note)| *field != "part" || *note != part::A_BOLT);
    line.note("part", format!("taken as a {}: “{words}” is not known here", kind.name()));
    let why = format!("not known in front of this name: judged as a {}", kind.name());
    for piece in unknown.iter_mut().skip(first).filter(|piece| piece.span.end <= end) {
        piece.became = Became::NotUsed(why.clone().into());
    }
}

/// Where words that nobody knows stand in the line, one of them may have been the name of the part.
pub(super) fn named_by_another(line: &mut Line, unknown: &[Piece]) {
    let is_word = |piece: &Piece| piece.text.len() > 3 && piece.text.chars().all(char::is_alphabetic);
    if unknown.iter().any(is_word) {
        for (_, note) in line.notes.iter_mut().filter(|(_, note)| *note == part::NO_PART) {
            *note = "taken as a hex bolt: no name of a part in the line is known here".into();
        }
    }
}
