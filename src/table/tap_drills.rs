//! Drills before the tap, as tap makers and workshop tables list them.
//!
//! Two copies differ for M8: 6.7 mm in one, 6.8 mm in the other; the first is used.

use crate::quantity::Length;
use crate::source::{Basis, Source, Sourced, document};

/// The drill for a cutting tap in inches, with its name: `27/64`, `U`.
pub fn inch(sixteenths: u16, per_two_inches: u16) -> Option<(&'static str, Sourced<Length>)> {
    let row = INCH.iter().find(|row| (row.0, row.1) == (sixteenths, per_two_inches))?;
    Some((row.2, document::TAP_MAKERS_TEXT.read("tap drill sizes").gives(Length::from_inch(row.3))))
}

/// The drill for a cutting tap, by diameter and pitch in mm.
pub fn metric(diameter: f64, pitch: f64) -> Option<Sourced<Length>> {
    let row = METRIC.iter().find(|row| (row.0 - diameter).abs() < 1e-6 && (row.1 - pitch).abs() < 1e-6)?;
    let document = if row.3 == Basis::Read { &document::TAP_MAKERS_TEXT } else { &document::ISO_2306 };
    Some(document.known("tap drill sizes", row.3).gives(Length::from_mm(row.2)))
}

/// Where the rule for a cutting tap is published: diameter less pitch.
pub const CUTTING_RULE: Source = document::TAP_MAKERS_TEXT.read("drill for a cutting tap, D − P");

/// The part of a pitch by which the hole for a forming tap is smaller than the thread: 65 % of full
/// thread by `D − P · 65 / 147.06`, which is `D − 0.0068 · 65 / n` in inches.
pub const FORMING_SHARE: Sourced<f64> =
    document::TAP_MAKERS_TEXT.read("hole for a forming tap, D − P · 65 / 147.06").gives(65.0 / 147.06);

/// Sixteenths of an inch, threads in two inches, name, diameter in inches.
#[rustfmt::skip]
static INCH: &[(u16, u16, &str, f64)] = &[
    (4, 40, "#7", 0.2010),
    (4, 56, "#3", 0.2130),
    (5, 36, "F", 0.2570),
    (5, 48, "I", 0.2720),
    (6, 32, "5/16", 0.3125),
    (6, 48, "Q", 0.3320),
    (7, 28, "U", 0.3680),
    (7, 40, "25/64", 0.3906),
    (8, 26, "27/64", 0.4219),
    (8, 40, "29/64", 0.4531),
    (9, 24, "31/64", 0.4844),
    (9, 36, "33/64", 0.5156),
    (10, 22, "17/32", 0.5312),
    (10, 36, "37/64", 0.5781),
    (12, 20, "21/32", 0.6562),
    (12, 32, "11/16", 0.6875),
    (14, 18, "49/64", 0.7656),
    (14, 28, "13/16", 0.8125),
    (16, 16, "7/8", 0.8750),
    (16, 24, "59/64", 0.9219),
    (18, 14, "63/64", 0.9844),
    (18, 24, "1-3/64", 1.0469),
    (20, 14, "1-7/64", 1.1094),
    (20, 24, "1-11/64", 1.1719),
    (22, 12, "1-7/32", 1.2187),
    (22, 24, "1-19/64", 1.2969),
    (24, 12, "1-11/32", 1.3437),
    (24, 24, "1-27/64", 1.4219),
];

/// Diameter, pitch and drill in mm.
#[rustfmt::skip]
static METRIC: &[(f64, f64, f64, Basis)] = &[
    (5.0, 0.8, 4.2, Basis::Read),
    (6.0, 1.0, 5.0, Basis::Read),
    (7.0, 1.0, 6.0, Basis::Read),
    (8.0, 1.0, 7.0, Basis::Read),
    (8.0, 1.25, 6.7, Basis::Read),
    (10.0, 1.25, 8.7, Basis::Read),
    (10.0, 1.5, 8.5, Basis::Read),
    (12.0, 1.25, 10.8, Basis::Read),
    (12.0, 1.75, 10.2, Basis::Read),
    (14.0, 2.0, 12.0, Basis::Read),
    (16.0, 1.5, 14.5, Basis::Read),
    (16.0, 2.0, 14.0, Basis::Read),
    (18.0, 1.5, 16.5, Basis::Read),
    (18.0, 2.5, 15.5, Basis::Read),
    (20.0, 2.5, 17.5, Basis::Read),
    (22.0, 2.5, 19.5, Basis::Memory),
    (24.0, 3.0, 21.0, Basis::Memory),
    (27.0, 3.0, 24.0, Basis::Memory),
    (30.0, 3.5, 26.5, Basis::Memory),
    (33.0, 3.5, 29.5, Basis::Memory),
    (36.0, 4.0, 32.0, Basis::Memory),
];
