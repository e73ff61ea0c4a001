//! ASTM F1470: sampling of fasteners for mechanical properties, performance and coatings.
//!
//! Its scope is read: lots are accepted on zero defects, by one of two plans, detection or
//! prevention; thread fit is sampled by ASME B18.18. Its table of sample sizes was not found.

use crate::source::{Source, document::ASTM_F1470};

/// Articles that may miss.
pub const ALLOWED: u32 = 0;
/// Where that is stated.
pub const ZERO_DEFECTS: Source = ASTM_F1470.read("scope: zero defects, two plans");
/// The sizes, which were not found.
pub const SIZES: Source = ASTM_F1470.memory("sample sizes for a production lot");
