//! ISO 14713-1, Table 2 (from memory): its printed years against thickness over rate.

use crate::seen::agree;
use kettle_barrel::site::Category;
use kettle_barrel::site::life::{Exponent, range};
use kettle_barrel::source::Basis;
use kettle_barrel::table::iso_14713_1::{COLUMNS, ROWS, TABLE};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

/// All 48 cells: whole years as printed, "more than 100" where the sum is above 100.
#[test]
fn printed_years_are_thickness_over_rate() {
    assert_eq!(TABLE.basis, Basis::Memory);
    let mut cells = 0;
    for row in ROWS {
        for (category, (min, most)) in COLUMNS.iter().zip(row.years) {
            let rates = Category::read(category).unwrap().rates();
            let years = range(row.thickness, rates, Exponent::Straight);
            let place = format!("{} {:?} {category}: {years:?}", row.coat, row.thickness);
            agree!(ISO_14713_1, years.min.year().round(), f64::from(min), "{place}");
            let longest = years.most.unwrap().year();
            match most {
                Some(most) => agree!(ISO_14713_1, longest.round(), f64::from(most), "{place}"),
                None => assert!(longest > 100.0, "{place}"),
            }
            cells += 1;
        }
    }
    assert_eq!(cells, 48);
}
