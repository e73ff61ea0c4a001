//! Text to readings: what people type, paste from a sheet, or what a gauge writes out.
//!
//! The text becomes rows of cells (`grid`), the rows and columns become readings or are left out with
//! a reason (`lines`, `columns`), and what was made of all of it is kept ([`ReadAs`]) to be shown
//! before anything counts. What could mean two things is asked, not guessed.

mod columns;
mod comma;
mod grid;
mod left_out;
mod lines;
mod moment;
mod names;
mod problem;
mod read_as;
mod summary;
mod taken;
#[cfg(test)]
mod tests;
mod unread;
mod words;

use crate::quantity::Unit;
use grid::{Cell, Grid, Row};

pub use columns::chosen_columns;
pub use comma::Comma;
pub use left_out::{Looks, Why};
pub use problem::PasteProblem;
pub use read_as::{Column, ColumnUse, Line, LineUse, ReadAs, Separator};

/// Thicker readings are a wrong unit or a lost decimal mark.
pub(super) const GREATEST_UM: f64 = 1000.0;
const MOST_READINGS: usize = 10_000;
/// Longer texts hold more than one lot.
const LONGEST_TEXT: usize = 1_000_000;

/// How a text is to be read.
#[derive(Debug, Clone, Copy)]
pub struct Reading<'a> {
    /// Units that a number may carry; the first one holds where none is written.
    pub units: &'a [&'static Unit],
    /// What a comma between digits is.
    pub comma: Comma,
    /// The columns that hold readings, from 1; none to go by their headings.
    pub columns: Option<&'a [usize]>,
    /// How many readings there are on an article, where they are written one by one or all on one line; the
    /// last may still lack some.
    pub per_article: Option<u32>,
}

/// What a text holds.
#[derive(Debug)]
pub(super) struct Pasted {
    pub numbers: Vec<f64>,
    pub ends: Vec<usize>,
    pub unit: Option<&'static Unit>,
    pub read_as: ReadAs,
}

/// What was made of a text so far, whether it can count or has to be asked: the table that is shown
/// before anything counts. None where the text cannot be cut into cells at all.
pub fn as_read(text: &str, how: &Reading<'_>) -> Option<ReadAs> {
    let mut sorted = Sorted::of(text, how).ok()?;
    let mut articles = 0;
    for line in &mut sorted.lines {
        if let LineUse::Article { article, .. } = &mut line.usage {
            articles += 1;
            *article = articles;
        }
    }
    match sorted.open {
        // Nothing is left to ask: as it counts.
        None => read(text, how).map(|pasted| pasted.read_as).ok().or_else(|| Some(sorted.read_as())),
        Some(_) => Some(sorted.read_as()),
    }
}

/// A text in rows and columns, each sorted by what it is used for.
struct Sorted {
    grid: Grid,
    lines: Vec<Line>,
    columns: Vec<Column>,
    /// The first question that is left open.
    open: Option<PasteProblem>,
}

impl Sorted {
    fn of(text: &str, how: &Reading<'_>) -> Result<Self, PasteProblem> {
        if text.len() > LONGEST_TEXT {
            return Err(PasteProblem::TooMany);
        }
        let grid = Grid::read(text, how.units, how.comma)?;
        let lines = lines::sort(&grid);
        let (columns, open) = columns::sort(&grid, &lines, how);
        let asked = unread::find(&grid, &lines).or_else(|| unread::blocks(&grid, &lines, how.per_article));
        let open = asked.or_else(|| lines::odd(&grid, &lines)).or(open);
        Ok(Self { grid, lines, columns, open })
    }

    fn read_as(self) -> ReadAs {
        let Grid { comma, separator, .. } = self.grid;
        ReadAs { columns: self.columns, lines: self.lines, comma, separator }
    }

    /// Why no reading was found.
    fn nothing(&self) -> PasteProblem {
        let left_out = |wanted: Why| {
            let at = self.columns.iter().position(|column| column.usage == ColumnUse::LeftOut(wanted))?;
            let heading = self.columns.get(at)?.heading.clone()?;
            Some(PasteProblem::AllLeftOut { column: at + 1, heading, why: wanted })
        };
        // The likeliest first: means that somebody took for readings.
        let found = [Why::Summary, Why::SomethingElse, Why::Identity].into_iter().find_map(left_out);
        found.unwrap_or(PasteProblem::Empty)
    }
}

/// Reads a text.
pub(super) fn read(text: &str, how: &Reading<'_>) -> Result<Pasted, PasteProblem> {
    let mut sorted = Sorted::of(text, how)?;
    if let Some(open) = sorted.open {
        return Err(open);
    }
    let mut pasted = Pasted { numbers: Vec::new(), ends: Vec::new(), unit: None, read_as: ReadAs::default() };
    let mut article: Option<String> = None;
    let columns = &sorted.columns;
    for (row, line) in sorted.grid.rows.iter().zip(&mut sorted.lines) {
        let LineUse::Article { article: at, label, .. } = &mut line.usage else { continue };
        let before = pasted.numbers.len();
        take_row(row, columns, how.units, &mut pasted)?;
        if pasted.numbers.len() == before {
            line.usage = LineUse::NoReading;
            continue;
        }
        // Rows of one article in a list of one reading each, told apart by its number.
        let group = columns::group(row, columns);
        match pasted.ends.last_mut() {
            Some(end) if group.is_some() && group == article => *end = pasted.numbers.len(),
            _ => pasted.ends.push(pasted.numbers.len()),
        }
        *at = pasted.ends.len();
        if label.is_none() {
            label.clone_from(&group);
        }
        article = group;
    }
    if pasted.numbers.is_empty() {
        return Err(sorted.nothing());
    }
    note_unit(&mut pasted.unit, sorted.grid.unit)?;
    if let Some(problem) = summary::contradicted(&sorted.grid, &sorted.lines, &sorted.columns, &pasted) {
        return Err(problem);
    }
    lines::mark_repeats(&sorted.grid, &sorted.columns, &mut sorted.lines);
    pasted.read_as = sorted.read_as();
    Ok(pasted)
}

/// The readings of a row, in the columns taken.
fn take_row(
    row: &Row,
    columns: &[Column],
    units: &[&'static Unit],
    pasted: &mut Pasted,
) -> Result<(), PasteProblem> {
    for (at, cell) in row.cells.iter().enumerate() {
        let Some(column) = columns.get(at).filter(|column| column.is_taken()) else { continue };
        match cell {
            Cell::Number { number, unit } => {
                pasted.numbers.push(*number);
                note_unit(&mut pasted.unit, *unit)?;
                note_unit(&mut pasted.unit, column.unit)?;
            }
            Cell::Unit(unit) => note_unit(&mut pasted.unit, Some(unit))?,
            Cell::Words(text) => {
                let units = units.iter().map(|unit| unit.symbol).collect();
                return Err(PasteProblem::NotANumber { line: row.line, text: text.clone(), units });
            }
            Cell::Blank | Cell::Date | Cell::Time => {}
        }
    }
    if pasted.numbers.len() > MOST_READINGS { Err(PasteProblem::TooMany) } else { Ok(()) }
}

/// One unit holds for all of them.
fn note_unit(seen: &mut Option<&'static Unit>, unit: Option<&'static Unit>) -> Result<(), PasteProblem> {
    match (*seen, unit) {
        (Some(one), Some(other)) if one != other => Err(PasteProblem::MixedUnits { one, other }),
        (None, Some(unit)) => {
            *seen = Some(unit);
            Ok(())
        }
        _ => Ok(()),
    }
}
