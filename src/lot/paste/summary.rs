//! What an export says of its own readings, against those that were read: the cheapest guard against one
//! that was lost.

use super::grid::{Cell, Grid, Row};
use super::problem::PasteProblem;
use super::read_as::{Column, Line, LineUse};
use super::{Pasted, names};

/// The first mean or number of readings that what was read does not bear out.
pub fn contradicted(
    grid: &Grid,
    lines: &[Line],
    columns: &[Column],
    pasted: &Pasted,
) -> Option<PasteProblem> {
    let (mut read, mut block) = (0, 0);
    let (all, articles) = (pasted.numbers.as_slice(), article_means(pasted));
    let overall = (mean_of(all), mean_of(&articles));
    for (row, line) in grid.rows.iter().zip(lines) {
        match &line.usage {
            LineUse::Article { .. } => read += numbers(row, columns).count(),
            LineUse::Summary(name) => {
                let (mean, count) = (names::is_mean(name), names::is_count(name));
                let Some((says, decimals)) = said(row, columns, pasted).filter(|_| mean || count) else {
                    continue;
                };
                let section = pasted.numbers.get(block..read).unwrap_or_default();
                let gives = if mean {
                    [overall.0, overall.1, mean_of(section)]
                } else {
                    [all.len(), articles.len(), section.len()].map(|count| Some(count as f64))
                };
                // Cut or rounded, a mean differs by less than one in its last digit.
                let apart = if mean { 10_f64.powi(-decimals) } else { 0.5 };
                let borne_out = |gives: &f64| (gives - says).abs() < 1.0001 * apart;
                if !gives.iter().flatten().any(borne_out) {
                    let read = gives.into_iter().flatten().next().unwrap_or(0.0);
                    return Some(PasteProblem::Contradicted {
                        line: row.line,
                        name: name.clone(),
                        says,
                        read,
                    });
                }
                if mean {
                    block = read;
                }
            }
            _ => {}
        }
    }
    None
}

/// The one number of a summary, in the unit of the readings, and its decimals.
fn said(row: &Row, columns: &[Column], pasted: &Pasted) -> Option<(f64, i32)> {
    let one = |found: Vec<usize>| match found.as_slice() {
        [at] => Some(*at),
        _ => None,
    };
    let all = (0..row.cells.len()).filter(|&at| matches!(row.cells.get(at), Some(Cell::Number { .. })));
    let at = one(all.collect()).or_else(|| one(numbers(row, columns).collect()))?;
    let Some(Cell::Number { number, unit }) = row.cells.get(at) else { return None };
    let digits = row.texts.get(at)?.split_once(['.', ',']);
    let decimals = digits.map_or(0, |(_, rest)| rest.chars().take_while(char::is_ascii_digit).count().min(9));
    (unit.is_none() || *unit == pasted.unit).then_some((*number, decimals as i32))
}

/// Where the readings of a row stand.
fn numbers<'a>(row: &'a Row, columns: &'a [Column]) -> impl Iterator<Item = usize> + 'a {
    let cells = row.cells.iter().zip(columns).enumerate();
    cells
        .filter(|(_, (cell, column))| column.is_taken() && matches!(cell, Cell::Number { .. }))
        .map(|(at, _)| at)
}

fn mean_of(numbers: &[f64]) -> Option<f64> {
    (!numbers.is_empty()).then(|| numbers.iter().sum::<f64>() / numbers.len() as f64)
}

fn article_means(pasted: &Pasted) -> Vec<f64> {
    let starts = std::iter::once(0).chain(pasted.ends.iter().copied());
    starts.zip(&pasted.ends).filter_map(|(start, &end)| mean_of(pasted.numbers.get(start..end)?)).collect()
}
