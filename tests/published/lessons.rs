//! A published number of each topic is a number of its lesson; and a sheet is the same text everywhere.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::course::lesson::lesson_of;
use kettle_barrel::course::{self, Sheet};

/// Lesson, what it shows, and where that is published; each document has a file of these tests.
const SHOWN: &[(&str, &str, &str)] = &[
    ("patina", "0.70 to 2.10 µm/year", "ISO 9223:2012, Table 2 (read)"),
    ("mass", "530.0 g/m²", "ASTM A123/A123M, Table 2 note: 75 µm are 530.03 g/m² (read)"),
    ("table", "53 µm", "ASTM A153/A153M-16, Table 1, class C, average (read)"),
    ("table", "43 µm", "ASTM A153/A153M-16, Table 1, class C, each article (read)"),
    ("four-times", "14.653 mm", "Machinery's Handbook, 27th ed., p. 1793: 14.701 less 4 · 0.012 (computed)"),
    ("overtap", "0.340 mm", "ISO 965-5:1998, Table 1, AZ of M16 (read)"),
    ("strips-first", "156.6684 mm²", "Bickford, 4th ed., stress area of M16: 156.67 (read)"),
    ("hydrogen", "12 h", "ASTM B850-98, Table 1, 1201 to 1300 MPa (read)"),
    ("hydrogen", "40 HRC", "ASTM F2329-05, 7 (read)"),
    ("temper", "13966.4 K·log h", "Hollomon and Jaffe 1945, 465 °C for 5 min (computed)"),
    ("temper", "425.2 °C", "Hollomon and Jaffe 1945, the same as one hour (computed)"),
    ("powder", "5.4062 g/m² per µm", "trade association, 0.45 oz/ft² for a mil: 5.406 (read)"),
    ("powder", "53.00 µm", "ASTM B695, Table 1, class 55 (read)"),
    ("salt-spray", "96 h", "ASTM B633, Table 1, type II (read)"),
    ("years", "11.9 to 24 years", "ISO 14713-1, Table 2, 50 µm over 4.2 and 2.1 µm (from memory)"),
    ("lot", "2.1318", "Student's t, 4 degrees, 95 %: 2.132 (from memory)"),
];

#[test]
fn a_published_number_of_each_topic_stands_in_its_lesson() {
    for &(key, number, published) in SHOWN {
        let text = lesson_of(key).unwrap().page().to_string().replace('\u{a0}', " ");
        assert!(text.contains(number), "{key}: {number}, {published}\n{text}");
    }
}

/// The calculators that the sheets are drawn from: what a rule says of an order is kept elsewhere.
const FROM: &str = "coat oversize-tap coat-room thread-strength gauges hydrogen tempering powder kettle life lot \
                    salt-spray";

/// What the terminal prints, and under it what it prints with `--answers`: to be renewed where a working
/// has changed by `kettle-barrel course number=42 count=12 from="…" level=…`.
#[test]
fn a_number_makes_the_same_sheet_everywhere() {
    for (level, from, printed) in [
        ("one-step", FROM, include_str!("sheet_one_step.txt")),
        ("whole-task", FROM, include_str!("sheet_whole_task.txt")),
        ("find-the-error", FROM, include_str!("sheet_find_the_error.txt")),
    ] {
        let pairs = [("number", "42"), ("count", "12"), ("level", level), ("from", from)];
        let sheet = Sheet::of(&course::read(&pairs.into_iter().collect()).unwrap());
        assert_eq!(format!("{sheet}\n{}", sheet.answers()), printed, "{level}");
    }
}
