//! Which columns hold readings: by choice, by their headings, and by what stands in them.

use super::grid::{Cell, Grid, Row, Separator};
use super::problem::{Looks, PasteProblem};
use super::read_as::{Column, ColumnUse, Line, LineUse, Why};
use super::{Reading, lines, names};

/// Columns farther apart than this are not readings of one coat.
const FAR: f64 = 3.0;
/// Columns that count are asked about from here on, even beside others that do.
const APART: f64 = 1.5;
/// Cells shown of a column.
const FIRST: usize = 3;

/// Reads `2-6, 8` into columns from 1.
///
/// # Errors
/// What names no columns.
pub fn chosen_columns(text: &str) -> Result<Vec<usize>, PasteProblem> {
    let problem = || PasteProblem::Columns { text: text.to_owned() };
    let number = |text: &str| text.trim().parse::<usize>().ok().filter(|number| (1..=1000).contains(number));
    let mut chosen = Vec::new();
    for part in text.split([',', ';', ' ']).map(str::trim).filter(|part| !part.is_empty()) {
        let (from, to) = part.split_once(['-', '–']).unwrap_or((part, part));
        let (from, to) = number(from).zip(number(to)).filter(|(from, to)| from <= to).ok_or_else(problem)?;
        chosen.extend(from..=to);
    }
    if chosen.is_empty() { Err(problem()) } else { Ok(chosen) }
}

/// Sorts the columns.
pub fn sort(grid: &Grid, lines: &[Line], how: &Reading<'_>) -> Result<Vec<Column>, PasteProblem> {
    let articles: Vec<&Row> = grid
        .rows
        .iter()
        .zip(lines)
        .filter(|(_, line)| matches!(line.usage, LineUse::Article { .. }))
        .map(|(row, _)| row)
        .collect();
    let width = articles.iter().map(|row| row.cells.len()).max().unwrap_or(0);
    let heading = lines::heading(grid).and_then(|at| grid.rows.get(at));
    // A heading of a single cell, or of words between spaces, stands above all of them.
    let shared = heading.filter(|row| row.texts.len() == 1 || grid.separator == Separator::Space);
    let shared_unit = shared.and_then(|row| names::unit_in(&row.text, how.units));
    let mut columns = Vec::with_capacity(width);
    for at in 0..width {
        let name = heading.filter(|_| shared.is_none()).and_then(|row| row.texts.get(at));
        let name = name.filter(|name| !name.is_empty()).cloned();
        let unit = name.as_deref().and_then(|name| names::unit_in(name, how.units)).or(shared_unit);
        let cells = || articles.iter().filter_map(|row| Some((row.line, row.cells.get(at)?)));
        let texts = articles.iter().filter_map(|row| row.texts.get(at)).filter(|text| !text.is_empty());
        let first: Vec<&str> = texts.take(FIRST).map(String::as_str).collect();
        let usage = match how.columns {
            Some(chosen) if chosen.contains(&(at + 1)) => ColumnUse::Readings,
            Some(_) => ColumnUse::LeftOut(Why::NotChosen),
            None => of_column(name.as_deref(), at, grid.separator, &mut cells())?,
        };
        columns.push(Column { heading: name, usage, unit, first: first.join(", ") });
    }
    if let Some(&column) = how.columns.and_then(|chosen| chosen.iter().find(|&&column| column > width)) {
        return Err(PasteProblem::NoSuchColumn { column, columns: width });
    }
    if how.columns.is_none() {
        ask(&articles, &columns)?;
        tell_articles_apart(&articles, &mut columns);
    }
    Ok(columns)
}

/// One column, by its heading and by what stands in it.
fn of_column(
    name: Option<&str>,
    at: usize,
    separator: Separator,
    cells: &mut dyn Iterator<Item = (usize, &Cell)>,
) -> Result<ColumnUse, PasteProblem> {
    let (mut numbers, mut dates, mut times, mut units) = (0, 0, 0, 0);
    let mut words: Option<(usize, &str)> = None;
    for (line, cell) in cells {
        match cell {
            Cell::Number { .. } => numbers += 1,
            Cell::Date => dates += 1,
            Cell::Time => times += 1,
            Cell::Unit(_) => units += 1,
            Cell::Words(text) => words = words.or(Some((line, text))),
            Cell::Blank => {}
        }
    }
    if let Some(name) = name {
        if names::is_summary(name) {
            return Ok(ColumnUse::LeftOut(Why::Summary));
        }
        if names::measures_something_else(name) {
            return Ok(ColumnUse::LeftOut(Why::SomethingElse));
        }
        if names::is_identity(name) {
            return Ok(ColumnUse::LeftOut(Why::Identity));
        }
    }
    Ok(match words {
        // Between spaces columns shift with the words: they are named where they stand.
        Some(_) if separator == Separator::Space => ColumnUse::Readings,
        Some((line, text)) if numbers > 0 => {
            let text = text.to_owned();
            return Err(PasteProblem::MixedColumn { column: at + 1, text, line });
        }
        Some(_) => ColumnUse::LeftOut(Why::Words),
        None if numbers > 0 || units > 0 => ColumnUse::Readings,
        None if dates > 0 => ColumnUse::LeftOut(Why::Date),
        None if times > 0 => ColumnUse::LeftOut(Why::Time),
        None => ColumnUse::LeftOut(Why::Empty),
    })
}

/// Asks where a column without a telling heading could be something else than readings.
fn ask(articles: &[&Row], columns: &[Column]) -> Result<(), PasteProblem> {
    let numbers = |at: usize| -> Vec<f64> {
        let cell = |row: &&Row| match row.cells.get(at) {
            Some(Cell::Number { number, .. }) => Some(*number),
            _ => None,
        };
        articles.iter().filter_map(cell).collect()
    };
    let taken: Vec<(usize, Vec<f64>)> = columns
        .iter()
        .enumerate()
        .filter(|(_, column)| column.is_taken())
        .map(|(at, _)| (at, numbers(at)))
        .collect();
    if taken.len() < 2 || articles.len() < 2 {
        return Ok(());
    }
    for (at, numbers) in &taken {
        let Some(column) = columns.get(*at) else { continue };
        // A unit tells; the word alone does where no other column has a unit.
        let units = columns.iter().any(|other| other.is_taken() && other.unit.is_some());
        let told = |name: &String| column.unit.is_some() || (names::is_readings(name) && !units);
        if column.heading.as_ref().is_some_and(told) {
            continue;
        }
        let others: Vec<f64> =
            taken.iter().filter(|(other, _)| other != at).flat_map(|(_, numbers)| numbers).copied().collect();
        let (own, rest) = (median(numbers), median(&others));
        let far = own > FAR * rest || rest > FAR * own;
        if numbers.is_empty() || others.is_empty() {
            continue;
        }
        // Readings of one coat may count up by chance; numbers of articles stand in front of them.
        let in_front = taken.first().is_some_and(|(first, _)| first == at);
        let alone = || !taken.iter().any(|(other, numbers)| other != at && counts(numbers));
        let apart = own > APART * rest || rest > APART * own;
        let looks = if counts(numbers) && (apart || in_front && alone()) {
            Looks::Counts
        } else if far && numbers.len() > 1 {
            Looks::FarOff
        } else {
            continue;
        };
        return Err(PasteProblem::Asked { column: at + 1, first: column.first.clone(), looks });
    }
    Ok(())
}

/// Whole numbers, each one more than the one before, three at least.
fn counts(numbers: &[f64]) -> bool {
    let step = |(one, next): (&f64, &f64)| one.fract() == 0.0 && *next == one + 1.0;
    numbers.len() > 2 && numbers.iter().zip(numbers.iter().skip(1)).all(step)
}

fn median(numbers: &[f64]) -> f64 {
    let mut sorted = numbers.to_vec();
    sorted.sort_by(f64::total_cmp);
    sorted.get(sorted.len() / 2).copied().unwrap_or(0.0)
}

/// A list with one reading a row, whose rows say to which article they belong.
fn tell_articles_apart(articles: &[&Row], columns: &mut [Column]) {
    let taken = columns.iter().filter(|column| column.is_taken()).count();
    if taken != 1 {
        return;
    }
    let repeats = |at: usize| {
        let text = |row: &&Row| row.texts.get(at).cloned().unwrap_or_default();
        let same = |(one, next): (&&Row, &&Row)| text(one) == text(next);
        let pairs = || articles.iter().zip(articles.iter().skip(1));
        pairs().any(same) && !pairs().all(same)
    };
    let found = columns.iter().enumerate().position(|(at, column)| {
        let names_them = column.usage == ColumnUse::LeftOut(Why::Identity)
            || (at == 0 && column.usage == ColumnUse::LeftOut(Why::Words));
        names_them && repeats(at)
    });
    if let Some(column) = found.and_then(|at| columns.get_mut(at)) {
        column.usage = ColumnUse::Articles;
    }
}

/// What tells the article of a row apart, where a column does.
pub fn group(row: &Row, columns: &[Column]) -> Option<String> {
    let at = columns.iter().position(|column| column.usage == ColumnUse::Articles)?;
    row.texts.get(at).filter(|text| !text.is_empty()).cloned()
}
