//! What the standards and the model say of the strength.
//!
//! Where a standard gives the pair its load, that is the rule, and the model is a note beside it; where
//! none does, the model is the rule. Either way it speaks once, and the order reads the same row.

use crate::calculator::thread_strength::{BoltSteel, Input, NutSteel, Outcome};
use crate::calculator::{Finding, Mark, thread_fields};
use crate::process::Process;
use crate::quantity::Shown;
use crate::rule::bolt_and_nut::Carries;
use crate::rule::{self, Case, Key, Part, strength};
use crate::sentence::capital;
use crate::thread::strength::MODEL;

pub(super) fn all(input: &Input, outcome: &Outcome) -> Vec<Finding> {
    let mut findings = vec![carries(input, outcome)];
    match &outcome.model {
        Ok(model) => {
            // Where a document says it, the model stands beside it; else the rule has said it.
            if outcome.stated.is_some() {
                let said = capital(&format!("{}.", strength::modelled(input, model)));
                findings.push(Finding::new(Mark::Note, said, MODEL));
            }
            findings.push(Finding::new(
                Mark::Note,
                format!(
                    "Against a usual bolt in a standard nut the thread loses {} of stripping strength, {}.",
                    input.shown(model.lost),
                    Shown::percent(model.lost_share, 1)
                ),
                MODEL,
            ));
        }
        Err(refusal) => findings.push(Finding::new(
            Mark::Note,
            format!("The model of ISO/TR 16224 does not reach this pair: {refusal}."),
            refusal.source(),
        )),
    }
    findings.extend(thread_fields::mating(input.thread, input.bolt_class, input.allowance));
    findings.extend(thread_fields::overlap(input.thread, input.bolt_class, input.allowance));
    findings.extend(pairing(input, outcome));
    Finding::worst_first(findings)
}

/// What the pair carries, by the rules that the order reads as well.
pub(super) fn carries(input: &Input, outcome: &Outcome) -> Finding {
    let part = Part::of_pair(input.thread, input.bolt_class, input.allowance.class());
    let pair = input.carried();
    let case = Case { part: Some(&part), pair: Some(&pair), ..Case::of(Process::HotDip) };
    let reduced = matches!(outcome.stated, Some(Carries::Reduced(_)));
    let rule = rule::rule(if reduced { Key::ReducedLoads } else { Key::Carries });
    match rule.judge(&case) {
        Some(ruling) => {
            Finding::new(ruling.mark, format!("{}.", capital(&ruling.text(&case))), ruling.source(&case))
        }
        None => Finding::new(Mark::Note, "Nothing is known of this pair.", rule.source),
    }
}

/// The nut that the standards put on a bolt of this grade.
fn pairing(input: &Input, outcome: &Outcome) -> Option<Finding> {
    let BoltSteel::Grade(bolt) = input.bolt else { return None };
    let nuts = match outcome.nuts.as_ref()? {
        Ok(nuts) => nuts,
        Err(refusal) => return Some(Finding::new(Mark::Note, format!("{refusal}."), refusal.source())),
    };
    let style = input.style();
    let coated = if input.is_for_zinc() { "a zinc-coated bolt" } else { "a bolt" };
    let or_stronger = if nuts.find(|nut| *nut != nuts.nut).is_none() { "" } else { ", or a stronger one" };
    let text = format!(
        "On {coated} of {} put a nut of {}, {}{or_stronger}.",
        bolt.name(),
        nuts.nut.grade,
        nuts.nut.style.name()
    );
    let mark = match input.nut {
        NutSteel::Level(_) => Mark::Note,
        NutSteel::Grade(nut) if nuts.takes(nut, style) == Some(true) => Mark::Met,
        NutSteel::Grade(_) => Mark::Condition,
    };
    Some(Finding::new(mark, text, nuts.source))
}
