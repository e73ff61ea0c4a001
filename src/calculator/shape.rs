//! What every calculator is made of: fields that are read, problems, and a report.

mod about;
pub mod address;
mod bound;
pub(super) mod choices;
mod draft;
mod field;
mod form;
mod picture;
mod problem;
mod reader;
mod report;
mod text;
mod units;
mod value;
mod writer;

pub use about::{About, Example, FieldAbout, Kind, When};
pub use address::{Address, Damage};
pub use bound::{Bound, Ends, HARDNESS};
pub use choices::Choice;
pub(crate) use choices::{choices, chosen_by_key};
pub use draft::{Draft, Link};
pub use field::Field;
pub use form::{Converted, Filled, Form};
pub use picture::{Bar, MarkRow, Picture, ScaleBand, ScaleMark, ThreadCorner, coat_shown, size_shown};
pub use problem::{Fault, Problem, Problems};
pub use reader::{IfAsked, Missed, Reader};
pub use report::{Caution, Figure, Finding, Note, Report, Section, Value, Verdict};
pub use value::{FieldValue, OrOwn, RawText, Written};
pub use writer::Writer;

pub use crate::working::Mark;
