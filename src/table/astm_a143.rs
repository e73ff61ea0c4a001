//! ASTM A143: embrittlement of hot-dip galvanized steel.

use crate::quantity::Stress;
use crate::source::{Source, Sourced, document};

/// Above this strength hydrogen is of concern.
pub const STRENGTH: Sourced<Stress> =
    document::ASTM_A143.read("hydrogen embrittlement").gives(Stress::from_mpa(1100.0));
/// Tight cold bends are relieved before pickling.
pub const BENDS: Source = document::ASTM_A143.memory("cold bending");
