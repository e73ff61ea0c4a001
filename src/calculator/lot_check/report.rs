//! The lot check, arranged for its reader.

use super::named::{Named, articles, named};
use super::{Input, Outcome, finding, picture, sections, working};
use crate::calculator::{Caution, Figure, Note, Report};
use crate::lot::inspection::Result as Found;
use crate::lot::{self, Comma, Comparison, Decision as Lot, Standard, Statistics, plan};
use crate::quantity::{Length, Quantity, Shown, unit};
use crate::source::Source;
use crate::table::{astm_b695, astm_f1470_sampling, inspection};

pub(super) fn of(input: &Input, outcome: &Outcome) -> Report {
    Report {
        verdict: None,
        headline: headline(input, outcome),
        figures: figures(input, outcome),
        sections: sections::of(input),
        findings: finding::of(input, outcome),
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
        self.readings.measure.show(thickness, more)
    }

    /// How many decimals more show that a value misses its limit.
    pub(super) fn digits_to_tell(&self, comparison: &Comparison) -> u8 {
        let equal = |more: &u8| self.precise(comparison.margin.abs(), *more).rounded() == 0.0;
        if comparison.kept_unrounded { 0 } else { (0..4).find(|more| !equal(more)).unwrap_or(4) }
    }

    /// Where a limit is printed; the order's own limits have only the order.
    pub(super) fn source_of(&self, comparison: &Comparison) -> Source {
        self.class.map_or(self.rule.source, |class| class.source(&comparison.limit))
    }
}

fn headline(input: &Input, outcome: &Outcome) -> String {
    let overall = input.record.overall(outcome.judgement.decision);
    let rejected: Vec<&str> = input.record.of_result(Found::Reject).map(|one| one.name()).collect();
    let reason = if !rejected.is_empty() {
        format!("{} rejected; ", rejected.join(" and "))
    } else if overall == Lot::NotDecided {
        undecided(input, outcome).map(|reason| format!("{reason}; ")).unwrap_or_default()
    } else {
        String::new()
    };
    let compared = named(outcome).map(|Named { what, at_least, comparison, .. }| {
        let relation = if at_least { "least" } else { "greatest" };
        let value = input.precise(comparison.value, input.digits_to_tell(comparison));
        let what = what.to_ascii_lowercase();
        format!("{what} {value} ({relation} {})", comparison.printed)
    });
    let compared = compared.collect::<Vec<_>>().join(", ");
    format!("{}: {reason}{compared}; {}", overall.words(), as_counted(&outcome.statistics))
}

/// How many articles were read, and how many readings on each: numbers of one line are one article.
fn as_counted(statistics: &Statistics) -> String {
    let Statistics { articles: count, readings, fewest, .. } = *statistics;
    let each = if fewest == 1 { "reading" } else { "readings" };
    let of = articles(u32::try_from(count).unwrap_or(u32::MAX));
    match fewest * count == readings {
        true if count == 1 => format!("{of} with {fewest} {each}"),
        true => format!("{of} with {fewest} {each} each"),
        false => format!("{of} with {readings} readings in all"),
    }
}

/// What is missing before the lot can be accepted.
fn undecided(input: &Input, outcome: &Outcome) -> Option<String> {
    let judgement = &outcome.judgement;
    if input.retest_unknown() {
        return Some(input.rule.retest.instruction().to_owned());
    }
    if let Some(hangs) = outcome.hangs {
        return Some(format!("it hangs on {}, see there first", finding::in_doubt(hangs.on)));
    }
    match judgement.missing {
        None => Some("the number of articles to measure is not known here, enter the one agreed".to_owned()),
        Some(missing) if missing > 0 => Some(format!("{} still to measure", articles(missing))),
        _ if judgement.half_measured > 0 => {
            Some(format!("{} with too few readings", articles(judgement.half_measured)))
        }
        _ => None,
    }
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
        let name = format!("{what} {relation}, {}, by", comparison.printed);
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
    if let Some(risk) = outcome.risk {
        let shown = |share: crate::quantity::PlainNumber| share.show(&unit::PERCENT, 1);
        figures.push(
            Figure::one(
                "",
                "A lot passes this plan once in ten times with, missing",
                shown(risk.passes_once_in_ten),
            )
            .source(plan::RISK),
        );
        figures.push(
            Figure::one("", "and 95 times in 100 with", shown(risk.passes_nearly_always)).source(plan::RISK),
        );
    }
    figures
}

fn percent(share: f64) -> Shown {
    Shown::percent(share, 1)
}

fn notes(input: &Input, outcome: &Outcome) -> Vec<Note> {
    let mut notes = Vec::new();
    let readings = &input.readings;
    match readings.read_as.comma {
        Some(Comma::Decimal) => notes.push(Note::plain("Commas were read as decimal marks.")),
        Some(_) => notes.push(Note::plain("Commas were read as standing between readings.")),
        None => {}
    }
    if !readings.unit_written {
        notes.push(Note::plain(format!(
            "No unit is written with the readings: they were read as {}.",
            readings.measure.unit.name
        )));
    }
    if readings.measure.is_mass() {
        let factor = readings.measure.factor.show(&unit::G_M2_UM, 3);
        notes.push(Note::plain(format!(
            "Where the standard prints no mass, a mass becomes a thickness by {factor}, the factor that belongs to it."
        )));
    }
    notes.push(Note::plain(match input.rule.standard {
        Standard::B695 => "No average is allowed: every reading on a significant surface has to reach the class.",
        _ => "The thickness of an article is the mean of its readings; the lot mean is the mean of the articles.",
    }));
    if matches!(input.rule.standard, Standard::F2329Batch | Standard::F2329Lot) {
        notes.push(Note::sourced(
            "No article may miss: ASTM F1470 accepts on zero defects.",
            astm_f1470_sampling::ZERO_DEFECTS,
        ));
    }
    if input.rule.standard == Standard::B695
        && input.class.is_some_and(|class| class.name == astm_b695::DISPUTED)
    {
        notes.push(Note::sourced(astm_b695::DISAGREEMENT.value, astm_b695::DISAGREEMENT.source));
    }
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
    if input.gauge.is_none() && !readings.measure.is_mass() {
        notes.push(Note::sourced(
            "No uncertainty of the gauge was given: a bare pass is shown as a pass. Magnetic gauges are trusted to 10 % \
             or 1.5 µm, the greater.",
            inspection::GAUGE_SPREAD_SOURCE,
        ));
    }
    match &outcome.evidence {
        Ok(evidence) => {
            if let Some(limit) = input.rule.limits.lot_mean {
                let reaches = evidence.lower_bound.um() >= limit.thickness.um();
                let says = if reaches { "reaches" } else { "does not reach" };
                notes.push(Note::sourced(
                    format!(
                        "The bound on the lot's mean {says} the least of {}; it holds for articles taken at random.",
                        input.readings.measure.column(&limit)
                    ),
                    lot::BOUND,
                ));
            }
        }
        Err(why) => notes.push(Note::sourced(why.to_string(), lot::BOUND)),
    }
    if input.rule.standard.document().is_some() {
        notes.push(Note::plain(
            "Limits are compared in the unit that the standard prints for that of the readings. Values are compared \
             as they are unless rounding by ASTM E29 is chosen; the standards' own rounding clauses are not known here.",
        ));
    }
    notes
}
