//! Lot check: accept, reject or measure again, from the readings of a gauge.

mod fields;
mod picture;
mod report;
mod working;

use super::{About, Calculator, Example, Fault, Missed, Problem, Reader, Report};
use crate::coat::{CoatClass, ThicknessLimit};
use crate::lot::sample::{self, Sample};
use crate::lot::{
    AcceptanceLimits, AcceptanceRule, Comma, Evidence, Judgement, Readings, Rounding, Sizes, Stage, Standard,
    Statistics, confidence_of, judge_sets,
};
use crate::quantity::{Length, PlainNumber, Quantity, Shown};
use crate::source::Basis;
use crate::table::{self, Refusal};

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
    /// Articles agreed with the purchaser, instead of the standard's table.
    pub agreed: Option<u32>,
    /// The readings.
    pub readings: Readings,
    /// The gauge's uncertainty, if known.
    pub gauge: Option<Length>,
    /// Which sample it is.
    pub stage: Stage,
    /// How values are compared with their limits.
    pub rounding: Rounding,
    /// Confidence of the statement on the lot's mean.
    pub confidence: PlainNumber,
}

/// What it finds.
#[derive(Debug, Clone)]
pub struct Outcome {
    /// Articles the standard wants, or which document says.
    pub sample: Result<Sample, Refusal>,
    /// All the readings, condensed.
    pub statistics: Statistics,
    /// The judgement; where several sets are judged, on the worst of them.
    pub judgement: Judgement,
    /// What the articles say of the lot's mean.
    pub evidence: Result<Evidence, Refusal>,
    /// The confidence with which the lot's mean reaches its limit.
    pub reached: Option<PlainNumber>,
}

impl Calculator for LotCheck {
    const ABOUT: About = About {
        id: "lot",
        title: "Lot check",
        answers: "Accepts or rejects a delivered lot from the readings of a gauge, by the rule of its standard.",
        fields: &fields::FIELDS,
        examples: &[
            Example {
                title: "Hot-dip bolts of 1/2 in by ASTM A153, five readings on five bolts",
                pairs: &[],
            },
            Example {
                title: "A bare pass that the gauge cannot decide",
                pairs: &[
                    ("standard", "iso10684"),
                    ("readings", "50,4; 49,8; 51,2; 50,9; 50,2"),
                    ("gauge", "1 µm"),
                ],
            },
            Example {
                title: "Mechanical zinc of class 55 in mil, one thin place",
                pairs: &[("standard", "b695"), ("readings", "2.3 2.2\n2.4 2.0\n2.3 2.5 mil")],
            },
            Example {
                title: "Spun bolts by ISO 1461 that fall short in the first sample",
                pairs: &[("standard", "iso1461"), ("lot", "300"), ("readings", "47 51; 46 49; 52 48")],
            },
            Example {
                title: "A production lot by ASTM F2329, measured in inches",
                pairs: &[
                    ("standard", "f2329-lot"),
                    ("readings", "0.0021 0.0022\n0.0020 0.0023\n0.0022 0.0021 in"),
                    ("rounding", "limit"),
                ],
            },
            Example {
                title: "Electroplate by ISO 4042 that came out too thick",
                pairs: &[("standard", "iso4042"), ("readings", "11,4; 10,9; 12,1; 10,2")],
            },
        ],
    };
    type Input = Input;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
        reader.by_name(|reader| {
        let standard = reader.choice("standard", Standard::from_key);
        let class = [
            reader.choice("a153", |key| by_key(table::astm_a153::CLASSES, key)),
            reader.choice("f2329", |key| by_key(table::astm_f2329::CLASSES, key)),
            reader.choice("iso1461", |key| by_key(table::iso_1461::CLASSES, key)),
            reader.choice("b695", |key| by_key(table::astm_b695::CLASSES, key)),
            reader.choice("iso4042", |key| by_key(table::iso_4042::CLASSES, key)),
        ];
        let own = AcceptanceLimits {
            lot_mean: own_limit(reader, "own_mean"),
            article: own_limit(reader, "own_article"),
            reading: own_limit(reader, "own_reading"),
            lot_mean_max: own_limit(reader, "own_greatest"),
        };
        let lot = reader.count("lot");
        let agreed = reader.count("agreed");
        let per_article = reader.count("per_article");
        let comma = reader.choice("comma", comma_from_key);
        let gauge = reader.quantity("gauge");
        let stage = reader.choice("stage", stage_from_key);
        let rounding = reader.choice("rounding", rounding_from_key);
        let confidence = reader.quantity("confidence");
        // Nothing is said of readings whose way of being read is itself in doubt.
        let counted = per_article.is_some() || reader.is_empty("per_article");
        let readings =
            reader.readings("readings").filter(|_| counted).zip(comma).and_then(|((text, units), comma)| {
                match Readings::read(text, units, comma, per_article) {
                    Ok(readings) => Some(readings),
                    Err(problem) => {
                        reader.problem("readings", Fault::NotUnderstood(problem.to_string()));
                        None
                    }
                }
            });
        let standard = standard?;
        let own_fields = ["own_mean", "own_article", "own_reading", "own_greatest"];
        if standard == Standard::Own && own_fields.iter().all(|name| reader.is_empty(name)) {
            reader
                .problem("own_mean", Fault::Conflict("give at least one limit to check against".to_owned()));
        }
        let class = match standard {
            Standard::Own => None,
            Standard::Iso10684 => table::iso_10684::CLASSES.first(),
            _ => class.into_iter().flatten().next(),
        };
        let rule = match class {
            Some(class) => AcceptanceRule::of(standard, class),
            None => AcceptanceRule::own(own),
        };
        let (readings, lot) = (readings?, lot?);
        if usize::try_from(lot).is_ok_and(|lot| readings.article_count() > lot) {
            let articles = readings.article_count();
            reader.problem(
                "lot",
                Fault::Conflict(format!(
                    "{articles} articles were measured from a lot of {lot}; correct the lot, or write the readings \
                     of one article on one line"
                )),
            );
        }
        Some(Input {
            rule,
            class,
            lot,
            agreed,
            readings,
            gauge,
            stage: stage?,
            rounding: rounding?,
            confidence: confidence?,
        })
        })
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let problem = |fault| Problem::new("readings", "Readings", fault);
        let sample = input.sample();
        let sizes = Sizes {
            sets: sample.as_ref().map_or(1, |sample| sample.sets),
            set: sample.as_ref().ok().map(|sample| sample.set),
        };
        let statistics = Statistics::of(input.readings.articles()).ok_or_else(|| problem(Fault::Missing))?;
        let gauge = input.gauge.unwrap_or(Length::from_um(0.0));
        let judgement = judge_sets(&input.readings, &input.rule, input.stage, sizes, gauge, input.rounding)
            .ok_or_else(|| {
                problem(Fault::Conflict(format!(
                    "the retest measures {} sets of the same size, one after the other, and {} articles cannot be \
                     cut into them; add what is missing",
                    sizes.sets,
                    input.readings.article_count()
                )))
            })?;
        let limit = input.rule.limits.lot_mean;
        Ok(Outcome {
            sample,
            statistics,
            judgement,
            evidence: Evidence::of(&statistics, input.confidence),
            reached: limit.and_then(|limit| confidence_of(&statistics, limit.thickness)),
        })
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        report::of(input, outcome)
    }
}

impl Input {
    /// The sample wanted: as agreed, else by the standard's table.
    fn sample(&self) -> Result<Sample, Refusal> {
        let by_table = sample::size(self.rule.standard, self.lot, self.stage);
        match self.agreed {
            Some(agreed) => Ok(sample::agreed(self.rule.standard, agreed, self.lot, self.stage)),
            None => by_table,
        }
    }
}

/// The class whose name, in small letters with hyphens, is the key.
fn by_key(classes: &'static [CoatClass], key: &str) -> Option<&'static CoatClass> {
    let words = |text: &str| {
        text.split(|c: char| !c.is_ascii_alphanumeric())
            .filter(|word| !word.is_empty())
            .map(str::to_ascii_lowercase)
            .collect::<Vec<_>>()
    };
    classes.iter().find(|class| words(class.name) == words(key))
}

/// A limit of the order, with the digits it was written in.
fn own_limit(reader: &mut Reader<'_>, name: &str) -> Option<ThicknessLimit> {
    let (number, unit) = reader.number_and_unit(name)?;
    let decimals = number.to_string().split_once('.').map_or(0, |(_, rest)| rest.len().min(6)) as u8;
    Some(ThicknessLimit {
        thickness: Length::of(number, unit),
        printed: Shown { number, unit, decimals },
        mass: None,
        basis: Basis::Assumed,
    })
}

fn comma_from_key(key: &str) -> Option<Comma> {
    match key {
        "decide" => Some(Comma::Decide),
        "decimal" => Some(Comma::Decimal),
        "separator" => Some(Comma::Separator),
        _ => None,
    }
}

fn stage_from_key(key: &str) -> Option<Stage> {
    match key {
        "first" => Some(Stage::First),
        "retest" => Some(Stage::Retest),
        _ => None,
    }
}

fn rounding_from_key(key: &str) -> Option<Rounding> {
    match key {
        "absolute" => Some(Rounding::Absolute),
        "limit" => Some(Rounding::ToTheLimit),
        _ => None,
    }
}
