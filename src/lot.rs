//! A delivered lot: readings, samples, and whether a standard accepts it.
//!
//! [`Readings`] is what the gauge showed, article by article, with what was made of the text it was
//! pasted from; [`Statistics`] condenses it; an [`AcceptanceRule`] holds the limits of a standard and
//! what they are compared with; [`judge`] compares; [`sample`] knows how many articles a standard
//! wants, [`plan`] what a plan lets through; [`Evidence`] says how far the mean of the articles
//! measured speaks for the whole lot; [`count`] counts while readings are taken; [`inspection`] is
//! the record of all that was inspected.

mod compare;
mod confidence;
pub mod count;
pub mod inspection;
mod judge;
mod measure;
mod outlier;
mod paste;
pub mod plan;
mod readings;
mod rule;
pub mod sample;
mod scale;
mod statistics;

pub use compare::{Comparison, Rounding};
pub use confidence::{BOUND, Evidence, NoBound, T, confidence_of, student_t, student_t_share};
pub use judge::{Decision, Hangs, HangsOn, Judgement, Sizes, Stage, Terms, hangs, judge, judge_sets};
pub use measure::Measure;
pub use outlier::{Outlier, TEST as OUTLIER_TEST, outliers};
pub use paste::{
    Column, ColumnUse, Comma, Line, LineUse, Looks, PasteProblem, ReadAs, Reading, Separator, Why, as_read,
    chosen_columns,
};
pub use readings::Readings;
pub use rule::{AcceptanceLimits, AcceptanceRule, ReadingsRule, Retest, Standard};
pub use scale::{OffScale, SCALE, off_scale};
pub use statistics::{Statistics, femtometres};
