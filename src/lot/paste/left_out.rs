//! Why a column is left out, and what it looks like besides readings.

use std::fmt;

/// Why something is left out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Why {
    /// It numbers or names.
    Identity,
    /// Words.
    Words,
    /// Dates.
    Date,
    /// Times of day.
    Time,
    /// It condenses readings, or limits them.
    Summary,
    /// It measures something else.
    SomethingElse,
    /// Nothing stands in it.
    Empty,
    /// Other columns were chosen.
    NotChosen,
    /// Another column is named as the readings.
    OtherNamed,
    /// It counts up beside a column that measures.
    Counts,
}

/// What a column looks like besides readings.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Looks {
    /// It counts up by one.
    Counts,
    /// Its numbers are written with a point behind them, as a list is numbered.
    ListMarks,
    /// Its numbers lie far from those of the other columns.
    FarOff,
    /// It is the mean of the other columns on every line.
    Mean,
    /// Numbers and words stand in it.
    Mixed,
    /// Its heading says not what it holds.
    Unnamed,
}

impl fmt::Display for Why {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Identity => "it numbers or names, and does not measure",
            Self::Words => "words",
            Self::Date => "dates",
            Self::Time => "times of day",
            Self::Summary => "it condenses or limits readings",
            Self::SomethingElse => "it measures something else",
            Self::Empty => "nothing stands in it",
            Self::NotChosen => "not among the columns chosen",
            Self::OtherNamed => "another column is named as the readings",
            Self::Counts => "it counts up, as numbers of articles do",
        })
    }
}

impl fmt::Display for Looks {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Counts => "counts up, as numbers of articles do",
            Self::ListMarks => "is written as the numbers of a list are",
            Self::FarOff => "lies far from the numbers of the other columns",
            Self::Mean => "is the mean of the other columns on every line",
            Self::Mixed => "holds numbers and words",
            Self::Unnamed => "has a heading that does not say whether it holds readings",
        })
    }
}
