//! ISO 4032, hexagon regular nuts: width across flats and height.

use crate::source::{Source, document};

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter `D`.
    pub d: f64,
    /// Width across flats `s`, greatest.
    pub s: f64,
    /// Height `m`, greatest.
    pub m: f64,
}

/// Where the sizes were read.
pub const SOURCE: Source = document::ISO_4032
    .read("s and greatest m, as tabulated in the general-purpose CAD library bd_warehouse 0.4");

/// Countersink of the thread: `da` lies between `D` and about 1.08 `D`.
pub const COUNTERSINK: (f64, f64) = (1.0, 1.08);
/// Where the countersink is published.
pub const COUNTERSINK_SOURCE: Source = document::ISO_4032.memory("da, least and greatest");

/// The rows, M5 to M64.
pub const ROWS: &[Row] = &[
    row(5.0, 8.0, 4.7),
    row(6.0, 10.0, 5.2),
    row(8.0, 13.0, 6.8),
    row(10.0, 16.0, 8.4),
    row(12.0, 18.0, 10.8),
    row(14.0, 21.0, 12.8),
    row(16.0, 24.0, 14.8),
    row(18.0, 27.0, 15.8),
    row(20.0, 30.0, 18.0),
    row(22.0, 34.0, 19.4),
    row(24.0, 36.0, 21.5),
    row(27.0, 41.0, 23.8),
    row(30.0, 46.0, 25.6),
    row(33.0, 50.0, 28.7),
    row(36.0, 55.0, 31.0),
    row(39.0, 60.0, 33.4),
    row(42.0, 65.0, 34.0),
    row(45.0, 70.0, 36.0),
    row(48.0, 75.0, 38.0),
    row(52.0, 80.0, 42.0),
    row(56.0, 85.0, 45.0),
    row(60.0, 90.0, 48.0),
    row(64.0, 95.0, 51.0),
];

/// Nominal thread diameter and least height `m`, which strength is judged by.
pub const LEAST_HEIGHTS: &[(f64, f64)] = &[
    (5.0, 4.4),
    (6.0, 4.9),
    (8.0, 6.44),
    (10.0, 8.04),
    (12.0, 10.37),
    (14.0, 12.1),
    (16.0, 14.1),
    (18.0, 15.1),
    (20.0, 16.9),
    (22.0, 18.1),
    (24.0, 20.2),
    (27.0, 22.5),
    (30.0, 24.3),
    (33.0, 27.4),
    (36.0, 29.4),
    (39.0, 31.8),
    (42.0, 32.4),
    (45.0, 34.4),
    (48.0, 36.4),
    (52.0, 40.4),
    (56.0, 43.4),
    (60.0, 46.4),
    (64.0, 49.1),
];
/// Nominal thread diameter and least width across flats `s`, which strength is judged by.
pub const LEAST_WIDTHS: &[(f64, f64)] = &[
    (5.0, 7.78),
    (6.0, 9.78),
    (8.0, 12.73),
    (10.0, 15.73),
    (12.0, 17.73),
    (14.0, 20.67),
    (16.0, 23.67),
    (18.0, 26.16),
    (20.0, 29.16),
    (22.0, 33.0),
    (24.0, 35.0),
    (27.0, 40.0),
    (30.0, 45.0),
    (33.0, 49.0),
    (36.0, 53.8),
    (39.0, 58.8),
    (42.0, 63.1),
    (45.0, 68.1),
    (48.0, 73.1),
    (52.0, 78.1),
    (56.0, 82.8),
    (60.0, 87.8),
    (64.0, 92.8),
];
/// Where the least heights and widths were read; two copies or more agree.
pub const LEAST_SOURCE: Source = document::ISO_4032.read("least m and s");

const fn row(d: f64, s: f64, m: f64) -> Row {
    Row { d, s, m }
}
