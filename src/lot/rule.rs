//! What each standard compares with what.

use crate::coat::{CoatClass, ThicknessLimit};
use crate::source::{Basis, Document, Source, document};
use crate::table::{
    astm_a153_sampling, astm_f1470_sampling, astm_f2329_sampling, inspection, iso_1461_sampling,
};

/// The standard a lot is checked by.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Standard {
    /// ASTM A153.
    A153,
    /// ASTM F2329, one basket.
    F2329Batch,
    /// ASTM F2329, a production lot of several baskets.
    F2329Lot,
    /// ISO 10684.
    Iso10684,
    /// ISO 1461.
    Iso1461,
    /// ASTM B695.
    B695,
    /// ISO 4042.
    Iso4042,
    /// Limits of the order.
    Own,
}

/// The limits a lot has to keep.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AcceptanceLimits {
    /// Least mean of the article means.
    pub lot_mean: Option<ThicknessLimit>,
    /// Greatest mean of the article means.
    pub lot_mean_max: Option<ThicknessLimit>,
    /// Least mean of one article.
    pub article: Option<ThicknessLimit>,
    /// Least single reading.
    pub reading: Option<ThicknessLimit>,
}

impl AcceptanceLimits {
    /// Whether there is no limit at all.
    pub fn is_empty(&self) -> bool {
        [self.lot_mean, self.lot_mean_max, self.article, self.reading].iter().all(Option::is_none)
    }
}

/// What follows when the first sample fails.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Retest {
    /// Two more sets are measured, and both must conform.
    TwoSets,
    /// Twice the articles are measured.
    TwiceTheArticles,
    /// No rule is known here: the lot is rejected.
    NoneKnown,
}

/// A standard with the limits of a class.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AcceptanceRule {
    /// The standard.
    pub standard: Standard,
    /// The limits.
    pub limits: AcceptanceLimits,
    /// What follows a failure.
    pub retest: Retest,
    /// Where the limits are printed.
    pub source: Source,
}

impl AcceptanceRule {
    /// The rule of a standard for one of its classes.
    pub fn of(standard: Standard, class: &CoatClass) -> Self {
        let none = AcceptanceLimits { lot_mean: None, lot_mean_max: None, article: None, reading: None };
        let limits = match standard {
            // No average is allowed: every significant surface measured reaches the class.
            Standard::B695 => AcceptanceLimits { reading: class.single, ..none },
            Standard::F2329Lot => {
                AcceptanceLimits { lot_mean: class.lot_average, article: class.single, ..none }
            }
            _ => AcceptanceLimits {
                lot_mean: class.average,
                lot_mean_max: class.average_max,
                article: class.single,
                ..none
            },
        };
        let basis = class.single.or(class.average).map_or(Basis::Memory, |limit| limit.basis);
        Self { standard, limits, retest: standard.retest(), source: class.document.known(class.place, basis) }
    }

    /// A rule with the order's own limits.
    pub fn own(limits: AcceptanceLimits) -> Self {
        let source = document::PROJECT.known("limits of the order", Basis::Assumed);
        Self { standard: Standard::Own, limits, retest: Retest::NoneKnown, source }
    }
}

impl Standard {
    /// The standard that lots of a document are checked by, where one is known: of hot-dip under ASTM
    /// F2329 one batch.
    pub fn of(document: &Document) -> Option<Self> {
        let all = [Self::A153, Self::F2329Batch, Self::Iso10684, Self::Iso1461, Self::B695, Self::Iso4042];
        all.into_iter().find(|standard| standard.document() == Some(document))
    }

    /// The document; none for own limits.
    pub fn document(self) -> Option<&'static Document> {
        match self {
            Self::A153 => Some(&document::ASTM_A153),
            Self::F2329Batch | Self::F2329Lot => Some(&document::ASTM_F2329),
            Self::Iso10684 => Some(&document::ISO_10684),
            Self::Iso1461 => Some(&document::ISO_1461),
            Self::B695 => Some(&document::ASTM_B695),
            Self::Iso4042 => Some(&document::ISO_4042_1999),
            Self::Own => None,
        }
    }

    /// Where it is stated that every article measured keeps its limits; none where a plan with an
    /// acceptance number may be agreed.
    pub fn every_article(self) -> Option<Source> {
        match self {
            Self::A153 => Some(document::ASTM_A153.read("6.2")),
            Self::Iso1461 => Some(iso_1461_sampling::TABLE),
            Self::F2329Batch => Some(astm_f2329_sampling::TABLE),
            Self::F2329Lot => Some(astm_f1470_sampling::ZERO_DEFECTS),
            Self::Iso10684 | Self::Iso4042 | Self::B695 | Self::Own => None,
        }
    }

    /// What follows when the first sample fails.
    pub fn retest(self) -> Retest {
        match self {
            Self::A153 => Retest::TwoSets,
            Self::Iso1461 => Retest::TwiceTheArticles,
            _ => Retest::NoneKnown,
        }
    }

    /// Fewest readings that make the thickness of one article, where a rule is known.
    pub fn readings_per_article(self) -> Option<ReadingsRule> {
        let fewest = astm_a153_sampling::READINGS_PER_ARTICLE;
        let (or_articles, source) = match self {
            Self::A153 => (None, astm_a153_sampling::READINGS),
            Self::F2329Batch | Self::F2329Lot => (None, astm_f2329_sampling::READINGS),
            Self::Iso10684 => (Some(inspection::SINGLE_READINGS_ON), inspection::ISO_10684_READINGS),
            Self::Iso1461 | Self::B695 | Self::Iso4042 | Self::Own => return None,
        };
        Some(ReadingsRule { fewest, or_articles, source })
    }
}

/// How many readings make the thickness of one article.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ReadingsRule {
    /// Fewest readings on an article.
    pub fewest: u32,
    /// One reading on each of so many articles does instead, where an article is too small.
    pub or_articles: Option<u32>,
    /// Where it is stated.
    pub source: Source,
}

impl ReadingsRule {
    /// Whether an article with so many readings, one of so many articles, is measured in full.
    pub fn in_full(self, readings: usize, articles: usize) -> bool {
        let reach = |count: usize, least: u32| u32::try_from(count).is_ok_and(|count| count >= least);
        reach(readings, self.fewest) || self.or_articles.is_some_and(|least| reach(articles, least))
    }
}

impl Retest {
    /// What is to be done, said as an instruction.
    pub fn instruction(self) -> &'static str {
        match self {
            Self::TwoSets => {
                "measure two more sets of the same size: both must conform, or the lot is rejected"
            }
            Self::TwiceTheArticles => {
                "measure twice the articles: if that sample conforms, the lot is accepted"
            }
            Self::NoneKnown => {
                "the retest rule of the document is not known here; open it before measuring again"
            }
        }
    }

    /// Where it is stated; none where no rule is known.
    pub fn source(self) -> Option<Source> {
        match self {
            Self::TwoSets => Some(astm_a153_sampling::RETEST),
            Self::TwiceTheArticles => Some(iso_1461_sampling::RETEST),
            Self::NoneKnown => None,
        }
    }
}
