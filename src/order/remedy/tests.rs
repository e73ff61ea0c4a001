//! The nearest change that makes a process suit.

use super::remedy;
use crate::order::{self, reading};
use crate::process::Process;

/// What would help a process that an order rules out.
fn of(line: &str, process: Process) -> Option<String> {
    let line =
        order::read(&reading::read(line).draft).unwrap_or_else(|problems| panic!("{line}: {problems}"));
    let judgement = order::judge(&line);
    let judged = judgement.processes.iter().find(|judged| judged.process == process).unwrap();
    remedy(&line, &judgement, judged).map(str::to_owned)
}

/// A steel that is too hard gives way to the next softer one of its family: A325 for A490, F1852 for F2280,
/// grade 5 and 8 of SAE J429 for 5.2 and 8.2, 10.9 for 12.9 (which ISO 10684 does not take in).
#[test]
fn a_steel_that_is_ruled_out_gives_way_to_the_next_lower_grade() {
    for (line, grade) in [
        ("7/8-9 x 3 structural bolts A490 100 pcs C3", "A325 "),
        ("M22 x 80 structural bolts A490M 100 pcs C3", "A325M "),
        ("3/4-10 x 3 hex bolts gr 8.2 100 pcs C3", "8 "),
        ("3/4-10 x 3 hex bolts gr 5.2 100 pcs C3", "5 "),
        ("M16 x 60 hex bolts 12.9 100 pcs C3", "class 10.9 "),
    ] {
        let change = of(line, Process::HotDip).unwrap_or_else(|| panic!("{line}"));
        assert!(change.starts_with(grade), "{line}: {change}");
        assert!(change.ends_with(", if the design allows"), "{line}: {change}");
    }
}

/// F3125 lists a mechanical coat for F1852, and none for F2280.
#[test]
fn a_twist_off_bolt_gives_way_to_the_one_of_the_lower_strength() {
    let change = of("7/8-9 x 3 F2280 bolts 100 pcs C3", Process::Mechanical);
    assert!(change.as_ref().is_some_and(|it| it.starts_with("F1852 would do")), "{change:?}");
}

/// ISO 10684 does not recommend a pitch below 1.25 mm: the coarse thread has 1.75 mm.
#[test]
fn a_fine_thread_gives_way_to_the_coarse_one() {
    let change = of("M12x1 x 60 hex bolts 8.8 100 pcs C3", Process::HotDip);
    assert_eq!(change.as_deref(), Some("M12 would do, if the design allows"));
    // Of a coarse thread there is no coarser one.
    assert_eq!(of("M6 x 20 hex bolts 8.8 100 pcs C3", Process::HotDip), None);
}

/// A steel that is ruled out is not helped by another thread.
#[test]
fn where_the_steel_is_ruled_out_only_another_steel_helps() {
    let change = of("M12x1 x 60 socket screws 12.9 100 pcs C3", Process::HotDip);
    assert!(change.is_none_or(|change| change.contains("class")));
}
