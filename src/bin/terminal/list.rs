//! A list of order lines: read, assessed on all cores and written in its order, in bounded memory.

use std::fs::File;
use std::io::{self, BufReader, BufWriter, ErrorKind, Read, Write};
use std::process::ExitCode;

use clap::{Arg, ArgAction, ArgMatches, Command};
use encoding_rs::WINDOWS_1252;
use encoding_rs_io::DecodeReaderBytes;
use kettle_barrel::calculator::Draft;
use kettle_barrel::order::list::{
    List, MARK, Row, Summary, TEMPLATE, Unread, heading, written, written_heading,
};
use kettle_barrel::quantity::Units;
use rayon::prelude::*;
use serde_json::{Map, Value};

use super::answer::{Answer, Request, Summed};
use super::output::{Code, Output, no_json, write};
use super::standard_output::is_there;

/// Lines that are held at a time.
const HELD: usize = 4096;

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
        .arg(flag("mark", "Begins the results with the mark by which a spreadsheet knows UTF-8"))
        .arg(flag("summary", "Prints what the list comes to instead of its results"))
        .arg(flag("template", "Prints a list that shows how"))
        .after_help(
            "Comma, semicolon or tab between the cells; UTF-8, UTF-16 or Windows-1252. A unit may stand in the \
             heading or in the cell. With --json each result is one line of JSON, and the summary an answer in the shape that the command schema prints.",
        )
}

/// Answers the command.
pub fn run(asked: &ArgMatches, json: bool, units: Units) -> ExitCode {
    let alone = ["template", "heading"].into_iter().find(|name| asked.get_flag(name));
    if let Some(name) = alone.filter(|_| json) {
        return write(Output::misused(format!("{}\n", no_json(&format!("list --{name}")))));
    }
    if asked.get_flag("template") {
        return write(Output::answer(TEMPLATE.to_owned()));
    }
    let name = asked.get_one::<String>("file").map_or("-", String::as_str);
    let shape = if asked.get_flag("summary") {
        Shape::Summary { of: json.then_some(name) }
    } else if json {
        Shape::Json
    } else {
        Shape::Csv { heading: !asked.get_flag("no-heading") }
    };
    let mut output = BufWriter::new(io::stdout().lock());
    let begun = is_there().and_then(|()| {
        let mark = asked.get_flag("mark") && !matches!(shape, Shape::Json);
        if mark { output.write_all(MARK) } else { Ok(()) }
    });
    if let Err(problem) = begun {
        return ended(Err(problem.into()));
    }
    if asked.get_flag("heading") {
        let written = output.write_all(&written_heading(units)).and_then(|()| output.flush());
        return ended(written.map_err(Ended::from).map(|()| Code::Answered));
    }
    let input: Result<Box<dyn Read>, io::Error> = if name == "-" {
        Ok(Box::new(io::stdin().lock()))
    } else {
        File::open(name).map(|it| Box::new(it) as _)
    };
    match input {
        Ok(input) => ended(list(input, shape, units, output)),
        Err(problem) => write(Output::misused(format!("{name}: {problem}.\n"))),
    }
}

/// What is written of a list.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Shape<'a> {
    Csv {
        heading: bool,
    },
    Json,
    Summary {
        /// The name of the list, where the summary is written as JSON.
        of: Option<&'a str>,
    },
}

impl Shape<'_> {
    /// What is written of a row.
    fn written(self, row: &Row, units: Units) -> Vec<u8> {
        match self {
            Self::Csv { .. } => written(std::slice::from_ref(row), units),
            Self::Json => format!("{}\n", json(row, units)).into_bytes(),
            Self::Summary { .. } => Vec::new(),
        }
    }
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

fn list(
    input: impl Read + 'static,
    shape: Shape<'_>,
    units: Units,
    mut output: impl Write,
) -> Result<Code, Ended> {
    let unreadable = |problem: Unread| Ended::Unreadable(problem.to_string());
    // What begins with the mark of UTF-16 becomes UTF-8; anything else passes as it is.
    let input = BufReader::new(DecodeReaderBytes::new(input));
    let mut list = List::open(Box::new(input), text).map_err(unreadable)?;
    let reads = list.reads().clone();
    let mut summary = Summary::in_units(units);
    if shape == (Shape::Csv { heading: true }) {
        output.write_all(&written_heading(units))?;
    }
    loop {
        let records = list.take(HELD).or_else(|problem| {
            output.flush()?;
            Err(unreadable(problem))
        })?;
        if records.is_empty() {
            break;
        }
        let rows = records.par_iter().map(|record| {
            let row = reads.row(record);
            let written = shape.written(&row, units);
            (row, written)
        });
        for (record, (row, written)) in records.iter().zip(rows.collect::<Vec<_>>()) {
            summary.add(record.row, &row);
            output.write_all(&written)?;
        }
    }
    match shape {
        Shape::Summary { of: Some(file) } => {
            output.write_all(summed(file, &summary, list.left_out()).output(true).text.as_bytes())?;
        }
        Shape::Summary { of: None } => write!(output, "{summary}")?,
        _ => {}
    }
    output.flush()?;
    let is_told = matches!(shape, Shape::Summary { of: Some(_) });
    if !list.left_out().is_empty() && !is_told {
        // Beside the results, which are for programs.
        drop(writeln!(
            io::stderr(),
            "Columns left out, because their headings say nothing of an order: {}.",
            list.left_out().join(", ")
        ));
    }
    let whole = summary.problems == 0 && summary.not_all_used == 0 && list.left_out().is_empty();
    Ok(if whole { Code::Answered } else { Code::NotUnderstood })
}

/// What a list comes to, as data.
fn summed(file: &str, summary: &Summary, left_out: &[String]) -> Answer {
    let summed = Summed {
        assessed: summary.assessed,
        problems: summary.problems,
        not_all_used: summary.not_all_used,
        left_out: left_out.to_vec(),
        said: summary.sentences(),
        tables: summary.tables(),
    };
    let asked = Request::Summary { file: file.to_owned() };
    Answer { summary: Some(summed), ..Answer::to(asked, Draft::default()) }
}

/// Bytes that are not UTF-8 come from a spreadsheet that writes Windows-1252.
fn text(bytes: &[u8]) -> String {
    match std::str::from_utf8(bytes) {
        Ok(text) => text.to_owned(),
        Err(_) => WINDOWS_1252.decode_without_bom_handling(bytes).0.into_owned(),
    }
}

/// A row as one line of JSON, by the names of the columns.
fn json(row: &Row, units: Units) -> Value {
    let cells = heading(units).into_iter().zip(row.record(units));
    let cells = cells.map(|(name, cell)| (name.into_owned(), Value::String(cell)));
    Value::Object(cells.collect::<Map<_, _>>())
}
