//! ISO 4014 and ISO 4017, hexagon head bolts and screws: head sizes and thread lengths.
//!
//! The sizes are nominal and hold for the fine pitches of the same diameter (ISO 8765, ISO 8676)
//! too.

use crate::source::{Basis, Source, document};

/// The head of one size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter `d`.
    pub d: f64,
    /// Width across flats `s`, greatest.
    pub s: f64,
    /// Head height `k`, nominal.
    pub k: f64,
    /// How `k` is known; the library that was read prints the greatest `k` of some sizes only.
    pub k_basis: Basis,
}

/// Where widths across flats were read.
pub const S: Source =
    document::ISO_4014.read("s, as tabulated in the general-purpose CAD library bd_warehouse 0.4");

/// Where head heights are known from.
pub const fn k_source(basis: Basis) -> Source {
    match basis {
        Basis::Read => document::ISO_4014
            .read("nominal k, as tabulated in the general-purpose CAD library bd_warehouse 0.4"),
        basis => document::ISO_4014.known("nominal k", basis),
    }
}

/// Thread length `b`: 2d + 6 mm up to 125 mm, 2d + 12 mm up to 200 mm, 2d + 25 mm beyond.
pub const THREAD_LENGTH: Source = document::ISO_4014.memory("thread length b");
/// What is added to `2d`, by the greatest nominal length it holds for, in millimetres.
/// Known by [`THREAD_LENGTH`].
pub const THREAD_ADDITIONS: [(f64, f64); 3] = [(125.0, 6.0), (200.0, 12.0), (f64::INFINITY, 25.0)];

/// Distance of the last full thread from the head of a screw, in pitches: 1 to 3. Known by [`RUN_OUT`].
pub const SCREW_RUN_OUT: (f64, f64) = (1.0, 3.0);
/// Where the run-out is published.
pub const RUN_OUT: Source = document::ISO_4017.memory("distance a from the last full thread to the head");

/// The rows, M3 to M64. Known by [`S`] and [`k_source`].
pub const ROWS: &[Row] = &[
    row(3.0, 5.5, 2.0),
    row(4.0, 7.0, 2.8),
    row(5.0, 8.0, 3.5),
    row(6.0, 10.0, 4.0),
    row(8.0, 13.0, 5.3),
    row(10.0, 16.0, 6.4),
    row(12.0, 18.0, 7.5),
    row(14.0, 21.0, 8.8),
    row(16.0, 24.0, 10.0),
    row(18.0, 27.0, 11.5),
    row(20.0, 30.0, 12.5),
    row(22.0, 34.0, 14.0),
    row(24.0, 36.0, 15.0),
    row(27.0, 41.0, 17.0),
    row(30.0, 46.0, 18.7),
    remembered(33.0, 50.0, 21.0),
    row(36.0, 55.0, 22.5),
    remembered(39.0, 60.0, 25.0),
    row(42.0, 65.0, 26.0),
    remembered(45.0, 70.0, 28.0),
    row(48.0, 75.0, 30.0),
    remembered(52.0, 80.0, 33.0),
    row(56.0, 85.0, 35.0),
    remembered(60.0, 90.0, 38.0),
    row(64.0, 95.0, 40.0),
];

const fn row(d: f64, s: f64, k: f64) -> Row {
    Row { d, s, k, k_basis: Basis::Read }
}

const fn remembered(d: f64, s: f64, k: f64) -> Row {
    Row { d, s, k, k_basis: Basis::Memory }
}
