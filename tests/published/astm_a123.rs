//! Thickness and mass: ASTM A123/A123M, Table 2 note, with its worked examples, and the factors of
//! the other documents, read in public copies.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use crate::seen::agree;
use kettle_barrel::calculator::{Value, evaluate};
use kettle_barrel::source::Basis;

/// Coat and factor as typed, then the figure's unit, the value as shown, and its basis.
const ROWS: &[(&str, &str, &str, &str, Basis)] = &[
    // ASTM A123/A123M, Table 2 note: mil = µm × 0.03937, oz/ft² = µm × 0.02316, g/m² = µm × 7.067.
    ("1000 µm", "a123", "mil", "39.370", Basis::Read),
    ("1000 µm", "a123", "oz/ft²", "23.159", Basis::Read),
    ("1000 µm", "a123", "g/m²", "7067.0", Basis::Read),
    // Its worked examples as a trade association prints them: 75 µm is 2.95 mil, 1.74 oz/ft²,
    // 530.03 g/m²; 650 g/m² is 91.98 µm.
    ("75 µm", "a123", "mil", "2.953", Basis::Read),
    ("75 µm", "a123", "oz/ft²", "1.737", Basis::Read),
    ("75 µm", "a123", "g/m²", "530.0", Basis::Read),
    ("650 g/m²", "a123", "µm", "92.0", Basis::Read),
    // The same factor by plain arithmetic.
    ("50 µm", "a123", "mil", "1.969", Basis::Computed),
    ("50 µm", "a123", "g/m²", "353.4", Basis::Computed),
    ("50 µm", "a123", "oz/ft²", "1.158", Basis::Computed),
    ("1.25 oz/ft²", "a123", "g/m²", "381.4", Basis::Read),
    ("1.25 oz/ft²", "a123", "µm", "54.0", Basis::Computed),
    ("1.25 oz/ft²", "a653", "µm", "53.4", Basis::Computed),
    // ASTM A653: 1.00 oz/ft² is 1.68 mil of solid zinc.
    ("1.00 oz/ft²", "a653", "mil", "1.683", Basis::Read),
    // BS 729: 305 g/m² is 43 µm (0.14 µm for each g/m²).
    ("305 g/m²", "bs729", "µm", "43.6", Basis::Read),
    // ISO 1461, 6.2.2: 7.2 g/cm³.
    ("50 µm", "iso1461", "g/m²", "360.0", Basis::Read),
];

#[test]
fn a_coat_is_stated_in_every_unit_as_published() {
    for &(coat, factor, unit, shown, _) in ROWS {
        let report = evaluate("coat", [("coat", coat), ("factor", factor)]).unwrap();
        let ours = report
            .figures
            .iter()
            .find_map(|figure| match &figure.value {
                Value::One(value) if value.unit.symbol == unit => Some(value.digits()),
                _ => None,
            })
            .unwrap_or_else(|| panic!("{coat}: no {unit}"));
        agree!(ASTM_A123, ours, shown, "{coat} by {factor} in {unit}");
    }
}

/// Mechanical deposit: 0.45 oz/ft² for each mil (read), and about 80 % of solid zinc (read).
#[test]
fn a_deposit_is_a_range() {
    let report = evaluate("coat", [("coat", "1 mil"), ("factor", "deposit")]).unwrap();
    let ounces = report.figures.iter().find(|figure| figure.value.to_string().contains("oz/ft²")).unwrap();
    agree!(ASTM_A123, ounces.value.to_string(), "0.450 to 0.475\u{a0}oz/ft²");
    let grams = evaluate("coat", [("coat", "1 µm"), ("factor", "deposit")]).unwrap();
    let grams = grams.figures.iter().find(|figure| figure.value.to_string().ends_with("g/m²")).unwrap();
    agree!(ASTM_A123, grams.value.to_string(), "5.4 to 5.7\u{a0}g/m²");
}
