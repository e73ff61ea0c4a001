//! ASTM A563: how far nuts are tapped over size for zinc-coated bolts, Table 5.

use crate::source::{Basis, Source, document};

/// A row of Table 5.
#[derive(Debug, PartialEq, Eq)]
pub struct Row {
    /// Nominal diameter in sixteenths of an inch.
    pub sixteenths: u16,
    /// Threads in two inches.
    pub per_two_inches: u16,
    /// Diametral allowance in thousandths of an inch: pitch, minor and major diameter grow by it.
    pub allowance: u16,
    /// Least pitch diameter after tapping, in ten-thousandths of an inch.
    pub pitch_min: Option<u32>,
    /// Greatest pitch diameter after tapping, in ten-thousandths of an inch.
    pub pitch_max: Option<u32>,
    /// How the row is known.
    pub basis: Basis,
}

impl Row {
    /// Where the row stands.
    pub fn source(&self) -> Source {
        document::ASTM_A563.known("Table 5", self.basis)
    }
}

/// The row of a thread, if the table has one.
pub fn row(sixteenths: u16, per_two_inches: u16) -> Option<&'static Row> {
    TABLE_5.iter().find(|row| row.sixteenths == sixteenths && row.per_two_inches == per_two_inches)
}

const fn read(sixteenths: u16, threads_per_inch: u16, allowance: u16, pitch_min: u32, pitch_max: u32) -> Row {
    Row {
        sixteenths,
        per_two_inches: 2 * threads_per_inch,
        allowance,
        pitch_min: Some(pitch_min),
        pitch_max: Some(pitch_max),
        basis: Basis::Read,
    }
}

/// Sixteenths of an inch, threads per inch; allowance; least and greatest pitch diameter.
pub static TABLE_5: &[Row] = &[
    read(4, 20, 16, 2335, 2384),
    read(5, 18, 17, 2934, 2987),
    read(6, 16, 17, 3514, 3571),
    read(7, 14, 18, 4091, 4152),
    read(8, 13, 18, 4680, 4745),
    read(9, 12, 20, 5284, 5352),
    read(10, 11, 20, 5860, 5932),
    read(12, 10, 20, 7050, 7127),
    read(14, 9, 22, 8248, 8330),
    read(16, 8, 24, 9428, 9516),
    read(18, 8, 24, 10678, 10768),
    read(18, 7, 24, 10562, 10656),
    read(20, 8, 24, 11928, 12020),
    read(20, 7, 24, 11812, 11908),
    read(22, 8, 27, 13208, 13301),
    read(22, 6, 27, 12937, 13041),
    read(24, 8, 27, 14458, 14553),
    read(24, 6, 27, 14187, 14292),
    read(28, 5, 50, 16701, 16817),
    Row {
        sixteenths: 32,
        per_two_inches: 9,
        allowance: 50,
        pitch_min: Some(19057),
        pitch_max: Some(19181),
        basis: Basis::Read,
    },
    Row {
        sixteenths: 36,
        per_two_inches: 9,
        allowance: 50,
        pitch_min: Some(21557),
        pitch_max: Some(21683),
        basis: Basis::Read,
    },
    read(40, 4, 50, 23876, 24011),
    read(44, 4, 50, 26376, 26513),
    read(48, 4, 50, 28876, 29015),
    read(52, 4, 50, 31376, 31517),
    read(56, 4, 50, 33876, 34019),
    Row {
        sixteenths: 60,
        per_two_inches: 8,
        allowance: 50,
        pitch_min: Some(36376),
        pitch_max: None,
        basis: Basis::Read,
    },
    Row {
        sixteenths: 64,
        per_two_inches: 8,
        allowance: 50,
        pitch_min: None,
        pitch_max: None,
        basis: Basis::Memory,
    },
];
