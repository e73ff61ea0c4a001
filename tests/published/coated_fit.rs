//! The 4 t rule on the limits of ASME B1.1: what a 2A thread is cut to before its plate, computed.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::quantity::Length;
use kettle_barrel::thread::fit::Coat;
use kettle_barrel::thread::gauge::{basic, before_coat};
use kettle_barrel::thread::limits;

use crate::limit::{class, same_digits, thread};
use kettle_barrel::source::document;

/// Greatest: the least of that of 2A and the basic size less 4 t of the greatest coat. Least: that of 2A
/// less 4 t of the least coat, for limits that hold after it.
#[test]
fn a_plated_bolt_keeps_its_class_and_passes_the_basic_gauge() {
    for &(size, [min, max], greatest, least) in ROWS {
        let thread = thread(size);
        let bolt = limits::bolt(thread, class("2A")).unwrap();
        let coat = Coat::even(Length::from_inch(min), Length::from_inch(max));
        let before = before_coat(&bolt, &basic(thread).unwrap(), coat).unwrap().pitch;
        same_digits(
            &document::ASME_B1_1,
            before.max.inch(),
            greatest,
            &format!("{size}, {max} in, greatest"),
        );
        same_digits(&document::ASME_B1_1, before.min.inch(), least, &format!("{size}, {min} in, least"));
    }
}

/// Thread, coat from and to in inches, pitch diameter before it.
#[rustfmt::skip]
const ROWS: &[(&str, [f64; 2], &str, &str)] = &[
    ("1/4-20 UNC", [0.0002, 0.0003], "0.2163", "0.2119"),
    ("3/8-16 UNC", [0.0002, 0.0003], "0.3331", "0.3279"),
    ("1/2-13 UNC", [0.0002, 0.0003], "0.4485", "0.4427"),
    ("3/4-10 UNC", [0.0002, 0.0003], "0.6832", "0.6765"),
    ("1/4-20 UNC", [0.0003, 0.0005], "0.2155", "0.2115"),
    ("3/8-16 UNC", [0.0003, 0.0005], "0.3324", "0.3275"),
    ("1/2-13 UNC", [0.0003, 0.0005], "0.4480", "0.4423"),
    ("3/4-10 UNC", [0.0003, 0.0005], "0.6830", "0.6761"),
    ("1/4-20 UNC", [0.0005, 0.0007], "0.2147", "0.2107"),
    ("3/8-16 UNC", [0.0005, 0.0007], "0.3316", "0.3267"),
    ("1/2-13 UNC", [0.0005, 0.0007], "0.4472", "0.4415"),
    ("3/4-10 UNC", [0.0005, 0.0007], "0.6822", "0.6753"),
];
