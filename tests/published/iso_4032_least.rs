//! ISO 4032: minimum width across flats and height of nuts, read in two copies or more.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::source::Basis;
use kettle_barrel::thread::strength::nut_height::{Style, body};

use crate::limit::thread;
use crate::seen::agree;

#[test]
fn the_minimum_body_is_the_published_one() {
    for &(size, width, height) in ROWS {
        let found = body(thread(size), Style::Iso4032).unwrap();
        assert!(found.is_least_width, "{size}");
        agree!(ISO_4032, (found.across_flats.mm(), found.height.mm()), (width, height), "{size}");
        assert_eq!(
            (found.width_source.basis, found.height_source.basis),
            (Basis::Read, Basis::Read),
            "{size}"
        );
    }
}

/// Thread, minimum width across flats and height in mm.
const ROWS: &[(&str, f64, f64)] = &[
    ("M5", 7.78, 4.4),
    ("M6", 9.78, 4.9),
    ("M8", 12.73, 6.44),
    ("M10", 15.73, 8.04),
    ("M12", 17.73, 10.37),
    ("M14", 20.67, 12.1),
    ("M16", 23.67, 14.1),
    ("M18", 26.16, 15.1),
    ("M20", 29.16, 16.9),
    ("M22", 33.0, 18.1),
    ("M24", 35.0, 20.2),
    ("M27", 40.0, 22.5),
    ("M30", 45.0, 24.3),
    ("M33", 49.0, 27.4),
    ("M36", 53.8, 29.4),
    ("M39", 58.8, 31.8),
    ("M42", 63.1, 32.4),
    ("M45", 68.1, 34.4),
    ("M48", 73.1, 36.4),
    ("M52", 78.1, 40.4),
    ("M56", 82.8, 43.4),
    ("M60", 87.8, 46.4),
    ("M64", 92.8, 49.1),
];
