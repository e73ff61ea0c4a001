//! Why a text is no set of readings, and what would make it one.

use std::cmp::Ordering;
use std::fmt;

use super::left_out::{Looks, Why};
use super::{GREATEST_UM, MOST_READINGS};
use crate::quantity::{Shown, Unit};

/// Why a text is no set of readings.
#[derive(Debug, Clone, PartialEq)]
pub enum PasteProblem {
    /// No reading in it.
    Empty,
    /// Something that is no number.
    NotANumber {
        /// On which line.
        line: usize,
        /// As written.
        text: String,
        /// The units that would be understood.
        units: Vec<&'static str>,
    },
    /// A line among the readings that holds none, and may be a damaged one.
    Unread {
        /// Which line.
        line: usize,
        /// What stands there.
        text: String,
    },
    /// Names that stand over readings written one by one.
    NameOverReadings {
        /// The first of them, on which line.
        line: usize,
        /// The name.
        name: String,
    },
    /// A summary that the readings do not bear out.
    Contradicted {
        /// On which line.
        line: usize,
        /// What it is called.
        name: String,
        /// What it says.
        says: f64,
        /// What the readings give.
        read: f64,
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
    /// A column without a heading that says what it holds, and that could count as well as measure.
    Unclear {
        /// Which column, from 1.
        column: usize,
        /// What stands in it.
        first: String,
        /// What it looks like.
        looks: Looks,
        /// How many columns there are.
        columns: usize,
    },
    /// A line called by a word alone, where the others carry numbers or nothing.
    OddLine {
        /// Which line.
        line: usize,
        /// What it is called.
        name: String,
    },
    /// Numbers stand only where nothing is taken for a reading.
    AllLeftOut {
        /// The first such column, from 1.
        column: usize,
        /// Its heading.
        heading: String,
        /// Why it is left out.
        why: Why,
    },
    /// A column of numbers and words.
    MixedColumn {
        /// Which column, from 1.
        column: usize,
        /// The words, as written.
        text: String,
        /// On which line.
        line: usize,
        /// How many columns there are.
        columns: usize,
    },
    /// Columns were chosen that are not there.
    NoSuchColumn {
        /// The column asked for.
        column: usize,
        /// How many there are.
        columns: usize,
    },
    /// What was written for the columns cannot be read.
    Columns {
        /// As written.
        text: String,
    },
    /// A reading of nothing or less, or thicker than any coat.
    OutOfRange {
        /// Which reading.
        place: usize,
        /// Its number.
        number: f64,
        /// Its unit.
        unit: &'static Unit,
    },
    /// A line with another number of readings than an article has.
    Uneven {
        /// The article.
        article: usize,
        /// How many it has.
        readings: usize,
        /// How many to an article.
        per_article: u32,
    },
    /// More than one lot's worth.
    TooMany,
}

impl fmt::Display for PasteProblem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Empty => f.write_str("no reading is written here; write for example 52 48 51"),
            Self::NotANumber { line, text, units } => write!(
                f,
                "“{text}” on line {line} is not a reading; write numbers such as 52.3, in {}, with spaces between \
                 them, and a colon behind a label",
                units.join(", ")
            ),
            Self::Unread { line, text } => write!(
                f,
                "“{text}” on line {line} stands where a reading may stand, and is none; write the reading as a plain \
                 number such as 52.3, or take the line out"
            ),
            Self::NameOverReadings { line, name } => write!(
                f,
                "line {line}, “{name}”, stands over readings that are written one by one, and each of them would be an \
                 article; write the readings of an article on one line behind its name, or say how many there are on \
                 each article"
            ),
            Self::Contradicted { line, name, says, read } => write!(
                f,
                "line {line}, “{name}”, says {says}, and the readings that were read give {read:.2}: one of them may be \
                 lost or changed; correct the readings, or take the line out"
            ),
            Self::Ambiguous { text } => write!(
                f,
                "“{text}” could be one reading or two; write a point for the decimal mark and spaces between \
                 readings, or choose what the comma is"
            ),
            Self::MixedUnits { one, other } => write!(
                f,
                "readings in {} and in {} are mixed; write all of them in one unit, or choose the columns of one \
                 unit",
                one.symbol, other.symbol
            ),
            Self::MixedSeparators => f.write_str(
                "some lines hold “;” and others do not; put each article on its own line and spaces between \
                 its readings",
            ),
            Self::Unclear { column, first, looks, columns } => write!(
                f,
                "column {column} ({first}) {looks}; choose the columns with readings, for example {}, or put a heading \
                 above them",
                others(*column, *columns)
            ),
            Self::OddLine { line, name } => write!(
                f,
                "line {line} is called “{name}”, and the others have a number or nothing in front: take the line out if \
                 it is no article, or write a number behind its name"
            ),
            Self::AllLeftOut { column, heading, why } => write!(
                f,
                "no column is taken for readings: column {column}, “{heading}”, is left out, {why}; choose the columns \
                 with readings, for example {column}"
            ),
            Self::MixedColumn { column, text, line, columns } => write!(
                f,
                "column {column} holds numbers, and “{text}” on line {line}; take the words out, or choose the \
                 columns with readings, for example {}",
                others(*column, *columns)
            ),
            Self::NoSuchColumn { column, columns } => {
                write!(f, "there is no column {column}; the text has {columns}")
            }
            Self::Columns { text } => {
                write!(f, "“{text}” names no columns; write for example 2-6, or 2, 4")
            }
            Self::OutOfRange { place, number, unit } => write!(
                f,
                "reading {place} is {}; a reading is above 0 and at most {} µm: check the unit and \
                 the decimal mark",
                Shown { number: *number, unit, decimals: 2 },
                GREATEST_UM
            ),
            Self::Uneven { article, readings, per_article } => write!(
                f,
                "article {article} has {readings} reading{}, and {per_article} were set for each; add what is \
                 missing, or leave the count empty",
                if *readings == 1 { "" } else { "s" }
            ),
            Self::TooMany => write!(f, "more than {MOST_READINGS} readings; check one lot at a time"),
        }
    }
}

/// All columns but one, as they are chosen: `2-6`; that one where there is no other.
fn others(column: usize, columns: usize) -> String {
    let run = |from: usize, to: usize| match from.cmp(&to) {
        Ordering::Less => Some(format!("{from}-{to}")),
        Ordering::Equal => Some(from.to_string()),
        Ordering::Greater => None,
    };
    let runs: Vec<String> =
        [run(1, column.saturating_sub(1)), run(column + 1, columns)].into_iter().flatten().collect();
    if runs.is_empty() { column.to_string() } else { runs.join(", ") }
}
