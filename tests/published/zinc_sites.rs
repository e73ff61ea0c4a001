//! Zinc lost in the first year at real sites, against ISO 9223.
//!
//! Losses: ISO CORRAG programme, mean of one-year exposures, as listed in galvanizing trade association
//! articles (read); long exposures of commercial zinc 1930 to 1954 by Copson, ASTM STP 175 (computed
//! from the loss of weight). The climates are recalled from the UN/ECE programme of 1987-88, another
//! period: of low confidence, without chloride. They are counted here and never tuned to.

use crate::seen::near;
use kettle_barrel::quantity::{PlainNumber, Rate, Temperature};
use kettle_barrel::site::{Category, Climate, dose_response};
use kettle_barrel::table::iso_9223;
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

/// Site, first-year loss of zinc and of steel in µm.
const CORRAG: &[(&str, f64, f64)] = &[
    ("Ahtari", 0.7, 12.8),
    ("Auby", 5.6, 106.0),
    ("Batumi", 1.6, 28.7),
    ("Bergen", 2.1, 27.9),
    ("Biarritz", 4.3, 87.2),
    ("Birkenes", 2.3, 19.7),
    ("Boucherville", 1.4, 23.2),
    ("Buenos Aires", 1.01, 16.2),
    ("Choshi", 1.4, 43.3),
    ("Crowthorne", 1.1, 37.4),
    ("Fleet Hall", 1.34, 39.0),
    ("Helsinki", 1.3, 33.3),
    ("Jubany (Antarctica)", 1.87, 36.6),
    ("Judgeford", 0.66, 19.3),
    ("Kattesand", 1.5, 35.2),
    ("Kopisty", 3.5, 70.7),
    ("Kvarnvik", 1.8, 61.6),
    ("Lagoas", 1.0, 26.9),
    ("Madrid", 0.6, 27.7),
];

/// Site, T in °C, RH in %, SO2 in mg/(m²·d), first-year loss of zinc in µm.
const CLIMATES: &[(&str, f64, f64, f64, f64)] = &[
    ("Ahtari", 3.1, 78.0, 5.0, 0.7),
    ("Birkenes", 6.5, 80.0, 1.0, 2.3),
    ("Helsinki", 6.3, 78.0, 16.6, 1.3),
    ("Kopisty", 9.6, 73.0, 66.6, 3.5),
    ("Madrid", 14.1, 66.0, 14.7, 0.6),
];

/// Site, mean loss of zinc a year over 20 years in µm.
const LONG: &[(&str, f64)] =
    &[("Altoona PA", 6.823), ("La Jolla CA", 1.534), ("Key West FL", 0.645), ("Phoenix AZ", 0.178)];

/// Upper limits of the first-year loss of carbon steel, C1 to CX, in µm (ISO 9223, Table 2, read).
const STEEL: [f64; 6] = [1.3, 25.0, 50.0, 80.0, 200.0, 700.0];

/// The sulfur term for the five climates, in µm, as computed once outside this project.
const SULFUR_TERMS: [f64; 5] = [0.73, 0.45, 1.40, 2.32, 0.66];

/// Four of the five sites lie inside −33 % to +50 % of the estimate, with the least chloride the
/// function takes; Birkenes is not: 2.3 µm measured, 0.5 µm estimated.
#[test]
fn share_of_sites_inside_the_published_uncertainty() {
    let mut outside = Vec::new();
    for (&(site, t, rh, so2, measured), sulfur) in CLIMATES.iter().zip(SULFUR_TERMS) {
        let estimate = dose_response(Climate {
            temperature: Temperature::from_celsius(t),
            humidity: PlainNumber::from_percent(rh),
            so2: PlainNumber::from_one(so2),
            chloride: PlainNumber::from_one(iso_9223::CHLORIDE.0),
        })
        .unwrap();
        near!(ISO_9223, estimate.sulfur.um_year(), sulfur, 0.0051, "{site}: {:?}", estimate.sulfur);
        if measured < estimate.low.um_year() || measured > estimate.high.um_year() {
            outside.push(site);
        }
    }
    assert_eq!(outside, ["Birkenes"]);
}

/// Every measured loss has a category, from the rural desert in C2 to industry in C5.
#[test]
fn category_of_each_measured_loss() {
    let category = |rate: f64| Category::of_rate(Rate::from_um_year(rate)).unwrap();
    let mut counts = [0; 6];
    for &(_, zinc, _) in CORRAG {
        counts[category(zinc) as usize] += 1;
    }
    assert_eq!(counts, [0, 3, 12, 2, 2, 0]);
    let long: Vec<_> = LONG.iter().map(|&(_, zinc)| category(zinc)).collect();
    assert_eq!(long, [Category::C5, Category::C3, Category::C2, Category::C2]);
}

/// Zinc and steel put 14 of the 19 sites into the same category; only Birkenes is two apart.
#[test]
fn zinc_and_steel_mostly_agree_on_the_category() {
    let mut same = 0;
    let mut far_apart = Vec::new();
    for &(site, zinc, steel) in CORRAG {
        let by_zinc = Category::of_rate(Rate::from_um_year(zinc)).unwrap() as usize;
        let by_steel = STEEL.iter().position(|&limit| steel <= limit).unwrap();
        if by_zinc.abs_diff(by_steel) > 1 {
            far_apart.push(site);
        }
        same += usize::from(by_zinc == by_steel);
    }
    assert_eq!(same, 14);
    assert_eq!(far_apart, ["Birkenes"]);
}
