//! Surface and volume of our parts against solids built in a CAD kernel (OpenCascade, by build123d
//! 0.13.0), within 2 %.
//!
//! The rows are what `tests/published/cad_kernel.py` prints; the script says how each solid is
//! modelled. Its threads are stacks of rings; the true helicoid measures 0.1 % more.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use crate::seen::near;
use kettle_barrel::part::{Kind, Profile, Shape, standard};
use kettle_barrel::quantity::Length;

/// Surface in mm² and volume in mm³, computed by the kernel.
const ROWS: &[(&str, f64, f64)] = &[
    ("hex bolt M16x60", 5866.8, 15878.1),
    ("hex bolt M20x90", 10030.7, 35761.8),
    ("hex screw M12x40", 3234.7, 5903.5),
    ("hex bolt 3/4-10 x 3 in", 8504.5, 28043.7),
    ("hex nut M16", 2900.1, 4747.5),
    ("heavy hex nut 3/4-10", 4806.6, 11588.5),
    ("washer M16", 1402.7, 1439.6),
    ("washer 3/4 in", 2208.5, 2880.4),
    ("socket screw M10x60", 3461.8, 5997.5),
    ("socket screw M10x40", 2900.9, 4359.2),
    ("rod M12x100", 5988.3, 9346.8),
];

fn shape(name: &str) -> Shape {
    let metric = |d, p| Profile::metric(Length::from_mm(d), Length::from_mm(p));
    let three_quarters = Profile::unified(Length::from_inch(0.75), 10.0);
    let (kind, profile, length) = match name {
        "hex bolt M16x60" => (Kind::HexBolt, metric(16.0, 2.0), Some(60.0)),
        "hex bolt M20x90" => (Kind::HexBolt, metric(20.0, 2.5), Some(90.0)),
        "hex screw M12x40" => (Kind::HexScrew, metric(12.0, 1.75), Some(40.0)),
        "hex bolt 3/4-10 x 3 in" => (Kind::HexBolt, three_quarters, Some(76.2)),
        "hex nut M16" => (Kind::HexNut, metric(16.0, 2.0), None),
        "heavy hex nut 3/4-10" => (Kind::HeavyHexNut, three_quarters, None),
        "washer M16" => (Kind::Washer, metric(16.0, 2.0), None),
        "washer 3/4 in" => (Kind::Washer, three_quarters, None),
        "socket screw M10x60" => (Kind::SocketScrew, metric(10.0, 1.5), Some(60.0)),
        "socket screw M10x40" => (Kind::SocketScrew, metric(10.0, 1.5), Some(40.0)),
        "rod M12x100" => (Kind::Rod, metric(12.0, 1.75), Some(100.0)),
        other => panic!("no shape for {other}"),
    };
    standard(kind, profile, length.map(Length::from_mm)).unwrap()
}

#[test]
fn surface_and_volume_agree_with_a_cad_kernel() {
    for (name, area, volume) in ROWS {
        let shape = shape(name);
        let (ours_area, ours_volume) = (shape.surface().mm2(), shape.volume().mm3());
        near!(ARITHMETIC, ours_area, *area, 0.02 * area, "{name}: surface {ours_area} mm², kernel {area}");
        near!(
            ARITHMETIC,
            ours_volume,
            *volume,
            0.02 * volume,
            "{name}: volume {ours_volume} mm³, kernel {volume}"
        );
    }
}
