//! Whether a lot is accepted.

use super::statistics::picometres;
use super::{AcceptanceRule, Readings, Retest, Statistics};
use crate::coat::ThicknessLimit;
use crate::quantity::{Length, Quantity};

/// What becomes of the lot.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Decision {
    /// Every limit is kept, beyond the uncertainty of the gauge.
    Accept,
    /// Every limit is kept, but barely, or too few articles were measured.
    NotDecided,
    /// A limit is missed, and the standard lets more articles decide.
    Retest,
    /// A limit is missed, and nothing more is measured.
    Reject,
}

/// Which sample it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stage {
    /// The first sample from the lot.
    First,
    /// The further articles that a standard asks for after a failure.
    Retest,
}

/// How a value is compared with its limit (ASTM E29).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rounding {
    /// As it is.
    Absolute,
    /// Rounded to the digits of the limit first, a half to the even digit.
    ToTheLimit,
}

/// One value against one limit.
#[derive(Debug, Clone, Copy)]
pub struct Comparison {
    /// The value.
    pub value: Length,
    /// The limit.
    pub limit: ThicknessLimit,
    /// How far the value is on the good side, without rounding; below zero on the bad one.
    pub margin: Length,
    /// Whether the limit is kept.
    pub kept: bool,
    /// Whether it is still kept with the gauge wrong by its whole uncertainty.
    pub kept_surely: bool,
}

/// The judgement on a set of articles.
#[derive(Debug, Clone, Copy)]
pub struct Judgement {
    /// What becomes of the lot.
    pub decision: Decision,
    /// Mean of the articles against the least.
    pub lot_mean: Option<Comparison>,
    /// Mean of the articles against the greatest.
    pub lot_mean_max: Option<Comparison>,
    /// Least article against its limit.
    pub article: Option<Comparison>,
    /// Least reading against its limit.
    pub reading: Option<Comparison>,
    /// Articles still to measure before anything can be accepted.
    pub missing: u32,
}

/// Judges a set of articles.
///
/// `needed` is the size of the sample, where it is known. A gauge's uncertainty turns a bare pass
/// into "not decided"; a value on the bad side of its limit fails whatever the gauge, as no
/// standard here gives the benefit of the doubt.
pub fn judge(
    statistics: &Statistics,
    rule: &AcceptanceRule,
    stage: Stage,
    needed: Option<u32>,
    gauge: Length,
    rounding: Rounding,
) -> Judgement {
    let min = |value, limit: Option<ThicknessLimit>| {
        limit.map(|limit| compare(value, limit, true, gauge, rounding))
    };
    let measured = u32::try_from(statistics.articles).unwrap_or(u32::MAX);
    let mut judgement = Judgement {
        decision: Decision::Accept,
        lot_mean: min(statistics.mean, rule.limits.lot_mean),
        lot_mean_max: rule
            .limits
            .lot_mean_max
            .map(|limit| compare(statistics.mean, limit, false, gauge, rounding)),
        article: min(statistics.min_article, rule.limits.article),
        reading: min(statistics.min_reading, rule.limits.reading),
        missing: needed.map_or(0, |needed| needed.saturating_sub(measured)),
    };
    judgement.decision = if judgement.comparisons().any(|comparison| !comparison.kept) {
        if stage == Stage::First && rule.retest != Retest::NoneKnown {
            Decision::Retest
        } else {
            Decision::Reject
        }
    } else if judgement.missing > 0 || judgement.comparisons().any(|comparison| !comparison.kept_surely) {
        Decision::NotDecided
    } else {
        Decision::Accept
    };
    judgement
}

/// Judges so many sets of the same size, in the order measured; each has to conform, and the worst
/// of them speaks. None where the articles cannot be cut into such sets.
pub fn judge_sets(
    readings: &Readings,
    rule: &AcceptanceRule,
    stage: Stage,
    sample: Sizes,
    gauge: Length,
    rounding: Rounding,
) -> Option<Judgement> {
    let judge = |statistics| judge(&statistics, rule, stage, sample.set, gauge, rounding);
    let judgements = readings.sets(sample.sets)?.filter_map(Statistics::of).map(judge);
    // Of equally bad sets the one with the least margin speaks.
    let narrowest = |judgement: &Judgement| {
        judgement.comparisons().map(|comparison| picometres(comparison.margin)).min().unwrap_or(0)
    };
    judgements.max_by_key(|judgement| (judgement.decision, -narrowest(judgement)))
}

/// How many sets, and the articles that each needs, where that is known.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Sizes {
    /// Sets measured.
    pub sets: u32,
    /// Articles needed in each.
    pub set: Option<u32>,
}

impl Judgement {
    /// Every comparison that was made.
    pub fn comparisons(&self) -> impl Iterator<Item = &Comparison> {
        [&self.lot_mean, &self.lot_mean_max, &self.article, &self.reading].into_iter().flatten()
    }
}

impl Decision {
    /// In words.
    pub fn words(self) -> &'static str {
        match self {
            Self::Accept => "Accept",
            Self::NotDecided => "Not decided",
            Self::Retest => "Measure again",
            Self::Reject => "Reject",
        }
    }
}

fn compare(
    value: Length,
    limit: ThicknessLimit,
    at_least: bool,
    gauge: Length,
    rounding: Rounding,
) -> Comparison {
    let keeps = |value: Length| {
        let (value, limit) = match rounding {
            Rounding::Absolute => (picometres(value), picometres(limit.thickness)),
            Rounding::ToTheLimit => (in_last_digits(value, &limit), in_last_digits(limit.thickness, &limit)),
        };
        if at_least { value >= limit } else { value <= limit }
    };
    let wrong = if at_least { -gauge } else { gauge };
    let margin = if at_least { value - limit.thickness } else { limit.thickness - value };
    Comparison { value, limit, margin, kept: keeps(value), kept_surely: keeps(value + wrong) }
}

/// A value counted in the last digit of the printed limit, a half going to the even one.
fn in_last_digits(value: Length, limit: &ThicknessLimit) -> i64 {
    let digits = value.in_unit(limit.printed.unit) * 10f64.powi(i32::from(limit.printed.decimals));
    // The residue of binary arithmetic must not decide a half.
    let clean = (digits * 1e6).round() / 1e6;
    clean.round_ties_even() as i64
}
