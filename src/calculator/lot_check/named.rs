//! What was compared, by name.

use super::Outcome;
use crate::lot::Comparison;

/// A comparison that was made, with its names.
pub(super) struct Named<'a> {
    pub what: &'static str,
    pub symbol: &'static str,
    pub at_least: bool,
    pub comparison: &'a Comparison,
}

/// Every comparison that was made.
pub(super) fn named(outcome: &Outcome) -> impl Iterator<Item = Named<'_>> {
    let judgement = &outcome.judgement;
    [
        ("Lot mean", "d_m", true, &judgement.lot_mean),
        ("Lot mean", "d_g", false, &judgement.lot_mean_max),
        ("Least article", "d_a", true, &judgement.article),
        ("Least reading", "d_r", true, &judgement.reading),
    ]
    .into_iter()
    .filter_map(|(what, symbol, at_least, comparison)| {
        Some(Named { what, symbol, at_least, comparison: comparison.as_ref()? })
    })
}

/// `1 article`, `5 articles`.
pub(super) fn articles(count: u32) -> String {
    if count == 1 { "1 article".to_owned() } else { format!("{count} articles") }
}
