//! A table of texts, for the page and the terminal alike.

use std::borrow::Cow;
use std::fmt;

use serde::Serialize;

use crate::quantity::{Shown, Unit, Units, unit};

/// Rows under a heading.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Table {
    /// What it is of.
    pub title: String,
    /// What stands over the columns.
    pub heading: Vec<Cow<'static, str>>,
    /// The cells, as many in each row as in the heading.
    pub rows: Vec<Vec<String>>,
}

impl Table {
    /// A table without rows yet, its heading in the reader's units.
    pub fn of(title: impl Into<String>, heading: &[&'static str], units: Units) -> Self {
        let heading = heading.iter().map(|name| under(units, name)).collect();
        Self { title: title.into(), heading, rows: Vec::new() }
    }
}

/// The units that stand in headings.
const UNITS: [&Unit; 3] = [&unit::UM, &unit::KG, &unit::M2];

/// What stands over a column, with the unit of its numbers in the reader's system.
pub(super) fn under(units: Units, heading: &'static str) -> Cow<'static, str> {
    let parts = heading.strip_suffix(')').and_then(|heading| heading.split_once(" ("));
    let unit = parts.and_then(|(_, symbol)| UNITS.into_iter().find(|unit| unit.symbol == symbol));
    match (parts, unit) {
        (Some((name, symbol)), Some(unit)) if units.unit(unit).symbol != symbol => {
            format!("{name} ({})", units.unit(unit).symbol).into()
        }
        _ => heading.into(),
    }
}

/// A number below such a heading.
pub(super) fn number(units: Units, shown: Shown) -> String {
    units.show(shown).digits()
}

impl fmt::Display for Table {
    /// As plain text, the columns below each other.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let letters = |text: &str| text.chars().count();
        writeln!(f, "{}", self.title)?;
        let heading: Vec<&str> = self.heading.iter().map(Cow::as_ref).collect();
        let rows = self.rows.iter().map(|row| row.iter().map(String::as_str).collect());
        let lines: Vec<Vec<&str>> = std::iter::once(heading).chain(rows).collect();
        let widths: Vec<usize> = (0..self.heading.len())
            .map(|at| lines.iter().filter_map(|line| line.get(at)).map(|cell| letters(cell)).max())
            .map(Option::unwrap_or_default)
            .collect();
        for line in &lines {
            let cells = line.iter().zip(&widths).map(|(cell, width)| format!("  {cell:<width$}"));
            writeln!(f, "{}", cells.collect::<String>().trim_end())?;
        }
        Ok(())
    }
}
