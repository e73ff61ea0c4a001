use super::*;
use crate::quantity::Time;
use crate::rule::{Case, Cleaning, SteelFacts, judge_topic};
use crate::steel::tempering::{Dip, Temper};
use crate::steel::{State, Steel};

fn worst(grade: Grade, mm: f64, bath: Temperature, minutes: f64) -> Mark {
    let diameter = Length::from_mm(mm);
    let state = State::of(Steel::grade(grade, diameter).unwrap());
    let dip = Dip { grade: state.grade(), temper: None, bath, time: Time::from_minute(minutes) };
    let (steel, heat) = (SteelFacts::new(state, Cleaning::Acid), tempering::effect(&dip));
    let case = Case { heat: Some(&heat), diameter: Some(diameter), ..steel.alone(HotDip) };
    judge_topic(&case, Topic::Heat).map(|ruling| ruling.mark).max().unwrap()
}

#[test]
fn the_verdict_of_a_usual_bath() {
    let usual = Temperature::from_fahrenheit(860.0);
    let cases = [
        (Grade::A193B7, 20.0, Mark::Met),
        (Grade::Class10_9, 20.0, Mark::Condition),
        (Grade::Class8_8, 20.0, Mark::Term),
        (Grade::A325, 20.0, Mark::Term),
        (Grade::A194Grade2H, 20.0, Mark::Term),
        (Grade::A574, 10.0, Mark::Bar),
        (Grade::J429Grade8_2, 20.0, Mark::Bar),
        (Grade::Class4_6, 20.0, Mark::Note),
    ];
    for (grade, mm, mark) in cases {
        assert_eq!(worst(grade, mm, usual, 5.0), mark, "{}", grade.name());
    }
}

#[test]
fn high_temperature_and_the_zone_between() {
    let at = |celsius, mm| worst(Grade::Class10_9, mm, Temperature::from_celsius(celsius), 3.0);
    assert_eq!(at(480.0, 30.0), Mark::Condition);
    assert_eq!(at(500.0, 30.0), Mark::Bar);
    assert_eq!(at(530.0, 24.0), Mark::Condition);
    for celsius in [530.0, 545.0, 560.0] {
        assert_eq!(at(celsius, 27.0), Mark::Bar);
    }
    assert_eq!(at(561.0, 24.0), Mark::Bar);
}

/// Nuts and bolts of the same least temper meet the same severity, in every bath.
#[test]
fn one_temper_has_one_severity() {
    let at = |grade, celsius| worst(grade, 20.0, Temperature::from_celsius(celsius), 3.0);
    for celsius in [530.0, 545.0, 560.0] {
        let bolt = at(Grade::A325, celsius);
        assert_eq!(bolt, Mark::Condition);
        for grade in [
            Grade::A449,
            Grade::J429Grade5,
            Grade::Class8_8,
            Grade::A563Dh,
            Grade::A194Grade2H,
            Grade::J995Grade8,
        ] {
            assert_eq!(at(grade, celsius), bolt, "{} at {celsius} °C", grade.name());
        }
    }
}

#[test]
fn an_actual_temper_decides() {
    let stands = |celsius, hours, bath| {
        let temper = Temper::actual(Temperature::from_celsius(celsius), Time::from_minute(hours));
        let dip = Dip {
            grade: Grade::J429Grade8.any_size(),
            temper: Some(temper),
            bath: Temperature::from_celsius(bath),
            time: Time::from_minute(4.0),
        };
        stands(&tempering::effect(&dip).unwrap())
    };
    assert_eq!(stands(480.0, 60.0, 455.0), Heat::Below);
    assert_eq!(stands(400.0, 60.0, 455.0), Heat::Stronger);
    // A temper of a minute is outdone by a longer dip in a cooler bath.
    assert_eq!(stands(460.0, 1.0, 455.0), Heat::Stronger);
}

/// What a rule says of a dip of M16 at 460 °C or as told: its mark, and all of its words.
fn said(key: Key, grade: Grade, temper: Option<(f64, f64)>, bath: f64, minutes: f64) -> (Mark, String) {
    let diameter = Length::from_mm(16.0);
    let state = State::of(Steel::grade(grade, diameter).unwrap());
    let temper = temper.map(|(celsius, minutes)| {
        Temper::actual(Temperature::from_celsius(celsius), Time::from_minute(minutes))
    });
    let bath = Temperature::from_celsius(bath);
    let dip = Dip { grade: state.grade(), temper, bath, time: Time::from_minute(minutes) };
    let (steel, heat) = (SteelFacts::new(state, Cleaning::Acid), tempering::effect(&dip));
    let case = Case { heat: Some(&heat), dip: Some(&dip), diameter: Some(diameter), ..steel.alone(HotDip) };
    let ruling = crate::rule::rule(key).judge(&case).unwrap_or_else(|| panic!("{}", grade.name()));
    (ruling.mark, ruling.text(&case).replace('\u{a0}', " "))
}

/// By hand: (460 + 273.15) K · (20 + log10(5/60)) / 20 = 693.6 K, 420 °C for one hour. Class 8.8 is tempered
/// from 425 °C, 10.9 from 425 °C (ISO 898-1), B7 from 593 °C (ASTM A193).
#[test]
fn a_dip_is_told_beside_the_temper() {
    for (grade, temper, bath, minutes, mark, words) in [
        (
            Grade::Class8_8,
            None,
            460.0,
            5.0,
            Mark::Term,
            "5 min at 460 °C is like one hour at 420 °C, no stronger than the least temper of the standard (425 °C for 1 h), and the grade is dipped every day: the retest after dipping is the maker's",
        ),
        // Ten minutes are stronger, and as daily.
        (
            Grade::Class8_8,
            None,
            460.0,
            10.0,
            Mark::Term,
            "and the grade is dipped every day: the retest after dipping is the maker's",
        ),
        (
            Grade::A193B7,
            None,
            460.0,
            5.0,
            Mark::Met,
            "The bath stays below the least temper of the standard (593 °C for 1 h): no mechanical test has to be repeated",
        ),
        (
            Grade::Class4_6,
            None,
            460.0,
            5.0,
            Mark::Note,
            "This steel is not tempered, so the bath has no temper to take: its standard still has to be met after galvanizing",
        ),
        (
            Grade::Class10_9,
            Some((600.0, 90.0)),
            460.0,
            5.0,
            Mark::Met,
            "The bath stays below the actual temper (600 °C for 1.5 h): no mechanical test has to be repeated",
        ),
        // As hot as the temper is not below it.
        (
            Grade::Class10_9,
            Some((460.0, 60.0)),
            460.0,
            5.0,
            Mark::Condition,
            "no stronger than the actual temper (460 °C for 1 h): verify hardness and proof load after galvanizing",
        ),
        (
            Grade::Class10_9,
            None,
            460.0,
            5.0,
            Mark::Condition,
            "no stronger than the least temper of the standard (425 °C for 1 h): get the actual temper from the maker, or verify hardness and proof load after galvanizing",
        ),
        // A temper of fifty minutes is not told in tenths of an hour.
        (
            Grade::Class10_9,
            Some((430.0, 50.0)),
            460.0,
            5.0,
            Mark::Condition,
            "no stronger than the actual temper (430 °C for 50 min)",
        ),
        (Grade::A574, None, 460.0, 5.0, Mark::Bar, "stronger than the least temper of the standard"),
        (
            Grade::A574,
            None,
            460.0,
            5.0,
            Mark::Bar,
            ": the bath takes the temper away; a higher actual temper can change this",
        ),
        (
            Grade::A574,
            Some((400.0, 60.0)),
            460.0,
            5.0,
            Mark::Bar,
            "stronger than the actual temper (400 °C for 1 h): the bath takes the temper away",
        ),
        // A washer that carries no tension may be dipped if its hardness is proved; a spring may not.
        (
            Grade::F436,
            Some((300.0, 60.0)),
            460.0,
            5.0,
            Mark::Condition,
            "verify hardness and proof load after galvanizing",
        ),
        (Grade::Din127, Some((300.0, 60.0)), 460.0, 5.0, Mark::Bar, "the bath takes the temper away"),
        (Grade::Nut8, Some((300.0, 60.0)), 460.0, 5.0, Mark::Condition, "stronger than the actual temper"),
    ] {
        let (said, text) = said(Key::Temper, grade, temper, bath, minutes);
        assert_eq!(said, mark, "{}: {text}", grade.name());
        assert!(text.contains(words), "{}: {text}", grade.name());
    }
}

/// Below the least of its standard it is not that steel: at the least itself it is.
#[test]
fn a_temper_below_the_least_of_the_standard_is_told() {
    for (celsius, below) in [(400.0, true), (424.0, true), (424.4, true), (425.0, false), (430.0, false)] {
        let (mark, text) = said(Key::Temper, Grade::Class8_8, Some((celsius, 60.0)), 455.0, 3.0);
        let told = text.contains("which is below the 425 °C that is the least of class 8.8");
        assert_eq!(told, below, "{celsius}: {text}");
        assert_eq!(mark, if celsius == 400.0 { Mark::Bar } else { Mark::Condition }, "{celsius}: {text}");
    }
}

/// ISO 10684 has its normal bath from 455 °C; a galvanizing text calls baths from 445 °C usual.
#[test]
fn a_cool_bath_is_told_as_what_it_is() {
    for (bath, mark, words) in [
        (440.0, Mark::Note, "below the 445 °C that baths are usual from"),
        (444.0, Mark::Note, "below the 445 °C that baths are usual from"),
        (445.0, Mark::Note, "; baths from 445 °C are usual"),
        (450.0, Mark::Note, "; baths from 445 °C are usual"),
        (455.0, Mark::Met, "normal bath by ISO 10684"),
        (500.0, Mark::Bar, "no standard has a bath"),
        (540.0, Mark::Note, "in a ceramic kettle: a thin, smooth, dull coat"),
        (570.0, Mark::Bar, "which ends at 560 °C"),
    ] {
        let (said, text) = said(Key::Bath, Grade::A193B7, None, bath, 3.0);
        assert_eq!(said, mark, "{bath}: {text}");
        assert!(text.contains(words), "{bath}: {text}");
    }
}

/// Whose temper no document gives: nuts and flat washers, by their grade or by their kind, are dipped every day;
/// springs and bolts are asked for it.
#[test]
fn an_unknown_temper_is_asked_for_where_it_carries() {
    let says = |grade: Option<Grade>, kind: Option<crate::part::Kind>| {
        let hard = Steel::Hardness(crate::quantity::Hardness::hrc(35.0));
        let steel = grade.map_or(hard, |grade| Steel::grade(grade, Length::from_mm(16.0)).unwrap());
        let state = State::of(steel);
        let (bath, time) = (Temperature::from_celsius(455.0), Time::from_minute(3.0));
        let dip = Dip { grade: state.grade(), temper: None, bath, time };
        let (steel, heat) = (SteelFacts::new(state, Cleaning::Acid), tempering::effect(&dip));
        assert!(heat.is_err(), "{grade:?}");
        let thread = crate::thread::Designation::read("M16").unwrap().thread;
        let class = crate::thread::ToleranceClass::read("6g").unwrap();
        let part =
            kind.map(|kind| crate::rule::Part { kind, ..crate::rule::Part::of_pair(thread, class, None) });
        let case = Case { heat: Some(&heat), part: part.as_ref(), ..steel.alone(HotDip) };
        crate::rule::rule(Key::TemperUnknown).judge(&case).unwrap().mark
    };
    use crate::part::Kind;
    for (grade, kind, mark) in [
        (None, None, Mark::Condition),
        (None, Some(Kind::HexBolt), Mark::Condition),
        (None, Some(Kind::HexNut), Mark::Note),
        (None, Some(Kind::Washer), Mark::Note),
        (None, Some(Kind::SpringWasher), Mark::Condition),
        (Some(Grade::F436), None, Mark::Note),
        (Some(Grade::Nut10), None, Mark::Note),
        (Some(Grade::Din127), None, Mark::Condition),
        (Some(Grade::Din127), Some(Kind::SpringWasher), Mark::Condition),
    ] {
        assert_eq!(says(grade, kind), mark, "{grade:?}, {kind:?}");
    }
}
