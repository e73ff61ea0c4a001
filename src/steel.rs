//! Steels: grades, hardness scales, hydrogen, tempering.
//!
//! A [`Grade`] points into the tables of the standards. [`hardness`] goes from one scale to another
//! by a published table and says which. [`State`] is the steel of the user's own part, known by its
//! grade, by a hardness or by a tensile strength. [`hydrogen`] and [`tempering`] judge it.

pub mod grade;
pub mod hardness;
pub mod hydrogen;
pub mod load;
pub mod pairing;
mod state;
pub mod tempering;

pub use crate::working::Mark as Standing;
pub use grade::{Grade, Properties, UnknownGrade};
pub use hardness::{Converted, Level};
pub use state::{Compared, Hardest, Levels, Measure, Over, State, Steel, SteelLimit};
