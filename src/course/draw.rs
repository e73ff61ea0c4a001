//! A case for an exercise, drawn from a calculator's own description.
//!
//! A worked example is taken and its fields are varied: choices among those offered, quantities and
//! counts by round steps about what stands there, threads among sizes that exist. What the calculator
//! refuses is drawn again.

use crate::calculator::{About, Draft, Entry, FieldAbout, Form, Kind, Reader, Report};
use crate::quantity::{Dimension, number, unit};

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
pub fn case(entry: &'static Entry, random: &mut Random) -> Option<Case> {
    for tries in 0..=TRIES {
        let example = random.pick(entry.about.examples)?;
        let mut draft = Form::example(entry.about.fields, example).draft();
        if tries < TRIES {
            vary(&entry.about, &mut draft, random);
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

fn vary(about: &About, draft: &mut Draft, random: &mut Random) {
    for field in about.fields {
        // A field further up may ask for this one, or no longer.
        if !Reader::new(about.fields, draft).asked(field) {
            continue;
        }
        let text = draft.get(field.key).unwrap_or_default();
        if let Some(varied) = varied(field, text, random) {
            draft.set(field.key, varied);
        }
    }
}

/// Another text for a field, or none where the one that stands there stays.
pub fn varied(field: &FieldAbout, text: &str, random: &mut Random) -> Option<String> {
    match field.kind {
        Kind::Choice(choices) => {
            (random.below(3) == 0).then(|| random.pick(choices)).flatten().map(|choice| choice.key.to_owned())
        }
        Kind::Text if field.key == "thread" => {
            let sizes: &[&str] = if text.starts_with('M') { &METRIC } else { &INCH };
            random.pick(sizes).map(|size| (*size).to_owned())
        }
        Kind::Text => None,
        Kind::Quantity { .. } if field.key == "diameter" && !text.is_empty() => {
            random.pick(&DIAMETERS).map(|size| (*size).to_owned())
        }
        Kind::Quantity { units, .. } => {
            let (digits, written) = number::split_unit(text);
            let unit = units.iter().find(|unit| unit.is_written(written)).or(units.first())?;
            let step = match unit.dimension {
                Dimension::Temperature => Some(if **unit == unit::CELSIUS { 2.0 } else { 10.0 }),
                Dimension::Hardness if unit.symbol.starts_with("HR") => Some(1.0),
                _ => None,
            };
            let number = about(digits, step, 8, random)?;
            Some(format!("{number} {}", unit.symbol).trim_end().to_owned())
        }
        Kind::Count { .. } => about(text, None, 8, random),
        Kind::Readings { .. } => readings(text, random),
    }
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

/// Readings a little off those that stand there; what holds more than readings stays.
fn readings(text: &str, random: &mut Random) -> Option<String> {
    let is_plain =
        |word: &str| word.chars().all(|c| c.is_ascii_digit() || matches!(c, '.' | ',')) && !word.is_empty();
    if text.chars().any(|c| matches!(c, ':' | '-' | '\t')) {
        return None;
    }
    let mut made = String::with_capacity(text.len());
    let mut rest = text;
    while !rest.is_empty() {
        let length = rest.find([' ', ';', '\n']).unwrap_or(rest.len());
        let (word, behind) = rest.split_at(length);
        let varied = if is_plain(word) { off(word, random) } else { None };
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
        let varied = readings("50,4; 49,8; 51,2 µm", &mut Random::new(5)).unwrap();
        assert_eq!(varied.matches(';').count(), 2);
        assert_eq!(varied.matches(',').count(), 3);
        assert!(varied.ends_with(" µm"), "{varied}");
        assert_eq!(readings("101;2025-03-04;55", &mut Random::new(5)), None);
    }
}
