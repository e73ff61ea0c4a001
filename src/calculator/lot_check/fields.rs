//! What the lot check asks, and how it is read and written.

use std::borrow::Cow;

use super::classes::{self, A153, B695, F2329, Iso1461, Iso4042};
use super::named::articles;
use super::{Input, Told};
use crate::calculator::{
    Bound, Fault, Field, FieldAbout, FieldValue, Missed, RawText, Reader, Writer, choices,
};
use crate::coat::{CoatClass, ThicknessLimit, factor};
use crate::lot::inspection::{Characteristic, Method, Record, Result as Found};
use crate::lot::{
    AcceptanceLimits, AcceptanceRule, Comma, Reading, Readings, Rounding, Stage, Standard, chosen_columns,
};
use crate::quantity::{Length, PlainNumber, Quantity, Shown, Unit, unit};
use crate::source::Basis;
use crate::table;

/// What is asked.
pub(super) static FIELDS: [FieldAbout; 30] = [
    STANDARD.about,
    A153_CLASS.about,
    F2329_SIZE.about,
    ISO_1461_ARTICLES.about,
    B695_CLASS.about,
    ISO_4042_NOMINAL.about,
    OWN_MEAN.about,
    OWN_ARTICLE.about,
    OWN_READING.about,
    OWN_GREATEST.about,
    LOT.about,
    AGREED.about,
    ALLOWED.about,
    READINGS.about,
    PER_ARTICLE.about,
    COMMA.about,
    COLUMNS.about,
    GAUGE.about,
    STAGE.about,
    ROUNDING.about,
    CONFIDENCE.about,
    METHOD.about,
    APPEARANCE.about,
    ADHESION.about,
    THREAD.about,
    WASHERS.about,
    WHO.about,
    WHEN.about,
    GAUGE_NAME.about,
    SHIMS.about,
];

choices! {
    const STANDARDS: Standard {
        A153: "a153", "ASTM A153, hot-dip hardware";
        F2329Batch: "f2329-batch", "ASTM F2329, hot-dip fasteners, one batch";
        F2329Lot: "f2329-lot", "ASTM F2329, hot-dip fasteners, production lot";
        Iso10684: "iso10684", "ISO 10684, hot-dip fasteners M8 to M64";
        Iso1461: "iso1461", "ISO 1461, hot-dip articles";
        B695: "b695", "ASTM B695, mechanical zinc";
        Iso4042: "iso4042", "ISO 4042, electroplated fasteners";
        Own: "own", "Own limits";
    }
}
choices! {
    const COMMAS: Comma {
        Decide: "decide", "As the text shows";
        Decimal: "decimal", "A decimal mark";
        Separator: "separator", "Between readings";
    }
}
choices! {
    const STAGES: Stage {
        First: "first", "The first sample";
        Retest: "retest", "The retest after a failed first sample";
    }
}
choices! {
    const ROUNDINGS: Rounding {
        Absolute: "absolute", "As they are";
        ToTheLimit: "limit", "Rounded to the digits of the limit (ASTM E29)";
    }
}
choices! {
    const FOUND: Found {
        NotDone: "open", "Not done";
        Accept: "accept", "Accept";
        Reject: "reject", "Reject";
    }
}
choices! {
    const METHODS: Method {
        Magnetic: "magnetic", "Magnetic gauge";
        StripAndWeigh: "strip", "Stripped and weighed";
        XRay: "xray", "X-ray fluorescence";
        Section: "section", "Section under the microscope";
    }
}

const STANDARD: Field<Standard> = Field::choice("standard", "Checked by", STANDARDS, "a153");
const A153_CLASS: Field<A153> =
    Field::choice("a153", "Class", &classes::OF_A153, "class-c").when(&STANDARD, &["a153"]);
const F2329_SIZE: Field<F2329> = Field::choice("f2329", "Size", &classes::OF_F2329, "over-3-8-in")
    .when(&STANDARD, &["f2329-batch", "f2329-lot"]);
const ISO_1461_ARTICLES: Field<Iso1461> =
    Field::choice("iso1461", "Articles", &classes::OF_ISO_1461, "threads-over-6-mm")
        .when(&STANDARD, &["iso1461"]);
const B695_CLASS: Field<B695> =
    Field::choice("b695", "Class", &classes::OF_B695, "class-55").when(&STANDARD, &["b695"]);
const ISO_4042_NOMINAL: Field<Iso4042> =
    Field::choice("iso4042", "Nominal thickness", &classes::OF_ISO_4042, "nominal-8")
        .when(&STANDARD, &["iso4042"]);

const OWN_MEAN: Field<OwnLimit> = own("own_mean", "Least lot mean", "");
const OWN_ARTICLE: Field<OwnLimit> = own("own_article", "Least article mean", "");
const OWN_READING: Field<OwnLimit> = own("own_reading", "Least single reading", "");
const OWN_GREATEST: Field<OwnLimit> = own("own_greatest", "Greatest lot mean", "");

const LOT: Field<u32> = Field::count("lot", "Pieces in the lot", 1, 10_000_000, "800");
const AGREED: Field<u32> = Field::count("agreed", "Articles agreed to be measured", 1, 10_000, "")
    .optional()
    .hint("Of the order or of a sampling plan; needed where the number of the standard is not known here.");
const ALLOWED: Field<u32> = Field::count("allowed", "Articles that may miss", 0, 1000, "")
    .optional()
    .hint("The acceptance number of the plan; empty for none.");
pub(super) const READINGS: Field<RawText> = Field::readings("readings", "Readings", &UNITS, "")
    .counted_by(&PER_ARTICLE)
    .hint(
        "One article on a line, or articles between “;”; readings of an article between spaces. A sheet may be pasted.",
    );
const PER_ARTICLE: Field<u32> = Field::count("per_article", "Readings on each article", 1, 1000, "")
    .optional()
    .hint("To count off readings written one after the other; empty where they are written by article.");
const COMMA: Field<Comma> = Field::choice("comma", "A comma between digits is", COMMAS, "decide");
const COLUMNS: Field<Columns> = Field::text("columns", "Columns with readings", "")
    .optional()
    .hint("2-6, or 2, 4: where a pasted sheet does not say so by its headings.");
const GAUGE: Field<Length> = Field::quantity(
    "gauge",
    "Uncertainty of the gauge",
    &THICKNESS,
    Bound::ZeroTo(
        Shown { number: 100.0, unit: &unit::UM, decimals: 0 },
        "a gauge that uncertain decides nothing",
    ),
    "",
)
.optional()
.hint("Half the width of its interval; a pass by less is not decided.");
const STAGE: Field<Stage> = Field::choice("stage", "These readings are", STAGES, "first");
const ROUNDING: Field<Rounding> = Field::choice("rounding", "Values are compared", ROUNDINGS, "absolute")
    .hint("Rounded only where the standard or the order calls for ASTM E29.");
const CONFIDENCE: Field<PlainNumber> = Field::quantity(
    "confidence",
    "Confidence of the statement on the lot mean",
    &PER_CENT,
    Bound::Between(
        Shown { number: 50.0, unit: &unit::PERCENT, decimals: 0 },
        Shown { number: 99.9, unit: &unit::PERCENT, decimals: 1 },
        "below one half it is no statement, and nothing is certain",
    ),
    "95 %",
);
const METHOD: Field<Method> = Field::choice("method", "The thickness was measured by", METHODS, "magnetic");
const APPEARANCE: Field<Found> = Field::choice("appearance", "Appearance", FOUND, "open");
const ADHESION: Field<Found> = Field::choice("adhesion", "Adhesion", FOUND, "open");
const THREAD: Field<Found> = Field::choice("thread_gauge", "Thread gauge", FOUND, "open");
const WASHERS: Field<Found> = Field::choice("washers", "Washers stuck together", FOUND, "open");
const WHO: Field<RawText> = Field::text("who", "Inspected by", "").optional();
const WHEN: Field<RawText> = Field::text("when", "Inspected on", "").optional();
const GAUGE_NAME: Field<RawText> =
    Field::text("gauge_name", "Gauge", "").optional().hint("Its name or number.");
const SHIMS: Field<RawText> = Field::text("shims", "Its check on shims", "")
    .optional()
    .hint("What it read on which shims, before and after.");

static UNITS: [&Unit; 6] = [&unit::UM, &unit::MIL, &unit::MM, &unit::INCH, &unit::G_M2, &unit::OZ_FT2];
static THICKNESS: [&Unit; 4] = [&unit::UM, &unit::MIL, &unit::MM, &unit::INCH];
static PER_CENT: [&Unit; 1] = [&unit::PERCENT];

const COAT: Bound = Bound::PositiveTo(
    Shown { number: 0.1, unit: &unit::UM, decimals: 1 },
    Shown { number: 1.0, unit: &unit::MM, decimals: 0 },
    "zinc coats on fasteners are far thinner; check the unit",
);

const fn own(key: &'static str, label: &'static str, default: &'static str) -> Field<OwnLimit> {
    Field::quantity(key, label, &THICKNESS, COAT, default).when(&STANDARD, &["own"]).optional()
}

/// A limit of the order, with the digits it was written in.
#[derive(Debug, Clone, Copy)]
struct OwnLimit(ThicknessLimit);

/// Columns from 1.
#[derive(Debug, Clone)]
struct Columns(Vec<usize>);

/// Reads the fields.
pub(super) fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
    let rule = reader.get(&STANDARD).and_then(|standard| read_rule(standard, reader));
    let (lot, agreed, allowed) = (reader.get(&LOT), reader.optional(&AGREED), reader.optional(&ALLOWED));
    let told = read_told(reader);
    let (gauge, stage) = (reader.optional(&GAUGE), reader.get(&STAGE));
    let (rounding, confidence) = (reader.get(&ROUNDING), reader.get(&CONFIDENCE));
    let record = read_record(reader);
    let text = reader.get(&READINGS);
    let agreed = agreed.and_then(|agreed| {
        match allowed? {
            Some(allowed) if allowed > 0 => match agreed {
                None => {
                    let text = "enter the number of articles of the plan as well".to_owned();
                    return Err(reader.wrong(&AGREED, Fault::Conflict(text)));
                }
                Some(agreed) if allowed >= agreed => {
                    let text =
                        format!("of {} fewer than {agreed} can be let miss, not {allowed}", articles(agreed));
                    return Err(reader.wrong(&ALLOWED, Fault::Conflict(text)));
                }
                Some(_) => {}
            },
            _ => {}
        }
        Ok(agreed)
    });
    // Nothing is said of readings whose way of being read is itself in doubt.
    let (rule, class) = rule?;
    let allowed = allowed.and_then(|allowed| match (allowed, rule.standard.every_article()) {
        (Some(1..), Some(source)) => {
            let text = format!("every article has to keep its limits by {source}; leave this empty");
            Err(reader.wrong(&ALLOWED, Fault::Conflict(text)))
        }
        _ => Ok(allowed),
    });
    let told = told?;
    let Told { comma, per_article, .. } = told;
    let how = Reading { units: &UNITS, comma, columns: told.columns.as_deref(), per_article };
    // A mass becomes a thickness by the factor of the class; by the heaviest where it is a range.
    let factor = class.map_or(&factor::ISO_1461, factor::of_class).max;
    let readings = Readings::read(&text?.0, &how, factor)
        .map_err(|problem| reader.wrong(&READINGS, Fault::NotUnderstood(problem.to_string())))?;
    // Another field says that the assumed unit cannot be meant.
    if !readings.unit_written && matches!(&record, Ok(record) if record.method == Method::StripAndWeigh) {
        let text = "no unit is written, and stripping and weighing gives a mass on an area; write g/m² or oz/ft² behind \
                    the readings, or µm if they were worked out"
            .to_owned();
        return Err(reader.wrong(&READINGS, Fault::NotUnderstood(text)));
    }
    if no_such_coat(&readings, &rule.limits) {
        let text = format!(
            "no unit is written, and in {} every reading would be less than a fifth of what the class asks; write the \
             unit behind the readings, for example {}",
            readings.measure.unit.symbol,
            meant(&readings)
        );
        return Err(reader.wrong(&READINGS, Fault::NotUnderstood(text)));
    }
    let lot = lot?;
    let measured = readings.article_count();
    if usize::try_from(lot).is_ok_and(|lot| measured > lot) {
        let text = format!(
            "{measured} articles were measured from a lot of {lot}; correct the lot, or write the readings of one \
             article on one line"
        );
        return Err(reader.wrong(&LOT, Fault::Conflict(text)));
    }
    Ok(Input {
        rule,
        class,
        lot,
        agreed: agreed?,
        allowed: allowed?,
        readings,
        told,
        gauge: gauge?,
        stage: stage?,
        rounding: rounding?,
        confidence: confidence?,
        record: record?,
    })
}

/// Whether readings without a unit are so far below their limits that they were hardly meant in the
/// field's first unit.
fn no_such_coat(readings: &Readings, limits: &AcceptanceLimits) -> bool {
    let limits = [limits.article, limits.reading, limits.lot_mean];
    let least = limits.into_iter().flatten().map(|limit| limit.thickness.um()).reduce(f64::min);
    let thickest = readings.values().iter().map(|reading| reading.um()).reduce(f64::max);
    !readings.unit_written && least.zip(thickest).is_some_and(|(least, thickest)| thickest < least / 5.0)
}

/// The first reading in the unit that it was more likely meant in.
fn meant(readings: &Readings) -> Shown {
    let number = readings.values().first().map_or(0.0, |reading| reading.um());
    let (unit, decimals) = if number < 0.1 { (&unit::INCH, 4) } else { (&unit::MIL, 1) };
    Shown { number, unit, decimals }
}

type Rule = (AcceptanceRule, Option<&'static CoatClass>);

fn read_rule(standard: Standard, reader: &mut Reader<'_>) -> Result<Rule, Missed> {
    let class = match standard {
        Standard::A153 => reader.get(&A153_CLASS)?.0,
        Standard::F2329Batch | Standard::F2329Lot => reader.get(&F2329_SIZE)?.0,
        Standard::Iso1461 => reader.get(&ISO_1461_ARTICLES)?.0,
        Standard::B695 => reader.get(&B695_CLASS)?.0,
        Standard::Iso4042 => reader.get(&ISO_4042_NOMINAL)?.0,
        Standard::Iso10684 => &table::iso_10684::CLASS,
        Standard::Own => {
            let (mean, article) = (reader.optional(&OWN_MEAN), reader.optional(&OWN_ARTICLE));
            let (reading, greatest) = (reader.optional(&OWN_READING), reader.optional(&OWN_GREATEST));
            let limits = AcceptanceLimits {
                lot_mean: mean?.map(|limit| limit.0),
                article: article?.map(|limit| limit.0),
                reading: reading?.map(|limit| limit.0),
                lot_mean_max: greatest?.map(|limit| limit.0),
            };
            if limits.is_empty() {
                let text = "give at least one limit to check against".to_owned();
                return Err(reader.wrong(&OWN_MEAN, Fault::Conflict(text)));
            }
            impossible(&limits, reader)?;
            return Ok((AcceptanceRule::own(limits), None));
        }
    };
    Ok((AcceptanceRule::of(standard, class), Some(class)))
}

/// Refuses limits that contradict each other: a mean of what all reaches a limit reaches it as well.
fn impossible(limits: &AcceptanceLimits, reader: &mut Reader<'_>) -> Result<(), Missed> {
    let [mean, article, reading] = [limits.lot_mean, limits.article, limits.reading];
    let pairs = [
        (&OWN_GREATEST, limits.lot_mean_max, [mean, article, reading], "below a least of"),
        (&OWN_MEAN, mean, [article, reading, None], "below the"),
        (&OWN_ARTICLE, article, [reading, None, None], "below the"),
    ];
    for (field, limit, others, below) in pairs {
        let Some(limit) = limit else { continue };
        let beyond = |other: &ThicknessLimit| other.thickness.exceeds(limit.thickness);
        if let Some(other) = others.into_iter().flatten().find(beyond) {
            let end = if below == "below the" { " that every part of it has to reach" } else { "" };
            let text = format!("{} is {below} {}{end}; correct one of the two", limit.printed, other.printed);
            return Err(reader.wrong(field, Fault::Conflict(text)));
        }
    }
    Ok(())
}

fn read_told(reader: &mut Reader<'_>) -> Result<Told, Missed> {
    let (per_article, comma) = (reader.optional(&PER_ARTICLE), reader.get(&COMMA));
    let columns = reader.optional(&COLUMNS);
    Ok(Told { per_article: per_article?, comma: comma?, columns: columns?.map(|columns| columns.0) })
}

fn read_record(reader: &mut Reader<'_>) -> Result<Record, Missed> {
    let method = reader.get(&METHOD);
    let results = [&APPEARANCE, &ADHESION, &THREAD, &WASHERS].map(|field| reader.get(field));
    let texts = [&WHO, &WHEN, &GAUGE_NAME, &SHIMS].map(|field| reader.optional(field));
    let [appearance, adhesion, thread, washers] = results;
    let [who, when, gauge, shims] = texts;
    let text = |text: Option<RawText>| text.map(|text| text.0).unwrap_or_default();
    Ok(Record {
        results: [
            (Characteristic::Appearance, appearance?),
            (Characteristic::Adhesion, adhesion?),
            (Characteristic::Thread, thread?),
            (Characteristic::Washers, washers?),
        ],
        method: method?,
        who: text(who?),
        when: text(when?),
        gauge: text(gauge?),
        shims: text(shims?),
    })
}

/// Writes the fields.
pub(super) fn write(input: &Input, writer: &mut Writer) {
    let standard = input.rule.standard;
    writer.put(&STANDARD, standard);
    match (standard, input.class) {
        (Standard::A153, Some(class)) => writer.put(&A153_CLASS, A153(class)),
        (Standard::F2329Batch | Standard::F2329Lot, Some(class)) => writer.put(&F2329_SIZE, F2329(class)),
        (Standard::Iso1461, Some(class)) => writer.put(&ISO_1461_ARTICLES, Iso1461(class)),
        (Standard::B695, Some(class)) => writer.put(&B695_CLASS, B695(class)),
        (Standard::Iso4042, Some(class)) => writer.put(&ISO_4042_NOMINAL, Iso4042(class)),
        (Standard::Own, _) => {
            let limits = &input.rule.limits;
            writer.put_optional(&OWN_MEAN, limits.lot_mean.map(OwnLimit));
            writer.put_optional(&OWN_ARTICLE, limits.article.map(OwnLimit));
            writer.put_optional(&OWN_READING, limits.reading.map(OwnLimit));
            writer.put_optional(&OWN_GREATEST, limits.lot_mean_max.map(OwnLimit));
        }
        _ => {}
    }
    writer.put(&LOT, input.lot);
    writer.put_optional(&AGREED, input.agreed);
    writer.put_optional(&ALLOWED, input.allowed);
    writer.put(&READINGS, RawText(input.readings.text.clone()));
    writer.put_optional(&PER_ARTICLE, input.told.per_article);
    writer.put(&COMMA, input.told.comma);
    writer.put_optional(&COLUMNS, input.told.columns.clone().map(Columns));
    writer.put_optional(&GAUGE, input.gauge);
    writer.put(&STAGE, input.stage);
    writer.put(&ROUNDING, input.rounding);
    writer.put(&CONFIDENCE, input.confidence);
    let record = &input.record;
    writer.put(&METHOD, record.method);
    for (field, (_, found)) in [&APPEARANCE, &ADHESION, &THREAD, &WASHERS].into_iter().zip(record.results) {
        writer.put(field, found);
    }
    for (field, text) in
        [(&WHO, &record.who), (&WHEN, &record.when), (&GAUGE_NAME, &record.gauge), (&SHIMS, &record.shims)]
    {
        writer.put(field, RawText(text.clone()));
    }
}

impl FieldValue for OwnLimit {
    fn read(text: &str, about: &FieldAbout) -> Result<Self, Fault> {
        let (number, unit) = about.measured(text)?;
        let decimals = number.to_string().split_once('.').map_or(0, |(_, rest)| rest.len().min(6)) as u8;
        Ok(Self(ThicknessLimit {
            thickness: Length::of(number, unit),
            printed: Shown { number, unit, decimals },
            printed_inch: None,
            mass: None,
            mass_oz: None,
            basis: Basis::Assumed,
        }))
    }

    fn write(&self, _: &FieldAbout) -> Cow<'static, str> {
        format!("{} {}", self.0.printed.number, self.0.printed.unit.symbol).into()
    }
}

impl FieldValue for Columns {
    fn read(text: &str, _: &FieldAbout) -> Result<Self, Fault> {
        chosen_columns(text).map(Self).map_err(|problem| Fault::NotUnderstood(problem.to_string()))
    }

    fn write(&self, _: &FieldAbout) -> Cow<'static, str> {
        self.0.iter().map(usize::to_string).collect::<Vec<_>>().join(", ").into()
    }
}
