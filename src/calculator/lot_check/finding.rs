//! What the lot check finds, limit by limit and besides.

use super::named::{Named, articles, named};
use super::{Input, Outcome};
use crate::calculator::{Finding, Mark};
use crate::lot::inspection::Result as Found;
use crate::lot::{self, Decision as Lot, HangsOn, LineUse, Retest, Rounding, Stage, Standard};
use crate::quantity::Shown;
use crate::sentence::capital;
use crate::source::{Basis, document};
use crate::table::astm_f2329_sampling;

pub(super) fn of(input: &Input, outcome: &Outcome) -> Vec<Finding> {
    let judgement = &outcome.judgement;
    let mut findings: Vec<Finding> = named(outcome).map(|named| compared(input, outcome, &named)).collect();
    if let Some(allowed) = input.allowed.filter(|&allowed| allowed > 0) {
        let missed = judgement.nonconforming;
        let mark = if missed > allowed { Mark::Bar } else { Mark::Met };
        let verb = if missed == 1 { "misses its limit" } else { "miss their limits" };
        let text = format!("{} {verb}; the plan lets {allowed} miss.", articles(missed));
        findings.push(Finding::new(
            mark,
            text,
            document::OWN.known("acceptance number of the plan", Basis::Assumed),
        ));
    }
    if judgement.decision == Lot::Retest
        && let Some(source) = input.rule.retest.source()
    {
        findings.push(Finding::new(Mark::Condition, sentence(input.rule.retest.instruction()), source));
    }
    if judgement.decision == Lot::Reject && input.rule.retest == Retest::NoneKnown && !input.retest_unknown()
    {
        findings.push(Finding::new(Mark::Note, sentence(input.rule.retest.instruction()), input.rule.source));
    }
    if judgement.decision == Lot::Reject
        && input.stage == Stage::Retest
        && let Some(source) = input.rule.retest.source()
    {
        findings.push(Finding::new(Mark::Bar, "The retest failed: the lot is rejected.", source));
    }
    if input.retest_unknown() {
        let text = sentence(input.rule.retest.instruction());
        findings.push(Finding::new(Mark::NotJudged, text, input.rule.source));
    }
    findings.push(sample(outcome));
    findings.extend(fewer(input));
    findings.extend(half_measured(input, outcome));
    findings.extend(marked(input, outcome));
    findings.extend(besides(input));
    findings.extend(batch(input, outcome));
    findings
}

/// Whether enough articles were measured.
fn sample(outcome: &Outcome) -> Finding {
    let missing = outcome.judgement.missing.unwrap_or(0);
    match &outcome.sample {
        Ok(sample) if missing > 0 => {
            let wanted = Shown::pieces(f64::from(sample.articles()));
            let text = format!("Measure {} more: the sample is {wanted}.", articles(missing));
            Finding::new(Mark::Condition, text, sample.source)
        }
        Ok(sample) if outcome.statistics.articles as u64 > u64::from(sample.articles()) => {
            let text = format!(
                "{} were read, more than the {} of the sample: see that no line is a limit, a mean or a heading.",
                articles(u32::try_from(outcome.statistics.articles).unwrap_or(u32::MAX)),
                sample.articles()
            );
            Finding::new(Mark::Note, text, sample.source)
        }
        Ok(sample) => Finding::new(Mark::Met, "Enough articles were measured.", sample.source),
        Err(_) if outcome.whole_lot => {
            let source = document::ARITHMETIC.computed("articles measured against the lot");
            Finding::new(Mark::Met, "Every piece of the lot was measured.", source)
        }
        Err(refusal) => {
            let text = format!(
                "Enter how many articles the order or its sampling plan wants, and how many of them may miss: \
                 {refusal}."
            );
            Finding::new(Mark::NotJudged, text, refusal.source())
        }
    }
}

/// The number of the document, where fewer were agreed.
fn fewer(input: &Input) -> Option<Finding> {
    let standard = input.rule.standard;
    let own = lot::sample::size(standard, input.lot, input.stage).ok()?;
    let agreed = lot::sample::agreed(standard, input.agreed?, input.lot, input.stage);
    let wanted = Shown::pieces(f64::from(own.set));
    let (mark, text) = if agreed.set < own.set {
        (Mark::Note, format!("Where nothing else is agreed the sample of this lot is {wanted}."))
    } else if input.agreed? < own.set && input.stage == Stage::First {
        (
            Mark::Condition,
            format!("The document wants {wanted} of this lot, and leaves no room to agree fewer."),
        )
    } else {
        return None;
    };
    Some(Finding::new(mark, text, own.source))
}

/// Articles whose thickness is not made up yet.
fn half_measured(input: &Input, outcome: &Outcome) -> Option<Finding> {
    let rule = input.readings_rule()?;
    let (fewest, wanted) = (outcome.statistics.fewest, rule.fewest);
    if outcome.judgement.half_measured > 0 {
        let text = format!("Take at least {wanted} readings on an article; the fewest here are {fewest}.");
        return Some(Finding::new(Mark::Condition, text, rule.source));
    }
    let few = fewest < usize::try_from(wanted).unwrap_or(usize::MAX);
    few.then(|| {
        let text = format!(
            "Fewer than {wanted} readings on an article do only where it is too small for {wanted}: then one on \
             each of {} articles makes the thickness.",
            rule.or_articles.unwrap_or(wanted)
        );
        Finding::new(Mark::Condition, text, rule.source)
    })
}

/// Readings that lie far off, and lines that repeat another.
fn marked(input: &Input, outcome: &Outcome) -> Vec<Finding> {
    let far_off = outcome.outliers.iter().map(|outlier| {
        let (value, others) = (input.show(outlier.value), input.show(outlier.others));
        let text = match outlier.reading {
            Some(reading) => format!(
                "Look at article {}, reading {reading}: {value} lies far from the {others} of its other readings. \
                 Measure the place again, and leave the reading out only for a reason that is written down.",
                outlier.article
            ),
            None => format!(
                "Look at article {}: its {value} lies far from the {others} of the other articles. Measure it again.",
                outlier.article
            ),
        };
        Finding::new(Mark::Condition, text, lot::OUTLIER_TEST)
    });
    let repeats = input.readings.read_as.lines.iter().filter_map(|line| match line.usage {
        LineUse::Article { repeats: Some(first), .. } => {
            let text = format!(
                "Line {} reads exactly as line {first}: see that it was not pasted or measured twice.",
                line.number
            );
            Some(Finding::new(Mark::Condition, text, document::ARITHMETIC.computed("equal readings")))
        }
        _ => None,
    });
    let hangs = outcome.hangs.map(|hangs| {
        let on = in_doubt(hangs.on);
        let text = format!(
            "The outcome hangs on {on}: with all of it “{}”, without it “{}”.",
            hangs.with.words(),
            hangs.without.words()
        );
        let source = document::ARITHMETIC.computed("judged with and without what is in doubt");
        Finding::new(Mark::NotJudged, text, source)
    });
    hangs.into_iter().chain(off_scale(input, outcome)).chain(far_off).chain(repeats).collect()
}

/// Readings out of all proportion to their limit.
fn off_scale(input: &Input, outcome: &Outcome) -> Option<Finding> {
    let off = outcome.off_scale?;
    let value = input.show(off.value);
    let limit = input.readings.measure.column(&off.limit);
    let times = Shown::plain(off.times(), 0);
    let text = if off.above {
        format!(
            "Look at the readings: the greatest, {value}, is {times} times the least of {limit}. See that no decimal \
             point has slipped, that the unit is the gauge's, and that the class is the one ordered."
        )
    } else {
        format!(
            "Look at the readings: their mean of {value} is one part in {times} of the least of {limit}. See that no \
             decimal point has slipped and that the unit is the gauge's."
        )
    };
    Some(Finding::new(Mark::Condition, text, lot::SCALE))
}

/// What an outcome hangs on, by name.
pub(super) fn in_doubt(on: HangsOn) -> &'static str {
    match on {
        HangsOn::Outliers => "what lies far off the other readings",
        HangsOn::Repeats => "lines that repeat others",
        HangsOn::Scale => "readings out of all proportion to their limit",
    }
}

/// What was inspected beside the thickness.
fn besides(input: &Input) -> Vec<Finding> {
    let process = input.class.map(|class| class.process);
    input
        .record
        .results
        .iter()
        .map(|&(one, result)| {
            let how = one.how(process);
            let name = capital(one.name());
            match result {
                Found::Accept => Finding::new(Mark::Met, format!("{name}: accepted."), how.source),
                Found::Reject => Finding::new(Mark::Bar, format!("{name}: rejected."), how.source),
                Found::NotDone => {
                    let text = format!("{name}: not done. {}.", capital(how.says));
                    Finding::new(Mark::Note, text, how.source)
                }
            }
        })
        .collect()
}

/// One comparison, said with the margin.
fn compared(input: &Input, outcome: &Outcome, named: &Named<'_>) -> Finding {
    let Named { what, at_least, comparison, .. } = named;
    let more = input.digits_to_tell(comparison);
    let value = input.precise(comparison.value, more);
    let relation = if *at_least { "least" } else { "greatest" };
    let limit = comparison.printed;
    let margin = input.precise(comparison.margin.abs(), more);
    // Of the column that the margin is measured from.
    let share = (comparison.margin / input.readings.measure.thickness(limit)).abs();
    let share = Shown::percent(share, 1);
    let beyond = if *at_least { "short" } else { "too much" };
    let rounded = comparison.compared;
    let (mark, text) = match (comparison.kept, comparison.kept_surely) {
        (true, _) if !comparison.kept_unrounded => (
            Mark::Condition,
            format!(
                "{what} {value} rounds to {rounded}, which meets {limit}; as it is, it is {margin} {beyond}. See that \
                 the order calls for rounding by ASTM E29."
            ),
        ),
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
            let close = input.gauge.is_some_and(|gauge| comparison.margin.abs() < gauge);
            let close = if close { ", which is within the gauge's uncertainty" } else { "" };
            let down = if input.rounding == Rounding::ToTheLimit { " after rounding" } else { "" };
            // An article that the plan lets miss, or a mean that is not complete, rejects nothing yet.
            let open = outcome.judgement.decision <= Lot::NotDecided;
            let more_to_come = outcome.judgement.missing != Some(0) || outcome.judgement.half_measured > 0;
            let so_far = if open && more_to_come { " so far" } else { "" };
            (
                if open { Mark::Condition } else { Mark::Bar },
                format!(
                    "{what} {value} misses the {relation} of {limit} by {margin} ({share}){close}{down}{so_far}."
                ),
            )
        }
    };
    let source = if comparison.kept && !comparison.kept_unrounded {
        document::ASTM_E29.memory("rounding method")
    } else {
        input.source_of(comparison)
    };
    Finding::new(mark, text, source)
}

/// What ASTM F2329 wants of the same batch besides, and of the production lot that it belongs to.
fn batch(input: &Input, outcome: &Outcome) -> Vec<Finding> {
    if input.rule.standard != Standard::F2329Batch {
        return Vec::new();
    }
    let in_row =
        |row: &&astm_f2329_sampling::Row| input.lot >= row.min && row.max.is_none_or(|max| input.lot <= max);
    let besides = astm_f2329_sampling::BATCH.iter().find(in_row).map(|row| {
        let text = format!(
            "The batch wants {} for adhesion and {} for appearance besides, with no defect; the thickness is measured \
             on one set for every {} batches.",
            Shown::pieces(f64::from(row.adhesion)),
            Shown::pieces(f64::from(row.appearance)),
            astm_f2329_sampling::BATCHES_PER_SET
        );
        Finding::new(Mark::Note, text, astm_f2329_sampling::TABLE)
    });
    let average = input.class.and_then(|class| Some((class, class.lot_average?))).map(|(class, limit)| {
        let printed = input.readings.measure.column(&limit);
        let text = format!(
            "All batches of the production lot together average {printed} or more; this batch averages {}.",
            input.show(outcome.statistics.mean)
        );
        Finding::new(Mark::Note, text, class.source(&limit))
    });
    besides.into_iter().chain(average).collect()
}

/// An instruction with a capital and a full stop.
fn sentence(instruction: &str) -> String {
    format!("{}.", capital(instruction))
}
