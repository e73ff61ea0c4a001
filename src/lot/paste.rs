//! Text to readings: what people type, paste from a sheet, or what a gauge writes out.
//!
//! The text becomes rows of cells (`grid`), the rows and columns become readings or are left out with
//! a reason (`lines`, `columns`), and what was made of all of it is kept ([`ReadAs`]) to be shown
//! before anything counts. What could mean two things is asked, not guessed.

mod columns;
mod comma;
mod grid;
mod lines;
mod names;
mod problem;
mod read_as;
#[cfg(test)]
mod tests;

use crate::quantity::Unit;
use grid::{Cell, Grid, Row};

pub use columns::chosen_columns;
pub use comma::Comma;
pub use problem::PasteProblem;
pub use read_as::{Column, ColumnUse, Line, LineUse, ReadAs, Separator, Why};

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
}

/// What a text holds.
#[derive(Debug)]
pub(super) struct Pasted {
    pub numbers: Vec<f64>,
    pub ends: Vec<usize>,
    pub unit: Option<&'static Unit>,
    pub read_as: ReadAs,
}

/// Reads a text.
pub(super) fn read(text: &str, how: &Reading<'_>) -> Result<Pasted, PasteProblem> {
    if text.len() > LONGEST_TEXT {
        return Err(PasteProblem::TooMany);
    }
    let grid = Grid::read(text, how.units, how.comma)?;
    let mut lines = lines::sort(&grid);
    let columns = columns::sort(&grid, &lines, how)?;
    let mut pasted = Pasted { numbers: Vec::new(), ends: Vec::new(), unit: None, read_as: ReadAs::default() };
    let mut article: Option<String> = None;
    for (row, line) in grid.rows.iter().zip(&mut lines) {
        let LineUse::Article { article: at, label, .. } = &mut line.usage else { continue };
        let before = pasted.numbers.len();
        take_row(row, &columns, how.units, &mut pasted)?;
        if pasted.numbers.len() == before {
            line.usage = LineUse::NoReading;
            continue;
        }
        // Rows of one article in a list of one reading each, told apart by its number.
        let group = columns::group(row, &columns);
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
        return Err(PasteProblem::Empty);
    }
    note_unit(&mut pasted.unit, grid.unit)?;
    lines::mark_repeats(&grid, &columns, &mut lines);
    pasted.read_as = ReadAs { columns, lines, comma: grid.comma, separator: grid.separator };
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
