//! A list as it is read: which rows it has, and what each of them says.

use std::fmt;
use std::io::{self, BufRead, Cursor, Read};
use std::rc::Rc;

use super::columns::{Layout, separator_named};
use super::input::{Watch, Watched};
use super::result::{Row, row};

/// How bytes become text. Spreadsheets write several encodings, and whoever runs the program brings the
/// library that knows them.
pub type Decode = fn(&[u8]) -> String;

/// A list that is being read, in bounded memory.
pub struct List {
    reads: Reads,
    left_out: Vec<String>,
    records: csv::Reader<Input>,
    watch: Rc<Watch>,
    /// Rows read so far.
    row: u64,
    /// Why it cannot be read on; told when what was read before was given away.
    ended: Option<Unread>,
}

type Input = Watched<io::Chain<Cursor<Vec<u8>>, Box<dyn BufRead>>>;

/// How the rows of a list are read; it may be shared by those who assess them.
#[derive(Debug, Clone)]
pub struct Reads {
    layout: Layout,
    decode: Decode,
}

/// A row of a list, not yet read.
#[derive(Debug, Clone)]
pub struct Record {
    /// Which row of the list it is, from 1, as a spreadsheet counts them; lines in which nothing at all
    /// stands are none.
    pub row: u64,
    cells: csv::ByteRecord,
    /// Whether the file ends in the middle of it.
    is_cut: bool,
}

/// Why a list cannot be read, or not to its end.
#[derive(Debug)]
pub enum Unread {
    /// There is nothing in it.
    Empty,
    /// It is no text.
    NotText,
    /// This row does not end.
    Endless(u64),
    /// What the device says.
    Device(io::Error),
}

/// What some write before UTF-8 to say that it is: a spreadsheet asks for it.
pub const MARK: &[u8] = b"\xEF\xBB\xBF";

/// The longest first line, in bytes: a longer one is no heading and no order line.
const LONGEST_FIRST: u64 = 1 << 20;

/// The longest line that is assessed, in bytes. People write a tenth of it.
const LONGEST_LINE: usize = 4000;

impl List {
    /// Begins to read a list. Its bytes are UTF-8 or what `decode` takes.
    ///
    /// # Errors
    /// [`Unread`] where nothing of it can be read.
    pub fn open(mut input: Box<dyn BufRead>, decode: Decode) -> Result<Self, Unread> {
        let mut first = Vec::new();
        let mut named = None;
        loop {
            first.clear();
            (&mut input).take(LONGEST_FIRST).read_until(b'\n', &mut first).map_err(Unread::Device)?;
            // A spreadsheet's remark on what follows.
            match separator_named(&first) {
                Some(separator) => named = Some(separator),
                None => break,
            }
        }
        if first.starts_with(MARK) {
            first.drain(..MARK.len());
        }
        if first.iter().all(u8::is_ascii_whitespace) {
            return Err(Unread::Empty);
        }
        // No text holds it: a workbook, a picture, UTF-16 without the mark at its beginning.
        if first.contains(&0) {
            return Err(Unread::NotText);
        }
        let layout = Layout::of(decode(&first).trim_end(), named);
        let (input, watch) = Watched::new(Cursor::new(first).chain(input));
        let records = csv::ReaderBuilder::new()
            .has_headers(false)
            .flexible(true)
            .delimiter(layout.separator())
            .from_reader(input);
        let reads = Reads { layout, decode };
        let mut list = Self { reads, left_out: Vec::new(), records, watch, row: 0, ended: None };
        if list.reads.layout.has_heading()
            && let Some(record) = list.next()?
        {
            // A cell of the heading may go on for several lines.
            let heading = list.reads.cells(&record);
            let heading: Vec<&str> = heading.iter().map(String::as_str).collect();
            list.reads.layout = Layout::under(&heading, list.reads.layout.separator());
            list.left_out = list.reads.layout.left_out();
        }
        Ok(list)
    }

    /// How its rows are read.
    pub fn reads(&self) -> &Reads {
        &self.reads
    }

    /// The headings of the columns that say nothing of an order.
    pub fn left_out(&self) -> &[String] {
        &self.left_out
    }

    /// So many rows more; fewer only where the list ends or cannot be read on, and none after that.
    ///
    /// # Errors
    /// [`Unread`] where it cannot be read on.
    pub fn take(&mut self, count: usize) -> Result<Vec<Record>, Unread> {
        if let Some(ended) = self.ended.take() {
            return Err(ended);
        }
        let mut taken = Vec::with_capacity(count);
        while taken.len() < count {
            match self.next() {
                Ok(Some(record)) => taken.push(record),
                Ok(None) => break,
                Err(ended) if taken.is_empty() => return Err(ended),
                Err(ended) => {
                    self.ended = Some(ended);
                    break;
                }
            }
        }
        Ok(taken)
    }

    /// The next row in which anything stands.
    fn next(&mut self) -> Result<Option<Record>, Unread> {
        loop {
            let mut cells = csv::ByteRecord::new();
            self.row += 1;
            self.watch.row_ended();
            match self.records.read_byte_record(&mut cells) {
                Ok(false) => return Ok(None),
                Ok(true) => {}
                Err(_) if self.watch.is_too_long() => return Err(Unread::Endless(self.row)),
                Err(problem) => return Err(Unread::of(problem)),
            }
            // A quotation mark that is not closed takes the end of the file into its cell.
            let is_open = cells.iter().next_back().is_some_and(|cell| cell.ends_with(b"\n"));
            let is_short = cells.len() < self.reads.layout.columns();
            let is_cut = is_open || is_short && self.watch.ends_in_a_line();
            if cells.iter().any(|cell| !cell.iter().all(u8::is_ascii_whitespace)) {
                return Ok(Some(Record { row: self.row, cells, is_cut }));
            }
        }
    }
}

impl Reads {
    /// What becomes of a row.
    pub fn row(&self, record: &Record) -> Row {
        let cells = self.cells(record);
        let cells: Vec<&str> = cells.iter().map(String::as_str).collect();
        let said = self.layout.said(&cells);
        let line = said.line;
        if record.is_cut {
            let problem =
                "the file ends in the middle of this line: it was cut off, or a quotation mark is not closed";
            return Row::of_problem(line, problem.to_owned());
        }
        if line.len() > LONGEST_LINE {
            let problem = format!(
                "the line has {} bytes, and an order line at most {LONGEST_LINE}: a quotation mark is not closed, or \
                 this is another kind of file",
                line.len()
            );
            return Row::of_problem(line, problem);
        }
        let mut row = row(&line);
        said.not_used.iter().for_each(|cell| row.leave_out(cell));
        row.left_out = said.left_out.join("; ");
        row
    }

    fn cells(&self, record: &Record) -> Vec<String> {
        record.cells.iter().map(self.decode).collect()
    }
}

impl Unread {
    fn of(problem: csv::Error) -> Self {
        match problem.into_kind() {
            csv::ErrorKind::Io(problem) => Self::Device(problem),
            other => Self::Device(io::Error::other(format!("{other:?}"))),
        }
    }
}

impl fmt::Display for Unread {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Empty => f.write_str("its first line is empty; begin with a heading or an order line"),
            Self::NotText => f.write_str("it is no text; save the sheet as CSV, or as Unicode text"),
            Self::Endless(row) => {
                write!(f, "its row {row} does not end; a quotation mark is not closed")
            }
            Self::Device(problem) => problem.fmt(f),
        }
    }
}
