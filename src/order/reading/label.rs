//! Numbers that mark the order, a drawing, a page: they are none of the order's own.

use super::count::count;
use super::length::is_measured;
use super::lexicon::{self, Word};
use super::token::Chain;
use super::what::{Found, What, one};
use super::{number, size, steel};

/// `PO 4711`, `item 10`: a number that marks the order.
pub fn label(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let label = |at: usize| {
        lexicon::find(chain, at, |word| match word {
            Word::Label(why) => Some(why),
            _ => None,
        })
    };
    let marks: &[&str] = &["#", ":", ".", "-"];
    if let Some(found) = of_a_year(chain, at) {
        return Some(found);
    }
    let (named, why) = label(at)?;
    let named = chain.over(named, marks);
    let named = label(named).map_or(named, |(end, _)| end);
    // `item no. 4`: the number of the item.
    let named = match chain.word(named) {
        Some("no" | "number" | "nummer") => chain.after(named),
        _ => named,
    };
    let id = chain.over(named, marks);
    // `drawing C4-102`, `rev C5`, `part no. C4`: letters in front of the figures.
    let behind = chain.after(id);
    let is_mark = is_mark(chain, at, named);
    let has_figures = chain.glued(behind) && chain.digits(behind).is_some();
    // `P/N HCS-58113-Z`: with a dash between.
    let has_a_dash = chain.sign(behind, &["-", "_"])
        && chain.glued(behind)
        && chain.glued(chain.after(behind))
        && chain.digits(chain.after(behind)).is_some();
    let is_lettered = chain.word(id).is_some() && (has_figures || has_a_dash) && is_mark;
    // `REV C`.
    let is_letter = chain.word(at) == Some("rev")
        && chain.get(id).is_some_and(|token| token.text.len() == 1 && token.text != token.lower)
        && !chain.glued(behind);
    if !is_lettered && !is_letter {
        chain.digits(id)?;
    }
    // `item 10.9`, `drawing 8.8`: a class, and no mark; `rev 8.8` is a revision, `due 10.9` a day.
    let may_be_class = !chain.word(at).is_some_and(|word| lexicon::HAVE_POINTS.contains(&word));
    // `part no. 4.6`: its number.
    let is_numbered = (at..id).any(|at| matches!(chain.word(at), Some("no" | "nr" | "number" | "nummer")));
    if may_be_class
        && !is_numbered
        && number::decimal(chain, id).is_some_and(|number| steel::DOTTED.contains(&number.text.as_str()))
    {
        return None;
    }
    // `order 500 pcs` has no number of its own.
    let counted = count(chain, id);
    let is_count =
        matches!(counted.as_deref(), Some([(_, What::Count(counted))]) if counted.spaced.is_none());
    // `order 1 1/4-7 x 5` is a size; in `item 2 3/4-10 x 4` the 2 is that of the item.
    let is_size = number::fraction(chain, id).is_some()
        || number::mixed(chain, id).is_some()
            && chain.word(at) == Some("order")
            && size::unified(chain, id).is_some();
    // `net 250 kg`.
    let is_weight = is_measured(chain, chain.after(id)) && counted.is_none();
    if is_count || is_size || is_weight {
        return None;
    }
    let mut end = chain.after(id);
    for _ in 0..12 {
        let joined = chain.glued(end)
            && chain
                .get(end)
                .is_some_and(|token| token.is_alphanumeric() || matches!(token.text, "-" | "/" | "." | "_"));
        if !joined {
            break;
        }
        end = chain.after(end);
    }
    one(end, What::Not(why.into()))
}

/// `annual usage 20,000 pcs`, `MOQ 5000`: pieces that are none of this order.
fn of_a_year(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let named = lexicon::over(chain, at, Word::Yearly);
    let from = chain.over(named, &[":", "=", "."]);
    let counted = count(chain, from).and_then(|found| found.last().map(|(end, _)| *end));
    let plain = || number::decimal(chain, from).map(|number| number.end);
    let end = counted.or_else(plain).filter(|end| named != at && !chain.inside_a_run(*end))?;
    one(end, What::Not("pieces that are none of this order".into()))
}

/// Whether a word marks a drawing or a part, whose names begin with letters.
fn is_mark(chain: &Chain<'_>, at: usize, named: usize) -> bool {
    let before = chain.before(named).and_then(|before| chain.word(before));
    chain.word(at).is_some_and(|word| lexicon::MARKS_A_PART.contains(&word))
        || matches!(before, Some("no" | "nr"))
}
