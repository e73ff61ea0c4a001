//! What the barrel says of the parts and of the coat.

use super::{Input, Outcome};
use crate::calculator::{Finding, Mark};
use crate::part::Kind;
use crate::source::common_practice;
use crate::table::mechanical_process as practice;

pub(super) fn of(input: &Input, outcome: &Outcome) -> Vec<Finding> {
    let mut findings = pieces(input, outcome);
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
    if let (Some(mass), barrels) = (outcome.load.mass, outcome.barrels()) {
        let limit = practice::ONE_PLATERS_LOAD;
        if mass / barrels > limit.value && input.barrel.is_none() {
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
    findings
}

/// Weight, length and shape of a piece.
fn pieces(input: &Input, outcome: &Outcome) -> Vec<Finding> {
    let Some(piece) = &outcome.load.piece else { return Vec::new() };
    let system = input.stated.system();
    let (mass, length) = (piece.shape.mass(), piece.shape.overall_length());
    let (shown, limit) = (system.weight(mass), practice::HEAVIEST_PIECE);
    let mut findings = vec![if mass > limit.value {
        let text = format!(
            "Agree a trial with the plater: a piece weighs {shown}, above the {} up to which pieces are not damaged in \
             the barrel.",
            system.weight(limit.value)
        );
        Finding::new(Mark::Condition, text, limit.source)
    } else {
        let text = format!("A piece weighs {shown}, within about {}.", system.weight(limit.value));
        Finding::new(Mark::Met, text, limit.source)
    }];
    let longest = practice::LONGEST_PIECE;
    if let Some(length) = length.filter(|length| *length > longest.value) {
        findings.push(Finding::new(
            Mark::Condition,
            format!(
                "Ask the plater what the barrel takes: a piece is {} long, and one plater stops at {}.",
                system.length(length),
                system.length(longest.value)
            ),
            longest.source,
        ));
    }
    if piece.kind.is_flat() {
        findings.push(Finding::new(
            Mark::Note,
            "The beads keep flat washers from nesting; thin light ones can still stick together.",
            common_practice("glass beads keep washers and rings apart"),
        ));
    }
    if is_recessed(piece.kind) {
        findings.push(Finding::new(
            Mark::Term,
            "Leave the smallest beads out: they would stay in the recess of the head.",
            practice::RECESSES,
        ));
    }
    findings
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
