//! The lot check, arranged for its reader.

use super::{Input, Outcome, picture, working};
use crate::calculator::{Caution, Figure, Finding, Mark, Note, Report, Section};
use crate::lot::{self, Comma, Comparison, Decision as Lot, Retest, Stage, Standard, picometres};
use crate::quantity::{Length, Quantity, Shown};
use crate::sentence::capital;
use crate::source::Source;
use crate::table::astm_f2329_sampling;

/// Articles listed one by one; of a larger sample the thinnest.
const LISTED: usize = 40;

pub(super) fn of(input: &Input, outcome: &Outcome) -> Report {
    Report {
        verdict: None,
        headline: headline(input, outcome),
        figures: figures(input, outcome),
        sections: vec![articles(input)],
        findings: findings(input, outcome),
        working: working::of(input, outcome),
        cautions: vec![Caution::StandardFirst],
        notes: notes(input, outcome),
        picture: Some(picture::of(input, outcome)),
    }
}

impl Input {
    /// A thickness in the unit of the readings.
    pub(super) fn show(&self, thickness: Length) -> Shown {
        self.precise(thickness, 0)
    }

    /// The same with more decimals.
    pub(super) fn precise(&self, thickness: Length, more: u8) -> Shown {
        let unit = self.readings.unit;
        let decimals = match unit.symbol {
            "mm" => 4,
            "in" => 5,
            "mil" => 2,
            _ => 1,
        };
        thickness.show(unit, decimals + more)
    }
}

/// A comparison that was made, with its names.
pub(super) struct Named<'a> {
    pub what: &'static str,
    pub symbol: &'static str,
    pub at_least: bool,
    pub comparison: &'a Comparison,
}

pub(super) fn named(outcome: &Outcome) -> impl Iterator<Item = Named<'_>> {
    let judgement = &outcome.judgement;
    [
        ("Lot mean", "d_m", true, &judgement.lot_mean),
        ("Lot mean", "d_g", false, &judgement.lot_mean_max),
        ("Least article", "d_a", true, &judgement.article),
        ("Least reading", "d_r", true, &judgement.reading),
    ]
    .into_iter()
    .filter_map(|(what, symbol, at_least, comparison)| {
        Some(Named { what, symbol, at_least, comparison: comparison.as_ref()? })
    })
}

fn headline(input: &Input, outcome: &Outcome) -> String {
    let compared = named(outcome).map(|Named { what, at_least, comparison, .. }| {
        let relation = if at_least { "least" } else { "greatest" };
        format!(
            "{} {} ({relation} {})",
            what.to_ascii_lowercase(),
            input.show(comparison.value),
            comparison.limit.printed
        )
    });
    format!("{}: {}", outcome.judgement.decision.words(), compared.collect::<Vec<_>>().join(", "))
}

fn figures(input: &Input, outcome: &Outcome) -> Vec<Figure> {
    let statistics = &outcome.statistics;
    let show = |thickness| input.show(thickness);
    let mut figures = vec![
        match &outcome.sample {
            Ok(sample) => Figure::one("", "Articles wanted", Shown::pieces(f64::from(sample.articles())))
                .source(sample.source),
            Err(refusal) => Figure::words("Articles wanted", "not known here").source(refusal.source()),
        },
        Figure::one("n", "Articles measured", Shown::pieces(statistics.articles as f64)),
        Figure::one("", "Readings", Shown::pieces(statistics.readings as f64)),
        Figure::one("m", "Lot mean", show(statistics.mean)),
        Figure::range("", "Article means", show(statistics.min_article), show(statistics.max_article)),
        Figure::range("", "Single readings", show(statistics.min_reading), show(statistics.max_reading)),
    ];
    if let Some(deviation) = statistics.deviation {
        figures.push(Figure::one(
            "s",
            "Standard deviation of the article means",
            input.precise(deviation, 1),
        ));
    }
    for Named { what, symbol, at_least, comparison } in named(outcome) {
        let relation = if at_least { "above its least" } else { "below its greatest" };
        let limit = comparison.limit.printed;
        let name = format!("{what} {relation}, {limit}, by");
        figures.push(Figure::one(symbol, name, show(comparison.margin)).source(input.source_of(comparison)));
    }
    if let Ok(evidence) = outcome.evidence {
        let name =
            format!("The lot's mean is at least, with {} confidence", percent(evidence.confidence.one()));
        figures.push(Figure::one("L", name, show(evidence.lower_bound)).source(lot::BOUND));
    }
    if let Some(reached) = outcome.reached {
        let name = "Confidence that the lot's mean reaches its limit";
        figures.push(if reached.one() > 0.999 {
            Figure::words(name, "more than 99.9\u{a0}%").source(lot::BOUND)
        } else {
            Figure::one("", name, percent(reached.one())).source(lot::BOUND)
        });
    }
    figures
}

impl Input {
    /// Where a limit is printed; the order's own limits have only the order.
    pub(super) fn source_of(&self, comparison: &Comparison) -> Source {
        self.class.map_or(self.rule.source, |class| class.source(&comparison.limit))
    }
}

fn percent(share: f64) -> Shown {
    Shown::percent(share, 1)
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
        let mut thinnest = Vec::with_capacity(LISTED);
        while thinnest.len() < LISTED
            && let Some(at) =
                (0..means.len()).min_by_key(|&at| means.get(at).map(|&(_, _, mean)| picometres(mean)))
        {
            thinnest.push(means.remove(at));
        }
        means = thinnest;
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

fn findings(input: &Input, outcome: &Outcome) -> Vec<Finding> {
    let judgement = &outcome.judgement;
    let mut findings: Vec<Finding> = named(outcome).map(|named| compared(input, &named)).collect();
    if judgement.decision == Lot::Retest
        && let Some(source) = input.rule.retest.source()
    {
        findings.push(Finding::new(Mark::Condition, sentence(input.rule.retest.instruction()), source));
    }
    if judgement.decision == Lot::Reject && input.rule.retest == Retest::NoneKnown {
        findings.push(Finding::new(Mark::Note, sentence(input.rule.retest.instruction()), input.rule.source));
    }
    if judgement.decision == Lot::Reject
        && input.stage == Stage::Retest
        && let Some(source) = input.rule.retest.source()
    {
        findings.push(Finding::new(Mark::Bar, "The retest failed: the lot is rejected.", source));
    }
    match &outcome.sample {
        Ok(sample) if judgement.missing > 0 => {
            let text = format!(
                "Measure {} more {}: the sample is {}.",
                judgement.missing,
                if judgement.missing == 1 { "article" } else { "articles" },
                Shown::pieces(f64::from(sample.articles()))
            );
            findings.push(Finding::new(Mark::Condition, text, sample.source));
        }
        Ok(sample) => findings.push(Finding::new(Mark::Met, "Enough articles were measured.", sample.source)),
        Err(refusal) => {
            let text = format!("See that enough articles were measured: {refusal}.");
            findings.push(Finding::new(Mark::Condition, text, refusal.source()));
        }
    }
    if let Some((wanted, source)) = input.rule.standard.readings_per_article() {
        let fewest = outcome.statistics.fewest;
        if fewest < usize::try_from(wanted).unwrap_or(usize::MAX) {
            let text = format!(
                "Take at least {wanted} readings on an article with a magnetic gauge; the fewest here are {fewest}."
            );
            findings.push(Finding::new(Mark::Condition, text, source));
        }
    }
    findings.extend(batch(input));
    findings
}

/// One comparison, said with the margin.
fn compared(input: &Input, named: &Named<'_>) -> Finding {
    let Named { what, at_least, comparison, .. } = named;
    let value = input.show(comparison.value);
    let relation = if *at_least { "least" } else { "greatest" };
    let limit = comparison.limit.printed;
    let margin = input.show(comparison.margin.abs());
    let share = Shown::percent((comparison.margin / comparison.limit.thickness).abs(), 1);
    let (mark, text) = match (comparison.kept, comparison.kept_surely) {
        (true, true) => {
            (Mark::Met, format!("{what} {value} keeps the {relation} of {limit} by {margin} ({share})."))
        }
        (true, false) => (
            Mark::Condition,
            format!(
                "{what} {value} keeps the {relation} of {limit} by {margin} ({share}), less than the gauge's \
                 uncertainty: measure with a better gauge, or agree how the uncertainty counts."
            ),
        ),
        (false, _) => {
            let close = input.gauge.is_some_and(|gauge| comparison.margin.um().abs() < gauge.um());
            let close = if close { ", which is within the gauge's uncertainty" } else { "" };
            (
                Mark::Bar,
                format!("{what} {value} misses the {relation} of {limit} by {margin} ({share}){close}."),
            )
        }
    };
    Finding::new(mark, text, input.source_of(comparison))
}

/// What ASTM F2329 wants of the same batch besides.
fn batch(input: &Input) -> Option<Finding> {
    let in_row =
        |row: &&astm_f2329_sampling::Row| input.lot >= row.min && row.max.is_none_or(|max| input.lot <= max);
    let row = astm_f2329_sampling::BATCH.iter().find(in_row)?;
    let text = format!(
        "The batch wants {} for adhesion and {} for appearance besides, with no defect; the thickness is measured on \
         one set for every {} batches.",
        Shown::pieces(f64::from(row.adhesion)),
        Shown::pieces(f64::from(row.appearance)),
        astm_f2329_sampling::BATCHES_PER_SET
    );
    (input.rule.standard == Standard::F2329Batch)
        .then(|| Finding::new(Mark::Note, text, astm_f2329_sampling::TABLE))
}

/// An instruction with a capital and a full stop.
fn sentence(instruction: &str) -> String {
    format!("{}.", capital(instruction))
}

fn notes(input: &Input, outcome: &Outcome) -> Vec<Note> {
    let mut notes = Vec::new();
    match input.readings.comma {
        Some(Comma::Decimal) => notes.push(Note::plain("Commas were read as decimal marks.")),
        Some(_) => notes.push(Note::plain("Commas were read as standing between readings.")),
        None => {}
    }
    if input.readings.heading {
        notes.push(Note::plain("The first line was read as a heading and left out."));
    }
    notes.push(Note::plain(match input.rule.standard {
        Standard::B695 => "No average is allowed: every reading on a significant surface has to reach the class.",
        _ => "The thickness of an article is the mean of its readings; the lot mean is the mean of the articles.",
    }));
    if let Ok(sample) = &outcome.sample
        && sample.sets > 1
    {
        notes.push(Note::sourced(
            format!(
                "The articles were judged in {} sets, in the order written; what is compared is the worse of them.",
                sample.sets
            ),
            sample.source,
        ));
    }
    if input.gauge.is_none() {
        notes.push(Note::plain("No uncertainty of the gauge was given: a bare pass is shown as a pass."));
    }
    match &outcome.evidence {
        Ok(evidence) => {
            if let Some(limit) = input.rule.limits.lot_mean {
                let reaches = evidence.lower_bound.um() >= limit.thickness.um();
                let says = if reaches { "reaches" } else { "does not reach" };
                notes.push(Note::sourced(
                    format!(
                        "The bound on the lot's mean {says} the least of {}; it holds for articles taken at random.",
                        limit.printed
                    ),
                    lot::BOUND,
                ));
            }
        }
        Err(refusal) => {
            notes.push(Note::sourced(format!("No bound on the lot's mean: {refusal}."), refusal.source()))
        }
    }
    if input.rule.standard.document().is_some() {
        notes.push(Note::plain(
            "Values are compared as they are unless rounding by ASTM E29 is chosen; the standards' own rounding \
             clauses are not known here.",
        ));
    }
    notes
}
