//! Sampling tables that were looked for and not found: ASTM F1470, ASTM B602, ISO 3269.

use kettle_barrel::lot::sample::size;
use kettle_barrel::lot::{Stage, Standard};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

#[test]
fn a_blank_names_the_document_to_open() {
    for (standard, document) in [
        (Standard::F2329Lot, "ASTM F1470"),
        (Standard::B695, "ASTM B602"),
        (Standard::Iso10684, "ISO 3269"),
        (Standard::Iso4042, "ISO 3269"),
    ] {
        let refusal = size(standard, 1000, Stage::First).unwrap_err().to_string();
        assert!(refusal.contains(&format!("open {document}")), "{refusal}");
    }
}
