//! The run of a barrel or a kettle, for the operator: each step with a box, its numbers and room.

use super::sources::{source_block, without_sources};
use super::{Block, Look, Row, Sheet};
use crate::calculator::kettle_pickup::KettlePickup;
use crate::calculator::powder_mass::PowderMass;
use crate::calculator::run::{RunStep, when};
use crate::calculator::{Calculator, Caution, Draft, Figure, Mark, Problems, Report, parse, run};
use crate::quantity::Units;
use crate::source::Source;

/// The calculator of the barrel.
pub(super) const BARREL: &str = PowderMass::ABOUT.id;
/// The calculator of the kettle.
pub(super) const KETTLE: &str = KettlePickup::ABOUT.id;

/// The run sheet of a calculator that has a run; `None` for another.
///
/// # Errors
/// What is wrong with its fields.
pub(super) fn of(id: &str, draft: &Draft, units: Units) -> Result<Option<Sheet>, Problems> {
    match id {
        BARREL => {
            let input = parse::<PowderMass>(draft)?;
            let outcome = PowderMass::solve(&input).map_err(Problems::one)?;
            let report = PowderMass::explain(&input, &outcome);
            Ok(Some(sheet("Run sheet of the barrel", &outcome.run, input.plan.start, report, units)))
        }
        KETTLE => {
            let input = parse::<KettlePickup>(draft)?;
            let outcome = KettlePickup::solve(&input).map_err(Problems::one)?;
            let report = KettlePickup::explain(&input, &outcome);
            Ok(Some(sheet("Run sheet of the kettle", &outcome.run, None, report, units)))
        }
        _ => Ok(None),
    }
}

fn sheet(
    title: &'static str,
    steps: &[RunStep],
    start: Option<run::Clock>,
    report: Report,
    units: Units,
) -> Sheet {
    let mut sources: Vec<Source> = steps.iter().map(|step| step.source).collect();
    let rows = steps.iter().enumerate().map(|(at, step)| {
        let figures: Vec<String> = step.figures.iter().map(figure).collect();
        sources.extend(step.figures.iter().filter_map(|figure| figure.source));
        let when = step.at.map(|at| format!(" ({})", when(at, start))).unwrap_or_default();
        let text = format!("{}{when} {}", step.what, figures.join("; "));
        Row { name: format!("{}.", at + 1).into(), ..Row::tick(text.trim().to_owned()) }
            .room(&["done at", "measured"])
    });
    let rows: Vec<Row> = rows.collect();
    let findings = report.findings.iter().filter(|finding| finding.mark > Mark::Met).map(|finding| {
        sources.push(finding.source);
        Row::said(finding.mark.words(), without_sources(&finding.text))
    });
    let findings: Vec<Row> = findings.collect();
    let cautions = report.cautions.iter().map(|caution| Row::said("", Caution::words(*caution))).collect();
    let mut sheet = Sheet::of(
        title,
        vec![
            Block::new("The load", Look::Lead, vec![Row::said("", report.headline.clone())]),
            Block::new("The rules", Look::Full, findings),
            Block::new("The run", Look::Full, rows),
            Block::new(
                "",
                Look::Signatures,
                vec![
                    Row::said("Run by", "").room(&["name", "date"]),
                    Row::said("Checked by", "").room(&["name", "date"]),
                ],
            ),
            Block::new("Cautions", Look::Small, cautions),
        ],
    );
    for row in sheet.blocks.iter_mut().flat_map(|block| &mut block.rows) {
        row.text = units.sentence(&row.text).into_owned().into();
    }
    sheet.blocks.push(source_block(sources));
    sheet.pages = 2;
    sheet
}

fn figure(figure: &Figure) -> String {
    format!("{}: {}", figure.name, figure.value)
}
