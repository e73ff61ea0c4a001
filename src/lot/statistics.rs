//! What readings come to: article means, lot mean, extremes, standard deviation.

use crate::quantity::Length;

/// The readings of a lot, condensed.
///
/// The lot mean is the mean of the article means, so that an article measured more often does not
/// weigh more. The standard deviation is that of the article means.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Statistics {
    /// Articles measured.
    pub articles: usize,
    /// Readings on all of them.
    pub readings: usize,
    /// Fewest readings on one article.
    pub fewest: usize,
    /// Sum of the article means.
    pub sum: Length,
    /// Mean of the article means.
    pub mean: Length,
    /// Least article mean.
    pub min_article: Length,
    /// Greatest article mean.
    pub max_article: Length,
    /// Least single reading.
    pub min_reading: Length,
    /// Greatest single reading.
    pub max_reading: Length,
    /// Sum of the squared deviations of the article means, µm².
    pub squares: f64,
    /// Standard deviation of the article means; none for a single article.
    pub deviation: Option<Length>,
}

impl Statistics {
    /// Condenses the readings; none where there is no reading.
    ///
    /// Sums are taken in whole femtometres: the order in which articles or readings come changes
    /// nothing, not even in the last digit.
    pub fn of<'a>(articles: impl Iterator<Item = &'a [Length]> + Clone) -> Option<Self> {
        let measured = || articles.clone().filter(|readings| !readings.is_empty());
        let means = || measured().filter_map(mean_of);
        let readings = || measured().flatten().map(|&reading| femtometres(reading));
        let count = means().count();
        let sum: i64 = means().sum();
        let mean = sum as f64 / count as f64;
        let squares = squares(means(), mean);
        let deviation = (count > 1).then(|| Length::from_um((squares / (count - 1) as f64).sqrt()));
        Some(Self {
            articles: count,
            readings: readings().count(),
            fewest: measured().map(<[Length]>::len).min()?,
            sum: length(sum as f64),
            mean: length(mean),
            min_article: length(means().min()? as f64),
            max_article: length(means().max()? as f64),
            min_reading: length(readings().min()? as f64),
            max_reading: length(readings().max()? as f64),
            squares,
            deviation,
        })
    }
}

/// Mean of one article's readings, to a femtometre.
fn mean_of(readings: &[Length]) -> Option<i64> {
    let sum: i64 = readings.iter().map(|&reading| femtometres(reading)).sum();
    let mean = sum as f64 / readings.len() as f64;
    (!readings.is_empty()).then_some(mean.round() as i64)
}

/// Sum of squared deviations in µm², in whole square nanometres.
fn squares(means: impl Iterator<Item = i64>, mean: f64) -> f64 {
    let of_one = |article: i64| ((article as f64 - mean) / 1e6).powi(2).round() as i64;
    means.map(of_one).fold(0, i64::saturating_add) as f64 / 1e6
}

/// A length in whole femtometres: above the residue of binary arithmetic, and far below what
/// [`digits`](crate::coat::class::digits) looks at, so that a mass on an area which is a limit itself
/// is still that limit after it was made a thickness.
pub fn femtometres(length: Length) -> i64 {
    (length.um() * 1e9).round() as i64
}

fn length(femtometres: f64) -> Length {
    Length::from_um(femtometres / 1e9)
}
