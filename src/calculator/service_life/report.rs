//! The service life, arranged for its reader.

use super::{Input, Outcome, Place};
use crate::calculator::{
    Bar, Caution, Figure, Finding, Mark, Note, Picture, Report, ScaleMark, Section, Verdict,
};
use crate::coat::Process;
use crate::quantity::{Length, Quantity, Rate, Shown, unit};
use crate::site::life::{self, Exponent, Promise, Years, shown_years};
use crate::site::{Category, Rates};
use crate::source::{Source, common_practice, document};
use crate::table::{iso_9223, iso_14713_1};
use crate::working::Working;

pub(super) fn of(input: &Input, outcome: &Outcome) -> Report {
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

fn um(thickness: Length) -> Shown {
    thickness.show(&unit::UM, 1)
}

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
    format!(
        "{coat} of zinc in {}: {}",
        outcome.category.key(),
        in_words(Years { min: worst.min, most: best.most })
    )
}

fn in_words(years: Years) -> String {
    let min = shown_years(years.min);
    match years.most.map(shown_years) {
        Some(most) if most.digits() == min.digits() => min.to_string(),
        Some(most) => format!("{} to {most}", min.digits()),
        None => format!("{min} and more"),
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
            figures.push(years_figure(format!("Years of the {name}, {}", input.shown(thickness)), years));
        }
    }
    if let (Some(needed), Some(wanted)) = (outcome.needed, input.wanted) {
        let [straight, ..] = needed;
        let name = format!("Thickness sure to last {}", shown_years(wanted));
        figures.push(Figure::one("D", name, input.shown(straight)).source(Exponent::Straight.source()));
    }
    figures
}

fn years_figure(name: String, years: Years) -> Figure {
    match years.most {
        Some(most) if most == years.min => Figure::one("t", name, shown_years(most)),
        Some(most) => Figure::range("t", name, shown_years(years.min), shown_years(most)),
        None => Figure::one("t", format!("{name}, at least"), shown_years(years.min)),
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
                    Some(years_figure(name, *years.get(at)?).source(exponent.source()))
                })
                .collect();
            let needed = outcome.needed.and_then(|needed| needed.get(way).copied());
            if let (Some(needed), Some(wanted)) = (needed, input.wanted) {
                let name = format!("Thickness for {} at the greatest loss", shown_years(wanted));
                figures.push(Figure::one("D", name, input.shown(needed)).source(exponent.source()));
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
            Mark::Condition,
            format!(
                "Order at least {} to be sure of {wanted} in {place}, or find out the loss of zinc at the place.",
                input.shown(straight)
            ),
        ),
        Promise::FallsShort => (
            Mark::Bar,
            format!("The coat does not last {wanted} in {place}; {} would do.", input.shown(straight)),
        ),
    };
    vec![
        Finding::new(mark, text, Exponent::Straight.source()),
        Finding::new(
            Mark::Note,
            format!("By the upper bound of ISO 9224 {} would do for {wanted}.", input.shown(upper)),
            Exponent::Upper.source(),
        ),
    ]
}

fn working(input: &Input, outcome: &Outcome) -> Working {
    let mut working = outcome.estimate.map(|estimate| estimate.working()).unwrap_or_default();
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
            exponent.years_step(&mut working, at_most, thickness, upper);
            if let Some(lower) = lower {
                exponent.years_step(&mut working, at_least, thickness, lower);
            }
        }
        if let Some(wanted) = input.wanted {
            let meaning = "thickness for the years wanted at the greatest loss";
            exponent.attack_step(&mut working, meaning, upper, wanted);
        }
    }
    working
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
    let [min, _, max] = input.thicknesses();
    let bars = Category::ALL.into_iter().map(|category| {
        // The place's own loss where it is known better than by its category.
        let marked = category == outcome.category;
        let rates = if marked { outcome.rates } else { category.rates() };
        let worst = life::range(min, rates, Exponent::Straight).min;
        let best = life::range(max, rates, Exponent::Straight).most;
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
