//! What must hold for every steel and every dip.

use kettle_barrel::coat::Process;
use kettle_barrel::quantity::{Hardness, Length, Scale, Stress, Temperature, Time};
use kettle_barrel::rule::{self, Case, Cleaning, Key, SteelFacts};
use kettle_barrel::steel::tempering::{self, Dip, Temper};
use kettle_barrel::steel::{Grade, Measure, Properties, State, Steel, Worked, bake, hardness};
use kettle_barrel::working::Mark;
use proptest::prelude::*;

fn cleaning() -> impl Strategy<Value = Cleaning> {
    prop::sample::select(vec![
        Cleaning::Acid,
        Cleaning::InhibitedAcid,
        Cleaning::Alkaline,
        Cleaning::Mechanical,
    ])
}

fn scale() -> impl Strategy<Value = (Scale, f64, f64)> {
    prop::sample::select(vec![
        (Scale::Hrc, 20.0, 68.0),
        (Scale::Hv, 80.0, 940.0),
        (Scale::Hb, 76.0, 615.0),
        (Scale::Hrb, 55.0, 100.0),
    ])
}

fn limits_passed(state: State, cleaning: Cleaning) -> Vec<Key> {
    let steel = SteelFacts::new(state, cleaning);
    let passed = Process::ALL.into_iter().flat_map(|process| {
        let case = steel.alone(process);
        let rulings: Vec<_> = rule::judge(&case).collect();
        rulings
            .into_iter()
            .filter(move |ruling| ruling.rule.compared(&case).is_some_and(|compared| compared.passed))
            .map(|ruling| ruling.rule.key)
            .collect::<Vec<_>>()
    });
    passed.collect()
}

fn worst(state: State, cleaning: Cleaning, process: Process) -> Mark {
    let steel = SteelFacts::new(state, cleaning);
    rule::judge(&steel.alone(process)).map(|ruling| ruling.mark).max().unwrap_or(Mark::Met)
}

/// A harder steel passes every limit the softer one passes, and no process gets better.
fn harder_is_never_better(soft: State, hard: State, cleaning: Cleaning) {
    let after = limits_passed(hard, cleaning);
    for key in limits_passed(soft, cleaning) {
        assert!(after.contains(&key), "{key:?} is passed at {soft:?} and not at {hard:?}");
    }
    for process in Process::ALL {
        let of = |state| worst(state, cleaning, process);
        assert!(of(soft) <= of(hard), "{process} gets better from {soft:?} to {hard:?}");
    }
}

proptest! {
    #[test]
    fn a_harder_steel_never_meets_more_rules(
        (scale, min, max) in scale(), one in 0.0..=1.0, other in 0.0..=1.0, cleaning in cleaning(),
        case_hardened: bool, cold_worked: bool,
    ) {
        let state = |share: f64| State {
            steel: Steel::Hardness(Hardness { scale, number: min + (max - min) * share }),
            case_hardened,
            worked: if cold_worked { Worked::Formed } else { Worked::No },
        };
        harder_is_never_better(state(f64::min(one, other)), state(f64::max(one, other)), cleaning);
    }

    #[test]
    fn a_stronger_steel_never_meets_more_rules(one in 255.0..=2180.0, other in 255.0..=2180.0, cleaning in cleaning()) {
        let state = |mpa| State::of(Steel::Tensile(Stress::from_mpa(mpa)));
        harder_is_never_better(state(f64::min(one, other)), state(f64::max(one, other)), cleaning);
    }

    #[test]
    fn a_harder_steel_is_never_baked_shorter(one in 20.0..=51.0, other in 20.0..=51.0) {
        let hours = |hrc| {
            let bake = bake::by_b850(&State::of(Steel::Hardness(Hardness::hrc(hrc)))).unwrap();
            bake.map_or(0.0, |bake| bake.row.hours.hour())
        };
        prop_assert!(hours(f64::min(one, other)) <= hours(f64::max(one, other)));
    }

    #[test]
    fn a_hotter_or_longer_dip_never_has_a_larger_margin(
        temper in 300.0..=700.0, hours in 0.1..=10.0,
        bath in 420.0..=600.0, hotter in 0.0..=100.0, minutes in 0.1..=30.0, longer in 0.0..=30.0,
    ) {
        let dip = |bath, minutes| {
            let case = Dip {
                grade: None,
                temper: Some(Temper::actual(Temperature::from_celsius(temper), Time::from_hour(hours))),
                bath: Temperature::from_celsius(bath),
                time: Time::from_minute(minutes),
            };
            let effect = tempering::effect(&case).unwrap();
            let heat = Ok(effect);
            let case = Case { heat: Some(&heat), ..Case::of(Process::HotDip) };
            let temper = rule::rule(Key::Temper).judge(&case).unwrap();
            (effect.temper.unwrap(), temper.mark)
        };
        let (before, standing) = dip(bath, minutes);
        for (bath, minutes) in [(bath + hotter, minutes), (bath, minutes + longer), (bath + hotter, minutes + longer)] {
            let (after, worse) = dip(bath, minutes);
            prop_assert!(after.margin.kelvin() <= before.margin.kelvin());
            prop_assert!(after.one_hour_margin.kelvin() <= before.one_hour_margin.kelvin() + 1e-9);
            prop_assert!(after.hottest_bath.celsius() <= before.hottest_bath.celsius() + 1e-9);
            prop_assert!(worse >= standing, "{standing:?} became {worse:?}");
        }
    }

    /// The dip in the hottest bath named is as strong as the temper, and no stronger.
    #[test]
    fn the_hottest_bath_is_the_edge(temper in 300.0..=700.0, hours in 0.1..=10.0, minutes in 0.1..=30.0) {
        let temper = Temper::actual(Temperature::from_celsius(temper), Time::from_hour(hours));
        let mut case = Dip {
            grade: None,
            temper: Some(temper),
            bath: Temperature::from_celsius(450.0),
            time: Time::from_minute(minutes),
        };
        let edge = tempering::effect(&case).unwrap().temper.unwrap().hottest_bath;
        case.bath = edge;
        let at_edge = tempering::effect(&case).unwrap().temper.unwrap();
        prop_assert!(at_edge.one_hour_margin.kelvin().abs() < 1e-6);
    }

    #[test]
    fn a_conversion_and_back_is_where_it_began((scale, min, max) in scale(), share in 0.0..=1.0, to in scale()) {
        let number = min + (max - min) * share;
        if let Ok(there) = hardness::convert(Hardness { scale, number }, to.0) {
            let back = match there.to {
                hardness::Level::Hardness(there) => hardness::convert(there, scale),
                hardness::Level::Tensile(_) => unreachable!("a hardness was asked for"),
            };
            // Where two tables meet the way back may go by the other; elsewhere it is the same line.
            let back = back.map_or(number, |back| back.to.number());
            prop_assert!((back - number).abs() < 0.6, "{scale:?} {number} came back as {back}");
        }
    }

    #[test]
    fn any_text_is_a_grade_or_says_how_to_write_one(text in any::<String>()) {
        if let Err(problem) = Grade::read(&text) {
            prop_assert!(!problem.to_string().is_empty());
        }
    }
}

#[test]
fn every_grade_is_judged_at_every_size_it_has() {
    for grade in Grade::ALL {
        assert_eq!(Grade::of_key(grade.key()), Some(*grade));
        for row in grade.rows() {
            let properties = Properties { grade: *grade, row };
            let state = State::of(Steel::Grade(properties));
            for cleaning in [Cleaning::Acid, Cleaning::Mechanical] {
                let steel = SteelFacts::new(state, cleaning);
                for process in Process::ALL {
                    let case = steel.alone(process);
                    for ruling in rule::judge(&case) {
                        assert!(!ruling.text(&case).is_empty(), "{:?}", ruling.rule.key);
                    }
                }
            }
            // Its table ends at 51 HRC, and says nothing of a steel without a hardness; a converted hardness is
            // read as whole as the tables print it.
            let beyond = state
                .hardest(Measure::Scale(Scale::Hrc))
                .map_or(state.levels().is_err(), |hardest| hardest.as_compared().number() > 51.0);
            assert_eq!(bake::by_b850(&state).is_err(), beyond, "{}", grade.name());
        }
    }
}

/// What the least edge of a grade's sizes is to its rows: no size falls between two of them.
#[test]
fn the_rows_of_a_grade_leave_no_gap() {
    for grade in Grade::ALL {
        let rows = grade.rows();
        for pair in rows.windows(2) {
            let (below, above) = (pair[0].sizes.to.unwrap(), pair[1].sizes.from.unwrap().0);
            assert_eq!(below, above, "{}", grade.name());
            assert!(
                grade.properties(below).is_ok()
                    && grade.properties(Length::from_mm(above.mm() + 0.1)).is_ok()
            );
        }
    }
}
