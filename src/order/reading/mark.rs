//! The letters that mark a thread which makes room for the kettle's coat, and what else a letter can be.

use super::length::is_measured;
use super::lexicon::{self, Word};
use super::number::{self, Number};
use super::token::{Chain, Sort};
use super::what::{Found, What, one};
use crate::thread::ToleranceClass;

/// `8.8 - U`, `8.8U`, `8.8 U tZn`, `feuerverzinkt U`: the mark of bolts that are cut under, 6az (ISO 10684).
pub fn undercut(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.get(at).filter(|token| token.text == "U")?;
    let end = chain.after(at);
    if is_abbreviated(chain, end) || is_a_variant(chain, at) {
        return None;
    }
    let before = chain.before(at).filter(|_| chain.first() != at);
    let token = before.and_then(|before| chain.get(before));
    // Behind a class with a point it is the mark, whatever follows, but for `8.8 U MUTTER`.
    let class = before.and_then(|before| chain.before(before)).filter(|mark| chain.sign(*mark, &[".", ","]));
    let is_class =
        class.is_some_and(|mark| chain.glued(mark)) && token.is_some_and(|it| it.sort == Sort::Digits);
    let is_part = lexicon::find(chain, end, |word| matches!(word, Word::Part(_)).then_some(())).is_some();
    let is_end = |at: usize| {
        let next = chain.get(at);
        next.is_none_or(|token| {
            token.sort == Sort::Break
                || token.sort == Sort::Digits && !chain.glued(at)
                || matches!(token.text, "-" | ")" | "." | "/")
                || matches!(token.lower.as_str(), "tzn" | "mit" | "with")
        })
    };
    let is_dipped = token.is_some_and(|token| {
        matches!(
            token.lower.as_str(),
            "tzn" | "fvz" | "feuerverzinkt" | "hdg" | "galv" | "galvanized" | "galvanised" | "verzinkt"
        )
    });
    let is_behind = is_dipped
        || token
            .is_some_and(|token| token.sort == Sort::Digits || matches!(token.text, "-" | "," | "(" | "/"));
    let class = ToleranceClass::read("6az")?;
    let is_mark = is_class && (!is_part || chain.inside_a_run(at)) || is_behind && is_end(end);
    (is_mark && !chain.inside_a_run(end) && (is_class || !chain.inside_a_run(at)))
        .then(|| vec![(end, What::ThreadClass(class))])
}

/// `U/M EA`, `U.P.`, `U/W`: letters behind a stroke or a point make an abbreviation of the letter before it.
fn is_abbreviated(chain: &Chain<'_>, end: usize) -> bool {
    let letter = chain.after(end);
    chain.sign(end, &["/", "."])
        && chain.glued(end)
        && chain.glued(letter)
        && chain.get(letter).is_some_and(|token| token.sort == Sort::Word && token.text.len() == 1)
}

/// `item U`, `option U`: behind a word that says which of several, a letter is its own.
fn is_a_variant(chain: &Chain<'_>, at: usize) -> bool {
    let says = |word: &str| lexicon::VARIANTS.contains(&word) || lexicon::is_label(word);
    // A word that nobody knows may stand between, as it may anywhere.
    let mut place = at;
    while let Some(before) = place.checked_sub(1) {
        let Some(token) = chain.tokens().get(before) else { return false };
        let is_point = matches!(token.text, "." | ":" | "#");
        if token.sort == Sort::Word && says(&token.lower) {
            return true;
        }
        if !is_point && !chain.is_out(before) {
            return false;
        }
        place = before;
    }
    false
}

/// `U/M EA`, `U/P 0.50`, `U.W.`: the unit, the price or the weight of one, and no mark of a thread.
pub fn of_a_unit(chain: &Chain<'_>, at: usize) -> Option<Found> {
    const OF_A_UNIT: &str =
        "of a unit: its measure, its price or its weight, and no mark of a bolt cut under";
    let mark = chain.get(at).filter(|token| token.lower == "u").map(|_| chain.after(at))?;
    let letter = chain.after(mark);
    chain.word(letter).filter(|letter| matches!(*letter, "m" | "p" | "w"))?;
    let end = chain.over(chain.after(letter), &[".", ":"]);
    let is_one = is_abbreviated(chain, mark) && !chain.inside_a_run(at) && !chain.inside_a_run(end);
    let decimal = number::decimal(chain, end).filter(|number| number.whole().is_none());
    let is_alone = |number: &Number| !chain.inside_a_run(number.end) && !is_measured(chain, number.end);
    // `U/P 0.50`; a whole number may count the order.
    let price = decimal.filter(|number| chain.word(letter) == Some("p") && is_alone(number));
    is_one.then(|| vec![(price.map_or(end, |number| number.end), What::Not(OF_A_UNIT.into()))])
}

/// `8 Z`, `8X`: the class of a nut and the mark of its thread, tapped over to 6AZ or 6AX (ISO 10684).
pub fn tapped_mark(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let number = chain.digits(at).filter(|class| matches!(*class, "5" | "6" | "8" | "10" | "12"))?;
    let mark = chain.after(at);
    let (end, class) = letter_mark(chain, mark).filter(|(_, class)| !class.is_bolt())?;
    let is_dotted = chain.before(at).is_some_and(|mark| chain.sign(mark, &["."]) && chain.glued(mark));
    (!is_dotted).then(|| {
        vec![(mark, What::Class(number.parse().unwrap_or_default())), (end, What::ThreadClass(class))]
    })
}

/// `U marked`, `marked Z`, `mark: X`: the letter of a thread that makes room for the kettle's coat (ISO 10684).
pub fn marked(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let is_word = |at: usize| chain.word(at).is_some_and(|word| lexicon::MARKED.contains(&word));
    if is_word(at) {
        let from = chain.over(chain.after(at), &[":", "=", "-", "“", "\""]);
        let from =
            if matches!(chain.word(from), Some("with" | "mit" | "as")) { chain.after(from) } else { from };
        let from = chain.over(from, &["“", "\"", "'"]);
        let (end, class) = letter_mark(chain, from)?;
        return one(chain.over(end, &["”", "\"", "'"]), What::ThreadClass(class));
    }
    let (end, class) = letter_mark(chain, at)?;
    let behind = chain.over(chain.over(end, &["”", "\"", "'"]), &["-", "–"]);
    // `class 8 Z`.
    let is_class = chain.before(at).is_some_and(|before| {
        matches!(chain.digits(before), Some("5" | "6" | "8" | "10" | "12"))
            && !chain.before(before).is_some_and(|mark| chain.sign(mark, &["."]) && chain.glued(mark))
    });
    let end = match is_word(behind) {
        true => chain.after(behind),
        false if is_class && !class.is_bolt() || chain.get(at)?.text.len() > 1 => end,
        false => return None,
    };
    (!chain.inside_a_run(at)).then(|| vec![(end, What::ThreadClass(class))])
}

/// The capital letter of a thread that makes room for the kettle's coat, and its class.
fn letter_mark(chain: &Chain<'_>, at: usize) -> Option<(usize, ToleranceClass)> {
    let class = match chain.get(at)?.text {
        "U" => "6az",
        "Z" => "6AZ",
        "X" | "AX" => "6AX",
        "AZ" => "6AZ",
        _ => return None,
    };
    let end = chain.after(at);
    (!chain.inside_a_run(end)).then(|| ToleranceClass::read(class)).flatten().map(|class| (end, class))
}
