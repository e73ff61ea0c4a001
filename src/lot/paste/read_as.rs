//! What was made of a pasted text: the columns and lines taken, and those left out with a reason.

use std::fmt;

use super::comma::Comma;
pub use super::grid::Separator;
use super::left_out::{Looks, Why};
use crate::quantity::Unit;

/// What was made of a text.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct ReadAs {
    /// Its columns, from the left.
    pub columns: Vec<Column>,
    /// Its lines that are not empty, from the top.
    pub lines: Vec<Line>,
    /// How a comma between digits was understood; none where there was none.
    pub comma: Option<Comma>,
    /// What goes between the cells.
    pub separator: Separator,
}

/// A column.
#[derive(Debug, Clone, PartialEq)]
pub struct Column {
    /// Its heading, if it has one.
    pub heading: Option<String>,
    /// What it is used for.
    pub usage: ColumnUse,
    /// The unit seen in its heading or behind its numbers.
    pub unit: Option<&'static Unit>,
    /// What stands in its first cells.
    pub first: String,
}

/// What a column is used for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ColumnUse {
    /// Readings.
    Readings,
    /// It tells the articles apart: rows with the same entry are one article.
    Articles,
    /// Nothing.
    LeftOut(Why),
    /// It could be something else than readings: nothing counts until that is said.
    Unclear(Looks),
}

/// A line.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// Its number in the text, from 1.
    pub number: usize,
    /// As written.
    pub text: String,
    /// The same cut into cells, without a label in front.
    pub cells: Vec<String>,
    /// What it is used for.
    pub usage: LineUse,
}

/// What a line is used for.
#[derive(Debug, Clone, PartialEq)]
pub enum LineUse {
    /// The readings of an article.
    Article {
        /// Which one, from 1.
        article: usize,
        /// What it is called.
        label: Option<String>,
        /// The line that it repeats, if it does.
        repeats: Option<usize>,
    },
    /// The heading of the columns.
    Heading,
    /// It says something of the measurement, and holds no reading.
    Particular,
    /// It condenses readings, or limits them.
    Summary(String),
    /// No number stands in the columns taken.
    NoReading,
}

impl Column {
    /// Whether it holds readings.
    pub fn is_taken(&self) -> bool {
        self.usage == ColumnUse::Readings
    }
}

impl ReadAs {
    /// Whether every line and column was taken, without a heading or a label: nothing to look at.
    pub fn is_plain(&self) -> bool {
        let plain = |line: &Line| matches!(line.usage, LineUse::Article { label: None, repeats: None, .. });
        let taken = |column: &Column| column.is_taken() || column.usage == ColumnUse::LeftOut(Why::Empty);
        self.columns.iter().all(taken) && self.lines.iter().all(plain)
    }
}

impl fmt::Display for ColumnUse {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Readings => f.write_str("readings"),
            Self::Articles => f.write_str("tells the articles apart"),
            Self::LeftOut(why) => write!(f, "left out: {why}"),
            Self::Unclear(looks) => write!(f, "are these readings? It {looks}"),
        }
    }
}

impl fmt::Display for LineUse {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Article { article, label, repeats } => {
                write!(f, "article {article}")?;
                if let Some(label) = label {
                    write!(f, ", called “{label}”")?;
                }
                match repeats {
                    Some(line) => write!(f, "; the same as line {line}"),
                    None => Ok(()),
                }
            }
            Self::Heading => f.write_str("left out: a heading"),
            Self::Particular => f.write_str("left out: it says what was measured, and holds no reading"),
            Self::Summary(name) => write!(f, "left out: “{name}” condenses or limits readings"),
            Self::NoReading => f.write_str("left out: no reading stands on it"),
        }
    }
}

impl fmt::Display for Separator {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Space => "spaces",
            Self::Tab => "tabs",
            Self::Semicolon => "semicolons",
            Self::Comma => "commas",
        })
    }
}
