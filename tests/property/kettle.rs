//! What must hold for the zinc of every load.

use kettle_barrel::calculator::evaluate;
use kettle_barrel::coat::kettle::{baskets, pick_up};
use kettle_barrel::quantity::{Area, Density, Length, Mass};
use proptest::prelude::*;

proptest! {
    /// The zinc fed is the sum of what goes on and what is lost; it grows with area, coat and losses.
    #[test]
    fn the_zinc_adds_up(
        area in 0.01..10_000.0f64,
        um in 1.0..500.0f64,
        dross in 0.0..1.0f64,
        ash in 0.0..1.0f64,
        more in 1.001..3.0f64,
    ) {
        let at = |area, um, dross| {
            pick_up(Area::from_m2(area), Length::from_um(um), Density::from_g_m2_um(7.2), dross, ash)
        };
        let one = at(area, um, dross);
        let sum = one.on_parts.g() + one.dross.g() + one.ash.g();
        prop_assert!((one.fed.g() / sum - 1.0).abs() < 1e-9);
        prop_assert!(at(area * more, um, dross).fed > one.fed);
        prop_assert!(at(area, um * more, dross).fed > one.fed);
        prop_assert!(at(area, um, dross + 0.01).fed > one.fed);
        prop_assert_eq!(at(area, um, dross * more).on_parts, one.on_parts);
    }

    /// No basket is overfilled, and none is left out.
    #[test]
    fn baskets_hold_the_load(load in 0.1..100_000.0f64, capacity in 1.0..5000.0f64) {
        let number = baskets(Mass::from_kg(load), Mass::from_kg(capacity));
        prop_assert!(number.fract() == 0.0 && number >= 1.0);
        prop_assert!(load / number <= capacity * 1.000_001);
        prop_assert!(number == 1.0 || load / (number - 1.0) > capacity);
    }
}

/// What no bath may take is told first, by the rules of the order.
#[test]
fn banned_steels_stay_out_of_the_kettle() {
    for (grade, thread, part, barred) in [
        ("A490", "1-8 UNC", "hex-bolt", true),
        ("A574", "M16", "socket-screw", true),
        ("12.9", "M16", "hex-bolt", true),
        ("10.9", "M20", "hex-bolt", false),
        ("A325", "3/4-10 UNC", "hex-bolt", false),
    ] {
        let pairs = [("grade", grade), ("thread", thread), ("part", part), ("length", "80 mm")];
        let report = evaluate("kettle", pairs).unwrap();
        assert_eq!(
            report.headline.starts_with("Not into the kettle"),
            barred,
            "{grade}: {}",
            report.headline
        );
    }
}
