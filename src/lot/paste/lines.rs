//! Which lines hold readings: headings, particulars and summaries are left out by name.

use std::cmp::Reverse;
use std::collections::HashMap;

use super::grid::{Cell, Grid, Row};
use super::names;
use super::problem::PasteProblem;
use super::read_as::{Column, Line, LineUse};

/// Sorts the lines; those with numbers that nothing speaks against are articles.
pub fn sort(grid: &Grid) -> Vec<Line> {
    let heading = heading(grid);
    let usage = |(at, row): (usize, &Row)| {
        let front = row.front();
        if names::is_summary(&front) && (row.has_number() || row.label.is_some()) {
            LineUse::Summary(front)
        } else if heading.is_some_and(|heading| at < heading) {
            LineUse::Particular
        } else if heading == Some(at) || heading.is_some_and(|heading| same(grid, heading, row)) {
            LineUse::Heading
        } else if !row.has_number() {
            if names::is_particular(&front) { LineUse::Particular } else { LineUse::NoReading }
        } else if names::is_particular(&front) && grid.rows.len() > 1 {
            LineUse::Particular
        } else {
            let label = row.label.clone().or_else(|| {
                let words = row.cells.iter().zip(&row.texts).find(|(cell, _)| !matches!(cell, Cell::Blank));
                words.filter(|(cell, _)| matches!(cell, Cell::Words(_))).map(|(_, text)| text.clone())
            });
            LineUse::Article { article: 0, label, repeats: None }
        }
    };
    grid.rows
        .iter()
        .enumerate()
        .map(|(at, row)| Line {
            number: row.line,
            text: row.text.clone(),
            cells: row.texts.clone(),
            usage: usage((at, row)),
        })
        .collect()
}

/// The line that is called by a word alone where most others carry a number in front, or nothing: a limit
/// or a mean in a word that is not known here, more likely than an article.
pub fn odd(grid: &Grid, lines: &[Line]) -> Option<PasteProblem> {
    let named = |(row, line): (&Row, &Line)| {
        let article = matches!(line.usage, LineUse::Article { .. });
        let front = row.front();
        let word = !front.is_empty() && !front.contains(|c: char| c.is_ascii_digit());
        article.then(|| (line.number, word.then_some(front)))
    };
    let articles: Vec<_> = grid.rows.iter().zip(lines).filter_map(named).collect();
    let words = articles.iter().filter(|(_, word)| word.is_some()).count();
    let (line, name) = articles.iter().find_map(|(line, word)| Some((*line, word.clone()?)))?;
    (3 * words <= articles.len()).then_some(PasteProblem::OddLine { line, name })
}

/// The heading: words in every cell, above a line of numbers; where several lines are such, the one
/// with the most cells.
///
/// What stands above it tells what was measured. A line of numbers there would be an article without
/// a heading, so only what is named otherwise, or is a pair of a name and a value, is passed over.
pub fn heading(grid: &Grid) -> Option<usize> {
    let cells = |row: &Row| row.cells.iter().filter(|cell| **cell != Cell::Blank).count();
    let wordy = |row: &Row| {
        let words = |cell: &Cell| matches!(cell, Cell::Words(_) | Cell::Unit(_) | Cell::Blank);
        row.label.is_none() && cells(row) > 0 && row.cells.iter().all(words)
    };
    let heads = |row: &Row| wordy(row) || row.numbers_columns();
    let pairs = grid.rows.iter().zip(grid.rows.iter().skip(1)).enumerate();
    let found =
        pairs.filter(|(_, (row, next))| heads(row) && next.has_number()).map(|(at, (row, _))| (at, row));
    // Of equals the first.
    let (at, heading) = found.max_by_key(|&(at, row)| (cells(row), Reverse(at)))?;
    let passed = |row: &Row| {
        let front = row.front();
        let pair = !front.is_empty() && cells(row) <= 2 && cells(heading) > 2;
        !row.has_number() || names::is_no_article(&front) || pair
    };
    grid.rows.get(..at)?.iter().all(passed).then_some(at)
}

fn same(grid: &Grid, heading: usize, row: &Row) -> bool {
    grid.rows.get(heading).is_some_and(|heading| heading.texts == row.texts)
}

/// Marks the lines that read exactly as one before: pasted twice, or measured twice.
pub fn mark_repeats(grid: &Grid, columns: &[Column], lines: &mut [Line]) {
    let mut seen: HashMap<String, usize> = HashMap::new();
    for (row, line) in grid.rows.iter().zip(lines) {
        let LineUse::Article { repeats, .. } = &mut line.usage else { continue };
        let numbers = row.cells.iter().zip(columns).filter_map(|(cell, column)| match cell {
            Cell::Number { number, .. } if column.is_taken() => Some(number.to_string()),
            _ => None,
        });
        let numbers: Vec<String> = numbers.collect();
        // One or two equal readings are chance, and so are lines of one number alone.
        if numbers.len() > 2 && numbers.iter().any(|number| numbers.first() != Some(number)) {
            let first = *seen.entry(numbers.join(" ")).or_insert(line.number);
            *repeats = (first != line.number).then_some(first);
        }
    }
}
