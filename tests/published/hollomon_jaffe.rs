//! The tempering parameter: check values computed from its formula, and the order of published tempers.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use crate::seen::{agree, near};
use kettle_barrel::quantity::{Temperature, Time};
use kettle_barrel::steel::tempering::{one_hour, parameter};

/// °C, hours, parameter, equal one-hour temper in °C; C = 20, hours, kelvin; basis computed.
const CHECKS: &[(f64, f64, f64, f64)] = &[
    (425.0, 1.0, 13963.0, 425.0),
    (427.0, 1.0, 14003.0, 427.0),
    (380.0, 1.0, 13063.0, 380.0),
    (343.0, 1.0, 12323.0, 343.0),
    (593.0, 1.0, 17323.0, 593.0),
    (450.0, 3.0 / 60.0, 13522.2, 403.0),
    (455.0, 3.0 / 60.0, 13615.7, 407.6),
    (465.0, 5.0 / 60.0, 13966.4, 425.2),
    (480.0, 5.0 / 60.0, 14250.2, 439.4),
    (530.0, 2.0 / 60.0, 14876.7, 470.7),
    (545.0, 3.0 / 60.0, 15298.6, 491.8),
    (560.0, 3.0 / 60.0, 15579.0, 505.8),
];

#[test]
fn parameter_and_equal_temper() {
    for &(celsius, hours, printed, equal) in CHECKS {
        let ours = parameter(Temperature::from_celsius(celsius), Time::from_hour(hours));
        agree!(HOLLOMON_JAFFE, format!("{ours:.1}"), format!("{printed:.1}"), "{celsius} °C, {hours} h");
        agree!(
            HOLLOMON_JAFFE,
            format!("{:.1}", one_hour(ours).celsius()),
            format!("{equal:.1}"),
            "{celsius} °C, {hours} h"
        );
    }
}

/// Restated for seconds, the constant 20 becomes 16.444.
#[test]
fn the_constant_in_seconds() {
    let in_hours = parameter(Temperature::from_celsius(465.0), Time::from_minute(5.0));
    let in_seconds = Temperature::from_celsius(465.0).kelvin() * (16.444 + 300.0_f64.log10());
    assert!((in_hours - in_seconds).abs() < 0.5, "{in_hours}, {in_seconds}");
}

/// Steel, °F, parameter of one hour and of two, Brinell after the temper; read in a trade association's
/// notes, which do not say the time.
const MACHINING_NOTES: &[(&str, f64, f64, f64, f64)] = &[
    ("4140", 800.0, 13996.0, 14207.0, 397.0),
    ("4140", 1000.0, 16219.0, 16463.0, 335.0),
    ("4140", 1200.0, 18441.0, 18718.0, 256.0),
    ("4340", 900.0, 15107.0, 15335.0, 410.0),
    ("4340", 1100.0, 17330.0, 17591.0, 340.0),
];

#[test]
fn a_greater_parameter_leaves_a_softer_steel() {
    for &(steel, fahrenheit, one, two, _) in MACHINING_NOTES {
        let heat = Temperature::from_fahrenheit(fahrenheit);
        for (hours, printed) in [(1.0, one), (2.0, two)] {
            let ours = parameter(heat, Time::from_hour(hours));
            near!(HOLLOMON_JAFFE, ours, printed, 1.0, "{steel} {fahrenheit} °F: {ours}");
        }
    }
    let pairs = MACHINING_NOTES.windows(2).filter(|rows| rows[0].0 == rows[1].0);
    for rows in pairs {
        assert!(rows[0].2 < rows[1].2 && rows[0].4 > rows[1].4, "{}", rows[0].0);
    }
}

/// Steel, °C, parameter, Brinell, MPa: ASM Metals Handbook, one hour nominal, from memory.
const HANDBOOK: &[(&str, f64, f64, f64, f64)] = &[
    ("4140", 205.0, 9563.0, 510.0, 1770.0),
    ("4140", 315.0, 11763.0, 445.0, 1550.0),
    ("4140", 425.0, 13963.0, 370.0, 1250.0),
    ("4140", 540.0, 16263.0, 285.0, 950.0),
    ("4140", 650.0, 18463.0, 230.0, 760.0),
    ("4340", 205.0, 9563.0, 520.0, 1875.0),
    ("4340", 315.0, 11763.0, 486.0, 1725.0),
    ("4340", 425.0, 13963.0, 430.0, 1470.0),
    ("4340", 540.0, 16263.0, 360.0, 1170.0),
    ("4340", 650.0, 18463.0, 280.0, 965.0),
];

#[test]
fn the_handbook_falls_in_the_same_order() {
    for &(steel, celsius, printed, _, _) in HANDBOOK {
        let ours = parameter(Temperature::from_celsius(celsius), Time::from_hour(1.0));
        near!(HOLLOMON_JAFFE, ours, printed, 0.5, "{steel} {celsius} °C: {ours}");
    }
    for rows in HANDBOOK.windows(2).filter(|rows| rows[0].0 == rows[1].0) {
        assert!(rows[0].2 < rows[1].2 && rows[0].3 > rows[1].3 && rows[0].4 > rows[1].4, "{}", rows[0].0);
    }
}
