//! A list of order lines, in columns or one written line a row: each is read and assessed as the order
//! line itself is, and becomes one row of results.
//!
//! A row knows nothing of the rows beside it: a list can be cut anywhere between two rows, its parts
//! assessed apart, and the results put together again. [`List`] reads it in bounded memory, [`Summary`]
//! says what it comes to and what of it shares a kettle or a barrel.

mod columns;
mod input;
mod reader;
mod result;
mod shared;
mod summary;
mod table;

pub use columns::{Layout, TEMPLATE};
pub use reader::{Decode, List, MARK, Reads, Record, Unread};
pub use result::{HEADING, Row, heading, row, written, written_heading};
pub use summary::Summary;
pub use table::Table;

/// A cell as it is written for a spreadsheet: one that would run as a formula there is written so that it
/// does not.
pub fn safe(cell: &str) -> std::borrow::Cow<'_, str> {
    // Some take the wide forms of East Asian keyboards for the same.
    const RUNS: [char; 11] = ['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠'];
    if cell.starts_with(RUNS) { format!("'{cell}").into() } else { cell.into() }
}

#[cfg(test)]
mod tests {
    use super::safe;

    #[test]
    fn a_formula_is_written_as_text() {
        for cell in ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\n=1", "＝1+1"] {
            assert_eq!(safe(cell), format!("'{cell}"));
        }
        assert_eq!(safe("M16 x 60"), "M16 x 60");
    }
}
