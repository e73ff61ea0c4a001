//! What must hold for every charge of a barrel.

use kettle_barrel::coat::barrel::{charge, coat_after_each, usual_additions};
use kettle_barrel::quantity::{Area, Density, Length};
use proptest::prelude::*;

proptest! {
    /// Twice the area takes twice the powder, and twice the coat too.
    #[test]
    fn powder_is_proportional_to_area_and_to_coat(
        area in 0.01..10_000.0f64,
        um in 5.0..110.0f64,
        density in 4.0..7.14f64,
        yielded in 0.5..1.0f64,
        times in 0.1..10.0f64,
    ) {
        let at = |area: f64, um: f64| {
            charge(Area::from_m2(area), Length::from_um(um), Density::from_g_cm3(density), yielded, Length::from_um(0.5))
        };
        let one = at(area, um);
        for (more, copper) in [(at(area * times, um), times), (at(area, um * times), 1.0)] {
            prop_assert!((more.powder.g() / one.powder.g() / times - 1.0).abs() < 1e-9);
            prop_assert!((more.copper.g() / one.copper.g() / copper - 1.0).abs() < 1e-9);
        }
        prop_assert!(one.powder >= one.deposit);
    }

    /// The additions grow the coat by equal steps, and together are the coat wanted.
    #[test]
    fn the_additions_make_the_coat(um in 5.0..110.0f64) {
        let count = usual_additions(Length::from_um(um)).unwrap().value;
        let coats: Vec<f64> = coat_after_each(Length::from_um(um), count).map(Length::um).collect();
        prop_assert_eq!(coats.len(), count as usize);
        prop_assert!((coats.last().unwrap() - um).abs() < 1e-9);
        for (at, coat) in coats.iter().enumerate() {
            prop_assert!((coat - um * (at + 1) as f64 / f64::from(count)).abs() < 1e-9);
        }
    }

    /// A thicker coat never takes fewer additions.
    #[test]
    fn a_thicker_coat_takes_no_fewer_additions(thin in 5.0..110.0f64, more in 0.0..50.0f64) {
        let thick = (thin + more).min(110.0);
        let number = |um| usual_additions(Length::from_um(um)).unwrap().value;
        prop_assert!(number(thick) >= number(thin));
    }
}
