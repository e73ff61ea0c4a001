//! ASTM F844: plain washers of unhardened steel. It states no hardness that was found.

use super::steel_row::{Sizes, SteelRow, Treatment};
use crate::source::document::ASTM_F844;

/// An unhardened washer.
pub static WASHER: [SteelRow; 1] =
    [SteelRow::new(Sizes::ALL_INCH, Treatment::NotHeatTreated, ASTM_F844.memory("hardness"))];
