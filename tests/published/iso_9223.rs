//! ISO 9223:2012: categories (Table 2: C1 to C5 read, CX from memory) and the dose-response function
//! of zinc (Eq. (2), from memory; the check values are computed by the formula as remembered).

use crate::seen::{agree, near};
use kettle_barrel::quantity::{PlainNumber, Rate, Temperature};
use kettle_barrel::site::{Category, Climate, dose_response};
use kettle_barrel::source::Basis;
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

/// Category, lower and upper limit in µm, the same in g/m², basis.
type Limits = (&'static str, Option<f64>, f64, Option<f64>, f64, Basis);

const LIMITS: &[Limits] = &[
    ("C1", None, 0.1, None, 0.7, Basis::Read),
    ("C2", Some(0.1), 0.7, Some(0.7), 5.0, Basis::Read),
    ("C3", Some(0.7), 2.1, Some(5.0), 15.0, Basis::Read),
    ("C4", Some(2.1), 4.2, Some(15.0), 30.0, Basis::Read),
    ("C5", Some(4.2), 8.4, Some(30.0), 60.0, Basis::Read),
    ("CX", Some(8.4), 25.0, Some(60.0), 180.0, Basis::Memory),
];

#[test]
fn limits_of_the_categories() {
    for &(name, lower, upper, _, _, basis) in LIMITS {
        let rates = Category::read(name).unwrap().rates();
        agree!(ISO_9223, rates.lower, lower.map(Rate::from_um_year), "{name}");
        agree!(ISO_9223, rates.upper, Rate::from_um_year(upper), "{name}");
        assert_eq!(rates.source.basis, basis, "{name}");
    }
}

/// The limits in g/m² are those in µm at the density of zinc, rounded as printed: within 6 %.
#[test]
fn limits_in_micrometres_and_in_grams_agree() {
    for &(name, lower, upper, lower_mass, upper_mass, _) in LIMITS {
        let agree = |um: f64, g_m2: f64| (g_m2 / um / 7.14 - 1.0).abs() < 0.06;
        assert!(agree(upper, upper_mass), "{name}");
        assert!(lower.is_none_or(|um| agree(um, lower_mass.unwrap())), "{name}");
    }
}

/// T in °C, RH in %, SO2 and chloride in mg/(m²·d); loss in µm in the first year, its two terms.
const CHECKS: &[([f64; 4], f64, f64, f64)] = &[
    ([10.0, 80.0, 10.0, 3.0], 1.5539, 1.4086, 0.1452),
    ([10.0, 75.0, 10.0, 10.0], 1.3964, 1.1192, 0.2772),
    ([10.0, 80.0, 24.0, 60.0], 2.8716, 2.0706, 0.8011),
    ([5.0, 80.0, 10.0, 3.0], 1.2598, 1.1649, 0.0950),
    ([15.0, 80.0, 10.0, 3.0], 1.2098, 0.9877, 0.2222),
    ([20.0, 75.0, 10.0, 60.0], 2.351, 0.5502, 1.8008),
    ([28.0, 85.0, 5.0, 300.0], 10.001, 0.3641, 9.6369),
    ([-5.0, 80.0, 5.0, 1.0], 0.6089, 0.5872, 0.0217),
    ([10.0, 80.0, 0.7, 0.4], 0.4832, 0.4372, 0.0461),
    ([9.6, 73.0, 66.6, 0.4], 2.3578, 2.3157, 0.0421),
    ([18.5, 76.0, 3.0, 120.0], 2.7495, 0.3773, 2.3722),
    ([12.0, 77.0, 20.0, 5.0], 1.6691, 1.4443, 0.2249),
];

#[test]
fn dose_response_of_zinc() {
    for &([t, rh, so2, chloride], rate, sulfur, salt) in CHECKS {
        let found = dose_response(Climate {
            temperature: Temperature::from_celsius(t),
            humidity: PlainNumber::from_percent(rh),
            so2: PlainNumber::from_one(so2),
            chloride: PlainNumber::from_one(chloride),
        })
        .unwrap();
        near!(ISO_9223, found.rate.um_year(), rate, 6e-4, "{t} {rh} {so2} {chloride}: {:?}", found.rate);
        near!(ISO_9223, found.sulfur.um_year(), sulfur, 6e-5, "{t} {rh} {so2}: {:?}", found.sulfur);
        near!(ISO_9223, found.salt.um_year(), salt, 6e-5, "{t} {rh} {chloride}: {:?}", found.salt);
        // Table A.1, from memory: −33 % to +50 %.
        assert!((found.low.um_year() / found.rate.um_year() - 0.67).abs() < 1e-12);
        assert!((found.high.um_year() / found.rate.um_year() - 1.50).abs() < 1e-12);
    }
}

/// Table 3, from memory: what lies outside is refused with the range.
#[test]
fn outside_the_ranges_of_validity_nothing_is_estimated() {
    for ([t, rh, so2, chloride], range) in [
        ([29.0, 80.0, 10.0, 3.0], "−17.1\u{a0}°C to 28.7\u{a0}°C"),
        ([10.0, 94.0, 10.0, 3.0], "34\u{a0}% to 93\u{a0}%"),
        ([10.0, 80.0, 151.0, 3.0], "0.7\u{a0}mg/(m²·d) to 150.4\u{a0}mg/(m²·d)"),
        ([10.0, 80.0, 10.0, 0.3], "0.4\u{a0}mg/(m²·d) to 760.5\u{a0}mg/(m²·d)"),
    ] {
        let refusal = dose_response(Climate {
            temperature: Temperature::from_celsius(t),
            humidity: PlainNumber::from_percent(rh),
            so2: PlainNumber::from_one(so2),
            chloride: PlainNumber::from_one(chloride),
        })
        .unwrap_err()
        .to_string();
        assert!(refusal.contains(range), "{refusal}");
    }
}
