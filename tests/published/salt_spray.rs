//! Hours in the salt spray: ASTM B633, Table 1 (read); ASTM B695, 72 h to white (memory); ISO 4042:1999,
//! Table B.1 (read); ISO 2081:2008, Tables 5 and 6, and ISO 19598 (memory); about 5 µm of mechanical zinc
//! 36 h against 24 h of electroplated zinc (common practice).

use crate::seen::as_printed;
use kettle_barrel::calculator::{Report, evaluate};
use kettle_barrel::source::Basis;
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

fn spray(pairs: &[(&str, &str)]) -> Report {
    evaluate("salt-spray", pairs.iter().copied()).unwrap_or_else(|problems| panic!("{pairs:?}: {problems}"))
}

/// What stands behind the name of the finish, and the basis of each figure.
fn said(pairs: &[(&str, &str)]) -> (String, Vec<Basis>) {
    let report = spray(pairs);
    let headline = report.headline.replace('\u{a0}', " ");
    let said = headline.split_once(": ").map_or(headline.as_str(), |(_, said)| said).to_owned();
    as_printed(report.figures[0].source.unwrap().document);
    (said, report.figures.iter().map(|figure| figure.source.unwrap().basis).collect())
}

/// Key of the finish, what is said of it, basis.
const LISTED: &[(&str, &str, Basis)] = &[
    ("b633-i", "ASTM B633 asks for no hours with this finish", Basis::Read),
    ("b633-ii", "at least 96 h to white corrosion", Basis::Read),
    ("b633-iii", "at least 12 h to white corrosion", Basis::Read),
    ("b633-iv", "ASTM B633 asks for no hours with this finish", Basis::Read),
    ("b633-v", "at least 72 h to white corrosion", Basis::Read),
    ("b633-vi", "at least 120 h to white corrosion", Basis::Read),
    ("b695-ii", "at least 72 h to white corrosion", Basis::Memory),
    // Nobody promises these: once they stood there as “at least”.
    // To what is not said in the source: it once was called white corrosion.
    ("barrel-5", "about 36 h in the spray", Basis::CommonPractice),
    ("cell-5", "about 24 h in the spray", Basis::CommonPractice),
];

#[test]
fn hours_as_stated() {
    for &(key, words, basis) in LISTED {
        assert_eq!(said(&[("finish", key)]), (words.to_owned(), vec![basis; 2]), "{key}");
    }
}

/// Thickness, chromate, hours to white and to red.
const ISO_4042: &[(&str, &str, u32, Option<u32>)] = &[
    ("3", "a", 2, Some(12)),
    ("3", "b", 6, Some(12)),
    ("3", "c", 24, Some(24)),
    ("3", "d", 24, Some(24)),
    ("5", "a", 6, Some(24)),
    ("5", "b", 12, Some(36)),
    ("5", "c", 48, Some(72)),
    ("5", "d", 72, Some(96)),
    ("5", "f", 12, None),
    ("8", "a", 6, Some(48)),
    ("8", "b", 24, Some(72)),
    ("8", "c", 72, Some(120)),
    ("8", "d", 96, Some(144)),
    ("8", "f", 24, Some(72)),
    ("12", "a", 6, Some(72)),
    ("12", "b", 24, Some(96)),
    ("12", "c", 72, Some(144)),
    ("12", "d", 96, Some(168)),
    ("12", "f", 24, Some(96)),
];

#[test]
fn iso_4042_lists_white_and_red() {
    for &(thickness, chromate, white, red) in ISO_4042 {
        let pairs = [("finish", "iso4042"), ("thickness", thickness), ("chromate", chromate)];
        let mut words = format!("{white} h to white corrosion");
        if let Some(red) = red {
            words.push_str(&format!(", {red} h to red rust"));
        }
        assert_eq!(said(&pairs), (words, vec![Basis::Read; 2]), "{pairs:?}");
    }
}

/// White by chromate in the barrel and on the rack; red by thickness with A, B and F, and with C and D.
#[test]
fn iso_2081_asks_for_white_and_red() {
    let white = [("a", 8, 16), ("b", 8, 24), ("c", 72, 96), ("d", 72, 96), ("f", 24, 48)];
    let red = [("5", 48, 72), ("8", 72, 120), ("12", 120, 192), ("25", 240, 360)];
    for (chromate, barrel, rack) in white {
        for (thickness, clear, coloured) in red {
            for (plated, white) in [("barrel", barrel), ("rack", rack)] {
                let red = if matches!(chromate, "c" | "d") { coloured } else { clear };
                let pairs = [
                    ("finish", "iso2081"),
                    ("thickness", thickness),
                    ("chromate", chromate),
                    ("plated", plated),
                ];
                let words = format!("at least {white} h to white corrosion, at least {red} h to red rust");
                assert_eq!(said(&pairs), (words, vec![Basis::Memory; 2]), "{pairs:?}");
            }
        }
    }
}

#[test]
fn iso_19598_asks_for_white_and_its_red_is_a_blank() {
    for (passivate, barrel, rack) in [("an", 8, 16), ("cn", 72, 120), ("cn-t2", 120, 168), ("fn-t2", 24, 48)]
    {
        for (plated, white) in [("barrel", barrel), ("rack", rack)] {
            let pairs = [("finish", "iso19598"), ("passivate", passivate), ("plated", plated)];
            assert_eq!(said(&pairs).0, format!("at least {white} h to white corrosion"));
            let blank = spray(&pairs).findings[0].text.to_string();
            assert!(blank.contains("red rust") && blank.contains("open ISO 19598"), "{blank}");
        }
    }
}

/// What was not found stays blank, what is not listed is refused, and hot-dip has no hours.
#[test]
fn no_hours_where_none_are_stated() {
    for (pairs, part) in [
        (&[("finish", "b695-i")][..], "open ASTM B695"),
        (&[("finish", "f1941")], "open ASTM F1941"),
        (&[("finish", "iso12683")], "open ISO 12683"),
        (&[("finish", "iso4042"), ("thickness", "25")], "of 25 µm it has no data"),
        (&[("finish", "iso4042"), ("thickness", "3"), ("chromate", "f")], "black from 5 µm on"),
        (&[("finish", "iso2081"), ("thickness", "3")], "5, 8, 12 and 25 µm"),
    ] {
        let problems = evaluate("salt-spray", pairs.iter().copied()).unwrap_err().to_string();
        assert!(problems.contains(part), "{problems}");
    }
    assert!(spray(&[("finish", "kettle")]).headline.starts_with("Hot-dip: hours are not given"));
}

/// The hours to red rust remembered of ISO 2081 beside those read in ISO 4042: above at 8A (72 against 48),
/// below at 8D (120 against 144), the same at 8C (120); of 25 µm ISO 4042 has none.
#[test]
fn the_note_beside_iso_2081_is_true_of_the_coat() {
    for (um, chromate, part) in [
        ("8", "a", Some("lie above the 48\u{a0}h")),
        ("8", "d", Some("lie below the 144\u{a0}h")),
        ("5", "d", Some("lie below the 96\u{a0}h")),
        ("8", "c", None),
        ("25", "c", Some("stand alone")),
    ] {
        let pairs = [("finish", "iso2081"), ("thickness", um), ("chromate", chromate)];
        let report = spray(&pairs);
        let note = report.notes.iter().find(|note| note.text.contains("ISO 2081"));
        match part {
            Some(part) => assert!(note.unwrap().text.contains(part), "{um} {chromate}: {note:?}"),
            None => assert!(note.is_none(), "{um} {chromate}: {note:?}"),
        }
    }
    let beside = &spray(&[("finish", "b633-ii")]).sections[0];
    for (name, hours) in [
        ("5 µm, transparent passivate, a car maker's standard", "36\u{a0}h to red rust"),
        ("15 µm, thick", "600"),
    ] {
        let row = beside.figures.iter().find(|figure| figure.name.starts_with(name)).unwrap();
        assert!(row.value.to_string().contains(hours), "{name}");
    }
}
