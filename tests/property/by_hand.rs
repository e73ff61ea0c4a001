//! Small facts, each worked out by hand, where a table of one line would do: how a size is read, which bolt a
//! grade is, to how many decimals a gauge is shown.

use kettle_barrel::coat::barrel::usual_bead_ratio;
use kettle_barrel::lot::Measure;
use kettle_barrel::quantity::{Density, Length, unit};
use kettle_barrel::steel::load::known_nut;
use kettle_barrel::steel::{Grade, structural};
use kettle_barrel::table::nut_grade::NutGrade;
use kettle_barrel::table::structural::Bolt;
use kettle_barrel::table::{astm_a563m, mechanical_process};
use kettle_barrel::thread::{Designation, Thread};

/// ASME B1.1: small screws have numbers, 0.060 in and 0.013 in for each; the same figures before a pitch that no
/// numbered screw has are inches.
#[test]
fn a_number_is_an_inch_only_where_such_a_thread_is() {
    for (text, inch) in [
        ("10-24", 0.190),
        ("#10-24", 0.190),
        ("5-40", 0.125),
        ("1-8", 1.0),
        ("2-4.5", 2.0),
        ("1-8 UNC-2A", 1.0),
        ("1/2-13-2A", 0.5),
        ("1-1/8-8", 1.125),
    ] {
        let thread = Designation::read(text).unwrap_or_else(|problem| panic!("{text}: {problem}")).thread;
        assert!((thread.diameter().inch() - inch).abs() < 1e-9, "{text} is {thread}");
    }
}

/// ISO 965-1 has threads of 10 mm with pitches of 1.5, 1.25, 1 and 0.75 mm.
#[test]
fn threads_of_one_diameter_are_of_one_system() {
    let ten = Designation::read("M10").unwrap().thread;
    let all: Vec<Thread> = ten.of_same_diameter().collect();
    assert!(all.contains(&ten) && all.len() > 1, "{all:?}");
    assert!(all.iter().all(|thread| thread.is_metric() && thread.diameter() == Length::from_mm(10.0)));
    let half = Designation::read("1/2-13 UNC").unwrap().thread;
    assert!(half.of_same_diameter().all(|thread| !thread.is_metric()));
    assert!(half.of_same_diameter().any(|thread| thread.threads_per_inch() == Some(20.0)));
}

/// ASTM F3125 holds six bolts.
#[test]
fn a_structural_grade_is_its_bolt() {
    for (grade, bolt) in [
        (Grade::A325, Some(Bolt::A325)),
        (Grade::A490, Some(Bolt::A490)),
        (Grade::A325M, Some(Bolt::A325M)),
        (Grade::A490M, Some(Bolt::A490M)),
        (Grade::F1852, Some(Bolt::F1852)),
        (Grade::F2280, Some(Bolt::F2280)),
        (Grade::Class8_8, None),
    ] {
        assert_eq!(structural::bolt(grade), bolt, "{grade:?}");
    }
    let nut = known_nut(Grade::A563mClass8S);
    assert!(matches!(nut, Some(NutGrade::A563M(astm_a563m::PropertyClass::Class8S))));
}

/// One decimal more than a usual gauge or balance shows would be made up.
#[test]
fn a_thickness_has_the_decimals_of_its_gauge() {
    let factor = Density::from_g_cm3(7.14);
    for (unit, shown) in [
        (&unit::UM, "50.8"),
        (&unit::MM, "0.0508"),
        (&unit::MIL, "2.00"),
        (&unit::INCH, "0.00200"),
        // 50.8 µm · 7.14 g/cm³ = 362.7 g/m², and 305.15 g/m² are an ounce on a square foot.
        (&unit::G_M2, "363"),
        (&unit::OZ_FT2, "1.189"),
    ] {
        let text = Measure { unit, factor }.show(Length::from_um(50.8), 0).digits();
        assert_eq!(text.to_string(), shown, "{}", unit.symbol);
    }
}

/// An encyclopedia calls it galvanizing from above 0.001 in, and a description takes two of beads then.
#[test]
fn beads_are_doubled_above_a_thousandth_of_an_inch() {
    let limit = mechanical_process::GALVANIZED_ABOVE.value;
    assert_eq!(usual_bead_ratio(limit).value, 1.0);
    assert_eq!(usual_bead_ratio(limit + Length::from_um(0.1)).value, 2.0);
}
