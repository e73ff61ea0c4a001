//! ISO 1461:2009, Table 1: articles in the control sample by size of the lot.

use crate::source::{Source, document::ISO_1461};

/// Lots up to so many articles, and the articles in the sample; the last row has no end.
///
/// `None` articles stands for all of them.
pub static CONTROL_SAMPLE: &[(Option<u32>, Option<u32>)] = &[
    (Some(3), None),
    (Some(500), Some(3)),
    (Some(1200), Some(5)),
    (Some(3200), Some(8)),
    (Some(10_000), Some(13)),
    (None, Some(20)),
];

/// Where the table is printed.
pub const TABLE: Source = ISO_1461.memory("Table 1");
/// What follows when a control sample fails: twice the articles are tested.
pub const RETEST: Source = ISO_1461.memory("acceptance criteria");
