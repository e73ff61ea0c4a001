//! Lines that stand among readings and hold none: a damaged reading, or a place that gave none, is asked
//! about and never left out.

use super::grid::{Cell, Grid, Row, Separator};
use super::problem::PasteProblem;
use super::read_as::{Line, LineUse};
use super::{names, words};
use crate::quantity::letters::lower;

/// The first such line, as the problem that it is.
pub fn find(grid: &Grid, lines: &[Line]) -> Option<PasteProblem> {
    let is_article = |line: &Line| matches!(line.usage, LineUse::Article { .. });
    let first = lines.iter().position(is_article)?;
    let last = lines.iter().rposition(is_article)?;
    let found = grid.rows.iter().zip(lines).enumerate().find_map(|(at, (row, line))| {
        let text = match line.usage {
            LineUse::NoReading if at > first => behind(grid, row, at < last),
            // Above the readings a line may say anything but a reading.
            LineUse::NoReading | LineUse::Heading | LineUse::Particular if at < first => {
                above(grid, row, line)
            }
            _ => None,
        }?;
        Some((row.line, text))
    });
    found.map(|(line, text)| PasteProblem::Unread { line, text })
}

/// A damaged reading above the first one: not the date or the number of an order that stands behind its name.
fn above(grid: &Grid, row: &Row, line: &Line) -> Option<String> {
    let says = row
        .label
        .as_deref()
        .is_some_and(|label| !label.contains(|c: char| c.is_ascii_digit()) && !names::is_place(label));
    if says || names::is_no_article(&row.front()) {
        return None;
    }
    let columns = line.usage == LineUse::Heading && grid.separator != Separator::Space;
    let alone = row.texts.len() == 1;
    let words = row.cells.iter().zip(&row.texts).take(if columns { usize::MAX } else { 1 });
    let suspect = |text: &&String| is_marked_number(text) || alone && stands_for_one(text);
    words.filter(|(cell, _)| matches!(cell, Cell::Words(_))).map(|(_, text)| text).find(suspect).cloned()
}

/// The first of several names that stand over readings written one by one: each of these would be an article.
/// Where it is said how many there are on an article, a name that stands over another number is asked.
pub fn blocks(grid: &Grid, lines: &[Line], per_article: Option<u32>) -> Option<PasteProblem> {
    // The readings under each name, and before the first.
    let mut under: Vec<usize> = vec![0];
    let mut first = None;
    for (row, line) in grid.rows.iter().zip(lines) {
        let numbers = row.cells.iter().filter(|cell| matches!(cell, Cell::Number { .. })).count();
        match line.usage {
            LineUse::Article { .. } if numbers == 1 && row.label.is_none() => {
                under.last_mut().into_iter().for_each(|count| *count += 1);
            }
            LineUse::Article { .. } => return None,
            _ if row.label.is_some() && row.cells.is_empty() && !names::is_particular(&row.front()) => {
                first = first.or_else(|| Some((line.number, row.front())));
                under.push(0);
            }
            _ => {}
        }
    }
    let (line, name) = first.filter(|_| under.iter().skip(1).filter(|count| **count > 1).count() > 1)?;
    let Some(per_article) = per_article else { return Some(PasteProblem::NameOverReadings { line, name }) };
    let under: Vec<usize> = under.into_iter().filter(|count| *count > 0).collect();
    let of = usize::try_from(per_article).unwrap_or(usize::MAX);
    let wrong = |&(at, &count): &(usize, &usize)| count > of || count < of && at + 1 < under.len();
    let (at, &readings) = under.iter().enumerate().find(wrong)?;
    Some(PasteProblem::Uneven { article: at + 1, readings, per_article })
}

/// What stands on a line without a number behind the first readings, where it may be a reading; between
/// readings every word may.
fn behind(grid: &Grid, row: &Row, between: bool) -> Option<String> {
    let named = row.label.is_some() || grid.separator != Separator::Space && row.texts.len() > 1;
    let cells = row.cells.iter().zip(&row.texts).skip(usize::from(named && row.label.is_none()));
    let words: Vec<&String> =
        cells.filter(|(cell, _)| matches!(cell, Cell::Words(_))).map(|(_, text)| text).collect();
    let reading = words.iter().find(|word| may_be_reading(word));
    if let Some(&word) = reading {
        return Some(word.clone());
    }
    // A row that is named as an article is, or stands between them, and holds something else.
    let first = row.texts.first().filter(|_| named).map_or("", String::as_str);
    let unknown = !names::is_known(&row.front()) && !names::is_no_article(first) && (between || named);
    (unknown && !words.is_empty()).then(|| words.into_iter().cloned().collect::<Vec<_>>().join(" "))
}

/// Whether a word stands in the place of a reading, wherever it stands: a number with marks, or one that is crossed out.
pub fn is_damaged(word: &str) -> bool {
    is_marked_number(word) || stands_for_one(word)
}

/// Whether a word is made of digits and marks only, and is no number: `<30`, `25*`, `25-30`, `57/30/58`.
fn is_marked_number(word: &str) -> bool {
    let mark = |c: char| "<>≤≥~≈±*?!+-–=.,/ ".contains(c);
    let digit = |c: char| c.is_ascii_digit();
    word.contains(digit)
        && word.contains(mark)
        && word.chars().all(|c| digit(c) || mark(c) || "eExX".contains(c))
}

/// Whether a word may be a reading that was written down damaged, or the lack of one: `x25`, `(25)`, `bare`.
fn may_be_reading(word: &str) -> bool {
    let letters = word.chars().filter(|c| c.is_alphabetic()).count();
    let digits = word.contains(|c: char| c.is_ascii_digit());
    let starts_with_letter = word.starts_with(char::is_alphabetic);
    stands_for_one(word) || letters == 0 || digits && (letters < 2 || !starts_with_letter)
}

/// Whether a word is written in the place of a reading: `bare`, `OL`, or a number that is crossed out, `x25`.
fn stands_for_one(word: &str) -> bool {
    let crossed = word.strip_prefix(['x', 'X']);
    let number = |rest: &str| rest.len() > 1 && rest.bytes().all(|b| b.is_ascii_digit());
    words::NO_READING.split('|').any(|listed| listed == lower(word)) || crossed.is_some_and(number)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_damaged_reading_is_told_from_a_word() {
        for word in ["<30", "25*", "25-30", "57/30/58", "≥ 30", "2e5?", "3.4.5", "30 x 2"] {
            assert!(is_marked_number(word), "{word}");
        }
        for word in ["30", "<", "a30*", "30µm", "", "bolt 3*"] {
            assert!(!is_marked_number(word), "{word}");
        }
        for word in ["x25", "X25", "bare", "OL", "Rust"] {
            assert!(stands_for_one(word), "{word}");
        }
        for word in ["x2", "x", "25", "xx25", "x25a", "barely", ""] {
            assert!(!stands_for_one(word), "{word}");
        }
        for word in ["(25)", "25a", "a1", "25 ab", "…", "bare", "1 x"] {
            assert!(may_be_reading(word), "{word}");
        }
        for word in ["ab1", "rough", "head 2", "a"] {
            assert!(!may_be_reading(word), "{word}");
        }
    }
}
