//! Threads by a diameter in millimetres: their own, or that of the hole of a washer.

use crate::table::iso_7089;
use crate::thread::Thread;

/// The first thread of a diameter in millimetres: the coarse one, where it is in the coarse series.
pub(super) fn of_diameter(number: &str) -> Option<Thread> {
    let mm: f64 = number.parse().ok()?;
    Thread::all().find(|thread| thread.is_metric() && (thread.diameter().mm() - mm).abs() < 1e-9)
}

/// The thread of a washer by the hole, as the older sheets go by it, or by its size: holes of ISO 7089, which are
/// those of its wide and narrow series too, and of the coarse ISO 7091.
pub(super) fn washer_of(text: &str) -> Option<Thread> {
    let mm: f64 = text.replace(',', ".").parse().ok()?;
    let is_hole = |hole: f64| (hole - mm).abs() < 1e-9;
    let of_row = iso_7089::ROWS.iter().find(|row| is_hole(row.d1)).map(|row| row.d);
    let coarse = COARSE_HOLES.iter().find(|(_, hole)| is_hole(*hole)).map(|(size, _)| *size);
    of_diameter(&of_row.or(coarse).unwrap_or(mm).to_string())
}

/// Sizes and holes of ISO 7091 (DIN 126) where they are not those of ISO 7089, in millimetres; memory.
const COARSE_HOLES: &[(f64, f64)] = &[
    (5.0, 5.5),
    (6.0, 6.6),
    (8.0, 9.0),
    (10.0, 11.0),
    (12.0, 13.5),
    (14.0, 15.5),
    (16.0, 17.5),
    (20.0, 22.0),
    (24.0, 26.0),
    (30.0, 33.0),
    (36.0, 39.0),
];
