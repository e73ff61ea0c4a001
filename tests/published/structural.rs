//! Structural assemblies: coatings of ASTM F3125 and EN 14399, rotational capacity, re-use, pretension.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

use crate::seen::as_printed;
use kettle_barrel::calculator::Mark;
use kettle_barrel::order::{self, reading};
use kettle_barrel::process::Process::{self, *};
use kettle_barrel::quantity::Length;
use kettle_barrel::rule::Key;
use kettle_barrel::source::Basis::{self, *};
use kettle_barrel::steel::structural::{coating, requirements};
use kettle_barrel::table::aisc_360::pretension;
use kettle_barrel::table::astm_f3125_assembly::turn_degrees;
use kettle_barrel::table::structural::Allowed::{self, *};
use kettle_barrel::table::structural::Bolt::{self, *};
use kettle_barrel::table::structural::Topic;

#[test]
fn coatings_are_those_of_the_documents() {
    for &(bolt, process, allowed, class, basis) in COATINGS {
        let row = coating(bolt, process).unwrap();
        assert_eq!(
            (row.allowed, row.class, row.source.basis),
            (allowed, class, basis),
            "{bolt:?} {process:?}"
        );
        as_printed(row.source.document);
        assert_eq!(row.order.is_empty(), allowed != Yes, "{bolt:?} {process:?}");
    }
}

/// A galvanized A325 assembly: lubricated nuts, one matched lot, one process, rotational capacity, a
/// washer, no re-use; and the nut tapped after the bath, but before the barrel.
#[test]
fn a_galvanized_assembly_is_asked_for_all_of_it() {
    for process in [HotDip, Mechanical] {
        let found: Vec<_> = requirements(A325, process).map(|row| row.topic).collect();
        for topic in [
            Topic::Lubricant,
            Topic::MatchedLot,
            Topic::OneProcess,
            Topic::Tapping,
            Topic::RotationalCapacity,
            Topic::Washer,
            Topic::Reuse,
        ] {
            assert_eq!(found.iter().filter(|found| **found == topic).count(), 1, "{process:?} {topic:?}");
        }
    }
    let tapping = |process| requirements(A325, process).find(|row| row.topic == Topic::Tapping).unwrap();
    assert_eq!(tapping(HotDip).source.basis, Read);
    assert_eq!(tapping(Mechanical).source.basis, Memory);
    assert!(tapping(HotDip).text.contains("after") && tapping(Mechanical).text.contains("before"));
}

/// EN 14399-6, 300 HV to 370 HV (from memory), and ASTM F436 washers: a washer that is named beside a
/// structural bolt may be as hard in any scale. By ISO 18265, 25 HRC are 266 HV and 38 HRC 372 HV.
#[test]
fn a_washer_beside_a_structural_bolt_is_as_hard_as_its_own() {
    let is_too_soft = |washer: &str| {
        let text = format!("M20 x 80 EN 14399-3 HR 10.9 bolt, HDG, C3, with {washer}");
        let line = order::read(&reading::read(&text).draft).unwrap();
        order::judge(&line)
            .processes
            .each_ref()
            .map(|judged| judged.ruling(Key::WasherForBolt).map(|ruling| ruling.mark) > Some(Mark::Note))
    };
    for hard in ["F436 washer", "300 HV washer", "301 HV washer", "38 HRC washer", "washer"] {
        assert_eq!(is_too_soft(hard), [false; 3], "{hard}");
    }
    for soft in ["200 HV washer", "299 HV washer", "25 HRC washer", "90 HRB washer"] {
        assert_eq!(is_too_soft(soft), [true; 3], "{soft}");
    }
}

/// RCSC 2.3.3, read: A490 is never used again, plain A325 may be.
#[test]
fn re_use_is_ruled_by_grade_and_zinc() {
    let barred = |bolt, process| requirements(bolt, process).any(|row| row.topic == Topic::Reuse);
    assert!(barred(A490, Electroplated) && barred(A325, HotDip) && !barred(A325, Electroplated));
}

/// Annex A2 from memory: 240, 360, 420 degrees; beyond 12 diameters nothing is set.
#[test]
fn the_turn_of_the_rotational_capacity_test() {
    let turns = [3.0, 4.0, 4.1, 8.0, 8.1, 12.0, 12.1].map(turn_degrees);
    assert_eq!(turns, [Some(240), Some(240), Some(360), Some(360), Some(420), Some(420), None]);
}

/// AISC 360-05, read; above 1 in today's A325 from memory.
#[test]
fn pretensions_are_the_published_ones() {
    let kip = |bolt, inch| {
        let found = pretension(bolt, Length::from_inch(inch)).unwrap();
        as_printed(found.source.document);
        ((found.value.lbf() / 1000.0).round(), found.source.basis)
    };
    assert_eq!(kip(A325, 0.5), (12.0, Read));
    assert_eq!(kip(A325, 0.75), (28.0, Read));
    assert_eq!(kip(A325, 1.0), (51.0, Read));
    assert_eq!(kip(A325, 1.125), (64.0, Memory));
    assert_eq!(kip(A325, 1.5), (118.0, Memory));
    assert_eq!(kip(A490, 1.125), (80.0, Read));
    assert_eq!(kip(A490, 1.5), (148.0, Read));
    let kilonewton = |bolt, mm| pretension(bolt, Length::from_mm(mm)).unwrap().value.newton() / 1000.0;
    assert_eq!((kilonewton(A325M, 20.0), kilonewton(A490M, 36.0)), (142.0, 595.0));
    assert!(
        pretension(A325, Length::from_inch(0.25)).is_none()
            && pretension(Hr, Length::from_mm(20.0)).is_none()
    );
}

/// Bolt, process, allowed, class of ASTM B695, basis.
const COATINGS: &[(Bolt, Process, Allowed, Option<u8>, Basis)] = &[
    (A325, HotDip, Yes, None, Memory),
    (A325, Mechanical, Yes, Some(55), Memory),
    (A325, Electroplated, NotListed, None, Memory),
    (A325M, HotDip, Yes, None, Memory),
    (A325M, Mechanical, Yes, Some(55), Memory),
    (F1852, HotDip, No, None, Memory),
    (F1852, Mechanical, Yes, Some(55), Memory),
    (A490, HotDip, No, None, Read),
    (A490, Mechanical, No, None, Read),
    (A490, Electroplated, No, None, Read),
    (A490M, Mechanical, No, None, Read),
    (F2280, HotDip, No, None, Memory),
    (F2280, Mechanical, No, None, Memory),
    (Hr, HotDip, Yes, None, Memory),
    (Hv, HotDip, Yes, None, Memory),
    (Hv, Electroplated, NotListed, None, Memory),
];
