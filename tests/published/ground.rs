//! What the numbers rest on: the kept files are what the code takes from its documents and what the tests
//! compared with them.
//!
//! The comparisons are those of this very program: it runs itself once more and has each one told. To renew
//! the files: `KETTLE_BARREL_RENEW=ground cargo test --test published ground`.

mod item;
mod taken;
mod token;

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;
use std::process::Command;

use kettle_barrel::calculator::REGISTER;
use kettle_barrel::rule::RULES;
use kettle_barrel::source::{Basis, Source, document, ground};

use crate::seen::{SIGN, WATCHED};
use taken::{Taken, documents, taken};

/// Set to `ground`, the test writes the files instead of comparing with them.
const RENEW: &str = "KETTLE_BARREL_RENEW";
/// What the page and the terminal show of each document.
const GROUND: &str = "src/source/ground.tsv";
/// What the terminal shows of one document.
const TAKEN: &str = "src/bin/terminal/taken.tsv";

#[test]
fn what_the_numbers_rest_on_is_kept() {
    let (taken, _) = taken();
    let ground = grounds(taken);
    assert!(ground.len() < 6_000, "{} bytes are much for the page", ground.len());
    let names: BTreeMap<String, String> = documents().into_iter().collect();
    let rows = taken.iter().map(|row| {
        let Taken { document, place, basis, file, item, what } = row;
        format!("{}\t{place}\t{basis}\t{file}\t{item}\t{what}\n", names[document])
    });
    let rows: String = rows.collect();
    let readme = readme(&ground);
    for (file, text) in [(GROUND, &ground), (TAKEN, &rows), ("README.md", &readme)] {
        let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(file);
        if std::env::var(RENEW).is_ok_and(|what| what == "ground") {
            fs::write(&path, text).unwrap();
            continue;
        }
        let kept = fs::read_to_string(&path).unwrap_or_default();
        let (lines, now): (BTreeSet<_>, BTreeSet<_>) = (kept.lines().collect(), text.lines().collect());
        let first: Vec<_> = now.symmetric_difference(&lines).take(8).collect();
        assert!(
            kept == *text,
            "{file} is out of date: {first:#?}\nRenew it with: {RENEW}=ground cargo test --test published ground"
        );
    }
}

#[test]
fn every_row_of_the_kept_file_is_read() {
    let lines = include_str!("../../src/source/ground.tsv").lines().count();
    assert_eq!(ground::grounds().count(), lines);
    assert_eq!(documents().len(), document::ALL.len());
    for ((_, name), document) in documents().iter().zip(document::ALL) {
        assert_eq!(name, document.name);
    }
}

/// A number of a table without a source would stand alone.
#[test]
fn every_number_of_a_table_has_its_source() {
    let (taken, without) = taken();
    assert!(without.is_empty(), "name the source, or link its constant in the description: {without:#?}");
    let without: Vec<_> =
        taken.iter().filter(|row| row.file.starts_with("table/") && row.basis.is_empty()).collect();
    assert!(without.is_empty(), "say how it is known: {without:#?}");
    assert!(taken.len() > 1_000, "only {} places were found: is the code read?", taken.len());
}

/// What is read from the code is whole: every source that a worked example shows is among it.
#[test]
fn every_source_that_is_shown_was_found_in_the_code() {
    let (taken, _) = taken();
    let names: BTreeMap<String, String> = documents().into_iter().collect();
    let places: BTreeSet<(&str, &str)> =
        taken.iter().map(|row| (names[&row.document].as_str(), row.place.as_str())).collect();
    let shown = examples()
        .into_iter()
        .flat_map(|(_, report)| report.sources())
        .chain(RULES.iter().map(|rule| rule.source));
    let missed: BTreeSet<String> = shown
        // A place that is said where its source is called stands there as none.
        .filter(|source| {
            !places.contains(&(source.document.name, source.place))
                && !places.contains(&(source.document.name, ""))
        })
        .map(|source| source.to_string())
        .collect();
    assert!(missed.is_empty(), "{missed:#?}");
}

/// The README with the totals of these lines.
fn readme(ground: &str) -> String {
    let kept = fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join("README.md")).unwrap();
    let (before, rest) =
        kept.split_once("<!-- ground: ").expect("the README has lost the beginning of its totals");
    let (mark, rest) = rest.split_once('\n').unwrap();
    let (_, after) =
        rest.split_once("<!-- end of ground -->").expect("the README has lost the end of its totals");
    let totals = ground::totals_told(ground::sum(ground::read(ground.to_owned().leak())));
    format!("{before}<!-- ground: {mark}\n{totals}\n<!-- end of ground -->{after}")
}

/// The worked examples of every calculator, answered.
fn examples() -> Vec<(&'static str, kettle_barrel::calculator::Report)> {
    let all = REGISTER.iter().flat_map(|entry| {
        entry.about.examples.iter().map(move |example| {
            let draft = example.pairs.iter().copied().collect();
            (entry.about.id, entry.evaluate(&draft).unwrap_or_else(|problems| panic!("{problems}")))
        })
    });
    all.collect()
}

/// A line a document that something rests on, or that was compared.
fn grounds(taken: &[Taken]) -> String {
    let (compared, steps) = (compared(), steps());
    let mut text = String::new();
    for (constant, name) in documents() {
        let of: Vec<&Taken> = taken.iter().filter(|row| row.document == constant).collect();
        let items = |basis: Option<&str>| {
            let rows = of.iter().filter(|row| basis.is_none_or(|basis| row.basis == basis));
            rows.map(|row| (&row.file, &row.item)).collect::<BTreeSet<_>>().len()
        };
        let rules = RULES.iter().filter(|rule| rule.source.document.name == name).count();
        let apart = compared.get(&name).cloned().unwrap_or_default();
        let as_printed = apart.iter().filter(|apart| **apart == 0.0).count();
        let mut counts = vec![items(None), rules, steps.get(&name).copied().unwrap_or(0)];
        counts.extend(Basis::ALL.map(|basis| items(Some(&basis.to_string()))));
        counts.extend([apart.len(), as_printed]);
        if counts.iter().all(|count| *count == 0) {
            continue;
        }
        // Naught is left out, to keep the file small.
        let counts: Vec<String> =
            counts.iter().map(|count| if *count == 0 { String::new() } else { count.to_string() }).collect();
        text.push_str(&format!(
            "{name}\t{}\t{}\n",
            counts.join("\t"),
            share(apart.iter().fold(0.0, |a, b| b.max(a)))
        ));
    }
    text
}

/// A share in per cent with two digits that count; nothing for none.
fn share(apart: f64) -> String {
    if apart == 0.0 {
        return String::new();
    }
    let percent = 100.0 * apart;
    let decimals = (1 - percent.log10().floor() as i32).max(0) as usize;
    format!("{percent:.decimals$} %")
}

/// By document: the steps of workings that name it, each formula of each calculator once.
fn steps() -> BTreeMap<String, usize> {
    let mut found: BTreeSet<(String, &str, &str, &str)> = BTreeSet::new();
    for (id, report) in examples() {
        for step in report.working.steps() {
            let name = |source: &Source| source.document.name.to_owned();
            let names = step.terms.iter().filter_map(|term| term.source.as_ref().map(name));
            found.extend(names.chain([name(&step.source)]).map(|name| (name, id, step.symbol, step.formula)));
        }
    }
    let mut steps = BTreeMap::new();
    for (name, ..) in found {
        *steps.entry(name).or_insert(0) += 1;
    }
    steps
}

/// By document: how far each compared row lies from the printed value, as the tests of this program tell it.
fn compared() -> BTreeMap<String, Vec<f64>> {
    let told = Command::new(std::env::current_exe().unwrap())
        .args(["--nocapture", "--skip", "ground::"])
        .env(WATCHED, "1")
        .env_remove(RENEW)
        .output()
        .unwrap();
    assert!(told.status.success(), "a comparison fails; run the tests without this one to see which");
    let mut compared: BTreeMap<String, Vec<f64>> = BTreeMap::new();
    for line in String::from_utf8(told.stderr).unwrap().lines() {
        let Some((name, apart)) = line.strip_prefix(SIGN).and_then(|row| row.split_once('\t')) else {
            continue;
        };
        compared.entry(name.to_owned()).or_default().push(apart.parse().unwrap());
    }
    compared
}
