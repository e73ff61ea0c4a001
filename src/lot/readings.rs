//! The readings of a gauge, article by article.

use super::comma::Comma;
use super::paste::{self, PasteProblem};
use crate::quantity::{Length, Quantity, Unit};

/// Readings in the order they were taken, cut into articles.
#[derive(Debug, Clone, PartialEq)]
pub struct Readings {
    values: Vec<Length>,
    /// Where each article ends in `values`.
    ends: Vec<usize>,
    /// The unit they were written in.
    pub unit: &'static Unit,
    /// How a comma inside the numbers was understood; none where there was no such comma.
    pub comma: Option<Comma>,
    /// Whether a heading was left out.
    pub heading: bool,
}

impl Readings {
    /// Reads what was typed, pasted from a sheet, or is in a CSV.
    ///
    /// An article is a line, its readings stand between spaces, tabs or commas. On a single line `;`
    /// goes between articles; where every line holds `;`, as a sheet saves it, it goes between
    /// readings. A heading is left out, and so is a label in front of an article (`A1`, or with a
    /// colon). A unit written behind any number holds for all of them, else the first of `units`
    /// does. With `per_article`, the readings are counted off in that number instead.
    ///
    /// # Errors
    /// [`PasteProblem`]: what is no reading, what could mean two things, units that differ.
    pub fn read(
        text: &str,
        units: &[&'static Unit],
        comma: Comma,
        per_article: Option<u32>,
    ) -> Result<Self, PasteProblem> {
        let pasted = paste::read(text, units, comma)?;
        let unit = pasted.unit.or_else(|| units.first().copied()).ok_or(PasteProblem::Empty)?;
        let mut readings = Self {
            values: Vec::with_capacity(pasted.numbers.len()),
            ends: pasted.ends,
            unit,
            comma: pasted.comma,
            heading: pasted.heading,
        };
        for (place, &number) in pasted.numbers.iter().enumerate() {
            let value = Length::of(number, unit);
            if !(value.um() > 0.0 && value.um() <= paste::GREATEST_UM) {
                return Err(PasteProblem::OutOfRange { place: place + 1, number, unit });
            }
            readings.values.push(value);
        }
        match per_article {
            Some(count) => readings.counted_off(count),
            None => Ok(readings),
        }
    }

    /// The same readings, so many to an article.
    fn counted_off(mut self, per_article: u32) -> Result<Self, PasteProblem> {
        let step = usize::try_from(per_article).unwrap_or(usize::MAX).max(1);
        let readings = self.values.len();
        if !readings.is_multiple_of(step) {
            return Err(PasteProblem::LeftOver { readings, per_article });
        }
        self.ends = (1..=readings / step).map(|article| article * step).collect();
        Ok(self)
    }

    /// Every reading, in the order taken.
    pub fn values(&self) -> &[Length] {
        &self.values
    }

    /// How many articles were measured.
    pub fn article_count(&self) -> usize {
        self.ends.len()
    }

    /// The articles cut into so many sets of the same size, in the order measured; none where that
    /// leaves some over.
    pub fn sets(&self, sets: u32) -> Option<impl Iterator<Item = impl Iterator<Item = &[Length]> + Clone>> {
        let sets = usize::try_from(sets).ok().filter(|&sets| sets > 0)?;
        let size = self.article_count() / sets;
        let even = size * sets == self.article_count() && size > 0;
        even.then(|| (0..sets).map(move |set| self.articles().skip(set * size).take(size)))
    }

    /// The readings of each article.
    pub fn articles(&self) -> impl Iterator<Item = &[Length]> + Clone {
        let starts = std::iter::once(0).chain(self.ends.iter().copied());
        starts.zip(&self.ends).map(|(start, &end)| self.values.get(start..end).unwrap_or_default())
    }
}
