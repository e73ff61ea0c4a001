//! EN 1665, hexagon bolts with flange, heavy series.

use crate::source::{Source, document};

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter.
    pub d: f64,
    /// Width across flats, greatest.
    pub s_max: f64,
    /// Width across flats, least.
    pub s_min: f64,
    /// Head height over all, greatest.
    pub k: f64,
    /// Flange diameter, greatest.
    pub dc: f64,
    /// Thickness of the flange at its rim, least.
    pub c: f64,
    /// Shank diameter, least.
    pub ds_min: f64,
    /// Thread length up to 125 mm.
    pub b: f64,
}

/// Where the sizes were read; the least width across flats of M10 is a misprint there, and computed here
/// from the width across corners: 17.62 / 1.12.
pub const SOURCE: Source = document::EN_1665.read("table 1");
/// What the thread is longer on bolts over 125 mm, in millimetres.
pub const LONGER: f64 = 6.0;
/// Where that is known from.
pub const THREAD_LENGTH: Source = document::EN_1665.memory("thread length over 125 mm");

/// The rows.
pub const ROWS: &[Row] = &[
    row(5.0, 8.0, 7.78, 5.8, 11.8, 1.0, 4.82, 16.0),
    row(6.0, 10.0, 9.78, 6.6, 14.2, 1.1, 5.82, 18.0),
    row(8.0, 13.0, 12.73, 8.1, 18.0, 1.2, 7.78, 22.0),
    row(10.0, 16.0, 15.73, 10.4, 22.3, 1.5, 9.78, 26.0),
    row(12.0, 18.0, 17.73, 11.8, 26.6, 1.8, 11.73, 30.0),
    row(14.0, 21.0, 20.67, 13.7, 30.5, 2.1, 13.73, 34.0),
    row(16.0, 24.0, 23.67, 15.4, 35.0, 2.4, 15.73, 38.0),
    row(20.0, 30.0, 29.67, 18.9, 43.0, 3.0, 19.67, 46.0),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(d: f64, s_max: f64, s_min: f64, k: f64, dc: f64, c: f64, ds_min: f64, b: f64) -> Row {
    Row { d, s_max, s_min, k, dc, c, ds_min, b }
}
