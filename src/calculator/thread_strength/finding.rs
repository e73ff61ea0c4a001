//! What the rules say of the strength.

use super::answer::force;
use super::{BoltSteel, Input, NutBody, NutSteel, Outcome};
use crate::calculator::{Finding, Mark};
use crate::quantity::Shown;
use crate::source::document;
use crate::steel::pairing::{self, Asked};
use crate::table::iso_10684_annex_a;
use crate::thread::overtap::Allowance;
use crate::thread::strength::{Failure, MODEL};
use crate::thread::{load, undersize};

pub(super) fn all(input: &Input, outcome: &Outcome) -> Vec<Finding> {
    let mut findings = vec![first(input, outcome)];
    findings.extend(proof(input, outcome));
    findings.extend(mating(input));
    findings.extend(pairing_rule(input));
    findings.extend(reduced(input, outcome));
    findings.extend(unreduced(input));
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

fn first(input: &Input, outcome: &Outcome) -> Finding {
    let min = &outcome.pair.min;
    let (failure, load) = min.first();
    let share = |share: f64| Shown::percent(share.abs(), 0);
    if failure == Failure::BoltBreaks {
        let text = format!(
            "The bolt breaks first, at {}; the threads would hold {} more.",
            force(load, input),
            share(min.margin())
        );
        return Finding::new(Mark::Met, text, MODEL);
    }
    let nominal = if outcome.pair.nominal.first().0 == Failure::BoltBreaks {
        "With every size in the middle the bolt breaks first."
    } else {
        "With every size in the middle the thread strips first as well."
    };
    let remedy = match failure {
        Failure::BoltStrips => "take a higher nut",
        _ => "take a harder or a higher nut",
    };
    let text = format!(
        "At least material {} at {}, {} below the breaking of the bolt, and that may stay unseen at assembly: \
         {remedy}, or prove the pair by a tension test. {nominal}",
        failure.words(),
        force(load, input),
        share(min.margin()),
    );
    Finding::new(Mark::Condition, text, MODEL)
}

/// Whether the thread holds the proof load of the bolt.
fn proof(input: &Input, outcome: &Outcome) -> Option<Finding> {
    let load::Load { force: proof, source, .. } = *outcome.bolt_loads.as_ref()?.proof.as_ref().ok()?;
    let (failure, load) = outcome.pair.min.first();
    Some(if load >= proof {
        Finding::new(
            Mark::Met,
            format!("It holds the proof load of the bolt, {}.", force(proof, input)),
            source,
        )
    } else {
        Finding::new(
            Mark::Bar,
            format!(
                "{} below the proof load of the bolt, {}: take a higher or a harder nut.",
                match failure {
                    Failure::BoltBreaks => "The bolt breaks",
                    Failure::BoltStrips => "The bolt's thread strips",
                    Failure::NutStrips => "The nut's thread strips",
                },
                force(proof, input)
            ),
            source,
        )
    })
}

fn mating(input: &Input) -> Option<Finding> {
    (input.is_undercut() && input.allowance.mark().is_some()).then(|| {
        Finding::new(
            Mark::Bar,
            "6AZ and 6AX nuts must not be put on 6az bolts: the thread may strip.",
            document::ISO_965_5.read("clause 1"),
        )
    })
}

/// The nut that the standards put on a bolt of this grade.
fn pairing_rule(input: &Input) -> Option<Finding> {
    let BoltSteel::Grade(grade) = input.bolt else { return None };
    let asked = Asked {
        grade,
        diameter: input.thread.diameter(),
        is_coarse: input.thread.has_coarse_loads(),
        is_zinc_coated: input.allowance != Allowance::Standard,
    };
    let nuts = match pairing::nuts(asked) {
        Ok(nuts) => nuts,
        Err(refusal) => return Some(Finding::new(Mark::Note, format!("{refusal}."), refusal.source())),
    };
    let style = match input.body {
        NutBody::Style(style) => Some(style.of_loads()),
        NutBody::Own(..) => None,
    };
    let bolt = if asked.is_zinc_coated { "a zinc-coated bolt" } else { "a bolt" };
    let text =
        format!("On {bolt} of {} put a nut of {}, {}", grade.name(), nuts.nut.grade, nuts.nut.style.name());
    let text = if nuts.also.is_empty() { format!("{text}.") } else { format!("{text}, or a stronger one.") };
    let mark = match input.nut {
        NutSteel::Level(_) => Mark::Note,
        NutSteel::Grade(nut) if nuts.takes(nut, style) == Some(true) => Mark::Met,
        NutSteel::Grade(_) => Mark::Condition,
    };
    Some(Finding::new(mark, text, nuts.source))
}

/// Loads that a standard lowers.
fn reduced(input: &Input, outcome: &Outcome) -> Option<Finding> {
    let hot_dip = input.is_undercut() || input.allowance.mark().is_some();
    if let (Some((8 | 10, true)), true) = (input.thread.metric_key(), hot_dip) {
        let text = if input.is_undercut() {
            format!(
                "M8 and M10 cut under (mark {}) carry reduced loads: design with strength × their own stress area.",
                undersize::MARK.0
            )
        } else {
            "M8 and M10 with 6AZ or 6AX carry reduced loads: design with those of Annex A.".to_owned()
        };
        return Some(Finding::new(Mark::Condition, text, iso_10684_annex_a::SOURCE));
    }
    let (Some(Ok(plain)), Some(Ok(over))) = (&outcome.standard_nut_load, &outcome.nut_load) else {
        return None;
    };
    (over.force < plain.force).then(|| {
        let text = format!(
            "Tapped over for zinc, the proof load of the nut falls from {} to {}.",
            force(plain.force, input).digits(),
            force(over.force, input)
        );
        Finding::new(Mark::Note, text, over.stress_source())
    })
}

/// From M12 up the standard does not lower the loads.
fn unreduced(input: &Input) -> Option<Finding> {
    let hot_dip = input.is_undercut() || input.allowance.mark().is_some();
    let (diameter_mm, coarse) = input.thread.metric_key()?;
    (hot_dip && coarse && diameter_mm >= 12).then(|| {
        Finding::new(
            Mark::Note,
            "From M12 up ISO 10684 lets 6AZ and 6AX nuts and 6az bolts carry the full loads of ISO 898.",
            document::ISO_10684.read("clause 7"),
        )
    })
}
