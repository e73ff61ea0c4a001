//! What a plan of so many articles, of which so many may miss, lets through.

use statrs::distribution::{Beta, ContinuousCDF};

use crate::quantity::PlainNumber;
use crate::source::{Source, document};

/// Where the sum comes from.
pub const RISK: Source = document::ARITHMETIC.computed("binomial distribution");

/// Nonconforming shares of a lot that a plan still lets through.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Risk {
    /// A lot with this share passes once in ten times.
    pub passes_once_in_ten: PlainNumber,
    /// A lot with this share passes ninety-five times in a hundred.
    pub passes_nearly_always: PlainNumber,
}

/// The risk of a plan of `articles` measured, of which `allowed` may miss.
///
/// For lots much larger than the sample. None where every article may miss.
pub fn risk(articles: u32, allowed: u32) -> Option<Risk> {
    let rest = articles.checked_sub(allowed)?;
    // The chance to find no more than `allowed` is the upper tail of a beta distribution, which there is for no
    // rest of nought.
    let share = Beta::new(f64::from(allowed) + 1.0, f64::from(rest)).ok()?;
    Some(Risk {
        passes_once_in_ten: PlainNumber::from_one(share.inverse_cdf(0.9)),
        passes_nearly_always: PlainNumber::from_one(share.inverse_cdf(0.05)),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Of one article that may not miss, by hand: a lot passes as often as it has good articles.
    #[test]
    fn a_plan_lets_through_what_it_does_not_find() {
        let one = risk(1, 0).unwrap();
        assert!((one.passes_once_in_ten.one() - 0.9).abs() < 1e-9);
        assert!((one.passes_nearly_always.one() - 0.05).abs() < 1e-9);
        // Where every article may miss nothing is found.
        for (articles, allowed) in [(0, 0), (3, 3), (3, 4)] {
            assert_eq!(risk(articles, allowed), None, "{articles}, {allowed}");
        }
        assert!(risk(3, 2).is_some());
    }
}
