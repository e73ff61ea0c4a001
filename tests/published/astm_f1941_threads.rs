//! ASTM F1941, Appendix X3: a quarter of the allowance of class 2A, read.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::thread::{coat_room, limits};

use crate::limit::{class, same_digits, thread};
use kettle_barrel::source::document;

#[test]
fn a_quarter_of_the_allowance_is_the_published_one() {
    for &(designation, allowance, thickest) in ROWS {
        let thread = thread(designation);
        let bolt = limits::bolt(thread, class("2A")).unwrap();
        same_digits(&document::ASTM_F1941, bolt.allowance().inch(), allowance, designation);
        let quarter = coat_room::quarter(thread, class("2A")).unwrap().inch() * 1e4;
        same_digits(&document::ASTM_F1941, quarter, thickest, designation);
    }
}

/// The coarse thread with so many threads per inch, allowance in inches, thickest coat in .0001 in.
const ROWS: &[(&str, &str, &str)] = &[
    ("1/4-20 UNC", ".0011", "2.75"),
    ("5/16-18 UNC", ".0012", "3.00"),
    ("3/8-16 UNC", ".0013", "3.25"),
    ("7/16-14 UNC", ".0014", "3.50"),
    ("1/2-13 UNC", ".0015", "3.75"),
    ("9/16-12 UNC", ".0016", "4.00"),
    ("5/8-11 UNC", ".0016", "4.00"),
    ("3/4-10 UNC", ".0018", "4.50"),
    ("7/8-9 UNC", ".0019", "4.75"),
    ("1-8 UNC", ".0020", "5.00"),
    ("1-1/4-7 UNC", ".0022", "5.50"),
    ("1-1/2-6 UNC", ".0024", "6.00"),
];
