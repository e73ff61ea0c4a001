//! Which nut the standards put on a bolt: ISO 898-2, ASTM A563 Appendix X1, F3125, A354, A193, SAE J429.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use crate::seen::{agree, as_printed};
use kettle_barrel::quantity::Length;
use kettle_barrel::source::Basis::{self, *};
use kettle_barrel::steel::Grade;
use kettle_barrel::steel::pairing::{BoltToPair, Nuts, nuts};
use kettle_barrel::table::iso_898_2_loads::PropertyClass::*;
use kettle_barrel::table::iso_898_2_pairing::{exists, style_of};
use kettle_barrel::table::nut_style::Style::*;
use kettle_barrel::table::pairing::{Bolt, Finish, Washer};
use kettle_barrel::table::{astm_f3125_pairing, en_14399_pairing};

fn of(key: &str, diameter: Length, is_zinc_coated: bool) -> Option<Nuts> {
    let grade = Grade::of_key(key).unwrap();
    nuts(BoltToPair { grade, diameter, is_coarse: true, is_zinc_coated, system: None }).ok()
}

#[test]
fn nuts_are_the_published_ones() {
    for &(key, inch, zinc, nut, basis) in INCH {
        let found = of(key, Length::from_inch(inch), zinc).unwrap_or_else(|| panic!("{key} {inch}"));
        let written = format!("{}, {}", found.nut.grade, found.nut.style.name());
        assert_eq!((written.as_str(), found.source.basis), (nut, basis), "{key} {inch} in, zinc {zinc}");
        as_printed(found.source.document);
    }
    for &(key, mm, nut, basis) in METRIC {
        let found = of(key, Length::from_mm(mm), true).unwrap_or_else(|| panic!("{key} M{mm}"));
        let written = format!("{}, {}", found.nut.grade, found.nut.style.name());
        assert_eq!((written.as_str(), found.source.basis), (nut, basis), "{key} M{mm}");
        as_printed(found.source.document);
    }
}

/// Every inch bolt has its nut, plain and zinc-coated, but those whose rule was not found.
#[test]
fn every_inch_bolt_has_its_nut() {
    for grade in Grade::ALL {
        let key = grade.key();
        if grade.is_nut()
            || grade.is_washer()
            || Grade::Class12_9Underlined == *grade
            || !key.contains(['j', 'a', 'f'])
        {
            continue;
        }
        let known = |zinc| of(key, Length::from_inch(0.75), zinc).is_some();
        let expected = match key {
            "j429-5.2" | "j429-8.2" | "a574" => (false, false),
            // No zinc is allowed on A490, so that no nut is named for it.
            "a490" | "a490m" | "f2280" => (true, false),
            _ => (true, true),
        };
        assert_eq!((known(false), known(true)), expected, "{key}");
    }
}

/// A563 DH may be replaced by A194 2H; a weaker nut does not do, nor a hex one in place of heavy hex.
#[test]
fn what_may_stand_for_it() {
    let a325 = of("a325", Length::from_inch(0.75), true).unwrap();
    assert_eq!(a325.washer, Some(Washer::F436));
    assert_eq!(a325.takes(Grade::A194Grade2H, Some(HeavyHex)), Some(true));
    assert_eq!(a325.takes(Grade::A563Dh, Some(HeavyHex)), Some(true));
    assert_eq!(a325.takes(Grade::A563Dh, Some(Hex)), Some(false));
    assert_eq!(a325.takes(Grade::Nut8, None), Some(false));
    let bd = of("a354-bd", Length::from_inch(1.0), true).unwrap();
    assert_eq!(bd.takes(Grade::A194Grade2H, None), Some(true));
    let class = of("8.8", Length::from_mm(16.0), true).unwrap();
    assert_eq!(class.takes(Grade::Nut10, None), Some(true));
    assert_eq!(class.takes(Grade::Nut6, None), Some(false));
}

/// Styles and sizes of ISO 898-2:2012, from memory; two cells were not settled.
#[test]
fn a_class_exists_in_some_styles_and_sizes_only() {
    agree!(ISO_898_2, exists(Class12, Regular, 16.0, true), Some(true));
    agree!(ISO_898_2, exists(Class12, Regular, 20.0, true), Some(false));
    agree!(ISO_898_2, exists(Class8, High, 16.0, true), Some(false));
    agree!(ISO_898_2, exists(Class8, High, 18.0, true), Some(true));
    agree!(ISO_898_2, exists(Class9, High, 12.0, false), Some(false));
    agree!(ISO_898_2, exists(Class10, Regular, 20.0, false), Some(false));
    agree!(ISO_898_2, exists(Class10, High, 20.0, false), Some(true));
    assert_eq!(exists(Class10, High, 20.0, true), None);
    assert_eq!(exists(Class5, Regular, 20.0, false), None);
    agree!(ISO_898_2, exists(Class6, Regular, 42.0, true), Some(false));
    agree!(ISO_898_2, style_of(Class12, 12.0, true), Some(Regular));
    agree!(ISO_898_2, style_of(Class12, 20.0, true), Some(High));
    agree!(ISO_898_2, style_of(Class9, 12.0, true), Some(High));
    assert!(of("8.8", Length::from_mm(42.0), true).is_none());
}

/// Metric structural bolts have their own nuts and washers.
#[test]
fn metric_structural_bolts_have_their_own_nuts_and_washers() {
    let found = |bolt, finish| {
        let row = astm_f3125_pairing::ROWS.iter().chain(en_14399_pairing::ROWS);
        let row = row.clone().find(|row| row.bolt == bolt && row.finish == finish).unwrap();
        as_printed(row.source.document);
        (row.nut.grade.to_string(), row.washer, row.source.basis)
    };
    let f436 = Some(Washer::F436);
    assert_eq!(found(Bolt::A325M, Finish::Plain), ("ASTM A563M class 8S".into(), f436, Memory));
    assert_eq!(found(Bolt::A325M, Finish::ZincCoated), ("ASTM A563M class 10S".into(), f436, Read));
    assert_eq!(found(Bolt::A490M, Finish::Plain), ("ASTM A563M class 10S".into(), f436, Memory));
    let en = Some(Washer::En14399);
    assert_eq!(found(Bolt::Hr8_8, Finish::Any), ("EN 14399 HR 8".into(), en, Read));
    assert_eq!(found(Bolt::Hr10_9, Finish::Any), ("EN 14399 HR 10".into(), en, Read));
    assert_eq!(found(Bolt::Hv10_9, Finish::Any), ("EN 14399 HV 10".into(), en, Read));
}

/// Grade, nominal diameter in inches, zinc-coated, nut, basis.
const INCH: &[(&str, f64, bool, &str, Basis)] = &[
    ("a307", 0.5, true, "ASTM A563 grade A, hex", Read),
    ("a307", 2.0, true, "ASTM A563 grade A, heavy hex", Read),
    ("a325", 0.75, false, "ASTM A563 grade C, heavy hex", Read),
    ("a325", 0.75, true, "ASTM A563 grade DH, heavy hex", Read),
    ("a354-bc", 1.0, false, "ASTM A563 grade C, heavy hex", Read),
    ("a354-bc", 1.0, true, "ASTM A563 grade DH, heavy hex", Read),
    ("a354-bd", 1.0, false, "ASTM A563 grade DH, heavy hex", Read),
    ("a354-bd", 3.0, true, "ASTM A563 grade DH, heavy hex", Read),
    ("a449", 0.5, false, "ASTM A563 grade B, hex", Read),
    ("a449", 2.0, false, "ASTM A563 grade A, heavy hex", Read),
    ("a449", 0.5, true, "ASTM A563 grade DH, heavy hex", Read),
    ("a449", 2.0, true, "ASTM A563 grade DH, heavy hex", Read),
    ("a490", 0.75, false, "ASTM A563 grade DH, heavy hex", Memory),
    // Of the two nuts that go on it, the one whose document gives a load when it is tapped over.
    ("j429-1", 0.5, true, "ASTM A563 grade A, hex", Memory),
    ("j429-2", 0.5, false, "SAE J995 grade 2, hex", Memory),
    ("j429-5", 0.5, false, "SAE J995 grade 5, hex", Read),
    ("j429-5", 0.5, true, "ASTM A563 grade DH, heavy hex", Memory),
    ("j429-8", 0.5, false, "SAE J995 grade 8, hex", Read),
    ("a193-b7", 0.625, true, "ASTM A194 grade 2H, heavy hex", Memory),
];

/// Grade, nominal diameter in mm, nut, basis.
const METRIC: &[(&str, f64, &str, Basis)] = &[
    ("4.6", 16.0, "class 5, style 1", Memory),
    ("5.8", 16.0, "class 5, style 1", Memory),
    ("6.8", 16.0, "class 6, style 1", Memory),
    ("8.8", 16.0, "class 8, style 1", Read),
    ("9.8", 16.0, "class 9, style 2", Memory),
    ("10.9", 16.0, "class 10, style 1", Read),
    ("12.9", 16.0, "class 12, style 1", Memory),
    ("12.9", 20.0, "class 12, style 2", Memory),
];
