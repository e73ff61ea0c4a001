//! Prices, which are not judged.

use super::count::{MONEY, unit};
use super::length::is_measured;
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
    let price = is_money.then_some(end).or_else(|| {
        // `5.00/ea`.
        let number = number::decimal(chain, at)?;
        let stroke = chain.over(number.end, &["/"]);
        unit(chain, stroke).filter(|_| stroke != number.end).map(|(end, ..)| end)
    });
    price.and_then(|end| one(end, What::Not("a price is not judged".into())))
}

/// `price per 100`, `per 1000 pcs`: how many the price is for counts no order.
pub fn price(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let named = lexicon::over(chain, at, Word::Price);
    let number = number::decimal(chain, chain.over(named, &[":", "="])).filter(|_| named != at)?;
    let counted = unit(chain, number.end);
    // `price 150 pcs`: a request, and its pieces; `price per 100 pcs` is for so many.
    let is_per = (at..named).any(|at| matches!(chain.word(at), Some("per" | "pro" | "je")));
    if !is_per && (counted.is_some() || is_measured(chain, number.end)) {
        return None;
    }
    let end = counted.map_or(number.end, |(end, ..)| end);
    (!chain.inside_a_run(end)).then(|| vec![(end, What::Not("a price is not judged".into()))])
}
