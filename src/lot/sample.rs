//! How many articles a standard wants measured.

use super::{Retest, Stage, Standard};
use crate::quantity::{Shown, unit};
use crate::source::{Source, Sourced, common_practice, document};
use crate::table::Refusal;
use crate::table::{
    astm_a153_sampling, astm_f1470_sampling, astm_f2329_sampling, iso_1461_sampling, iso_3269_sampling,
};

/// Articles to measure.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Sample {
    /// Articles in one set.
    pub set: u32,
    /// Sets to measure.
    pub sets: u32,
    /// Where the size is printed.
    pub source: Source,
}

impl Sample {
    /// Articles in all sets.
    pub fn articles(&self) -> u32 {
        self.set.saturating_mul(self.sets)
    }
}

/// The sample of a lot of so many pieces, by the standard's table.
///
/// # Errors
/// A table that was not found names its document; so does a lot outside a table.
pub fn size(standard: Standard, lot: u32, stage: Stage) -> Result<Sample, Refusal> {
    let Sourced { value: first, source } = match standard {
        Standard::A153 => by_row(astm_a153_sampling::SAMPLE.iter().copied(), lot),
        Standard::Iso1461 => {
            let rows = iso_1461_sampling::CONTROL_SAMPLE.iter();
            by_row(rows.map(|&(max, articles)| (max, articles, iso_1461_sampling::TABLE)), lot)
        }
        Standard::F2329Batch => astm_f2329_sampling::BATCH
            .iter()
            .find(|row| lot >= row.min && row.max.is_none_or(|max| lot <= max))
            .map(|row| astm_f2329_sampling::TABLE.gives(row.thickness)),
        Standard::F2329Lot | Standard::B695 | Standard::Iso10684 | Standard::Iso4042 | Standard::Own => None,
    }
    .ok_or_else(|| no_size(standard, lot))?;
    Ok(staged(standard, first, lot, stage, source))
}

/// The sample where its size was agreed with the purchaser, or is a plan's, instead: never fewer than a
/// document asks for that leaves no room to agree fewer.
pub fn agreed(standard: Standard, first: u32, lot: u32, stage: Stage) -> Sample {
    match size(standard, lot, stage) {
        // ASTM A153 gives its numbers where nothing else is agreed.
        Ok(own) if standard != Standard::A153 && first < own.set => own,
        _ => staged(
            standard,
            first.min(lot),
            lot,
            stage,
            common_practice("sample as agreed with the purchaser"),
        ),
    }
}

/// The first sample, or what the standard asks for after it failed.
fn staged(standard: Standard, first: u32, lot: u32, stage: Stage, source: Source) -> Sample {
    match (stage, standard.retest()) {
        (Stage::Retest, Retest::TwoSets) => Sample {
            set: first,
            sets: astm_a153_sampling::SETS_OF_A_RETEST,
            source: astm_a153_sampling::RETEST,
        },
        // Never more articles than the lot has.
        (Stage::Retest, Retest::TwiceTheArticles) => {
            Sample { set: first.saturating_mul(2).min(lot), sets: 1, source: iso_1461_sampling::RETEST }
        }
        _ => Sample { set: first, sets: 1, source },
    }
}

/// Why a standard has no size here: the document to open.
fn no_size(standard: Standard, lot: u32) -> Refusal {
    let blank = |source| Refusal::blank("the size of the sample", source);
    match standard {
        Standard::F2329Lot => blank(astm_f1470_sampling::SIZES),
        Standard::B695 => blank(document::ASTM_B602.memory("sample sizes, or ASTM F1470 for fasteners")),
        Standard::Iso10684 | Standard::Iso4042 => blank(iso_3269_sampling::COAT),
        Standard::A153 | Standard::F2329Batch | Standard::Iso1461 => below_table(lot),
        Standard::Own => blank(common_practice("agree it with the purchaser")),
    }
}

/// The first row that reaches the lot; a row without a number wants all articles.
fn by_row(
    mut rows: impl Iterator<Item = (Option<u32>, Option<u32>, Source)>,
    lot: u32,
) -> Option<Sourced<u32>> {
    rows.find(|(max, ..)| max.is_none_or(|max| lot <= max))
        .map(|(_, articles, source)| source.gives(articles.unwrap_or(lot)))
}

fn below_table(lot: u32) -> Refusal {
    let pieces = |number: u32| Shown { number: f64::from(number), unit: &unit::PIECES, decimals: 0 };
    Refusal::not_covered(
        &format!("a batch of {}", pieces(lot)),
        &format!("batches from {}", pieces(astm_f2329_sampling::BATCH.first().map_or(0, |row| row.min))),
        astm_f2329_sampling::TABLE,
    )
}
