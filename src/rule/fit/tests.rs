use super::*;
use crate::process::Process::{Electroplated, HotDip, Mechanical};
use crate::rule::{Part, rule};
use crate::thread::Designation;
use crate::thread::class::BoltPosition;
use crate::thread::pair::{Ordered, Search, Ways};

fn part(kind: Kind) -> Part {
    let thread = Designation::read("M16").unwrap().thread;
    Part { kind, ..Part::of_pair(thread, ToleranceClass::bolt(6, BoltPosition::G), None) }
}

/// What is asked of whoever makes the part, its mate or the hole.
#[test]
fn the_room_is_asked_of_whoever_makes_it() {
    use Kind::{HexBolt, HexNut, SocketScrew};
    let own = Room::Tapped(Allowance::Own(Length::from_mm(0.1)));
    let over = "over by 0.100 mm on the diameter";
    let tapped = |allowance| Room::Tapped(allowance);
    for (process, kind, room, words) in [
        (Electroplated, HexBolt, Room::Ordered, "bolt and nut go together as ordered"),
        (Electroplated, HexBolt, Room::NutG, "order the nut of class 6G"),
        (Electroplated, HexBolt, Room::Bolt(BoltPosition::E), "order the bolt of class 6e before the coat"),
        (
            Electroplated,
            HexNut,
            Room::Bolt(BoltPosition::E),
            "for bolts of class 6e before their coat: say so to whoever orders them",
        ),
        (
            Electroplated,
            HexBolt,
            Room::Smaller(Length::from_mm(0.1)),
            "agree with its maker the thread made smaller by 0.100 mm on the diameter before the coat",
        ),
        (
            Electroplated,
            HexNut,
            Room::Smaller(Length::from_mm(0.1)),
            "have the mating bolt made smaller by 0.100 mm on the diameter before its coat, or order the nut tapped \
             over by as much",
        ),
        (HotDip, HexBolt, own, &format!("agree with their maker nuts tapped {over}, tapped after dipping")),
        (
            Mechanical,
            HexBolt,
            own,
            &format!("agree with their maker nuts tapped {over}, before they are coated"),
        ),
        (HotDip, HexNut, own, &format!("agree with their maker nuts tapped {over}, tapped after dipping")),
        (HotDip, SocketScrew, own, &format!("agree with whoever makes it the hole tapped {over}")),
        (HotDip, HexNut, tapped(Allowance::Az), "dip the nut as a blank, then tap it over to 6AZ, marked Z"),
        (Mechanical, HexNut, tapped(Allowance::Az), "order the nut tapped over to 6AZ before it is coated"),
        (
            HotDip,
            HexBolt,
            tapped(Allowance::Ax),
            "order nuts tapped over to 6AX, marked X, tapped after dipping",
        ),
        (Mechanical, HexBolt, tapped(Allowance::Ax), "order nuts tapped over to 6AX before they are coated"),
        (HotDip, SocketScrew, tapped(Allowance::Az), "tap the hole over to 6AZ"),
        (
            HotDip,
            HexBolt,
            tapped(Allowance::A563),
            "order nuts tapped over by ASTM A563, tapped after dipping",
        ),
    ] {
        let part = part(kind);
        let case = Case { part: Some(&part), ..Case::of(process) };
        assert_eq!(room_in_words(&case, room).replace('\u{a0}', " "), words, "{process:?}, {kind:?}");
    }
}

/// M16 6g in a 6H nut under a coat of a kettle: no room for it (ISO 965-4 taps 6AZ nuts for it), and a thin one
/// goes in.
#[test]
fn a_coat_that_no_nut_takes_is_barred() {
    let part = part(Kind::HexBolt);
    let ordered = Ordered {
        thread: part.thread.unwrap(),
        bolt: ToleranceClass::bolt(6, BoltPosition::G),
        nut: None,
        own: None,
        length: None,
        is_spun: true,
        is_astm: false,
    };
    let said = |(min, max), ways| {
        let (min, max) = (Length::from_um(min), Length::from_um(max));
        let found = Search::new(ordered).narrowest(HotDip, min, max, ways);
        let case = Case { part: Some(&part), fit: Some(&found), ..Case::of(HotDip) };
        let ruling = rule(Key::Assembles).judge(&case).unwrap();
        (ruling.mark, ruling.brief(&case), ruling.text(&case).replace('\u{a0}', " "))
    };
    let (mark, brief, text) = said((40.0, 60.0), Ways::Ordered);
    assert_eq!((mark, brief.as_str()), (Mark::Bar, "no nut takes the coat"));
    assert!(text.starts_with("No nut takes this coat: there is room for "), "{text}");
    let (mark, brief, text) = said((1.0, 2.0), Ways::Ordered);
    assert_eq!((mark, brief.as_str()), (Mark::Met, ""), "{text}");
    let (mark, brief, text) = said((40.0, 60.0), Ways::Tapped);
    assert_eq!((mark, brief.as_str()), (Mark::Term, ""), "{text}");
}

/// A bolt cut under mates with no nut that is tapped over (ISO 965-5, clause 1); where no class of the nut was
/// written nothing is said.
#[test]
fn nuts_tapped_over_are_not_put_on_bolts_cut_under() {
    let says = |bolt: &str, nut: Option<&str>| {
        let class = |text| ToleranceClass::read(text).unwrap();
        let part = Part { bolt_class: Some(class(bolt)), nut_class: nut.map(class), ..part(Kind::HexBolt) };
        rule(Key::Mating).judge(&Case { part: Some(&part), ..Case::of(HotDip) }).map(|ruling| ruling.mark)
    };
    for (bolt, nut, mark) in [
        ("6az", Some("6AZ"), Some(Mark::Bar)),
        ("6az", Some("6AX"), Some(Mark::Bar)),
        ("6az", Some("6H"), Some(Mark::Met)),
        ("6az", None, None),
        ("6g", Some("6AZ"), None),
    ] {
        assert_eq!(says(bolt, nut), mark, "{bolt}, {nut:?}");
    }
}

/// The room that a class of nut makes by itself: ISO 965 taps 6G, 6AZ and 6AX wider than 6H.
#[test]
fn a_class_of_nut_is_a_room() {
    for (class, room) in [
        ("6H", Room::Ordered),
        ("6G", Room::NutG),
        ("6AZ", Room::Tapped(Allowance::Az)),
        ("6AX", Room::Tapped(Allowance::Ax)),
        ("7G", Room::Ordered),
    ] {
        assert_eq!(Room::of_nut(ToleranceClass::read(class).unwrap()), room, "{class}");
    }
}
