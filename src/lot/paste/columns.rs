//! Which columns hold readings: by choice, by their headings, and by what stands in them.

use super::grid::{Cell, Grid, Row, Separator};
use super::left_out::{Looks, Why};
use super::names::Says;
use super::problem::PasteProblem;
use super::read_as::{Column, ColumnUse, Line, LineUse};
use super::taken::{FAR, Taken, numbers_off, steps_by_one};
use super::{Reading, lines, names, unread};

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

/// Sorts the columns; beside them the first question that they leave open.
pub fn sort(grid: &Grid, lines: &[Line], how: &Reading<'_>) -> (Vec<Column>, Option<PasteProblem>) {
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
    let shared = heading.filter(|row| {
        let by_spaces = grid.separator == Separator::Space;
        row.texts.len() == 1 || by_spaces && !(row.texts.len() == width && names::name_columns(&row.texts))
    });
    let shared_unit = shared.and_then(|row| names::unit_in(&row.text, how.units));
    let mut columns = Vec::with_capacity(width);
    let mut open = None;
    let all: Vec<&str> = heading
        .filter(|_| shared.is_none())
        .into_iter()
        .flat_map(|row| &row.texts)
        .map(String::as_str)
        .collect();
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
            None => of_column(name.as_deref(), &all, (at, width), grid.separator, &mut cells())
                .unwrap_or_else(|mixed| {
                    open.get_or_insert(mixed);
                    ColumnUse::Unclear(Looks::Mixed)
                }),
        };
        columns.push(Column { heading: name, usage, unit, first: first.join(", ") });
    }
    if let Some(&column) = how.columns.and_then(|chosen| chosen.iter().find(|&&column| column > width)) {
        open = Some(PasteProblem::NoSuchColumn { column, columns: width });
    }
    if how.columns.is_none() {
        counters(&articles, &mut columns);
        let named = by_their_names(&articles, &mut columns, shared_unit.is_none());
        open = open
            .or(named)
            .or_else(|| list_marks(&articles, &mut columns))
            .or_else(|| ask(&articles, &mut columns));
        tell_articles_apart(&articles, &mut columns);
    }
    (columns, open)
}

/// Leaves out the columns that others beside them are named before, and asks where the names say not
/// which column holds the readings.
fn by_their_names(articles: &[&Row], columns: &mut [Column], own_units: bool) -> Option<PasteProblem> {
    let said = said(columns, own_units);
    let best = said.iter().flatten().max().copied();
    let leave_out = |column: &mut Column, why| column.usage = ColumnUse::LeftOut(why);
    let first = said.iter().position(Option::is_some);
    let known: Vec<f64> = (0..columns.len())
        .filter(|&at| said.get(at).copied().flatten() == best)
        .flat_map(|at| Taken::of(at, articles).numbers())
        .collect();
    let thickest = known.into_iter().fold(0.0, f64::max);
    let (mut open, width) = (None, columns.len());
    for (at, (column, said)) in columns.iter_mut().zip(&said).enumerate().filter(|(_, (it, _))| it.is_taken())
    {
        let unnamed = match &column.heading {
            Some(_) => said.is_none(),
            // Behind a heading that spans several columns the next ones have none.
            None => first.is_some_and(|first| at < first),
        };
        let generic = *said == Some(Says::Reading) && best > Some(Says::Reading);
        if best.is_none() || !(unnamed || generic) {
            continue;
        }
        let numbers = Taken::of(at, articles).numbers();
        // Left out, a thin reading accepts the lot: only what cannot be one goes without being asked.
        let no_reading = numbers_off(&numbers)
            || (generic || column.heading.is_none()) && steps_by_one(&numbers)
            || numbers.iter().all(|&number| number > FAR * thickest);
        if no_reading {
            leave_out(column, Why::OtherNamed);
        } else {
            column.usage = ColumnUse::Unclear(Looks::Unnamed);
            let first = column.first.clone();
            let looks = Looks::Unnamed;
            open.get_or_insert(PasteProblem::Unclear { column: at + 1, first, looks, columns: width });
        }
    }
    if open.is_some() {
        return open;
    }
    // Of two that are called differently, the one that counts up numbers the other.
    let taken = || (0..columns.len()).filter(|&at| columns.get(at).is_some_and(Column::is_taken));
    let name = |at: usize| columns.get(at).and_then(|column| column.heading.as_deref());
    let sure = |at: usize| said.get(at).copied().flatten() >= Some(Says::Series);
    let odd = taken().find(|&at| {
        let differs =
            |other: usize| other != at && name(other).zip(name(at)).is_some_and(|(a, b)| names::differ(a, b));
        !sure(at) && name(at).is_some() && taken().any(differs)
    })?;
    // What is called a coat is none of them, whatever stands in it.
    let coat = |at: usize| said.get(at).copied().flatten() >= Some(Says::Thickness);
    let counting = taken().find(|&at| !coat(at) && steps_by_one(&Taken::of(at, articles).numbers()));
    let others = |at: usize| taken().filter(move |&other| other != at).count() > 0;
    if let Some(at) = counting.filter(|&at| others(at) && best.is_some()) {
        columns.get_mut(at).into_iter().for_each(|column| leave_out(column, Why::Counts));
        return by_their_names(articles, columns, own_units);
    }
    unclear(columns, odd, Looks::Unnamed)
}

/// What the heading of each column that would be taken says.
fn said(columns: &[Column], own_units: bool) -> Vec<Option<Says>> {
    let all: Vec<&str> =
        columns.iter().filter(|it| it.is_taken()).filter_map(|it| it.heading.as_deref()).collect();
    let of_one = |column: &Column| {
        let heading = column.heading.as_deref().filter(|_| column.is_taken())?;
        if own_units && column.unit.is_some() { Some(Says::Unit) } else { names::says(heading, &all) }
    };
    columns.iter().map(of_one).collect()
}

/// One column, by its heading and by what stands in it.
fn of_column(
    name: Option<&str>,
    all: &[&str],
    (at, width): (usize, usize),
    separator: Separator,
    cells: &mut dyn Iterator<Item = (usize, &Cell)>,
) -> Result<ColumnUse, PasteProblem> {
    let (mut numbers, mut dates, mut times, mut units) = (0, 0, 0, 0);
    let mut words: Option<(usize, &str)> = None;
    // Numbers of articles are whole, and rise.
    let (mut last, mut rises) = (f64::NEG_INFINITY, true);
    for (line, cell) in cells {
        match cell {
            Cell::Number { number, .. } => {
                numbers += 1;
                rises &= number.fract() == 0.0 && *number >= last;
                last = *number;
            }
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
        if numbers > 0 && names::measures_something_else(name) {
            return Ok(ColumnUse::LeftOut(Why::SomethingElse));
        }
        // Numbered places, and articles that something was measured on, are called as identities are.
        let measured = names::says(name, all) == Some(Says::Series) || names::is_article(name) && !rises;
        if names::is_identity(name) && !measured {
            return Ok(ColumnUse::LeftOut(Why::Identity));
        }
    }
    Ok(match words {
        // Between spaces columns shift with the words: they are named where they stand.
        Some(_) if separator == Separator::Space => ColumnUse::Readings,
        Some((line, text)) if numbers > 0 => {
            let text = text.to_owned();
            return Err(PasteProblem::MixedColumn { column: at + 1, text, line, columns: width });
        }
        // Without a heading that says what it is; the names of articles, `12-1`, stand in front.
        Some((line, text))
            if name.is_none()
                && unread::is_damaged(text)
                && (at > 0 || !text.starts_with(|c: char| c.is_ascii_digit())) =>
        {
            return Err(PasteProblem::Unread { line, text: text.to_owned() });
        }
        Some(_) => ColumnUse::LeftOut(Why::Words),
        None if numbers > 0 || units > 0 => ColumnUse::Readings,
        None if dates > 0 => ColumnUse::LeftOut(Why::Date),
        None if times > 0 => ColumnUse::LeftOut(Why::Time),
        None => ColumnUse::LeftOut(Why::Empty),
    })
}

/// Asks where the first column is written as the numbers of a list are, `1. 52.3`: a reading has no point
/// behind its last digit. One line is enough.
fn list_marks(articles: &[&Row], columns: &mut [Column]) -> Option<PasteProblem> {
    let mark = |row: &&Row| match row.texts.as_slice() {
        [first, rest @ ..] if !rest.is_empty() && !rest.iter().any(|cell| cell.ends_with('.')) => {
            first.strip_suffix('.').is_some_and(|number| number.parse::<u32>().is_ok())
        }
        _ => false,
    };
    if !columns.first().is_some_and(Column::is_taken) || !articles.iter().any(mark) {
        return None;
    }
    unclear(columns, 0, Looks::ListMarks)
}

/// Asks where a column without a telling heading could be something else than readings, and marks it.
fn ask(articles: &[&Row], columns: &mut [Column]) -> Option<PasteProblem> {
    let taken: Vec<Taken> = columns
        .iter()
        .enumerate()
        .filter(|(_, column)| column.is_taken())
        .map(|(at, _)| Taken::of(at, articles))
        .collect();
    if taken.len() < 2 || articles.len() < 2 {
        return None;
    }
    // A unit tells, and so does a name that several share; a number of articles may be named so by
    // itself.
    let said = said(columns, true);
    let told = |at: usize| {
        let own = said.get(at).copied().flatten();
        own == Some(Says::Unit) || own == Some(Says::Series)
    };
    let (at, looks) = taken.iter().find_map(|own| {
        let looks = own.looks(&taken)?;
        // No heading says that a column is the mean of the others, or it would have been left out.
        let known = looks != Looks::Mean && told(own.at);
        (!known).then_some((own.at, looks))
    })?;
    unclear(columns, at, looks)
}

/// Marks a column as one that is asked about.
fn unclear(columns: &mut [Column], at: usize, looks: Looks) -> Option<PasteProblem> {
    let width = columns.len();
    let column = columns.get_mut(at)?;
    column.usage = ColumnUse::Unclear(looks);
    Some(PasteProblem::Unclear { column: at + 1, first: column.first.clone(), looks, columns: width })
}

/// Leaves out a column that counts up before a date or a time on every line, as a gauge numbers what it stores.
fn counters(articles: &[&Row], columns: &mut [Column]) {
    let is_moment = |at: usize| {
        let mut cells = articles.iter().map(|row| row.cells.get(at));
        cells.all(|cell| matches!(cell, Some(Cell::Date | Cell::Time)))
    };
    for at in 0..columns.len() {
        let counts = is_moment(at + 1) && steps_by_one(&Taken::of(at, articles).numbers());
        if let Some(column) = columns.get_mut(at).filter(|column| counts && column.is_taken()) {
            column.usage = ColumnUse::LeftOut(Why::Counts);
        }
    }
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
