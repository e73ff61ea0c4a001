//! Whoever works in inches, or in millimetres, gets everything shown in those units.

use kettle_barrel::calculator::{Address, REGISTER, Report, Value, evaluate};
use kettle_barrel::order::{self, Assessment};
use kettle_barrel::quantity::Units;

/// Units of one system that may not stand in what the other system shows. A letter alone may be anything,
/// and inches in words are sizes by their names: `over 3/8 in`.
const METRIC: &[&str] = &["µm", "mm", "cm", "kg", "°C", "g/m²", "mm²", "cm²", "m²", "MPa", "kN", "µm/year"];
const INCH: &[&str] = &["mil", "ft", "lb", "oz", "°F", "oz/ft²", "in²", "ft²", "ksi", "lbf", "mil/year"];

/// What a document calls its classes stays as it is printed.
const NAMES: &[&str] = &["threads of 6 mm and under", "threads over 6 mm"];

/// The numbers of a text that stand before one of these units.
fn left<'a>(text: &'a str, units: &[&str]) -> Vec<&'a str> {
    let is_number = |word: &str| word.ends_with(|c: char| c.is_ascii_digit());
    let words: Vec<&str> = text.split([' ', '\u{a0}']).collect();
    let found = words.windows(2).filter(|pair| {
        let bare = pair[1].trim_end_matches([',', '.', ';', ':', ')', '?']);
        is_number(pair[0]) && units.contains(&bare)
    });
    found.map(|pair| pair[1]).collect()
}

/// The numbers of a figure; its name and its words may be names of classes.
fn of_value(value: &Value) -> Vec<String> {
    match value {
        Value::One(one) => vec![one.to_string()],
        Value::Range(min, max) => vec![min.to_string(), max.to_string()],
        Value::Words(_) => Vec::new(),
    }
}

fn of_report(report: &Report) -> Vec<String> {
    let figures = report.figures.iter().chain(report.sections.iter().flat_map(|section| &section.figures));
    let mut texts = vec![report.headline.to_string()];
    texts.extend(figures.flat_map(|figure| of_value(&figure.value)));
    texts.extend(report.findings.iter().map(|finding| finding.text.to_string()));
    texts.extend(report.notes.iter().map(|note| note.text.to_string()));
    texts
}

fn of_assessment(found: &Assessment) -> Vec<String> {
    let processes = || found.processes.iter();
    let figures = found.figures.iter().chain(processes().flat_map(|process| &process.figures));
    let mut texts = vec![found.headline.clone(), found.answer.text.clone(), found.answer.order.clone()];
    texts.extend(figures.flat_map(|figure| of_value(&figure.value)));
    let findings = processes().flat_map(|process| process.findings.iter().chain(&process.folded));
    texts.extend(findings.map(|finding| finding.text.to_string()));
    texts.extend(processes().flat_map(|process| process.change.clone()));
    texts.extend(found.notes.iter().map(|note| note.text.to_string()));
    texts
}

fn assert_all(name: &str, texts: &[String], units: &[&str], bad: &mut Vec<String>) {
    for text in texts {
        let text = NAMES.iter().fold(text.clone(), |text, name| text.replace(name, ""));
        let found = left(&text, units);
        if !found.is_empty() {
            bad.push(format!("{name}: {found:?} in “{text}”"));
        }
    }
}

#[test]
fn every_report_and_every_assessment_is_in_the_units_of_its_reader() {
    let mut bad = Vec::new();
    for (units, other) in [(Units::Inch, METRIC), (Units::Metric, INCH)] {
        for entry in REGISTER {
            for example in entry.about.examples {
                let report = evaluate(entry.about.id, example.pairs.iter().copied()).unwrap().in_units(units);
                assert_all(
                    &format!("{} {}", entry.about.id, units.key()),
                    &of_report(&report),
                    other,
                    &mut bad,
                );
            }
        }
        for line in include_str!("golden.txt").lines() {
            let Some((number, address)) = line.split_once(" order ") else { continue };
            if !number.bytes().all(|byte| byte.is_ascii_digit()) {
                continue;
            }
            let found = order::assess(&Address::read(address).0.draft).unwrap().in_units(units);
            assert_all(&format!("order {number} {}", units.key()), &of_assessment(&found), other, &mut bad);
        }
    }
    assert!(bad.is_empty(), "{} left:\n{}", bad.len(), bad.join("\n"));
}
