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
            lines += usize::from(differ);
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

#[cfg(test)]
mod tests {
    use super::*;

    /// Columns of numbers, from the left.
    fn columns(columns: &[&[f64]]) -> Vec<Taken> {
        let decimals = |column: &[f64]| {
            let of_one = |number: &f64| number.to_string().split_once('.').map_or(0, |(_, rest)| rest.len());
            column.iter().map(of_one).max().unwrap_or(0)
        };
        let taken = |(at, column): (usize, &&[f64])| Taken {
            at,
            rows: column.iter().copied().map(Some).collect(),
            decimals: decimals(column),
        };
        columns.iter().enumerate().map(taken).collect()
    }

    /// What each of the columns looks like.
    fn looks(of: &[&[f64]]) -> Vec<Option<Looks>> {
        let all = columns(of);
        all.iter().map(|column| column.looks(&all)).collect()
    }

    #[test]
    fn numbers_in_front_that_count_up_are_asked_about() {
        let counts = Some(Looks::Counts);
        assert_eq!(looks(&[&[50.0, 51.0, 52.0], &[48.0, 55.0, 47.0]]), [counts, None]);
        // Behind others, and near them, it is chance; far from them it is not.
        assert_eq!(looks(&[&[48.0, 55.0, 47.0], &[50.0, 51.0, 52.0]]), [None, None]);
        assert_eq!(looks(&[&[48.0, 55.0, 47.0], &[76.0, 77.0, 78.0]]), [None, counts]);
        assert_eq!(looks(&[&[48.0, 55.0, 47.0], &[21.0, 22.0, 23.0]]), [Some(Looks::FarOff), counts]);
        // Half as thick again is not yet apart.
        assert_eq!(looks(&[&[48.0, 50.0, 47.0], &[71.0, 72.0, 73.0]]), [None, None]);
        // Where others count up as well, none is told from them.
        assert_eq!(looks(&[&[50.0, 51.0, 52.0], &[60.0, 61.0, 62.0]]), [None, None]);
        assert_eq!(looks(&[&[50.0, 51.0], &[48.0, 55.0]]), [None, None]);
        assert_eq!(looks(&[&[74.0, 75.0, 77.0], &[49.0, 50.0, 51.0]]), [None, None]);
        assert_eq!(looks(&[&[50.0, 52.0, 53.0], &[48.0, 55.0, 47.0]]), [None, None]);
        assert_eq!(looks(&[&[50.5, 51.5, 52.5], &[48.0, 55.0, 47.0]]), [None, None]);
    }

    #[test]
    fn numbers_far_from_the_others_are_asked_about() {
        let far = Some(Looks::FarOff);
        assert_eq!(looks(&[&[160.0, 155.0], &[50.0, 49.0]]), [far, far]);
        // Three times is not yet far.
        assert_eq!(looks(&[&[60.0, 150.0, 150.0], &[50.0, 49.0, 50.0]]), [None, None]);
        assert_eq!(looks(&[&[60.0, 151.0, 151.0], &[50.0, 49.0, 50.0]]), [far, far]);
        assert_eq!(looks(&[&[16.0, 15.0], &[50.0, 49.0]]), [far, far]);
        // On one line nothing can be told.
        assert_eq!(looks(&[&[160.0], &[50.0]]), [None, None]);
        // Apart from most of the others, each with a range of its own.
        let all = columns(&[&[80.0, 82.0], &[50.0, 52.0], &[51.0, 53.0], &[81.0, 83.0]]);
        let apart: Vec<bool> = all.iter().map(|column| column.lies_apart(&all)).collect();
        // Of three others two is most.
        assert_eq!(apart, [true, true, true, true]);
        let all = columns(&[&[80.0, 82.0], &[50.0, 52.0], &[51.0, 53.0]]);
        let apart: Vec<bool> = all.iter().map(|column| column.lies_apart(&all)).collect();
        assert_eq!(apart, [true, false, false]);
        // One and a half times as much is the bound.
        let all = columns(&[&[75.0, 76.0], &[49.0, 50.0]]);
        assert!(!all[0].lies_apart(&all) && !all[1].lies_apart(&all));
        let all = columns(&[&[75.1, 76.0], &[49.0, 50.0]]);
        assert!(all[0].lies_apart(&all) && all[1].lies_apart(&all));
    }

    #[test]
    fn the_mean_of_the_others_is_asked_about() {
        let mean = Some(Looks::Mean);
        // Finer digits: two lines are enough.
        assert_eq!(looks(&[&[50.0, 52.0], &[51.0, 49.0], &[50.5, 50.5]]), [None, None, mean]);
        assert_eq!(looks(&[&[50.0, 52.0], &[51.0, 49.0], &[50.5, 50.6]]), [None, None, None]);
        // As coarse as the readings: six lines.
        let (one, other): (Vec<f64>, Vec<f64>) =
            ([50.0, 52.0, 48.0, 55.0, 51.0, 47.0].to_vec(), [52.0, 50.0, 54.0, 51.0, 55.0, 51.0].to_vec());
        let means: Vec<f64> = one.iter().zip(&other).map(|(one, other)| (one + other) / 2.0).collect();
        assert_eq!(looks(&[&one, &other, &means]), [None, None, mean]);
        let five = |column: &[f64]| column[..5].to_vec();
        assert_eq!(looks(&[&five(&one), &five(&other), &five(&means)]), [None, None, None]);
        // Readings that are all the same have a mean that says nothing.
        assert_eq!(looks(&[&[50.0; 7], &[50.0; 7], &[50.0; 7]]), [None, None, None]);
    }

    #[test]
    fn what_counts_is_whole_and_rises_by_one() {
        assert!(counts(&[7.0, 8.0, 9.0]) && !counts(&[7.0, 8.0]) && !counts(&[7.0, 8.0, 10.0]));
        assert!(steps_by_one(&[7.0, 8.0]) && !steps_by_one(&[7.0]) && !steps_by_one(&[7.5, 8.5]));
        assert!(numbers_off(&[1.0, 2.0, 1.0, 2.0, 3.0]) && numbers_off(&[1.0]));
        assert!(!numbers_off(&[2.0, 3.0]) && !numbers_off(&[1.0, 3.0]) && !numbers_off(&[0.0]));
        assert_eq!(median(&[3.0, 1.0, 2.0]), 2.0);
        assert_eq!(median(&[]), 0.0);
    }
}
