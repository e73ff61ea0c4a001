//! ISO 10684:2004: the threads of M8, which ISO 965-4 and ISO 965-5 leave out. Annex B was not seen:
//! the values are computed by the formulas of the two.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis;
use kettle_barrel::thread::undersize;

use crate::limit::{limit, same_digits, thread};
use kettle_barrel::source::document;

#[test]
fn limits_of_m8_follow_the_formulas() {
    for &(name, designation, of_class, printed, _) in LIMITS {
        let ours = match name {
            "d3" => undersize::bolt(thread(designation)).unwrap().root_diameter,
            _ => limit(name, designation, of_class),
        };
        same_digits(&document::ISO_10684, ours.mm(), printed, &format!("{name} {designation} {of_class}"));
    }
}

/// A public listing gives −295 µm for az at M8. It is not ours: 33.2 mm², recalled from Annex A,
/// needs the −325 µm of the formula.
#[test]
fn the_stress_area_of_an_undercut_m8_needs_the_formula() {
    let bolt = undersize::bolt(thread("M8")).unwrap();
    same_digits(&document::ISO_10684, bolt.stress_area.mm2(), "33.2", "As az M8");
    same_digits(&document::ISO_10684, bolt.limits.deviation.value.um(), "-325", "es az M8");
}

/// Limit, thread, class, value in mm, basis.
const LIMITS: &[(&str, &str, &str, &str, Basis)] = &[
    ("D min", "M8", "6AZ", "8.325", Basis::Computed),
    ("D2 min", "M8", "6AZ", "7.513", Basis::Computed),
    ("D2 max", "M8", "6AZ", "7.673", Basis::Computed),
    ("D1 min", "M8", "6AZ", "6.972", Basis::Computed),
    ("D1 max", "M8", "6AZ", "7.237", Basis::Computed),
    ("D min", "M8", "6AX", "8.255", Basis::Computed),
    ("D2 min", "M8", "6AX", "7.443", Basis::Computed),
    ("D2 max", "M8", "6AX", "7.603", Basis::Computed),
    ("D1 min", "M8", "6AX", "6.902", Basis::Computed),
    ("D1 max", "M8", "6AX", "7.167", Basis::Computed),
    ("d max", "M8", "6az", "7.675", Basis::Computed),
    ("d min", "M8", "6az", "7.463", Basis::Computed),
    ("d2 max", "M8", "6az", "6.863", Basis::Computed),
    ("d2 min", "M8", "6az", "6.745", Basis::Computed),
    ("d3", "M8", "6az", "6.141", Basis::Computed),
];
