//! What the rules say of the fit.

use super::super::{Input, Outcome, Way};
use crate::calculator::coat_room::{self, CoatRoom};
use crate::calculator::thread_fields::{self, Ruler, thickness};
use crate::calculator::thread_strength::ThreadStrength;
use crate::calculator::{Calculator, Finding, Link, Mark};
use crate::quantity::Length;
use crate::source::{common_practice, document};
use crate::thread::class::BoltPosition;
use crate::thread::coat_room::Coated;
use crate::thread::fit::Assembly;
use crate::thread::overtap::Allowance;
use crate::thread::{ToleranceClass, fit, undersize};

pub(super) fn all(input: &Input, outcome: &Outcome) -> Vec<Finding> {
    let mut findings = vec![assembly(input, outcome)];
    findings.extend(size(input));
    findings.extend(marking(input));
    findings.extend(mating(input));
    findings.extend(table(input, outcome));
    findings.push(cost(input, outcome).opens(strength(input)));
    Finding::worst_first(findings)
}

fn assembly(input: &Input, outcome: &Outcome) -> Finding {
    let (fit, ruler) = (&outcome.fit, Ruler::of(input.thread));
    let thickest = thickness(fit.thickest, input.coat_unit);
    let (mark, text) = match fit.assembly {
        Assembly::Assembles => (
            Mark::Met,
            format!(
                "The thickest bolt goes into the tightest nut with {} left on the pitch diameter; up to \
                 {thickest} would assemble.",
                ruler.size(fit.pitch.min)
            ),
        ),
        Assembly::OnlyEven => (
            Mark::Condition,
            format!(
                "An even coat goes together, one so uneven may bind: hold the coat to at most {thickest}, or \
                 prove the fit of a trial lot with its nuts.",
            ),
        ),
        Assembly::Binds if fit.thickest.mm() > 0.0 => (
            Mark::Bar,
            format!(
                "The thickest bolt does not go into the tightest nut: hold the coat to at most {thickest}, or \
                 make more room; with everything in the middle {} is left.",
                ruler.size(fit.pitch_nominal)
            ),
        ),
        Assembly::Binds => (
            Mark::Bar,
            "Bolt and nut leave no room for any coat at their worst corner: tap the nut over, or choose a bolt \
             class with an allowance."
                .to_owned(),
        ),
    };
    let finding = Finding::new(mark, text, fit::GROWTH);
    if mark == Mark::Met { finding } else { finding.opens(room(input)) }
}

/// The strength of the pair; its steels are asked.
fn strength(input: &Input) -> Link {
    ThreadStrength::link_with(|writer| thread_fields::write_pair(&input.pair(), writer))
}

/// The classes that would take the coat.
fn room(input: &Input) -> Link {
    CoatRoom::link(&coat_room::Input {
        thread: input.thread,
        coat: input.coat.max,
        coat_unit: input.coat_unit,
        rule: coat_room::Method::Corner(input.coat.unevenness, Coated::Bolt),
    })
}

/// Small and fine threads are outside hot-dip.
fn size(input: &Input) -> Option<Finding> {
    let hot_dip = input.way == Way::Under || input.allowance.mark().is_some();
    if !input.thread.is_metric() {
        let small = input.thread.diameter() < Length::from_inch(0.375);
        return (small && input.allowance == Allowance::A563).then(|| {
            Finding::new(
                Mark::Condition,
                "Below 3/8 in hot-dip fills the thread: use a mechanical coat, or prove the fit on a trial lot.",
                common_practice("smallest thread that takes a hot-dip coat well"),
            )
        });
    }
    let small = input.thread.diameter().mm() < 8.0 || input.thread.pitch().mm() < 1.25;
    (small && hot_dip).then(|| {
        Finding::new(
            Mark::Condition,
            "Below M8 or a pitch of 1.25 mm hot-dip is not recommended: choose a coarser thread or another \
             process.",
            document::ISO_10684.read("clause 1"),
        )
    })
}

fn marking(input: &Input) -> Option<Finding> {
    match input.way {
        Way::Over => {
            let (letter, source) = input.allowance.mark()?;
            let text = format!(
                "Mark the nut with {letter} behind its property class, as 8{letter}; nuts delivered with their \
                 bolts in one sealed and labelled package need no mark."
            );
            Some(Finding::new(Mark::Note, text, source))
        }
        Way::Under => {
            let (letter, source) = undersize::MARK;
            let text = format!("Mark the bolt with {letter} behind its property class, as 8.8{letter}.");
            Some(Finding::new(Mark::Note, text, source))
        }
    }
}

/// Which bolts and nuts the standards put together.
fn mating(input: &Input) -> Option<Finding> {
    let source = document::ISO_10684.read("6.2");
    match (input.way, input.bolt_class) {
        (Way::Under, _) => Some(Finding::new(
            Mark::Note,
            "Put only 6H or 6G nuts on the bolt cut under, tapped after their blank was coated.",
            source,
        )),
        (Way::Over, ToleranceClass::Bolt(class)) if input.allowance.mark().is_some() => {
            match class.position {
                BoltPosition::G | BoltPosition::H => None,
                BoltPosition::Az => Some(Finding::new(
                    Mark::Bar,
                    "6AZ and 6AX nuts must not be put on 6az bolts: the thread may strip.",
                    document::ISO_965_5.read("clause 1"),
                )),
                BoltPosition::E | BoltPosition::F => Some(Finding::new(
                    Mark::Condition,
                    "6AZ and 6AX nuts are meant for bolts of position g or h before the coat: take one of these.",
                    source,
                )),
            }
        }
        _ => None,
    }
}

/// Whether the allowance was printed for this thread.
fn table(input: &Input, outcome: &Outcome) -> Option<Finding> {
    let source = match input.way {
        Way::Over => outcome.nut.allowance.source,
        Way::Under => outcome.fit.bare.deviation.source,
    };
    let by_formula = source.basis == crate::source::Basis::Computed;
    let hot_dip = input.way == Way::Under || input.allowance.mark().is_some();
    (by_formula && hot_dip).then(|| {
        let text = match input.thread.metric_key() {
            Some((8, true)) => {
                "The tables begin at M10; M8 stands in ISO 10684, Annex B, which was not seen: this is the \
                 formula's value."
            }
            _ => {
                "The tables print coarse threads from M10 to M64 only; this is the formula's value for the pitch."
            }
        };
        Finding::new(Mark::Note, text, source)
    })
}

fn cost(input: &Input, outcome: &Outcome) -> Finding {
    match input.way {
        Way::Over => {
            let share = crate::quantity::Shown::percent(1.0 - outcome.overlap / outcome.standard_overlap, 0);
            let text = format!(
                "At least material the nut loses {share} of the depth of thread that a standard pair has in \
                 contact; its stripping strength falls with it."
            );
            Finding::new(Mark::Note, text, document::ARITHMETIC.computed("depth of thread in contact"))
        }
        Way::Under => {
            let lost = 1.0 - outcome.stress_area / outcome.standard_area;
            let text = format!(
                "The bolt's stress area falls from {} to {}, by {}.",
                Ruler::of(input.thread).area(outcome.standard_area),
                Ruler::of(input.thread).area(outcome.stress_area),
                crate::quantity::Shown::percent(lost, 1)
            );
            Finding::new(Mark::Note, text, undersize::STRESS_AREA)
        }
    }
}
