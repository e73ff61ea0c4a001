//! ASTM F436: hardened steel washers, plain and hot-dip zinc coated.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::source::Source;
use crate::source::document::ASTM_F436;

const PLAIN: Source = ASTM_F436.read("hardness, plain");
const COATED: Source = ASTM_F436.read("hardness, hot-dip zinc coated");

/// Through-hardened washer, plain.
pub static WASHER: [SteelRow; 1] =
    [SteelRow::new(Sizes::ALL_INCH, Treatment::QuenchedTempered, ASTM_F436.memory(""))
        .hrc(38.0, 45.0, PLAIN)];

/// The same washer after hot-dip galvanizing: the standard expects the bath to soften it.
pub static WASHER_HOT_DIP: [SteelRow; 1] =
    [SteelRow::new(Sizes::ALL_INCH, Treatment::QuenchedTempered, ASTM_F436.memory(""))
        .hrc(26.0, 45.0, COATED)];

/// Washers that are hot-dip coated: 26 to 45 HRC after coating.
pub const HOT_DIP: Source = ASTM_F436.read("hardness of hot-dip coated washers");
