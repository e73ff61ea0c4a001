//! ASME B94.9, taps, inch: H limits, and the limit that is recommended for a thread; the G limits of
//! forming taps, which tap makers count alike.
//!
//! Hn lies between n − 1 and n steps of .0005 in above the basic pitch diameter. An oversize tap is
//! named by its H number, or by the amount where that is no multiple of a step.

use crate::quantity::Length;
use crate::source::{Basis, Source, Sourced, document};

/// A step of the H numbers.
pub const STEP: Sourced<Length> =
    document::ASME_B94_9.read("H limits, steps of .0005 in").gives(Length::from_inch(0.0005));

/// Where oversize taps are named.
pub const OVERSIZE: Source = document::ASME_B94_9.read("2008, marking of oversize taps");

/// The H number that is recommended for class 2B or 3B, by sixteenths of an inch and threads in two
/// inches.
pub fn recommended(sixteenths: u16, per_two_inches: u16, is_class_3: bool) -> Option<Sourced<u32>> {
    let row = RECOMMENDED.iter().find(|row| (row.0, row.1) == (sixteenths, per_two_inches))?;
    let number = if is_class_3 { row.3 } else { row.2 };
    Some(document::TAP_MAKERS_TEXT.known("recommended H limits for 2B and 3B", row.4).gives(number))
}

/// The H number of a small thread, by its number and threads in two inches.
pub fn recommended_small(number: u8, per_two_inches: u16, is_class_3: bool) -> Option<Sourced<u32>> {
    let row = RECOMMENDED_SMALL.iter().find(|row| (row.0, row.1) == (number, per_two_inches))?;
    let number = if is_class_3 { row.3 } else { row.2 };
    Some(document::TAP_MAKERS_TEXT.read("recommended H limits for 2B and 3B").gives(number))
}

/// Number of the thread, threads in two inches; H number for 2B and for 3B.
#[rustfmt::skip]
static RECOMMENDED_SMALL: &[(u8, u16, u32, u32)] = &[
    (0, 160, 2, 2),
    (1, 128, 2, 2),
    (1, 144, 2, 2),
    (2, 112, 2, 2),
    (2, 128, 2, 2),
    (3, 96, 3, 2),
    (3, 112, 2, 2),
    (4, 80, 3, 2),
    (4, 96, 3, 2),
    (5, 80, 3, 2),
    (5, 88, 3, 2),
    (6, 64, 3, 2),
    (6, 80, 3, 2),
    (8, 64, 3, 3),
    (8, 72, 3, 3),
    (10, 48, 3, 3),
    (10, 64, 3, 3),
    (12, 48, 3, 3),
    (12, 56, 3, 3),
];

/// Sixteenths of an inch, threads in two inches; H number for 2B and for 3B.
#[rustfmt::skip]
static RECOMMENDED: &[(u16, u16, u32, u32, Basis)] = &[
    (4, 40, 5, 3, Basis::Read),
    (4, 56, 4, 3, Basis::Read),
    (5, 36, 5, 3, Basis::Read),
    (5, 48, 4, 3, Basis::Read),
    (6, 32, 5, 3, Basis::Read),
    (6, 48, 4, 3, Basis::Read),
    (7, 28, 5, 3, Basis::Read),
    (7, 40, 5, 3, Basis::Read),
    (8, 26, 5, 4, Basis::Read),
    (8, 40, 5, 3, Basis::Read),
    (9, 24, 5, 4, Basis::Read),
    (9, 36, 5, 3, Basis::Read),
    (10, 22, 5, 4, Basis::Read),
    (10, 36, 5, 3, Basis::Read),
    (12, 20, 5, 4, Basis::Read),
    (12, 32, 5, 3, Basis::Memory),
    (14, 18, 6, 4, Basis::Memory),
    (14, 28, 6, 4, Basis::Memory),
    (16, 16, 6, 4, Basis::Memory),
    (16, 24, 6, 4, Basis::Memory),
    (18, 14, 8, 4, Basis::Memory),
    (18, 24, 6, 4, Basis::Memory),
    (20, 14, 8, 4, Basis::Memory),
    (20, 24, 6, 4, Basis::Memory),
    (22, 12, 8, 4, Basis::Memory),
    (22, 24, 6, 4, Basis::Memory),
    (24, 12, 8, 4, Basis::Memory),
    (24, 24, 6, 4, Basis::Memory),
];

/// The step of the G numbers of forming taps: Gn ends n steps above the basic pitch diameter, as Hn does.
pub const FORMING_STEP: Source = document::TAP_MAKERS_TEXT.read("G limits of forming taps, steps of 12.7 µm");

/// A forming tap as it is listed, with the hole before it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Forming {
    /// Its G number.
    pub number: u32,
    /// The hole before it.
    pub hole: Length,
}

/// The forming tap for a standard nut, by sixteenths of an inch and threads in two inches.
pub fn forming(sixteenths: u16, per_two_inches: u16) -> Option<Sourced<Forming>> {
    let row = FORMING.iter().find(|row| (row.0, row.1) == (sixteenths, per_two_inches))?;
    let tap = Forming { number: row.2, hole: Length::from_mm(row.3) };
    Some(document::TAP_MAKERS_TEXT.read("forming taps, G number and hole").gives(tap))
}

/// Sixteenths of an inch, threads in two inches, G number, hole in mm.
#[rustfmt::skip]
static FORMING: &[(u16, u16, u32, f64)] = &[
    (4, 40, 7, 5.82),
    (4, 56, 7, 5.97),
    (5, 36, 7, 7.33),
    (6, 48, 7, 9.07),
    (7, 28, 8, 10.32),
    (7, 40, 8, 10.57),
    (8, 26, 8, 11.84),
    (8, 40, 8, 12.15),
];
