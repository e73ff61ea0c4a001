//! The number of a document, with its publisher and the year of its edition.

use super::lexicon::{self, ASTM_STEELS, COAT_DOCUMENTS, OTHER_DOCUMENTS, Word};
use super::number;
use super::token::{Chain, Sort};

/// The number of a document of ASTM: `A325`, `A 325M`, `ASTM F-436`, `F3125/F3125M-19`.
pub fn number_of(chain: &Chain<'_>, at: usize) -> Option<(usize, String)> {
    let from = publishers(chain, at);
    let letter = chain.get(from).filter(|token| token.sort == Sort::Word)?;
    if !matches!(letter.lower.as_str(), "a" | "b" | "c" | "d" | "e" | "f" | "sa") {
        return None;
    }
    let behind = chain.after(from);
    let number_at = if chain.glued(behind) { chain.over(behind, &["-"]) } else { behind };
    let number = chain.digits(number_at).filter(|digits| (2..=4).contains(&digits.len()))?;
    let id = format!("{}{number}", letter.lower);
    let touches = chain.glued(number_at) && chain.glued(behind);
    let known = ASTM_STEELS.contains(&id.as_str()) || is_known(&id);
    // `8.8 a 325 uds`: pieces.
    let is_at =
        letter.text == "a" && !touches && chain.before(from).is_some_and(|it| chain.digits(it).is_some());
    let behind = lexicon::meaning(chain, chain.after(number_at));
    let counted = is_at && matches!(behind, Some((_, Word::Count(1, _))));
    if !(touches || known) || counted {
        return None;
    }
    let mut end = chain.after(number_at);
    let metric =
        |at: usize| chain.word(at) == Some("m") && chain.glued(at) && !chain.inside_a_run(chain.after(at));
    let mut id = id;
    if metric(end) {
        end = chain.after(end);
        // Most documents are one with their metric edition; A325M and A490M are steels of their own.
        let own = format!("{id}m");
        if ASTM_STEELS.contains(&own.as_str()) {
            id = own;
        }
    }
    // `A153/A153M`.
    let second = chain.after(end);
    if chain.sign(end, &["/"])
        && chain.word(second) == Some(letter.lower.as_str())
        && chain.digits(chain.after(second)) == Some(number)
    {
        let behind = chain.after(chain.after(second));
        end = if metric(behind) { chain.after(behind) } else { behind };
    }
    Some((edition(chain, end), id))
}

/// The year of an edition: `-05`, `-16a`, `:2004`.
fn edition(chain: &Chain<'_>, at: usize) -> usize {
    let year = chain.after(at);
    let end = chain.after(year);
    let two = chain.sign(at, &["-"])
        && chain.digits(year).is_some_and(|year| year.len() == 2 && year.starts_with(['0', '1', '2']));
    let four = chain.sign(at, &["-", ":"]) && chain.digits(year).is_some_and(|year| year.len() == 4);
    // -12 and -25 are classes of B695 before they are years.
    let is_class = matches!(chain.digits(year), Some("12" | "25"));
    let fair = chain.glued(at) && chain.glued(year) && !is_class && (two || four) && !chain.sign(end, &["/"]);
    if !fair || number::decimal(chain, year).is_some_and(|number| number.whole().is_none()) {
        return at;
    }
    let letter = chain
        .get(end)
        .is_some_and(|token| matches!(token.lower.as_str(), "a" | "b" | "e1") && chain.glued(end));
    if letter {
        chain.after(end)
    } else if chain.inside_a_run(end) {
        at
    } else {
        end
    }
}

/// The place behind the publishers of a standard: `ASTM`, `DIN EN ISO`.
pub fn publishers(chain: &Chain<'_>, at: usize) -> usize {
    let mut end = at;
    for _ in 0..3 {
        let behind = lexicon::over(chain, end, Word::Publisher);
        // `as` in small letters is a word.
        let is_word = chain.get(end).is_some_and(|token| token.text == "as");
        if behind == end || is_word {
            break;
        }
        end = chain.over(behind, &["-", "/", "."]);
    }
    end
}

/// Whether a coat or another row names a document of that number.
fn is_known(id: &str) -> bool {
    COAT_DOCUMENTS.iter().chain(OTHER_DOCUMENTS).any(|(_, known)| known.contains(&id))
}
