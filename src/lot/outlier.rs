//! Readings far off their article: slips of the probe, or bare places.
//!
//! The generalised test of extreme deviates on the readings of one article, both sides: the farthest is taken
//! away, and the rest looked at again, so that two slips do not hide each other by the scatter that they make.
//! The 5 % are shared among the steps. What lies within what a gauge of the kind is trusted to is never called
//! far off.

use super::{Readings, student_t};
use crate::quantity::Length;
use crate::sorting::sort_by_key;
use crate::source::{Source, document};
use crate::table::inspection::GAUGE_SPREAD;

/// Where the test is published.
pub const TEST: Source = document::ASTM_E178.memory("outliers one after the other, 5 % in all");

/// The chance that readings which belong together are called far off.
const RISK: f64 = 0.05;
/// At most so many of an article are looked at, and fewer than half of its readings.
const MOST: usize = 10;

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

/// The readings that are far off their articles; where no article has enough readings to tell, the articles
/// that are far off the others.
pub fn outliers(readings: &Readings) -> Vec<Outlier> {
    let last_digit = readings.last_digit();
    if readings.articles().any(|article| article.len() > 2) {
        let of_one = |(at, article): (usize, &[Length])| {
            let of = move |far: FarOff| Outlier {
                article: at + 1,
                reading: Some(far.place),
                value: far.value,
                others: far.others,
            };
            far_off(article, last_digit).into_iter().map(of)
        };
        return readings.articles().enumerate().flat_map(of_one).collect();
    }
    let mean = |article: &[Length]| {
        Length::from_um(article.iter().map(|reading| reading.um()).sum::<f64>() / article.len() as f64)
    };
    let means: Vec<Length> = readings.articles().map(mean).collect();
    let of =
        |far: FarOff| Outlier { article: far.place, reading: None, value: far.value, others: far.others };
    far_off(&means, last_digit).into_iter().map(of).collect()
}

/// A value that is far off the others.
#[derive(Debug, Clone, Copy, PartialEq)]
struct FarOff {
    /// Its place, from 1.
    place: usize,
    value: Length,
    /// The mean of all that are not far off.
    others: Length,
}

/// The values that are far off the others, in their order; they were read to the last digit given.
///
/// Readings that are the same to their last digit scatter within it: without that, three of them make
/// any fourth as far off as it can be.
fn far_off(values: &[Length], last_digit: Length) -> Vec<FarOff> {
    let rounding = last_digit.um().powi(2) / 12.0;
    let steps = (values.len().saturating_sub(1) / 2).min(MOST);
    let mut rest: Vec<(usize, f64)> =
        values.iter().enumerate().map(|(at, value)| (at + 1, value.um())).collect();
    let mut taken = Vec::with_capacity(steps);
    let mut far = 0;
    for step in 1..=steps {
        let Some(critical) = critical(rest.len(), RISK / steps as f64) else { break };
        let mean = mean(&rest);
        let squares: f64 = rest.iter().map(|(_, um)| (um - mean).powi(2)).sum();
        let deviation = (squares / (rest.len() - 1) as f64 + rounding).sqrt();
        let away = |um: f64| (um - mean).abs();
        let farthest =
            rest.iter().enumerate().max_by(|(_, (_, a)), (_, (_, b))| away(*a).total_cmp(&away(*b)));
        let Some((at, &(_, um))) = farthest else { break };
        // The last step that finds one far off decides: what went before hid behind the scatter it made.
        if away(um) > critical * deviation {
            far = step;
        }
        taken.push(rest.remove(at));
    }
    rest.extend(taken.drain(far..));
    let others = mean(&rest);
    let (share, least) = GAUGE_SPREAD;
    let trusted = (others * share).max(least.um());
    let mut found: Vec<FarOff> = taken
        .into_iter()
        .filter(|(_, um)| (um - others).abs() > trusted)
        .map(|(place, um)| FarOff { place, value: Length::from_um(um), others: Length::from_um(others) })
        .collect();
    sort_by_key(&mut found, |far| far.place);
    found
}

fn mean(values: &[(usize, f64)]) -> f64 {
    values.iter().map(|(_, um)| um).sum::<f64>() / values.len() as f64
}

/// How many standard deviations the farthest of so many values may lie off their mean, at a risk for both
/// sides; none below three values.
fn critical(count: usize, risk: f64) -> Option<f64> {
    let freedom = u32::try_from(count).ok()?.checked_sub(2).filter(|&freedom| freedom > 0)?;
    let n = f64::from(freedom + 2);
    let t = student_t(1.0 - risk / (2.0 * n), freedom)?;
    let share = t * t / (f64::from(freedom) + t * t);
    Some((n - 1.0) / n.sqrt() * share.sqrt())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Two-sided critical values at 5 %, as they are tabulated (from memory).
    #[test]
    fn the_critical_values_are_those_of_the_tables() {
        for (n, printed) in [(3, 1.155), (4, 1.481), (5, 1.715), (6, 1.887), (10, 2.290)] {
            let found = critical(n, 0.05).unwrap();
            assert!((found - printed).abs() < 1e-3, "{n}: {found}");
        }
        assert_eq!(critical(2, 0.05), None);
    }

    /// Places and the mean of the others.
    fn of(um: &[f64]) -> (Vec<usize>, Option<f64>) {
        let lengths: Vec<Length> = um.iter().copied().map(Length::from_um).collect();
        let far = far_off(&lengths, Length::from_um(1.0));
        (far.iter().map(|far| far.place).collect(), far.first().map(|far| far.others.um()))
    }

    /// Two slips make a scatter behind which neither is far off by itself.
    #[test]
    fn slips_do_not_hide_each_other() {
        assert_eq!(of(&[50.0, 52.0, 51.0, 12.0, 14.0]), (vec![4, 5], Some(51.0)));
        let ten = of(&[50.0, 52.0, 51.0, 49.0, 12.0, 14.0, 51.0, 50.0, 52.0, 50.0]);
        assert_eq!(ten, (vec![5, 6], Some(50.625)));
        // One on either side, and three of ten.
        assert_eq!(of(&[50.0, 52.0, 9.0, 51.0, 49.0, 110.0, 50.0, 51.0]).0, [3, 6]);
        assert_eq!(of(&[50.0, 52.0, 9.0, 51.0, 10.0, 11.0, 50.0, 51.0, 49.0, 50.0]).0, [3, 5, 6]);
        // Half of them is no slip: two coats, and nobody knows which is the odd one.
        assert_eq!(of(&[50.0, 52.0, 12.0, 14.0]).0, [0_usize; 0]);
    }

    /// A gauge that shows tenths of a mil: three readings are the same, and the others differ by a step or two.
    #[test]
    fn the_last_digit_of_a_coarse_gauge_is_no_slip() {
        for mils in [[1.6, 1.6, 1.6, 1.8, 2.0], [1.9, 1.9, 1.9, 2.0, 2.1], [1.6, 1.6, 1.6, 1.6, 1.9]] {
            let lengths: Vec<Length> = mils.map(|mil| Length::from_um(25.4 * mil)).to_vec();
            let far: Vec<usize> =
                far_off(&lengths, Length::from_um(2.54)).iter().map(|far| far.place).collect();
            // The fifth is alone only where all the others are the same.
            assert_eq!(far, if mils[3] == 1.6 { vec![5] } else { vec![] }, "{mils:?}");
        }
    }

    #[test]
    fn a_slip_is_pointed_out_and_ordinary_scatter_is_not() {
        assert_eq!(of(&[56.0, 58.0, 54.0, 62.0, 9.0]), (vec![5], Some(57.5)));
        assert_eq!(of(&[56.0, 58.0, 54.0, 61.0, 55.0]), (vec![], None));
        // Alone in the third digit, but no gauge is trusted that far.
        assert_eq!(of(&[50.0, 50.0, 50.0, 50.0, 51.0]), (vec![], None));
        assert_eq!(of(&[50.0, 9.0]), (vec![], None));
    }

    /// With two readings on each the articles are laid beside each other, each as its mean.
    #[test]
    fn an_article_far_off_is_told_by_its_mean() {
        use crate::lot::{Comma, Reading};
        let how = Reading {
            units: &[&crate::quantity::unit::UM],
            comma: Comma::Decide,
            columns: None,
            per_article: None,
        };
        let text = "50 52\n51 50\n52 53\n50 50\n51 53\n80 84\n52 50\n53 51";
        let readings = Readings::read(text, &how, crate::quantity::Density::from_g_cm3(7.2)).unwrap();
        let found = outliers(&readings);
        assert_eq!(found.len(), 1, "{found:?}");
        assert_eq!((found[0].article, found[0].reading), (6, None));
        assert!((found[0].value.um() - 82.0).abs() < 1e-9, "{found:?}");
        // The mean of 51, 50.5, 52.5, 50, 52, 51 and 52.
        assert!((found[0].others.um() - 359.0 / 7.0).abs() < 1e-9, "{found:?}");
    }
}
