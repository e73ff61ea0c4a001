//! What is inspected: on the sheet of an order, and on the record that the inspector fills in.

use super::sources::source_block;
use super::specification::{limits, specification};
use super::{Block, Heading, Look, Row, Sheet};
use crate::calculator::lot_check::{self, LotCheck};
use crate::calculator::{Calculator, Draft, Problems, parse};
use crate::lot::inspection::{Characteristic, Method, Record, Result as Found, places};
use crate::lot::{AcceptanceRule, Stage, Standard, sample};
use crate::order::{Assessed, Judged};
use crate::process::Process;
use crate::source::Source;
use crate::table::inspection;

/// The calculator of lots.
pub(super) const LOT: &str = LotCheck::ABOUT.id;

/// Boxes for readings, a row each.
const ARTICLES: [&str; 10] = ["1", "2", "3", "4", "5", "6", "7", "8", "9", "10"];
/// What is written of an article.
const READINGS: &[&str] = &["1", "2", "3", "4", "5", "mean"];
/// What is decided of a characteristic.
const DECIDED: &[&str] = &["☐ accept", "☐ reject", "remark"];

/// On how many articles the coat is measured, and where.
pub(super) fn to_measure(assessed: &Assessed, judged: &Judged, sources: &mut Vec<Source>) -> Vec<Row> {
    let Some(offer) = &judged.offer else { return Vec::new() };
    let Some(standard) = Standard::of(offer.class.document) else {
        let text =
            format!("the sample and the places are not known here; open {}", offer.class.document.name);
        return vec![Row::said("To measure", text)];
    };
    let mut rows = vec![Row::said("Articles", articles(standard, assessed.line.quantity, sources))];
    if let Some(rule) = standard.readings_per_article() {
        sources.push(rule.source);
        let or = rule
            .or_articles
            .map_or_else(String::new, |count| format!(", or one on each of {count} articles"));
        rows.push(Row::said("Readings", format!("{} on each{or}", rule.fewest)));
    }
    rows.extend(where_to(assessed, standard, sources));
    rows
}

/// How many articles are measured; a blank names the document to open.
fn articles(standard: Standard, quantity: Option<u32>, sources: &mut Vec<Source>) -> String {
    let Some(lot) = quantity else {
        return "say the quantity: the number goes by it".to_owned();
    };
    let of = if standard == Standard::F2329Batch { ", where the lot is one batch" } else { "" };
    match sample::size(standard, lot, Stage::First) {
        Ok(sample) => {
            sources.extend([sample.source, inspection::DRAWING.source]);
            format!("{} of {lot}{of}, {}", sample.articles(), inspection::DRAWING.says)
        }
        Err(refusal) => {
            sources.push(refusal.source());
            refusal.to_string()
        }
    }
}

/// The places for the parts of the order.
fn where_to(assessed: &Assessed, standard: Standard, sources: &mut Vec<Source>) -> Vec<Row> {
    let items = &assessed.judgement.items;
    let has = |test: fn(crate::part::Kind) -> bool| items.iter().any(|item| test(item.part.kind));
    let concerns = |name: &str| match name {
        "Nuts" => has(|kind| kind.is_nut()),
        "Washers" => has(|kind| kind.is_washer()),
        "Bolts" | "Long bolts and rods" => has(|kind| !kind.is_nut() && !kind.is_washer()),
        _ => true,
    };
    let rows = places(standard).iter().filter(|row| concerns(row.name));
    rows.map(|row| {
        sources.push(row.source);
        Row::said(row.name, row.says)
    })
    .collect()
}

/// The record to be filled in for an order.
pub(super) fn of_order(assessed: &Assessed, heading: &Heading) -> Sheet {
    let mut sources = Vec::new();
    let Some(judged) = assessed.taken() else {
        let why = assessed
            .line
            .not_judged()
            .unwrap_or_else(|| "None of the three finishes suits the order".to_owned());
        let text = format!("{why}: there is no coat to inspect.");
        return Sheet::of("Inspection record", vec![Block::new("", Look::Full, vec![Row::said("", text)])]);
    };
    let mut asked: Vec<Row> =
        specification(assessed, judged).map(|text| Row::said("", text)).into_iter().collect();
    asked.extend(to_measure(assessed, judged, &mut sources));
    for row in &mut asked {
        row.text = heading.units.sentence(&row.text).into_owned().into();
    }
    let mut rows = vec![Row::said("Method", "").room(&[""])];
    rows.extend(
        ["Gauge", "Its check on shims, before and after"].map(|name| Row::said(name, "").room(&[""])),
    );
    let readings = ARTICLES.map(|article| Row::said(format!("Article {article}"), "").room(READINGS));
    Sheet::of(
        "Inspection record",
        vec![
            Block::new("What is asked", Look::Lead, asked),
            Block::new("How it was measured", Look::Full, rows),
            Block::new("Thickness", Look::Full, readings.to_vec()),
            characteristics(Some(judged.process), None, &mut sources),
            decision(None),
            source_block(sources),
        ],
    )
}

/// The record of a lot as it was entered; `None` for another calculator.
///
/// # Errors
/// What is wrong with its fields.
pub(super) fn of(id: &str, draft: &Draft) -> Result<Option<Sheet>, Problems> {
    if id != LOT {
        return Ok(None);
    }
    let input: lot_check::Input = parse::<LotCheck>(draft)?;
    let outcome = LotCheck::solve(&input).map_err(Problems::one)?;
    let report = LotCheck::explain(&input, &outcome);
    let mut sources = report.sources();
    let AcceptanceRule { standard, .. } = input.rule;
    let mut asked =
        vec![Row::said("Checked by", standard.document().map_or("limits of the order", |one| one.name))];
    if let Some(class) = input.class {
        asked.push(Row::said("Class", format!("{}: {}", class.name, limits(class).join(", "))));
    }
    asked.push(Row::said("Lot", format!("{} pieces", input.lot)));
    let record: &Record = &input.record;
    let mut measured = vec![Row::said("Method", method(record.method))];
    measured.push(Row::to_fill("Gauge", &record.gauge));
    measured.push(Row::to_fill("Its check on shims, before and after", &record.shims));
    let figures = report.figures.iter().map(Row::figure).collect();
    let each = report
        .sections
        .iter()
        .filter(|section| section.figures.iter().any(|figure| figure.name.starts_with("Article ")));
    let each: Vec<Row> = each.flat_map(|section| &section.figures).map(Row::figure).collect();
    Ok(Some(Sheet::of(
        "Inspection record",
        vec![
            Block::new("Result", Look::Lead, vec![Row::said("", report.headline.clone())]),
            Block::new("What is asked", Look::Full, asked),
            Block::new("How it was measured", Look::Full, measured),
            Block::new("Thickness", Look::Half, figures),
            Block::new("Article means", Look::Half, each),
            characteristics(input.class.map(|class| class.process), Some(record), &mut sources),
            decision(Some(record)),
            source_block(sources),
        ],
    )))
}

fn method(method: Method) -> &'static str {
    method.rows().next().map_or("", |row| row.name)
}

/// Appearance, adhesion, thread gauge and washers, each with how, and what became of it or room for it.
fn characteristics(process: Option<Process>, record: Option<&Record>, sources: &mut Vec<Source>) -> Block {
    let rows = Characteristic::ALL.map(|one| {
        let how = one.how(process);
        sources.push(how.source);
        let found = record.and_then(|record| record.results.iter().find(|(of, _)| *of == one));
        let row = Row::said(crate::sentence::capital(one.name()), how.says);
        match found.map(|(_, found)| found) {
            Some(Found::Accept) => Row { name: format!("{}: accept", row.name).into(), ..row },
            Some(Found::Reject) => Row { name: format!("{}: reject", row.name).into(), ..row },
            Some(Found::NotDone) | None => row.room(DECIDED),
        }
    });
    Block::new("Beside the thickness", Look::Full, rows.to_vec())
}

fn decision(record: Option<&Record>) -> Block {
    let known = |text: fn(&Record) -> &str| record.map_or("", text);
    let rows = vec![
        Row::said("The lot is", "").room(&["☐ accepted", "☐ rejected", "☐ to be measured again"]),
        Row::to_fill("Inspected by", known(|record| &record.who)),
        Row::to_fill("On", known(|record| &record.when)),
        Row::said("Signature", "").room(&[""]),
    ];
    Block::new("Decision", Look::Full, rows)
}
