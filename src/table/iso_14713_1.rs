//! ISO 14713-1, Table 2: years to first maintenance of zinc coats by category.
//!
//! The printed years are thickness over rate, rounded to whole years; `None` as the most years
//! stands for "more than 100".

use crate::quantity::Length;
use crate::source::{Source, document::ISO_14713_1};

/// One coat of the table.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// How the coat is made.
    pub coat: &'static str,
    /// Its thickness as the table names it.
    pub thickness: Length,
    /// Years at C3, C4, C5 and CX, least and most; no most where the table prints more than 100.
    pub years: [(u32, Option<u32>); 4],
}

/// The categories of the columns.
pub static COLUMNS: [&str; 4] = ["C3", "C4", "C5", "CX"];
/// Where the rows are printed.
pub const TABLE: Source = ISO_14713_1.memory("Table 2");
/// Life is counted in a straight line: thickness over rate.
pub const STRAIGHT: Source = ISO_14713_1.memory("Table 2, thickness over rate");

const fn row(coat: &'static str, um: f64, years: [(u32, Option<u32>); 4]) -> Row {
    Row { coat, thickness: Length::from_um(um), years }
}

/// The rows, in the order of the table.
pub static ROWS: &[Row] = &[
    row("hot-dip after fabrication", 85.0, [(40, None), (20, Some(40)), (10, Some(20)), (3, Some(10))]),
    row("hot-dip after fabrication", 140.0, [(67, None), (33, Some(67)), (17, Some(33)), (6, Some(17))]),
    row("hot-dip after fabrication", 200.0, [(95, None), (48, Some(95)), (24, Some(48)), (8, Some(24))]),
    row("hot-dip sheet", 20.0, [(10, Some(29)), (5, Some(10)), (2, Some(5)), (1, Some(2))]),
    row("hot-dip sheet", 42.0, [(20, Some(60)), (10, Some(20)), (5, Some(10)), (2, Some(5))]),
    row("hot-dip tube", 55.0, [(26, Some(79)), (13, Some(26)), (7, Some(13)), (2, Some(7))]),
    row("sherardized", 15.0, [(7, Some(21)), (4, Some(7)), (2, Some(4)), (1, Some(2))]),
    row("sherardized", 30.0, [(14, Some(43)), (7, Some(14)), (4, Some(7)), (1, Some(4))]),
    row("sherardized", 45.0, [(21, Some(64)), (11, Some(21)), (5, Some(11)), (2, Some(5))]),
    row("electrodeposited", 5.0, [(2, Some(7)), (1, Some(2)), (1, Some(1)), (0, Some(1))]),
    row("electrodeposited", 25.0, [(12, Some(36)), (6, Some(12)), (3, Some(6)), (1, Some(3))]),
    row("mechanically plated", 8.0, [(4, Some(11)), (2, Some(4)), (1, Some(2)), (0, Some(1))]),
];
