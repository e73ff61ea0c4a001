//! What the numbers rest on: the documents, or one of them with all that is taken from it.

use std::fmt::Write;

use clap::{Arg, ArgAction, Command};
use kettle_barrel::quantity::letters::lower;
use kettle_barrel::rule::RULES;
use kettle_barrel::source::ground;
use kettle_barrel::source::{Document, document};

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

/// Answers the command.
///
/// # Errors
/// No document has that name.
pub fn run<'a>(words: impl Iterator<Item = &'a str>) -> Result<Output, String> {
    let name = words.collect::<Vec<_>>().join(" ");
    if name.is_empty() {
        return Ok(Output::answer(all()));
    }
    let is_called = |document: &&&Document| lower(document.name).starts_with(&lower(&name));
    let exact = document::ALL.iter().filter(|document| lower(document.name) == lower(&name));
    let found: Vec<&Document> = exact.chain(document::ALL.iter().filter(is_called)).copied().collect();
    match found.as_slice() {
        [] => Err(format!("There is no document “{name}”; “kettle-barrel sources” lists them.")),
        [first, ..] if lower(first.name) == lower(&name) => Ok(Output::answer(one(first))),
        found => Ok(Output::answer(found.iter().map(|document| one(document)).collect())),
    }
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

/// A document with everything that is taken from it.
fn one(document: &Document) -> String {
    let mut text = format!("{}: {}\n", document.name, document.about);
    let Some(ground) = ground::of(document) else {
        text.push_str("  Nothing is taken from it; it is named as the document to open.\n");
        return text;
    };
    let _ = writeln!(text, "  {ground}");
    for line in TAKEN.lines() {
        let mut columns = line.split('\t');
        let mut next = || columns.next().unwrap_or_default();
        if next() != document.name {
            continue;
        }
        let [place, basis, file, item, what] = [next(), next(), next(), next(), next()];
        let place = if place.is_empty() { "no place" } else { place };
        let item = if item.is_empty() { String::new() } else { format!("{item} in ") };
        let what = if what.is_empty() { String::new() } else { format!(". {what}") };
        let _ = writeln!(text, "  {place} ({basis}): {item}{file}{what}");
    }
    for rule in RULES.iter().filter(|rule| rule.source.document == document) {
        let source = rule.source;
        let _ = writeln!(text, "  rule {}: {}, {}", rule.key.key(), source.place, source.basis);
    }
    text
}
