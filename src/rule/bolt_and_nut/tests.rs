use super::*;
use crate::thread::Designation;
use crate::thread::class::BoltPosition;

fn pair(thread: &str, bolt: Grade, nut: Grade, allowance: Allowance, body: NutBody) -> BoltAndNut {
    let thread = Designation::read(thread).unwrap().thread;
    let bolt_class = match thread.is_metric() {
        true => ToleranceClass::bolt(6, BoltPosition::G),
        false => ToleranceClass::UnifiedBolt(2),
    };
    BoltAndNut {
        thread,
        bolt_class,
        allowance,
        bolt: BoltSteel::Grade(bolt),
        nut: NutSteel::Grade(nut),
        body,
        countersunk_ends: 2,
    }
}

/// A nut of the user's own height is no reason to name no better one: heavy hex DH goes on A325, zinc-coated
/// (ASTM F3125), and class 10 on 10.9 (ISO 898-2).
#[test]
fn a_better_nut_is_one_of_its_standard() {
    let own = NutBody::Own(Length::from_mm(12.0), Length::from_mm(30.0));
    let better = |pair: BoltAndNut| pair.better().map(|nut| nut.grade.to_string());
    let a325 = pair("3/4-10 UNC", Grade::A325, Grade::A563A, Allowance::A563, own);
    assert_eq!(better(a325).as_deref(), Some("ASTM A563 grade DH"));
    assert_eq!(a325.better().map(|nut| nut.style), Some(nut_style::Style::HeavyHex));
    let class_10_9 = pair("M16", Grade::Class10_9, Grade::Nut8, Allowance::Az, own);
    assert_eq!(better(class_10_9).as_deref(), Some("class 10"));
}

/// ISO 10684 reduces the loads of M8 and M10 in nuts of 6AZ, by whatever words they are tapped so far; a nut
/// tapped by a few hundredths loses next to nothing, and a bolt cut under loses by itself.
#[test]
fn a_nut_tapped_as_wide_as_6az_carries_what_6az_carries() {
    let style = NutBody::Style(Style::Iso4032);
    let m10 = |allowance| pair("M10", Grade::Class8_8, Grade::Nut8, allowance, style);
    let own = |mm| Allowance::Own(Length::from_mm(mm));
    let reduced = |pair: BoltAndNut| match pair.stated() {
        Some(Carries::Reduced(load)) => Some(load.force.kn()),
        _ => None,
    };
    // ISO 10684, Table A.1: 42200 N for nuts of class 8; of a bolt, by hand: 53.6 mm² · 580 MPa = 31.088 kN.
    for allowance in [Allowance::Az, own(0.25)] {
        assert_eq!(reduced(m10(allowance)), Some(42.2), "{allowance}");
    }
    assert_eq!(reduced(m10(own(0.02))), None);
    assert!(m10(own(0.02)).loses_little() && !m10(own(0.25)).loses_little());
    assert!(!m10(Allowance::Az).loses_little());
    let class = ToleranceClass::read("6az").unwrap();
    let cut = BoltAndNut { bolt_class: class, ..m10(Allowance::Standard) };
    assert_eq!(reduced(cut), Some(31.088));
}
