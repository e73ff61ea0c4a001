//! Service life: years that a zinc coat lasts in a place, and the thickness that years need.

use super::{
    About, Bar, Bound, Calculator, Caution, Choice, Example, Fault, Field, Figure, Finding, Mark, Note,
    Picture, Problem, Reader, Report, ScaleMark, Section, Verdict,
};
use crate::coat::Process;
use crate::quantity::{Length, PlainNumber, Quantity, Rate, Shown, Temperature, Time, Unit, unit};
use crate::site::life::{self, Exponent, Promise, Years, shown_years};
use crate::site::{Category, FirstYear, Rates, SO2_IN_AIR, Surroundings, dose_response};
use crate::source::{Source, common_practice, document};
use crate::table::{iso_9223, iso_14713_1};
use crate::working::Step;

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
    pub least: Option<Length>,
    /// Greatest thickness, if known.
    pub greatest: Option<Length>,
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

/// Categories as choices; the order line offers the same.
pub static CATEGORIES: [Choice; 6] = [
    Choice::new("C1", "C1, very low: heated rooms, dry and clean"),
    Choice::new("C2", "C2, low: unheated rooms, open country with clean air"),
    Choice::new("C3", "C3, medium: towns, or a coast with little salt"),
    Choice::new("C4", "C4, high: industry, or a coast with moderate salt"),
    Choice::new("C5", "C5, very high: heavy industry and damp, or a coast with much salt"),
    Choice::new("CX", "CX, extreme: splash from the sea, or the tropics with salt and smoke"),
];

static SURROUNDINGS: [Choice; 7] = [
    Choice::new("air", "Open air"),
    Choice::new("indoors", "Indoors"),
    Choice::new("soil", "In soil"),
    Choice::new("water", "In water"),
    Choice::new("concrete", "In concrete"),
    Choice::new("other-metal", "In contact with another metal"),
    Choice::new("acid-wood", "In acid or preserved wood"),
];

static PLACES: [Choice; 3] = [
    Choice::new("category", "Its category"),
    Choice::new("climate", "Its climate"),
    Choice::new("rate", "A loss of zinc measured there"),
];

static THICKNESS: [&Unit; 4] = [&unit::UM, &unit::MIL, &unit::MM, &unit::INCH];
static TEMPERATURES: [&Unit; 2] = [&unit::CELSIUS, &unit::FAHRENHEIT];
static PER_CENT: [&Unit; 1] = [&unit::PERCENT];
static SO2: [&Unit; 2] = [&unit::MG_M2_DAY, &SO2_IN_AIR];
static CHLORIDE: [&Unit; 1] = [&unit::MG_M2_DAY];
static RATES: [&Unit; 2] = [&unit::UM_YEAR, &unit::MIL_YEAR];
static YEARS: [&Unit; 1] = [&unit::YEAR];

const RANGE: &str = "the dose-response function was fitted on this range";
const COAT: Bound = Bound::PositiveTo(
    Shown { number: 1.0, unit: &unit::MM, decimals: 0 },
    "zinc coats on fasteners are far thinner; check the unit",
);

const fn deposition(number: f64) -> Shown {
    Shown { number, unit: &unit::MG_M2_DAY, decimals: 1 }
}

static FIELDS: [Field; 12] = [
    Field::choice("surroundings", "The part stands", &SURROUNDINGS, "air")
        .hint("Years are given in open air only; elsewhere the document to read is named."),
    Field::choice("place", "The place is known by", &PLACES, "category"),
    Field::choice("category", "Category of corrosivity", &CATEGORIES, "C4")
        .when("place", &["category"])
        .hint("The loss of zinc decides; the words are a help.")
        .source(document::ISO_9223.read("Table 2")),
    Field::quantity(
        "temperature",
        "Mean temperature of the year",
        &TEMPERATURES,
        Bound::Between(
            Shown { number: iso_9223::TEMPERATURE.0.celsius(), unit: &unit::CELSIUS, decimals: 1 },
            Shown { number: iso_9223::TEMPERATURE.1.celsius(), unit: &unit::CELSIUS, decimals: 1 },
            RANGE,
        ),
        "10 °C",
    )
    .when("place", &["climate"])
    .source(iso_9223::VALIDITY),
    Field::quantity(
        "humidity",
        "Mean relative humidity of the year",
        &PER_CENT,
        Bound::Between(
            Shown { number: iso_9223::HUMIDITY.0.percent(), unit: &unit::PERCENT, decimals: 0 },
            Shown { number: iso_9223::HUMIDITY.1.percent(), unit: &unit::PERCENT, decimals: 0 },
            RANGE,
        ),
        "80 %",
    )
    .when("place", &["climate"])
    .source(iso_9223::VALIDITY),
    Field::quantity(
        "so2",
        "Deposition of SO2",
        &SO2,
        Bound::Between(deposition(iso_9223::SO2.0), deposition(iso_9223::SO2.1), RANGE),
        "10 mg/(m²·d)",
    )
    .when("place", &["climate"])
    .hint("A concentration in µg/m³ counts as 0.8 of it in mg/(m²·d).")
    .source(iso_9223::VALIDITY),
    Field::quantity(
        "chloride",
        "Deposition of chloride",
        &CHLORIDE,
        Bound::Between(deposition(iso_9223::CHLORIDE.0), deposition(iso_9223::CHLORIDE.1), RANGE),
        "3 mg/(m²·d)",
    )
    .when("place", &["climate"])
    .source(iso_9223::VALIDITY),
    Field::quantity(
        "rate",
        "Loss of zinc in the first year",
        &RATES,
        Bound::PositiveTo(
            Shown { number: 25.0, unit: &unit::UM_YEAR, decimals: 0 },
            "CX ends there; beyond it no category is defined",
        ),
        "2.1 µm/year",
    )
    .when("place", &["rate"])
    .source(document::ISO_9223.memory("Table 2")),
    Field::quantity("thickness", "Coat, average", &THICKNESS, COAT, "50 µm"),
    Field::quantity("least", "Coat, least", &THICKNESS, COAT, "").optional(),
    Field::quantity("greatest", "Coat, greatest", &THICKNESS, COAT, "").optional(),
    Field::quantity(
        "years",
        "Years wanted",
        &YEARS,
        Bound::PositiveTo(
            Shown { number: 200.0, unit: &unit::YEAR, decimals: 0 },
            "nobody has watched zinc outdoors for longer",
        ),
        "",
    )
    .optional(),
];

/// A coat that a process usually gives.
struct Usual {
    process: Process,
    name: &'static str,
    least: Length,
    greatest: Length,
    source: Source,
}

static USUAL: [Usual; 4] = [
    Usual {
        process: Process::Kettle,
        name: "spun hot-dip coat",
        least: Length::from_um(40.0),
        greatest: Length::from_um(60.0),
        source: common_practice("coat on fasteners from a spun batch"),
    },
    Usual {
        process: Process::Barrel,
        name: "thick mechanical coat",
        least: Length::from_um(40.0),
        greatest: Length::from_um(60.0),
        source: common_practice("thickest mechanical coats"),
    },
    Usual {
        process: Process::Barrel,
        name: "mechanical coat on small screws",
        least: Length::from_um(5.0),
        greatest: Length::from_um(12.0),
        source: common_practice("common mechanical coat on small screws"),
    },
    Usual {
        process: Process::Cell,
        name: "electroplate, a tenth of the hot-dip coat",
        least: Length::from_um(4.0),
        greatest: Length::from_um(6.0),
        source: common_practice("hot-dip coat about 10 times ordinary electroplate"),
    },
];

impl Calculator for ServiceLife {
    const ABOUT: About = About {
        id: "life",
        title: "Service life",
        answers: "Says how many years a zinc coat lasts in a place, and how thick it must be for the years wanted.",
        fields: &FIELDS,
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

    fn read(reader: &mut Reader<'_>) -> Option<Input> {
        let surroundings = reader.choice("surroundings", Surroundings::from_key);
        let kind = reader.choice("place", |key| PLACES.iter().find(|place| place.key == key).map(|p| p.key));
        let category = reader.choice("category", Category::read);
        let temperature = reader.quantity("temperature");
        let humidity = reader.quantity("humidity");
        let so2 = reader.quantity("so2");
        let chloride = reader.quantity("chloride");
        let rate = reader.quantity("rate");
        let average: Option<Length> = reader.quantity("thickness");
        let least: Option<Length> = reader.quantity("least");
        let greatest: Option<Length> = reader.quantity("greatest");
        let wanted = reader.quantity("years");
        let average = average?;
        if least.is_some_and(|least| least > average) {
            reader.problem("least", above_average("least", "at most"));
        }
        if greatest.is_some_and(|greatest| greatest < average) {
            reader.problem("greatest", above_average("greatest", "at least"));
        }
        let place = match kind? {
            "climate" => Place::Climate(temperature?, humidity?, so2?, chloride?),
            "rate" => Place::Measured(rate?),
            _ => Place::Category(category?),
        };
        Some(Input { surroundings: surroundings?, place, average, least, greatest, wanted })
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
        let [least, _, greatest] = thicknesses;
        Ok(Outcome {
            category,
            rates,
            estimate,
            years: Exponent::ALL.map(counted),
            needed: input
                .wanted
                .map(|wanted| Exponent::ALL.map(|exponent| life::attack(rates.upper, wanted, exponent))),
            promise: input.wanted.map(|wanted| life::promise(least, greatest, rates, wanted)),
        })
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        let findings = findings(input, outcome);
        Report {
            verdict: input.wanted.map(|_| Verdict::of(&findings)),
            headline: headline(input, outcome),
            figures: figures(input, outcome),
            sections: sections(input, outcome),
            findings,
            working: working(input, outcome),
            cautions: vec![Caution::StandardFirst],
            notes: notes(input, outcome),
            picture: Some(picture(input, outcome)),
        }
    }
}

impl Input {
    /// Least, average and greatest thickness; the average stands in for an end that is not known.
    fn thicknesses(&self) -> [Length; 3] {
        [self.least.unwrap_or(self.average), self.average, self.greatest.unwrap_or(self.average)]
    }

    /// The thicknesses that are known, each once, with its name.
    fn named(&self) -> impl Iterator<Item = (usize, &'static str, Length)> {
        let known = [self.least, Some(self.average), self.greatest];
        let names = ["least thickness", "average thickness", "greatest thickness"];
        known.into_iter().zip(names).enumerate().filter_map(|(at, (known, name))| Some((at, name, known?)))
    }
}

fn above_average(which: &str, relation: &str) -> Fault {
    Fault::Conflict(format!(
        "the {which} thickness must be {relation} the average; change one of them, or leave the {which} empty"
    ))
}

fn um(thickness: Length) -> Shown {
    thickness.show(&unit::UM, 1)
}

fn headline(input: &Input, outcome: &Outcome) -> String {
    let [least, _, greatest] = input.thicknesses();
    let [straight, ..] = outcome.years;
    let [worst, _, best] = straight;
    let coat =
        if least == greatest { um(least).to_string() } else { format!("{} to {}", um(least), um(greatest)) };
    format!(
        "{coat} of zinc in {}: {}",
        outcome.category.key(),
        in_words(Years { least: worst.least, most: best.most })
    )
}

fn in_words(years: Years) -> String {
    let least = shown_years(years.least);
    match years.most.map(shown_years) {
        Some(most) if most.digits() == least.digits() => least.to_string(),
        Some(most) => format!("{} to {most}", least.digits()),
        None => format!("{least} and more"),
    }
}

fn figures(input: &Input, outcome: &Outcome) -> Vec<Figure> {
    let rate = |rate: Rate| rate.show(&unit::UM_YEAR, 2);
    let Rates { lower, upper, source } = outcome.rates;
    let mut figures = vec![
        Figure::words(
            "Category of the place",
            format!("{}, {}", outcome.category.key(), outcome.category.corrosivity()),
        )
        .source(outcome.category.rates().source),
        match lower {
            Some(lower) if lower == upper => Figure::one("r", "First-year loss of zinc", rate(upper)),
            Some(lower) => {
                Figure::range("r", "First-year loss of zinc", rate(lower), rate(upper)).source(source)
            }
            None => Figure::one("r", "First-year loss of zinc, at most", rate(upper)).source(source),
        },
    ];
    if let Some(estimate) = outcome.estimate {
        let name = "First-year loss, as estimated from the climate";
        figures.push(Figure::one("r", name, rate(estimate.rate)).source(iso_9223::DOSE_RESPONSE));
    }
    let [straight, ..] = outcome.years;
    for (at, name, thickness) in input.named() {
        if let Some(&years) = straight.get(at) {
            figures.push(years_figure(format!("Years of the {name}, {}", um(thickness)), years));
        }
    }
    if let (Some(needed), Some(wanted)) = (outcome.needed, input.wanted) {
        let [straight, ..] = needed;
        let name = format!("Thickness sure to last {}", shown_years(wanted));
        figures.push(Figure::one("D", name, um(straight)).source(Exponent::Straight.source()));
    }
    figures
}

fn years_figure(name: String, years: Years) -> Figure {
    match years.most {
        Some(most) if most == years.least => Figure::one("t", name, shown_years(most)),
        Some(most) => Figure::range("t", name, shown_years(years.least), shown_years(most)),
        None => Figure::one("t", format!("{name}, at least"), shown_years(years.least)),
    }
}

fn sections(input: &Input, outcome: &Outcome) -> Vec<Section> {
    let mut sections: Vec<Section> = Exponent::ALL
        .into_iter()
        .zip(outcome.years)
        .enumerate()
        .map(|(way, (exponent, years))| {
            let mut figures: Vec<Figure> = input
                .named()
                .filter_map(|(at, name, thickness)| {
                    let name = format!("Years of the {name}, {}", um(thickness));
                    Some(years_figure(name, *years.get(at)?).source(exponent.source()))
                })
                .collect();
            let needed = outcome.needed.and_then(|needed| needed.get(way).copied());
            if let (Some(needed), Some(wanted)) = (needed, input.wanted) {
                let name = format!("Thickness for {} at the greatest loss", shown_years(wanted));
                figures.push(Figure::one("D", name, um(needed)).source(exponent.source()));
            }
            Section { title: exponent.name().into(), figures }
        })
        .collect();
    let usual = USUAL.iter().map(|usual| {
        let worst = life::range(usual.least, outcome.rates, Exponent::Straight);
        let best = life::range(usual.greatest, outcome.rates, Exponent::Straight);
        let thickness = format!("{} to {}", um(usual.least).digits(), um(usual.greatest));
        years_figure(
            format!("{}: {}, {thickness}", usual.process.name(), usual.name),
            Years { least: worst.least, most: best.most },
        )
        .source(usual.source)
    });
    sections.push(Section {
        title: "The three processes at their usual coats, counted by ISO 14713-1".into(),
        figures: usual.collect(),
    });
    let column = iso_14713_1::COLUMNS.iter().position(|&name| name == outcome.category.key());
    if let Some(column) = column {
        let printed = iso_14713_1::ROWS.iter().filter_map(|row| {
            let (least, most) = *row.years.get(column)?;
            let years = |number: u32| Shown { number: f64::from(number), unit: &unit::YEAR, decimals: 0 };
            let name = format!("{}, {}", row.coat, row.thickness.show(&unit::UM, 0));
            Some(match most {
                Some(most) => Figure::range("", name, years(least), years(most)),
                None => Figure::words(name, format!("{least} to more than 100 years")),
            })
        });
        sections.push(Section {
            title: format!("What ISO 14713-1 prints for {}", outcome.category.key()).into(),
            figures: printed.map(|figure| figure.source(iso_14713_1::TABLE)).collect(),
        });
    }
    sections
}

fn findings(input: &Input, outcome: &Outcome) -> Vec<Finding> {
    let (Some(promise), Some(wanted), Some(needed)) = (outcome.promise, input.wanted, outcome.needed) else {
        return Vec::new();
    };
    let [straight, upper, _] = needed;
    let wanted = shown_years(wanted);
    let place = outcome.category.key();
    let (mark, text) = match promise {
        Promise::Lasts => (
            Mark::Met,
            format!("The coat lasts {wanted} in {place} even where it is thinnest and the loss greatest."),
        ),
        Promise::MayLast => (
            Mark::Asked,
            format!(
                "Order at least {} to be sure of {wanted} in {place}, or find out the loss of zinc at the place.",
                um(straight)
            ),
        ),
        Promise::FallsShort => (
            Mark::Forbidden,
            format!("The coat does not last {wanted} in {place}; {} would do.", um(straight)),
        ),
    };
    vec![
        Finding::new(mark, text, Exponent::Straight.source()),
        Finding::new(
            Mark::Told,
            format!("By the upper bound of ISO 9224 {} would do for {wanted}.", um(upper)),
            Exponent::Upper.source(),
        ),
    ]
}

fn working(input: &Input, outcome: &Outcome) -> Vec<Step> {
    let mut steps = outcome.estimate.map(|estimate| estimate.steps()).unwrap_or_default();
    let Rates { lower, upper, .. } = outcome.rates;
    let lower = lower.filter(|&lower| lower != upper);
    for exponent in Exponent::ALL {
        for (at, _, thickness) in input.named() {
            let (at_most, at_least) = match at {
                0 => (
                    "years of the least thickness at the greatest loss",
                    "years of the least thickness at the least loss",
                ),
                1 => (
                    "years of the average thickness at the greatest loss",
                    "years of the average thickness at the least loss",
                ),
                _ => (
                    "years of the greatest thickness at the greatest loss",
                    "years of the greatest thickness at the least loss",
                ),
            };
            steps.push(exponent.years_step(at_most, thickness, upper));
            steps.extend(lower.map(|lower| exponent.years_step(at_least, thickness, lower)));
        }
        let meaning = "thickness for the years wanted at the greatest loss";
        steps.extend(input.wanted.map(|wanted| exponent.attack_step(meaning, upper, wanted)));
    }
    steps
}

fn notes(input: &Input, outcome: &Outcome) -> Vec<Note> {
    let mut notes = vec![
        Note::sourced(
            "ISO 14713-1 counts every year like the first and gives the shorter life, which is what the verdict \
             goes by; ISO 9224 lets the loss slow down. The two are shown apart and are not to be mixed.",
            Exponent::Straight.source(),
        ),
        Note::sourced(
            "The exponents of ISO 9224 and its straight line beyond 20 years are known from memory; its examples \
             end at 20 years.",
            Exponent::Mean.source(),
        ),
        Note::sourced(
            "The years end with the zinc used up. Rust on 5 % of the surface, the usual sign for maintenance, \
             comes about then.",
            document::GALVANIZING_TEXT.read("time to first maintenance"),
        ),
        Note::sourced(
            "ISO 14713-1 counts a micrometre of mechanical zinc as a micrometre, although the porous deposit \
             holds about a fifth less zinc.",
            iso_14713_1::TABLE,
        ),
        Note::plain("It holds in open air. Hours in the salt spray say nothing about it."),
    ];
    if outcome.estimate.is_some() {
        notes.insert(
            0,
            Note::sourced(
                "The dose-response function, its ranges and its uncertainty of −33 % to +50 % are known from memory. \
                 Of five sites with a remembered climate, four lie inside that uncertainty.",
                iso_9223::UNCERTAINTY_SOURCE,
            ),
        );
    }
    if outcome.category == Category::C1 && matches!(input.place, Place::Category(_)) {
        notes.push(Note::plain("C1 has no lower limit of loss: only the least years can be given."));
    }
    let [straight, ..] = outcome.years;
    if straight.iter().any(|years| years.most.is_some_and(|most| most.year() > 100.0)) {
        notes.push(Note::sourced(
            "Beyond 100 years ISO 14713-1 prints only “more than 100”.",
            iso_14713_1::TABLE,
        ));
    }
    notes
}

fn picture(input: &Input, outcome: &Outcome) -> Picture {
    let [least, _, greatest] = input.thicknesses();
    let bars = Category::ALL.into_iter().map(|category| {
        // The place's own loss where it is known better than by its category.
        let marked = category == outcome.category;
        let rates = if marked { outcome.rates } else { category.rates() };
        let worst = life::range(least, rates, Exponent::Straight).least;
        let best = life::range(greatest, rates, Exponent::Straight).most;
        let longer = if best.is_none() { ", or longer" } else { "" };
        Bar {
            label: format!("{}, {}{longer}", category.key(), category.corrosivity()).into(),
            from: shown_years(worst),
            to: shown_years(best.unwrap_or(worst)),
            marked,
        }
    });
    Picture::Bars {
        title: "Years of this coat by category, counted by ISO 14713-1.".into(),
        bars: bars.collect(),
        line: input.wanted.map(|wanted| ScaleMark { label: "Years wanted".into(), at: shown_years(wanted) }),
        logarithmic: true,
    }
}
