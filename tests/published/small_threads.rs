//! The small threads, M3 and M4 and #4 to #12: limits of size and stress areas.
//!
//! Public pages of thread limits after ASME B1.13M and ASME B1.1 (read).

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::thread::load;

use crate::limit::{Row, check_inch, check_mm, thread};
use crate::seen::near;
use kettle_barrel::source::document;

#[test]
fn metric_limits_are_the_published_ones() {
    check_mm(&document::ISO_965_2, METRIC);
}

#[test]
fn inch_limits_are_the_published_ones() {
    check_inch(&document::ASME_B1_1, INCH);
}

/// Listed with three digits that count; #4-40 is listed .00604 where the formula gives .00603.
#[test]
fn stress_areas_are_the_published_ones() {
    for &(designation, printed) in AREAS {
        let ours = load::stress_area(thread(designation)).value.in2();
        let printed: f64 = printed.parse().unwrap();
        let off = if designation == "#4-40 UNC" { 1.1e-5 } else { 5.1e-5 };
        near!(ASME_B1_1, ours, printed, off, "{designation}: {ours}, printed {printed}");
    }
}

/// Limit, thread, class, printed value in mm.
const METRIC: &[Row] = &[
    ("d max", "M3", "6g", "2.980"),
    ("d min", "M3", "6g", "2.874"),
    ("d2 max", "M3", "6g", "2.655"),
    ("d2 min", "M3", "6g", "2.580"),
    ("d max", "M4", "6g", "3.978"),
    ("d min", "M4", "6g", "3.838"),
    ("d2 max", "M4", "6g", "3.523"),
    ("d2 min", "M4", "6g", "3.433"),
];

/// Limit, thread, class, printed value in inches.
const INCH: &[Row] = &[
    ("d max", "#4-40 UNC", "2A", "0.1112"),
    ("d min", "#4-40 UNC", "2A", "0.1061"),
    ("d2 max", "#4-40 UNC", "2A", "0.0950"),
    ("d2 min", "#4-40 UNC", "2A", "0.0925"),
    ("D2 max", "#4-40 UNC", "2B", "0.0991"),
    ("D2 min", "#4-40 UNC", "2B", "0.0958"),
    ("D1 max", "#4-40 UNC", "2B", "0.0939"),
    ("D1 min", "#4-40 UNC", "2B", "0.0849"),
    ("D2 max", "#5-40 UNC", "2B", "0.1121"),
    ("D2 min", "#5-40 UNC", "2B", "0.1088"),
    ("D1 max", "#5-40 UNC", "2B", "0.1062"),
    ("D1 min", "#5-40 UNC", "2B", "0.0979"),
    ("d max", "#6-32 UNC", "2A", "0.1372"),
    ("d min", "#6-32 UNC", "2A", "0.1312"),
    ("d2 max", "#6-32 UNC", "2A", "0.1169"),
    ("d2 min", "#6-32 UNC", "2A", "0.1141"),
    ("D2 max", "#6-32 UNC", "2B", "0.1214"),
    ("D2 min", "#6-32 UNC", "2B", "0.1177"),
    ("D1 max", "#6-32 UNC", "2B", "0.1140"),
    ("D1 min", "#6-32 UNC", "2B", "0.1040"),
    ("d max", "#8-32 UNC", "2A", "0.1631"),
    ("d min", "#8-32 UNC", "2A", "0.1571"),
    ("d2 max", "#8-32 UNC", "2A", "0.1428"),
    ("d2 min", "#8-32 UNC", "2A", "0.1399"),
    ("D2 max", "#8-32 UNC", "2B", "0.1475"),
    ("D2 min", "#8-32 UNC", "2B", "0.1437"),
    ("D1 max", "#8-32 UNC", "2B", "0.1390"),
    ("D1 min", "#8-32 UNC", "2B", "0.1300"),
    ("d max", "#10-24 UNC", "2A", "0.1890"),
    ("d min", "#10-24 UNC", "2A", "0.1818"),
    ("d2 max", "#10-24 UNC", "2A", "0.1619"),
    ("d2 min", "#10-24 UNC", "2A", "0.1586"),
    ("D2 max", "#10-24 UNC", "2B", "0.1672"),
    ("D2 min", "#10-24 UNC", "2B", "0.1629"),
    ("D1 max", "#10-24 UNC", "2B", "0.1560"),
    ("D1 min", "#10-24 UNC", "2B", "0.1450"),
    ("d max", "#10-32 UNF", "2A", "0.1891"),
    ("d min", "#10-32 UNF", "2A", "0.1831"),
    ("d2 max", "#10-32 UNF", "2A", "0.1688"),
    ("d2 min", "#10-32 UNF", "2A", "0.1658"),
    ("D2 max", "#12-24 UNC", "2B", "0.1933"),
    ("D2 min", "#12-24 UNC", "2B", "0.1889"),
    ("D1 max", "#12-24 UNC", "2B", "0.1810"),
    ("D1 min", "#12-24 UNC", "2B", "0.1710"),
];

/// Thread, printed area in in².
const AREAS: &[(&str, &str)] = &[
    ("#4-40 UNC", "0.00604"),
    ("#5-40 UNC", "0.00796"),
    ("#6-32 UNC", "0.00909"),
    ("#8-32 UNC", "0.01400"),
    ("#10-24 UNC", "0.01750"),
    ("#12-24 UNC", "0.02420"),
];
