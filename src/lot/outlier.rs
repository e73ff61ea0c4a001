//! A single reading far off its article: a slip of the probe, or a bare place.
//!
//! Grubbs' test on the readings of one article at 5 %, both sides; what lies within what a gauge of
//! the kind is trusted to is never called far off.

use super::{Readings, student_t};
use crate::quantity::Length;
use crate::source::{Source, document};
use crate::table::inspection::GAUGE_SPREAD;

/// Where the test is published.
pub const TEST: Source = document::ASTM_E178.memory("single outlier, 5 %");

/// A reading that does not belong to the others of its article.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outlier {
    /// The article, from 1.
    pub article: usize,
    /// The reading on it, from 1; none where the article as a whole lies far from the others.
    pub reading: Option<usize>,
    /// What was read.
    pub value: Length,
    /// The mean of the other readings on the article, or of the other articles.
    pub others: Length,
}

/// The readings that are far off their articles, one at most for each; where no article has enough
/// readings to tell, the article that is far off the others.
pub fn outliers(readings: &Readings) -> Vec<Outlier> {
    let of_one = |(at, article): (usize, &[Length])| {
        let (reading, value, others) = far_off(article)?;
        Some(Outlier { article: at + 1, reading: Some(reading), value, others })
    };
    if readings.articles().any(|article| article.len() > 2) {
        return readings.articles().enumerate().filter_map(of_one).collect();
    }
    let mean = |article: &[Length]| {
        Length::from_um(article.iter().map(|reading| reading.um()).sum::<f64>() / article.len() as f64)
    };
    let means: Vec<Length> = readings.articles().map(mean).collect();
    let far = far_off(&means);
    far.map(|(article, value, others)| Outlier { article, reading: None, value, others })
        .into_iter()
        .collect()
}

/// The reading, from 1, that is far off the others, and the mean of the others.
fn far_off(readings: &[Length]) -> Option<(usize, Length, Length)> {
    let n = readings.len() as f64;
    let critical = critical(u32::try_from(readings.len()).ok()?)?;
    let um = || readings.iter().map(|reading| reading.um());
    let sum: f64 = um().sum();
    let mean = sum / n;
    let deviation = (um().map(|um| (um - mean).powi(2)).sum::<f64>() / (n - 1.0)).sqrt();
    let away = |um: f64| (um - mean).abs();
    let (at, value) = um().enumerate().max_by(|(_, a), (_, b)| away(*a).total_cmp(&away(*b)))?;
    let others = (sum - value) / (n - 1.0);
    let (share, least) = GAUGE_SPREAD;
    let trusted = (others * share).max(least.um());
    let far = away(value) > critical * deviation && (value - others).abs() > trusted;
    far.then(|| (at + 1, Length::from_um(value), Length::from_um(others)))
}

/// The critical value of Grubbs' test for so many readings; none below three.
fn critical(n: u32) -> Option<f64> {
    let freedom = n.checked_sub(2).filter(|&freedom| freedom > 0)?;
    let t = student_t(1.0 - 0.05 / (2.0 * f64::from(n)), freedom)?;
    let share = t * t / (f64::from(freedom) + t * t);
    Some(f64::from(n - 1) / f64::from(n).sqrt() * share.sqrt())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Two-sided critical values at 5 %, as they are tabulated (from memory).
    #[test]
    fn the_critical_values_are_those_of_the_tables() {
        for (n, printed) in [(3, 1.155), (4, 1.481), (5, 1.715), (6, 1.887), (10, 2.290)] {
            assert!((critical(n).unwrap() - printed).abs() < 1e-3, "{n}: {:?}", critical(n));
        }
        assert_eq!(critical(2), None);
    }

    #[test]
    fn a_slip_is_pointed_out_and_ordinary_scatter_is_not() {
        let of = |um: &[f64]| {
            let lengths: Vec<Length> = um.iter().copied().map(Length::from_um).collect();
            far_off(&lengths).map(|(reading, _, others)| (reading, others.um()))
        };
        assert_eq!(of(&[56.0, 58.0, 54.0, 62.0, 9.0]), Some((5, 57.5)));
        assert_eq!(of(&[56.0, 58.0, 54.0, 61.0, 55.0]), None);
        // Alone in the third digit, but no gauge is trusted that far.
        assert_eq!(of(&[50.0, 50.0, 50.0, 50.0, 51.0]), None);
        assert_eq!(of(&[50.0, 9.0]), None);
    }
}
