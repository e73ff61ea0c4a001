use super::*;
use crate::part::{Kind, Shape, Solid, standard, working};
use crate::quantity::Length;

fn size(mm: f64) -> Size {
    Size::own(Length::from_mm(mm))
}

fn profile() -> Profile {
    Profile::metric(Length::from_mm(12.0), Length::from_mm(1.75))
}

fn bolt(head: Head, length: f64, thread: f64) -> Bolt {
    Bolt { head, profile: profile(), length: size(length), thread_length: size(thread), shank: None }
}

fn term(bolt: &Bolt, symbol: &str) -> f64 {
    bolt.values().iter().find(|term| term.symbol == symbol).unwrap().value.number
}

/// The step of a symbol in the working of the part.
fn formula(bolt: Bolt, symbol: &str) -> &'static str {
    let working = working(&Shape::from(Solid::Bolt(bolt)));
    working.steps().iter().find(|step| step.symbol == symbol).map_or("", |step| step.formula)
}

fn is_sound(bolt: Bolt) -> bool {
    Shape::from(Solid::Bolt(bolt)).check().is_ok()
}

/// A U-bolt of M12 round 60 mm, 100 mm high inside, with 40 mm of thread, by hand: both straight legs are 100 − 30
/// mm long, and the bend is half a circle through the middle of the bar, π/2 · 72; what is not thread is shank. d3 = 12 − 17/24 · √3 · 1.75 = 9.853 mm, and each leg ends in a point of half of 12 − 9.853.
#[test]
fn a_bow_is_as_long_as_its_bar() {
    let bow = |thread| bolt(Head::Bow { width: size(60.0) }, 100.0, thread);
    let bar = 2.0 * 100.0 - 60.0 + PI / 2.0 * 72.0;
    assert!((bow(40.0).body_length() - bar).abs() < 1e-9);
    assert!((term(&bow(40.0), "l_s") - (bar - 80.0)).abs() < 1e-9);
    assert!((term(&bow(40.0), "l_t") - (80.0 - (12.0 - 9.852_98))).abs() < 1e-4);
    assert_eq!(formula(bow(40.0), "l_s"), "2·l − w + π/2·(w + d) − 2·b");
    assert_eq!(formula(bow(40.0), "l_t"), "2·b − (d − d3)");
    // The thread of a leg is longer than its point, 1.07 mm, and no longer than half of the bar, 126.5 mm.
    for (thread, sound) in [(1.0, false), (1.1, true), (126.5, true), (126.6, false), (200.0, false)] {
        assert_eq!(is_sound(bow(thread)), sound, "{thread}");
    }
    // Below a head there is one point, and none of the thread but its own.
    let hexagon = |thread| bolt(Head::Hexagon { flats: size(18.0), height: size(7.5) }, 50.0, thread);
    for (thread, sound) in [(1.0, false), (1.1, true), (50.0, true), (50.1, false)] {
        assert_eq!(is_sound(hexagon(thread)), sound, "{thread}");
    }
    assert_eq!(formula(hexagon(30.0), "l_t"), "b − (d − d3) / 2");
}

/// A cone from 24 mm to 12 mm: of 90° it is 6 mm high, of 82° 6 mm / tan 41° = 6.902 mm; no head is lower.
#[test]
fn a_countersunk_head_is_no_lower_than_its_cone() {
    let countersunk = |angle, height| {
        let (diameter, flats, depth) = (size(24.0), size(8.0), size(3.0));
        bolt(Head::Countersunk { diameter, height: size(height), flats, depth, angle }, 50.0, 30.0)
    };
    use crate::part::Angle::{EightyTwo, Ninety};
    for (angle, height, sound) in [
        (Ninety, 6.0, true),
        (Ninety, 6.1, true),
        (Ninety, 5.9, false),
        (EightyTwo, 6.91, true),
        (EightyTwo, 6.89, false),
    ] {
        assert_eq!(is_sound(countersunk(angle, height)), sound, "{angle:?}, {height}");
    }
    for (angle, cone, sum) in [(Ninety, 6.0, "(dk − d) / 2"), (EightyTwo, 6.902_21, "1.15037·(dk − d) / 2")]
    {
        let screw = countersunk(angle, 8.0);
        assert_eq!(formula(screw, "h_c"), sum);
        assert!((term(&screw, "h_c") - cone).abs() < 1e-4, "{angle:?}");
    }
}

/// A nut that is to be tapped after the zinc goes in with its hole of D1, so it is heavier by what the tap takes
/// out: less than three tenths of it.
#[test]
fn a_blank_is_heavier_than_the_tapped_nut() {
    for kind in [Kind::HexNut, Kind::SquareNut, Kind::FlangeNut] {
        let nut = standard(kind, profile(), None).unwrap();
        let solid = |shape: &Shape| match &shape.solid {
            Solid::Nut(nut) => nut.volume(),
            other => panic!("{other:?}"),
        };
        let taken = solid(&nut.blank()) - solid(&nut);
        assert!(taken > 0.0);
        let more = nut.blank().mass() - nut.mass();
        assert!((more.g() - taken * 0.007_85).abs() < 1e-9, "{kind}: {more:?}");
        assert!(more < nut.mass() * 0.3, "{kind}: {more:?}");
    }
}
