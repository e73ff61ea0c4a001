//! Numbers that mark the order, a drawing, a page: they are none of the order's own.

use super::count::count;
use super::length::is_measured;
use super::lexicon::{self, Word};
use super::token::{Chain, Sort};
use super::what::{Found, What, one};
use super::{number, size, steel};
use std::ops::Range;

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
    if let Some((name, why)) = whole_name(chain, at) {
        return one(name.end, What::Not(why.into()));
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
    // `dwg zork: M20`: the name is the word that nobody knows, and no size behind it.
    let is_named = (at..id).any(|place| chain.is_out(place));
    let is_lettered = chain.word(id).is_some() && (has_figures || has_a_dash) && is_mark && !is_named;
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

/// No name has so many dashes and figures.
const MOST_OF_A_NAME: usize = 12;

/// `drg FX-20-8.8-C4`, `job C5-12`, `article BOLT-M24-10.9`: a name of letters and figures with dashes behind a word that marks
/// is one, whatever its parts say by themselves: its place, and why it is not used. One that is all that the line says of a
/// size, or that is a known word or a steel as a whole, is none.
pub(super) fn whole_name(chain: &Chain<'_>, at: usize) -> Option<(Range<usize>, &'static str)> {
    let label = |at: usize| {
        lexicon::find(chain, at, |word| match word {
            Word::Label(why) => Some(why),
            _ => None,
        })
    };
    chain.word(at)?;
    let marks: &[&str] = &["#", ":", ".", "-"];
    let (named, why) = label(at).filter(|_| !chain.inside_a_run(at))?;
    let named = chain.over(named, marks);
    let named = label(named).map_or(named, |(end, _)| end);
    let named = match chain.word(named) {
        Some("no" | "number" | "nummer") => chain.after(named),
        _ => named,
    };
    let begin = chain.over(chain.over(named, marks), marks);
    // `drg zork FX-20-8.8-C4`: a word that nobody knows may stand between.
    let between = chain.after(begin);
    let is_between = chain.word(begin).is_some_and(|word| !lexicon::knows(word)) && !chain.glued(between);
    let begin = if is_between { between } else { begin };
    let head = chain.word(begin).filter(|_| !chain.inside_a_run(begin))?;
    let (mut end, mut dashes, mut figures, mut tokens) = (begin, 0, 0, 0);
    while let Some(token) = chain.get(end).filter(|token| {
        (end == begin || chain.glued(end))
            && (token.is_alphanumeric() || matches!(token.text, "-" | "/" | "." | "_"))
            && dashes + figures <= MOST_OF_A_NAME
    }) {
        dashes += usize::from(matches!(token.text, "-" | "_"));
        figures += usize::from(token.sort == Sort::Digits);
        tokens += 1;
        end = chain.after(end);
    }
    let name = begin..end;
    let is_known = lexicon::find(chain, begin, |_| Some(())).is_some_and(|(last, ())| last >= end)
        || steel::steel(chain, begin).is_some();
    let is_size = |at: usize| size::metric(chain, at).is_some() || size::unified(chain, at).is_some();
    let has_a_cross = name.clone().any(|at| chain.word(at).is_some_and(|word| word == "x"));
    if dashes == 0 || figures == 0 || is_known || has_a_cross || is_size(begin) {
        return None;
    }
    let has_a_size = name.clone().any(is_size);
    let is_elsewhere =
        || (0..chain.tokens().len()).any(|at| !name.contains(&at) && !chain.inside_a_run(at) && is_size(at));
    // `job C5-12`: a letter or two and nothing but figures.
    let is_short = head.len() <= 2 && chain.inside_a_run(chain.after(begin)) && tokens == 4;
    let is_name = match has_a_size {
        true => is_elsewhere(),
        false => is_mark(chain, at, named) || is_short || !lexicon::knows(head),
    };
    is_name.then_some((name, why))
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

#[cfg(test)]
mod tests {
    use super::whole_name;
    use crate::order::reading::token::Chain;

    /// A name behind a word that marks: letters and figures with dashes, and no size, steel or word that is known.
    #[test]
    fn a_name_with_dashes_is_one_whatever_its_parts_say() {
        let name = |text: &str, at: usize| {
            let chain = Chain::of(text);
            let (name, _) = whole_name(&chain, at)?;
            let (first, last) =
                (chain.tokens().get(name.start)?.start, chain.tokens().get(name.end - 1)?.end());
            text.get(first..last).map(str::to_owned)
        };
        for (text, found) in [
            ("drg FX-20-8.8-C4", Some("FX-20-8.8-C4")),
            ("drg: FX-20-8.8-C4", Some("FX-20-8.8-C4")),
            ("drg no FX-20-8", Some("FX-20-8")),
            ("drg number: FX-20-8", Some("FX-20-8")),
            ("drg zork FX-20-8.8", Some("FX-20-8.8")),
            ("drg FX_20_8", Some("FX_20_8")),
            ("job C5-12", Some("C5-12")),
            ("drg FX-20 8.8", Some("FX-20")),
            ("drg bolt FX-20-8", None),
            ("drg zork-FX-20", Some("zork-FX-20")),
            ("drg M20-8", None),
            ("drg FX-M20-8", None),
            ("drg FX-20x60", None),
            ("drg FX-AB", None),
            ("drg FX20", None),
            ("drg A325-20", None),
            ("bolt FX-20-8", None),
        ] {
            assert_eq!(name(text, 0).as_deref(), found, "{text}");
        }
        // A size elsewhere: the one in the name is none of the order's.
        assert_eq!(name("M16x60, drg FX-M20-8", 4 + 1).as_deref(), Some("FX-M20-8"));
    }
}
