//! ASTM A153/A153M, 6.2: articles to test by size of the lot, where nothing else is agreed.

use crate::source::{Source, document::ASTM_A153};

/// Lots up to so many articles, the articles to test, and where the row is known from; the last
/// row has no end. `None` articles stands for all of them.
pub static SAMPLE: &[(Option<u32>, Option<u32>, Source)] = &[
    (Some(3), None, ASTM_A153.read("6.2")),
    (Some(500), Some(3), ASTM_A153.memory("6.2")),
    (Some(1200), Some(5), ASTM_A153.memory("6.2")),
    (Some(3200), Some(8), ASTM_A153.memory("6.2")),
    (Some(10_000), Some(13), ASTM_A153.memory("6.2")),
    (None, Some(20), ASTM_A153.memory("6.2")),
];

/// Sets to take when the first one fails; both must conform.
pub const SETS_OF_A_RETEST: u32 = 2;
/// Where the retest is stated.
pub const RETEST: Source = ASTM_A153.memory("rejection and retest");

/// Magnetic readings that make the thickness of one article.
pub const READINGS_PER_ARTICLE: u32 = 5;
/// Where that is stated.
pub const READINGS: Source = ASTM_A153.memory("with ASTM E376, magnetic gauge");
