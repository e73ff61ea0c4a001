//! What stands beside the answer: the text as it was read, the articles, places, methods and plans.

use super::{Input, named};
use crate::calculator::{Figure, Section};
use crate::lot::inspection::places;
use crate::lot::{self, Line, LineUse, Standard, femtometres};
use crate::quantity::{Length, Shown};
use crate::table::inspection::{self, Row};
use crate::table::{astm_b602_sampling, iso_3269_sampling};

/// Articles or lines listed one by one; of a larger sample the thinnest, or the first.
const LISTED: usize = 40;
/// Letters of a line that are shown.
const LETTERS: usize = 60;

pub(super) fn of(input: &Input) -> Vec<Section> {
    let mut sections = Vec::new();
    let read_as = &input.readings.read_as;
    if !read_as.is_plain() || read_as.columns.len() > 1 {
        sections.push(columns(input));
    }
    if !read_as.is_plain() {
        sections.push(lines(input));
    }
    sections.push(articles(input));
    let rows = |title: &'static str, rows: &mut dyn Iterator<Item = &'static Row>| Section {
        title: title.into(),
        figures: rows.map(|row| Figure::words(row.name, row.says).source(row.source)).collect(),
    };
    let mut where_to = places(input.rule.standard).iter().chain([&inspection::DRAWING]);
    sections.push(rows("Where to measure", &mut where_to));
    sections.push(rows("The method", &mut input.record.method.rows()));
    sections.extend(plans(input));
    sections.extend(inspected(input));
    sections
}

/// Who inspected, when, and with what; none where nothing of it was said.
fn inspected(input: &Input) -> Option<Section> {
    let record = &input.record;
    let said = [
        ("Inspected by", &record.who),
        ("Inspected on", &record.when),
        ("Gauge", &record.gauge),
        ("Its check on shims", &record.shims),
    ];
    let figures: Vec<Figure> = said
        .into_iter()
        .filter(|(_, text)| !text.is_empty())
        .map(|(name, text)| Figure::words(name, text.clone()))
        .collect();
    (!figures.is_empty()).then(|| Section { title: "The inspection".into(), figures })
}

/// Pasted as read: its columns.
fn columns(input: &Input) -> Section {
    let read_as = &input.readings.read_as;
    let figures = read_as.columns.iter().enumerate().map(|(at, column)| {
        let name = match &column.heading {
            Some(heading) => format!("Column {}, “{heading}”", at + 1),
            None => format!("Column {}", at + 1),
        };
        let unit = column.unit.filter(|_| column.is_taken()).map(|unit| format!(" in {}", unit.symbol));
        let first = if column.first.is_empty() { String::new() } else { format!(" ({} …)", column.first) };
        Figure::words(name, format!("{}{}{first}", column.usage, unit.unwrap_or_default()))
    });
    let separator = read_as.separator;
    Section {
        title: format!("Pasted as read: the columns, between {separator}").into(),
        figures: figures.collect(),
    }
}

/// Pasted as read: its lines; of many, those left out or marked, and the first of the others.
fn lines(input: &Input) -> Section {
    let lines = &input.readings.read_as.lines;
    let plain = |line: &Line| matches!(line.usage, LineUse::Article { repeats: None, .. });
    let mut room = LISTED;
    let mut figures = Vec::new();
    let mut more = 0;
    for line in lines {
        if plain(line) && room == 0 {
            more += 1;
            continue;
        }
        room = room.saturating_sub(1);
        let text: String = line.text.chars().take(LETTERS).collect();
        let cut = if line.text.chars().nth(LETTERS).is_some() { " …" } else { "" };
        figures.push(Figure::words(format!("Line {}: {text}{cut}", line.number), line.usage.to_string()));
    }
    if more > 0 {
        figures.push(Figure::words(
            "Further lines",
            format!("{} more, read in the same way", named::articles(more)),
        ));
    }
    Section { title: "Pasted as read: the lines".into(), figures }
}

/// Article means, in the order measured; of a large sample the thinnest first.
fn articles(input: &Input) -> Section {
    let mean = |readings: &[Length]| lot::Statistics::of(std::iter::once(readings)).map(|one| one.mean);
    let mut means: Vec<(usize, usize, Length)> = input
        .readings
        .articles()
        .enumerate()
        .filter_map(|(at, readings)| Some((at + 1, readings.len(), mean(readings)?)))
        .collect();
    let title = if means.len() > LISTED {
        means.sort_by_key(|&(_, _, mean)| femtometres(mean));
        means.truncate(LISTED);
        format!("The {LISTED} thinnest articles")
    } else {
        "Article means".to_owned()
    };
    let figure = |(at, count, mean): (usize, usize, Length)| {
        let readings = if count == 1 { "1 reading".to_owned() } else { format!("{count} readings") };
        Figure::one("", format!("Article {at}, {readings}"), input.show(mean))
    };
    Section { title: title.into(), figures: means.into_iter().map(figure).collect() }
}

/// Why a lot has no plan.
fn beyond_the_plans(lot: u32) -> Option<Figure> {
    let none = astm_b602_sampling::LEVELS.iter().all(|level| level.plan(lot).is_none());
    none.then(|| {
        let text = "no plan for a lot of this size is known here: open the document";
        Figure::words(Shown::pieces(f64::from(lot)).to_string(), text).source(astm_b602_sampling::NUMBERS)
    })
}

/// What is published of the sampling plans that the standard points to; nothing is judged by them.
fn plans(input: &Input) -> Option<Section> {
    let figures = match input.rule.standard {
        Standard::B695 => astm_b602_sampling::LEVELS
            .iter()
            .filter_map(|level| {
                let plan = level.plan(input.lot)?;
                let name = format!("{}, AQL {}", level.name, Shown::percent(level.aql / 100.0, 2));
                let articles = plan.articles.min(input.lot);
                let text = format!("{articles} articles, of which {} may miss", plan.allowed);
                Some(Figure::words(name, text).source(astm_b602_sampling::NUMBERS))
            })
            .chain(beyond_the_plans(input.lot))
            .chain([
                Figure::words("Where the order names no level", "Level II for tests that destroy nothing")
                    .source(astm_b602_sampling::DEFAULT_LEVEL),
                Figure::words("The scheme", "inspection level II of MIL-STD-105D, single and normal")
                    .source(astm_b602_sampling::SCHEME),
            ])
            .collect(),
        Standard::Iso10684 | Standard::Iso4042 => iso_3269_sampling::AQL
            .iter()
            .map(|&(what, aql)| {
                let aql = format!("AQL {}", Shown::percent(aql / 100.0, 2));
                Figure::words(what, aql).source(iso_3269_sampling::AQL_SOURCE)
            })
            .chain([Figure::words(
                "A coat",
                "has no line of its own that was found: agree the number and how many may miss",
            )
            .source(iso_3269_sampling::COAT)])
            .collect(),
        _ => return None,
    };
    let title = match input.rule.standard {
        Standard::B695 => "Plans of ASTM B602, to be checked in the document and entered",
        _ => "What is known of ISO 3269, to be checked in the document and entered",
    };
    Some(Section { title: title.into(), figures })
}
