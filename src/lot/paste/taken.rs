//! The numbers of a column, and what they look like besides readings.

use super::grid::{Cell, Row};
use super::left_out::Looks;

/// Columns farther apart than this are not readings of one coat.
pub const FAR: f64 = 3.0;
/// Columns that count are asked about from here on, even beside others that do.
const APART: f64 = 1.5;
/// On so many lines a column is not the mean of the others by chance.
const MANY: usize = 6;

/// The numbers of a column that would be taken.
pub struct Taken {
    /// Its place, from 0.
    pub at: usize,
    /// By row; none where no number stands.
    rows: Vec<Option<f64>>,
    /// The most digits behind the decimal mark.
    decimals: usize,
}

impl Taken {
    pub fn of(at: usize, articles: &[&Row]) -> Self {
        let number = |row: &&Row| match row.cells.get(at) {
            Some(Cell::Number { number, .. }) => Some(*number),
            _ => None,
        };
        let decimals = |row: &&Row| {
            let (_, behind) = row.texts.get(at)?.split_once(['.', ','])?;
            Some(behind.chars().take_while(char::is_ascii_digit).count())
        };
        Self {
            at,
            rows: articles.iter().map(number).collect(),
            decimals: articles.iter().filter_map(decimals).max().unwrap_or(0),
        }
    }

    pub fn numbers(&self) -> Vec<f64> {
        self.rows.iter().flatten().copied().collect()
    }

    /// What it looks like beside the others, if it looks like no readings.
    pub fn looks(&self, all: &[Self]) -> Option<Looks> {
        let others = || all.iter().filter(|other| other.at != self.at);
        let (numbers, rest) = (self.numbers(), others().flat_map(Self::numbers).collect::<Vec<_>>());
        if numbers.is_empty() || rest.is_empty() {
            return None;
        }
        let (own, rest) = (median(&numbers), median(&rest));
        let far = own > FAR * rest || rest > FAR * own;
        // Readings of one coat may count up by chance; numbers of articles stand in front of them.
        let in_front = all.first().is_some_and(|first| first.at == self.at);
        let alone = || !others().any(|other| counts(&other.numbers()));
        let apart = own > APART * rest || rest > APART * own;
        if counts(&numbers) && (apart || in_front && alone()) {
            Some(Looks::Counts)
        } else if numbers.len() > 1 && (far || self.lies_apart(all)) {
            Some(Looks::FarOff)
        } else {
            self.is_mean(&others().collect::<Vec<_>>()).then_some(Looks::Mean)
        }
    }

    /// Whether its numbers share no range with those of most others, and are far larger or smaller.
    fn lies_apart(&self, all: &[Self]) -> bool {
        let own = self.numbers();
        let range = |numbers: &[f64]| {
            numbers.iter().fold((f64::INFINITY, 0.0), |(min, max), &it| (it.min(min), it.max(max)))
        };
        let (min, max) = range(&own);
        let others: Vec<Vec<f64>> =
            all.iter().filter(|it| it.at != self.at).map(Self::numbers).filter(|it| !it.is_empty()).collect();
        let apart = others.iter().filter(|other| {
            let (other_min, other_max) = range(other);
            min > APART * other_max || other_min > APART * max
        });
        2 * apart.count() > others.len()
    }

    /// Whether it is the mean of the others on every line, to its last digit.
    ///
    /// Readings come near their mean by chance: it counts where the digits are finer than those of
    /// the readings, or on many lines, and never where the readings of a line are all the same.
    fn is_mean(&self, others: &[&Self]) -> bool {
        let last_digit = 10_f64.powi(-(self.decimals.min(9) as i32));
        let finer = others.iter().all(|other| other.decimals < self.decimals);
        let mut lines = 0;
        for (row, mean) in self.rows.iter().enumerate() {
            let readings: Vec<f64> =
                others.iter().filter_map(|other| other.rows.get(row).copied().flatten()).collect();
            let Some(mean) = mean else { continue };
            let sum: f64 = readings.iter().sum();
            if (sum / readings.len() as f64 - mean).abs() > 0.5001 * last_digit {
                return false;
            }
            let differ = readings.iter().zip(readings.iter().skip(1)).any(|(one, next)| one != next);
            lines += usize::from(readings.len() > 1 && differ);
        }
        lines >= if finer { 2 } else { MANY }
    }
}

/// Whole numbers, each one more than the one before, three at least.
fn counts(numbers: &[f64]) -> bool {
    numbers.len() > 2 && steps_by_one(numbers)
}

/// The same where there are but two.
pub fn steps_by_one(numbers: &[f64]) -> bool {
    let step = |(one, next): (&f64, &f64)| one.fract() == 0.0 && *next == one + 1.0;
    numbers.len() > 1 && numbers.iter().zip(numbers.iter().skip(1)).all(step)
}

/// Whole numbers from 1, each one more than the one before, or beginning again: the runs of a gauge.
pub fn numbers_off(numbers: &[f64]) -> bool {
    let before = std::iter::once(0.0).chain(numbers.iter().copied());
    numbers.iter().zip(before).all(|(&number, before)| number == before + 1.0 || number == 1.0)
}

fn median(numbers: &[f64]) -> f64 {
    let mut sorted = numbers.to_vec();
    sorted.sort_by(f64::total_cmp);
    sorted.get(sorted.len() / 2).copied().unwrap_or(0.0)
}
