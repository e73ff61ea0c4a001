//! How far the articles measured speak for the lot: a one-sided lower bound on the lot's mean.
//!
//! `L = m − t · s / sqrt(n)` with Student's t at the confidence chosen and `n − 1` degrees of
//! freedom. It holds for articles taken at random whose means scatter like a bell; readings on one
//! article are no further articles.

use std::fmt;

use statrs::distribution::{ContinuousCDF, StudentsT};

use super::Statistics;
use crate::quantity::{Length, PlainNumber, Quantity, Shown, unit};
use crate::source::{Source, document};

/// Where the bound is published.
pub const BOUND: Source = document::ISO_2602.memory("one-sided interval, variance unknown");
/// Where Student's t is published.
pub const T: Source = document::STUDENT_T.memory("26.7.1");

/// What the articles say of the lot's mean.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Evidence {
    /// The confidence chosen.
    pub confidence: PlainNumber,
    /// Degrees of freedom: articles less one.
    pub freedom: u32,
    /// Student's t.
    pub t: f64,
    /// The mean of the whole lot is at least this, with that confidence.
    pub lower_bound: Length,
}

/// Why nothing is said of the lot's mean.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NoBound {
    /// Every piece was measured.
    WholeLot,
    /// A single article says nothing of how the others scatter.
    OneArticle,
    /// Articles that all read alike give no scatter to judge by.
    Alike,
    /// The confidence is no share from 50 % to less than 100 %.
    Confidence(PlainNumber),
    /// Too few articles, too far apart: the bound comes out at this, below zero.
    BelowZero(Length),
}

impl Evidence {
    /// The lower bound on the mean of a lot of so many pieces.
    ///
    /// # Errors
    /// [`NoBound`]: the whole lot was measured, or too little to say anything.
    pub fn of(statistics: &Statistics, lot: u32, confidence: PlainNumber) -> Result<Self, NoBound> {
        if usize::try_from(lot).is_ok_and(|lot| statistics.articles >= lot) {
            return Err(NoBound::WholeLot);
        }
        let deviation = statistics.deviation.ok_or(NoBound::OneArticle)?;
        if deviation.um() <= 0.0 {
            return Err(NoBound::Alike);
        }
        let freedom = u32::try_from(statistics.articles).unwrap_or(u32::MAX).saturating_sub(1);
        let t = student_t(confidence.one(), freedom).ok_or(NoBound::Confidence(confidence))?;
        let error = deviation.um() / f64::from(freedom + 1).sqrt();
        let lower_bound = Length::from_um(statistics.mean.um() - t * error);
        if lower_bound.um() <= 0.0 {
            return Err(NoBound::BelowZero(lower_bound));
        }
        Ok(Self { confidence, freedom, t, lower_bound })
    }
}

impl fmt::Display for NoBound {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::WholeLot => {
                f.write_str("The whole lot was measured: its mean is known, and nothing is left to estimate.")
            }
            Self::OneArticle => f.write_str(
                "One article says nothing of how the others scatter: measure two or more for a bound on the lot's mean.",
            ),
            Self::Alike => f.write_str(
                "Articles that all read alike give no scatter, and so no bound on the lot's mean.",
            ),
            Self::Confidence(asked) => write!(
                f,
                "{} is no confidence for a bound on the lot's mean; take 50 % to 99.9 %.",
                Shown::percent(asked.one(), 1)
            ),
            Self::BelowZero(bound) => write!(
                f,
                "The bound on the lot's mean comes out at {}, and no coat is thinner than nothing: so few articles, so \
                 far apart, say nothing of the lot's mean. Measure more for a bound on it.",
                bound.show(&unit::UM, 1)
            ),
        }
    }
}

/// The confidence with which the lot's mean reaches a limit; none without a scatter to judge by, and
/// none where the whole lot was measured.
pub fn confidence_of(statistics: &Statistics, lot: u32, limit: Length) -> Option<PlainNumber> {
    let deviation = statistics.deviation.map(Length::um).filter(|&deviation| deviation > 0.0)?;
    let articles = u32::try_from(statistics.articles).ok().filter(|&articles| articles < lot)?;
    let freedom = articles.checked_sub(1)?;
    let t = (statistics.mean.um() - limit.um()) / (deviation / f64::from(freedom + 1).sqrt());
    student_t_share(t, freedom).map(PlainNumber::from_one)
}

/// Student's t that a share of all samples stays below, for a share from 0.5 to less than 1.
///
/// None outside that range or without a degree of freedom.
pub fn student_t(share: f64, freedom: u32) -> Option<f64> {
    (0.5..1.0).contains(&share).then_some(freedom).and_then(of_freedom).map(|t| t.inverse_cdf(share))
}

/// The share of all samples whose Student's t stays below `t`.
///
/// None without a degree of freedom, or for what is no number.
pub fn student_t_share(t: f64, freedom: u32) -> Option<f64> {
    if t.is_nan() { None } else { of_freedom(freedom).map(|distribution| distribution.cdf(t)) }
}

fn of_freedom(freedom: u32) -> Option<StudentsT> {
    StudentsT::new(0.0, 1.0, f64::from(freedom)).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn without_a_degree_of_freedom_there_is_no_t() {
        assert_eq!(student_t(0.95, 0), None);
        assert_eq!(student_t(0.4, 5), None);
        assert_eq!(student_t(1.0, 5), None);
        assert_eq!(student_t_share(f64::NAN, 5), None);
        assert_eq!(student_t_share(f64::INFINITY, 5), Some(1.0));
    }
}
