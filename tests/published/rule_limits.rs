//! Where a rule changes its mind: on its limit, and just beside it. Cases are put together by hand, without
//! an order line; the limits are those of the documents and of common practice that the rules name, and what
//! follows from them is computed by hand beside each row.

use kettle_barrel::coat::class;
use kettle_barrel::part::Kind;
use kettle_barrel::process::Process::{self, Electroplated, HotDip, Mechanical};
use kettle_barrel::quantity::{Length, Mass, Quantity, Temperature, Time, unit};
use kettle_barrel::rule::life::{as_wanted, at_most, between, in_words, most, rounded_up, years};
use kettle_barrel::rule::{self, Case, Choice, Cleaning, Key, Offer, Part, Site, SteelFacts};
use kettle_barrel::site::{Categories, Category, Surroundings};
use kettle_barrel::source::{Source, document};
use kettle_barrel::steel::{Grade, State, Steel};
use kettle_barrel::thread::Thread;
use kettle_barrel::working::Mark::{self, Bar, Condition, Met, NotJudged, Note};

fn thread(text: &str) -> Thread {
    crate::limit::thread(text)
}

fn part(kind: Kind, text: &str) -> Part {
    let thread = Some(thread(text));
    let bolt = Part::of_pair(self::thread("M16"), crate::limit::class("6g"), None);
    Part { kind, thread, bolt_class: None, ..bolt }
}

fn long(kind: Kind, text: &str, mm: f64) -> Part {
    Part { length: Some(Length::from_mm(mm)), ..part(kind, text) }
}

fn says(key: Key, case: &Case<'_>) -> Option<Mark> {
    rule::rule(key).judge(case).map(|ruling| ruling.mark)
}

/// What a rule says of a part in a process.
fn of(key: Key, process: Process, part: Part) -> Option<Mark> {
    says(key, &Case { part: Some(&part), diameter: part.thread.map(Thread::diameter), ..Case::of(process) })
}

/// Pieces up to about 1 lb go into a barrel; where the mass is not known it is that of a bar of steel,
/// π/4 · d² · 7.85 g/cm³, longer by the head.
#[test]
fn a_pound_goes_into_a_barrel() {
    let weighs = |grams: f64| {
        let heavy = Part { own_mass: Some(Mass::from_g(grams)), ..part(Kind::HexBolt, "M16") };
        of(Key::Heavy, Mechanical, heavy)
    };
    assert_eq!(weighs(453.592), Some(Met));
    assert_eq!(weighs(453.60), Some(Condition));
    // Kinds and sizes whose shape is in no table here. M24: 452.39 mm² · 0.00785 g/mm³ = 3.5513 g a millimetre,
    // so a pound is 127.7 mm of bar; 1 in: 506.71 mm², 3.9776 g a millimetre, 114.0 mm.
    for (kind, thread, met, heavy) in [
        // A hexagon is 1.9 · 24 = 45.6 mm of bar.
        (Kind::OtherBolt, "M24", 82.0, 83.0),
        // A cylinder head is 2.3 · 24 = 55.2 mm.
        (Kind::MachineScrew, "M24", 72.0, 73.0),
        // An eye and a bow are three times as long: 38.0 mm and 42.6 mm.
        (Kind::EyeBolt, "1-8 UNC", 38.0, 38.1),
        (Kind::UBolt, "M24", 42.0, 43.0),
    ] {
        assert_eq!(long(kind, thread, heavy).mass(), None, "{kind:?}");
        assert_eq!(of(Key::Heavy, Mechanical, long(kind, thread, met)), Some(Met), "{kind:?}");
        assert_eq!(of(Key::Heavy, Mechanical, long(kind, thread, heavy)), Some(Condition), "{kind:?}");
    }
    // A disc is 1.8 d of bar: a pound at d = 34.4 mm. A nut of no known length is 6 d: at 23.1 mm.
    for (kind, met, heavy) in [(Kind::OtherWasher, "M33", "M36"), (Kind::OtherNut, "M22", "M24")] {
        assert_eq!(of(Key::Heavy, Mechanical, part(kind, met)), Some(Met), "{kind:?}");
        assert_eq!(of(Key::Heavy, Mechanical, part(kind, heavy)), Some(Condition), "{kind:?}");
    }
    let nameless = Part { thread: None, ..part(Kind::Other, "M8") };
    assert_eq!(of(Key::Heavy, Mechanical, nameless), Some(Condition), "of another part nothing is known");
    assert_eq!(of(Key::Heavy, Mechanical, Part { kind: Kind::HexBolt, ..nameless }), None);
}

/// 26 in into a barrel, a rod of a metre at the most (common practice); 2 m into a kettle.
#[test]
fn what_is_long_is_asked_for() {
    let barrel = |kind, mm| of(Key::LongForBarrel, Mechanical, long(kind, "M12", mm));
    assert_eq!(barrel(Kind::HexBolt, 660.4), Some(Met));
    assert_eq!(barrel(Kind::HexBolt, 660.5), Some(Condition));
    assert_eq!(barrel(Kind::Rod, 1000.0), Some(Condition));
    assert_eq!(barrel(Kind::Rod, 1000.1), Some(Bar));
    assert_eq!(barrel(Kind::HexBolt, 1000.1), Some(Condition), "only a rod is barred");
    let kettle = |mm| of(Key::LongForKettle, HotDip, long(Kind::Rod, "M12", mm));
    assert_eq!(kettle(2000.0), Some(Met));
    assert_eq!(kettle(2000.1), Some(Condition));
}

/// ISO 10684, scope: coarse threads from M8; a pitch below 1.25 mm fills (common practice: an air ring wipes
/// rod from about M6).
#[test]
fn a_small_thread_stays_out_of_the_kettle() {
    for (kind, text, mark) in [
        (Kind::HexBolt, "M8", Met),
        (Kind::HexBolt, "M7", Bar),
        (Kind::HexBolt, "M6", Bar),
        (Kind::HexBolt, "M8x1", Bar),
        (Kind::HexBolt, "M10x1.25", Met),
        (Kind::HexBolt, "1/4-20 UNC", Met),
        (Kind::HexBolt, "1/4-28 UNF", Bar),
        (Kind::Rod, "M6", Condition),
        (Kind::Rod, "M5", Bar),
        (Kind::HexBolt, "3/8-24 UNF", Bar),
    ] {
        assert_eq!(of(Key::BelowM8, HotDip, part(kind, text)), Some(mark), "{kind:?} {text}");
    }
    for (text, mark) in [
        ("M16", Some(Met)),
        ("M8", Some(Met)),
        ("M16x1.5", Some(Condition)),
        ("M10x1.25", Some(Condition)),
        ("M8x1", None),
        ("M6", None),
        ("1/2-13 UNC", None),
    ] {
        assert_eq!(of(Key::FinePitch, HotDip, part(Kind::HexBolt, text)), mark, "{text}");
    }
    for (text, mark) in [("3/8-16 UNC", Some(Met)), ("5/16-18 UNC", Some(Condition)), ("M6", None)] {
        assert_eq!(of(Key::BelowThreeEighths, HotDip, part(Kind::HexBolt, text)), mark, "{text}");
    }
}

/// ISO 4042, Table 2 ends at a length of 15 diameters.
#[test]
fn the_thicknesses_of_iso_4042_end_at_fifteen_diameters() {
    let plated = |text, mm| of(Key::BeyondTable2, Electroplated, long(Kind::HexBolt, text, mm));
    assert_eq!(plated("M10", 150.0), None);
    assert_eq!(plated("M10", 150.1), Some(Condition));
    assert_eq!(plated("3/8-16 UNC", 500.0), None, "an inch thread is not of that table");
    assert_eq!(of(Key::BeyondTable2, Electroplated, part(Kind::HexBolt, "M10")), None);
}

/// A part of no said size: what has a mate asks for its thread, and the kettle for any size.
#[test]
fn a_size_is_asked_for_where_it_decides() {
    let sizeless = |kind| Part { thread: None, ..part(kind, "M8") };
    for (process, kind, mark) in [
        (HotDip, Kind::Washer, NotJudged),
        (Mechanical, Kind::Washer, Met),
        (Electroplated, Kind::RetainingRing, Met),
        (Mechanical, Kind::HexBolt, NotJudged),
        (Electroplated, Kind::HexNut, NotJudged),
    ] {
        assert_eq!(of(Key::SizeNotSaid, process, sizeless(kind)), Some(mark), "{process:?} {kind:?}");
    }
    assert_eq!(of(Key::SizeNotSaid, HotDip, part(Kind::HexBolt, "M8")), None);
}

fn offer(min: f64, max: f64) -> Offer {
    Offer {
        class: &class::of(&document::ASTM_B695)[0],
        min: Length::from_um(min),
        max: Length::from_um(max),
        max_source: source(),
        choice: Choice::ForYears,
    }
}

fn source() -> Source {
    document::ARITHMETIC.computed("by hand")
}

/// A place in air that is not hot.
fn in_air(place: Option<Categories>, wanted: Option<f64>) -> Site {
    let wanted = wanted.map(Time::from_year);
    Site { surroundings: Surroundings::OpenAir, place, heat: None, wanted, most: None }
}

fn stands(process: Process, key: Key, coat: (f64, f64), place: &str, wanted: Option<f64>) -> Option<Mark> {
    let offer = offer(coat.0, coat.1);
    let site = in_air(Categories::read(place), wanted);
    says(key, &Case { offer: Some(&offer), site: Some(&site), ..Case::of(process) })
}

/// ISO 9223, Table 2 gives C3 a loss of 0.7 to 2.1 µm a year, and ISO 14713-1 counts in a straight line: 42 µm
/// last 20 years at the greatest loss, and 63 µm last 90 at the least.
#[test]
fn years_are_sure_at_the_greatest_loss() {
    let lasts = |wanted| stands(HotDip, Key::Lasts, (42.0, 63.0), "C3", Some(wanted));
    assert_eq!(lasts(19.99), Some(Met));
    assert_eq!(lasts(20.01), Some(Condition));
    assert_eq!(lasts(89.99), Some(Condition));
    assert_eq!(lasts(90.01), Some(Bar));
    assert_eq!(stands(HotDip, Key::Lasts, (42.0, 63.0), "C3", None), None);
    // C5 takes 4.2 to 8.4 µm a year: 25.2 µm are three years.
    let short = |um| stands(HotDip, Key::ThinOutdoors, (um, 40.0), "C5", None);
    assert_eq!(short(25.21), Some(Met));
    assert_eq!(short(25.19), Some(Condition));
    assert_eq!(stands(HotDip, Key::ThinOutdoors, (1.0, 2.0), "C5", Some(1.0)), None);
}

/// A plated coat where no years are wanted: common practice.
#[test]
fn a_thin_coat_is_accepted_to_c3() {
    for (place, mark) in [
        ("C1", Met),
        ("C2", Met),
        ("C3", Condition),
        ("C2-C3", Condition),
        ("C3-C4", Condition),
        ("C4", Bar),
        ("C4-C5", Bar),
    ] {
        let says = stands(Electroplated, Key::ThinOutdoors, (8.0, 8.0), place, None);
        assert_eq!(says, Some(mark), "{place}");
    }
    let placeless = |process, wanted: Option<f64>| {
        let site = in_air(None, wanted);
        says(Key::PlaceNotSaid, &Case { site: Some(&site), ..Case::of(process) })
    };
    assert_eq!(placeless(HotDip, None), Some(Met));
    assert_eq!(placeless(HotDip, Some(5.0)), Some(NotJudged));
    assert_eq!(placeless(Electroplated, None), Some(NotJudged));
}

/// ISO 9223 is of places in air: elsewhere the document of the place is read, and nobody asks for a category.
/// Plate is no coat for water, soil and wood that attacks zinc: common practice.
#[test]
fn outside_air_no_years_are_judged() {
    for (surroundings, plate) in [
        (Surroundings::Soil, Bar),
        (Surroundings::Water, Bar),
        (Surroundings::AcidWood, Bar),
        (Surroundings::Concrete, NotJudged),
    ] {
        let site = Site { surroundings, ..in_air(None, Some(5.0)) };
        for (process, mark) in [(HotDip, NotJudged), (Mechanical, NotJudged), (Electroplated, plate)] {
            let case = Case { site: Some(&site), ..Case::of(process) };
            assert_eq!(says(Key::NotInAir, &case), Some(mark), "{process:?} {surroundings:?}");
            assert_eq!(says(Key::PlaceNotSaid, &case), None);
        }
    }
    for surroundings in [Surroundings::OpenAir, Surroundings::Indoors, Surroundings::OtherMetal] {
        let site = Site { surroundings, ..in_air(None, None) };
        assert_eq!(says(Key::NotInAir, &Case { site: Some(&site), ..Case::of(HotDip) }), None);
    }
}

/// PD 6484: zinc that touches another metal is used up for it where both get wet. The place has its category all the
/// same; in a room that stays dry no current flows (common practice).
#[test]
fn contact_with_another_metal_is_a_condition_in_air() {
    for (place, mark) in
        [(None, Condition), (Some("C3"), Condition), (Some("C1-C2"), Condition), (Some("C1"), Note)]
    {
        let place = place.and_then(Categories::read);
        let site = Site { surroundings: Surroundings::OtherMetal, ..in_air(place, Some(5.0)) };
        for process in Process::ALL {
            let case = Case { site: Some(&site), ..Case::of(process) };
            assert_eq!(says(Key::OtherMetal, &case), Some(mark), "{process:?} {place:?}");
            let is_asked = place.is_none().then_some(NotJudged);
            assert_eq!(says(Key::PlaceNotSaid, &case), is_asked, "{process:?} {place:?}");
        }
    }
    // The galvanizing associations: copper and its alloys take zinc fast, aluminium is normally satisfactory, and beside
    // other metals the areas decide.
    for (surroundings, marks) in [
        (Surroundings::Copper, [Condition, Condition, Note]),
        (Surroundings::Stainless, [Condition, Condition, Note]),
        (Surroundings::Aluminium, [Note, Note, Note]),
    ] {
        for (place, mark) in [None, Some("C5"), Some("C1")].into_iter().zip(marks) {
            let place = place.and_then(Categories::read);
            let site = Site { surroundings, ..in_air(place, None) };
            let case = Case { site: Some(&site), ..Case::of(Mechanical) };
            assert_eq!(says(Key::OtherMetal, &case), Some(mark), "{surroundings:?} {place:?}");
            assert_eq!(says(Key::NotInAir, &case), None, "{surroundings:?}");
        }
    }
    let alone = in_air(None, None);
    assert_eq!(says(Key::OtherMetal, &Case { site: Some(&alone), ..Case::of(HotDip) }), None);
}

/// The galvanizing associations: 200 °C for good, 275 °C at times.
#[test]
fn zinc_bears_a_heat_for_good_and_a_greater_one_at_times() {
    for (celsius, mark) in [(-40.0, Met), (200.0, Met), (200.1, Condition), (275.0, Condition), (275.1, Bar)]
    {
        let site = Site { heat: Some(Temperature::from_celsius(celsius)), ..in_air(None, None) };
        for process in Process::ALL {
            let case = Case { site: Some(&site), ..Case::of(process) };
            assert_eq!(says(Key::HotPlace, &case), Some(mark), "{celsius}");
        }
    }
    let site = in_air(None, None);
    assert_eq!(says(Key::HotPlace, &Case { site: Some(&site), ..Case::of(HotDip) }), None);
}

/// ISO 898-1:2013, scope: its bolts are used from −50 to +150 °C, and outside that an expert is asked; bolts of other
/// documents alike, by common practice. A193 and A194 are made for heat, and a washer carries nothing by its thread.
#[test]
fn the_steel_of_a_bolt_is_chosen_for_heat_and_for_cold() {
    for (grade, kind, celsius, mark) in [
        (Grade::Class8_8, Kind::HexBolt, -50.1, Some(Condition)),
        (Grade::Class8_8, Kind::HexBolt, -50.0, Some(Met)),
        (Grade::Class8_8, Kind::HexBolt, 150.0, Some(Met)),
        (Grade::Class8_8, Kind::HexBolt, 150.1, Some(Condition)),
        (Grade::J429Grade5, Kind::HexBolt, 180.0, Some(Condition)),
        (Grade::Nut8, Kind::HexNut, 180.0, Some(Condition)),
        (Grade::A193B7, Kind::Stud, 400.0, Some(Met)),
        (Grade::A193B7, Kind::Stud, -60.0, Some(Condition)),
        (Grade::A194Grade2H, Kind::HeavyHexNut, 400.0, Some(Met)),
        (Grade::F436, Kind::Washer, 180.0, None),
    ] {
        let steel = Steel::grade(grade, Length::from_mm(16.0)).unwrap();
        let steel = SteelFacts::new(State::of(steel), Cleaning::Acid);
        let part = part(kind, "M16");
        let site = Site { heat: Some(Temperature::from_celsius(celsius)), ..in_air(None, None) };
        let case = Case { site: Some(&site), part: Some(&part), steel: Some(&steel), ..Case::of(HotDip) };
        assert_eq!(says(Key::SteelInService, &case), mark, "{grade:?} {celsius}");
    }
}

/// Years are cut to a tenth below twenty, and to whole ones from there; the most are rounded.
#[test]
fn years_are_shown_as_they_may_be_promised() {
    let year = Time::from_year;
    let text = |text: String| text.replace('\u{a0}', " ");
    for (sure, shown) in [
        (11.99, "11.9 years"),
        (12.0, "12 years"),
        (19.99, "19.9 years"),
        (20.9, "20 years"),
        (0.3, "0.3 years"),
    ] {
        assert_eq!(text(years(year(sure)).to_string()), shown, "{sure}");
    }
    assert_eq!(text(in_words(year(100.0))), "100 years");
    assert_eq!(text(in_words(year(100.1))), "over 100 years");
    assert_eq!(text(at_most(year(100.0), None)), "100 years");
    assert_eq!(text(at_most(year(100.1), None)), "over 100 years");
    for (at_best, wanted, shown) in [
        (8.57, None, "8.6 years"),
        (9.96, None, "10.0 years"),
        (10.4, None, "10 years"),
        // Beside the years wanted, as many digits as tell them apart.
        (11.96, Some(12.0), "11.96 years"),
        (11.6, Some(12.0), "11.6 years"),
        (12.4, Some(12.0), "12 years"),
        (12.0, Some(12.0), "12 years"),
    ] {
        assert_eq!(text(most(year(at_best), wanted.map(year)).to_string()), shown, "{at_best} of {wanted:?}");
    }
    for (wanted, shown) in [(15.0, "15 years"), (12.5, "12.5 years"), (7.25, "7.25 years")] {
        assert_eq!(text(as_wanted(year(wanted)).to_string()), shown);
    }
    let um = |um: f64, decimals| text(rounded_up(Length::from_um(um).show(&unit::UM, decimals)).to_string());
    assert_eq!((um(42.0, 0), um(42.01, 0), um(41.2, 1)), ("42 µm".into(), "43 µm".into(), "41.2 µm".into()));
    for (min, max, shown) in [
        (9.5, Some(28.4), "9.5 to 28 years"),
        (9.5, None, "9.5 years or more"),
        (9.5, Some(130.0), "9.5 to over 100 years"),
        (101.0, Some(130.0), "over 100 years"),
        (101.0, None, "over 100 years"),
    ] {
        assert_eq!(text(between(year(min), max.map(year), None)), shown);
    }
    assert_eq!(Categories::read("C3").unwrap().harshest, Category::C3);
}
