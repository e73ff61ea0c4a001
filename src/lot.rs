//! A delivered lot: readings, samples, and whether a standard accepts it.
//!
//! [`Readings`] is what the gauge showed, article by article; [`Statistics`] condenses it; a
//! [`AcceptanceRule`] holds the limits of a standard and what they are compared with; [`judge`] compares;
//! [`sample`] knows how many articles a standard wants; [`Evidence`] says how far the mean of the
//! articles measured speaks for the whole lot.

mod comma;
mod confidence;
mod judge;
mod paste;
mod readings;
mod rule;
pub mod sample;
mod statistics;

pub use comma::Comma;
pub use confidence::{BOUND, Evidence, T, confidence_of, student_t, student_t_share};
pub use judge::{Comparison, Decision, Judgement, Rounding, Sizes, Stage, judge, judge_sets};
pub use paste::PasteProblem;
pub use readings::Readings;
pub use rule::{AcceptanceLimits, AcceptanceRule, Retest, Standard};
pub use statistics::{Statistics, picometres};
