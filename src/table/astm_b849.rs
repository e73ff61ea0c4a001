//! ASTM B849: stress relief before coating.

use crate::quantity::Stress;
use crate::source::{Sourced, document};

/// From this strength on stress is relieved.
pub const RELIEF_FROM: Sourced<Stress> = document::ASTM_B849.read("scope").gives(Stress::from_mpa(1000.0));
