//! Counts what is compared with what is printed, by document, with the largest difference.
//!
//! Every comparison with a published value goes through here. Alone it asserts and nothing more; in a run
//! under [`WATCHED`] each one is also told on the error stream, where `ground` collects them.

use kettle_barrel::source::Document;

/// The variable that has every comparison told.
pub const WATCHED: &str = "KETTLE_BARREL_SEEN";
/// What a told comparison begins with.
pub const SIGN: &str = "compared\t";

/// A value of ours beside the printed one; whoever calls has asserted how far apart they may be.
///
/// Within half of its last digit it is as it was printed.
pub fn seen(document: &Document, ours: f64, printed: f64) {
    let text = printed.to_string();
    let decimals = text.split_once('.').map_or(0, |(_, behind)| behind.len() as i32);
    let apart = (ours - printed).abs();
    let is_as_printed = apart <= 0.5 * 10f64.powi(-decimals) * (1.0 + 1e-9);
    tell(document, if is_as_printed { 0.0 } else { apart / printed.abs() });
}

/// A row that is as it was printed: to the digits printed, or word for word.
pub fn as_printed(document: &Document) {
    tell(document, 0.0);
}

fn tell(document: &Document, apart: f64) {
    assert!(apart.is_finite(), "{}: no share of nothing", document.name);
    if std::env::var_os(WATCHED).is_some() {
        eprintln!("{SIGN}{}\t{apart:e}", document.name);
    }
}

/// Asserts that ours is what the document prints, and counts the row.
macro_rules! agree {
    ($document:ident, $($compared:tt)+) => {{
        assert_eq!($($compared)+);
        $crate::seen::as_printed(&kettle_barrel::source::document::$document);
    }};
}

/// Asserts that ours lies closer to the printed number than so much, and counts the row.
macro_rules! near {
    ($document:ident, $ours:expr, $printed:expr, $within:expr $(, $($words:tt)+)?) => {{
        let (ours, printed, within): (f64, f64, f64) = ($ours, $printed, $within);
        assert!((ours - printed).abs() < within $(, $($words)+)?);
        $crate::seen::seen(&kettle_barrel::source::document::$document, ours, printed);
    }};
}

pub(crate) use {agree, near};
