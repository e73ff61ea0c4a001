//! ISO/TR 16224:2012 (Alexander 1977): shear areas with bell-mouthing, and the three factors.
//!
//! The numbers were computed by a general-purpose thread library, screw_thread_lib 0.0.6 (PyPI), at
//! least material; metric threads were given to it by their limits:
//!
//! ```text
//! a = Assembly.from_database('ASME_UN_2A2B', '1/2-13', 120, 100, dims_ISO='min')
//! a = Assembly({'n': 1/2, 'dbsc': 16, 'dmin': 15.682, 'd2min': 14.503, 'D1max': 14.550,
//!               'D2max': 15.253}, 800, 640, dims_ISO='min')
//! a.ASb_ISO(LE), a.ASn_ISO(LE), C1_ISO(s/d), a.C2_ISO(), a.C3_ISO()
//! ```

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::quantity::{Area, Length, Stress};
use kettle_barrel::thread::strength::{Failure, Joint, Sizes, strength};
use kettle_barrel::thread::{Thread, limits};

use crate::limit::{class, thread};
use crate::seen::{agree, near};

fn joint(thread: Thread, engagement: Length, flats: Length, [bolt, nut]: [f64; 2]) -> Joint {
    Joint {
        is_bell: true,
        diameter: thread.diameter(),
        stress_area: thread.stress_area(),
        engagement,
        across_flats: flats,
        bolt_tensile: Stress::from_mpa(bolt),
        nut_tensile: Stress::from_mpa(nut),
    }
}

#[test]
fn areas_and_factors_agree_with_a_general_library() {
    for &(designation, [bolt_class, nut_class], strengths, flats, areas, factors) in ROWS {
        let thread = thread(designation);
        let (length, in_unit): (fn(f64) -> Length, fn(Area) -> f64) =
            if thread.is_metric() { (Length::from_mm, Area::mm2) } else { (Length::from_inch, Area::in2) };
        let bolt = limits::bolt(thread, class(bolt_class)).unwrap();
        let nut = limits::nut(thread, class(nut_class)).unwrap();
        let sizes = Sizes::least_material(thread.pitch(), &bolt, &nut);
        let engagement = length(if thread.is_metric() { 10.0 } else { 1.0 });
        let ours = strength(&joint(thread, engagement, length(flats), strengths), sizes).unwrap();
        for (ours, theirs) in [ours.bolt_area, ours.nut_area].into_iter().zip(areas) {
            let ours = in_unit(ours);
            near!(ISO_16224, ours, theirs, 5e-6 * theirs, "{designation} {nut_class}: {ours} for {theirs}");
        }
        for (ours, theirs) in [ours.c1, ours.c2, ours.c3].into_iter().zip(factors) {
            near!(ISO_16224, ours, theirs, 2e-6, "{designation} {nut_class}: {ours} for {theirs}");
        }
    }
}

/// The same library at basic sizes, 1/2-13, 120 and 100 ksi, s = 0.75 in, for an inch of engagement:
/// ASb 0.948411 and ASn 1.374447 in², Rs 1.2077, C1 0.8500, C2 0.96628, C3 0.897, and an engagement
/// of 0.307586 in at which the weaker thread holds what a bolt of 0.143759 in² holds.
#[test]
fn basic_sizes_agree_as_well() {
    let thread = thread("1/2-13 UNC");
    let inch = Length::from_inch;
    let height = thread.pitch().mm() * 3f64.sqrt() / 2.0;
    let (d, d2, d1) = (
        thread.diameter(),
        Length::from_mm(thread.diameter().mm() - 0.75 * height),
        Length::from_mm(thread.diameter().mm() - 1.25 * height),
    );
    let sizes = Sizes { pitch: thread.pitch(), bolt_major: d, bolt_pitch: d2, nut_minor: d1, nut_pitch: d2 };
    let mut joint = joint(thread, inch(1.0), inch(0.75), [120.0, 100.0]);
    joint.stress_area = Area::from_in2(0.143759);
    let ours = strength(&joint, sizes).unwrap();
    for (ours, theirs) in [
        (ours.bolt_area.in2(), 0.948411),
        (ours.nut_area.in2(), 1.374447),
        (ours.ratio, 1.2077),
        (ours.c1, 0.85),
        (ours.c2, 0.96628),
        (ours.c3, 0.897),
        (ours.bolt_breaks.newton() / ours.strips().1.newton(), 0.307586),
    ] {
        near!(ISO_16224, ours, theirs, 1e-4, "{ours} for {theirs}");
    }
}

/// The loads are the areas times the strengths, 0.6 of them in shear, and the factors.
#[test]
fn the_loads_follow_from_areas_and_factors() {
    let thread = thread("M16");
    let bolt = limits::bolt(thread, class("6g")).unwrap();
    let nut = limits::nut(thread, class("6AZ")).unwrap();
    let sizes = Sizes::least_material(thread.pitch(), &bolt, &nut);
    let ours = strength(&joint(thread, Length::from_mm(12.0), Length::from_mm(24.0), [800.0, 640.0]), sizes)
        .unwrap();
    let kn = |newton: f64| format!("{:.1}", newton / 1000.0);
    // 800 · 156.67; 0.6 · 800 · 245.01 · 0.85 · 0.96464; 0.6 · 640 · 368.81 · 0.85 · 0.897.
    agree!(ISO_16224, kn(ours.bolt_breaks.newton()), "125.3");
    agree!(ISO_16224, kn(ours.bolt_strips.newton()), "96.4");
    agree!(ISO_16224, kn(ours.nut_strips.newton()), "108.0");
    assert_eq!(ours.first().0, Failure::BoltStrips);
}

/// Thread, classes of bolt and nut, strengths, width across flats; areas of bolt and nut for an inch
/// or for 10 mm of engagement; C1, C2, C3.
type Row = (&'static str, [&'static str; 2], [f64; 2], f64, [f64; 2], [f64; 3]);
const ROWS: &[Row] = &[
    ("1/2-13 UNC", ["2A", "2B"], [120.0, 100.0], 0.75, [0.739654, 1.123487], [0.850000, 0.994987, 0.897]),
    ("1/4-20 UNC", ["2A", "2B"], [120.0, 105.0], 0.4375, [0.355198, 0.538976], [0.987500, 1.026308, 0.897]),
    ("3/4-10 UNC", ["2A", "2B"], [120.0, 150.0], 1.125, [1.140948, 1.723157], [0.850000, 1.168548, 0.897]),
    ("1-8 UNC", ["2A", "2B"], [150.0, 150.0], 1.5, [1.552182, 2.334303], [0.850000, 1.105803, 0.897]),
    ("1-12 UNF", ["2A", "2B"], [120.0, 90.0], 1.625, [1.481018, 2.265289], [0.934375, 0.938918, 0.897]),
    ("M16", ["6g", "6H"], [800.0, 640.0], 24.0, [244.143, 355.699], [0.85, 0.946832, 0.897]),
    ("M16", ["6g", "6AZ"], [800.0, 640.0], 24.0, [204.175, 307.345], [0.85, 0.964636, 0.897]),
    ("M16", ["6g", "6AX"], [800.0, 640.0], 24.0, [194.460, 295.967], [0.85, 0.971062, 0.897]),
    ("M16", ["6az", "6H"], [800.0, 640.0], 24.0, [204.819, 306.726], [0.85, 0.961694, 0.897]),
    ("M30", ["6g", "6AZ"], [1040.0, 865.0], 46.0, [435.649, 638.906], [0.875556, 0.972125, 0.897]),
];
