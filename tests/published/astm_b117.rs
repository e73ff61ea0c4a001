//! Hours in the salt spray: ASTM B633, Table 1 (read); ASTM B695, 72 h to white (memory); about 5 µm
//! of mechanical zinc 36 h against 24 h of electroplated zinc (common practice).

use kettle_barrel::site::salt_spray::{Finish, hours};
use kettle_barrel::source::Basis;
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

/// Key of the finish, hours (none where the standard asks for none), basis.
const STATED: &[(&str, Option<u32>, Basis)] = &[
    ("b633-i", None, Basis::Read),
    ("b633-ii", Some(96), Basis::Read),
    ("b633-iii", Some(12), Basis::Read),
    ("b633-iv", None, Basis::Read),
    ("b633-v", Some(72), Basis::Read),
    ("b633-vi", Some(120), Basis::Read),
    ("b695-ii", Some(72), Basis::Memory),
    ("barrel-5", Some(36), Basis::CommonPractice),
    ("cell-5", Some(24), Basis::CommonPractice),
];

#[test]
fn hours_as_stated() {
    for &(key, stated, basis) in STATED {
        let found = hours(Finish::from_key(key).unwrap()).unwrap();
        assert_eq!((found.hours, found.source.basis), (stated, basis), "{key}");
    }
}

/// What was not found stays blank, and hot-dip has no hours.
#[test]
fn no_hours_where_none_are_stated() {
    for key in ["b695-i", "f1941", "kettle"] {
        assert!(hours(Finish::from_key(key).unwrap()).is_err(), "{key}");
    }
}
