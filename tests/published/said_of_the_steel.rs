//! What an order says of a steel without naming all of it: the least hardness alone, what was done after hardening,
//! a washer whose steel nobody names.

use kettle_barrel::process::Process::{self, Electroplated, HotDip, Mechanical};
use kettle_barrel::quantity::{Hardness, Scale, Stress};
use kettle_barrel::rule::{self, Case, Cleaning, Key, Part, SteelFacts};
use kettle_barrel::steel::{Grade, State, Steel, Worked};
use kettle_barrel::working::Mark::{self, Condition, Met, NotJudged, Term};

fn says(key: Key, process: Process, state: State, part: &Part) -> Option<Mark> {
    let steel = SteelFacts::new(state, Cleaning::Acid);
    let case = Case { steel: Some(&steel), part: Some(part), ..Case::of(process) };
    rule::rule(key).judge(&case).map(|ruling| ruling.mark)
}

fn bolt() -> Part {
    Part::of_pair(crate::limit::thread("M16"), crate::limit::class("6g"), None)
}

/// ASTM F2329, 7.2.2 sees a risk from a specified minimum of 33 HRC. Above 39 HRC nothing is hot-dipped, above 45 HRC
/// a test is agreed in the barrel (common practice), and above 45 HRC nothing is electroplated (ISO 2081): a greatest
/// hardness adds nothing to what is asked there.
#[test]
fn the_greatest_hardness_is_asked_where_it_can_ask_for_more() {
    let least = |process, hrc: f64| {
        let part = Part { is_steel_least: true, ..bolt() };
        says(Key::GreatestNotSaid, process, State::of(Steel::Hardness(Hardness::hrc(hrc))), &part)
    };
    for process in Process::ALL {
        assert_eq!(least(process, 32.9), Some(Met), "{process:?}");
        assert_eq!(least(process, 33.0), Some(NotJudged), "{process:?}");
        assert_eq!(least(process, 39.0), Some(NotJudged), "{process:?}");
        assert_eq!(least(process, 45.1), None, "{process:?}");
    }
    assert_eq!(least(HotDip, 39.1), None);
    assert_eq!([Mechanical, Electroplated].map(|process| least(process, 45.0)), [Some(NotJudged); 2]);
    // A greatest hardness that is said asks nothing.
    let greatest = State::of(Steel::Hardness(Hardness::hrc(38.0)));
    assert_eq!(says(Key::GreatestNotSaid, Electroplated, greatest, &bolt()), None);
    let strong = State::of(Steel::Tensile(Stress::from_mpa(1200.0)));
    let part = Part { is_steel_least: true, ..bolt() };
    assert_eq!(says(Key::GreatestNotSaid, Electroplated, strong, &part), Some(NotJudged));
}

/// Why nothing is asked below 33 HRC: no bolt of a grade whose least is lower is harder than 39 HRC, in any size that
/// its document prints in Rockwell C.
#[test]
fn no_grade_from_below_33_hrc_ends_above_39() {
    let mut seen = 0;
    for grade in Grade::ALL.iter().filter(|grade| !grade.is_nut() && !grade.is_washer()) {
        for limits in grade.sizes().filter_map(|size| size.limits(Scale::Hrc)) {
            let (Some(min), Some(max)) = (limits.min, limits.max) else { continue };
            if min.number < 33.0 {
                seen += 1;
                assert!(max.number <= 39.0, "{}: {} to {}", grade.name(), min.number, max.number);
            }
        }
    }
    assert!(seen >= 8, "only {seen} sizes of grades");
}

/// ASTM B633 and B695 relieve above 1000 MPa what was machined, ground or formed cold; before any other plate it is
/// common practice, and no document known here asks it of the kettle.
#[test]
fn stress_is_relieved_before_any_plate() {
    let of = |key, process, mpa: f64, worked| {
        let state = State { worked, ..State::of(Steel::Tensile(Stress::from_mpa(mpa))) };
        says(key, process, state, &bolt())
    };
    for worked in [Worked::Machined, Worked::Formed] {
        for (key, process) in [(Key::PracticeRelief, Electroplated), (Key::B695Relief, Mechanical)] {
            assert_eq!(of(key, process, 1000.0, worked), Some(Met), "{key:?}");
            assert_eq!(of(key, process, 1001.0, worked), Some(Term), "{key:?}");
        }
    }
    assert_eq!(of(Key::PracticeRelief, Electroplated, 1200.0, Worked::No), None);
    let relieves = |process| {
        let keys = [Key::PracticeRelief, Key::B849Relief, Key::B633Relief, Key::B695Relief];
        keys.into_iter().filter(|key| rule::rule(*key).process == Some(process)).count()
    };
    assert_eq!([HotDip, Mechanical, Electroplated].map(relieves), [0, 1, 3]);
}

/// F436 washers go up to 45 HRC: named, they are tested and baked where they are plated; proposed here, they are
/// ordered no harder than what is plated as a matter of course (common practice).
#[test]
fn a_proposed_washer_asks_for_no_bake() {
    let state = State::of(Steel::of(Grade::F436, None).unwrap());
    let named = bolt();
    let proposed = Part { is_steel_proposed: true, ..bolt() };
    let of = |key, part| says(key, Electroplated, state, part);
    assert_eq!(of(Key::PracticeElectroplated, &named), Some(Condition));
    assert_eq!(of(Key::PracticeElectroplated, &proposed), Some(Term));
    for key in [Key::F1941Bake, Key::F1941Cleaning, Key::Iso4042Bake, Key::B850Bake, Key::B633Bake] {
        assert_eq!(of(key, &named), Some(Term), "{key:?}");
        assert_eq!(of(key, &proposed), None, "{key:?}");
    }
}
