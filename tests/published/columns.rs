//! Columns of a printed table against the rows of ours.

use kettle_barrel::source::Document;

use crate::seen::seen;

/// Compares one column by the nominal size of its rows; returns how many values were compared.
pub fn compare<R>(
    document: &Document,
    name: &str,
    rows: &[R],
    size: impl Fn(&R) -> f64,
    of: impl Fn(&R) -> f64,
    printed: &[(f64, f64)],
) -> usize {
    for &(nominal, value) in printed {
        let row = rows.iter().find(|row| (size(row) - nominal).abs() < 1e-5);
        let ours = row.map_or_else(|| panic!("{name}: no row for {nominal}"), &of);
        assert!((ours - value).abs() < 6e-5, "{name} of {nominal}: {ours}, printed {value}");
        seen(document, ours, value);
    }
    printed.len()
}
