//! What must hold for every part: it grows with its sizes, and its working is its own sum.

use kettle_barrel::part::{Kind, Profile, Shape, standard, working};
use kettle_barrel::quantity::Length;
use proptest::prelude::*;

const METRIC: [(f64, f64); 23] = [
    (5.0, 0.8),
    (6.0, 1.0),
    (8.0, 1.25),
    (10.0, 1.5),
    (12.0, 1.75),
    (14.0, 2.0),
    (16.0, 2.0),
    (18.0, 2.5),
    (20.0, 2.5),
    (22.0, 2.5),
    (24.0, 3.0),
    (27.0, 3.0),
    (30.0, 3.5),
    (33.0, 3.5),
    (36.0, 4.0),
    (39.0, 4.0),
    (42.0, 4.5),
    (45.0, 4.5),
    (48.0, 5.0),
    (52.0, 5.0),
    (56.0, 5.5),
    (60.0, 5.5),
    (64.0, 6.0),
];

fn metric() -> impl Iterator<Item = Profile> {
    METRIC.into_iter().map(|(d, p)| Profile::metric(Length::from_mm(d), Length::from_mm(p)))
}

fn inch() -> impl Iterator<Item = Profile> {
    [(0.25, 20.0), (0.5, 13.0), (0.625, 11.0), (0.75, 10.0), (1.0, 8.0), (1.5, 6.0), (4.0, 4.0)]
        .into_iter()
        .map(|(d, tpi)| Profile::unified(Length::from_inch(d), tpi))
}

/// Every standard part of a few lengths.
fn parts() -> Vec<(String, Shape)> {
    let mut parts = Vec::new();
    for profile in metric().chain(inch()) {
        for kind in Kind::ALL {
            for factor in [2.0, 5.0, 12.0] {
                let length = Length::from_mm(factor * profile.diameter.mm());
                if let Ok(shape) = standard(kind, profile, Some(length)) {
                    parts.push((format!("{kind} of {} mm, {factor} d", profile.diameter.mm()), shape));
                }
            }
        }
    }
    parts
}

#[test]
fn every_standard_part_is_sound_and_its_working_adds_up() {
    let parts = parts();
    assert!(parts.len() > 300, "{}", parts.len());
    for (name, shape) in parts {
        assert_eq!(shape.check(), Ok(()), "{name}");
        for step in working(&shape).steps().iter().filter(|step| !step.formula.is_empty()) {
            super::working::check(step, &name);
        }
        if let Shape::Nut(_) = shape {
            let blank = shape.blank();
            assert!(blank.surface() < shape.surface() && blank.volume() > shape.volume(), "{name}");
            for step in working(&blank).steps().iter().filter(|step| !step.formula.is_empty()) {
                super::working::check(step, &name);
            }
        }
    }
}

#[test]
fn every_size_but_the_hole_adds_to_the_volume() {
    let shrinks = ["d1", "da", "b", "t"];
    for (name, shape) in parts() {
        for dimension in shape.dimensions() {
            // The socket across flats of a cap screw is taken away, the hexagon of others added.
            let socket = dimension.name == "socket across flats";
            let larger = Length::from_mm(dimension.size.length.mm() * 1.02);
            let grown = shape.resized(dimension.symbol, larger).unwrap();
            let more = grown.volume() > shape.volume();
            assert_eq!(more, !socket && !shrinks.contains(&dimension.symbol), "{name}: {}", dimension.symbol);
        }
        assert_eq!(shape.resized("x", Length::from_mm(1.0)), None);
    }
}

#[test]
fn a_size_that_cannot_be_is_named_with_its_limit() {
    let profile = Profile::metric(Length::from_mm(16.0), Length::from_mm(2.0));
    let bolt = standard(Kind::HexBolt, profile, Some(Length::from_mm(80.0))).unwrap();
    let washer = standard(Kind::Washer, profile, None).unwrap();
    let cases = [
        (bolt, "b", 81.0, "thread length b = 81.00\u{a0}mm must be at most 80.00\u{a0}mm"),
        (bolt, "s", 16.0, "width across flats s = 16.00\u{a0}mm must be above 16.00\u{a0}mm"),
        (washer, "d2", 17.0, "outside diameter d2 = 17.00\u{a0}mm must be above 17.00\u{a0}mm, the hole"),
    ];
    for (shape, symbol, mm, says) in cases {
        let wrong = shape.resized(symbol, Length::from_mm(mm)).unwrap().check().unwrap_err().to_string();
        assert!(wrong.starts_with(says), "{wrong}");
    }
}

#[test]
fn a_part_that_no_table_has_is_refused_with_what_there_is() {
    let m7 = Profile::metric(Length::from_mm(7.0), Length::from_mm(1.0));
    let length = Some(Length::from_mm(40.0));
    let refusal = standard(Kind::HexBolt, m7, length).unwrap_err().to_string();
    assert!(refusal.contains("M5 to M64") && refusal.contains("ISO 4014"), "{refusal}");
    assert!(standard(Kind::HeavyHexNut, m7, None).is_err());
    assert!(standard(Kind::Rod, m7, length).is_ok());
    assert!(standard(Kind::Rod, m7, None).unwrap_err().to_string().contains("length"));
}

proptest! {
    /// A longer bolt has more surface and more mass, across every change of its thread length.
    #[test]
    fn a_longer_bolt_is_larger_and_heavier(
        size in 0..METRIC.len(),
        min in 1.5..20.0f64,
        more in 0.01..20.0f64,
        kind in prop_oneof![Just(Kind::HexScrew), Just(Kind::Rod)],
    ) {
        let (d, p) = METRIC[size];
        let profile = Profile::metric(Length::from_mm(d), Length::from_mm(p));
        let short = standard(kind, profile, Some(Length::from_mm(min * d))).unwrap();
        let long = standard(kind, profile, Some(Length::from_mm((min + more) * d))).unwrap();
        prop_assert!(long.surface() > short.surface());
        prop_assert!(long.mass() > short.mass());
    }

    /// The mass of a partly threaded bolt grows too; its surface does within one thread length.
    #[test]
    fn a_longer_partly_threaded_bolt_is_heavier(
        size in 0..METRIC.len(),
        length in 10.0..400.0f64,
        more in 0.0..100.0f64,
        kind in prop_oneof![Just(Kind::HexBolt), Just(Kind::SocketScrew)],
    ) {
        let (d, p) = METRIC[size];
        let profile = Profile::metric(Length::from_mm(d), Length::from_mm(p));
        let at = |mm: f64| standard(kind, profile, Some(Length::from_mm(mm)));
        let (Ok(short), Ok(long)) = (at(length.max(d)), at(length.max(d) + 1.0 + more)) else { return Ok(()) };
        let (Shape::Bolt(s), Shape::Bolt(l)) = (&short, &long) else { return Ok(()) };
        // At 125 and 200 mm the standard lengthens the thread, which takes metal away.
        prop_assume!(more > 20.0 || s.thread_length.length <= l.thread_length.length);
        if s.thread_length == l.thread_length {
            prop_assert!(long.surface() > short.surface());
            prop_assert!(long.mass() > short.mass());
        }
        if more > 30.0 {
            prop_assert!(long.mass() > short.mass());
        }
    }
}
