//! The service life, arranged for its reader.

use super::working::{self, solid, um};
use super::{Input, Outcome, Place};
use crate::calculator::{
    Bar, Caution, Figure, Finding, Mark, Note, Picture, Report, ScaleMark, Section, Verdict,
};
use crate::coat::Process;
use crate::coat::factor::DEPOSIT;
use crate::quantity::{Length, Quantity, Rate, Shown, Time, unit};
use crate::rule::life::{self as rule, TABLE_ENDS, between};
use crate::sentence::capital;
use crate::site::life::{self, Exponent, Promise, Years};
use crate::site::{Category, Rates, Surroundings};
use crate::source::{Source, common_practice, document};
use crate::table::{iso_9223, iso_9224, iso_14713_1, zinc_outdoors};

pub(super) fn of(input: &Input, outcome: &Outcome) -> Report {
    let findings = findings(input, outcome);
    Report {
        verdict: input.wanted.map(|_| Verdict::of(&findings)),
        headline: headline(input, outcome),
        figures: figures(input, outcome),
        sections: sections(input, outcome),
        findings,
        working: working::working(input, outcome),
        cautions: vec![Caution::StandardFirst],
        notes: notes(input, outcome),
        picture: Some(picture(input, outcome)),
    }
}

/// A coat that a process usually gives.
struct Usual {
    process: Process,
    name: &'static str,
    min: Length,
    max: Length,
    source: Source,
}

static USUAL: [Usual; 4] = [
    Usual {
        process: Process::HotDip,
        name: "spun hot-dip coat",
        min: Length::from_um(40.0),
        max: Length::from_um(60.0),
        source: common_practice("coat on fasteners from a spun batch"),
    },
    Usual {
        process: Process::Mechanical,
        name: "thick mechanical coat",
        min: Length::from_um(40.0),
        max: Length::from_um(60.0),
        source: common_practice("thickest mechanical coats"),
    },
    Usual {
        process: Process::Mechanical,
        name: "mechanical coat on small screws",
        min: Length::from_um(5.0),
        max: Length::from_um(12.0),
        source: common_practice("common mechanical coat on small screws"),
    },
    Usual {
        process: Process::Electroplated,
        name: "electroplate, a tenth of the hot-dip coat",
        min: Length::from_um(4.0),
        max: Length::from_um(6.0),
        source: common_practice("hot-dip coat about 10 times ordinary electroplate"),
    },
];

impl Input {
    /// A thickness in the unit in which the coat was written.
    fn shown(&self, thickness: Length) -> Shown {
        let unit = self.average.unit;
        let decimals = match unit {
            _ if unit == &unit::UM => 1,
            _ if unit == &unit::MIL => 2,
            _ if unit == &unit::MM => 4,
            _ => 5,
        };
        thickness.show(unit, decimals)
    }
}

fn headline(input: &Input, outcome: &Outcome) -> String {
    let [min, _, max] = input.thicknesses();
    let [straight, ..] = outcome.years;
    let [worst, _, best] = straight;
    let shown = |thickness| input.shown(thickness);
    let coat = if min == max { shown(min).to_string() } else { format!("{} to {}", shown(min), shown(max)) };
    format!("{coat} of zinc in {}: {}", outcome.category.key(), between(worst.min, best.most, input.wanted))
}

fn figures(input: &Input, outcome: &Outcome) -> Vec<Figure> {
    // The ±5 % of a measured loss need a digit more than the limits of the categories.
    let rate = |rate: Rate| {
        let shown = rate.show(&unit::UM_YEAR, 2);
        let exact = (shown.number * 100.0 - (shown.number * 100.0).round()).abs() < 1e-6;
        if exact { shown } else { rate.show(&unit::UM_YEAR, 3) }
    };
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
            figures.push(years_figure(
                format!("Years of the {name}, {}", input.shown(thickness)),
                years,
                input.wanted,
            ));
        }
    }
    if let (Some(needed), Some(wanted)) = (outcome.needed, input.wanted) {
        let [straight, ..] = needed;
        let name = format!("Thickness sure to last {}", rule::as_wanted(wanted));
        figures.push(Figure::one("D_w", name, input.shown(straight)).source(Exponent::Straight.source()));
    }
    figures
}

/// Years from the greatest to the least loss, with the numbers that the order line shows.
pub fn years_figure(name: String, years: Years, wanted: Option<Time>) -> Figure {
    let min = rule::years(years.min);
    match years.most {
        _ if years.min.year() > TABLE_ENDS => Figure::words(name, "over 100 years"),
        Some(most) if most == years.min => Figure::one("t", name, min),
        Some(most) if most.year() > TABLE_ENDS => {
            Figure::words(name, format!("{} to over 100 years", min.digits()))
        }
        Some(most) => Figure::range("t", name, min, rule::most(most, wanted)),
        None => Figure::words(name, format!("{min} or more")),
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
                    let name = format!("Years of the {name}, {}", input.shown(thickness));
                    Some(years_figure(name, *years.get(at)?, input.wanted).source(exponent.source()))
                })
                .collect();
            let needed = outcome.needed.and_then(|needed| needed.get(way).copied());
            if let (Some(needed), Some(wanted)) = (needed, input.wanted) {
                let name = format!("Thickness for {} at the greatest loss", rule::as_wanted(wanted));
                figures.push(Figure::one("D_w", name, input.shown(needed)).source(exponent.source()));
            }
            Section { title: exponent.name().into(), figures }
        })
        .collect();
    let usual = USUAL.iter().map(|usual| {
        let worst = life::range(usual.min, outcome.rates, Exponent::Straight);
        let best = life::range(usual.max, outcome.rates, Exponent::Straight);
        let thickness = format!("{} to {}", um(usual.min).digits(), um(usual.max));
        years_figure(
            format!("{}: {}, {thickness}", usual.process.name(), usual.name),
            Years { min: worst.min, most: best.most },
            input.wanted,
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
            let (min, most) = *row.years.get(column)?;
            let years = |number: u32| Shown { number: f64::from(number), unit: &unit::YEAR, decimals: 0 };
            let name = format!("{}, {}", row.coat, row.thickness.show(&unit::UM, 0));
            Some(match most {
                Some(most) => Figure::range("", name, years(min), years(most)),
                None => Figure::words(name, format!("{min} to more than 100 years")),
            })
        });
        sections.push(Section {
            title: format!("What ISO 14713-1 prints for {}", outcome.category.key()).into(),
            figures: printed.map(|figure| figure.source(iso_14713_1::TABLE)).collect(),
        });
    }
    sections.extend([places(outcome.category), by_zinc(input, outcome), long_term(input), contacts()]);
    sections
}

/// What such a place looks like.
fn places(category: Category) -> Section {
    let [indoors, outdoors] = category.places();
    let figures = [("Indoors", indoors), ("Outdoors", outdoors)]
        .map(|(name, place)| Figure::words(name, place).source(iso_9223::PLACES));
    Section { title: format!("Places of {}", category.key()).into(), figures: figures.into() }
}

/// The second way for a mechanical deposit: the zinc that it holds, as solid zinc.
fn by_zinc(input: &Input, outcome: &Outcome) -> Section {
    let Rates { lower, upper, .. } = outcome.rates;
    let [min, _, max] = input.thicknesses();
    let [light, heavy] = solid(min, max);
    let years = Years {
        min: life::years(light, upper, Exponent::Straight),
        most: lower.map(|lower| life::years(heavy, lower, Exponent::Straight)),
    };
    Section {
        title: "If the coat is mechanical, by the zinc in it: a second way, for the careful".into(),
        figures: vec![
            Figure::range("D_s", "As solid zinc", input.shown(light), input.shown(heavy))
                .source(DEPOSIT.source),
            years_figure("Years by that".to_owned(), years, input.wanted).source(Exponent::Straight.source()),
        ],
    }
}

/// The average at losses that were measured over many years.
fn long_term(input: &Input) -> Section {
    let average = input.average.quantity;
    let figures = zinc_outdoors::LONG_TERM.iter().map(|row| {
        let years = life::years(average, row.rate, Exponent::Straight);
        let name = format!("{}, {}", capital(row.place), row.rate.show(&unit::UM_YEAR, 2));
        years_figure(name, Years { min: years, most: Some(years) }, None).source(row.source)
    });
    Section {
        title: format!("{} at losses that were measured over many years", input.shown(average)).into(),
        figures: figures.collect(),
    }
}

/// What contact with other metals adds.
fn contacts() -> Section {
    let figures = zinc_outdoors::CONTACTS.iter().map(|row| {
        let [country, town, sea] = row.ratings;
        let text = format!("country {country}, town {town}, sea air {sea}");
        Figure::words(capital(row.metal), text).source(zinc_outdoors::CONTACTS_SOURCE)
    });
    Section { title: "What contact with another metal adds".into(), figures: figures.collect() }
}

fn findings(input: &Input, outcome: &Outcome) -> Vec<Finding> {
    let (Some(promise), Some(wanted), Some(needed)) = (outcome.promise, input.wanted, outcome.needed) else {
        return Vec::new();
    };
    let [straight, upper, _] = needed;
    let wanted = rule::as_wanted(wanted);
    let place = outcome.category.key();
    let text = match (promise, input.min) {
        (Promise::Lasts, Some(_)) => {
            format!("The coat lasts {wanted} in {place} even where it is thinnest and the loss greatest.")
        }
        (Promise::Lasts, None) => format!(
            "The coat lasts {wanted} in {place} at its average thickness and the greatest loss; enter its least for \
             the thinnest places."
        ),
        (Promise::MayLast, _) => format!(
            "Order at least {} to be sure of {wanted} in {place}, or find out the loss of zinc at the place.",
            rule::rounded_up(input.shown(straight))
        ),
        (Promise::FallsShort, _) => {
            format!(
                "The coat does not last {wanted} in {place}; {} would do.",
                rule::rounded_up(input.shown(straight))
            )
        }
    };
    let mark = rule::of_promise(promise).mark;
    vec![
        Finding::new(mark, text, Exponent::Straight.source()),
        Finding::new(
            Mark::Note,
            format!(
                "By the upper bound of ISO 9224 {} would do for {wanted}.",
                rule::rounded_up(input.shown(upper))
            ),
            Exponent::Upper.source(),
        ),
    ]
}

fn notes(input: &Input, outcome: &Outcome) -> Vec<Note> {
    let mut notes = vec![
        Note::sourced(
            "ISO 14713-1 counts every year like the first and gives the shorter life, which is what the verdict \
             goes by; ISO 9224 lets the loss slow down. The two are shown apart and are not to be mixed.",
            Exponent::Straight.source(),
        ),
        Note::sourced(
            "Beyond 20 years a straight line goes on from the curve of ISO 9224, known from memory. Its printed \
             multipliers go on with the curve: at 50 years they take 4 to 5 % less zinc, at 100 years 9 to 13 %.",
            iso_9224::STRAIGHT_LINE,
        ),
        Note::sourced(
            "The years end with the zinc used up. Rust on 5 % of the surface, the usual sign for maintenance, \
             comes about then.",
            document::GALVANIZING_TEXT.read("time to first maintenance"),
        ),
        Note::sourced(
            "ISO 14713-1 counts a micrometre of mechanical zinc as a micrometre, although the porous deposit \
             holds about a fifth less zinc; the years by its zinc stand apart.",
            iso_14713_1::TABLE,
        ),
        Note::sourced(
            format!(
                "Contact with copper or brass, and water that runs off copper, use zinc up fast: insulate. With most \
                 other metals in air the contact does little while the area of zinc is large against the other ({}).",
                zinc_outdoors::CONTACT_KEY
            ),
            zinc_outdoors::COPPER,
        ),
        Note::sourced(
            format!(
                "The copper in preservative-treated wood uses zinc up: bolts there take at least {}. No years are given for \
                 it.",
                zinc_outdoors::TREATED_WOOD.value
            ),
            zinc_outdoors::TREATED_WOOD.source,
        ),
        Note::sourced(
            format!(
                "Under cover near the coast no rain washes the salt off, and it corrodes from {} of humidity on: take one \
                 category harsher. ISO 9223 names sheltered places on the shore among those of C5.",
                Shown::percent(zinc_outdoors::SALTED_FROM.one(), 0)
            ),
            zinc_outdoors::SHELTERED,
        ),
        Note::sourced(
            format!(
                "In hot service zinc is taken up to {}, at times up to {}; another association allows the first \
                 only at times.",
                zinc_outdoors::HOT_FOR_GOOD.show(&unit::CELSIUS, 0),
                zinc_outdoors::HOT_NOW_AND_THEN.show(&unit::CELSIUS, 0)
            ),
            zinc_outdoors::HOT,
        ),
        Note::sourced(
            format!(
                "Above about {} a chromate helps no longer.",
                zinc_outdoors::WARM_CHROMATE.show(&unit::CELSIUS, 0)
            ),
            zinc_outdoors::WARM_CHROMATE_SOURCE,
        ),
        Note::plain("It holds in air. Hours in the salt spray say nothing about it."),
    ];
    if input.surroundings == Surroundings::Indoors {
        notes.push(Note::sourced(
            "Indoors condensation and what the room is used for decide, not the weather; ISO 11844-1 tells the mildest \
             rooms apart.",
            document::ISO_11844.memory(""),
        ));
    }
    if matches!(input.place, Place::Measured(_)) {
        notes.push(Note::sourced(
            "A loss measured on specimens is taken as known to ±5 %.",
            iso_9223::UNCERTAINTY_SOURCE,
        ));
    }
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
    if straight.iter().any(|years| years.most.is_none_or(|most| most.year() > TABLE_ENDS)) {
        notes.push(Note::sourced(
            "Beyond 100 years ISO 14713-1 prints only “more than 100”.",
            iso_14713_1::TABLE,
        ));
    }
    notes
}

/// Years in the picture, which ends where the table does.
fn up_to_the_end(time: Time) -> Time {
    time.min(Time::from_year(TABLE_ENDS))
}

fn picture(input: &Input, outcome: &Outcome) -> Picture {
    let [min, _, max] = input.thicknesses();
    let title = "Years of this coat by category, counted by ISO 14713-1.".to_owned();
    by_category(
        title,
        (min, max),
        |category| (category == outcome.category).then_some(outcome.rates),
        input.wanted,
    )
}

/// Years of a coat from its least thickness to its greatest, category by category, beside the years
/// wanted; what the place in hand may be is marked, and counted by the loss given, which may be better
/// known.
pub fn by_category(
    title: String,
    (min, max): (Length, Length),
    place: impl Fn(Category) -> Option<Rates>,
    wanted: Option<Time>,
) -> Picture {
    let bars = Category::ALL.into_iter().map(|category| {
        let own = place(category);
        let rates = own.unwrap_or_else(|| category.rates());
        let worst = life::range(min, rates, Exponent::Straight).min;
        let best = life::range(max, rates, Exponent::Straight).most;
        let longer = if best.is_none_or(|best| best.year() > TABLE_ENDS) { ", or longer" } else { "" };
        Bar {
            label: format!("{}, {}{longer}", category.key(), category.corrosivity()).into(),
            from: rule::years(up_to_the_end(worst)),
            to: rule::most(up_to_the_end(best.unwrap_or(worst)), wanted),
            marked: own.is_some(),
        }
    });
    Picture::Bars {
        title: title.into(),
        bars: bars.collect(),
        line: wanted.map(|wanted| ScaleMark { label: "Years wanted".into(), at: rule::as_wanted(wanted) }),
        logarithmic: true,
    }
}
