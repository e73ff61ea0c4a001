//! ASME B1.1: limits of size of classes 2A and 2B, tolerances, stress areas.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use kettle_barrel::quantity::Length;
use kettle_barrel::source::Basis;
use kettle_barrel::thread::limits;

use crate::limit::{Row, check_differs, check_inch, check_mm, class, same_digits, thread};
use kettle_barrel::source::document;

#[test]
fn limits_are_the_published_ones() {
    check_inch(&document::ASME_B1_1, ROWS);
}

#[test]
fn limits_in_mm_are_the_published_ones() {
    check_mm(&document::ASME_B1_1, ROWS_MM);
}

#[test]
fn allowances_and_tolerances_are_the_published_ones() {
    for &(name, designation, printed, _) in TOLERANCES {
        let thread = thread(designation);
        let bolt = limits::bolt(thread, class("2A")).unwrap();
        let nut = limits::nut(thread, class("2B")).unwrap();
        let ours = match name {
            "es" => bolt.allowance(),
            "Td2" => bolt.pitch_tolerance.value,
            "Td" => bolt.major_tolerance.value,
            _ => nut.pitch_tolerance.value,
        };
        same_digits(&document::ASME_B1_1, ours.inch(), printed, &format!("{name} {designation}"));
    }
}

#[test]
fn stress_areas_are_the_published_ones() {
    for &(designation, printed, _) in AREAS {
        same_digits(
            &document::ASME_B1_1,
            thread(designation).stress_area().in2(),
            printed,
            &format!("As {designation}"),
        );
    }
}

/// One table prints .1599 in² for 1/2-20 UNF (read); .7854 (D − .9743/n)² is .15995, which rounds up.
#[test]
fn a_stress_area_cut_short_in_print_is_rounded_here() {
    same_digits(&document::ASME_B1_1, thread("1/2-20 UNF").stress_area().in2(), "0.15995", "As 1/2-20 UNF");
}

/// Printed 1.534 and 1.568 in; by rounding once the formula gives .001 less.
#[test]
fn a_printed_minor_diameter_counts_before_the_formula() {
    let nut = limits::nut(thread("1-3/4-5 UNC"), class("2B")).unwrap();
    same_digits(&document::ASME_B1_1, nut.minor.min.inch(), "1.534", "D1 min");
    same_digits(&document::ASME_B1_1, nut.minor.max.inch(), "1.568", "D1 max");
}

#[test]
fn deliberate_differences_are_still_differences() {
    check_differs(DIFFERENT, Length::inch);
}

/// Limit, thread, class, value in inches.
const ROWS: &[Row] = &[
    // Read in public copies of the tables; 1/2-28 UNEF is the worked example of Machinery's Handbook, 31st ed.
    ("d max", "1/2-28 UNEF", "2A", "0.4989"),
    ("d min", "1/2-28 UNEF", "2A", "0.4924"),
    ("d2 max", "1/2-28 UNEF", "2A", "0.4757"),
    ("d2 min", "1/2-28 UNEF", "2A", "0.472"),
    ("d3 max", "1/2-28 UNEF", "2A", "0.4564"),
    ("d1 max", "1/2-28 UNEF", "2A", "0.4602"),
    ("d max", "1/4-20 UNC", "2A", "0.2489"),
    ("d min", "1/4-20 UNC", "2A", "0.2408"),
    ("d2 max", "1/4-20 UNC", "2A", "0.2164"),
    ("d2 min", "1/4-20 UNC", "2A", "0.2127"),
    ("d1 max", "1/4-20 UNC", "2A", "0.1948"),
    ("D1 min", "1/4-20 UNC", "2B", "0.196"),
    ("D1 min", "1/4-20 UNC", "2B", "0.196"),
    ("D1 max", "1/4-20 UNC", "2B", "0.207"),
    ("D1 max", "1/4-20 UNC", "2B", "0.207"),
    ("D2 min", "1/4-20 UNC", "2B", "0.2175"),
    ("D2 min", "1/4-20 UNC", "2B", "0.2175"),
    ("D2 max", "1/4-20 UNC", "2B", "0.2224"),
    ("D2 max", "1/4-20 UNC", "2B", "0.2224"),
    ("D1 min", "3/8-16 UNC", "2B", "0.307"),
    ("D1 max", "3/8-16 UNC", "2B", "0.321"),
    ("D2 min", "3/8-16 UNC", "2B", "0.3344"),
    ("D2 max", "3/8-16 UNC", "2B", "0.3401"),
    ("d max", "1/2-13 UNC", "2A", "0.4985"),
    ("d min", "1/2-13 UNC", "2A", "0.4876"),
    ("d2 max", "1/2-13 UNC", "2A", "0.4485"),
    ("d2 min", "1/2-13 UNC", "2A", "0.4435"),
    ("d1 max", "1/2-13 UNC", "2A", "0.4152"),
    ("D1 min", "1/2-13 UNC", "2B", "0.417"),
    ("D1 max", "1/2-13 UNC", "2B", "0.434"),
    ("D1 max", "1/2-13 UNC", "2B", "0.434"),
    ("D2 min", "1/2-13 UNC", "2B", "0.4500"),
    ("D2 min", "1/2-13 UNC", "2B", "0.4500"),
    ("D2 max", "1/2-13 UNC", "2B", "0.4565"),
    ("D2 max", "1/2-13 UNC", "2B", "0.4565"),
    ("d max", "5/8-11 UNC", "2A", "0.6234"),
    ("d min", "5/8-11 UNC", "2A", "0.6113"),
    ("D1 min", "5/8-11 UNC", "2B", "0.527"),
    ("D1 max", "5/8-11 UNC", "2B", "0.546"),
    ("D2 min", "5/8-11 UNC", "2B", "0.5660"),
    ("D2 max", "5/8-11 UNC", "2B", "0.5732"),
    ("d max", "3/4-10 UNC", "2A", "0.7482"),
    ("d min", "3/4-10 UNC", "2A", "0.7353"),
    ("d2 max", "3/4-10 UNC", "2A", "0.6832"),
    ("d2 min", "3/4-10 UNC", "2A", "0.6773"),
    ("d1 max", "3/4-10 UNC", "2A", "0.6399"),
    ("D1 min", "3/4-10 UNC", "2B", "0.642"),
    ("D1 min", "3/4-10 UNC", "2B", "0.642"),
    ("D1 max", "3/4-10 UNC", "2B", "0.663"),
    ("D1 max", "3/4-10 UNC", "2B", "0.663"),
    ("D2 min", "3/4-10 UNC", "2B", "0.6850"),
    ("D2 min", "3/4-10 UNC", "2B", "0.6850"),
    ("D2 max", "3/4-10 UNC", "2B", "0.6927"),
    ("D2 max", "3/4-10 UNC", "2B", "0.6927"),
    ("d max", "1-8 UNC", "2A", "0.9980"),
    ("d min", "1-8 UNC", "2A", "0.9830"),
    ("d2 max", "1-8 UNC", "2A", "0.9168"),
    ("d2 min", "1-8 UNC", "2A", "0.9101"),
    ("d1 max", "1-8 UNC", "2A", "0.8627"),
    ("D1 min", "1-8 UNC", "2B", "0.865"),
    ("D1 min", "1-8 UNC", "2B", "0.865"),
    ("D1 max", "1-8 UNC", "2B", "0.890"),
    ("D1 max", "1-8 UNC", "2B", "0.890"),
    ("D2 min", "1-8 UNC", "2B", "0.9188"),
    ("D2 min", "1-8 UNC", "2B", "0.9188"),
    ("D2 max", "1-8 UNC", "2B", "0.9276"),
    ("D2 max", "1-8 UNC", "2B", "0.9276"),
    ("D1 min", "1-1/4-7 UNC", "2B", "1.095"),
    ("D1 max", "1-1/4-7 UNC", "2B", "1.123"),
    ("D2 min", "1-1/4-7 UNC", "2B", "1.1572"),
    ("D2 max", "1-1/4-7 UNC", "2B", "1.1668"),
    ("D1 min", "1-1/2-6 UNC", "2B", "1.320"),
    ("D1 max", "1-1/2-6 UNC", "2B", "1.350"),
    ("D2 min", "1-1/2-6 UNC", "2B", "1.3917"),
    ("D1 min", "2-4.5 UNC", "2B", "1.759"),
    ("D1 max", "2-4.5 UNC", "2B", "1.795"),
    ("D2 min", "2-4.5 UNC", "2B", "1.8557"),
    ("D2 max", "2-4.5 UNC", "2B", "1.8681"),
    ("d max", "1/4-28 UNF", "2A", "0.2490"),
    ("d min", "1/4-28 UNF", "2A", "0.2425"),
    ("d2 max", "1/4-28 UNF", "2A", "0.2258"),
    ("d2 min", "1/4-28 UNF", "2A", "0.2225"),
    ("d1 max", "1/4-28 UNF", "2A", "0.2103"),
    ("D1 min", "1/4-28 UNF", "2B", "0.211"),
    ("D1 max", "1/4-28 UNF", "2B", "0.220"),
    ("D2 min", "1/4-28 UNF", "2B", "0.2268"),
    ("D2 max", "1/4-28 UNF", "2B", "0.2311"),
    ("d max", "1/2-20 UNF", "2A", "0.4987"),
    ("d min", "1/2-20 UNF", "2A", "0.4906"),
    ("d2 max", "1/2-20 UNF", "2A", "0.4662"),
    ("d2 min", "1/2-20 UNF", "2A", "0.4619"),
    ("d1 max", "1/2-20 UNF", "2A", "0.4446"),
    ("D1 min", "1/2-20 UNF", "2B", "0.446"),
    ("D1 max", "1/2-20 UNF", "2B", "0.457"),
    ("D2 min", "1/2-20 UNF", "2B", "0.4675"),
    ("D2 max", "1/2-20 UNF", "2B", "0.4731"),
    ("d max", "5/8-18 UNF", "2A", "0.6236"),
    ("d min", "5/8-18 UNF", "2A", "0.6149"),
    ("d max", "3/4-16 UNF", "2A", "0.7485"),
    ("d min", "3/4-16 UNF", "2A", "0.7391"),
    ("d2 max", "3/4-16 UNF", "2A", "0.7079"),
    ("d2 min", "3/4-16 UNF", "2A", "0.7029"),
    ("d1 max", "3/4-16 UNF", "2A", "0.6808"),
    ("D1 min", "3/4-16 UNF", "2B", "0.682"),
    ("D1 max", "3/4-16 UNF", "2B", "0.696"),
    ("D2 min", "3/4-16 UNF", "2B", "0.7094"),
    ("D2 max", "3/4-16 UNF", "2B", "0.7159"),
    ("d max", "1-12 UNF", "2A", "0.9982"),
    ("d min", "1-12 UNF", "2A", "0.9868"),
    ("d2 max", "1-12 UNF", "2A", "0.9441"),
    ("d2 min", "1-12 UNF", "2A", "0.9382"),
    ("d1 max", "1-12 UNF", "2A", "0.9080"),
    ("D1 min", "1-12 UNF", "2B", "0.910"),
    ("D1 max", "1-12 UNF", "2B", "0.928"),
    ("D2 min", "1-12 UNF", "2B", "0.9459"),
    ("D2 max", "1-12 UNF", "2B", "0.9535"),
    // Computed by the document's formulas.
    ("d3 max", "1/4-20 UNC", "2A", "0.1894"),
    ("d max", "3/8-16 UNC", "2A", "0.3737"),
    ("d min", "3/8-16 UNC", "2A", "0.3643"),
    ("d2 max", "3/8-16 UNC", "2A", "0.3331"),
    ("d2 min", "3/8-16 UNC", "2A", "0.3287"),
    ("d1 max", "3/8-16 UNC", "2A", "0.3060"),
    ("d3 max", "3/8-16 UNC", "2A", "0.2993"),
    ("d3 max", "1/2-13 UNC", "2A", "0.4069"),
    ("d3 max", "3/4-10 UNC", "2A", "0.6291"),
    ("d3 max", "1-8 UNC", "2A", "0.8492"),
    ("d max", "1-1/4-7 UNC", "2A", "1.2478"),
    ("d min", "1-1/4-7 UNC", "2A", "1.2314"),
    ("d2 max", "1-1/4-7 UNC", "2A", "1.1550"),
    ("d2 min", "1-1/4-7 UNC", "2A", "1.1476"),
    ("d1 max", "1-1/4-7 UNC", "2A", "1.0932"),
    ("d3 max", "1-1/4-7 UNC", "2A", "1.0777"),
    ("d max", "1-1/2-6 UNC", "2A", "1.4976"),
    ("d min", "1-1/2-6 UNC", "2A", "1.4794"),
    ("d2 max", "1-1/2-6 UNC", "2A", "1.3893"),
    ("d2 min", "1-1/2-6 UNC", "2A", "1.3812"),
    ("d1 max", "1-1/2-6 UNC", "2A", "1.3172"),
    ("d3 max", "1-1/2-6 UNC", "2A", "1.2991"),
    ("D2 max", "1-1/2-6 UNC", "2B", "1.4022"),
    ("d max", "2-4.5 UNC", "2A", "1.9971"),
    ("d min", "2-4.5 UNC", "2A", "1.9751"),
    ("d2 max", "2-4.5 UNC", "2A", "1.8528"),
    ("d2 min", "2-4.5 UNC", "2A", "1.8433"),
    ("d1 max", "2-4.5 UNC", "2A", "1.7565"),
    ("d3 max", "2-4.5 UNC", "2A", "1.7325"),
    ("d3 max", "1/4-28 UNF", "2A", "0.2065"),
    ("d max", "3/8-24 UNF", "2A", "0.3739"),
    ("d min", "3/8-24 UNF", "2A", "0.3667"),
    ("d2 max", "3/8-24 UNF", "2A", "0.3468"),
    ("d2 min", "3/8-24 UNF", "2A", "0.3430"),
    ("d1 max", "3/8-24 UNF", "2A", "0.3288"),
    ("d3 max", "3/8-24 UNF", "2A", "0.3243"),
    ("D1 min", "3/8-24 UNF", "2B", "0.330"),
    ("D1 max", "3/8-24 UNF", "2B", "0.340"),
    ("D2 min", "3/8-24 UNF", "2B", "0.3479"),
    ("D2 max", "3/8-24 UNF", "2B", "0.3528"),
    ("d3 max", "1/2-20 UNF", "2A", "0.4392"),
    ("d2 max", "5/8-18 UNF", "2A", "0.5875"),
    ("d2 min", "5/8-18 UNF", "2A", "0.5828"),
    ("d1 max", "5/8-18 UNF", "2A", "0.5635"),
    ("d3 max", "5/8-18 UNF", "2A", "0.5574"),
    ("D1 min", "5/8-18 UNF", "2B", "0.565"),
    ("D1 max", "5/8-18 UNF", "2B", "0.578"),
    ("D2 min", "5/8-18 UNF", "2B", "0.5889"),
    ("D2 max", "5/8-18 UNF", "2B", "0.5949"),
    ("d3 max", "3/4-16 UNF", "2A", "0.6741"),
    ("d3 max", "1-12 UNF", "2A", "0.8990"),
    ("d max", "1-1/4-12 UNF", "2A", "1.2482"),
    ("d min", "1-1/4-12 UNF", "2A", "1.2368"),
    ("d2 max", "1-1/4-12 UNF", "2A", "1.1941"),
    ("d2 min", "1-1/4-12 UNF", "2A", "1.1879"),
    ("d1 max", "1-1/4-12 UNF", "2A", "1.1580"),
    ("d3 max", "1-1/4-12 UNF", "2A", "1.1490"),
    ("D1 min", "1-1/4-12 UNF", "2B", "1.160"),
    ("D1 max", "1-1/4-12 UNF", "2B", "1.178"),
    ("D2 min", "1-1/4-12 UNF", "2B", "1.1959"),
    ("D2 max", "1-1/4-12 UNF", "2B", "1.2039"),
    ("d max", "1-1/2-12 UNF", "2A", "1.4981"),
    ("d min", "1-1/2-12 UNF", "2A", "1.4867"),
    ("d2 max", "1-1/2-12 UNF", "2A", "1.4440"),
    ("d2 min", "1-1/2-12 UNF", "2A", "1.4376"),
    ("d1 max", "1-1/2-12 UNF", "2A", "1.4079"),
    ("d3 max", "1-1/2-12 UNF", "2A", "1.3989"),
    ("D1 min", "1-1/2-12 UNF", "2B", "1.410"),
    ("D1 max", "1-1/2-12 UNF", "2B", "1.428"),
    ("D2 min", "1-1/2-12 UNF", "2B", "1.4459"),
    ("D2 max", "1-1/2-12 UNF", "2B", "1.4542"),
    // Recalled.
    ("d2 max", "5/8-11 UNC", "2A", "0.5644"),
    ("d2 min", "5/8-11 UNC", "2A", "0.5589"),
];

/// Limit, thread, class, value in mm, read in tables of taps.
const ROWS_MM: &[Row] = &[
    ("D2 min", "1/4-28 UNF", "2B", "5.761"),
    ("D2 max", "1/4-28 UNF", "2B", "5.870"),
    ("D2 min", "3/8-24 UNF", "2B", "8.837"),
    ("D2 max", "3/8-24 UNF", "2B", "8.961"),
    ("D2 min", "1/2-20 UNF", "2B", "11.874"),
    ("D2 max", "1/2-20 UNF", "2B", "12.017"),
    ("D2 min", "5/8-18 UNF", "2B", "14.958"),
    ("D2 max", "5/8-18 UNF", "2B", "15.110"),
    ("D2 min", "3/4-16 UNF", "2B", "18.019"),
    ("D2 max", "3/4-16 UNF", "2B", "18.184"),
];

/// Allowance or tolerance, thread, value in inches, basis.
const TOLERANCES: &[(&str, &str, &str, Basis)] = &[
    ("Td2", "1/2-28 UNEF", "0.003668", Basis::Read),
    ("es", "1/4-20 UNC", "0.0011", Basis::Read),
    ("Td2", "1/4-20 UNC", "0.003731", Basis::Computed),
    ("Td", "1/4-20 UNC", "0.008143", Basis::Computed),
    ("TD2", "1/4-20 UNC", "0.004900", Basis::Computed),
    ("es", "3/8-16 UNC", "0.0013", Basis::Read),
    ("Td2", "3/8-16 UNC", "0.004363", Basis::Computed),
    ("Td", "3/8-16 UNC", "0.009449", Basis::Computed),
    ("TD2", "3/8-16 UNC", "0.005700", Basis::Computed),
    ("es", "1/2-13 UNC", "0.0015", Basis::Read),
    ("Td2", "1/2-13 UNC", "0.004964", Basis::Computed),
    ("Td", "1/2-13 UNC", "0.010852", Basis::Computed),
    ("TD2", "1/2-13 UNC", "0.006500", Basis::Computed),
    ("es", "5/8-11 UNC", "0.0016", Basis::Read),
    ("Td2", "5/8-11 UNC", "0.005501", Basis::Computed),
    ("Td", "5/8-11 UNC", "0.012131", Basis::Computed),
    ("TD2", "5/8-11 UNC", "0.007200", Basis::Computed),
    ("es", "3/4-10 UNC", "0.0018", Basis::Read),
    ("Td2", "3/4-10 UNC", "0.005894", Basis::Computed),
    ("Td", "3/4-10 UNC", "0.012927", Basis::Computed),
    ("TD2", "3/4-10 UNC", "0.007700", Basis::Computed),
    ("es", "1-8 UNC", "0.0020", Basis::Read),
    ("Td2", "1-8 UNC", "0.006750", Basis::Computed),
    ("Td", "1-8 UNC", "0.015000", Basis::Computed),
    ("TD2", "1-8 UNC", "0.008800", Basis::Computed),
    ("es", "1-1/4-7 UNC", "0.0022", Basis::Read),
    ("Td2", "1-1/4-7 UNC", "0.007392", Basis::Computed),
    ("Td", "1-1/4-7 UNC", "0.016397", Basis::Computed),
    ("TD2", "1-1/4-7 UNC", "0.009600", Basis::Computed),
    ("es", "1-1/2-6 UNC", "0.0024", Basis::Read),
    ("Td2", "1-1/2-6 UNC", "0.008097", Basis::Computed),
    ("Td", "1-1/2-6 UNC", "0.018171", Basis::Computed),
    ("TD2", "1-1/2-6 UNC", "0.010500", Basis::Computed),
    ("es", "2-4.5 UNC", "0.0029", Basis::Computed),
    ("Td2", "2-4.5 UNC", "0.009514", Basis::Computed),
    ("Td", "2-4.5 UNC", "0.022013", Basis::Computed),
    ("TD2", "2-4.5 UNC", "0.012400", Basis::Computed),
    ("es", "1/4-28 UNF", "0.0010", Basis::Computed),
    ("Td2", "1/4-28 UNF", "0.003322", Basis::Computed),
    ("Td", "1/4-28 UNF", "0.006507", Basis::Computed),
    ("TD2", "1/4-28 UNF", "0.004300", Basis::Computed),
    ("es", "3/8-24 UNF", "0.0011", Basis::Computed),
    ("Td2", "3/8-24 UNF", "0.003803", Basis::Computed),
    ("Td", "3/8-24 UNF", "0.007211", Basis::Computed),
    ("TD2", "3/8-24 UNF", "0.004900", Basis::Computed),
    ("es", "1/2-20 UNF", "0.0013", Basis::Computed),
    ("Td2", "1/2-20 UNF", "0.004287", Basis::Computed),
    ("Td", "1/2-20 UNF", "0.008143", Basis::Computed),
    ("TD2", "1/2-20 UNF", "0.005600", Basis::Computed),
    ("es", "5/8-18 UNF", "0.0014", Basis::Computed),
    ("Td2", "5/8-18 UNF", "0.004652", Basis::Computed),
    ("Td", "5/8-18 UNF", "0.008736", Basis::Computed),
    ("TD2", "5/8-18 UNF", "0.006000", Basis::Computed),
    ("es", "3/4-16 UNF", "0.0015", Basis::Computed),
    ("Td2", "3/4-16 UNF", "0.005024", Basis::Computed),
    ("Td", "3/4-16 UNF", "0.009449", Basis::Computed),
    ("TD2", "3/4-16 UNF", "0.006500", Basis::Computed),
    ("es", "1-12 UNF", "0.0018", Basis::Computed),
    ("Td2", "1-12 UNF", "0.005862", Basis::Computed),
    ("Td", "1-12 UNF", "0.011447", Basis::Computed),
    ("TD2", "1-12 UNF", "0.007600", Basis::Computed),
    ("es", "1-1/4-12 UNF", "0.0018", Basis::Computed),
    ("Td2", "1-1/4-12 UNF", "0.006155", Basis::Computed),
    ("Td", "1-1/4-12 UNF", "0.011447", Basis::Computed),
    ("TD2", "1-1/4-12 UNF", "0.008000", Basis::Computed),
    ("es", "1-1/2-12 UNF", "0.0019", Basis::Computed),
    ("Td2", "1-1/2-12 UNF", "0.006416", Basis::Computed),
    ("Td", "1-1/2-12 UNF", "0.011447", Basis::Computed),
    ("TD2", "1-1/2-12 UNF", "0.008300", Basis::Computed),
];

/// Thread, tensile stress area in in², basis.
const AREAS: &[(&str, &str, Basis)] = &[
    ("1/4-20 UNC", "0.0318", Basis::Read),
    ("3/8-16 UNC", "0.0775", Basis::Read),
    ("1/2-13 UNC", "0.142", Basis::Read),
    ("5/8-11 UNC", "0.226", Basis::Read),
    ("3/4-10 UNC", "0.334", Basis::Read),
    ("1-8 UNC", "0.606", Basis::Read),
    ("1-1/4-7 UNC", "0.969", Basis::Read),
    ("1-1/2-6 UNC", "1.41", Basis::Read),
    ("2-4.5 UNC", "2.5", Basis::Read),
    ("1/4-28 UNF", "0.0364", Basis::Read),
    ("3/8-24 UNF", "0.0878", Basis::Read),
    ("5/8-18 UNF", "0.256", Basis::Read),
    ("3/4-16 UNF", "0.373", Basis::Read),
    ("1-12 UNF", "0.663", Basis::Read),
    ("1-1/4-12 UNF", "1.073", Basis::Read),
    ("1-1/2-12 UNF", "1.581", Basis::Read),
    ("3/8-16 UNC", "0.0775", Basis::Read),
    ("1/2-13 UNC", "0.1419", Basis::Read),
];

/// Limit, thread, class, the value, and why it is not ours.
const DIFFERENT: &[(&str, &str, &str, &str, &str)] = &[
    ("D1 min", "1/2-13 UNC", "2B", "0.470", "a misprint of the copy: it prints .417 elsewhere"),
    (
        "d max",
        "5/8-11 UNC",
        "2A",
        "0.6233",
        "by the exact formula, allowance .0017; the printed .0016 counts",
    ),
    (
        "d min",
        "5/8-11 UNC",
        "2A",
        "0.6112",
        "by the exact formula, allowance .0017; the printed .0016 counts",
    ),
    (
        "d2 max",
        "5/8-11 UNC",
        "2A",
        "0.5643",
        "by the exact formula, allowance .0017; the printed .0016 counts",
    ),
    (
        "d2 min",
        "5/8-11 UNC",
        "2A",
        "0.5588",
        "by the exact formula, allowance .0017; the printed .0016 counts",
    ),
    (
        "d1 max",
        "5/8-11 UNC",
        "2A",
        "0.5249",
        "by the exact formula, allowance .0017; the printed .0016 counts",
    ),
    (
        "d3 max",
        "5/8-11 UNC",
        "2A",
        "0.5150",
        "by the exact formula, allowance .0017; the printed .0016 counts",
    ),
    (
        "D2 max",
        "1-1/2-6 UNC",
        "2B",
        "1.4075",
        "a misprint of the copy: ASTM A563 Table 5, 1.4292 less .027, gives 1.4022",
    ),
    ("d2 min", "1-8 UNC", "2A", "0.9100", "recalled from older printings; newer ones print .9101"),
];
