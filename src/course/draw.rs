//! A case for an exercise, drawn from a calculator's own description.
//!
//! A worked example is taken and its fields are varied: choices among those offered, quantities and
//! counts by round steps about what stands there, threads among sizes that exist. What the calculator
//! refuses is drawn again.

use crate::calculator::{About, Draft, Entry, Example, FieldAbout, Form, Kind, Reader, Report};
use crate::quantity::{Dimension, Hardness, Scale, Unit, Units, number, unit};
use crate::steel::hardness::{self, Level};

use super::random::Random;

/// A case that the calculator has solved.
#[derive(Debug, Clone)]
pub struct Case {
    /// What was asked.
    pub entry: &'static Entry,
    /// What stands in its fields.
    pub draft: Draft,
    /// What it found.
    pub report: Report,
}

/// The field of a bolt's class, which may be left empty for the usual one.
const BOLT_CLASS: &str = "bolt_class";
/// Draws tried before a worked example is taken as it is.
const TRIES: usize = 40;

/// Metric sizes with a coarse thread that bolts and nuts are stocked in.
const METRIC: [&str; 10] = ["M6", "M8", "M10", "M12", "M14", "M16", "M20", "M24", "M30", "M36"];
/// Inch sizes with a coarse thread.
const INCH: [&str; 9] = [
    "1/4-20 UNC",
    "5/16-18 UNC",
    "3/8-16 UNC",
    "1/2-13 UNC",
    "5/8-11 UNC",
    "3/4-10 UNC",
    "7/8-9 UNC",
    "1-8 UNC",
    "1 1/4-7 UNC",
];
/// Diameters of bolts in millimetres, where a thread is not asked.
const DIAMETERS: [&str; 9] =
    ["8 mm", "10 mm", "12 mm", "16 mm", "20 mm", "24 mm", "30 mm", "1/2 in", "3/4 in"];

/// Draws a case of a calculator; `None` only if none of its examples can be solved.
pub fn case(entry: &'static Entry, units: Units, random: &mut Random) -> Option<Case> {
    // A thread is one of the system where an example has one.
    let fits = |example: &&Example| {
        let thread = example.pairs.iter().find(|(key, _)| *key == "thread");
        units == Units::AsPrinted
            || thread.is_none_or(|(_, thread)| thread.starts_with('M') == (units == Units::Metric))
    };
    let fitting: Vec<&Example> = entry.about.examples.iter().filter(fits).collect();
    for tries in 0..=TRIES {
        let example = match random.pick(&fitting) {
            Some(example) => example,
            None => random.pick(entry.about.examples)?,
        };
        let mut draft = Form::example(entry.about.fields, example).draft();
        if tries < TRIES {
            vary(&entry.about, &mut draft, units, random);
        }
        if let Ok(report) = entry.evaluate(&draft) {
            return Some(Case { entry, draft, report });
        }
    }
    None
}

impl Case {
    /// What is given: the fields that are asked and filled, by their labels.
    pub fn givens(&self) -> Vec<(String, String)> {
        let form = Form::new(self.entry.about.fields, &self.draft);
        let asked = form.asked();
        let filled = asked.iter().filter(|(_, filled)| !filled.text.trim().is_empty());
        filled.map(|(field, filled)| (field.label.to_owned(), filled.shown(field))).collect()
    }
}

fn vary(about: &About, draft: &mut Draft, units: Units, random: &mut Random) {
    for field in about.fields {
        // A field further up may ask for this one, or no longer.
        if !Reader::new(about.fields, draft).asked(field) {
            continue;
        }
        let text = draft.get(field.key).unwrap_or_default();
        // What a comma is belongs to the readings, and what is usual is said: nobody guesses it.
        let usual = match draft.get("thread") {
            Some(thread) if field.key == BOLT_CLASS && text.is_empty() => {
                Some(if thread.starts_with('M') { "6g" } else { "2A" })
            }
            _ => None,
        };
        if let Some(usual) = usual {
            draft.set(field.key, usual);
            continue;
        }
        if field.key == "comma" {
            continue;
        }
        if let Some(varied) = varied(field, text, units, random) {
            draft.set(field.key, varied);
        }
    }
}

/// Another text for a field, or none where the one that stands there stays.
pub fn varied(field: &FieldAbout, text: &str, system: Units, random: &mut Random) -> Option<String> {
    match field.kind {
        Kind::Choice(choices) => {
            (random.below(3) == 0).then(|| random.pick(choices)).flatten().map(|choice| choice.key.to_owned())
        }
        Kind::Text if field.key == "thread" => {
            let is_metric = match system {
                Units::AsPrinted => text.starts_with('M'),
                Units::Metric => true,
                Units::Inch => false,
            };
            let sizes: &[&str] = if is_metric { &METRIC } else { &INCH };
            random.pick(sizes).map(|size| (*size).to_owned())
        }
        Kind::Text => None,
        Kind::Quantity { .. } if field.key == "diameter" && !text.is_empty() => {
            let of_system = |size: &&&str| match system {
                Units::AsPrinted => true,
                _ => size.ends_with("in") == (system == Units::Inch),
            };
            let sizes: Vec<&&str> = DIAMETERS.iter().filter(of_system).collect();
            random.pick(&sizes).map(|size| (**size).to_owned())
        }
        Kind::Quantity { units, .. } => {
            let (digits, written) = number::split_unit(text);
            let unit =
                units.iter().copied().find(|unit| unit.is_written(written)).or(units.first().copied())?;
            let to = unit_to_write(unit, units, system, random);
            let digits = in_other_unit(digits, unit, to)?;
            let unit = to;
            let step = match unit.dimension {
                Dimension::Temperature => Some(if *unit == unit::CELSIUS { 2.0 } else { 10.0 }),
                Dimension::Hardness if unit.symbol.starts_with("HR") => Some(1.0),
                Dimension::Hardness => Some(10.0),
                _ => None,
            };
            let number = about(&digits, step, 8, random)?;
            Some(format!("{number} {}", unit.symbol).trim_end().to_owned())
        }
        Kind::Count { .. } => about(text, None, 8, random),
        Kind::Readings { units, .. } => readings(text, units, system, random),
    }
}

/// The unit that a figure is given in: that of the system, and now and then the scale of hardness or of temperature
/// that somebody else works with.
fn unit_to_write(
    unit: &'static Unit,
    offered: &[&'static Unit],
    system: Units,
    random: &mut Random,
) -> &'static Unit {
    let own = Some(system.unit(unit)).filter(|own| offered.contains(own)).unwrap_or(unit);
    if !matches!(own.dimension, Dimension::Temperature | Dimension::Hardness) || random.below(3) > 0 {
        return own;
    }
    let is_other =
        |other: &&&Unit| other.dimension == own.dimension && **other != own && **other != &unit::KELVIN;
    let others: Vec<&&Unit> = offered.iter().filter(is_other).collect();
    random.pick(&others).map_or(own, |other| **other)
}

/// A number in another unit; a hardness by the tables of its scales. What leads to no other stays as it is.
fn in_other_unit(digits: &str, unit: &'static Unit, to: &'static Unit) -> Option<String> {
    if unit == to {
        return Some(digits.to_owned());
    }
    let number = number::read_number(digits).ok()?;
    let by_table = || {
        let (from, to) = (Scale::of_unit(unit)?, Scale::of_unit(to)?);
        let converted = hardness::convert(Hardness { scale: from, number }, to).ok()?;
        match converted.to {
            Level::Hardness(hardness) => Some(hardness.number),
            Level::Tensile(_) => None,
        }
    };
    let number = unit.convert(number, to).or_else(by_table)?;
    // As many digits as a step needs that is an eighth of it.
    let decimals = (2.0 - number.abs().max(1e-6).log10().floor()).clamp(0.0, 8.0) as usize;
    Some(format!("{number:.decimals$}"))
}

/// A number in round steps about another one: steps of an eighth of it or less, unless they are given.
fn about(text: &str, step: Option<f64>, parts: u32, random: &mut Random) -> Option<String> {
    let number = number::read_number(text).ok().filter(|number| *number > 0.0)?;
    let (step, decimals) = match step {
        Some(step) => (step, 0),
        None => step_below(number / f64::from(parts))?,
    };
    let steps = (number / step).round() - 4.0 + random.below(9) as f64;
    (steps > 0.0).then(|| {
        let text = format!("{:.decimals$}", steps * step);
        if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').to_owned() } else { text }
    })
}

/// The largest of 1, 2 and 5 times a power of ten that is not above a number, and its decimals.
fn step_below(number: f64) -> Option<(f64, usize)> {
    const TENS: [(f64, usize); 12] = [
        (1e6, 0),
        (1e5, 0),
        (1e4, 0),
        (1e3, 0),
        (1e2, 0),
        (10.0, 0),
        (1.0, 0),
        (0.1, 1),
        (0.01, 2),
        (1e-3, 3),
        (1e-4, 4),
        (1e-5, 5),
    ];
    let steps = TENS.iter().flat_map(|(ten, decimals)| [5.0, 2.0, 1.0].map(|times| (times * ten, *decimals)));
    steps.into_iter().find(|(step, _)| *step <= number * (1.0 + 1e-9))
}

/// Readings a little off those that stand there, in the unit of the system; what holds more than readings stays.
fn readings(text: &str, offered: &[&'static Unit], system: Units, random: &mut Random) -> Option<String> {
    let is_plain =
        |word: &str| word.chars().all(|c| c.is_ascii_digit() || matches!(c, '.' | ',')) && !word.is_empty();
    if text.chars().any(|c| matches!(c, ':' | '-' | '\t')) {
        return None;
    }
    let unit =
        offered.iter().copied().find(|unit| unit.is_written(text.rsplit(' ').next().unwrap_or_default()));
    let to = unit.map(|unit| (unit, system.unit(unit))).filter(|(_, to)| offered.contains(to));
    let mut made = String::with_capacity(text.len());
    let mut rest = text;
    while !rest.is_empty() {
        let length = rest.find([' ', ';', '\n']).unwrap_or(rest.len());
        let (word, behind) = rest.split_at(length);
        let varied = match to {
            _ if !is_plain(word) => {
                to.filter(|(unit, _)| unit.is_written(word)).map(|(_, to)| to.symbol.to_owned())
            }
            Some((unit, to)) if unit != to => {
                off(word, random).and_then(|word| in_other_unit(&word, unit, to))
            }
            _ => off(word, random),
        };
        made.push_str(varied.as_deref().unwrap_or(word));
        let space = behind.find(|c| !matches!(c, ' ' | ';' | '\n')).unwrap_or(behind.len());
        let (space, next) = behind.split_at(space);
        made.push_str(space);
        rest = next;
    }
    Some(made)
}

/// A reading a few steps of its last digit off, written with the same digits.
fn off(word: &str, random: &mut Random) -> Option<String> {
    let number = number::read_number(word).ok()?;
    let decimals = word.split_once(['.', ',']).map_or(0, |(_, rest)| rest.len());
    let last = TEN_PARTS.get(decimals)?;
    let varied = format!("{:.decimals$}", number + (random.below(7) as f64 - 3.0) * last);
    Some(if word.contains(',') { varied.replace('.', ",") } else { varied })
}

/// The size of a last digit by its place.
const TEN_PARTS: [f64; 6] = [1.0, 0.1, 0.01, 1e-3, 1e-4, 1e-5];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_varied_in_round_steps() {
        let mut random = Random::new(3);
        for _ in 0..100 {
            let varied: f64 = about("50", None, 8, &mut random).unwrap().parse().unwrap();
            assert!((30.0..=70.0).contains(&varied) && varied % 5.0 == 0.0, "{varied}");
            let inch = about("0.0021", None, 8, &mut random).unwrap();
            assert!(inch.len() <= 6, "{inch}");
        }
    }

    #[test]
    fn readings_keep_their_shape() {
        let varied =
            readings("50,4; 49,8; 51,2 µm", &[&unit::UM, &unit::MIL], Units::Metric, &mut Random::new(5))
                .unwrap();
        assert_eq!(varied.matches(';').count(), 2);
        assert_eq!(varied.matches(',').count(), 3);
        assert!(varied.ends_with(" µm"), "{varied}");
        let mils =
            readings("50,4; 49,8; 51,2 µm", &[&unit::UM, &unit::MIL], Units::Inch, &mut Random::new(5))
                .unwrap();
        assert!(
            mils.ends_with(" mil") && mils.matches("; ").count() == 2 && mils.starts_with("1.9"),
            "{mils}"
        );
        assert_eq!(readings("101;2025-03-04;55", &[&unit::UM], Units::Metric, &mut Random::new(5)), None);
    }
}
