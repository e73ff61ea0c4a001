//! Lot check: accept, reject or measure again, from the readings of a gauge.

mod fields;
mod picture;
mod report;
mod sections;
mod working;

use super::{About, Calculator, Example, Fault, Missed, Problem, Reader, Report};
use crate::coat::{CoatClass, ThicknessLimit, factor};
use crate::lot::inspection::{Characteristic, Method, Record, Result as Found};
use crate::lot::plan::{Risk, risk};
use crate::lot::sample::{self, Sample};
use crate::lot::{
    AcceptanceLimits, AcceptanceRule, Comma, Evidence, Judgement, NoBound, Outlier, Reading, Readings,
    Rounding, Sizes, Stage, Standard, Statistics, Terms, chosen_columns, confidence_of, judge_sets, outliers,
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
    /// Articles agreed with the purchaser, or of a plan, instead of the standard's table.
    pub agreed: Option<u32>,
    /// Articles that the plan lets miss.
    pub allowed: u32,
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
    /// What was inspected beside the thickness.
    pub record: Record,
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
    /// What a plan that was entered lets through.
    pub risk: Option<Risk>,
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
                pairs: &[(
                    "readings",
                    "56 58 54 61 55\n52 57 59 55 60\n63 58 54 56 57\n49 55 58 60 53\n57 62 59 54 58",
                )],
            },
            Example {
                title: "A bare pass that the gauge cannot decide",
                pairs: &[
                    ("standard", "iso10684"),
                    ("agreed", "5"),
                    ("readings", "50,4; 49,8; 51,2; 50,9; 50,2"),
                    ("gauge", "1 µm"),
                ],
            },
            Example {
                title: "Mechanical zinc of class 55 in mil, one thin place",
                pairs: &[
                    ("standard", "b695"),
                    ("agreed", "3"),
                    ("readings", "2.3 2.2\n2.4 2.0\n2.3 2.5 mil"),
                ],
            },
            Example {
                title: "Spun bolts by ISO 1461 that fall short in the first sample",
                pairs: &[("standard", "iso1461"), ("lot", "300"), ("readings", "47 51; 46 49; 52 48")],
            },
            Example {
                title: "What a gauge wrote out, with numbers, dates and a summary",
                pairs: &[
                    ("lot", "400"),
                    (
                        "readings",
                        "Operator;R. Quill\nNo;Date;µm;µm;µm;µm;µm\n101;2025-03-04;55;57;54;58;56\n\
                         102;2025-03-04;53;56;57;55;54\n103;2025-03-04;58;54;56;57;60\nMean;;55;56;56;57;57",
                    ),
                    ("who", "R. Quill"),
                    ("appearance", "accept"),
                    ("adhesion", "accept"),
                ],
            },
            Example {
                title: "A production lot by ASTM F2329, measured in inches, size agreed",
                pairs: &[
                    ("standard", "f2329-lot"),
                    ("agreed", "3"),
                    (
                        "readings",
                        "0.0021 0.0022 0.0021 0.0020 0.0022\n0.0020 0.0023 0.0021 0.0021 0.0020\n\
                         0.0022 0.0021 0.0020 0.0022 0.0021 in",
                    ),
                    ("rounding", "limit"),
                ],
            },
            Example {
                title: "Electroplate by ISO 4042 that came out too thick",
                pairs: &[("standard", "iso4042"), ("agreed", "4"), ("readings", "11,4; 10,9; 12,1; 10,2")],
            },
            Example {
                title: "Stripped and weighed, by ISO 1461",
                pairs: &[
                    ("standard", "iso1461"),
                    ("lot", "200"),
                    ("method", "strip"),
                    ("readings", "372; 401; 366 g/m²"),
                ],
            },
        ],
    };
    type Input = Input;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
        reader.by_name(read)
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let problem = |fault| Problem::new("readings", "Readings", fault);
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
            allowed: input.allowed,
            readings: input.readings_rule(),
            gauge: input.gauge.unwrap_or(Length::from_um(0.0)),
            rounding: input.rounding,
        };
        let judgement = judge_sets(&input.readings, &terms).ok_or_else(|| {
            problem(Fault::Conflict(format!(
                "the retest measures {} sets of the same size, one after the other, and {measured} articles cannot \
                 be cut into them; add what is missing",
                sizes.sets
            )))
        })?;
        let limit = input.rule.limits.lot_mean;
        Ok(Outcome {
            sample,
            whole_lot,
            statistics,
            judgement,
            evidence: Evidence::of(&statistics, input.lot, input.confidence),
            reached: limit.and_then(|limit| confidence_of(&statistics, input.lot, limit.thickness)),
            outliers: outliers(&input.readings).collect(),
            risk: input.agreed.and_then(|articles| risk(articles, input.allowed)),
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

    /// How many readings make an article; a mass is that of the whole article.
    fn readings_rule(&self) -> Option<crate::lot::ReadingsRule> {
        let by_gauge = !self.readings.measure.is_mass() && self.record.method == Method::Magnetic;
        self.rule.standard.readings_per_article().filter(|_| by_gauge)
    }
}

fn read(reader: &mut Reader<'_>) -> Option<Input> {
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
    let allowed = reader.count("allowed");
    let per_article = reader.count("per_article");
    let comma = reader.choice("comma", comma_from_key);
    let columns = reader.parsed("columns", chosen_columns);
    let gauge = reader.quantity("gauge");
    let stage = reader.choice("stage", stage_from_key);
    let rounding = reader.choice("rounding", rounding_from_key);
    let confidence = reader.quantity("confidence");
    let record = read_record(reader);
    let own_fields = ["own_mean", "own_article", "own_reading", "own_greatest"];
    if standard == Some(Standard::Own) && own_fields.iter().all(|name| reader.is_empty(name)) {
        reader.problem("own_mean", Fault::Conflict("give at least one limit to check against".to_owned()));
    }
    if let Some((allowed, agreed)) = allowed.zip(agreed).filter(|(allowed, agreed)| allowed >= agreed) {
        let text = format!("of {agreed} articles fewer than {agreed} can be let miss, not {allowed}");
        reader.problem("allowed", Fault::Conflict(text));
    }
    if allowed.is_some_and(|allowed| allowed > 0) && agreed.is_none() {
        let text = "enter the number of articles of the plan as well".to_owned();
        reader.problem("agreed", Fault::Conflict(text));
    }
    let class = match standard? {
        Standard::Own => None,
        Standard::Iso10684 => table::iso_10684::CLASSES.first(),
        _ => class.into_iter().flatten().next(),
    };
    // Nothing is said of readings whose way of being read is itself in doubt.
    let told = (per_article.is_some() || reader.is_empty("per_article"))
        && (columns.is_some() || reader.is_empty("columns"));
    let written = reader.readings("readings").filter(|_| told).zip(comma);
    let readings = written.and_then(|((text, units), comma)| {
        let how = Reading { units, comma, columns: columns.as_deref() };
        // A mass becomes a thickness by the factor of the class; by the heaviest where it is a range.
        let factor = class.map_or(&factor::ISO_1461, factor::of_class).max;
        match Readings::read(text, &how, factor, per_article) {
            Ok(readings) => Some(readings),
            Err(problem) => {
                reader.problem("readings", Fault::NotUnderstood(problem.to_string()));
                None
            }
        }
    });
    let rule = match class {
        Some(class) => AcceptanceRule::of(standard?, class),
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
        allowed: allowed.unwrap_or(0),
        readings,
        gauge,
        stage: stage?,
        rounding: rounding?,
        confidence: confidence?,
        record: record?,
    })
}

fn read_record(reader: &mut Reader<'_>) -> Option<Record> {
    let results = Characteristic::ALL.map(|one| (one, reader.choice(fields::name_of(one), found_from_key)));
    let method = reader.choice("method", method_from_key);
    let mut text = |name| reader.parsed(name, |text| Ok::<_, String>(text.to_owned())).unwrap_or_default();
    let (who, when, gauge, shims) = (text("who"), text("when"), text("gauge_name"), text("shims"));
    let [a, b, c, d] = results.map(|(one, result)| Some((one, result?)));
    Some(Record { results: [a?, b?, c?, d?], method: method?, who, when, gauge, shims })
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
        printed_inch: None,
        mass: None,
        mass_oz: None,
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

fn found_from_key(key: &str) -> Option<Found> {
    match key {
        "accept" => Some(Found::Accept),
        "reject" => Some(Found::Reject),
        "open" => Some(Found::NotDone),
        _ => None,
    }
}

fn method_from_key(key: &str) -> Option<Method> {
    match key {
        "magnetic" => Some(Method::Magnetic),
        "strip" => Some(Method::StripAndWeigh),
        "xray" => Some(Method::XRay),
        "section" => Some(Method::Section),
        _ => None,
    }
}
