//! The usual slips, as data: what somebody changes without noticing, and what then comes out.
//!
//! A slip scales the answer, takes another step of the same working, or solves the calculator again
//! with a changed field. It is offered only where it applies, and where what it gives differs from the
//! right answer by more than a badly rounded one may.

use crate::calculator::{Draft, Kind, Reader};
use crate::quantity::{Dimension, Shown, Unit, number, unit};
use crate::working::{Step, Term};

use super::chain::{carried, gives, in_unit_of, needed_places, redone, same};
use super::draw::Case;
use super::tolerance::near;

/// What a slip gives in place of the answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Slip {
    /// What was done, said to whoever did it.
    pub name: &'static str,
    /// What comes out, in the unit of the answer.
    pub value: Shown,
}

/// Of which steps a row speaks.
#[derive(Debug, Clone, Copy)]
enum Of {
    Any,
    /// Steps whose formula holds this.
    Formula(&'static str),
    /// The same, where the coat takes room in a thread: nothing is reckoned of a circle.
    Room(&'static str),
    /// Steps that give the area of a surface.
    Surfaces,
    /// Steps that give more than a number.
    Measures,
}

/// What is changed.
#[derive(Debug, Clone, Copy)]
enum Change {
    /// The answer is multiplied.
    Times(f64),
    /// Something is added to the answer.
    Plus(f64),
    /// Another step with the same symbol and formula is taken.
    OtherEnd,
    /// Fields are given other texts.
    Set(&'static [(&'static str, &'static str)]),
    /// The text of one field stands in another.
    Copy(&'static str, &'static str),
    /// Each other choice of a field in turn.
    Choose(&'static str),
    /// The numbers of these fields are multiplied.
    Fields(&'static [&'static str], f64),
    /// A number is read in another unit.
    Unit(&'static Unit, &'static Unit),
}

/// A slip: its name, the steps that it speaks of, and what is changed.
#[derive(Debug)]
pub struct Row(&'static str, Of, Change);

/// Every row. A calculator that lacks a field, or a unit, is not spoken of.
static ROWS: [Row; 28] = [
    Row("2 t was taken for 4 t: a coat moves both flanks on both sides", Of::Room("/ 4"), Change::Times(2.0)),
    Row(
        "2 t was taken for 4 t: a coat moves both flanks on both sides",
        Of::Room("/ (4 ·"),
        Change::Times(2.0),
    ),
    Row(
        "2 t was taken for 4 t: a coat moves both flanks on both sides",
        Of::Formula("4 · t"),
        Change::Fields(&["coat_least", "coat_greatest"], 0.5),
    ),
    Row("the radius was put in for the diameter", Of::Any, Change::Fields(&["diameter", "bar"], 0.5)),
    Row("the diameter was taken for the radius", Of::Formula("π / 4 · d^2"), Change::Times(4.0)),
    Row("the radius was taken for the diameter", Of::Formula("π · d ·"), Change::Times(0.5)),
    Row("one side was taken for two", Of::Surfaces, Change::Times(0.5)),
    Row("the yield of the powder was forgotten", Of::Any, Change::Set(&[("yield", "100 %")])),
    Row("the factor from thickness to mass is that of another standard", Of::Any, Change::Choose("factor")),
    Row("the density of the deposit is another one", Of::Any, Change::Choose("density")),
    Row(
        "the least was charged for, not the mean that keeps every reading above it",
        Of::Measures,
        Change::Set(&[("chance", "50 %"), ("checks", "1")]),
    ),
    Row("the least was taken for the greatest", Of::Any, Change::Copy("coat_least", "coat_greatest")),
    Row("the greatest was taken for the least", Of::Any, Change::Copy("coat_greatest", "coat_least")),
    Row("the least was taken for the mean", Of::Any, Change::Copy("least", "thickness")),
    Row("the greatest was taken for the mean", Of::Any, Change::Copy("greatest", "thickness")),
    Row("it is the other end of the range", Of::Any, Change::OtherEnd),
    Row("the unevenness on the thread was forgotten", Of::Any, Change::Set(&[("spread", "0 %")])),
    Row("both threads carry the coat", Of::Any, Change::Choose("coated")),
    Row("273.15 was not taken off: these are kelvin", Of::Formula("− 273.15"), Change::Plus(273.15)),
    Row("°F was read as °C", Of::Any, Change::Unit(&unit::FAHRENHEIT, &unit::CELSIUS)),
    Row("°C was read as °F", Of::Any, Change::Unit(&unit::CELSIUS, &unit::FAHRENHEIT)),
    Row("HRC was read as HV", Of::Any, Change::Unit(&unit::HRC, &unit::HV)),
    Row("HV was read as HB", Of::Any, Change::Unit(&unit::HV, &unit::HB)),
    Row("HB was read as HV", Of::Any, Change::Unit(&unit::HB, &unit::HV)),
    Row("mil was read as µm", Of::Any, Change::Unit(&unit::MIL, &unit::UM)),
    Row("µm was read as mil", Of::Any, Change::Unit(&unit::UM, &unit::MIL)),
    Row("minutes were read as hours", Of::Any, Change::Unit(&unit::MINUTE, &unit::HOUR)),
    Row("the difference was taken the other way round", Of::Formula("_least"), Change::Times(-1.0)),
];

/// The scales beside which a hardness stands without its name.
const SCALES: [&Unit; 4] = [&unit::HRC, &unit::HRB, &unit::HV, &unit::HB];

/// A row that changes a field, and the whole working that it leads to.
pub type Slipped = (&'static Row, Vec<Step>);

/// A case solved again with each slip in its fields that applies.
pub fn slipped(case: &Case) -> Vec<Slipped> {
    ROWS.iter().flat_map(|row| changed(case, row.2).into_iter().map(move |steps| (row, steps))).collect()
}

/// Where a slip may have been made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Within {
    /// In the step itself: everything else is given.
    Step,
    /// In any step that leads to it.
    Whole,
}

/// What the usual slips give in place of a step of a case, where they can be made in it.
pub fn slips(case: &Case, slipped: &[Slipped], at: usize, within: Within) -> Vec<Slip> {
    let steps = case.report.working.steps();
    let Some(step) = steps.get(at) else { return Vec::new() };
    let right = step.result;
    let mut found: Vec<Slip> = Vec::new();
    let mut add = |name: &'static str, number: f64, unit: &'static Unit| {
        let value = Shown { number, unit, ..right };
        let distinct = found.iter().all(|other| other.value.unit != unit || !near(value, other.value.number));
        if number.is_finite() && distinct && (unit != right.unit || !near(right, number)) {
            found.push(Slip { name, value });
        }
    };
    // What was done with a field says more than that it is another end of the same range.
    for (row, others) in slipped {
        let Row(name, of, _) = row;
        let made = match within {
            Within::Step => row.acts_in(steps, at, others),
            Within::Whole => needed_places(steps, at).any(|at| row.acts_in(steps, at, others)),
        };
        let other = same_step(steps, at, others).and_then(|at| others.get(at));
        let number = other
            .filter(|_| of.holds(step) && made)
            .and_then(|other| other.result.unit.convert(other.result.number, right.unit));
        if let Some(number) = number {
            add(name, number, right.unit);
        }
    }
    for Row(name, of, change) in &ROWS {
        if !of.holds(step) {
            continue;
        }
        match *change {
            Change::Times(factor) => add(name, right.number * factor, right.unit),
            Change::Plus(more) => add(name, right.number + more, right.unit),
            Change::OtherEnd => {
                let alike = |other: &&Step| {
                    other.symbol == step.symbol
                        && other.formula == step.formula
                        && other.source == step.source
                };
                let has_ends = ["least", "greatest"].iter().any(|end| step.meaning.contains(end));
                let name = if has_ends { name } else { "it is that of another line" };
                for other in steps.iter().filter(alike) {
                    if let Some(number) = other.result.unit.convert(other.result.number, right.unit) {
                        add(name, number, right.unit);
                    }
                }
            }
            _ => {}
        }
    }
    if right.unit.dimension == Dimension::Hardness {
        for (given, unit) in given_hardness(case).filter(|(_, unit)| *unit != right.unit) {
            add(unconverted(unit), given, right.unit);
        }
        for scale in SCALES {
            if scale != right.unit {
                add("the number stands on another scale of hardness", right.number, scale);
            }
        }
    }
    found
}

impl Row {
    /// Whether what it changes goes into a step itself: a value that no sum before it gave, or a number that is
    /// looked up in a table under another unit.
    pub fn acts_in(&self, steps: &[Step], at: usize, others: &[Step]) -> bool {
        let (Some(step), Some(place)) = (steps.get(at), same_step(steps, at, others)) else { return false };
        let Some(other) = others.get(place) else { return false };
        if step.formula.is_empty() {
            return !matches!(self.2, Change::Fields(..)) && !same(step.result, other.result);
        }
        let summed = |term: &Term| {
            let before = others.iter().take(place).filter(|step| !step.formula.is_empty());
            before.into_iter().any(|step| gives(step, term.symbol, term.value))
        };
        // A number that is read in another unit stands in the step itself.
        let is_read = |term: &Term| match self.2 {
            Change::Unit(written, _) => term.value.unit.dimension == written.dimension,
            _ => true,
        };
        let mut terms = step.terms.iter().zip(&other.terms);
        step.terms.len() == other.terms.len()
            && terms.any(|(one, other)| !same(one.value, other.value) && !summed(other) && is_read(other))
    }
}

impl Of {
    fn holds(self, step: &Step) -> bool {
        match self {
            Self::Any => true,
            Self::Formula(part) => step.formula.contains(part),
            Self::Room(part) => step.formula.contains(part) && !step.formula.contains('π'),
            // The section of a bolt and the area that a thread shears by have one side only.
            Self::Surfaces => {
                let surface = step.symbol == "A" || step.symbol.starts_with("A_");
                surface && step.result.unit.dimension == Dimension::Area && !step.formula.is_empty()
            }
            Self::Measures => step.result.unit.dimension != Dimension::PlainNumber,
        }
    }
}

/// What the calculator finds with a changed field; nothing where the change does not apply.
fn changed(case: &Case, change: Change) -> Vec<Vec<Step>> {
    let fields = case.entry.about.fields;
    let reader = Reader::new(fields, &case.draft);
    let asked = |key: &str| fields.iter().find(|field| field.key == key).filter(|field| reader.asked(field));
    let text =
        |key: &str| asked(key).and_then(|field| case.draft.get(field.key)).filter(|text| !text.is_empty());
    let mut drafts: Vec<Draft> = Vec::new();
    let mut workings: Vec<Vec<Step>> = Vec::new();
    let mut with = |pairs: &[(&str, String)]| {
        let mut draft = case.draft.clone();
        pairs.iter().for_each(|(key, text)| draft.set(key, text.clone()));
        if !pairs.is_empty() && draft != case.draft {
            drafts.push(draft);
        }
    };
    match change {
        Change::Set(pairs) => {
            if pairs.iter().all(|(key, _)| asked(key).is_some()) {
                with(&pairs.iter().map(|(key, text)| (*key, (*text).to_owned())).collect::<Vec<_>>());
            }
        }
        Change::Copy(from, to) => {
            if let (Some(text), Some(_)) = (text(from), asked(to)) {
                with(&[(to, text.to_owned())]);
            }
        }
        Change::Choose(key) => {
            if let Some(Kind::Choice(choices)) = asked(key).map(|field| field.kind) {
                choices.iter().for_each(|choice| with(&[(key, choice.key.to_owned())]));
            }
        }
        Change::Fields(keys, factor) => {
            let scaled = keys.iter().filter_map(|key| {
                let (digits, unit) = number::split_unit(text(key)?);
                let number = number::read_number(digits).ok()?;
                Some((*key, format!("{} {unit}", number * factor)))
            });
            with(&scaled.collect::<Vec<_>>());
        }
        Change::Unit(written, read) => {
            for field in fields.iter().filter(|field| field.units().contains(&read) && reader.asked(field)) {
                if let Some(text) = case.draft.get(field.key) {
                    let (digits, symbol) = number::split_unit(text);
                    if !written.is_written(symbol) || matches!(field.kind, Kind::Readings { .. }) {
                        continue;
                    }
                    let mut draft = case.draft.clone();
                    draft.set(field.key, format!("{digits} {}", read.symbol));
                    match (case.entry.evaluate(&draft), number::read_number(digits)) {
                        (Ok(report), _) => workings.push(report.working.steps().to_vec()),
                        // No bath is as hot; whoever slips sees no bound.
                        (Err(_), Ok(number)) if written.dimension == Dimension::Temperature => {
                            workings.push(misread(case.report.working.steps(), number, (written, read)));
                        }
                        _ => {}
                    }
                }
            }
        }
        Change::Times(_) | Change::Plus(_) | Change::OtherEnd => {}
    }
    let solved = drafts.iter().filter_map(|draft| case.entry.evaluate(draft).ok());
    workings.extend(solved.map(|report| report.working.steps().to_vec()));
    workings
}

/// The steps with a given number put in as if it stood in another unit.
fn misread(steps: &[Step], number: f64, (written, read): (&'static Unit, &'static Unit)) -> Vec<Step> {
    let [given, misread] = [written, read].map(|unit| Shown { number, unit, decimals: 0 });
    carried(steps, |at, step| {
        let mut step = step?;
        let mut is_put_in = false;
        for term in &mut step.terms {
            if same(term.value, given)
                && let Some(number) = in_unit_of(term.value, misread)
            {
                term.value.number = number;
                is_put_in = true;
            }
        }
        if is_put_in {
            step.result.number = redone(steps.get(at)?, &step)?;
        }
        Some(step)
    })
}

/// The hardness that is given, and its scale.
fn given_hardness(case: &Case) -> impl Iterator<Item = (f64, &'static Unit)> {
    let fields = case.entry.about.fields;
    let reader = Reader::new(fields, &case.draft);
    fields.iter().filter(move |field| reader.asked(field)).filter_map(|field| {
        let (digits, written) = number::split_unit(case.draft.get(field.key)?);
        let scale = SCALES.into_iter().find(|scale| scale.is_written(written))?;
        field.units().contains(&scale).then_some((number::read_number(digits).ok()?, scale))
    })
}

/// What was done where the number of a scale is given as that of another.
fn unconverted(scale: &Unit) -> &'static str {
    match scale.symbol {
        "HRC" => "HRC was taken for the scale asked: the number was not converted",
        "HRB" => "HRB was taken for the scale asked: the number was not converted",
        "HV" => "HV was taken for the scale asked: the number was not converted",
        _ => "HB was taken for the scale asked: the number was not converted",
    }
}

/// The place of the step of another working that stands for this one: of the same name and formula, at the
/// same place among those.
pub fn same_step(steps: &[Step], at: usize, others: &[Step]) -> Option<usize> {
    let step = steps.get(at)?;
    let alike = |other: &Step| other.symbol == step.symbol && other.formula == step.formula;
    let place = steps.iter().take(at).filter(|step| alike(step)).count();
    others.iter().enumerate().filter(|(_, other)| alike(other)).nth(place).map(|(at, _)| at)
}
