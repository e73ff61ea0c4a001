//! A text as rows of cells: separators, quotes, and what each cell is.

use super::comma::{Comma, decide, number, starts_with_digit, tight_chunks};
use super::moment::{is_date, is_time};
use super::names;
use super::problem::PasteProblem;
use crate::quantity::Unit;
use crate::quantity::letters::lower;

/// Rows of cells.
#[derive(Debug)]
pub struct Grid {
    pub rows: Vec<Row>,
    /// What goes between the cells.
    pub separator: Separator,
    /// How a comma between digits was understood; none where there was none.
    pub comma: Option<Comma>,
    /// A unit said once for everything: in a heading of one cell.
    pub unit: Option<&'static Unit>,
}

/// One line of the text, or one article of a single line.
#[derive(Debug)]
pub struct Row {
    /// The line it stands on, from 1.
    pub line: usize,
    /// As written.
    pub text: String,
    /// A label in front of the readings.
    pub label: Option<String>,
    pub cells: Vec<Cell>,
    /// The texts of the cells.
    pub texts: Vec<String>,
}

/// What stands in a cell.
#[derive(Debug, Clone, PartialEq)]
pub enum Cell {
    /// Nothing, or a dash.
    Blank,
    /// A number, with a unit if one is written.
    Number { number: f64, unit: Option<&'static Unit> },
    /// A unit alone, behind a number and a space.
    Unit(&'static Unit),
    /// A date.
    Date,
    /// A time of day.
    Time,
    /// Anything else.
    Words(String),
}

/// What goes between the cells of a row.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Separator {
    /// Spaces.
    #[default]
    Space,
    /// Tabs, as a sheet copies.
    Tab,
    /// Semicolons, as a sheet saves where the comma is the decimal mark.
    Semicolon,
    /// Commas, as a sheet saves elsewhere.
    Comma,
}

impl Grid {
    /// Cuts a text into rows and cells.
    pub fn read(text: &str, units: &[&'static Unit], comma: Comma) -> Result<Self, PasteProblem> {
        let text: String =
            text.chars().filter(|c| *c != '\u{feff}').map(|c| if is_space(c) { ' ' } else { c }).collect();
        let text = text.replace("\r\n", "\n").replace('\r', "\n");
        let lines: Vec<(usize, &str)> = text
            .split('\n')
            .enumerate()
            .map(|(at, line)| (at + 1, line.trim_matches(' ')))
            .filter(|(_, line)| !line.trim().is_empty())
            .collect();
        let with_semicolon =
            lines.iter().filter(|(_, line)| line.trim_end_matches(';').contains(';')).count();
        if text.contains('\t') {
            return Ok(Self::of_records(&text, Separator::Tab, comma, units)?.find_unit(units));
        }
        // On a single line a semicolon goes between articles.
        if let [(line, articles)] = lines.as_slice()
            && with_semicolon > 0
        {
            let articles = articles.split(';').map(str::trim).filter(|article| !article.is_empty());
            let articles: Vec<(usize, &str)> = articles.map(|article| (*line, article)).collect();
            return Self::of_lines(&articles, true, comma, units);
        }
        if with_semicolon > 0 {
            let without = lines.iter().filter(|(_, line)| !line.contains(';'));
            if without.clone().any(|(_, line)| starts_with_digit(line)) {
                return Err(PasteProblem::MixedSeparators);
            }
            return Ok(Self::of_records(&text, Separator::Semicolon, comma, units)?.find_unit(units));
        }
        let quoted = lines.iter().any(|(_, line)| line.starts_with('"') || line.contains(",\""));
        if quoted && comma != Comma::Decimal {
            return Ok(Self::of_records(&text, Separator::Comma, comma, units)?.find_unit(units));
        }
        Ok(Self::of_lines(&lines, false, comma, units)?.find_unit(units))
    }

    /// Rows of a sheet, as its separator and its quotes cut them.
    fn of_records(
        text: &str,
        separator: Separator,
        comma: Comma,
        units: &[&'static Unit],
    ) -> Result<Self, PasteProblem> {
        let delimiter = match separator {
            Separator::Tab => b'\t',
            Separator::Semicolon => b';',
            Separator::Comma | Separator::Space => b',',
        };
        let mut reader = csv::ReaderBuilder::new()
            .delimiter(delimiter)
            .has_headers(false)
            .flexible(true)
            .trim(csv::Trim::All)
            .from_reader(text.as_bytes());
        let mut grid = Self { rows: Vec::new(), separator, comma: None, unit: None };
        for record in reader.records() {
            // The text is valid Unicode and its rows may differ in length: nothing else can fail.
            let record = record.map_err(|_| PasteProblem::MixedSeparators)?;
            let line = record.position().map_or(0, |at| usize::try_from(at.line()).unwrap_or(0));
            let texts: Vec<String> = record.iter().flat_map(of_a_cell).collect();
            if texts.iter().any(|text| tight_chunks(text).next().is_some()) && separator != Separator::Comma {
                grid.comma = Some(if comma == Comma::Separator { comma } else { Comma::Decimal });
            }
            let mut row = Row::of(line, texts.join(" "), texts, units);
            row.take_label(units);
            grid.rows.push(row);
        }
        // A heading in cells above rows that its separator does not cut.
        let heads = |row: &Row| row.texts.len() > 1 && !row.has_number();
        let mut numbers = grid.rows.iter().filter(|row| row.has_number()).peekable();
        if separator != Separator::Comma
            && grid.rows.first().is_some_and(heads)
            && numbers.peek().is_some()
            && numbers
                .all(|row| matches!(row.texts.as_slice(), [text] if tight_chunks(text).next().is_some()))
        {
            return Err(PasteProblem::MixedSeparators);
        }
        Ok(grid)
    }

    /// Lines of readings between spaces, or between commas where these are no decimal marks.
    fn of_lines(
        lines: &[(usize, &str)],
        between_articles: bool,
        comma: Comma,
        units: &[&'static Unit],
    ) -> Result<Self, PasteProblem> {
        let labelled = || lines.iter().map(|&(line, text)| (line, text, names::label(text)));
        let readings: Vec<String> = labelled()
            .filter(|(.., (label, _))| label.is_none_or(|label| !names::is_no_article(label)))
            .map(|(.., (_, behind))| without_dates(behind))
            .filter(|behind| starts_with_digit(behind))
            .collect();
        let readings: Vec<&str> = readings.iter().map(String::as_str).collect();
        let comma = match comma {
            Comma::Decide => match by_heading(lines) {
                Some(comma) => comma?,
                None => decide(&readings, between_articles)?,
            },
            told => told,
        };
        let by_comma = comma == Comma::Separator && lines.iter().any(|(_, text)| text.contains(','));
        if by_comma && !between_articles {
            let text = lines.iter().map(|(_, text)| *text).collect::<Vec<_>>().join("\n");
            let mut grid = Self::of_records(&text, Separator::Comma, comma, units)?;
            for (row, (line, _)) in grid.rows.iter_mut().zip(lines) {
                row.line = *line;
            }
            grid.comma = readings.iter().any(|line| line.contains(',')).then_some(comma);
            return Ok(grid);
        }
        let tight = readings.iter().any(|line| tight_chunks(line).next().is_some());
        let comma = tight.then_some(comma);
        let mut grid = Self { rows: Vec::new(), separator: Separator::Space, comma, unit: None };
        for (line, text, (label, behind)) in labelled() {
            // A comma at the edge of a cell had a space beside it: it stands between readings.
            let cells =
                behind.split(|c: char| c == ' ' || (by_comma && c == ',')).map(|c| c.trim_matches(','));
            let texts = cells.filter(|cell| !cell.is_empty()).map(str::to_owned).collect();
            let mut row = Row::of(line, text.to_owned(), texts, units);
            row.label = label.map(name_of);
            row.join_units();
            grid.rows.push(row);
        }
        grid.take_counted_names();
        Ok(grid)
    }

    /// Takes `Reading 1 52.3`, `Reading 2 53.1` for labels and readings where the same name counts off
    /// line after line; on one line alone the number could be a reading.
    fn take_counted_names(&mut self) {
        let counted = |row: &Row| match (row.cells.as_slice(), row.texts.as_slice()) {
            ([Cell::Words(_), Cell::Number { number, unit: None }, _, ..], [name, ..])
                if row.label.is_none() && number.fract() == 0.0 && names::counts_off(name) =>
            {
                Some((lower(name), *number))
            }
            _ => None,
        };
        let found: Vec<(String, f64)> = self.rows.iter().filter_map(counted).collect();
        let steps = || found.iter().zip(found.iter().skip(1));
        if found.len() < 2 || !steps().all(|(one, next)| one.0 == next.0 && next.1 > one.1) {
            return;
        }
        for row in self.rows.iter_mut().filter(|row| counted(row).is_some()) {
            row.label = Some(row.texts.drain(..2).collect::<Vec<_>>().join(" "));
            row.cells.drain(..2);
        }
    }

    /// The unit that a line of its own names: `Units: mil`.
    fn find_unit(mut self, units: &[&'static Unit]) -> Self {
        let mut named = self.rows.iter().filter(|row| names::is_unit_line(&row.front()));
        self.unit = named.find_map(|row| names::unit_in(&row.text.replace(':', " "), units));
        self
    }
}

impl Row {
    fn of(line: usize, text: String, texts: Vec<String>, units: &[&'static Unit]) -> Self {
        let cells = texts.iter().map(|text| Cell::of(text, units)).collect();
        Self { line, text, label: None, cells, texts }
    }

    /// Takes `A1: 52` in the first cell of a sheet for a label and a number.
    fn take_label(&mut self, units: &[&'static Unit]) {
        let Some(first) = self.texts.first() else { return };
        let (label, behind) = names::label(first);
        if let Some(label) = label.filter(|_| starts_with_digit(behind)) {
            self.label = Some(name_of(label));
            let behind = behind.to_owned();
            if let (Some(cell), Some(text)) = (self.cells.first_mut(), self.texts.first_mut()) {
                *cell = Cell::of(&behind, units);
                *text = behind;
            }
        }
    }

    /// Joins a unit that stands alone to the number before it.
    fn join_units(&mut self) {
        let mut cells: Vec<Cell> = Vec::with_capacity(self.cells.len());
        let mut texts: Vec<String> = Vec::with_capacity(self.cells.len());
        for (cell, text) in self.cells.drain(..).zip(self.texts.drain(..)) {
            match (cells.last_mut(), texts.last_mut(), cell) {
                (Some(Cell::Number { unit, .. }), Some(before), Cell::Unit(written)) if unit.is_none() => {
                    *unit = Some(written);
                    before.push(' ');
                    before.push_str(&text);
                }
                (_, _, cell) => {
                    cells.push(cell);
                    texts.push(text);
                }
            }
        }
        (self.cells, self.texts) = (cells, texts);
    }

    /// Whether a number stands in it.
    pub fn has_number(&self) -> bool {
        self.cells.iter().any(|cell| matches!(cell, Cell::Number { .. }))
    }

    /// Whether it heads columns by name and number: `No; 1; 2; 3; Mean`, `Date; Time; 1; 2; 3`.
    pub fn numbers_columns(&self) -> bool {
        let is_name = |cell: &&Cell| matches!(cell, Cell::Words(_));
        let names = self.cells.iter().take_while(is_name).count();
        let (Some(rest), Some(texts)) = (self.cells.get(names..), self.texts.get(..names)) else {
            return false;
        };
        let mut next = 1.0;
        let heads = rest.iter().all(|cell| match cell {
            Cell::Number { number, unit: None } if *number == next => {
                next += 1.0;
                true
            }
            Cell::Words(_) | Cell::Blank => true,
            _ => false,
        });
        let named = texts.iter().any(|name| names::counts_off(name) || names::is_moment(name));
        heads && next > 2.0 && self.label.is_none() && named
    }

    /// The words in front of its numbers, or its label.
    pub fn front(&self) -> String {
        if let Some(label) = &self.label {
            return label.clone();
        }
        let filled = self.cells.iter().zip(&self.texts).filter(|(cell, _)| **cell != Cell::Blank);
        let words = filled.take_while(|(cell, _)| matches!(cell, Cell::Words(_)));
        words.map(|(_, text)| text.as_str()).collect::<Vec<_>>().join(" ")
    }
}

impl Cell {
    pub(super) fn of(text: &str, units: &[&'static Unit]) -> Self {
        let text = text.trim();
        if matches!(text, "" | "-" | "–" | "—" | "--" | "n/a" | "N/A") {
            return Self::Blank;
        }
        if is_date(text) {
            return Self::Date;
        }
        if is_time(text) {
            return Self::Time;
        }
        let end = text.find(|c: char| !c.is_ascii_digit() && !matches!(c, '.' | ',')).unwrap_or(text.len());
        let (digits, written) = text.split_at_checked(end).unwrap_or((text, ""));
        let unit = units.iter().copied().find(|unit| unit.is_written(written.trim()));
        match (number(digits), unit) {
            (Some(number), unit) if unit.is_some() || written.trim().is_empty() => {
                Self::Number { number, unit }
            }
            (None, Some(unit)) if digits.is_empty() => Self::Unit(unit),
            _ => Self::Words(text.to_owned()),
        }
    }
}

/// What a heading in front says of the commas below it: that they stand where its own do, or that they
/// may; none where it says nothing.
fn by_heading(lines: &[(usize, &str)]) -> Option<Result<Comma, PasteProblem>> {
    let ((_, heading), rest) = lines.split_first()?;
    let cells: Vec<&str> = heading.split(',').map(str::trim).collect();
    let words = |cell: &&str| !starts_with_digit(cell) && names::label(cell).0.is_none();
    if rest.is_empty() || !cells.iter().all(words) {
        return None;
    }
    let commas = |line: &str| line.matches(',').count();
    let rows = || rest.iter().filter(|(_, line)| starts_with_digit(line)).map(|(_, line)| *line);
    let first = rows().find(|line| commas(line) > 0)?;
    // `Thickness, µm` says the unit of one column; `No, µm` names two.
    let unit_of = cells.first().is_some_and(|first| names::is_readings(first))
        && cells.iter().skip(1).all(|cell| names::is_unit(cell));
    if cells.len() > 1 && !unit_of && rows().all(|line| commas(line) + 1 == cells.len()) {
        return Some(Ok(Comma::Separator));
    }
    let numbers_and_measures =
        heading.split([' ', ',']).filter(|word| !word.is_empty()).any(names::is_identity);
    let one_cell = rows().all(|line| !line.contains(' ') && commas(line) == 1);
    (numbers_and_measures && one_cell).then(|| Err(PasteProblem::Ambiguous { text: first.to_owned() }))
}

/// A cell, or several where only numbers stand in it with spaces between them.
fn of_a_cell(cell: &str) -> Vec<String> {
    let words: Vec<&str> = cell.split_whitespace().collect();
    if words.len() > 1 && words.iter().all(|word| number(word.trim_matches(',')).is_some()) {
        return words.into_iter().map(|word| word.trim_matches(',').to_owned()).collect();
    }
    vec![cell.trim().to_owned()]
}

fn name_of(label: &str) -> String {
    label.trim_end_matches([':', ' ']).to_owned()
}

fn is_space(c: char) -> bool {
    c.is_whitespace() && !matches!(c, '\n' | '\r' | '\t')
}

/// A line without its dates and times, whose points and colons say nothing of its numbers.
fn without_dates(line: &str) -> String {
    let words = line.split(' ').filter(|word| {
        let word = word.trim_matches(',');
        !is_date(word) && !is_time(word)
    });
    words.collect::<Vec<_>>().join(" ").trim().to_owned()
}
