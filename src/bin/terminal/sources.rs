//! What the numbers rest on: the documents, or one of them with all that is taken from it.

use std::fmt::{self, Write};

use clap::{Arg, ArgAction, Command};
use kettle_barrel::quantity::letters::lower;
use kettle_barrel::rule::{RULES, Rule};
use kettle_barrel::source::ground;
use kettle_barrel::source::{Basis, Document, document};
use serde::Serialize;

use super::output::Output;

/// A line a constant, table or function and place: document, place, basis, file, name in the code, what it
/// is. Made from the code by the tests.
const TAKEN: &str = include_str!("taken.tsv");

/// The command.
pub fn command() -> Command {
    Command::new("sources")
        .about(
            "Says what the numbers rest on: every document, or what is taken from one and checked against it",
        )
        .arg(
            Arg::new("words")
                .value_name("DOCUMENT")
                .help("A document, or the beginning of its name")
                .num_args(0..)
                .action(ArgAction::Append),
        )
        .after_help("kettle-barrel sources ASTM B695")
}

/// What rests on a document.
#[derive(Debug, Serialize)]
pub struct Rests {
    document: &'static str,
    about: &'static str,
    /// How much; none where it is only named, as one to open.
    counted: Option<Counted>,
    /// All that is taken from it, where documents are asked for by name.
    taken: Vec<Taken>,
    /// The rules that judge by it, alike.
    rules: Vec<By>,
}

/// How much rests on a document, and what was compared with it.
#[derive(Debug, Serialize)]
struct Counted {
    values: u32,
    rules: u32,
    steps: u32,
    bases: Vec<Known>,
    rows_compared: u32,
    rows_as_printed: u32,
    farthest: &'static str,
}

/// How many values are known so.
#[derive(Debug, Serialize)]
struct Known {
    basis: Basis,
    values: u32,
}

/// A constant, table or function, and the place that it is taken from.
#[derive(Debug, Serialize)]
struct Taken {
    place: &'static str,
    /// None where the place stands for several.
    basis: Option<Basis>,
    file: &'static str,
    item: &'static str,
    what: &'static str,
}

/// A rule, and the place that it is taken from.
#[derive(Debug, Serialize)]
struct By {
    rule: &'static str,
    place: &'static str,
    basis: Basis,
}

/// What rests on the documents that are asked for, or how much on all of them, as data; and the name asked for.
///
/// # Errors
/// No document has that name.
pub fn rests<'a>(words: impl Iterator<Item = &'a str>) -> Result<(Option<String>, Vec<Rests>), String> {
    let name = Some(words.collect::<Vec<_>>().join(" ")).filter(|name| !name.is_empty());
    let documents = name.as_deref().map_or_else(|| Ok(document::ALL.to_vec()), called)?;
    let rests = documents.iter().map(|document| Rests::of(document, name.is_some())).collect();
    Ok((name, rests))
}

/// The same as text.
///
/// # Errors
/// No document has that name.
pub fn run<'a>(words: impl Iterator<Item = &'a str>) -> Result<Output, String> {
    Ok(Output::answer(match rests(words)? {
        (None, _) => all(),
        (Some(_), rests) => rests.iter().map(Rests::to_string).collect(),
    }))
}

/// The document of that name, or all whose names begin so.
fn called(name: &str) -> Result<Vec<&'static Document>, String> {
    let exact = document::ALL.iter().copied().find(|document| lower(document.name) == lower(name));
    let begin =
        || document::ALL.iter().copied().filter(|document| lower(document.name).starts_with(&lower(name)));
    let found: Vec<&Document> = exact.map_or_else(|| begin().collect(), |one| vec![one]);
    if found.is_empty() {
        return Err(format!("There is no document “{name}”; “kettle-barrel sources” lists them."));
    }
    Ok(found)
}

/// Every document in a line, and the totals.
fn all() -> String {
    let mut text = ground::totals_told(ground::totals()) + "\n\n";
    for document in document::ALL {
        let _ = match ground::of(document) {
            Some(ground) => writeln!(text, "{}: {}. {ground}", document.name, document.about),
            None => writeln!(text, "{}: {}. Named as the document to open.", document.name, document.about),
        };
    }
    text
}

impl Rests {
    fn of(document: &'static Document, whole: bool) -> Self {
        let lines = TAKEN.lines().filter(|_| whole);
        let taken = lines.filter_map(|line| {
            let (_, rest) = line.split_once('\t').filter(|(name, _)| *name == document.name)?;
            let mut columns = rest.split('\t');
            let mut next = || columns.next().unwrap_or_default();
            let (place, told) = (next(), next());
            let basis = Basis::ALL.into_iter().find(|basis| basis.to_string() == told);
            Some(Taken { place, basis, file: next(), item: next(), what: next() })
        });
        let rules = RULES.iter().filter(|rule| whole && rule.source.document == document);
        let by =
            |rule: &&Rule| By { rule: rule.key.key(), place: rule.source.place, basis: rule.source.basis };
        Self {
            document: document.name,
            about: document.about,
            counted: ground::of(document).map(|ground| Counted {
                values: ground.values,
                rules: ground.rules,
                steps: ground.steps,
                bases: ground.bases.map(|(basis, values)| Known { basis, values }).into(),
                rows_compared: ground.rows,
                rows_as_printed: ground.as_printed,
                farthest: ground.largest,
            }),
            taken: taken.collect(),
            rules: rules.copied().map(|rule| by(&rule)).collect(),
        }
    }
}

impl fmt::Display for Rests {
    /// A document with everything that is taken from it.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(f, "{}: {}", self.document, self.about)?;
        let ground = ground::grounds().find(|ground| ground.document.name == self.document);
        let Some(ground) = ground else {
            return writeln!(f, "  Nothing is taken from it; it is named as the document to open.");
        };
        writeln!(f, "  {ground}")?;
        for Taken { place, basis, file, item, what } in &self.taken {
            let place = if place.is_empty() { "no place" } else { place };
            let item = if item.is_empty() { String::new() } else { format!("{item} in ") };
            let what = if what.is_empty() { String::new() } else { format!(". {what}") };
            let basis = basis.map_or_else(String::new, |basis| basis.to_string());
            writeln!(f, "  {place} ({basis}): {item}{file}{what}")?;
        }
        for By { rule, place, basis } in &self.rules {
            writeln!(f, "  rule {rule}: {place}, {basis}")?;
        }
        Ok(())
    }
}
