//! Surface, volume and outline of every kind of part in some sizes, as they were: the last layer under the
//! masses of lists, the solids of a CAD kernel and the workings that add up.

use std::fmt::Write;

use kettle_barrel::part::{Kind, Profile, standard};
use kettle_barrel::quantity::Length;
use kettle_barrel::thread::Designation;

const THREADS: [&str; 9] =
    ["M5", "M8", "M12", "M20", "M30", "1/4-20 UNC", "1/2-13 UNC", "3/4-10 UNC", "1-8 UNC"];
const LENGTHS: [f64; 4] = [25.0, 60.0, 160.0, 240.0];
/// Heights that the table of U-bolts has.
const HEIGHTS: [f64; 4] = [70.0, 109.0, 171.0, 334.0];
/// Sizes in millimetres that no machine thread has: of screws that form their thread, of pins, shafts and bores.
const OTHER: [f64; 8] = [2.0, 2.9, 3.5, 4.2, 4.8, 6.3, 25.0, 62.0];

#[test]
fn every_part_has_the_shape_it_had() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/property/shapes.tsv");
    let now: String = Kind::ALL.into_iter().flat_map(rows).collect();
    if std::env::var("KETTLE_BARREL_RENEW").is_ok_and(|what| what == "shapes") {
        std::fs::write(path, now).unwrap();
        return;
    }
    let kept = std::fs::read_to_string(path).unwrap();
    for (was, is) in kept.lines().zip(now.lines()) {
        assert_eq!(
            is, was,
            "if it is meant, renew the file with KETTLE_BARREL_RENEW=shapes cargo test --test property shapes"
        );
    }
    assert_eq!(now.lines().count(), kept.lines().count());
}

/// A kind in every size: its numbers, or why it has none.
fn rows(kind: Kind) -> Vec<String> {
    let lengths: Vec<Option<f64>> = match kind {
        Kind::UBolt => HEIGHTS.into_iter().map(Some).collect(),
        kind if kind.has_length() => LENGTHS.into_iter().map(Some).collect(),
        _ => vec![None],
    };
    let threads = THREADS.iter().map(|text| {
        let thread = Designation::read(text).unwrap().thread;
        ((*text).to_owned(), Profile::from(thread))
    });
    let other = OTHER
        .iter()
        .map(|&mm| (format!("{mm} mm"), Profile::metric(Length::from_mm(mm), Length::from_mm(mm / 5.0))));
    let sizes = threads.chain(other).enumerate();
    let sizes = sizes.flat_map(|(at, (text, profile))| {
        // One length a size, another for the next.
        let lengths = lengths.iter().skip(at % lengths.len()).take(1);
        lengths.map(move |length| row(kind, (&text, profile), *length)).collect::<Vec<_>>()
    });
    sizes.collect()
}

fn row(kind: Kind, (text, profile): (&str, Profile), length: Option<f64>) -> String {
    let mut row =
        format!("{}\t{text}\t{}\t", kind.key(), length.map_or_else(String::new, |mm| mm.to_string()));
    match standard(kind, profile, length.map(Length::from_mm)) {
        Ok(shape) => {
            write!(row, "{:.2}\t{:.2}\t", shape.surface().mm2(), shape.volume().mm3()).unwrap();
            if let Some(outline) = shape.outline() {
                for body in &outline.bodies {
                    let ((from, to), (first, last)) = (body.along, body.across);
                    write!(
                        row,
                        "{:?} {:.2} {from:.2} {to:.2} {first:.2} {last:.2}; ",
                        body.surface, body.off
                    )
                    .unwrap();
                }
                for size in &outline.sizes {
                    write!(row, "{} {:.2} {:.2?}; ", size.symbol, size.length.mm(), size.place).unwrap();
                }
            }
        }
        Err(refusal) => write!(row, "{refusal}").unwrap(),
    }
    row + "\n"
}
