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
    let rest = articles.checked_sub(allowed).filter(|&rest| rest > 0)?;
    // The chance to find no more than `allowed` is the upper tail of a beta distribution.
    let share = Beta::new(f64::from(allowed) + 1.0, f64::from(rest)).ok()?;
    Some(Risk {
        passes_once_in_ten: PlainNumber::from_one(share.inverse_cdf(0.9)),
        passes_nearly_always: PlainNumber::from_one(share.inverse_cdf(0.05)),
    })
}
