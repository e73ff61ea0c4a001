//! What the rules say of the strength.

use super::answer::force;
use super::{BoltSteel, Input, NutSteel, Outcome};
use crate::calculator::{Finding, Mark};
use crate::quantity::{Quantity, Shown, unit};
use crate::source::document;
use crate::steel::{Grade, pairing};
use crate::table::astm_a563_grades::PROOF_DH;
use crate::table::{iso_898_1_loads, iso_10684_annex_a};
use crate::thread::class::BoltPosition;
use crate::thread::strength::{Failure, MODEL};
use crate::thread::{ToleranceClass, undersize};

pub(super) fn all(input: &Input, outcome: &Outcome) -> Vec<Finding> {
    let mut findings = vec![first(input, outcome)];
    findings.extend(proof(input, outcome));
    findings.extend(mating(input));
    findings.extend(pairing_rule(input));
    findings.extend(reduced(input));
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
    let (diameter_mm, coarse) = input.thread.metric_key()?;
    let class = match input.bolt {
        BoltSteel::Grade(Grade::Class8_8) => iso_898_1_loads::PropertyClass::Class8_8,
        BoltSteel::Grade(Grade::Class10_9) => iso_898_1_loads::PropertyClass::Class10_9,
        _ => return None,
    };
    let (_, (proof, source)) = iso_898_1_loads::loads(diameter_mm, class).filter(|_| coarse)?;
    let (failure, load) = outcome.pair.min.first();
    Some(if load >= proof {
        Finding::new(
            Mark::Met,
            format!("It holds the proof load of the bolt, {}.", proof.show(&unit::KILONEWTON, 1)),
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
                proof.show(&unit::KILONEWTON, 1)
            ),
            source,
        )
    })
}

fn mating(input: &Input) -> Option<Finding> {
    let undersize =
        matches!(input.bolt_class, ToleranceClass::Bolt(class) if class.position == BoltPosition::Az);
    (undersize && input.allowance.mark().is_some()).then(|| {
        Finding::new(
            Mark::Bar,
            "6AZ and 6AX nuts must not be put on 6az bolts: the thread may strip.",
            document::ISO_965_5.read("clause 1"),
        )
    })
}

/// The nut that the standards ask for on a zinc-coated bolt of this grade.
fn pairing_rule(input: &Input) -> Option<Finding> {
    let BoltSteel::Grade(bolt) = input.bolt else { return None };
    let Some(rule) = pairing::nut_for(bolt) else {
        return Some(Finding::new(
            Mark::Note,
            format!("Which nut goes with a zinc-coated bolt of {} is not known here; open it.", bolt.name()),
            bolt.document().memory("nuts"),
        ));
    };
    let text = format!("On a zinc-coated bolt of {} put a nut of {}.", bolt.name(), rule.nut);
    let mark = match input.nut {
        NutSteel::Grade(nut) if rule.grades.contains(&nut) => Mark::Met,
        NutSteel::Grade(_) => Mark::Condition,
        NutSteel::Level(_) => Mark::Note,
    };
    Some(Finding::new(mark, text, rule.source))
}

/// Loads that a standard lowers.
fn reduced(input: &Input) -> Option<Finding> {
    let hot_dip = input.is_undercut || input.allowance.mark().is_some();
    if let (Some((8 | 10, true)), true) = (input.thread.metric_key(), hot_dip) {
        let text = if input.is_undercut {
            format!(
                "M8 and M10 cut under (mark {}) carry reduced loads: take them from Annex A, which was not seen.",
                undersize::MARK.0
            )
        } else {
            "M8 and M10 with 6AZ or 6AX carry reduced loads: design with those of Annex A.".to_owned()
        };
        return Some(Finding::new(Mark::Condition, text, iso_10684_annex_a::SOURCE));
    }
    let dh = matches!(input.nut, NutSteel::Grade(Grade::A563Dh));
    let over = input.allowance != crate::thread::overtap::Allowance::Standard;
    (dh && over && !input.thread.is_metric()).then(|| {
        let (plain, lowered, source) = PROOF_DH;
        let text = format!(
            "Tapped over for zinc, the proof stress of a DH nut falls from {} to {}.",
            plain.show(&unit::KSI, 0).digits(),
            lowered.show(&unit::KSI, 0)
        );
        Finding::new(Mark::Note, text, source)
    })
}

/// From M12 up the standard does not lower the loads.
fn unreduced(input: &Input) -> Option<Finding> {
    let hot_dip = input.is_undercut || input.allowance.mark().is_some();
    let (diameter_mm, coarse) = input.thread.metric_key()?;
    (hot_dip && coarse && diameter_mm >= 12).then(|| {
        Finding::new(
            Mark::Note,
            "From M12 up ISO 10684 lets 6AZ and 6AX nuts and 6az bolts carry the full loads of ISO 898.",
            document::ISO_10684.read("clause 7"),
        )
    })
}

/// The property class of a nut of ISO 898-2.
pub(super) fn nut_class(input: &Input) -> Option<u8> {
    match input.nut {
        NutSteel::Grade(Grade::Nut5) => Some(5),
        NutSteel::Grade(Grade::Nut6) => Some(6),
        NutSteel::Grade(Grade::Nut8) => Some(8),
        NutSteel::Grade(Grade::Nut10) => Some(10),
        NutSteel::Grade(Grade::Nut12) => Some(12),
        _ => None,
    }
}
