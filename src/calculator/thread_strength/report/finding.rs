//! What the standards and the model say of the strength.
//!
//! Where a standard gives the pair its load, that is the rule, and the model is a note beside it; where
//! none does, the model is the rule. Either way it speaks once.

use super::force;
use crate::calculator::thread_strength::{BoltSteel, Input, NutBody, NutSteel, Outcome};
use crate::calculator::{Finding, Mark};
use crate::part::Kind;
use crate::process::Process;
use crate::quantity::Shown;
use crate::rule::{self, Case, Key, Part};
use crate::source::document;
use crate::table::iso_10684_annex_a;
use crate::thread::load::{self, Loads};
use crate::thread::strength::{Failure, MODEL};
use crate::thread::undersize;

pub(super) fn all(input: &Input, outcome: &Outcome) -> Vec<Finding> {
    let pairing = pairing(input, outcome);
    let by_standard = by_standard(input, outcome);
    let mut findings = vec![match &by_standard {
        Some(_) => {
            let text = format!("{} {}", model(input, outcome), middle(outcome));
            Finding::new(Mark::Note, text.trim_end().to_owned(), MODEL)
        }
        None => alone(input, outcome),
    }];
    findings.extend(by_standard);
    findings.extend(mating(input));
    findings.extend(pairing);
    findings.push(Finding::new(
        Mark::Note,
        format!(
            "Against a usual bolt in a standard nut the thread loses {} of stripping strength, {}.",
            force(outcome.lost, input),
            Shown::percent(outcome.lost_share, 1)
        ),
        MODEL,
    ));
    Finding::worst_first(findings)
}

/// What the standards say of the load of this pair; `None` where they do not put it together.
pub(super) fn by_standard(input: &Input, outcome: &Outcome) -> Option<Finding> {
    pairing(input, outcome).filter(|pairing| pairing.mark == Mark::Met)?;
    standard(input, outcome)
}

/// What the standards give a pair that they put together; `None` where they say nothing of its load.
fn standard(input: &Input, outcome: &Outcome) -> Option<Finding> {
    let proof = outcome.bolt_loads.as_ref()?.proof.as_ref().ok()?;
    let proof = force(proof.force, input);
    let hot_dip = input.is_undercut() || input.allowance.mark().is_some();
    if hot_dip {
        return match load::hot_dip(input.thread).ok()? {
            Loads::Full => Some(Finding::new(
                Mark::Met,
                format!(
                    "ISO 10684 gives 6AZ and 6AX nuts and 6az bolts from M12 up the full loads of ISO 898: the proof \
                     load of the bolt, {proof}, stands."
                ),
                document::ISO_10684.read("clause 7"),
            )),
            Loads::Reduced if input.is_undercut() => Some(Finding::new(
                Mark::Condition,
                format!(
                    "M8 and M10 cut under (mark {}) carry reduced loads: design with a proof load of {proof}.",
                    undersize::MARK.value
                ),
                document::ISO_10684.computed("Annex A, strength × stress area of the undercut thread"),
            )),
            Loads::Reduced => {
                let nut = outcome.nut_load.as_ref()?.as_ref().ok()?;
                let text = format!(
                    "M8 and M10 with 6AZ or 6AX carry reduced loads: design with {} for this nut.",
                    force(nut.force, input)
                );
                Some(Finding::new(Mark::Condition, text, iso_10684_annex_a::SOURCE))
            }
        };
    }
    let plain = outcome.standard_nut_load.as_ref()?.as_ref().ok()?;
    let Some(over) = &outcome.nut_load else {
        let text =
            format!("The nut has a proof load of {}, the bolt one of {proof}.", force(plain.force, input));
        return Some(Finding::new(Mark::Met, text, plain.stress_source()));
    };
    let over = over.as_ref().ok()?;
    let fall = if over.force < plain.force {
        format!("falls from {} to {}", force(plain.force, input).digits(), force(over.force, input))
    } else {
        format!("stays {}", force(over.force, input))
    };
    let text = format!("Tapped over for zinc, the proof load of the nut {fall}; the bolt's is {proof}.");
    Some(Finding::new(Mark::Met, text, over.stress_source()))
}

/// The model where no standard gives the pair its load.
fn alone(input: &Input, outcome: &Outcome) -> Finding {
    let min = &outcome.pair.min;
    let (failure, load) = min.first();
    let proof = outcome.bolt_loads.as_ref().and_then(|loads| loads.proof.as_ref().ok());
    let said = model(input, outcome);
    let remedy = match failure {
        Failure::BoltBreaks => return Finding::new(Mark::Met, said, MODEL),
        Failure::BoltStrips => "Take a higher nut",
        Failure::NutStrips => "Take a harder or a higher nut",
    };
    if let Some(proof) = proof.filter(|proof| load < proof.force) {
        let text = format!(
            "{said} That is below the proof load of the bolt, {}. {remedy}.",
            force(proof.force, input)
        );
        return Finding::new(Mark::Bar, text, MODEL);
    }
    let text = format!("{said} {} {remedy}, or prove the pair by a tension test.", middle(outcome));
    Finding::new(Mark::Condition, text, MODEL)
}

/// What gives way first by the model, and with which margin.
fn model(input: &Input, outcome: &Outcome) -> String {
    let min = &outcome.pair.min;
    let (failure, load) = min.first();
    let margin = Shown::percent(min.margin().abs(), 0);
    let load = force(load, input);
    if failure == Failure::BoltBreaks {
        return format!(
            "By the model of ISO/TR 16224, at least material, the bolt breaks first, at {load}; the threads would hold \
             {margin} more."
        );
    }
    format!(
        "By the model of ISO/TR 16224, at least material, {} first, at {load}, {margin} below the breaking of the bolt; \
         that may stay unseen at assembly.",
        failure.words()
    )
}

fn middle(outcome: &Outcome) -> &'static str {
    match (outcome.pair.min.first().0, outcome.pair.nominal.first().0) {
        (Failure::BoltBreaks, _) => "",
        (_, Failure::BoltBreaks) => "With every size in the middle the bolt breaks first.",
        _ => "With every size in the middle the thread strips first as well.",
    }
}

/// Whether bolt and nut may be put together, by the rule of the fit.
fn mating(input: &Input) -> Option<Finding> {
    let part = Part {
        kind: Kind::HexBolt,
        thread: input.thread,
        bolt_class: input.bolt_class,
        nut_class: input.allowance.class(),
        quantity: None,
        length: None,
        mass: None,
        bolt: None,
        nut: None,
    };
    let case = Case { part: Some(&part), ..Case::of(Process::HotDip) };
    let ruling = rule::rule(Key::Mating).judge(&case)?;
    (ruling.says.mark == Mark::Bar)
        .then(|| Finding::new(ruling.says.mark, ruling.text(&case), ruling.source()))
}

/// The nut that the standards put on a bolt of this grade.
fn pairing(input: &Input, outcome: &Outcome) -> Option<Finding> {
    let BoltSteel::Grade(bolt) = input.bolt else { return None };
    let nuts = match outcome.nuts.as_ref()? {
        Ok(nuts) => nuts,
        Err(refusal) => return Some(Finding::new(Mark::Note, format!("{refusal}."), refusal.source())),
    };
    let style = match input.body {
        NutBody::Style(style) => Some(style.of_loads()),
        NutBody::Own(..) => None,
    };
    let coated = if input.is_for_zinc() { "a zinc-coated bolt" } else { "a bolt" };
    let or_stronger = if nuts.also.is_empty() { "" } else { ", or a stronger one" };
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
