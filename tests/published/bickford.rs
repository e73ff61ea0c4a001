//! Bickford, Introduction to the Design and Behavior of Bolted Joints, 4th ed.: stress and shear areas
//! of metric threads 6g and 6H at one diameter of engagement, read.
//!
//! Two row labels are misprinted there (M8 with a pitch of 1.2 mm, M12 with 1 mm); the areas are
//! those of the coarse threads.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::thread::limits;
use kettle_barrel::thread::strength::{Sizes, shear_area};

use crate::limit::{class, same_digits, thread};
use crate::seen::near;
use kettle_barrel::source::document;

#[test]
fn stress_and_shear_areas_are_the_published_ones() {
    for &(designation, sizes, areas) in ROWS {
        let thread = thread(designation);
        let bolt = limits::bolt(thread, class("6g")).unwrap();
        let nut = limits::nut(thread, class("6H")).unwrap();
        let [d, d2, minor, pitch] = sizes;
        same_digits(&document::BICKFORD, bolt.major.min.mm(), d, designation);
        same_digits(&document::BICKFORD, bolt.pitch.min.mm(), d2, designation);
        same_digits(&document::BICKFORD, nut.minor.max.mm(), minor, designation);
        same_digits(&document::BICKFORD, nut.pitch.max.mm(), pitch, designation);
        let sizes = Sizes::least_material(thread.pitch(), &bolt, &nut);
        let ours = [
            thread.stress_area(),
            shear_area::bolt(sizes, thread.diameter()).unwrap(),
            shear_area::nut(sizes, thread.diameter()).unwrap(),
        ];
        for (ours, printed) in ours.into_iter().zip(areas) {
            let decimals = printed.split_once('.').map_or(0, |(_, behind)| behind.len() as i32);
            // The book rounds on the way: one unit of the last digit, and never less than 0.01 mm².
            let unit = 10f64.powi(-decimals).max(0.01);
            let printed: f64 = printed.parse().unwrap();
            near!(BICKFORD, ours.mm2(), printed, 1.01 * unit, "{designation}: {ours:?} for {printed}");
        }
    }
}

/// Thread; d least, d2 least, D1 greatest, D2 greatest in mm (computed); stress area, shear area of
/// the bolt's and of the nut's thread in mm² (read).
const ROWS: &[(&str, [&str; 4], [&str; 3])] = &[
    ("M5", ["4.826", "4.361", "4.334", "4.605"], ["14.183", "35.366", "49.994"]),
    ("M6", ["5.794", "5.212", "5.153", "5.500"], ["20.123", "51.875", "73.145"]),
    ("M8", ["7.760", "7.042", "6.912", "7.348"], ["36.609", "97.290", "134.63"]),
    ("M10", ["9.732", "8.862", "8.676", "9.206"], ["57.990", "155.80", "214.77"]),
    ("M12", ["11.701", "10.679", "10.441", "11.063"], ["84.267", "227.72", "313.41"]),
    ("M16", ["15.682", "14.503", "14.210", "14.913"], ["156.67", "417.55", "569.12"]),
    ("M22", ["21.623", "20.164", "19.744", "20.600"], ["303.40", "814.67", "1100.3"]),
    ("M24", ["23.577", "21.803", "21.252", "22.316"], ["352.50", "971.10", "1320.2"]),
    ("M30", ["29.522", "27.462", "26.771", "28.007"], ["560.59", "1549.2", "2086.5"]),
    ("M42", ["41.437", "38.778", "37.799", "39.392"], ["1120.9", "3120.2", "4168.3"]),
    ("M56", ["55.365", "52.088", "50.796", "52.783"], ["2030.0", "5680.3", "7510.2"]),
    ("M64", ["63.320", "59.743", "58.305", "60.478"], ["2676.0", "7483.6", "9847.3"]),
];
