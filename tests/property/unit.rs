//! A number means the same in every unit that its field offers: the answer does not change with the unit.

use kettle_barrel::calculator::{Draft, Entry, FieldAbout, Kind, REGISTER, Report, Value, evaluate};
use kettle_barrel::quantity::{Units, number, unit};

use crate::fields::{Dice, drawn};

/// The number of a field in another unit that it offers, to every digit; none where none leads there.
fn in_other_units(field: &FieldAbout, text: &str) -> Vec<String> {
    let Kind::Quantity { units, .. } = field.kind else { return Vec::new() };
    let Ok(read) = number::read(text, units) else { return Vec::new() };
    let Some(written) = read.unit.or(units.first().copied()) else { return Vec::new() };
    let others = units.iter().filter(|unit| **unit != written);
    others
        .filter_map(|unit| Some(format!("{:?} {}", written.convert(read.number, unit)?, unit.symbol)))
        .filter(|text| !text.contains('e'))
        .collect()
}

/// Every number of the answer, in one system, and its verdict.
fn numbers(report: Report) -> (Vec<(String, Vec<f64>)>, String) {
    let report = report.in_units(Units::Metric);
    let verdict = format!("{:?}", report.verdict);
    let sections = report.sections.iter().flat_map(|section| &section.figures);
    // The area of a kilogram is that of a pound for whoever weighs in pounds.
    let figures =
        report.figures.iter().chain(sections).filter(|figure| !figure.name.starts_with("Area of one"));
    let figures = figures.map(|figure| {
        let base =
            |shown: &kettle_barrel::quantity::Shown| shown.number * shown.unit.factor + shown.unit.offset;
        let numbers = match &figure.value {
            Value::One(one) => vec![base(one)],
            Value::Range(min, max) => vec![base(min), base(max)],
            Value::Words(_) => Vec::new(),
        };
        (figure.symbol.to_owned(), numbers)
    });
    (figures.collect(), verdict)
}

/// Compares what a draft gives with what it gives when one field is written in another unit.
fn compared(entry: &Entry, draft: &Draft, bad: &mut Vec<String>) -> usize {
    let mut draft = draft.clone();
    // A class is charged as it is printed in the reader's own units: 53 µm, or 0.0021 in.
    if entry.about.id == "powder" && draft.get("asked").is_none_or(|asked| asked == "class") {
        draft.set("asked", "least");
    }
    let draft = &draft;
    let Ok(report) = entry.evaluate(draft) else { return 0 };
    let (figures, verdict) = numbers(report);
    let mut count = 0;
    for field in entry.about.fields {
        let id = entry.about.id;
        let Some(text) = draft.get(field.key) else { continue };
        for other in in_other_units(field, text) {
            let mut changed = draft.clone();
            changed.set(field.key, other.as_str());
            count += 1;
            let name = format!("{id}: {} {text} as {other}", field.key);
            let report = match entry.evaluate(&changed) {
                Ok(report) => report,
                // At the very edge of a bound the last bit decides.
                Err(problems) if problems.to_string().contains("must be at") => continue,
                Err(problems) => {
                    bad.push(format!("{name}: {problems}"));
                    continue;
                }
            };
            let (others, other_verdict) = numbers(report);
            if verdict != other_verdict {
                bad.push(format!("{name}: {verdict} becomes {other_verdict}"));
            }
            if figures.len() != others.len() {
                bad.push(format!("{name}: {} figures become {}", figures.len(), others.len()));
                continue;
            }
            for ((symbol, one), (_, two)) in figures.iter().zip(&others) {
                let is_near = |(one, two): (&f64, &f64)| (one - two).abs() <= 1e-6 * one.abs().max(1e-9);
                if one.len() != two.len() || !one.iter().zip(two).all(is_near) {
                    bad.push(format!("{name}: {symbol} {one:?} becomes {two:?}"));
                }
            }
        }
    }
    count
}

fn draws(count: u64) {
    let mut bad = Vec::new();
    for entry in REGISTER {
        let mut compared_here = 0;
        for example in entry.about.examples {
            compared_here += compared(entry, &example.pairs.iter().copied().collect(), &mut bad);
        }
        for seed in 0..count {
            compared_here += compared(entry, &drawn(entry.about.fields, &mut Dice(seed)), &mut bad);
        }
        let has_units = entry.about.fields.iter().any(|field| field.units().len() > 1);
        assert!(!has_units || compared_here > 20, "{}: {compared_here} compared", entry.about.id);
    }
    assert!(bad.is_empty(), "{}:\n{}", bad.len(), bad[..bad.len().min(40)].join("\n"));
}

#[test]
fn a_number_means_the_same_in_every_unit() {
    draws(25);
}

#[test]
#[ignore = "takes minutes: cargo test --release --test property -- --ignored"]
fn many_numbers_mean_the_same_in_every_unit() {
    draws(5000);
}

/// The least and the greatest of a coat, or the limits of a lot, may be one thickness in two units: the last bit in
/// which the two differ makes no contradiction.
#[test]
fn one_thickness_in_two_units_is_one() {
    let pairs: [(&str, &str, &str, &[(&str, &str)]); 6] = [
        ("oversize-tap", "coat_least", "coat_greatest", &[]),
        ("gauges", "coat_least", "coat_greatest", &[]),
        ("life", "least", "thickness", &[]),
        ("life", "thickness", "greatest", &[]),
        ("lot", "own_reading", "own_article", &[("standard", "own"), ("readings", "52 57 59")]),
        ("lot", "own_mean", "own_greatest", &[("standard", "own"), ("readings", "52 57 59")]),
    ];
    for (id, less, more, with) in pairs {
        for tenths in (400..800).step_by(7) {
            let um = format!("{}.{} µm", tenths / 10, tenths % 10);
            for other in [&unit::MIL, &unit::MM, &unit::INCH] {
                let mil = unit::UM.convert(f64::from(tenths) / 10.0, other).expect("a length");
                let other = format!("{mil:?} {}", other.symbol);
                for (least, greatest) in [(&um, &other), (&other, &um)] {
                    let fields = [(less, least.as_str()), (more, greatest.as_str())];
                    let answer = evaluate(id, with.iter().copied().chain(fields));
                    assert!(answer.is_ok(), "{id} {less} {least} {more} {greatest}: {}", answer.unwrap_err());
                }
            }
        }
    }
}

/// A unit without a symbol would be chosen in the form and read as the first one: 0.93 as 0.93 %.
#[test]
fn every_unit_that_is_offered_can_be_written() {
    for entry in REGISTER {
        for field in entry.about.fields.iter().filter(|field| field.units().len() > 1) {
            let (id, key) = (entry.about.id, field.key);
            assert!(field.units().iter().all(|unit| !unit.symbol.is_empty()), "{id}: {key}");
        }
    }
}
