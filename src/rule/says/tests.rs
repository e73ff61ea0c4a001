use super::*;

fn bake(from: f64, to: f64, hours: Option<f64>) -> Instruction {
    Instruction::Bake(HeatTreatment {
        from: Temperature::from_celsius(from),
        to: Some(Temperature::from_celsius(to)),
        time: hours.map(Time::from_hour),
        within: Some(Time::from_hour(4.0)),
    })
}

#[test]
fn bakes_overlap_and_the_longest_counts() {
    assert_eq!(
        bake(177.0, 232.0, None).and(bake(190.0, 220.0, Some(14.0))),
        Some(bake(190.0, 220.0, Some(14.0)))
    );
    assert_eq!(bake(177.0, 185.0, None).and(bake(190.0, 220.0, None)), None);
    // Ranges that touch meet at one temperature.
    assert_eq!(bake(177.0, 190.0, None).and(bake(190.0, 220.0, None)), Some(bake(190.0, 190.0, None)));
    // The earliest start, and what only one of them says.
    let heat = |to: Option<f64>, time: Option<f64>, within: Option<f64>| HeatTreatment {
        from: Temperature::from_celsius(190.0),
        to: to.map(Temperature::from_celsius),
        time: time.map(Time::from_hour),
        within: within.map(Time::from_hour),
    };
    let pairs = [
        (heat(None, None, Some(4.0)), heat(Some(220.0), Some(8.0), Some(1.0))),
        (heat(Some(220.0), Some(8.0), None), heat(None, Some(2.0), Some(1.0))),
    ];
    for (one, other) in pairs {
        let both = Some(heat(Some(220.0), Some(8.0), Some(1.0)));
        assert_eq!((one.and(other), other.and(one)), (both, both));
        // Stress is relieved as it is baked, and neither stands for the other.
        let (relieve, bake) = (Instruction::Relieve, Instruction::Bake);
        assert_eq!(relieve(one).and(relieve(other)), both.map(relieve));
        assert_eq!(relieve(one).and(bake(other)), None);
    }
}

#[test]
fn the_stricter_cleaning_stands_for_both() {
    let (soft, strict) = (Instruction::CleanWithoutAcid, Instruction::CleanMechanically);
    assert_eq!(soft.and(strict), Some(strict));
    assert_eq!(strict.and(soft), Some(strict));
    assert_eq!(soft.and(Instruction::ProveTemper), None);
}

/// Who knows the actual temper is asked for the proof alone; a part without a thread has no proof load.
#[test]
fn the_temper_is_asked_for_where_nobody_said_it() {
    use crate::part::Kind;
    use crate::rule::Part;
    use crate::steel::tempering::{Dip, Temper, effect};
    let (celsius, minute) = (Temperature::from_celsius, Time::from_minute);
    let thread = crate::thread::Designation::read("M16").unwrap().thread;
    let class = crate::thread::ToleranceClass::read("6g").unwrap();
    let said = |temper: Option<f64>, kind| {
        let temper = temper.map(|temper| Temper::actual(celsius(temper), minute(60.0)));
        let grade = crate::steel::Grade::J429Grade8.any_size();
        let heat = effect(&Dip { grade, temper, bath: celsius(455.0), time: minute(3.0) });
        let part = Part { kind, ..Part::of_pair(thread, class, None) };
        let case = Case { heat: Some(&heat), part: Some(&part), ..Case::of(Process::HotDip) };
        (Instruction::ProveTemper.words(&case), Instruction::ProveTemper.brief(&case))
    };
    let (words, brief) = said(None, Kind::HexBolt);
    assert_eq!(
        words,
        "Get the actual tempering temperature from the maker, or verify hardness and proof load after dipping."
    );
    assert_eq!(brief, "get the maker's tempering temperature, or hardness and proof load after dipping");
    let (words, brief) = said(Some(480.0), Kind::HexBolt);
    assert_eq!(words, "Verify hardness and proof load after dipping.");
    assert_eq!(brief, "prove hardness and proof load after dipping");
    let (words, brief) = said(Some(480.0), Kind::SpringWasher);
    assert_eq!(words, "Verify hardness after dipping.");
    assert_eq!(brief, "prove hardness after dipping");
}
