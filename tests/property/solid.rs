//! One part of each kind: what its working adds up to, which sizes it may have, how far it reaches.
//!
//! `part.rs` holds the same for every size of every table, and takes its time.

use kettle_barrel::part::{Kind, Profile, Shape, Solid, covered, standard, working};
use kettle_barrel::quantity::Length;

fn metric(d: f64, pitch: f64) -> Profile {
    Profile::metric(Length::from_mm(d), Length::from_mm(pitch))
}

/// The first size of each kind that a table has, metric and inch.
fn one_of_each() -> Vec<(Kind, Shape)> {
    let profiles = [
        metric(12.0, 1.75),
        metric(6.0, 1.0),
        metric(25.0, 5.0),
        metric(4.2, 1.4),
        metric(3.5, 0.7),
        metric(3.2, 0.64),
        metric(62.0, 12.4),
        Profile::unified(Length::from_inch(0.5), 13.0),
    ];
    let of = |kind: Kind, profile: Profile| {
        let length = if kind == Kind::UBolt { 109.0 } else { 5.0 * profile.diameter.mm() };
        let length = kind.has_length().then(|| Length::from_mm(length));
        standard(kind, profile, length).ok().filter(|shape| shape.check().is_ok())
    };
    let first = |kind| profiles.iter().find_map(|profile| Some((kind, of(kind, *profile)?)));
    let inch = |kind| Some((kind, of(kind, *profiles.last().unwrap())?));
    Kind::ALL.into_iter().filter_map(first).chain(Kind::ALL.into_iter().filter_map(inch)).collect()
}

fn resized(shape: &Shape, symbol: &str, mm: f64) -> Shape {
    shape.resized(symbol, Length::from_mm(mm)).unwrap_or_else(|| panic!("{symbol}"))
}

/// Every sum of a working can be done again from its numbers, and area and volume are sums.
#[test]
fn the_working_of_a_part_of_each_kind_adds_up() {
    let parts = one_of_each();
    assert!(parts.len() > 50, "{}", parts.len());
    for (kind, shape) in parts {
        let name = format!("{kind}");
        // A nut goes into the kettle as a blank.
        let blank = matches!(shape.solid, Solid::Nut(_)).then(|| shape.blank());
        for shape in std::iter::once(shape).chain(blank) {
            let working = working(&shape);
            for step in working.steps().iter().filter(|step| !step.formula.is_empty()) {
                super::working::check(step, &name);
            }
            let formula = |symbol: &str| working.steps().iter().find(|step| step.symbol == symbol);
            for symbol in ["A_1", "V_1"] {
                // Of a listed mass the volume is not asked.
                let sum = formula(symbol);
                assert!(
                    sum.is_some_and(|step| !step.formula.is_empty()) || shape.listed.is_some(),
                    "{name}: {symbol}"
                );
            }
        }
    }
}

/// Every size has its own symbol, counts in area or volume, and is never nought.
#[test]
fn a_part_of_each_kind_has_the_sizes_that_it_needs() {
    for (kind, shape) in one_of_each() {
        let sizes = shape.dimensions();
        assert!(!sizes.is_empty(), "{kind}");
        for (at, own) in sizes.iter().enumerate() {
            assert!(
                sizes.iter().skip(at + 1).all(|other| other.symbol != own.symbol),
                "{kind}: {}",
                own.symbol
            );
            let mm = own.size.length.mm();
            let larger = resized(&shape, own.symbol, mm * 1.01);
            // The mass that is listed goes with the sizes that it is listed for.
            let same = resized(&shape, own.symbol, mm);
            // A bolt that is threaded to its head has no shank to grow.
            let counts = larger.surface() != same.surface() || larger.volume() != same.volume();
            assert!(counts || own.symbol == "ds", "{kind}: {}", own.symbol);
            let nought = resized(&shape, own.symbol, 0.0).check();
            assert!(nought.is_err(), "{kind}: {} may be nought", own.symbol);
        }
    }
}

/// How far a part reaches along its axis is what its picture shows; but for a spring washer, which is drawn flat:
/// its ends stand one above the other, each as thick as the bar.
#[test]
fn a_part_reaches_as_far_as_it_is_drawn() {
    for (kind, shape) in one_of_each() {
        let outline = shape.outline().unwrap();
        let from = outline.bodies.iter().map(|body| body.along.0).fold(f64::INFINITY, f64::min);
        let to = outline.bodies.iter().map(|body| body.along.1).fold(f64::NEG_INFINITY, f64::max);
        let times = if matches!(shape.solid, Solid::SpringWasher(_)) { 2.0 } else { 1.0 };
        let reach = shape.overall_length().unwrap().mm();
        assert!((reach - times * (to - from)).abs() < 1e-9, "{kind}: {reach} is not {from} to {to}");
    }
}

/// The bounds of sizes, by hand from the sizes that they hang on: within a hundredth of a millimetre of each the
/// part can still be made, beyond it no longer.
#[test]
fn sizes_end_where_the_part_ends() {
    let of = |kind| one_of_each().into_iter().find(|(one, _)| *one == kind).unwrap().1;
    let mm = |shape: &Shape, symbol: &str| {
        let own = shape.dimensions().into_iter().find(|own| own.symbol == symbol);
        own.unwrap_or_else(|| panic!("{symbol}")).size.length.mm()
    };
    /// A size, the sign of the side on which it is sound, and its bound.
    type Row = (Kind, &'static str, f64, fn(&dyn Fn(&str) -> f64) -> f64);
    let rows: [Row; 14] = [
        (Kind::Washer, "d2", 1.0, |of| of("d1")),
        (Kind::InternalRing, "w", -1.0, |of| of("d3") / 2.0),
        (Kind::SpringPin, "s", -1.0, |of| of("d") / 2.0),
        (Kind::CotterPin, "b", 1.0, |of| of("d")),
        (Kind::CotterPin, "c", 1.0, |of| of("d")),
        // A ridge of 60° is as wide at its foot as 2 / √3 of its height.
        (Kind::TappingScrew, "P", 1.0, |of| (of("d1") - of("d2")) / 3f64.sqrt()),
        (Kind::TappingScrew, "d1", 1.0, |of| of("d2")),
        (Kind::TappingScrew, "l", 1.0, |of| of("y")),
        (Kind::DrywallScrew, "l", 1.0, |of| of("y") + (of("dk") - of("d2")) / 2.0),
        (Kind::DrywallScrew, "dk", 1.0, |of| of("d2")),
        (Kind::SetScrew, "l", 1.0, |of| of("t")),
        (Kind::SetScrew, "dp", -1.0, |_| 12.0),
        // The root of M12, 12 mm − 17/24 · √3 · 1.75 mm, has room for a hexagon of cos 30° of it.
        (Kind::SetScrew, "s", -1.0, |_| (12.0 - 17.0 / 24.0 * 3f64.sqrt() * 1.75) * 3f64.sqrt() / 2.0),
        (Kind::HexNut, "s", 1.0, |of| of("da")),
    ];
    for (kind, symbol, side, bound) in rows {
        let shape = of(kind);
        let bound = bound(&|symbol| mm(&shape, symbol));
        for (off, sound) in [(0.01, true), (-0.01, false)] {
            let found = resized(&shape, symbol, bound + side * off).check();
            assert_eq!(found.is_ok(), sound, "{kind}: {symbol} of {bound}: {found:?}");
        }
    }
}

/// A kind that a table covers in a system has a part there.
#[test]
fn what_is_covered_is_there() {
    let parts = one_of_each();
    let covered = Kind::ALL.into_iter().filter(|kind| covered(*kind, true).is_some());
    let missing: Vec<Kind> = covered.filter(|kind| !parts.iter().any(|(one, _)| one == kind)).collect();
    assert_eq!(missing, []);
}

/// ISO 8677: a carriage bolt has 2 d + 6 mm of thread up to 125 mm, 2 d + 12 mm up to 200 mm, 2 d + 25 mm beyond.
#[test]
fn the_thread_of_a_carriage_bolt_follows_its_length() {
    for (length, thread) in [(80.0, 30.0), (125.0, 30.0), (130.0, 36.0), (200.0, 36.0), (220.0, 49.0)] {
        let bolt = standard(Kind::CarriageBolt, metric(12.0, 1.75), Some(Length::from_mm(length))).unwrap();
        let b = bolt.dimensions().into_iter().find(|own| own.symbol == "b").unwrap();
        assert_eq!(b.size.length.mm(), thread, "{length}");
    }
}
