//! Coats: the three processes, what the standards ask of each, and thickness against mass.
//!
//! It knows nothing of threads, steels or places.

pub mod barrel;
pub mod class;
pub mod factor;
pub mod kettle;

pub use crate::process::Process;
pub use crate::table::coat_class::{CoatClass, ThicknessLimit};
pub use factor::Factor;
