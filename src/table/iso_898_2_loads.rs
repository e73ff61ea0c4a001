//! ISO 898-2 (1992 edition): proof loads of coarse nuts of style 1, as printed.

use crate::quantity::Force;
use crate::source::{Source, document};

/// Where the loads were read.
pub static SOURCE: Source = document::ISO_898_2.read("1992 edition, style 1, coarse thread");

/// The property classes of the columns.
pub static CLASSES: [u8; 5] = [5, 6, 8, 10, 12];

/// The printed proof load of a coarse nut, if it was read.
pub fn proof_load(diameter_mm: u16, class: u8) -> Option<Force> {
    let (_, loads) = ROWS.iter().find(|row| row.0 == diameter_mm)?;
    let column = CLASSES.iter().position(|printed| *printed == class)?;
    loads.get(column).map(|newton| Force::from_newton(*newton))
}

/// Nominal diameter in mm; proof load in N of classes 5, 6, 8, 10 and 12.
pub static ROWS: &[(u16, [f64; 5])] = &[
    (6, [11_700.0, 13_500.0, 17_200.0, 20_900.0, 23_100.0]),
    (8, [21_600.0, 24_900.0, 31_800.0, 38_100.0, 42_500.0]),
    (12, [51_400.0, 59_000.0, 74_200.0, 88_500.0, 100_300.0]),
    (16, [95_800.0, 109_900.0, 138_200.0, 164_900.0, 186_800.0]),
    (18, [121_000.0, 138_200.0, 176_600.0, 203_500.0, 230_400.0]),
    (22, [190_900.0, 218_200.0, 278_800.0, 321_200.0, 363_600.0]),
    (24, [222_400.0, 254_200.0, 324_800.0, 374_200.0, 423_600.0]),
    (30, [353_400.0, 403_900.0, 516_100.0, 594_700.0, 673_200.0]),
    (33, [437_200.0, 499_700.0, 638_500.0, 735_600.0, 832_800.0]),
];
