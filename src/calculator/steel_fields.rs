//! What the calculators of the steel room share: asking for a grade, and showing a conversion.

use std::borrow::Cow;

use super::{
    Bound, Choice, Fault, Field, FieldAbout, FieldValue, Figure, Missed, Reader, Writer, chosen_by_key,
};
use crate::quantity::{Length, Shown, Unit, unit};
use crate::steel::{Converted, Grade, Level, Measure, Properties, Worked};
use crate::working::Working;

/// Every grade as a choice, under its key.
static GRADES: [Choice; Grade::ALL.len()] = {
    let mut choices = [Choice::new("", ""); Grade::ALL.len()];
    let mut at = 0;
    while at < choices.len() {
        // In range by the loop's own condition; a const block cannot call `get`.
        #[allow(clippy::indexing_slicing)]
        {
            choices[at] = Choice::new(Grade::ALL[at].key(), Grade::ALL[at].name());
        }
        at += 1;
    }
    choices
};

chosen_by_key!(Grade, Self::of_key);
chosen_by_key!(Worked, Self::from_key);

/// What was done to a part after its heat treatment.
pub(crate) const WORKED: &[Choice] = &[
    Choice::new(Worked::No.key(), "No"),
    Choice::new(Worked::Machined.key(), "Machined or ground"),
    Choice::new(Worked::Formed.key(), "Bent or formed cold"),
];

/// The grade.
pub(super) const GRADE: Field<Grade> = Field::choice("grade", "Grade", &GRADES, Grade::Class10_9.key());

/// The grade of a load, where anybody says it, as the trade writes it.
pub(super) const STEEL: Field<AsWritten> = Field::text("grade", "Steel", "").optional();

/// A grade as the trade writes it, or by its key.
#[derive(Debug, Clone, Copy)]
pub(super) struct AsWritten(pub Grade);

impl FieldValue for AsWritten {
    fn read(text: &str, _: &FieldAbout) -> Result<Self, Fault> {
        match Grade::of_key(text) {
            Some(grade) => Ok(Self(grade)),
            None => Grade::read(text).map(Self).map_err(|why| Fault::NotUnderstood(why.to_string())),
        }
    }

    fn write(&self, _: &FieldAbout) -> Cow<'static, str> {
        self.0.name().into()
    }
}

/// The nominal diameter; each grade has its own range within.
pub(super) const DIAMETER: Field<Length> = Field::quantity(
    "diameter",
    "Nominal diameter",
    &LENGTHS,
    Bound::PositiveTo(
        Shown { number: 1.0, unit: &unit::MM, decimals: 0 },
        Shown { number: 200.0, unit: &unit::MM, decimals: 0 },
        "no standard named here covers thicker threads",
    ),
    "20 mm",
);

static LENGTHS: [&Unit; 2] = [&unit::MM, &unit::INCH];

/// A grade at its nominal diameter.
pub(super) fn read_grade(reader: &mut Reader<'_>) -> Result<(Grade, Length), Missed> {
    let (grade, diameter) = (reader.get(&GRADE), reader.get(&DIAMETER));
    Ok((grade?, diameter?))
}

/// Writes what [`read_grade`] reads.
pub(super) fn write_grade(grade: Grade, diameter: Length, writer: &mut Writer) {
    writer.put(&GRADE, grade);
    writer.put(&DIAMETER, diameter);
}

/// The symbol of a measure in a formula.
fn symbol(level: Level) -> &'static str {
    match Measure::of(level) {
        Measure::Tensile => "Rm",
        Measure::Scale(scale) => scale.unit().symbol,
    }
}

/// A conversion as a step: read from a row, or interpolated between two.
pub(super) fn conversion(working: &mut Working, converted: &Converted, of: &'static str) {
    let Converted { from, to, below, above, source } = *converted;
    let meaning = format!("{of} {} in {}", from.show(), to.show().unit.symbol);
    let result = precise(to, to.number());
    if below == above {
        working.table("", symbol(to), result, source).said(meaning).given("x", precise(from, from.number()));
        return;
    }
    working
        .step("", symbol(to), "y1 + (y2 − y1) · (x − x1) / (x2 − x1)", result, source)
        .said(meaning)
        .given("x", precise(from, from.number()))
        .published("x1", precise(from, below.0), source)
        .published("x2", precise(from, above.0), source)
        .published("y1", precise(to, below.1), source)
        .published("y2", precise(to, above.1), source);
}

/// A number in the unit of a level, with one decimal more than a table prints.
fn precise(level: Level, number: f64) -> Shown {
    Shown { number, unit: level.show().unit, decimals: 1 }
}

/// What the grade's standard prints, as figures.
pub(super) fn properties(properties: &Properties) -> Vec<Figure> {
    let mut figures = Vec::new();
    for limits in properties.printed() {
        let name = "Hardness by the standard";
        let figure = match (limits.min, limits.max) {
            (Some(min), Some(max)) => Figure::range("", name, Properties::show(min), Properties::show(max)),
            (None, Some(max)) => Figure::one("", "Greatest hardness by the standard", Properties::show(max)),
            (Some(min), None) => Figure::one("", "Least hardness by the standard", Properties::show(min)),
            (None, None) => continue,
        };
        figures.push(figure.source(limits.source));
    }
    if let Ok(tensile) = properties.tensile_min() {
        let unit = if properties.sizes().inch { &unit::KSI } else { &unit::MPA };
        figures.push(
            Figure::one(
                "Rm",
                "Least tensile strength",
                crate::quantity::Quantity::show(tensile.value, unit, 0),
            )
            .source(tensile.source),
        );
    }
    figures
}
