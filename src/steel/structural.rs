//! What the standards ask of structural assemblies, by the bolt's grade: data for the rules that judge.

use super::Grade;
use crate::process::Process;
use crate::table::structural::{Bolt, Coating, Requirement, Topic};
use crate::table::{astm_f3125_assembly, astm_f3125_coatings, en_14399, rcsc};
use crate::thread::Thread;

/// The structural bolt of this grade; `None` for a grade that is none.
pub fn bolt(grade: Grade) -> Option<Bolt> {
    match grade {
        Grade::A325 => Some(Bolt::A325),
        Grade::A490 => Some(Bolt::A490),
        Grade::A325M => Some(Bolt::A325M),
        Grade::A490M => Some(Bolt::A490M),
        Grade::F1852 => Some(Bolt::F1852),
        Grade::F2280 => Some(Bolt::F2280),
        _ => None,
    }
}

/// The structural bolt that the nuts of this grade and thread are made for, and coated and lubricated like.
pub fn bolt_of_nut(nut: Grade, thread: Thread) -> Option<Bolt> {
    let grade = match nut {
        Grade::A563Dh | Grade::A563Dh3 => Grade::A325,
        Grade::A563mClass10S => Grade::A325M,
        _ => return None,
    };
    (thread.has_coarse_loads() && grade.properties(thread.diameter()).is_ok()).then(|| bolt(grade)).flatten()
}

/// The metric structural bolt of EN 14399 of this class: 8.8 stands in its system HR alone, 10.9 in HR and
/// HV. What is asked of both is the same.
pub fn metric(grade: Grade) -> Option<Bolt> {
    match grade {
        Grade::Class8_8 => Some(Bolt::Hr),
        Grade::Class10_9 => Some(Bolt::Hv),
        _ => None,
    }
}

/// What its document says of a coating by this process.
pub fn coating(bolt: Bolt, process: Process) -> Option<&'static Coating> {
    [astm_f3125_coatings::ROWS, en_14399::COATINGS]
        .into_iter()
        .flatten()
        .find(|row| row.bolts.contains(&bolt) && row.process == process)
}

/// What is asked of its assembly when it is coated by this process, topic by topic.
pub fn requirements(bolt: Bolt, process: Process) -> impl Iterator<Item = &'static Requirement> {
    all().filter(move |row| row.holds(bolt, process))
}

/// What is asked of it about one topic.
pub fn requirement(bolt: Bolt, process: Process, about: Topic) -> Option<&'static Requirement> {
    all().find(|row| row.topic == about && row.holds(bolt, process))
}

fn all() -> impl Iterator<Item = &'static Requirement> {
    [astm_f3125_assembly::ROWS, en_14399::ROWS, rcsc::ROWS].into_iter().flatten()
}
