//! Numbers of pieces in words of several parts: `one thousand two hundred`, `one hundred and fifty`.

use super::{mate, unit};
use crate::order::reading::length;
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::number::{self, Number};
use crate::order::reading::token::Chain;

/// The number at a place whose words go on behind the first hundred, thousand or million.
pub(super) fn spelled(chain: &Chain<'_>, at: usize) -> Option<Number> {
    let (mut end, first) = match number::decimal(chain, at) {
        // `5 hundred and fifty`.
        Some(number) => (number.end, number.whole().filter(|number| (1..100).contains(number))?),
        None => lexicon::small(chain, at).map(|(end, number)| (end, u64::from(number)))?,
    };
    if lexicon::is_article(chain, at) && multiple(chain, end).is_none() {
        return None;
    }
    // All that stands in front of the last thousand or million; what is behind it.
    let (mut above, mut below) = (0_u64, first);
    // The last thousand or million, and the last multiple right in front of a place.
    let (mut last, mut room) = (u64::MAX, None);
    let mut goes_on = false;
    // So many words has no number of pieces.
    for _ in 0..16 {
        if let Some((behind, times)) = multiple(chain, end) {
            if times == 100 && (1..100).contains(&below) {
                below *= times;
            } else if times > 100 && below > 0 && times < last {
                (above, below, last) = (above + below * times, 0, times);
            } else {
                return None;
            }
            goes_on |= room.is_some();
            (end, room) = (behind, Some(times));
            continue;
        }
        let has_and = matches!(chain.word(end), Some("and" | "und"));
        let in_words = if has_and { words(chain, chain.after(end)) } else { words(chain, end) };
        let in_figures = room.filter(|_| !has_and).and_then(|room| figures(chain, end, room));
        let Some((behind, more)) = in_words.or(in_figures).filter(|_| room.is_some()) else { break };
        // `bolts one hundred and two nuts`, `bolts one thousand two nuts`: another number.
        if (has_and || more <= 4) && chain.before(at).is_some() && mate(chain, behind).is_some() {
            return None;
        }
        (end, below, room, goes_on) = (behind, below + more, None, true);
    }
    let value = above + below;
    let text = value.to_string();
    let number = Number { value: value as f64, text, grouped: None, is_fraction: false, end };
    let is_other = unit(chain, end).is_none()
        && (length::is_measured(chain, end) && lexicon::over(chain, end, Word::Box) == end
            || length::unit_of_length(chain, &number).is_some());
    // `one hundred two fifty`.
    let is_cut = lexicon::small(chain, end).is_some() && !lexicon::is_article(chain, end);
    (goes_on && !is_other && !is_cut && !chain.inside_a_run(end)).then_some(number)
}

/// What stands behind a multiple in words.
fn words(chain: &Chain<'_>, at: usize) -> Option<(usize, u64)> {
    let is_article = lexicon::is_article(chain, at);
    let (end, more) = lexicon::small(chain, at)?;
    (!is_article || multiple(chain, end).is_some()).then_some((end, u64::from(more)))
}

/// `one thousand 200 pcs`: what stands behind a multiple in figures with their unit, and is less.
fn figures(chain: &Chain<'_>, at: usize, room: u64) -> Option<(usize, u64)> {
    let number = number::decimal(chain, at)?;
    let is_counted = unit(chain, number.end).is_some_and(|(_, times, _)| times == 1);
    number.whole().filter(|more| *more < room && is_counted).map(|more| (number.end, more))
}

/// A hundred, a thousand or a million in words.
fn multiple(chain: &Chain<'_>, at: usize) -> Option<(usize, u64)> {
    lexicon::find(chain, at, |word| match word {
        Word::Count(times @ (100 | 1000 | 1_000_000), false) => Some(u64::from(times)),
        _ => None,
    })
}

#[cfg(test)]
mod tests {
    use super::spelled;
    use crate::order::reading::token::Chain;

    #[test]
    fn a_number_goes_on_behind_its_hundreds_and_thousands_and_not_into_the_next_number() {
        let value = |text: &str, at: usize| spelled(&Chain::of(text), at).map(|number| number.value);
        for (text, number) in [
            ("one thousand two hundred pcs", 1200.0),
            ("one hundred and fifty pcs", 150.0),
            ("5 hundred and fifty pcs", 550.0),
            ("99 hundred and one pcs", 9901.0),
            ("two million three hundred thousand pcs", 2_300_000.0),
            ("a hundred and fifty pcs", 150.0),
            ("one thousand 200 pcs", 1200.0),
            ("one thousand 999 pcs", 1999.0),
            ("one hundred and fifty boxes", 150.0),
            ("one hundred and two nuts", 102.0),
        ] {
            assert_eq!(value(text, 0), Some(number), "{text}");
        }
        for text in [
            "one thousand two thousand",
            "one hundred hundred",
            "one thousand 1000 pcs",
            "one thousand 1200 pcs",
            "0 hundred and fifty",
            "100 hundred and five",
            "one hundred two fifty",
            "one hundred and fifty kg",
            "one hundred and fifty mm",
            "a and fifty",
            "one hundred",
        ] {
            assert_eq!(value(text, 0), None, "{text}");
        }
        for (text, number) in [
            ("bolts one hundred and two nuts", None),
            ("bolts one thousand four nuts", None),
            ("bolts one thousand five nuts", Some(1005.0)),
            ("bolts one hundred and fifty pcs", Some(150.0)),
        ] {
            assert_eq!(value(text, 1), number, "{text}");
        }
    }
}
