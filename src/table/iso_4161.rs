//! ISO 4161, hexagon nuts with flange.

use crate::source::{Source, document};

/// One size, in millimetres and grams.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Nominal thread diameter.
    pub d: f64,
    /// Width across flats, greatest.
    pub s_max: f64,
    /// Width across flats, least.
    pub s_min: f64,
    /// Height, greatest.
    pub m_max: f64,
    /// Height, least.
    pub m_min: f64,
    /// Flange diameter, greatest.
    pub dc: f64,
    /// Thickness of the flange at its rim, least.
    pub c: f64,
    /// Countersink, greatest.
    pub da: f64,
    /// Mass of one, where a list of the nuts of the same sizes gives it.
    pub mass: Option<f64>,
}

/// Where the sizes were read.
pub const SOURCE: Source =
    document::ISO_4161.read("s, m, dc, c, da, as tabulated in a public CAD fastener library");
/// Where the masses were read: flange nuts weigh a tenth to a fifth less than the solid of these sizes.
pub const MASS: Source = document::MASS_LIST.read("hexagon flange nuts");

/// The rows. Known by [`SOURCE`] and [`MASS`].
pub const ROWS: &[Row] = &[
    row(5.0, 8.0, 7.78, 5.0, 4.7, 11.8, 1.0, 5.75, None),
    row(6.0, 10.0, 9.78, 6.0, 5.7, 14.2, 1.1, 6.75, Some(3.45)),
    row(8.0, 13.0, 12.73, 8.0, 7.64, 17.9, 1.2, 8.75, Some(7.06)),
    row(10.0, 15.0, 14.73, 10.0, 9.64, 21.8, 1.5, 10.8, Some(11.08)),
    row(12.0, 18.0, 17.73, 12.0, 11.57, 26.0, 1.8, 13.0, Some(18.78)),
    row(14.0, 21.0, 20.67, 14.0, 13.3, 29.9, 2.1, 15.1, None),
    row(16.0, 24.0, 23.67, 16.0, 15.3, 34.5, 2.4, 17.3, Some(43.01)),
    row(20.0, 30.0, 29.16, 20.0, 18.7, 42.8, 3.0, 21.6, Some(78.4)),
];

#[allow(clippy::too_many_arguments, reason = "one argument a column of the table")]
const fn row(
    d: f64,
    s_max: f64,
    s_min: f64,
    m_max: f64,
    m_min: f64,
    dc: f64,
    c: f64,
    da: f64,
    mass: Option<f64>,
) -> Row {
    Row { d, s_max, s_min, m_max, m_min, dc, c, da, mass }
}
