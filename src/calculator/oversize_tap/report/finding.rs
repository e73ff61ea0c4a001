//! What the rules say of the fit.

use super::super::{Input, Outcome, Way};
use crate::calculator::coat_room::{self, CoatRoom};
use crate::calculator::thread_fields::{self, Ruler};
use crate::calculator::thread_strength::ThreadStrength;
use crate::calculator::{Calculator, Finding, Link, Mark};
use crate::process::Process;
use crate::rule::{self, Case, Key, Part, Ruling, Topic};
use crate::source::{Sourced, document};
use crate::thread::class::BoltPosition;
use crate::thread::coat_room::Coated;
use crate::thread::overtap::Allowance;
use crate::thread::pair::{Found, INSIDE_SHARE, Mated, Pair, Room};
use crate::thread::{ToleranceClass, undersize};

pub(super) fn all(input: &Input, outcome: &Outcome) -> Vec<Finding> {
    let mut findings = rules(input, outcome);
    findings.extend(marking(input));
    findings.extend(mating(input));
    findings.extend(table(input, outcome));
    findings.push(cost(input, outcome).opens(strength(input)));
    Finding::worst_first(findings)
}

/// What the rules of the fit say: whether it goes together, how much thread is left, and, where the
/// nut or the bolt is made for hot-dip, whether the thread is large enough for it.
fn rules(input: &Input, outcome: &Outcome) -> Vec<Finding> {
    let hot_dip =
        input.way == Way::Under || input.allowance.mark().is_some() || input.allowance == Allowance::A563;
    let room = match input.allowance {
        Allowance::Standard => Room::Ordered,
        allowance => Room::Tapped(allowance),
    };
    let pair = Pair { room, class: input.bolt_class, bolt: outcome.fit.bare, nut: outcome.nut.limits };
    let (fit, overlap) = (&outcome.fit, outcome.overlap);
    let mated = Box::new(Mated { pair, worst: fit.worst, assembly: fit.assembly, overlap });
    let fit = if fit.assembles() { Found::Takes(mated) } else { Found::Binds(mated) };
    let part = Part::of_pair(input.thread, input.bolt_class, input.allowance.class());
    let process = if hot_dip { Process::HotDip } else { Process::Mechanical };
    let case = Case { part: Some(&part), fit: Some(&fit), ..Case::of(process) };
    let finding = |ruling: Ruling| {
        let finding = Finding::new(ruling.mark, ruling.text(&case), ruling.source(&case));
        match (ruling.rule.key, ruling.mark) {
            (Key::Assembles, Mark::Condition | Mark::Bar) => finding.opens(self::room(input)),
            _ => finding,
        }
    };
    rule::judge_topic(&case, Topic::Fit).map(finding).collect()
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
        rule: coat_room::Method::Corner {
            unevenness: input.coat.unevenness,
            coated: Coated::Bolt,
            inside: INSIDE_SHARE.value,
        },
    })
}

fn marking(input: &Input) -> Option<Finding> {
    match input.way {
        Way::Over if !input.bolt_class.is_undercut() => {
            let Sourced { value: letter, source } = input.allowance.mark()?;
            let text = format!(
                "Mark the nut with {letter} behind its property class, as 8{letter}; nuts delivered with their \
                 bolts in one sealed and labelled package need no mark."
            );
            Some(Finding::new(Mark::Note, text, source))
        }
        _ => {
            let Sourced { value: letter, source } = undersize::MARK;
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
                // That 6az must not meet 6AZ is a rule of the fit.
                BoltPosition::G | BoltPosition::H | BoltPosition::Az => None,
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
