//! What the numbers rest on, by document: what the code takes from it, and how many of its published rows
//! were compared with ours.
//!
//! The rows of `ground.tsv` are made by the tests, from the code and from their own comparisons, and a test
//! fails where they are out of date; nobody counts by hand.

use std::fmt;

use super::{Basis, Document, document};

/// What rests on a document, and what was compared with it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ground {
    /// The document.
    pub document: &'static Document,
    /// Constants, tables and functions of the code that are taken from it.
    pub values: u32,
    /// Rules that judge by it.
    pub rules: u32,
    /// Steps of workings that name it, in the worked examples of the calculators.
    pub steps: u32,
    /// Of the constants, how many are known on each basis; one may be known on several.
    pub bases: [(Basis, u32); 5],
    /// Published rows that were compared.
    pub rows: u32,
    /// Of these, how many agree to the digits printed.
    pub as_printed: u32,
    /// How far the farthest of the others lies from the printed value: `0.45 %`; empty where there is none.
    pub largest: &'static str,
}

impl fmt::Display for Ground {
    /// As `38 taken (25 read, 26 from memory), 3 rules, 3 steps; 531 rows compared, 388 as printed, the others
    /// within 0.22 %.`
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} taken", self.values)?;
        let mut before = " (";
        for (basis, count) in self.bases.iter().filter(|(_, count)| *count > 0) {
            write!(f, "{before}{count} {basis}")?;
            before = ", ";
        }
        if before == ", " {
            f.write_str(")")?;
        }
        for (count, word) in [(self.rules, "rule"), (self.steps, "step"), (self.rows, "row")] {
            let (sign, tail) = if word == "row" { (";", " compared") } else { (",", "") };
            let plural = if count == 1 { "" } else { "s" };
            write!(f, "{sign} {count} {word}{plural}{tail}")?;
        }
        match self.rows.saturating_sub(self.as_printed) {
            0 if self.rows == 0 => f.write_str("."),
            0 => f.write_str(", all as printed."),
            _ => write!(f, ", {} as printed, the others within {}.", self.as_printed, self.largest),
        }
    }
}

/// Every document that something rests on or was compared with, in the order of [`document::ALL`].
pub fn grounds() -> impl Iterator<Item = Ground> {
    read(include_str!("ground.tsv"))
}

/// The rows of such a file.
pub fn read(file: &'static str) -> impl Iterator<Item = Ground> {
    file.lines().filter_map(ground)
}

/// What rests on a document; `None` where it is only named, as one to open.
pub fn of(document: &Document) -> Option<Ground> {
    grounds().find(|ground| ground.document == document)
}

/// Documents, what is taken from them, rules, rows compared, and those as printed.
pub fn totals() -> [u32; 5] {
    sum(grounds())
}

/// The totals in a sentence: the same on the page, in the terminal and in the README.
pub fn totals_told([documents, values, rules, rows, as_printed]: [u32; 5]) -> String {
    format!(
        "{values} constants and tables and {rules} rules rest on {documents} documents and bodies of practice. \
         The tests compare {rows} rows of them with ours: {as_printed} agree to the digits printed, and of the \
         others each document says how far they lie apart."
    )
}

/// The totals of these.
pub fn sum(grounds: impl Iterator<Item = Ground>) -> [u32; 5] {
    grounds.fold([0; 5], |[documents, values, rules, rows, as_printed], ground| {
        [
            documents + 1,
            values + ground.values,
            rules + ground.rules,
            rows + ground.rows,
            as_printed + ground.as_printed,
        ]
    })
}

fn ground(line: &'static str) -> Option<Ground> {
    let mut columns = line.split('\t');
    let name = columns.next()?;
    let mut next = || columns.next().unwrap_or_default();
    let mut count = || next().parse().unwrap_or_default();
    Some(Ground {
        document: document::ALL.iter().find(|document| document.name == name)?,
        values: count(),
        rules: count(),
        steps: count(),
        bases: Basis::ALL.map(|basis| (basis, count())),
        rows: count(),
        as_printed: count(),
        largest: next(),
    })
}
