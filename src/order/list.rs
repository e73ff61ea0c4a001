//! A list of order lines, in columns or one written line a row: each is read and assessed as the order
//! line itself is, and becomes one row of results.
//!
//! A row knows nothing of the rows beside it: a list can be cut anywhere between two rows, its parts
//! assessed apart, and the results put together again.

mod columns;
mod result;
mod summary;

pub use columns::{Layout, TEMPLATE};
pub use result::{HEADING, Row, row};
pub use summary::Summary;

/// A cell as it is written for a spreadsheet: one that would run as a formula there is written so that it
/// does not.
pub fn safe(cell: &str) -> std::borrow::Cow<'_, str> {
    if cell.starts_with(['=', '+', '-', '@', '\t', '\r']) { format!("'{cell}").into() } else { cell.into() }
}

#[cfg(test)]
mod tests {
    use super::safe;

    #[test]
    fn a_formula_is_written_as_text() {
        for cell in ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1"] {
            assert_eq!(safe(cell), format!("'{cell}"));
        }
        assert_eq!(safe("M16 x 60"), "M16 x 60");
    }
}
