//! The readings of a lot against its limits, as a picture.

use super::{Input, Outcome};
use crate::calculator::{Picture, ScaleMark};
use crate::quantity::Length;

/// Every reading as a dot, over the limits, with the mean and its bound.
pub(super) fn of(input: &Input, outcome: &Outcome) -> Picture {
    let mark = |label: &'static str, at: Length| ScaleMark { label: label.into(), at: input.show(at) };
    let limits = &input.rule.limits;
    let limits = [
        ("Minimum of one reading", limits.reading),
        ("Minimum of an article", limits.article),
        ("Minimum of the lot mean", limits.lot_mean),
        ("Maximum of the lot mean", limits.lot_mean_max),
    ];
    // In the column that decides: the others are rounded, and would draw a coat on the wrong side.
    let measure = input.readings.measure;
    let limits = limits
        .into_iter()
        .filter_map(|(label, limit)| Some(mark(label, measure.thickness(measure.column(&limit?)))));
    let mut marks = vec![mark("Lot mean", outcome.statistics.mean)];
    marks.extend(
        outcome.evidence.as_ref().ok().map(|evidence| mark("Bound on the lot mean", evidence.lower_bound)),
    );
    Picture::Dots {
        title: "The readings against the limits.".into(),
        dots: input.readings.values().iter().map(|reading| input.show(*reading)).collect(),
        limits: limits.collect(),
        marks,
    }
}
