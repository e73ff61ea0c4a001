//! Service life: years that a zinc coat lasts in a place, and the thickness that years need.

mod fields;
mod report;

pub use fields::CATEGORIES;

use super::{About, Calculator, Example, Fault, Missed, Problem, Reader, Report};
use crate::quantity::{Length, PlainNumber, Rate, Temperature, Time};
use crate::site::life::{self, Exponent, Promise, Years};
use crate::site::{Category, FirstYear, Rates, Surroundings, dose_response};
use crate::source::document;

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
    pub average: Length,
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
    /// By the yearly means of its climate: temperature, humidity, SO2, chloride.
    Climate(Temperature, PlainNumber, PlainNumber, PlainNumber),
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
        examples: &[
            Example {
                title: "A spun hot-dip coat in an industrial town, wanted for 15 years",
                pairs: &[("thickness", "50 µm"), ("least", "40 µm"), ("greatest", "60 µm"), ("years", "15")],
            },
            Example {
                title: "Thin mechanical zinc in a clean country place",
                pairs: &[("category", "C2"), ("thickness", "8 µm")],
            },
            Example {
                title: "A harbour known by its climate",
                pairs: &[
                    ("place", "climate"),
                    ("temperature", "12 °C"),
                    ("humidity", "77 %"),
                    ("so2", "20 mg/(m²·d)"),
                    ("chloride", "60 mg/(m²·d)"),
                    ("thickness", "2.1 mil"),
                    ("years", "25"),
                ],
            },
            Example {
                title: "A loss of zinc measured on the site",
                pairs: &[("place", "rate"), ("rate", "1.4 µm/year"), ("thickness", "85 µm"), ("years", "40")],
            },
        ],
    };
    type Input = Input;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
        reader.by_name(|reader| {
            let surroundings = reader.choice("surroundings", Surroundings::from_key);
            let kind = reader
                .choice("place", |key| fields::PLACES.iter().find(|place| place.key == key).map(|p| p.key));
            let category = reader.choice("category", Category::read);
            let temperature = reader.quantity("temperature");
            let humidity = reader.quantity("humidity");
            let so2 = reader.quantity("so2");
            let chloride = reader.quantity("chloride");
            let rate = reader.quantity("rate");
            let average: Option<Length> = reader.quantity("thickness");
            let min: Option<Length> = reader.quantity("least");
            let max: Option<Length> = reader.quantity("greatest");
            let wanted = reader.quantity("years");
            let average = average?;
            if min.is_some_and(|min| min > average) {
                reader.problem("least", above_average("least", "at most"));
            }
            if max.is_some_and(|max| max < average) {
                reader.problem("greatest", above_average("greatest", "at least"));
            }
            let place = match kind? {
                "climate" => Place::Climate(temperature?, humidity?, so2?, chloride?),
                "rate" => Place::Measured(rate?),
                _ => Place::Category(category?),
            };
            Some(Input { surroundings: surroundings?, place, average, min, max, wanted })
        })
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let refuse = |field, label| move |refusal| Problem::refused(field, label, refusal);
        input.surroundings.allow_years().map_err(refuse("surroundings", "The part stands"))?;
        let (rates, category, estimate) = match input.place {
            Place::Category(category) => (category.rates(), category, None),
            Place::Climate(temperature, humidity, so2, chloride) => {
                let estimate = dose_response(temperature, humidity, so2, chloride)
                    .map_err(refuse("temperature", "Mean temperature of the year"))?;
                let category = estimate.category().map_err(refuse("chloride", "Deposition of chloride"))?;
                (estimate.rates(), category, Some(estimate))
            }
            Place::Measured(rate) => {
                let category =
                    Category::of_rate(rate).map_err(refuse("rate", "Loss of zinc in the first year"))?;
                let source = document::ISO_9223.memory("loss determined on specimens");
                (Rates { lower: Some(rate), upper: rate, source }, category, None)
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
        [self.min.unwrap_or(self.average), self.average, self.max.unwrap_or(self.average)]
    }

    /// The thicknesses that are known, each once, with its name.
    fn named(&self) -> impl Iterator<Item = (usize, &'static str, Length)> {
        let known = [self.min, Some(self.average), self.max];
        let names = ["least thickness", "average thickness", "greatest thickness"];
        known.into_iter().zip(names).enumerate().filter_map(|(at, (known, name))| Some((at, name, known?)))
    }
}

fn above_average(which: &str, relation: &str) -> Fault {
    Fault::Conflict(format!(
        "the {which} thickness must be {relation} the average; change one of them, or leave the {which} empty"
    ))
}
