//! AISC 360: least pretension of structural bolts, 0.70 of the least tensile load.
//!
//! The 2005 table was read; above 1 in its A325 values belong to the 105 ksi of before F3125, and
//! today's are from memory.

use super::structural::Bolt::{self, *};
use crate::quantity::{Force, Length};
use crate::source::{Sourced, document};

/// The least pretension of a bolt of a nominal diameter.
pub fn pretension(bolt: Bolt, diameter: Length) -> Option<Sourced<Force>> {
    let read = document::AISC_360.read("360-05, Tables J3.1 and J3.1M");
    match bolt {
        A325 | F1852 | A490 | F2280 => {
            let sixteenths = diameter.inch() * 16.0;
            let &(_, a325, later, a490) =
                INCH.iter().find(|row| (f64::from(row.0) - sixteenths).abs() < 1e-6)?;
            let (kip, source) = match (bolt, later) {
                (A490 | F2280, _) => (a490, read),
                (_, Some(later)) => (later, document::AISC_360.memory("360-16, Table J3.1")),
                (_, None) => (a325, read),
            };
            Some(Sourced { value: Force::from_lbf(kip * 1000.0), source })
        }
        A325M | A490M => {
            let &(_, a325m, a490m) = METRIC.iter().find(|row| (row.0 - diameter.mm()).abs() < 1e-6)?;
            let kilonewton = if bolt == A325M { a325m } else { a490m };
            Some(Sourced { value: Force::from_newton(kilonewton * 1000.0), source: read })
        }
        Hr | Hv => None,
    }
}

/// Sixteenths of an inch; kip of A325 in 2005, of A325 since F3125 where it differs, of A490.
static INCH: &[(u16, f64, Option<f64>, f64)] = &[
    (8, 12.0, None, 15.0),
    (10, 19.0, None, 24.0),
    (12, 28.0, None, 35.0),
    (14, 39.0, None, 49.0),
    (16, 51.0, None, 64.0),
    (18, 56.0, Some(64.0), 80.0),
    (20, 71.0, Some(81.0), 102.0),
    (22, 85.0, Some(97.0), 121.0),
    (24, 103.0, Some(118.0), 148.0),
];

/// Nominal diameter in mm; kN of A325M and A490M.
static METRIC: &[(f64, f64, f64)] = &[
    (16.0, 91.0, 114.0),
    (20.0, 142.0, 179.0),
    (22.0, 176.0, 221.0),
    (24.0, 205.0, 257.0),
    (27.0, 267.0, 334.0),
    (30.0, 326.0, 408.0),
    (36.0, 475.0, 595.0),
];
