//! Names of nuts and washers in two letters with a stroke between.

use super::token::Chain;
use super::what::{Found, What};

/// `F/W`, `L/W`, `H/N`: a flat washer, a lock washer, a hex nut; `60 L/W` may be a length and `with`.
pub fn mate(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let stroke = chain.after(at);
    let second = chain.after(stroke);
    let is_joined = chain.sign(stroke, &["/"]) && chain.glued(stroke) && chain.glued(second);
    let noun = match (chain.word(at)?, chain.word(second).filter(|_| is_joined)?) {
        ("f", "w" | "ws") => "washer",
        ("l", "w" | "ws") => "spring washer",
        ("h", "n" | "ns") => "hex nut",
        _ => return None,
    };
    let end = chain.after(second);
    let is_measure = noun == "spring washer"
        && chain.before(at).and_then(|before| chain.digits(before)).is_some_and(|digits| digits.len() > 1);
    let goes_on = chain.inside_a_run(end) || chain.sign(end, &["/"]) && chain.glued(end);
    (!chain.inside_a_run(at) && !is_measure && !goes_on).then(|| vec![(end, What::Part(noun))])
}
