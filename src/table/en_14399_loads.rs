//! EN 14399-3 and -4: proof loads of nuts for preloaded structural bolting, M12 to M36.
//!
//! HR nuts keep their load whether plain or tapped over; HV nuts are from memory.

use crate::quantity::Force;
use crate::source::{Sourced, document};

/// A class of nuts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Class {
    /// HR 8 of EN 14399-3.
    Hr8,
    /// HR 10 of EN 14399-3.
    Hr10,
    /// HV 10 of EN 14399-4.
    Hv10,
}

/// A system of bolts and nuts that are tested together; systems are never mixed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum System {
    /// EN 14399-3: ductile by the bolt.
    Hr,
    /// EN 14399-4: ductile by the engaged thread.
    Hv,
}

/// The proof load of a nut of a nominal diameter in mm.
pub fn proof_load(diameter_mm: f64, class: Class) -> Option<Sourced<Force>> {
    let row = ROWS.iter().find(|row| (row.0 - diameter_mm).abs() < 1e-6)?;
    let (kilonewton, source) = match class {
        Class::Hr8 => (row.1, document::EN_14399_3.read("nuts, proof load")),
        Class::Hr10 => (row.2, document::EN_14399_3.read("nuts, proof load")),
        Class::Hv10 => (row.3, document::EN_14399_4.memory("nuts, proof load")),
    };
    Some(source.gives(Force::from_newton(kilonewton * 1000.0)))
}

/// Nominal diameter in mm; proof load in kN of HR 8, HR 10 and HV 10.
static ROWS: &[(f64, f64, f64, f64)] = &[
    (12.0, 84.3, 97.8, 87.7),
    (16.0, 157.0, 182.1, 163.0),
    (20.0, 245.0, 284.2, 255.0),
    (22.0, 303.0, 351.2, 315.0),
    (24.0, 353.0, 409.5, 367.0),
    (27.0, 459.0, 532.4, 477.0),
    (30.0, 561.0, 650.8, 583.0),
    (36.0, 817.0, 947.7, 850.0),
];

impl Class {
    /// The system that it is of.
    pub const fn system(self) -> System {
        match self {
            Self::Hr8 | Self::Hr10 => System::Hr,
            Self::Hv10 => System::Hv,
        }
    }

    /// As it is written.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Hr8 => "HR 8",
            Self::Hr10 => "HR 10",
            Self::Hv10 => "HV 10",
        }
    }
}
