//! Service life: years that a zinc coat lasts in a place, and the thickness that years need.

use super::{About, Calculator, Missed, Problem, Reader, Report, Writer, Written};
use crate::quantity::{Length, Rate, Time};
use crate::rule::{Case, Topic};
use crate::site::life::{self, Exponent, Promise, Years};
use crate::site::{Category, Climate, FirstYear, Rates, Surroundings, dose_response};
use crate::table::{Refusal, iso_9223};

mod fields;
mod report;
mod working;

pub(crate) use fields::around;
pub use report::{by_category, years_figure};

/// The calculator.
#[derive(Debug)]
pub struct ServiceLife;

/// What it needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Input {
    /// What surrounds the part.
    pub surroundings: Surroundings,
    /// How the place is known.
    pub place: Place,
    /// Average thickness of the coat.
    pub average: Written<Length>,
    /// Least thickness, if known.
    pub min: Option<Length>,
    /// Greatest thickness, if known.
    pub max: Option<Length>,
    /// Years wanted, if any.
    pub wanted: Option<Time>,
}

/// How a place is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Place {
    /// By its category.
    Category(Category),
    /// By the yearly means of its climate.
    Climate(Climate),
    /// By a first-year loss of zinc that was measured.
    Measured(Rate),
}

/// What it finds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outcome {
    /// The category of the place.
    pub category: Category,
    /// The loss of zinc in the first year.
    pub rates: Rates,
    /// The estimate from the climate, where the place is known by it.
    pub estimate: Option<FirstYear>,
    /// Years of the least, average and greatest thickness, by each way of counting.
    pub years: [[Years; 3]; 3],
    /// Thickness that the years wanted need at the greatest loss, by each way of counting.
    pub needed: Option<[Length; 3]>,
    /// Whether the coat lasts the years wanted.
    pub promise: Option<Promise>,
}

impl Calculator for ServiceLife {
    const ABOUT: About = About {
        id: "life",
        title: "Service life",
        answers: "Says how many years a zinc coat lasts in a place, and how thick it must be for the years wanted.",
        fields: &fields::FIELDS,
        examples: &fields::EXAMPLES,
    };
    type Input = Input;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
        fields::read(reader)
    }

    fn write(input: &Input, writer: &mut Writer) {
        fields::write(input, writer);
    }

    const EXPLAINS: &'static [Topic] = &[Topic::Life];

    fn fill(case: &Case<'_>, writer: &mut Writer) -> Option<()> {
        fields::fill(case, writer)
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        input.surroundings.allow_years().map_err(|refusal| fields::SURROUNDINGS.refused(refusal))?;
        if input.surroundings == Surroundings::Indoors && matches!(input.place, Place::Climate(_)) {
            let refusal = Refusal::not_covered(
                "a climate indoors",
                "the weather outdoors; give the category of the room, or a loss of zinc measured there",
                iso_9223::DOSE_RESPONSE,
            );
            return Err(fields::SURROUNDINGS.refused(refusal));
        }
        let (rates, category, estimate) = match input.place {
            Place::Category(category) => (category.rates(), category, None),
            Place::Climate(climate) => {
                let estimate =
                    dose_response(climate).map_err(|refusal| fields::TEMPERATURE.refused(refusal))?;
                let category = estimate.category().map_err(|refusal| fields::CHLORIDE.refused(refusal))?;
                (estimate.rates(), category, Some(estimate))
            }
            Place::Measured(rate) => {
                let category = Category::of_rate(rate).map_err(|refusal| fields::RATE.refused(refusal))?;
                let (low, high) = iso_9223::MEASURED;
                let source = iso_9223::UNCERTAINTY_SOURCE;
                (Rates { lower: Some(rate * low), upper: rate * high, source }, category, None)
            }
        };
        let thicknesses = input.thicknesses();
        let counted = |exponent| thicknesses.map(|thickness| life::range(thickness, rates, exponent));
        let [min, _, max] = thicknesses;
        Ok(Outcome {
            category,
            rates,
            estimate,
            years: Exponent::ALL.map(counted),
            needed: input
                .wanted
                .map(|wanted| Exponent::ALL.map(|exponent| life::attack(rates.upper, wanted, exponent))),
            promise: input.wanted.map(|wanted| life::promise(min, max, rates, wanted)),
        })
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        report::of(input, outcome)
    }
}

impl Input {
    /// Least, average and greatest thickness; the average stands in for an end that is not known.
    fn thicknesses(&self) -> [Length; 3] {
        let average = self.average.quantity;
        [self.min.unwrap_or(average), average, self.max.unwrap_or(average)]
    }

    /// The thicknesses that are known, each once, with its name.
    fn named(&self) -> impl Iterator<Item = (usize, &'static str, Length)> {
        let known = [self.min, Some(self.average.quantity), self.max];
        let names = ["least thickness", "average thickness", "greatest thickness"];
        known.into_iter().zip(names).enumerate().filter_map(|(at, (known, name))| Some((at, name, known?)))
    }
}
