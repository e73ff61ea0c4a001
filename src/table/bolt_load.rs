//! What the loads of a bolt are looked up by: its printed table, and the stresses of its grade.

use super::Refusal;
use super::iso_898_1_loads::PropertyClass;
use crate::quantity::Stress;
use crate::source::Sourced;

/// What is known of a bolt's grade at its size.
#[derive(Debug, Clone, PartialEq)]
pub struct BoltStrength {
    /// The table that prints its loads, where one does.
    pub printed: Option<Printed>,
    /// Least tensile strength.
    pub tensile: Result<Sourced<Stress>, Refusal>,
    /// Stress under proof load.
    pub proof: Result<Sourced<Stress>, Refusal>,
}

/// A table that prints loads by thread.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Printed {
    /// ISO 898-1, coarse threads.
    Iso898_1(PropertyClass),
    /// ASTM A574, coarse threads.
    A574,
}
