//! Every picture of every worked example, measured.

use std::collections::BTreeSet;

use super::*;
use crate::calculator::REGISTER;
use crate::order;
use crate::page::state::EXAMPLES;
use crate::part::{Kind, Profile, standard};
use crate::quantity::{Length, unit};

fn pictures() -> Vec<(String, Picture)> {
    let mut pictures = Vec::new();
    for entry in REGISTER {
        for example in entry.about.examples {
            let report = entry.evaluate(&example.pairs.iter().copied().collect()).unwrap();
            pictures.extend(
                report.picture.map(|picture| (format!("{}: {}", entry.about.id, example.title), picture)),
            );
        }
    }
    for line in EXAMPLES {
        let assessment = order::assess(&order::reading::read(line).draft).unwrap();
        pictures.extend(assessment.pictures.into_iter().map(|picture| (line.to_owned(), picture)));
    }
    pictures
}

#[test]
fn no_name_leaves_its_picture_or_covers_another() {
    let pictures = pictures();
    assert!(pictures.len() > 60, "{}", pictures.len());
    for (what, picture) in pictures {
        for width in [NARROWEST, 320.0, 420.0, 480.0, 560.0, WIDEST] {
            names_are_apart(&what, &picture, width);
        }
    }
}

fn names_are_apart(what: &str, picture: &Picture, width: f64) {
    let drawing = lay_out(picture, width);
    let boxes: Vec<_> = drawing.shapes.iter().filter_map(|shape| Some((shape, shape.text_box()?))).collect();
    for (at, (shape, (left, top, right, bottom))) in boxes.iter().enumerate() {
        let inside = *left >= -0.5 && *right <= width + 0.5 && *top >= 0.0 && *bottom <= drawing.height;
        assert!(inside, "{what}, {width} px: {shape:?} leaves the picture");
        for (other, (l, t, r, b)) in &boxes[at + 1..] {
            let apart = right <= l || r <= left || bottom <= t || b <= top;
            assert!(apart, "{what}, {width} px: {shape:?} covers {other:?}");
        }
    }
}

#[test]
fn every_calculator_and_every_example_line_has_a_picture() {
    let pictures = pictures();
    let has = |name: &str| pictures.iter().any(|(what, _)| what.starts_with(name));
    for entry in REGISTER {
        assert!(has(entry.about.id), "{}", entry.about.id);
    }
    for line in EXAMPLES {
        assert!(has(line), "{line}");
    }
}

/// Every kind of part whose sizes are known is drawn, and its sizes stand beside each other.
#[test]
fn every_kind_of_part_is_drawn_with_its_sizes() {
    let mm = Length::from_mm;
    let threads = [(10.0, 1.5), (12.0, 1.75), (20.0, 2.5), (3.5, 1.3), (4.8, 1.6), (25.0, 5.0), (32.0, 5.0)];
    let mut drawn = BTreeSet::new();
    for kind in Kind::ALL {
        for (d, pitch) in threads {
            for length in [25.0, 50.0, 70.0, 109.0] {
                let profile = Profile::metric(mm(d), mm(pitch));
                let Ok(shape) = standard(kind, profile, Some(mm(length))) else { continue };
                if shape.check().is_err() {
                    continue;
                }
                let outline = shape.outline().unwrap_or_else(|| panic!("{kind} of {d} mm is not drawn"));
                let picture = Picture::Part { title: "A part.".into(), outline, unit: &unit::MM };
                for width in [NARROWEST, 420.0, WIDEST] {
                    names_are_apart(&format!("{kind} of {d} mm, {length} mm"), &picture, width);
                }
                drawn.insert(kind.key());
            }
        }
    }
    for kind in [
        Kind::EyeBolt,
        Kind::UBolt,
        Kind::TappingScrew,
        Kind::DrywallScrew,
        Kind::CotterPin,
        Kind::RetainingRing,
    ] {
        assert!(drawn.contains(kind.key()), "{kind}: {drawn:?}");
    }
}

#[test]
fn every_axis_has_numerals_a_unit_and_says_where_it_is_logarithmic() {
    for (what, picture) in pictures() {
        let (Picture::Scale { .. } | Picture::Bars { .. } | Picture::Dots { .. } | Picture::Rulers { .. }) =
            &picture
        else {
            continue;
        };
        let drawing = lay_out(&picture, 320.0);
        let texts = |wanted: &str| -> Vec<String> {
            let of = |shape: &Shape| match shape {
                Shape::Text { class, text, .. } if *class == wanted => Some(text.clone()),
                _ => None,
            };
            drawing.shapes.iter().filter_map(of).collect()
        };
        assert!(texts("numeral").len() >= 2, "{what}: {:?}", texts("numeral"));
        let logarithmic = matches!(picture, Picture::Bars { logarithmic: true, .. } | Picture::Rulers { .. });
        assert_eq!(texts("unit").concat().contains("logarithmic"), logarithmic, "{what}");
    }
}
