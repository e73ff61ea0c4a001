//! How a published limit of size is checked: ours, shown with the digits that were printed.

use kettle_barrel::calculator::evaluate;
use kettle_barrel::quantity::Length;
use kettle_barrel::source::Document;
use kettle_barrel::thread::{Designation, Thread, ToleranceClass, limits};

use crate::seen::as_printed;

/// Name of the limit, thread, class, printed value.
pub type Row = (&'static str, &'static str, &'static str, &'static str);

/// A thread from its designation.
pub fn thread(text: &str) -> Thread {
    Designation::read(text).unwrap_or_else(|problem| panic!("{problem}")).thread
}

/// A class as it is written.
pub fn class(text: &str) -> ToleranceClass {
    ToleranceClass::read(text).unwrap_or_else(|| panic!("no class {text}"))
}

/// The limit of that name: small letters for the bolt, capitals for the nut, as the standards write
/// them.
pub fn limit(name: &str, designation: &str, of_class: &str) -> Length {
    let (thread, class) = (thread(designation), class(of_class));
    if name.starts_with('d') {
        let bolt = limits::bolt(thread, class).unwrap_or_else(|refusal| panic!("{refusal}"));
        match name {
            "d max" => bolt.major.max,
            "d min" => bolt.major.min,
            "d2 max" => bolt.pitch.max,
            "d2 min" => bolt.pitch.min,
            "d1 max" => bolt.minor_max,
            "d3 max" => bolt.root_max,
            "d3 min" => bolt.root_min.unwrap(),
            _ => panic!("no limit {name}"),
        }
    } else {
        let nut = limits::nut(thread, class).unwrap_or_else(|refusal| panic!("{refusal}"));
        match name {
            "D min" => nut.major_min,
            "D2 max" => nut.pitch.max,
            "D2 min" => nut.pitch.min,
            "D1 max" => nut.minor.max,
            "D1 min" => nut.minor.min,
            _ => panic!("no limit {name}"),
        }
    }
}

/// What a calculator shows of the figure with that symbol.
pub fn figure(calculator: &str, pairs: &[(&str, &str)], symbol: &str) -> String {
    let report = evaluate(calculator, pairs.iter().copied()).unwrap_or_else(|problems| panic!("{problems}"));
    let figure = report.figures.iter().find(|figure| figure.symbol == symbol);
    figure.unwrap_or_else(|| panic!("{calculator} shows no {symbol}")).value.to_string()
}

/// Compares a number with a printed text of the document, to the digits printed.
pub fn same_digits(document: &Document, ours: f64, printed: &str, what: &str) {
    let digits = printed.trim_start_matches('-');
    let decimals = digits.split_once('.').map_or(0, |(_, behind)| behind.len());
    let plain = if digits.starts_with('.') { printed.replacen('.', "0.", 1) } else { printed.to_owned() };
    assert_eq!(format!("{ours:.decimals$}"), plain, "{what}");
    as_printed(document);
}

/// Checks metric rows, in mm.
pub fn check_mm(document: &Document, rows: &[Row]) {
    for &(name, designation, class, printed) in rows {
        let ours = limit(name, designation, class);
        same_digits(document, ours.mm(), printed, &format!("{name} {designation} {class}"));
    }
}

/// Checks inch rows, in inches.
pub fn check_inch(document: &Document, rows: &[Row]) {
    for &(name, designation, class, printed) in rows {
        let ours = limit(name, designation, class);
        same_digits(document, ours.inch(), printed, &format!("{name} {designation} {class}"));
    }
}

/// Rows whose copy differs from the standard: ours must differ, so that a row that comes to agree is
/// noticed and moved.
pub fn check_differs(rows: &[(&str, &str, &str, &str, &str)], unit: fn(Length) -> f64) {
    for &(name, designation, class, printed, why) in rows {
        let decimals = printed.split_once('.').map_or(0, |(_, behind)| behind.len());
        let ours = unit(limit(name, designation, class));
        let shown = format!("{ours:.decimals$}");
        assert_ne!(
            shown.trim_start_matches('0'),
            printed.trim_start_matches('0'),
            "{name} {designation}: {why}"
        );
    }
}
