//! What must hold for every part: it grows with its sizes, and its working is its own sum.

use kettle_barrel::part::{Kind, Profile, Shape, Solid, covered, standard, working};
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

/// Sizes of shafts, bores, holes and tapping screws that no machine thread has.
fn other() -> impl Iterator<Item = Profile> {
    [2.9, 3.2, 3.5, 4.2, 4.8, 6.3, 25.0, 62.0, 100.0]
        .into_iter()
        .map(|d| Profile::metric(Length::from_mm(d), Length::from_mm(d / 5.0)))
}

/// Every standard part of a few lengths; U-bolts of the heights in their table.
fn parts() -> Vec<(String, Kind, Shape)> {
    let mut parts = Vec::new();
    for profile in metric().chain(inch()).chain(other()) {
        let d = profile.diameter.mm();
        for kind in Kind::ALL {
            let lengths: Vec<f64> = match kind {
                Kind::UBolt => vec![70.0, 109.0, 171.0, 334.0, 589.0],
                kind if kind.has_length() => [2.0, 5.0, 12.0].map(|factor| factor * d).to_vec(),
                _ => vec![0.0],
            };
            for length in lengths {
                let Ok(shape) = standard(kind, profile, Some(Length::from_mm(length))) else { continue };
                // A very short one is all head, or all point.
                if shape.check().is_ok() {
                    parts.push((format!("{kind} of {d} mm, {length} mm long"), kind, shape));
                }
            }
        }
    }
    parts
}

/// Every kind has a shape in some size, but for those whose tables were not found.
#[test]
fn every_kind_with_a_table_is_among_the_parts() {
    let parts = parts();
    assert!(parts.len() > 1000, "{}", parts.len());
    let missing: Vec<Kind> =
        Kind::ALL.into_iter().filter(|kind| !parts.iter().any(|(_, known, _)| known == kind)).collect();
    let by_name: Vec<Kind> = missing
        .iter()
        .copied()
        .filter(|kind| ![Kind::ToothedWasher, Kind::SnapRing, Kind::Other].contains(kind))
        .collect();
    assert_eq!(
        by_name,
        [
            Kind::HeavyHexBolt,
            Kind::HrBolt,
            Kind::SquareBolt,
            Kind::FormingScrew,
            Kind::LagScrew,
            Kind::WoodScrew,
            Kind::ChipboardScrew,
            Kind::ConcreteScrew,
            Kind::HangerBolt,
            Kind::DoubleEndStud,
            Kind::BentAnchor,
            Kind::OtherBolt,
            Kind::ThinNut,
            Kind::CouplingNut,
            Kind::OtherNut,
            Kind::OtherWasher,
            Kind::ClevisPin,
            Kind::ParallelPin,
        ]
    );
    assert_eq!(missing.len() - by_name.len(), 3);
    for (metric, without) in [
        (true, vec![Kind::NarrowWasher, Kind::ToothedWasher, Kind::SnapRing, Kind::Other]),
        (
            false,
            vec![
                Kind::EyeBolt,
                Kind::UBolt,
                Kind::LockNut,
                Kind::ConicalWasher,
                Kind::ToothedWasher,
                Kind::RetainingRing,
                Kind::InternalRing,
                Kind::SnapRing,
                Kind::CotterPin,
                Kind::SpringPin,
                Kind::Other,
            ],
        ),
    ] {
        let blank: Vec<Kind> =
            Kind::ALL.into_iter().filter(|kind| covered(*kind, metric).is_none()).collect();
        let blank: Vec<Kind> = blank.into_iter().filter(|kind| !by_name.contains(kind)).collect();
        assert_eq!(blank, without);
    }
}

#[test]
fn the_working_of_every_standard_part_adds_up() {
    for (name, _, shape) in parts() {
        let add_up = |shape: &Shape| {
            for step in working(shape).steps().iter().filter(|step| !step.formula.is_empty()) {
                super::working::check(step, &name);
            }
        };
        add_up(&shape);
        if let Solid::Nut(_) = shape.solid {
            let blank = shape.blank();
            assert!(blank.surface() < shape.surface() && blank.volume() > shape.volume(), "{name}");
            add_up(&blank);
        }
        assert!(shape.surface().mm2() > 0.0 && shape.mass().g() > 0.0, "{name}");
    }
}

/// Sizes that take metal away as they grow.
fn is_taken_away(shape: &Shape, symbol: &str, name: &str) -> bool {
    name == "socket across flats"
        || matches!(
            (&shape.solid, symbol),
            (Solid::Bolt(_), "b" | "t" | "d_h")
                | (Solid::SetScrew(_), "t")
                | (Solid::Nut(_), "da")
                | (Solid::Washer(_), "d1")
                | (Solid::Tapping(_), "P" | "y")
        )
}

#[test]
fn every_size_but_a_hole_adds_to_the_volume() {
    for (name, kind, shape) in parts() {
        for own in shape.dimensions() {
            // The shank of a carriage bolt is about as thick as its thread is on the average, and a bolt
            // that is threaded to the head has no shank to grow.
            if kind == Kind::CarriageBolt && own.symbol == "b" || own.symbol == "ds" {
                continue;
            }
            let at = |share: f64| {
                let length = Length::from_mm(own.size.length.mm() * share);
                shape.resized(own.symbol, length).unwrap().volume()
            };
            assert_eq!(
                at(1.01) > at(1.0),
                !is_taken_away(&shape, own.symbol, own.name),
                "{name}: {}",
                own.symbol
            );
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
    assert!(refusal.contains("to M64") && refusal.contains("ISO 4014"), "{refusal}");
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
        let (Solid::Bolt(s), Solid::Bolt(l)) = (&short.solid, &long.solid) else { return Ok(()) };
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
