//! Reads a draft field by field and keeps every problem it meets.

use std::fmt;

use super::{Bound, Draft, Fault, Field, Kind, Problem, Problems, When};
use crate::quantity::number::{self, Reading, Unreadable};
use crate::quantity::{Dimension, Hardness, Quantity, Scale, Shown, Unit, unit};

/// Reads fields into typed values.
///
/// Each method gives `None` where the field is not asked, is empty, or has a problem; the problem
/// is kept, so that all of them are reported at once.
#[derive(Debug)]
pub struct Reader<'a> {
    fields: &'static [Field],
    draft: &'a Draft,
    problems: Vec<Problem>,
}

impl<'a> Reader<'a> {
    /// A reader of these fields.
    pub fn new(fields: &'static [Field], draft: &'a Draft) -> Self {
        Self { fields, draft, problems: Vec::new() }
    }

    /// Ends the reading: the input, or all the problems.
    ///
    /// # Errors
    /// All the problems met.
    pub fn finish<I>(self, input: Option<I>) -> Result<I, Problems> {
        match input {
            Some(input) if self.problems.is_empty() => Ok(input),
            _ if self.problems.is_empty() => {
                let missing =
                    self.fields.iter().filter(|field| self.text(field).is_empty() && self.asked(field));
                Err(Problems::all(missing.map(|f| Problem::new(f.name, f.label, Fault::Missing)).collect()))
            }
            _ => Err(Problems::all(self.problems)),
        }
    }

    /// A quantity.
    pub fn quantity<Q: Quantity>(&mut self, name: &str) -> Option<Q> {
        self.base(name, Q::DIMENSION).map(Q::from_base)
    }

    /// The number of a quantity of this dimension, in its base unit.
    fn base(&mut self, name: &str, dimension: Dimension) -> Option<f64> {
        let (number, unit) = self.number_and_unit(name)?;
        if unit.dimension != dimension {
            let field = self.field(name)?;
            let offered =
                field.units().iter().filter(|u| u.dimension == dimension).map(|u| u.symbol).collect();
            self.fault(
                field,
                Fault::Unreadable(Unreadable::UnknownUnit { written: unit.symbol.to_owned(), offered }),
            );
            return None;
        }
        Some(number * unit.factor + unit.offset)
    }

    /// A number with whichever of the field's units was written; for fields that take quantities
    /// of more than one dimension.
    pub fn number_and_unit(&mut self, name: &str) -> Option<(f64, &'static Unit)> {
        let field = self.field(name)?;
        let Kind::Quantity { units, bounds } = field.kind else { return None };
        let text = self.filled(field)?;
        let (number, unit) = match number::read(text, units) {
            Ok(Reading { number, unit }) => (number, unit.or_else(|| units.first().copied())?),
            Err(unreadable) => {
                self.fault(field, Fault::Unreadable(unreadable));
                return None;
            }
        };
        match outside(number, unit, bounds, text) {
            Some(fault) => {
                self.fault(field, fault);
                None
            }
            None => Some((number, unit)),
        }
    }

    /// A hardness on whichever scale was written.
    pub fn hardness(&mut self, name: &str) -> Option<Hardness> {
        let (number, unit) = self.number_and_unit(name)?;
        Some(Hardness { scale: Scale::of_unit(unit)?, number })
    }

    /// A whole number.
    pub fn count(&mut self, name: &str) -> Option<u32> {
        let field = self.field(name)?;
        let Kind::Count { min, max } = field.kind else { return None };
        let text = self.filled(field)?;
        let number = match number::read(text, &[&unit::PIECES]) {
            Ok(reading) => reading.number,
            Err(unreadable) => {
                self.fault(field, Fault::Unreadable(unreadable));
                return None;
            }
        };
        let value = Shown::plain(number, 0);
        let fault = if number.fract() != 0.0 {
            Some(Fault::NotWhole { value: number })
        } else if number < f64::from(min) {
            Some(Fault::TooSmall { value, min: Shown::plain(f64::from(min), 0), exclusive: false, why: "" })
        } else if number > f64::from(max) {
            Some(Fault::TooLarge { value, max: Shown::plain(f64::from(max), 0), why: "" })
        } else {
            None
        };
        match fault {
            Some(fault) => {
                self.fault(field, fault);
                None
            }
            // In range and whole: the conversion is exact.
            None => Some(number as u32),
        }
    }

    /// The key of a choice, turned into a type by `from_key`.
    pub fn choice<T>(&mut self, name: &str, from_key: impl Fn(&str) -> Option<T>) -> Option<T> {
        let chosen = from_key(self.key(name)?);
        if chosen.is_none() {
            self.not_a_choice(name);
        }
        chosen
    }

    /// The key of a choice, if it is one of those offered.
    fn key(&mut self, name: &str) -> Option<&'static str> {
        let field = self.field(name)?;
        let Kind::Choice(choices) = field.kind else { return None };
        let text = self.filled(field)?;
        let chosen = choices.iter().find(|choice| choice.key == text);
        if chosen.is_none() {
            self.not_a_choice(name);
        }
        chosen.map(|choice| choice.key)
    }

    fn not_a_choice(&mut self, name: &str) {
        if let Some(field) = self.field(name)
            && let Kind::Choice(choices) = field.kind
        {
            let offered = choices.iter().map(|choice| choice.key).collect();
            self.fault(field, Fault::NotAChoice { text: self.text(field).to_owned(), offered });
        }
    }

    /// A written designation, read by its room.
    pub fn parsed<T, E: fmt::Display>(
        &mut self,
        name: &str,
        read: impl Fn(&str) -> Result<T, E>,
    ) -> Option<T> {
        match read(self.written(name)?) {
            Ok(value) => Some(value),
            Err(why) => {
                self.problem(name, Fault::NotUnderstood(why.to_string()));
                None
            }
        }
    }

    /// What is written in a field that is asked.
    fn written(&mut self, name: &str) -> Option<&'a str> {
        let field = self.field(name)?;
        self.filled(field)
    }

    /// The raw text and the units of a field of readings.
    pub fn readings(&mut self, name: &str) -> Option<(&'a str, &'static [&'static Unit])> {
        let field = self.field(name)?;
        let text = self.filled(field)?;
        Some((text, field.units()))
    }

    /// Whether a field is asked, given the others.
    pub fn is_asked(&self, name: &str) -> bool {
        self.field(name).is_some_and(|field| self.asked(field))
    }

    /// Whether an optional field was left empty.
    pub fn is_empty(&self, name: &str) -> bool {
        self.field(name).is_none_or(|field| self.text(field).is_empty())
    }

    /// Keeps a problem of a field that only the calculator can see.
    pub fn problem(&mut self, name: &str, fault: Fault) {
        if let Some(field) = self.field(name) {
            self.fault(field, fault);
        }
    }

    fn field(&self, name: &str) -> Option<&'static Field> {
        let field = self.fields.iter().find(|field| field.name == name);
        debug_assert!(field.is_some(), "no field {name}");
        field
    }

    fn text(&self, field: &Field) -> &'a str {
        self.draft.get(field.name).unwrap_or(field.default).trim()
    }

    fn asked(&self, field: &Field) -> bool {
        match field.when {
            When::Always => true,
            When::Is(name, keys) => {
                self.field(name).is_some_and(|other| self.asked(other) && keys.contains(&self.text(other)))
            }
        }
    }

    /// The text of a field that is asked; an empty one is missing unless it may be empty.
    fn filled(&mut self, field: &'static Field) -> Option<&'a str> {
        if !self.asked(field) {
            return None;
        }
        let text = self.text(field);
        if text.is_empty() {
            if !field.optional {
                self.fault(field, Fault::Missing);
            }
            return None;
        }
        Some(text)
    }

    fn fault(&mut self, field: &Field, fault: Fault) {
        self.problems.push(Problem::new(field.name, field.label, fault));
    }
}

/// The fault of a number outside its bounds, with the number as precise as it was written.
fn outside(number: f64, unit: &'static Unit, bounds: Bound, text: &str) -> Option<Fault> {
    let digits = number::split_unit(text).0;
    let decimals = digits.rsplit_once(['.', ',']).map_or(0, |(_, rest)| rest.len().min(6)) as u8;
    let value = Shown { number, unit, decimals };
    let base = |shown: &Shown| shown.number * shown.unit.factor + shown.unit.offset;
    let here = base(&value);
    // A bound of another dimension (a hardness scale, another unit family) does not apply.
    let applies = |limit: &Shown| limit.unit.dimension == unit.dimension && same_scale(limit.unit, unit);
    let too_small = |min: Shown, exclusive: bool| {
        let below = if exclusive { here <= base(&min) } else { here < base(&min) };
        (applies(&min) && below).then_some(Fault::TooSmall { value, min, exclusive, why: bounds.why() })
    };
    let too_large = |max: Shown| {
        (applies(&max) && here > base(&max)).then_some(Fault::TooLarge { value, max, why: bounds.why() })
    };
    let zero = Shown { number: 0.0, unit, decimals: 0 };
    match bounds {
        Bound::Between(min, max, _) => too_small(min, false).or_else(|| too_large(max)),
        Bound::PositiveTo(max, _) => too_small(zero, true).or_else(|| too_large(max)),
        Bound::ZeroTo(max, _) => too_small(zero, false).or_else(|| too_large(max)),
    }
}

/// Hardness scales do not convert by a factor: a bound holds on its own scale only.
fn same_scale(limit: &Unit, written: &Unit) -> bool {
    match (Scale::of_unit(limit), Scale::of_unit(written)) {
        (None, None) => true,
        (limit, written) => limit == written,
    }
}
