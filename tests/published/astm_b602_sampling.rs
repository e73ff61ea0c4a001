//! ASTM B602's plans by MIL-STD-105D (memory), what they let through (computed, binomial), and ISO 3269's
//! AQL values (memory).

use crate::seen::agree;
use kettle_barrel::lot::plan::risk;
use kettle_barrel::source::Basis;
use kettle_barrel::table::{astm_b602_sampling, iso_3269_sampling};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

/// Level, lot, articles, of which so many may miss.
const PLANS: &[(&str, u32, u32, u32)] = &[
    ("Level I", 8, 20, 0),
    ("Level I", 400, 80, 1),
    ("Level I", 3200, 125, 2),
    ("Level I", 200_000, 800, 10),
    ("Level II", 90, 8, 0),
    ("Level II", 91, 32, 1),
    ("Level II", 3201, 200, 7),
    ("Level II", 150_000, 500, 14),
    ("Level III", 50, 5, 0),
    ("Level III", 51, 20, 1),
    ("Level III", 1200, 80, 5),
    ("Level III", 500_000, 500, 21),
];

#[test]
fn plans_as_remembered() {
    assert_eq!(astm_b602_sampling::NUMBERS.basis, Basis::Memory);
    assert_eq!(astm_b602_sampling::SCHEME.basis, Basis::Read);
    for &(name, lot, articles, allowed) in PLANS {
        let level = astm_b602_sampling::LEVELS.iter().find(|level| level.name == name).unwrap();
        let plan = level.plan(lot).unwrap();
        agree!(ASTM_B602, (plan.articles, plan.allowed), (articles, allowed), "{name} {lot}");
    }
    assert!(astm_b602_sampling::LEVELS.iter().all(|level| level.plan(1).is_none()));
    assert!(astm_b602_sampling::LEVELS.iter().all(|level| level.plan(500_001).is_none()));
}

/// Articles, allowed; nonconforming share in per cent that passes once in ten, and 95 times in 100.
const RISKS: &[(u32, u32, f64, f64)] = &[
    (3, 0, 53.6, 1.70),
    (4, 0, 43.8, 1.27),
    (5, 0, 36.9, 1.02),
    (8, 0, 25.0, 0.64),
    (13, 0, 16.2, 0.39),
    (20, 0, 10.9, 0.26),
    (32, 0, 6.9, 0.16),
    (32, 1, 11.6, 1.12),
    (50, 1, 7.6, 0.72),
    (50, 2, 10.3, 1.66),
    (80, 1, 4.8, 0.45),
    (80, 3, 8.2, 1.73),
    (125, 2, 4.2, 0.66),
    (125, 5, 7.3, 2.11),
    (200, 3, 3.3, 0.69),
    (200, 7, 5.8, 2.01),
];

#[test]
fn what_a_plan_lets_through() {
    for &(articles, allowed, once_in_ten, nearly_always) in RISKS {
        let risk = risk(articles, allowed).unwrap();
        let (one, other) = (risk.passes_once_in_ten.percent(), risk.passes_nearly_always.percent());
        assert!((one - once_in_ten).abs() <= 0.05 + 1e-9, "{articles} {allowed}: {one}");
        assert!((other - nearly_always).abs() <= 0.005 + 1e-9, "{articles} {allowed}: {other}");
    }
    assert_eq!(risk(3, 3), None);
}

#[test]
fn iso_3269_is_known_from_memory_only() {
    assert_eq!(iso_3269_sampling::AQL_SOURCE.basis, Basis::Memory);
    agree!(ISO_3269, iso_3269_sampling::AQL.first().map(|(_, aql)| *aql), Some(1.0));
    agree!(ISO_3269, iso_3269_sampling::AQL.iter().map(|(_, aql)| aql).sum::<f64>(), 12.65);
}
