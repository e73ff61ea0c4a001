//! A list of order lines: read, assessed on all cores and written in its order, in bounded memory.

use std::fs::File;
use std::io::{self, BufRead, BufReader, BufWriter, Cursor, ErrorKind, Read, Write};
use std::process::ExitCode;

use clap::{Arg, ArgAction, ArgMatches, Command};
use encoding_rs::WINDOWS_1252;
use encoding_rs_io::DecodeReaderBytes;
use kettle_barrel::order::list::{HEADING, Layout, Row, Summary, TEMPLATE, row};
use rayon::prelude::*;
use serde_json::{Map, Value};

use super::output::{Code, Output, write};

/// Lines that are held at a time.
const HELD: usize = 4096;

/// The longest first line, in bytes: a longer one is no heading and no order line.
const LONGEST_FIRST: u64 = 1 << 20;

/// The command.
pub fn command() -> Command {
    let flag = |name: &'static str, help: &'static str| {
        Arg::new(name).long(name).action(ArgAction::SetTrue).help(help)
    };
    Command::new("list")
        .about("Assesses a list of order lines: CSV in columns under a heading, or one written line a row")
        .arg(
            Arg::new("file")
                .value_name("FILE")
                .required_unless_present_any(["template", "heading"])
                .help("The list, or - to read it from standard input"),
        )
        .arg(flag("no-heading", "Leaves the heading of the results out, to put parts together"))
        .arg(flag("heading", "Prints the heading of the results alone"))
        .arg(flag("summary", "Prints what the list comes to instead of its results"))
        .arg(flag("template", "Prints a list that shows how"))
        .after_help(
            "Comma, semicolon or tab between the cells; UTF-8, UTF-16 or Windows-1252. A unit may stand in the \
             heading or in the cell. With --json each result is one line of JSON.",
        )
}

/// Answers the command.
pub fn run(asked: &ArgMatches, json: bool) -> ExitCode {
    if asked.get_flag("template") {
        return write(Output::answer(TEMPLATE.to_owned()));
    }
    let shape = if asked.get_flag("summary") {
        Shape::Summary
    } else if json {
        Shape::Json
    } else {
        Shape::Csv { heading: !asked.get_flag("no-heading") }
    };
    let output = BufWriter::new(io::stdout().lock());
    if asked.get_flag("heading") {
        return ended(csv_writer(output).write_record(HEADING).map_err(Ended::from).map(|()| Code::Answered));
    }
    let name = asked.get_one::<String>("file").map_or("-", String::as_str);
    let input: Result<Box<dyn Read>, io::Error> = if name == "-" {
        Ok(Box::new(io::stdin().lock()))
    } else {
        File::open(name).map(|it| Box::new(it) as _)
    };
    match input {
        Ok(input) => ended(list(input, shape, output)),
        Err(problem) => write(Output::misused(format!("{name}: {problem}.\n"))),
    }
}

/// What is written of a list.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Shape {
    Csv { heading: bool },
    Json,
    Summary,
}

/// Why a list was not written to its end.
enum Ended {
    /// Whoever reads has seen enough.
    SeenEnough,
    /// It could not be read.
    Unreadable(String),
    /// It could not be written.
    Unwritten(io::Error),
}

impl From<io::Error> for Ended {
    fn from(error: io::Error) -> Self {
        if error.kind() == ErrorKind::BrokenPipe { Self::SeenEnough } else { Self::Unwritten(error) }
    }
}

impl From<csv::Error> for Ended {
    fn from(error: csv::Error) -> Self {
        match error.into_kind() {
            csv::ErrorKind::Io(error) => error.into(),
            other => Self::Unwritten(io::Error::other(format!("{other:?}"))),
        }
    }
}

fn ended(outcome: Result<Code, Ended>) -> ExitCode {
    let (code, problem) = match outcome {
        Ok(code) => (code, String::new()),
        // A reader that has seen enough, such as `head`, is no fault.
        Err(Ended::SeenEnough) => (Code::Answered, String::new()),
        Err(Ended::Unreadable(problem)) => {
            (Code::Misused, format!("The list could not be read: {problem}.\n"))
        }
        Err(Ended::Unwritten(error)) => {
            (Code::Unwritten, format!("The answer could not be written: {error}.\n"))
        }
    };
    write(Output { text: String::new(), problems: problem, code })
}

fn list(input: impl Read, shape: Shape, mut output: impl Write) -> Result<Code, Ended> {
    let unreadable = |problem: io::Error| Ended::Unreadable(problem.to_string());
    // What begins with the mark of UTF-16 becomes UTF-8; anything else passes as it is.
    let mut input = BufReader::new(DecodeReaderBytes::new(input));
    let mut first = Vec::new();
    (&mut input).take(LONGEST_FIRST).read_until(b'\n', &mut first).map_err(unreadable)?;
    if first.iter().all(u8::is_ascii_whitespace) {
        return Err(Ended::Unreadable(
            "its first line is empty; begin with a heading or an order line".into(),
        ));
    }
    let layout = Layout::of(text(&first).trim_end());
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .delimiter(layout.separator())
        .from_reader(Cursor::new(first).chain(input));
    let mut records = reader.byte_records().peekable();
    let mut left_out = String::new();
    if layout.has_heading() {
        let heading = records.next().transpose().map_err(|it| Ended::Unreadable(it.to_string()))?;
        let heading: Vec<String> = heading.iter().flatten().map(text).collect();
        let cells: Vec<&str> = heading.iter().map(String::as_str).collect();
        left_out = layout.left_out(&cells).join(", ");
    }
    let mut summary = Summary::default();
    if shape == (Shape::Csv { heading: true }) {
        csv_writer(&mut output).write_record(HEADING)?;
    }
    while records.peek().is_some() {
        let held: Vec<csv::ByteRecord> = records
            .by_ref()
            .take(HELD)
            .collect::<Result<_, _>>()
            .map_err(|problem| Ended::Unreadable(problem.to_string()))?;
        let rows: Vec<Row> = held
            .par_iter()
            .map(|record| {
                let cells: Vec<String> = record.iter().map(text).collect();
                let cells: Vec<&str> = cells.iter().map(String::as_str).collect();
                row(&layout.line(&cells))
            })
            .collect();
        rows.iter().for_each(|row| summary.add(row));
        match shape {
            Shape::Csv { .. } => {
                let mut writer = csv_writer(&mut output);
                rows.iter().try_for_each(|row| writer.write_record(row.record()))?;
                writer.flush()?;
            }
            Shape::Json => rows.iter().try_for_each(|row| writeln!(output, "{}", json(row)))?,
            Shape::Summary => {}
        }
    }
    if shape == Shape::Summary {
        write!(output, "{summary}")?;
    }
    output.flush()?;
    if !left_out.is_empty() {
        // Beside the results, which are for programs.
        drop(writeln!(
            io::stderr(),
            "Columns left out, because their headings say nothing of an order: {left_out}."
        ));
    }
    let whole = summary.problems == 0 && summary.not_all_used == 0 && left_out.is_empty();
    Ok(if whole { Code::Answered } else { Code::NotUnderstood })
}

fn csv_writer<W: Write>(output: W) -> csv::Writer<W> {
    csv::WriterBuilder::new().flexible(false).from_writer(output)
}

/// Bytes that are not UTF-8 come from a spreadsheet that writes Windows-1252.
fn text(bytes: impl AsRef<[u8]>) -> String {
    let bytes = bytes.as_ref();
    match std::str::from_utf8(bytes) {
        Ok(text) => text.to_owned(),
        Err(_) => WINDOWS_1252.decode_without_bom_handling(bytes).0.into_owned(),
    }
}

/// A row as one line of JSON, by the names of the columns.
fn json(row: &Row) -> Value {
    let cells =
        HEADING.iter().zip(row.record()).map(|(name, cell)| ((*name).to_owned(), Value::String(cell)));
    Value::Object(cells.collect::<Map<_, _>>())
}
