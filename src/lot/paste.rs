//! Text to readings: what people type, paste from a sheet, or save as CSV.
//!
//! How the rows, headings, labels and units of such a text are told apart; what a comma is, the
//! neighbouring `comma` decides.

use std::fmt;

use super::comma::{Comma, decide, starts_with_digit, tight_chunks};
use crate::quantity::number::{plain_number, split_unit};
use crate::quantity::{Shown, Unit};

/// Why a text is no set of readings.
#[derive(Debug, Clone, PartialEq)]
pub enum PasteProblem {
    /// No reading in it.
    Empty,
    /// Something that is no number.
    NotANumber {
        /// Which reading it would be.
        place: usize,
        /// As written.
        text: String,
    },
    /// A comma that could be a decimal mark or stand between readings.
    Ambiguous {
        /// As written.
        text: String,
    },
    /// Two units in one text.
    MixedUnits {
        /// The first.
        one: &'static Unit,
        /// The other.
        other: &'static Unit,
    },
    /// `;` on some of the lines.
    MixedSeparators,
    /// The first numbers of the lines count the lines.
    RowNumbers,
    /// A reading of nothing or less, or thicker than any coat.
    OutOfRange {
        /// Which reading.
        place: usize,
        /// Its number.
        number: f64,
        /// Its unit.
        unit: &'static Unit,
    },
    /// Readings that cannot be counted off evenly.
    LeftOver {
        /// How many there are.
        readings: usize,
        /// How many to an article.
        per_article: u32,
    },
    /// More than one lot's worth.
    TooMany,
}

/// Thicker readings are a wrong unit or a lost decimal mark.
pub(super) const GREATEST_UM: f64 = 1000.0;
const MOST_READINGS: usize = 10_000;

/// What a text holds.
#[derive(Debug)]
pub(super) struct Pasted {
    pub numbers: Vec<f64>,
    pub ends: Vec<usize>,
    pub unit: Option<&'static Unit>,
    pub comma: Option<Comma>,
    pub heading: bool,
}

/// Reads a text.
pub(super) fn read(text: &str, units: &[&'static Unit], comma: Comma) -> Result<Pasted, PasteProblem> {
    let text: String =
        text.chars().filter(|c| *c != '\u{feff}').map(|c| if is_space(c) { ' ' } else { c }).collect();
    let mut lines: Vec<&str> =
        text.split(['\n', '\r']).map(str::trim).filter(|line| !line.is_empty()).collect();
    let mut pasted =
        Pasted { numbers: Vec::new(), ends: Vec::new(), unit: None, comma: None, heading: false };
    if let [first, _, ..] = lines.as_slice()
        && is_heading(first)
    {
        pasted.unit = unit_in_heading(first, units);
        pasted.heading = true;
        lines.remove(0);
    }
    let with_semicolon = lines.iter().filter(|line| line.trim_end_matches(';').contains(';')).count();
    let articles: Vec<&str> = match lines.as_slice() {
        // Below a heading even a single line is a row of a sheet.
        [line] if !pasted.heading => {
            line.split(';').map(str::trim).filter(|article| !article.is_empty()).collect()
        }
        _ if with_semicolon == 0 || with_semicolon == lines.len() => lines,
        _ => return Err(PasteProblem::MixedSeparators),
    };
    let articles: Vec<&str> = articles.into_iter().map(without_label).collect();
    let between_articles = with_semicolon > 0;
    let comma = match comma {
        Comma::Decide => decide(&articles, between_articles)?,
        told => told,
    };
    if articles.iter().any(|article| tight_chunks(article).next().is_some()) {
        pasted.comma = Some(comma);
    }
    for article in &articles {
        read_article(article, units, comma, &mut pasted)?;
        if pasted.ends.last().copied().unwrap_or(0) < pasted.numbers.len() {
            pasted.ends.push(pasted.numbers.len());
        }
    }
    if pasted.numbers.is_empty() {
        return Err(PasteProblem::Empty);
    }
    refuse_row_numbers(&pasted)?;
    Ok(pasted)
}

/// One article: numbers between spaces, tabs, `;` and commas as they were decided.
fn read_article(
    article: &str,
    units: &[&'static Unit],
    comma: Comma,
    pasted: &mut Pasted,
) -> Result<(), PasteProblem> {
    for cell in article.split([' ', '\t', ';']) {
        // A comma at the edge of a cell had a space beside it: it stands between readings.
        let cell = cell.trim_matches(',');
        let parts = if comma == Comma::Decimal { 1 } else { usize::MAX };
        for part in cell.splitn(parts, ',').filter(|part| !part.is_empty()) {
            let place = pasted.numbers.len() + 1;
            let (digits, written) = split_unit(part);
            let unreadable = || PasteProblem::NotANumber { place, text: part.to_owned() };
            if !digits.is_empty() {
                pasted.numbers.push(number(digits).ok_or_else(unreadable)?);
            }
            if !written.is_empty() {
                let unit =
                    units.iter().copied().find(|unit| unit.is_written(written)).ok_or_else(unreadable)?;
                match pasted.unit {
                    Some(one) if one != unit => return Err(PasteProblem::MixedUnits { one, other: unit }),
                    _ => pasted.unit = Some(unit),
                }
            }
            if pasted.numbers.len() > MOST_READINGS {
                return Err(PasteProblem::TooMany);
            }
        }
    }
    Ok(())
}

/// A plain decimal number; grouped digits, signs and exponents are no gauge readings.
pub(super) fn number(digits: &str) -> Option<f64> {
    let plain = digits.replacen(',', ".", 1);
    let good = plain.bytes().all(|b| b.is_ascii_digit() || b == b'.') && plain.len() <= 18;
    if good { plain_number(&plain) } else { None }
}

fn is_space(c: char) -> bool {
    c.is_whitespace() && !matches!(c, '\n' | '\r' | '\t')
}

/// A first line of words: no cell of it begins with a digit, and no word of it is a number unless
/// the line is cut into cells.
fn is_heading(line: &str) -> bool {
    let mut cells = line.split([';', '\t', ',']).map(str::trim);
    let words = cells.clone().count() == 1;
    let wordy = cells.all(|cell| !starts_with_digit(cell));
    let numbers = line.split_whitespace().any(starts_with_digit);
    line.contains(char::is_alphabetic) && wordy && !(words && numbers)
}

fn unit_in_heading(line: &str, units: &[&'static Unit]) -> Option<&'static Unit> {
    let words = line.split(|c: char| c.is_whitespace() || matches!(c, ';' | ',' | '(' | ')' | '[' | ']'));
    // `in` is a word of the language before it is a unit.
    let mut words = words.filter(|word| !word.is_empty() && !word.eq_ignore_ascii_case("in"));
    words.find_map(|word| units.iter().copied().find(|unit| unit.is_written(word)))
}

/// Leaves out a label in front: with a colon, in a cell of its own, or like `A1` and `#3`.
fn without_label(article: &str) -> &str {
    // A colon between two digits is a time of day, not a label.
    if let Some((label, behind)) = article.split_once(':')
        && (!starts_with_digit(behind) || label.contains(char::is_alphabetic))
    {
        return behind.trim();
    }
    let is_label =
        |text: &str| !starts_with_digit(text) && text.contains(|c: char| c.is_alphabetic() || c == '#');
    if let Some((cell, behind)) = article.split_once([';', '\t', ','])
        && is_label(cell)
    {
        return behind.trim();
    }
    match article.split_once(' ') {
        Some((word, behind)) if is_label(word) && word.contains(|c: char| c.is_ascii_digit()) => {
            behind.trim()
        }
        _ => article,
    }
}

/// Lines that begin 1, 2, 3 … carry their row number, which is no reading.
fn refuse_row_numbers(pasted: &Pasted) -> Result<(), PasteProblem> {
    let starts: Vec<usize> = std::iter::once(0).chain(pasted.ends.iter().copied()).collect();
    let counted = pasted.ends.iter().zip(&starts).enumerate().all(|(row, (&end, &start))| {
        end - start > 1 && pasted.numbers.get(start).is_some_and(|&number| number == (row + 1) as f64)
    });
    if pasted.ends.len() > 2 && counted { Err(PasteProblem::RowNumbers) } else { Ok(()) }
}

impl fmt::Display for PasteProblem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Empty => f.write_str("no reading is written here; write for example 52 48 51"),
            Self::NotANumber { place, text } => write!(
                f,
                "“{text}”, in the place of reading {place}, is not a reading; write numbers such as 52.3 with \
                 spaces between them, and a colon behind a label"
            ),
            Self::Ambiguous { text } => write!(
                f,
                "“{text}” could be one reading or two; write a point for the decimal mark and spaces between \
                 readings, or choose what the comma is"
            ),
            Self::MixedUnits { one, other } => write!(
                f,
                "readings in {} and in {} are mixed; write all of them in one unit",
                one.symbol, other.symbol
            ),
            Self::MixedSeparators => f.write_str(
                "some lines hold “;” and others do not; put each article on its own line and spaces between \
                 its readings",
            ),
            Self::RowNumbers => f.write_str(
                "the lines begin with 1, 2, 3, which look like row numbers; take that column out, or write \
                 a colon behind each",
            ),
            Self::OutOfRange { place, number, unit } => write!(
                f,
                "reading {place} is {}; a reading is above 0 and at most {} µm: check the unit and \
                 the decimal mark",
                Shown { number: *number, unit, decimals: 2 },
                GREATEST_UM
            ),
            Self::LeftOver { readings, per_article } => write!(
                f,
                "{readings} readings cannot be counted off in articles of {per_article}; add what is missing, \
                 or leave the count empty"
            ),
            Self::TooMany => write!(f, "more than {MOST_READINGS} readings; check one lot at a time"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::Readings;
    use super::*;
    use crate::quantity::{Length, unit};

    static UNITS: [&Unit; 4] = [&unit::UM, &unit::MIL, &unit::MM, &unit::INCH];

    fn articles(text: &str) -> Result<Vec<Vec<f64>>, String> {
        let readings =
            Readings::read(text, &UNITS, Comma::Decide, None).map_err(|problem| problem.to_string())?;
        let round = |value: &Length| (value.um() * 1e6).round() / 1e6;
        Ok(readings.articles().map(|article| article.iter().map(round).collect()).collect())
    }

    #[test]
    fn readings_as_people_write_and_paste_them() {
        let rows = |rows: &[&[f64]]| Ok(rows.iter().map(|row| row.to_vec()).collect::<Vec<_>>());
        assert_eq!(articles("52"), rows(&[&[52.0]]));
        assert_eq!(articles("52 48 51"), rows(&[&[52.0, 48.0, 51.0]]));
        assert_eq!(articles("52 48; 51 50;"), rows(&[&[52.0, 48.0], &[51.0, 50.0]]));
        assert_eq!(articles("52\n48\r\n51\n"), rows(&[&[52.0], &[48.0], &[51.0]]));
        assert_eq!(articles("52,3; 48,1"), rows(&[&[52.3], &[48.1]]));
        assert_eq!(articles("52,3 48,1; 50,2 47"), rows(&[&[52.3, 48.1], &[50.2, 47.0]]));
        assert_eq!(articles("52,3\t48,1\n50,2\t47,9"), rows(&[&[52.3, 48.1], &[50.2, 47.9]]));
        assert_eq!(articles("52,3\n48,1\n50,2"), rows(&[&[52.3], &[48.1], &[50.2]]));
        assert_eq!(articles("8,05\n8,12"), rows(&[&[8.05], &[8.12]]));
        assert_eq!(articles("52,3, 48,1, 50,2"), rows(&[&[52.3, 48.1, 50.2]]));
        assert_eq!(articles("52, 48, 51"), rows(&[&[52.0, 48.0, 51.0]]));
        assert_eq!(articles("52,48,51\n50,49,47"), rows(&[&[52.0, 48.0, 51.0], &[50.0, 49.0, 47.0]]));
        assert_eq!(articles("52.3,48.1\n50.2,47.9"), rows(&[&[52.3, 48.1], &[50.2, 47.9]]));
        assert_eq!(articles("2.1 mil 1.9 mil"), rows(&[&[53.34, 48.26]]));
        assert_eq!(articles("0.0021 0.0019 in"), rows(&[&[53.34, 48.26]]));
        assert_eq!(articles("52µm 48"), rows(&[&[52.0, 48.0]]));
    }

    #[test]
    fn headings_labels_and_sheets_saved_as_csv() {
        let two = Ok(vec![vec![52.3, 48.1], vec![50.2, 47.9]]);
        assert_eq!(articles("article;reading 1;reading 2\nA1;52,3;48,1\nA2;50,2;47,9"), two);
        assert_eq!(articles("Article,µm,µm\nA1,52.3,48.1\nA2,50.2,47.9"), two);
        assert_eq!(articles("A1 52.3 48.1\nA2 50.2 47.9"), two);
        assert_eq!(articles("bolt 1: 52.3 48.1; bolt 2: 50.2 47.9"), two);
        assert_eq!(articles("thickness in mil\n2\n2"), Ok(vec![vec![50.8], vec![50.8]]));
        assert_eq!(articles("first;second\n52,3;48,1"), Ok(vec![vec![52.3, 48.1]]));
    }

    #[test]
    fn what_could_mean_two_things_is_refused_and_can_be_told() {
        for text in ["52,48", "52,48\n51,50", "8,3\n8,5", "52, 48,51", "52,3,48,1", "1,234.5"] {
            let problem = articles(text).unwrap_err();
            assert!(problem.contains("could be one reading or two"), "{text}: {problem}");
        }
        let told = |comma| Readings::read("52,48", &UNITS, comma, None).unwrap().values().len();
        assert_eq!((told(Comma::Decimal), told(Comma::Separator)), (1, 2));
    }

    #[test]
    fn what_is_no_reading_is_refused_with_the_remedy() {
        for (text, part) in [
            ("", "no reading"),
            (" ; ;", "no reading"),
            ("52 five", "“five”, in the place of reading 2"),
            ("bolt 1 52 48", "colon behind a label"),
            ("52 µm 2 mil", "mixed"),
            ("thickness µm\n2 mil", "mixed"),
            ("52 -3", "“-3”"),
            ("52 0", "reading 2 is"),
            ("52 5200", "check the unit"),
            ("52;48\n51", "some lines hold"),
            ("1 52\n2 48\n3 51", "row numbers"),
            ("52 1e3", "“1e3”"),
            ("10:52 52.3", "“10:52”"),
            ("52 48 kg", "“kg”"),
        ] {
            let problem = articles(text).unwrap_err();
            assert!(problem.contains(part), "{text}: {problem}");
        }
    }

    #[test]
    fn readings_can_be_counted_off() {
        let read = |count| Readings::read("52 48\n51 50\n49 47", &UNITS, Comma::Decide, Some(count));
        assert_eq!(read(3).unwrap().article_count(), 2);
        assert!(read(4).unwrap_err().to_string().contains("6 readings cannot be counted off"));
    }
}
