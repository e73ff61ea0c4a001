//! Whether a lot is accepted.

use super::compare::{Comparison, Rounding, compare};
use super::{AcceptanceRule, Measure, Outlier, Readings, ReadingsRule, Retest, Statistics, femtometres};
use crate::coat::ThicknessLimit;
use crate::quantity::Length;

/// What becomes of the lot.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Decision {
    /// Every limit is kept, beyond the uncertainty of the gauge, on as much as was to be measured.
    Accept,
    /// Too little was measured, or a limit is kept but barely.
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

impl Stage {
    /// Whether it is a second go that nobody here knows the document's rule for.
    pub fn is_unknown(self, retest: Retest) -> bool {
        self == Self::Retest && retest == Retest::NoneKnown
    }
}

/// How a lot is judged.
#[derive(Debug, Clone, Copy)]
pub struct Terms<'a> {
    /// The limits.
    pub rule: &'a AcceptanceRule,
    /// Which sample it is.
    pub stage: Stage,
    /// How many sets of how many articles.
    pub sizes: Sizes,
    /// Articles that may miss a limit of their own: the acceptance number of a plan.
    pub allowed: u32,
    /// Fewest readings that make the thickness of one article, where a rule is known.
    pub readings: Option<ReadingsRule>,
    /// The gauge's uncertainty.
    pub gauge: Length,
    /// How values are compared.
    pub rounding: Rounding,
}

/// How many sets, and the articles that each needs, where that is known.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Sizes {
    /// Sets measured.
    pub sets: u32,
    /// Articles needed in each.
    pub set: Option<u32>,
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
    /// Articles that miss a limit of their own, measured in full.
    pub nonconforming: u32,
    /// Articles still to measure; none where nobody knows how many are wanted.
    pub missing: Option<u32>,
    /// Articles with too few readings.
    pub half_measured: u32,
}

/// Judges a set of articles.
///
/// A gauge's uncertainty turns a bare pass into "not decided"; a value on the bad side of its limit
/// fails whatever the gauge, as no standard here gives the benefit of the doubt. A mean is judged
/// only on a whole sample, and an article only on all the readings that make its thickness.
pub fn judge<'a>(
    articles: impl Iterator<Item = &'a [Length]> + Clone,
    measure: Measure,
    terms: &Terms<'_>,
) -> Option<Judgement> {
    let statistics = Statistics::of(articles.clone())?;
    let compared = |value, limit: Option<ThicknessLimit>, at_least| {
        limit.map(|limit| compare(value, limit, at_least, measure, terms.gauge, terms.rounding))
    };
    let limits = &terms.rule.limits;
    let measured = u32::try_from(statistics.articles).unwrap_or(u32::MAX);
    // One article against its own limits: by its mean, and by its least reading.
    let own = |readings: &'a [Length]| {
        let one = Statistics::of(std::iter::once(readings))?;
        let mean = compared(one.mean, limits.article, true);
        Some((mean, compared(one.min_reading, limits.reading, true)))
    };
    let in_full = |readings: &[Length]| {
        terms.readings.is_none_or(|rule| rule.in_full(readings.len(), statistics.articles))
    };
    let mut judgement = Judgement {
        decision: Decision::NotDecided,
        lot_mean: compared(statistics.mean, limits.lot_mean, true),
        lot_mean_max: compared(statistics.mean, limits.lot_mean_max, false),
        article: compared(statistics.min_article, limits.article, true),
        reading: compared(statistics.min_reading, limits.reading, true),
        nonconforming: 0,
        missing: terms.sizes.set.map(|needed| needed.saturating_sub(measured)),
        half_measured: 0,
    };
    let mut doubtful = 0;
    for readings in articles.filter(|readings| !readings.is_empty()) {
        let (mean, reading) = own(readings).unwrap_or_default();
        let full = in_full(readings);
        // A single low reading is enough; the mean of an article may rise with those still to come.
        let misses = reading.is_some_and(|one| !one.kept) || (full && mean.is_some_and(|one| !one.kept));
        judgement.half_measured += u32::from(!full);
        judgement.nonconforming += u32::from(misses);
        doubtful += u32::from([mean, reading].into_iter().flatten().any(|one| !one.kept_surely));
    }
    let means = || [judgement.lot_mean, judgement.lot_mean_max].into_iter().flatten();
    let complete = judgement.missing == Some(0) && judgement.half_measured == 0;
    let missed = means().any(|mean| !mean.kept);
    let sure = means().all(|mean| mean.kept_surely) && doubtful <= terms.allowed;
    judgement.decision = if judgement.nonconforming > terms.allowed || (missed && complete) {
        if terms.stage == Stage::First && terms.rule.retest != Retest::NoneKnown {
            Decision::Retest
        } else {
            Decision::Reject
        }
    } else if complete && !missed && sure && !terms.stage.is_unknown(terms.rule.retest) {
        Decision::Accept
    } else {
        Decision::NotDecided
    };
    Some(judgement)
}

/// Judges so many sets of the same size, in the order measured; each has to conform, and the worst
/// of them speaks. None where the articles cannot be cut into such sets.
pub fn judge_sets(readings: &Readings, terms: &Terms<'_>) -> Option<Judgement> {
    let judgements = readings.sets(terms.sizes.sets)?.filter_map(|set| judge(set, readings.measure, terms));
    // Of equally bad sets the one with the least margin speaks.
    let narrowest = |judgement: &Judgement| {
        judgement.comparisons().map(|comparison| femtometres(comparison.margin)).min().unwrap_or(0)
    };
    judgements.max_by_key(|judgement| (judgement.decision, -narrowest(judgement)))
}

/// What the outcome hangs on, beside the articles themselves.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HangsOn {
    /// Readings that were pointed out as far off.
    Outliers,
    /// Lines that repeat others.
    Repeats,
    /// Readings out of all proportion to their limit.
    Scale,
}

/// An outcome that hangs on readings that are in doubt.
#[derive(Debug, Clone, Copy)]
pub struct Hangs {
    /// On which.
    pub on: HangsOn,
    /// What the decision would be with all readings.
    pub with: Decision,
    /// What it would be without those in doubt.
    pub without: Decision,
}

/// What the decision hangs on: judged again without the readings that are in doubt, all of them and each
/// by itself.
///
/// An article that is far off the others as a whole may lift a mean, but does not speak for itself: its
/// own miss stands.
pub fn hangs(readings: &Readings, outliers: &[Outlier], with: Decision, terms: &Terms<'_>) -> Option<Hangs> {
    let decided = |readings: &Readings| judge_sets(readings, terms).map(|judgement| judgement.decision);
    let differs = |on, without: Option<Decision>| {
        without.filter(|&without| without != with).map(|without| Hangs { on, with, without })
    };
    // Where sets cannot be cut any more, articles are missing.
    let repeats = readings
        .without_repeats()
        .and_then(|rest| differs(HangsOn::Repeats, decided(&rest).or(Some(Decision::NotDecided))));
    let counts = |outlier: &&[Outlier]| {
        with == Decision::Accept || outlier.iter().all(|outlier| outlier.reading.is_some())
    };
    repeats.or_else(|| {
        let each = outliers.iter().map(std::slice::from_ref);
        std::iter::once(outliers)
            .chain(each)
            .filter(|outliers| !outliers.is_empty())
            .filter(counts)
            .find_map(|outliers| differs(HangsOn::Outliers, decided(&readings.without(outliers))))
    })
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
