//! ISO 9224: how the attack on zinc goes on after the first year.

use crate::quantity::Time;
use crate::source::{Source, document::ISO_9224};

/// Exponent of zinc, mean of the exposures.
pub const B1: f64 = 0.813;
/// Exponent of zinc, upper bound: the mean and two standard deviations.
pub const B2: f64 = 0.873;
/// Where the exponents are printed.
pub const EXPONENTS: Source = ISO_9224.read("Table 3");

/// The attack follows a power of time up to here, and a straight line beyond.
pub const STRAIGHT_BEYOND: Time = Time::from_year(20.0);
/// The power law up to twenty years.
pub const POWER_LAW: Source = ISO_9224.memory("Eq. (1)");
/// The straight line beyond twenty years.
pub const STRAIGHT_LINE: Source = ISO_9224.memory("equation beyond 20 years");
