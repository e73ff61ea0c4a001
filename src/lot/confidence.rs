//! How far the articles measured speak for the lot: a one-sided lower bound on the lot's mean.
//!
//! `L = m − t · s / sqrt(n)` with Student's t at the confidence chosen and `n − 1` degrees of
//! freedom. It holds for articles taken at random whose means scatter like a bell; readings on one
//! article are no further articles.

use super::Statistics;
use crate::quantity::{Length, PlainNumber, Shown};
use crate::source::{Source, document};
use crate::table::Refusal;

/// Where the bound is published.
pub const BOUND: Source = document::ISO_2602.memory("one-sided interval, variance unknown");
/// Where the sums for t are published.
pub const T: Source = document::STUDENT_T.memory("26.7.3 and 26.7.4");

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

impl Evidence {
    /// The lower bound on the lot's mean.
    ///
    /// # Errors
    /// A single article, articles that do not scatter at all, and a confidence that is not between
    /// 50 % and 100 %.
    pub fn of(statistics: &Statistics, confidence: PlainNumber) -> Result<Self, Refusal> {
        let refusal = |what: String, covered: &str| Refusal::not_covered(&what, covered, BOUND);
        let Some(deviation) = statistics.deviation else {
            return Err(refusal("a single article".to_owned(), "two articles and more"));
        };
        if deviation.um() <= 0.0 {
            return Err(refusal("articles that all read alike".to_owned(), "articles that scatter"));
        }
        let freedom = u32::try_from(statistics.articles).unwrap_or(u32::MAX).saturating_sub(1);
        let Some(t) = student_t(confidence.one(), freedom) else {
            let asked = Shown::percent(confidence.one(), 1);
            return Err(refusal(format!("a confidence of {asked}"), "from 50 % to less than 100 %"));
        };
        let error = deviation.um() / f64::from(freedom + 1).sqrt();
        Ok(Self { confidence, freedom, t, lower_bound: Length::from_um(statistics.mean.um() - t * error) })
    }
}

/// The confidence with which the lot's mean reaches a limit; none without a scatter to judge by.
pub fn confidence_of(statistics: &Statistics, limit: Length) -> Option<PlainNumber> {
    let deviation = statistics.deviation.map(Length::um).filter(|&deviation| deviation > 0.0)?;
    let freedom = u32::try_from(statistics.articles).ok()?.checked_sub(1)?;
    let t = (statistics.mean.um() - limit.um()) / (deviation / f64::from(freedom + 1).sqrt());
    student_t_share(t, freedom).map(PlainNumber::from_one)
}

/// Student's t that a share of all samples stays below, for a share from 0.5 to less than 1.
///
/// Found by halving an interval on [`student_t_share`]; none outside that range or without a
/// degree of freedom.
pub fn student_t(share: f64, freedom: u32) -> Option<f64> {
    if !(0.5..1.0).contains(&share) {
        return None;
    }
    let mut high = 1.0;
    while student_t_share(high, freedom)? < share {
        high *= 2.0;
    }
    let mut low = 0.0;
    for _ in 0..80 {
        let middle = 0.5 * (low + high);
        if student_t_share(middle, freedom)? < share {
            low = middle;
        } else {
            high = middle;
        }
    }
    Some(0.5 * (low + high))
}

/// The share of all samples whose Student's t stays below `t`; exact finite sums for whole degrees
/// of freedom. None without a degree of freedom, or for what is no number.
pub fn student_t_share(t: f64, freedom: u32) -> Option<f64> {
    if freedom == 0 || t.is_nan() {
        return None;
    }
    let tangent = t.abs() / f64::from(freedom).sqrt();
    let angle = tangent.atan();
    let cosine = 1.0 / (1.0 + tangent * tangent).sqrt();
    // Far out the tangent is too large to multiply by a cosine of nothing.
    let sine = if cosine == 0.0 { 1.0 } else { tangent * cosine };
    // Between −t and t; each term is the one before, times cos² and a ratio of two whole numbers.
    let odd = freedom % 2 == 1;
    let mut term = if odd { cosine } else { 1.0 };
    let mut sum = if freedom == 1 { 0.0 } else { term };
    let mut whole = if odd { 2 } else { 1 };
    while whole + 2 < freedom {
        term *= cosine * cosine * f64::from(whole) / f64::from(whole + 1);
        sum += term;
        whole += 2;
    }
    let between = if odd { (angle + sine * sum) * std::f64::consts::FRAC_2_PI } else { sine * sum };
    Some(0.5 + 0.5 * between.copysign(t))
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
