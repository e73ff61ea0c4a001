//! ISO 9224:2012: loss after years. The exponents and the multipliers are read (Table 3, public
//! copy of the German edition), the formulas are from memory; the other check values are computed
//! by the formulas of the standard.

use crate::seen::{near, seen};
use kettle_barrel::quantity::{Length, Rate, Time};
use kettle_barrel::site::Category;
use kettle_barrel::site::life::{Exponent, attack, years};
use kettle_barrel::source::document;
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

/// Exponent, years, multiple of the first year's loss.
const MULTIPLES: &[(Exponent, f64, f64)] = &[
    (Exponent::Mean, 1.0, 1.0),
    (Exponent::Mean, 2.0, 1.7569),
    (Exponent::Mean, 5.0, 3.7005),
    (Exponent::Mean, 10.0, 6.5013),
    (Exponent::Mean, 15.0, 9.0399),
    (Exponent::Mean, 20.0, 11.4219),
    (Exponent::Mean, 25.0, 13.7434),
    (Exponent::Mean, 30.0, 16.0649),
    (Exponent::Mean, 50.0, 25.3509),
    (Exponent::Mean, 100.0, 48.5658),
    (Exponent::Upper, 1.0, 1.0),
    (Exponent::Upper, 2.0, 1.8315),
    (Exponent::Upper, 5.0, 4.0757),
    (Exponent::Upper, 10.0, 7.4645),
    (Exponent::Upper, 15.0, 10.6348),
    (Exponent::Upper, 20.0, 13.671),
    (Exponent::Upper, 25.0, 16.6547),
    (Exponent::Upper, 30.0, 19.6383),
    (Exponent::Upper, 50.0, 31.5731),
    (Exponent::Upper, 100.0, 61.41),
];

#[test]
fn multiples_of_the_first_year() {
    for &(exponent, time, multiple) in MULTIPLES {
        let lost = attack(Rate::from_um_year(1.0), Time::from_year(time), exponent).um();
        near!(ISO_9224, lost, multiple, 6e-5, "{exponent:?} {time}: {lost}");
    }
}

/// Category, years, loss in µm at the category's upper limit with the mean exponent.
const ATTACK: &[(&str, f64, f64)] = &[
    ("C2", 1.0, 0.7),
    ("C2", 2.0, 1.23),
    ("C2", 5.0, 2.59),
    ("C2", 10.0, 4.55),
    ("C2", 15.0, 6.33),
    ("C2", 20.0, 8.0),
    ("C3", 1.0, 2.1),
    ("C3", 2.0, 3.69),
    ("C3", 5.0, 7.77),
    ("C3", 10.0, 13.65),
    ("C3", 15.0, 18.98),
    ("C3", 20.0, 23.99),
    ("C4", 1.0, 4.2),
    ("C4", 2.0, 7.38),
    ("C4", 5.0, 15.54),
    ("C4", 10.0, 27.31),
    ("C4", 15.0, 37.97),
    ("C4", 20.0, 47.97),
    ("C5", 1.0, 8.4),
    ("C5", 2.0, 14.76),
    ("C5", 5.0, 31.08),
    ("C5", 10.0, 54.61),
    ("C5", 15.0, 75.93),
    ("C5", 20.0, 95.94),
    ("CX", 1.0, 25.0),
    ("CX", 2.0, 43.92),
    ("CX", 5.0, 92.51),
    ("CX", 10.0, 162.53),
    ("CX", 15.0, 226.0),
    ("CX", 20.0, 285.55),
];

#[test]
fn loss_at_the_upper_limit_of_a_category() {
    for &(category, time, loss) in ATTACK {
        let rate = Category::read(category).unwrap().rates().upper;
        let lost = attack(rate, Time::from_year(time), Exponent::Mean).um();
        near!(ISO_9224, lost, loss, 0.0051, "{category} {time}: {lost}");
    }
}

/// Thickness in µm, first year's loss in µm; years in a straight line, at 0.813 and at 0.873.
const LIVES: &[(f64, f64, f64, f64, f64)] = &[
    (43.0, 0.7, 61.43, 127.7, 100.03),
    (43.0, 2.1, 20.48, 39.5, 31.4),
    (43.0, 4.2, 10.24, 17.48, 14.36),
    (43.0, 8.4, 5.12, 7.45, 6.49),
    (50.0, 0.7, 71.43, 149.24, 116.79),
    (50.0, 2.1, 23.81, 46.68, 36.99),
    (50.0, 4.2, 11.9, 21.04, 17.07),
    (50.0, 8.4, 5.95, 8.97, 7.72),
    (53.0, 0.7, 75.71, 158.47, 123.97),
    (53.0, 2.1, 25.24, 49.76, 39.38),
    (53.0, 4.2, 12.62, 22.58, 18.25),
    (53.0, 8.4, 6.31, 9.64, 8.25),
    (85.0, 0.7, 121.43, 256.93, 200.58),
    (85.0, 2.1, 40.48, 82.58, 64.92),
    (85.0, 4.2, 20.24, 38.99, 31.01),
    (85.0, 8.4, 10.12, 17.23, 14.17),
];

#[test]
fn years_until_a_thickness_is_used_up() {
    for &(thickness, rate, straight, mean, upper) in LIVES {
        for (exponent, printed) in
            [(Exponent::Straight, straight), (Exponent::Mean, mean), (Exponent::Upper, upper)]
        {
            let found = years(Length::from_um(thickness), Rate::from_um_year(rate), exponent).year();
            near!(ISO_9224, found, printed, 0.0051, "{thickness} {rate} {exponent:?}: {found}");
        }
    }
}

/// Years, multiples of the first year's loss as printed, by the mean and by the upper exponent (read).
const PRINTED: &[(f64, f64, f64)] = &[
    (1.0, 1.0, 1.0),
    (2.0, 1.757, 1.831),
    (3.0, 2.443, 2.609),
    (4.0, 3.087, 3.354),
    (5.0, 3.701, 4.076),
    (6.0, 4.292, 4.779),
    (7.0, 4.865, 5.467),
    (8.0, 5.423, 6.143),
    (9.0, 5.968, 6.809),
    (10.0, 6.501, 7.464),
    (11.0, 7.025, 8.112),
    (12.0, 7.54, 8.752),
    (13.0, 8.047, 9.386),
    (14.0, 8.547, 10.013),
    (15.0, 9.04, 10.635),
    (16.0, 9.527, 11.251),
    (17.0, 10.008, 11.863),
    (18.0, 10.484, 12.47),
    (19.0, 10.955, 13.072),
    (20.0, 11.422, 13.671),
    (25.0, 13.694, 16.611),
    (30.0, 15.882, 19.477),
    (35.0, 18.002, 22.283),
    (40.0, 20.067, 25.038),
    (45.0, 22.083, 27.749),
    (50.0, 24.058, 30.423),
    (60.0, 27.902, 35.672),
    (70.0, 31.627, 40.81),
    (80.0, 35.254, 45.856),
    (90.0, 38.797, 50.822),
    (100.0, 42.267, 55.719),
];

/// To twenty years the printed multipliers are ours; beyond, the printed ones go on with the curve, and
/// our straight line takes more zinc: 5 % at fifty years and 15 % at a hundred by the mean.
#[test]
fn the_printed_multipliers_are_met_and_never_undercut() {
    for &(time, mean, upper) in PRINTED {
        for (exponent, printed) in [(Exponent::Mean, mean), (Exponent::Upper, upper)] {
            let ours = attack(Rate::from_um_year(1.0), Time::from_year(time), exponent).um();
            if time <= 20.0 {
                near!(ISO_9224, ours, printed, 6e-4, "{exponent:?} {time}: {ours}");
            } else {
                assert!(ours > printed && ours < 1.15 * printed, "{exponent:?} {time}: {ours}");
                seen(&document::ISO_9224, ours, printed);
            }
        }
    }
    let share = |time: f64, printed: f64| {
        attack(Rate::from_um_year(1.0), Time::from_year(time), Exponent::Mean).um() / printed
    };
    assert!((share(50.0, 24.058) - 1.054).abs() < 5e-4 && (share(100.0, 42.267) - 1.149).abs() < 5e-4);
}
