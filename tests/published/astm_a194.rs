//! ASTM A194: grades 2H, 7 and 7M read, the others from memory.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::calculator::evaluate;
use kettle_barrel::source::Basis::{Memory, Read};
use kettle_barrel::steel::Grade;

use crate::steel_check::{Row, What::*, check};

/// Grade, nominal diameter in mm, what, printed value, basis.
#[rustfmt::skip]
const ROWS: &[Row] = &[
    (Grade::A194Grade2H, 25.4, HrcLeast, 24.0, Read),
    (Grade::A194Grade2H, 25.4, HrcGreatest, 35.0, Read),
    (Grade::A194Grade2H, 25.4, HbLeast, 248.0, Read),
    (Grade::A194Grade2H, 25.4, HbGreatest, 327.0, Read),
    (Grade::A194Grade2H, 25.4, TemperFahrenheit, 850.0, Read),
    (Grade::A194Grade2H, 25.4, TemperCelsius, 455.0, Read),
    (Grade::A194Grade2H, 50.8, HrcGreatest, 35.0, Read),
    (Grade::A194Grade2H, 50.8, HrbLeast, 95.0, Read),
    (Grade::A194Grade2H, 50.8, HbLeast, 212.0, Read),
    (Grade::A194Grade2H, 50.8, HbGreatest, 327.0, Read),
    (Grade::A194Grade7, 25.4, HrcLeast, 24.0, Read),
    (Grade::A194Grade7, 25.4, HrcGreatest, 35.0, Read),
    (Grade::A194Grade7, 25.4, HbLeast, 248.0, Read),
    (Grade::A194Grade7, 25.4, HbGreatest, 327.0, Read),
    (Grade::A194Grade7, 25.4, TemperFahrenheit, 1100.0, Read),
    (Grade::A194Grade7M, 25.4, HrbLeast, 84.0, Read),
    (Grade::A194Grade7M, 25.4, HbLeast, 159.0, Read),
    (Grade::A194Grade7M, 25.4, HbGreatest, 235.0, Read),
    (Grade::A194Grade7M, 25.4, TemperFahrenheit, 1150.0, Read),
    (Grade::A194Grade2HM, 25.4, HrbLeast, 84.0, Memory),
    (Grade::A194Grade2HM, 25.4, TemperFahrenheit, 1150.0, Memory),
    (Grade::A194Grade4, 25.4, HrcLeast, 24.0, Memory),
    (Grade::A194Grade4, 25.4, TemperFahrenheit, 1100.0, Memory),
    (Grade::A194Grade2, 25.4, HbLeast, 159.0, Memory),
    (Grade::A194Grade1, 25.4, HrbLeast, 70.0, Memory),
];

/// ASTM A194, Tables 3 and 4: printed loads of 1/2-13 heavy hex nuts of 2H, 7 and 7M (read), the others as
/// stress × area by stresses from memory.
#[test]
fn every_grade_has_its_load() {
    for (grade, pounds) in [
        ("a194-2h", "24830"),
        ("a194-7", "24830"),
        ("a194-7m", "21280"),
        ("a194-2hm", "21285"),
        ("a194-4", "24833"),
        ("a194-2", "21285"),
        ("a194-1", "18447"),
    ] {
        let pairs = [
            ("thread", "1/2-13 UNC"),
            ("bolt_grade", "a193-b7"),
            ("nut_grade", grade),
            ("allowance", "standard"),
        ];
        let text = match evaluate("thread-strength", pairs) {
            Ok(report) => {
                let figures = report.sections.iter().flat_map(|section| &section.figures);
                figures.map(|figure| format!("{} {}\n", figure.name, figure.value)).collect()
            }
            Err(problems) => problems.to_string(),
        };
        assert!(text.contains(pounds), "{grade}\n{text}");
    }
    // A nut tapped over has no load in that document.
    let over = [("thread", "1/2-13 UNC"), ("bolt_grade", "a193-b7"), ("nut_grade", "a194-7")];
    let report = evaluate("thread-strength", over).unwrap();
    assert!(report.findings.iter().any(|found| found.text.contains("ASTM A194")), "{:?}", report.findings);
}

#[test]
fn the_properties_are_the_published_ones() {
    check(ROWS);
}
