//! ASME B1.1: the sizes of the unified series, and the printed values that its formulas do not give.
//!
//! Limits of size are computed by the document's formulas with its rounding, in
//! [`crate::thread::limits`]; where a printed value differs from the formula, the printed one counts.

use crate::source::{Source, document};

/// A unified series.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Series {
    /// Coarse.
    Unc,
    /// Fine.
    Unf,
    /// Extra fine.
    Unef,
    /// Eight threads an inch at every diameter.
    Un8,
}

/// A nominal diameter.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Diameter {
    /// In sixteenths of an inch.
    Sixteenths(u16),
    /// The number of a small screw: each is .013 in larger than the one before, and number 0 is .060 in.
    Number(u8),
}

impl Diameter {
    /// In inches.
    pub fn inch(self) -> f64 {
        match self {
            Self::Sixteenths(sixteenths) => f64::from(sixteenths) / 16.0,
            Self::Number(number) => f64::from(60 + 13 * u16::from(number)) / 1000.0,
        }
    }
}

/// A size of a series.
#[derive(Debug, PartialEq, Eq)]
pub struct Size {
    /// Nominal diameter.
    pub diameter: Diameter,
    /// Threads in two inches: 9 is 4.5 threads an inch.
    pub per_two_inches: u16,
}

impl Series {
    /// All four, in the order in which a size without a series is looked for.
    pub const ALL: [Self; 4] = [Self::Unc, Self::Unf, Self::Un8, Self::Unef];

    /// Its sizes, from the smallest.
    pub fn sizes(self) -> &'static [Size] {
        match self {
            Self::Unc => UNC,
            Self::Unf => UNF,
            Self::Unef => UNEF,
            Self::Un8 => UN8,
        }
    }

    /// As written in a designation; the constant-pitch series is written UN.
    pub fn name(self) -> &'static str {
        match self {
            Self::Unc => "UNC",
            Self::Unf => "UNF",
            Self::Unef => "UNEF",
            Self::Un8 => "UN",
        }
    }
}

/// Where the list of sizes comes from; the coarse sizes up to 4 in were also read in nut tables.
pub static SIZES_SOURCE: Source = document::ASME_B1_1.memory("Table 1");

/// Where the formulas of limits come from.
pub static FORMULAS: Source = document::ASME_B1_1.read("5.8 and 8.3");

/// A printed value that the formula with its rounding does not give.
#[derive(Debug)]
pub struct Exception {
    /// Nominal diameter in sixteenths of an inch.
    pub sixteenths: u16,
    /// Threads in two inches.
    pub per_two_inches: u16,
    /// What is printed.
    pub value: ExceptionalValue,
    /// Where.
    pub source: Source,
}

/// Which value is printed otherwise; lengths in millionths of an inch.
#[derive(Debug)]
pub enum ExceptionalValue {
    /// The allowance of classes 1A and 2A.
    Allowance(i64),
    /// The minor diameter of classes 1B and 2B, least and greatest.
    NutMinor(i64, i64),
}

/// The printed values that count before the formula.
pub static EXCEPTIONS: &[Exception] = &[
    // The exact formula rounds to .0017.
    Exception {
        sixteenths: 10,
        per_two_inches: 22,
        value: ExceptionalValue::Allowance(1600),
        source: document::ASME_B1_1.read("limits of class 2A"),
    },
    // Rounded once, the formula gives 1.533 and 1.567.
    Exception {
        sixteenths: 28,
        per_two_inches: 10,
        value: ExceptionalValue::NutMinor(1_534_000, 1_568_000),
        source: document::ASME_B1_1.memory("limits of class 2B"),
    },
];

const fn size(sixteenths: u16, threads_per_inch: u16) -> Size {
    Size { diameter: Diameter::Sixteenths(sixteenths), per_two_inches: 2 * threads_per_inch }
}

const fn number(number: u8, threads_per_inch: u16) -> Size {
    Size { diameter: Diameter::Number(number), per_two_inches: 2 * threads_per_inch }
}

const fn size_4_5(sixteenths: u16) -> Size {
    Size { diameter: Diameter::Sixteenths(sixteenths), per_two_inches: 9 }
}

/// Number, or diameter in sixteenths of an inch, and threads per inch.
static UNC: &[Size] = &[
    number(4, 40),
    number(5, 40),
    number(6, 32),
    number(8, 32),
    number(10, 24),
    number(12, 24),
    size(4, 20),
    size(5, 18),
    size(6, 16),
    size(7, 14),
    size(8, 13),
    size(9, 12),
    size(10, 11),
    size(12, 10),
    size(14, 9),
    size(16, 8),
    size(18, 7),
    size(20, 7),
    size(22, 6),
    size(24, 6),
    size(28, 5),
    size_4_5(32),
    size_4_5(36),
    size(40, 4),
    size(44, 4),
    size(48, 4),
    size(52, 4),
    size(56, 4),
    size(60, 4),
    size(64, 4),
];

static UNF: &[Size] = &[
    number(4, 48),
    number(5, 44),
    number(6, 40),
    number(8, 36),
    number(10, 32),
    number(12, 28),
    size(4, 28),
    size(5, 24),
    size(6, 24),
    size(7, 20),
    size(8, 20),
    size(9, 18),
    size(10, 18),
    size(12, 16),
    size(14, 14),
    size(16, 12),
    size(18, 12),
    size(20, 12),
    size(22, 12),
    size(24, 12),
];

static UNEF: &[Size] = &[
    size(4, 32),
    size(5, 32),
    size(6, 32),
    size(7, 28),
    size(8, 28),
    size(9, 24),
    size(10, 24),
    size(11, 24),
    size(12, 20),
    size(13, 20),
    size(14, 20),
    size(15, 20),
    size(16, 20),
    size(17, 18),
    size(18, 18),
    size(19, 18),
    size(20, 18),
    size(21, 18),
    size(22, 18),
    size(23, 18),
    size(24, 18),
    size(25, 18),
    size(26, 18),
    size(27, 18),
];

/// At 1 in the coarse series has eight threads itself, and the thread is called 1-8 UNC.
static UN8: &[Size] = &[
    size(17, 8),
    size(18, 8),
    size(19, 8),
    size(20, 8),
    size(21, 8),
    size(22, 8),
    size(23, 8),
    size(24, 8),
    size(25, 8),
    size(26, 8),
    size(27, 8),
    size(28, 8),
    size(29, 8),
    size(30, 8),
    size(31, 8),
    size(32, 8),
    size(34, 8),
    size(36, 8),
    size(38, 8),
    size(40, 8),
    size(42, 8),
    size(44, 8),
    size(46, 8),
    size(48, 8),
    size(50, 8),
    size(52, 8),
    size(54, 8),
    size(56, 8),
    size(58, 8),
    size(60, 8),
    size(62, 8),
    size(64, 8),
];
