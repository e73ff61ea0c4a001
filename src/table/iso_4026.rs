//! ISO 4026, set screws with a hexagon socket and a flat point.

use crate::source::{Source, document};

/// One size, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter.
    pub d: f64,
    /// Flat point, greatest diameter.
    pub dp_max: f64,
    /// Flat point, least diameter.
    pub dp_min: f64,
    /// Socket across flats, nominal.
    pub s: f64,
    /// Socket depth of short screws, least.
    pub t_short: f64,
    /// Socket depth of longer screws, least.
    pub t_long: f64,
}

/// Where points were read.
pub const POINT: Source = document::ISO_4026.read("table 1: flat point dp");
/// Where sockets were read.
pub const SOCKET: Source = document::ISO_4026.read("s nominal, t least");
/// Where the deeper sockets of longer screws were read.
pub const LONG_SOCKET: Source =
    document::ISO_4026.read("t least, longer screws, as tabulated in a public CAD fastener library");

/// The rows.
pub const ROWS: &[Row] = &[
    row(3.0, 2.0, 1.75, 1.5, 1.2, 2.0),
    row(4.0, 2.5, 2.25, 2.0, 1.5, 2.5),
    row(5.0, 3.5, 3.2, 2.5, 2.0, 3.0),
    row(6.0, 4.0, 3.7, 3.0, 2.0, 3.5),
    row(8.0, 5.5, 5.2, 4.0, 3.0, 5.0),
    row(10.0, 7.0, 6.64, 5.0, 4.0, 6.0),
    row(12.0, 8.5, 8.14, 6.0, 4.8, 8.0),
    row(16.0, 12.0, 11.57, 8.0, 6.4, 10.0),
    row(20.0, 15.0, 14.57, 10.0, 8.0, 12.0),
    row(24.0, 18.0, 17.57, 12.0, 10.0, 15.0),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(d: f64, dp_max: f64, dp_min: f64, s: f64, t_short: f64, t_long: f64) -> Row {
    Row { d, dp_max, dp_min, s, t_short, t_long }
}
