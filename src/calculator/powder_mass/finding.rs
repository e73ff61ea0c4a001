//! What the barrel says of the parts, their steel and the coat: the rules as everywhere, and the plant's own.

use super::{Input, Outcome};
use crate::calculator::load::told;
use crate::calculator::{Finding, Mark};
use crate::part::Kind;
use crate::quantity::{Length, Shown};
use crate::rule::{self, Topic};
use crate::table::mechanical_process as practice;

pub(super) fn of(input: &Input, outcome: &Outcome) -> Vec<Finding> {
    let mut findings = rules(outcome);
    if outcome.part.is_some_and(|part| is_recessed(part.kind)) {
        findings.push(Finding::new(
            Mark::Term,
            "Leave the smallest beads out: they would stay in the recess of the head.",
            practice::RECESSES,
        ));
    }
    let system = input.stated.system();
    if outcome.mean > practice::EVEN_UP_TO.value {
        findings.push(Finding::new(
            Mark::Condition,
            format!(
                "Have the thickness measured on threads and edges: coats are called even up to {}.",
                system.coat(practice::EVEN_UP_TO.value)
            ),
            practice::EVEN_UP_TO.source,
        ));
    }
    if outcome.mean > THICKEST {
        findings.push(Finding::new(
            Mark::Condition,
            format!(
                "Plate a trial load: the mean charged for is {}, and nothing is known of charges beyond {}.",
                system.coat(outcome.mean),
                system.coat(THICKEST)
            ),
            practice::ADDITIONS.source,
        ));
    }
    if outcome.loads.is_some() && outcome.bead_ratio.0 > practice::BEADS_TO_PARTS.value {
        findings.push(Finding::new(
            Mark::Condition,
            format!(
                "See how many parts go in: the load of a barrel is published with about as many beads as parts, and how \
                 many fewer parts go in beside {} to 1 of beads was not found.",
                Shown::plain(outcome.bead_ratio.0, 1)
            ),
            practice::PARTS_PER_VOLUME.source,
        ));
    }
    if let Some((least, greatest)) = outcome.working_volume {
        let (from, to) = practice::WORKING_VOLUME.value;
        if greatest < from || least > to {
            findings.push(Finding::new(
                Mark::Condition,
                format!(
                    "Check the barrel: working volumes are {} to {}, and this one has {}.",
                    system.heap(from),
                    system.heap(to),
                    system.heap(greatest)
                ),
                practice::WORKING_VOLUME.source,
            ));
        }
    }
    if let Some(mass) = outcome.load.mass {
        let limit = practice::ONE_PLATERS_LOAD;
        if mass > limit.value && input.barrel.is_none() {
            findings.push(Finding::new(
                Mark::Note,
                format!(
                    "Enter the barrel, to have the load cut into loads of its own; one plater takes {} at a time.",
                    system.weight(limit.value)
                ),
                limit.source,
            ));
        }
    }
    Finding::worst_first(findings)
}

/// The mean beyond which no number of additions is known.
const THICKEST: Length = {
    let [_, (_, to, ..)] = practice::ADDITIONS.value;
    Length::from_um(to)
};

/// What the rules of the barrel say of the part and its steel; of the steel what is met is left to its
/// own calculator.
pub(super) fn rules(outcome: &Outcome) -> Vec<Finding> {
    let case = outcome.case();
    let steel = rule::judge_topic(&case, Topic::Hydrogen)
        .filter(|ruling| case.steel.is_some() && ruling.mark > Mark::Met);
    told(&case, steel.chain(rule::judge_topic(&case, Topic::Load)))
}

/// Whether the kind has a recess that small beads stay in.
pub(super) fn is_recessed(kind: Kind) -> bool {
    matches!(
        kind,
        Kind::SocketScrew
            | Kind::CountersunkScrew
            | Kind::ButtonScrew
            | Kind::SetScrew
            | Kind::MachineScrew
            | Kind::TappingScrew
            | Kind::DrywallScrew
    )
}
