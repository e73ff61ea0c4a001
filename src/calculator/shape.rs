//! What every calculator is made of: fields that are read, problems, and a report.

mod about;
pub mod address;
mod draft;
mod form;
mod picture;
mod problem;
mod reader;
mod report;
mod text;

pub use about::{About, Bound, Choice, Example, Field, Kind, When};
pub use address::{Address, Damage};
pub use draft::{Draft, Link};
pub use form::{Filled, Form};
pub use picture::{Bar, Picture, ScaleBand, ScaleMark, ThreadCorner};
pub use problem::{Fault, Problem, Problems};
pub use reader::Reader;
pub use report::{Caution, Figure, Finding, Note, Report, Section, Value, Verdict};

pub use crate::working::Mark;
