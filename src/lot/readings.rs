//! The readings of a gauge, article by article.

use super::paste::{self, GREATEST_UM, LineUse, PasteProblem, ReadAs, Reading};
use super::{Measure, Outlier};
use crate::quantity::{Density, Length, Shown};

/// Readings in the order they were taken, cut into articles.
#[derive(Debug, Clone)]
pub struct Readings {
    values: Vec<Length>,
    /// Where each article ends in `values`.
    ends: Vec<usize>,
    /// The unit they were written in, and how a mass becomes a thickness.
    pub measure: Measure,
    /// Whether a unit was written; else the first of those offered was taken.
    pub unit_written: bool,
    /// As written.
    pub text: String,
    /// What was made of the text.
    pub read_as: ReadAs,
}

/// Readings are the same that measure the same, however they were written.
impl PartialEq for Readings {
    fn eq(&self, other: &Self) -> bool {
        (&self.values, &self.ends, self.measure) == (&other.values, &other.ends, other.measure)
    }
}

impl Readings {
    /// Reads what was typed, pasted from a sheet, or is in a CSV.
    ///
    /// An article is a line, its readings stand between spaces, tabs or commas. On a single line `;`
    /// goes between articles; where every line holds `;`, as a sheet saves it, it goes between
    /// readings. Headings, labels, summaries and columns that number are left out, and
    /// [`ReadAs`] says so. A unit written behind any number or in a heading holds for all of them,
    /// else the first of the units does. A mass on an area becomes a thickness by `factor`.
    ///
    /// # Errors
    /// [`PasteProblem`]: what is no reading, what could mean two things, units that differ.
    pub fn read(text: &str, how: &Reading<'_>, factor: Density) -> Result<Self, PasteProblem> {
        let pasted = paste::read(text, how)?;
        let unit = pasted.unit.or_else(|| how.units.first().copied()).ok_or(PasteProblem::Empty)?;
        let mut readings = Self {
            values: Vec::with_capacity(pasted.numbers.len()),
            ends: pasted.ends,
            measure: Measure { unit, factor },
            unit_written: pasted.unit.is_some(),
            text: text.to_owned(),
            read_as: pasted.read_as,
        };
        for (place, &number) in pasted.numbers.iter().enumerate() {
            let value = readings.measure.thickness(Shown { number, unit, decimals: 0 });
            if !(value.um() > 0.0 && value.um() <= GREATEST_UM) {
                return Err(PasteProblem::OutOfRange { place: place + 1, number, unit });
            }
            readings.values.push(value);
        }
        match how.per_article {
            Some(count) => readings.counted_off(count),
            None => Ok(readings),
        }
    }

    /// The same readings, so many to an article.
    fn counted_off(mut self, per_article: u32) -> Result<Self, PasteProblem> {
        let step = usize::try_from(per_article).unwrap_or(usize::MAX).max(1);
        let one_by_one = self.ends.len() <= 1 || self.ends.len() == self.values.len();
        if one_by_one {
            let all = self.values.len();
            self.ends = (1..=all.div_ceil(step)).map(|article| (article * step).min(all)).collect();
            return Ok(self);
        }
        // Articles are written line by line: each has its readings, and only the last may lack some.
        let last = self.ends.len();
        for (at, readings) in self.articles().map(<[Length]>::len).enumerate() {
            let wrong = if at + 1 == last { readings > step } else { readings != step };
            if wrong {
                return Err(PasteProblem::Uneven { article: at + 1, readings, per_article });
            }
        }
        Ok(self)
    }

    /// Every reading, in the order taken.
    pub fn values(&self) -> &[Length] {
        &self.values
    }

    /// The step of the last digit that was written of any of them.
    pub fn last_digit(&self) -> Length {
        let whole = |value: &Length, scale: f64| {
            let number = self.measure.show(*value, 0).number * scale;
            (number - number.round()).abs() < 1e-6
        };
        let decimals = (0..6).find(|&decimals| {
            let scale = 10_f64.powi(decimals);
            self.values.iter().all(|value| whole(value, scale))
        });
        self.measure.thickness(Shown {
            number: 10_f64.powi(-decimals.unwrap_or(6)),
            unit: self.measure.unit,
            decimals: 0,
        })
    }

    /// How many articles were measured.
    pub fn article_count(&self) -> usize {
        self.ends.len()
    }

    /// The same with the readings that were pointed out at the mean of the others.
    pub fn without(&self, outliers: &[Outlier]) -> Self {
        let mut readings = self.clone();
        for outlier in outliers {
            let Some(at) = outlier.article.checked_sub(1) else { continue };
            let start = at.checked_sub(1).and_then(|before| self.ends.get(before)).copied().unwrap_or(0);
            let end = self.ends.get(at).copied().unwrap_or(start);
            let range = match outlier.reading {
                Some(reading) => start + reading - 1..start + reading,
                None => start..end,
            };
            readings.values.get_mut(range).into_iter().for_each(|values| values.fill(outlier.others));
        }
        readings
    }

    /// The same without the articles whose lines repeat others; none where no line does.
    pub fn without_repeats(&self) -> Option<Self> {
        let repeated = |number: usize| {
            self.read_as.lines.iter().any(|line| {
                matches!(line.usage, LineUse::Article { article, repeats: Some(_), .. } if article == number)
            })
        };
        let mut readings = Self { values: Vec::new(), ends: Vec::new(), ..self.clone() };
        for (at, article) in self.articles().enumerate() {
            if !repeated(at + 1) {
                readings.values.extend_from_slice(article);
                readings.ends.push(readings.values.len());
            }
        }
        (readings.ends.len() < self.ends.len()).then_some(readings)
    }

    /// The articles cut into so many sets of the same size, in the order measured; none where that
    /// leaves some over.
    pub fn sets(&self, sets: u32) -> Option<impl Iterator<Item = impl Iterator<Item = &[Length]> + Clone>> {
        let sets = usize::try_from(sets).ok().filter(|&sets| sets > 0)?;
        let size = self.article_count() / sets;
        let even = size * sets == self.article_count();
        even.then(|| (0..sets).map(move |set| self.articles().skip(set * size).take(size)))
    }

    /// The readings of each article.
    pub fn articles(&self) -> impl Iterator<Item = &[Length]> + Clone {
        let starts = std::iter::once(0).chain(self.ends.iter().copied());
        starts.zip(&self.ends).map(|(start, &end)| self.values.get(start..end).unwrap_or_default())
    }
}

#[cfg(test)]
mod tests {
    use super::super::Comma;
    use super::*;
    use crate::quantity::unit;

    fn counted(text: &str, per_article: u32) -> Result<Vec<usize>, String> {
        let how = Reading {
            units: &[&unit::UM],
            comma: Comma::Decide,
            columns: None,
            per_article: Some(per_article),
        };
        let readings = Readings::read(text, &how, Density::from_g_cm3(7.2));
        readings
            .map(|readings| readings.articles().map(<[Length]>::len).collect())
            .map_err(|problem| problem.to_string())
    }

    #[test]
    fn readings_are_counted_off_and_the_last_article_may_lack_some() {
        assert_eq!(counted("52\n48\n51\n50\n49\n47\n53", 3), Ok(vec![3, 3, 1]));
        assert_eq!(counted("52 48 51 50 49", 2), Ok(vec![2, 2, 1]));
        assert_eq!(counted("52 48\n51 50\n49", 2), Ok(vec![2, 2, 1]));
        assert_eq!(counted("52 48\n51 50\n49 47", 2), Ok(vec![2, 2, 2]));
        let last = counted("52 48\n51 50\n49 47 45", 2).unwrap_err();
        assert!(last.contains("article 3 has 3 readings, and 2 were set"), "{last}");
        let uneven = counted("52 48\n51\n49 47", 2).unwrap_err();
        assert!(uneven.contains("article 2 has 1 reading, and 2 were set"), "{uneven}");
    }

    fn of(text: &str, units: &[&'static crate::quantity::Unit]) -> Readings {
        let how = Reading { units, comma: Comma::Decide, columns: None, per_article: None };
        Readings::read(text, &how, Density::from_g_cm3(7.2)).unwrap()
    }

    /// The same readings are the same whatever they are called, and others are not.
    #[test]
    fn readings_are_compared_by_what_they_measure() {
        let um = |text| of(text, &[&unit::UM]);
        assert_eq!(um("50 52\n48 49"), um("R1 R2\n50 52\n48 49"));
        for other in ["50 52\n48 50", "50 52 48 49", "50\n52\n48\n49"] {
            assert_ne!(um("50 52\n48 49"), um(other), "{other}");
        }
        assert_ne!(um("2 3\n2 4"), of("2 3\n2 4", &[&unit::MIL]));
    }

    #[test]
    fn a_line_that_repeats_another_can_be_left_out() {
        let lengths = |readings: &Readings| -> Vec<Vec<f64>> {
            let um = |article: &[Length]| article.iter().map(|value| value.um()).collect();
            readings.articles().map(um).collect()
        };
        let all = of("50 51 52 53\n54 55 53 52\n50 51 52 53", &[&unit::UM]);
        let left = all.without_repeats().unwrap();
        assert_eq!(lengths(&left), [[50.0, 51.0, 52.0, 53.0], [54.0, 55.0, 53.0, 52.0]]);
        assert_eq!(left.values().len(), 8);
        assert!(left.without_repeats().is_none());
        let none = of("50 51 52 53\n54 55 53 52", &[&unit::UM]).without_repeats();
        assert!(none.is_none());
    }

    #[test]
    fn the_last_digit_is_the_finest_that_was_written() {
        for (text, units, um) in [
            ("50 52 48", &[&unit::UM][..], 1.0),
            ("50 52.5 48", &[&unit::UM], 0.1),
            ("50 52.25 48.1", &[&unit::UM], 0.01),
            ("2 2.1 1.9", &[&unit::MIL], 2.54),
            ("0.0020 0.0021", &[&unit::INCH], 2.54),
            // A third has no last digit: the finest that is looked at.
            ("50.3333333", &[&unit::UM], 1e-6),
        ] {
            let found = of(text, units).last_digit().um();
            assert!((found - um).abs() < 1e-9, "{text}: {found}");
        }
    }

    #[test]
    fn articles_are_cut_into_sets_where_none_is_left_over() {
        let six = of("50\n51\n52\n53\n54\n55", &[&unit::UM]);
        let sets = |count| {
            six.sets(count).map(|sets| {
                sets.map(|set| set.flatten().map(|value| value.um()).collect::<Vec<_>>()).collect::<Vec<_>>()
            })
        };
        assert_eq!(sets(2), Some(vec![vec![50.0, 51.0, 52.0], vec![53.0, 54.0, 55.0]]));
        assert_eq!(sets(6).map(|sets| sets.len()), Some(6));
        assert_eq!(sets(1).map(|sets| sets.len()), Some(1));
        for none in [0, 4, 5, 7] {
            assert_eq!(sets(none), None, "{none}");
        }
    }

    /// The bounds of what a gauge reads: above nought, and a millimetre.
    #[test]
    fn a_reading_lies_above_nought_and_up_to_a_millimetre() {
        let how = Reading { units: &[&unit::UM], comma: Comma::Decide, columns: None, per_article: None };
        let read = |text: &str| Readings::read(text, &how, Density::from_g_cm3(7.2));
        assert!(read("1000 990").is_ok());
        for text in ["1000.1 990", "0 50"] {
            assert!(matches!(read(text), Err(PasteProblem::OutOfRange { .. })), "{text}");
        }
    }
}
