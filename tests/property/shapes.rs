//! Surface, volume and outline of every kind of part in some sizes, as they were: the last layer under the
//! masses of lists, the solids of a CAD kernel and the workings that add up.

use std::fmt::Write;

use kettle_barrel::part::{Kind, Profile, standard};
use kettle_barrel::quantity::Length;
use kettle_barrel::thread::Designation;

const THREADS: [&str; 9] =
    ["M5", "M8", "M12", "M20", "M30", "1/4-20 UNC", "1/2-13 UNC", "3/4-10 UNC", "1-8 UNC"];
const LENGTHS: [f64; 4] = [25.0, 60.0, 160.0, 240.0];

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
    let lengths: Vec<Option<f64>> =
        if kind.has_length() { LENGTHS.into_iter().map(Some).collect() } else { vec![None] };
    let sizes = THREADS.iter().enumerate();
    let sizes = sizes.flat_map(|(at, text)| {
        // One length a size, another for the next.
        lengths.iter().skip(at % lengths.len()).take(1).map(move |length| (*text, *length))
    });
    sizes.map(|(text, length)| row(kind, text, length)).collect()
}

fn row(kind: Kind, text: &str, length: Option<f64>) -> String {
    let thread = Designation::read(text).unwrap().thread;
    let profile = Profile::from(thread);
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
