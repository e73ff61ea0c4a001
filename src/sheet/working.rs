//! The working of a calculator, so that somebody else can do it again.

use super::sources::{source_block, without_sources};
use super::{Block, Look, Row, Sheet};
use crate::calculator::{Draft, Entry, Form, Problems};
use crate::quantity::Units;
use crate::sentence::capital;
use crate::working::Step;

/// The working of a calculator: what was put in, what came out, and each step.
///
/// # Errors
/// What is wrong with its fields.
pub(super) fn of(entry: &Entry, draft: &Draft, units: Units) -> Result<Sheet, Problems> {
    let report = entry.evaluate(draft)?;
    let mut steps: Vec<Row> = Vec::new();
    for (topic, _, of_topic) in report.working.by_topic() {
        if !topic.is_empty() {
            steps.push(Row::said(topic, ""));
        }
        let row = |step: &Step| Row::said(capital(&step.meaning), step.to_string());
        steps.extend(of_topic.iter().map(row));
    }
    let sources = report.sources();
    let report = report.in_units(units);
    let form = Form::new(entry.about.fields, draft);
    let given = form.asked().into_iter().filter(|(_, filled)| !filled.text.is_empty());
    let given: Vec<Row> = given.map(|(field, filled)| Row::said(field.label, filled.shown(field))).collect();
    let mut lead: Vec<Row> =
        report.verdict.map(|verdict| Row::said("", verdict.words())).into_iter().collect();
    lead.push(Row::said("", report.headline.clone()));
    let findings = report.findings.iter();
    let findings = findings.map(|finding| Row::said(finding.mark.words(), without_sources(&finding.text)));
    let figures = report.figures.iter().map(Row::figure).collect();
    let mut blocks = vec![
        Block::new(entry.about.title, Look::Lead, lead),
        Block::new("Put in", Look::Half, given),
        Block::new("Found", Look::Half, figures),
        Block::new("Rule by rule", Look::Full, findings.collect()),
        Block::new("Step by step", Look::Full, steps),
        source_block(sources),
    ];
    blocks.retain(|block| !block.rows.is_empty());
    let mut sheet = Sheet::of(format!("Working: {}", entry.about.title), blocks);
    sheet.pages = 2;
    Ok(sheet)
}
