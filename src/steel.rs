//! Steels: grades, hardness scales, tempering, bakes.
//!
//! A [`Grade`] points into the tables of the standards. [`hardness`] goes from one scale to another
//! by a published table and says which. [`State`] is the steel of the user's own part, known by its
//! grade, by a hardness or by a tensile strength. [`tempering`] puts the heat
//! of a dip beside its temper, [`bake`] reads the bake tables. Nothing is judged here.

pub mod bake;
pub mod grade;
pub mod hardness;
pub mod load;
pub mod pairing;
mod state;
pub mod structural;
pub mod tempering;

pub use grade::{Grade, Properties, UnknownGrade};
pub use hardness::{Converted, Level};
pub use state::{Compared, Hardest, Levels, Measure, Over, State, Steel, SteelLimit, Worked};
