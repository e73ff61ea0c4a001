//! Prices, which are not judged.

use super::count::{MONEY, unit};
use super::length::{self, is_measured};
use super::lexicon::{self, Word};
use super::number;
use super::token::Chain;
use super::what::{Found, What, one};

/// `$1.20/ea`, `12 EUR`.
pub fn money(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let marked = chain.over(at, MONEY);
    let named = lexicon::over(chain, marked, Word::Money);
    // `EUR 500 Stk`, `EUR 200 HV`: a number with a unit of its own is no price.
    let has_unit = |number: &number::Number| {
        marked == at && (unit(chain, number.end).is_some() || is_measured(chain, number.end))
    };
    let number = number::decimal(chain, named).filter(|number| named == at || !has_unit(number));
    let behind = number.as_ref().map(|number| {
        let sign = chain.over(number.end, MONEY);
        // A sign that touches the next number is that number's.
        let end = if chain.digits(sign).is_some() && chain.glued(sign) { number.end } else { sign };
        (end, lexicon::over(chain, end, Word::Money))
    });
    let (mut end, is_money) = match (number, behind) {
        (Some(number), Some((_, end))) => (end, named != at || end != number.end),
        _ => (named, named != at),
    };
    let stroke = chain.over(end, &["/"]);
    if let Some((behind, ..)) = unit(chain, stroke).filter(|_| is_money && stroke != end) {
        end = behind;
    }
    // `$1200/M`: for a thousand.
    let each = chain.after(stroke);
    let by_letter = is_money && stroke != end && chain.glued(stroke) && !chain.inside_a_run(each);
    if chain.get(stroke).is_some_and(|token| by_letter && matches!(token.text, "M" | "C")) {
        end = each;
    }
    end = if is_money { over_so_many(chain, end) } else { end };
    let price = is_money.then_some(end).or_else(|| {
        // `5.00/ea`, `12.50 / 100`.
        let number = number::decimal(chain, at)?;
        let stroke = chain.over(number.end, &["/"]);
        // `@ 0.23 ea`.
        let is_at = chain.before(at).is_some_and(|before| chain.sign(before, &["@"]));
        let one = unit(chain, number.end).filter(|_| is_at && number.value.fract() != 0.0);
        if let Some((end, ..)) = one {
            return Some(end);
        }
        let is_exact = number.text.rsplit_once(['.', ',']).is_some_and(|(_, cents)| cents.len() == 2);
        let for_many = || Some(over_so_many(chain, number.end)).filter(|end| is_exact && *end != number.end);
        unit(chain, stroke).filter(|_| stroke != number.end).map(|(end, ..)| end).or_else(for_many)
    });
    price.and_then(|end| one(end, What::Not("a price is not judged".into())))
}

/// The place behind `/ 100`, `/ 1000 Stk`: for how many the price is.
fn over_so_many(chain: &Chain<'_>, at: usize) -> usize {
    let from = chain.over(at, &["/"]);
    let number = number::decimal(chain, from).filter(|_| from != at);
    let many = number.and_then(|number| {
        let pieces = number.grouped.unwrap_or(number.value);
        [10.0, 100.0, 1000.0].contains(&pieces).then_some(number.end)
    });
    let Some(end) = many else { return at };
    let end = unit(chain, end).map_or(end, |(end, ..)| end);
    if chain.inside_a_run(end) { at } else { end }
}

/// `price per 100`, `per 1000 pcs`: how many the price is for counts no order.
pub fn price(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let named = lexicon::over(chain, at, Word::Price);
    let number = number::decimal(chain, chain.over(named, &[":", "="])).filter(|_| named != at)?;
    let counted = unit(chain, number.end);
    // `price 150 pcs`: a request, and its pieces; `price per 100 pcs` is for so many.
    let is_per = (at..named).any(|at| chain.word(at).is_some_and(|word| lexicon::PER.contains(&word)));
    // `please price: 3/4-10`.
    let is_size = || {
        let behind =
            if chain.sign(number.end, &["/"]) { chain.after(chain.after(number.end)) } else { number.end };
        chain.sign(behind, &["-", "\""]) && chain.glued(behind) && chain.glued(chain.after(behind))
            || behind != number.end && length::cross(chain, behind).is_some()
    };
    if !is_per && (counted.is_some() || is_measured(chain, number.end) || is_size()) {
        return None;
    }
    let end = counted.map_or(over_so_many(chain, number.end), |(end, ..)| end);
    (!chain.inside_a_run(end)).then(|| vec![(end, What::Not("a price is not judged".into()))])
}
