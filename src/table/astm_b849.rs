//! ASTM B849: stress relief before coating.

use crate::quantity::Stress;
use crate::source::{Source, document};

/// From this strength on stress is relieved.
pub const RELIEF_FROM: (Stress, Source) = (Stress::from_mpa(1000.0), document::ASTM_B849.read("scope"));
