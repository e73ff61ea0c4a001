//! Lot check: accept, reject or measure again, from the readings of a gauge.

mod classes;
mod examples;
mod fields;
mod finding;
mod named;
mod picture;
mod report;
mod sections;
mod working;

use super::{About, Calculator, Fault, Missed, Problem, Reader, Report, Writer};
use crate::coat::CoatClass;
use crate::lot::inspection::{Method, Record};
use crate::lot::plan::{Risk, risk};
use crate::lot::sample::{self, Sample};
use crate::lot::{
    AcceptanceRule, Comma, Decision, Evidence, Hangs, HangsOn, Judgement, NoBound, OffScale, Outlier,
    Readings, ReadingsRule, Rounding, Sizes, Stage, Statistics, Terms, confidence_of, hangs, judge_sets,
    off_scale, outliers,
};
use crate::quantity::{Length, PlainNumber};
use crate::table::Refusal;

/// The calculator.
#[derive(Debug)]
pub struct LotCheck;

/// What it needs.
#[derive(Debug, Clone, PartialEq)]
pub struct Input {
    /// The standard with the limits of the class.
    pub rule: AcceptanceRule,
    /// The class; none for own limits.
    pub class: Option<&'static CoatClass>,
    /// Pieces in the lot.
    pub lot: u32,
    /// Articles agreed with the purchaser, or of a plan, instead of the standard's table.
    pub agreed: Option<u32>,
    /// Articles that the plan lets miss; none entered for none.
    pub allowed: Option<u32>,
    /// The readings.
    pub readings: Readings,
    /// How they were to be read, beside what their text shows.
    pub told: Told,
    /// The gauge's uncertainty, if known.
    pub gauge: Option<Length>,
    /// Which sample it is.
    pub stage: Stage,
    /// How values are compared with their limits.
    pub rounding: Rounding,
    /// Confidence of the statement on the lot's mean.
    pub confidence: PlainNumber,
    /// What was inspected beside the thickness.
    pub record: Record,
}

/// What the user said of the text of the readings.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Told {
    /// Readings on each article, to count them off.
    pub per_article: Option<u32>,
    /// What a comma between digits is.
    pub comma: Comma,
    /// The columns with readings, from 1.
    pub columns: Option<Vec<usize>>,
}

/// What it finds.
#[derive(Debug, Clone)]
pub struct Outcome {
    /// Articles wanted, or which document says.
    pub sample: Result<Sample, Refusal>,
    /// Whether every piece of the lot was measured.
    pub whole_lot: bool,
    /// All the readings, condensed.
    pub statistics: Statistics,
    /// The judgement on the thickness; where several sets are judged, on the worst of them.
    pub judgement: Judgement,
    /// What the articles say of the lot's mean.
    pub evidence: Result<Evidence, NoBound>,
    /// The confidence with which the lot's mean reaches its limit.
    pub reached: Option<PlainNumber>,
    /// Readings far off their articles.
    pub outliers: Vec<Outlier>,
    /// Readings out of all proportion to their limit.
    pub off_scale: Option<OffScale>,
    /// What the outcome hangs on, if readings that are in doubt decide it.
    pub hangs: Option<Hangs>,
    /// What a plan that was entered lets through.
    pub risk: Option<Risk>,
}

impl Calculator for LotCheck {
    const ABOUT: About = About {
        id: "lot",
        title: "Lot check",
        answers: "Accepts or rejects a delivered lot from the readings of a gauge, by the rule of its standard.",
        fields: &fields::FIELDS,
        examples: &examples::EXAMPLES,
    };
    type Input = Input;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
        fields::read(reader)
    }

    fn write(input: &Input, writer: &mut Writer) {
        fields::write(input, writer);
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let problem = |fault| fields::READINGS.problem(fault);
        let sample = input.sample();
        let measured = input.readings.article_count();
        let whole_lot = usize::try_from(input.lot).is_ok_and(|lot| measured >= lot);
        let sizes = Sizes {
            sets: sample.as_ref().map_or(1, |sample| sample.sets),
            // Nobody can want more articles than there are.
            set: sample.as_ref().ok().map(|sample| sample.set).or(whole_lot.then_some(input.lot)),
        };
        let statistics = Statistics::of(input.readings.articles()).ok_or_else(|| problem(Fault::Missing))?;
        let terms = Terms {
            rule: &input.rule,
            stage: input.stage,
            sizes,
            allowed: input.allowed.unwrap_or(0),
            readings: input.readings_rule(),
            gauge: input.gauge.unwrap_or(Length::from_um(0.0)),
            rounding: input.rounding,
        };
        let mut judgement = judge_sets(&input.readings, &terms).ok_or_else(|| {
            problem(Fault::Conflict(format!(
                "the retest measures {} sets of the same size, one after the other, and {} cannot be cut into them; \
                 add what is missing",
                sizes.sets,
                named::articles(u32::try_from(measured).unwrap_or(u32::MAX))
            )))
        })?;
        // In the column that the lot mean is compared in.
        let measure = input.readings.measure;
        let least = input.rule.limits.lot_mean.map(|limit| measure.thickness(measure.column(&limit)));
        let outliers = outliers(&input.readings);
        let off_scale = off_scale(&statistics, &input.rule.limits);
        let with = judgement.decision;
        // A coat that no process gives is accepted by nobody before it was looked at twice.
        let in_doubt = with == Decision::Accept && off_scale.is_some_and(|off| off.above);
        let hangs = hangs(&input.readings, &outliers, with, &terms).or_else(|| {
            in_doubt.then_some(Hangs { on: HangsOn::Scale, with, without: Decision::NotDecided })
        });
        if hangs.is_some() {
            judgement.decision = Decision::NotDecided;
        }
        Ok(Outcome {
            sample,
            whole_lot,
            statistics,
            judgement,
            evidence: Evidence::of(&statistics, input.lot, input.confidence),
            reached: least.and_then(|least| confidence_of(&statistics, input.lot, least)),
            outliers,
            off_scale,
            hangs,
            risk: input.agreed.and_then(|articles| risk(articles, input.allowed.unwrap_or(0))),
        })
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        report::of(input, outcome)
    }
}

impl Input {
    /// The sample wanted: as agreed, else by the standard's table.
    fn sample(&self) -> Result<Sample, Refusal> {
        match self.agreed {
            Some(agreed) => Ok(sample::agreed(self.rule.standard, agreed, self.lot, self.stage)),
            None => sample::size(self.rule.standard, self.lot, self.stage),
        }
    }

    /// Whether this is a retest under a document whose rule for one is not known here.
    fn retest_unknown(&self) -> bool {
        self.stage.is_unknown(self.rule.retest)
    }

    /// How many readings make an article; a mass is that of the whole article.
    fn readings_rule(&self) -> Option<ReadingsRule> {
        let by_gauge = !self.readings.measure.is_mass() && self.record.method == Method::Magnetic;
        self.rule.standard.readings_per_article().filter(|_| by_gauge)
    }
}
